#include "app/soundfiles.h"

#include "app/outputs.h"
#include "core/base/words.h"

#include <cmath>

namespace app {

namespace {

constexpr double usualSlow = 0.6;

// What a list of sound files shows of one.
sound::Tags tagsOf(std::string const& title, SoundWish const& wish)
{
    std::string const hands =
        !wish.left    ? wish.tuneAlone ? base::said("the tune alone") : base::said("right hand")
           : !wish.right ? base::said("left hand")
                      : base::said("both hands");
    std::string tempo = std::to_string(std::lround(wish.at * 100)) + " %";
    if (wish.steps)
        tempo = std::to_string(std::lround(wish.steps->from * 100)) + base::said("tempo| to ") +
                std::to_string(std::lround(wish.steps->to * 100)) + " %";
    std::string bars;
    if (wish.passage)
        bars = base::said(", bars ") + std::to_string(wish.passage->first) + "-" +
               std::to_string(wish.passage->second);
    return {title + " (" + hands + ", " + tempo + bars + ")", title};
}

// Renders each file's course, as `courseFor` makes it for a wish.
template<typename CourseFor>
base::Result<int> writeEach(std::string const& title, std::vector<SoundFile> const& files,
                            sound::Progressing const& progressing, CourseFor courseFor)
{
    int written = 0;
    for (SoundFile const& file : files) {
        base::Result<perform::Course> const course = courseFor(file.wish);
        if (!course) return course.error();
        auto const all = static_cast<double>(files.size());
        sound::Progressing part;
        if (progressing)
            part = [&](double done) { return progressing((written + done) / all); };
        auto const rendered = sound::renderToFile(*course, file.path, part, file.wish.voice,
                                                  tagsOf(title, file.wish));
        if (!rendered) return rendered.error();
        if (rendered->stopped) break;
        ++written;
    }
    return written;
}

base::Result<perform::Course> heardSet(perform::PlayedSet const& set, SoundWish const& wish,
                                       perform::DanceWays const& ways)
{
    std::vector<perform::Course> courses;
    for (perform::TuneOfSet const& tune : set.tunes) {
        SoundWish own = wish;
        if (&tune != &set.tunes.back()) own.slowing = 0; // the next one goes on in time
        auto course = heard(tune.arrangement, own, ways);
        if (!course) return course.error();
        courses.push_back(*std::move(course));
    }
    return perform::courseOf(set, courses);
}

} // namespace

std::vector<SoundFile> soundFiles(std::string const& path, SoundWish const& wish)
{
    if (!wish.pack) return {{path, wish}};
    SoundWish slow = wish;
    slow.pack = false;
    slow.steps.reset();
    slow.left = slow.right = true;
    if (slow.at >= 1) slow.at = usualSlow;
    SoundWish left = slow;
    left.right = false;
    SoundWish right = slow;
    right.left = false;
    SoundWish atTempo = slow;
    atTempo.at = 1;
    return {{named(path, "both"), slow},
            {named(path, "left-slow"), left},
            {named(path, "right-slow"), right},
            {named(path, "at-tempo"), atTempo}};
}

base::Result<int> writeSoundFiles(arrange::Arrangement const& arrangement,
                                  perform::DanceWays const& ways,
                                  std::vector<SoundFile> const& files,
                                  sound::Progressing const& progressing)
{
    return writeEach(arrangement.tune.title, files, progressing,
                     [&](SoundWish const& wish) { return heard(arrangement, wish, ways); });
}

base::Result<int> writeSoundFiles(perform::PlayedSet const& set, perform::DanceWays const& ways,
                                  std::vector<SoundFile> const& files,
                                  sound::Progressing const& progressing)
{
    return writeEach(set.title, files, progressing,
                     [&](SoundWish const& wish) { return heardSet(set, wish, ways); });
}

} // namespace app
