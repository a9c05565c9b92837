#include "app/soundfiles.h"

#include "app/outputs.h"
#include "core/base/words.h"

#include <cmath>

namespace app {

namespace {

constexpr double usualSlow = 0.6;

// What a list of sound files shows of one.
sound::Tags tagsOf(arrange::Arrangement const& arrangement, SoundWish const& wish)
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
    std::string const& title = arrangement.tune.title;
    return {title + " (" + hands + ", " + tempo + bars + ")", title};
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
                                  std::vector<perform::KindOfLilt> const& lilts,
                                  std::vector<SoundFile> const& files,
                                  sound::Progressing const& progressing)
{
    int written = 0;
    for (SoundFile const& file : files) {
        auto const course = heard(arrangement, file.wish, lilts);
        if (!course) return course.error();
        auto const all = static_cast<double>(files.size());
        sound::Progressing part;
        if (progressing)
            part = [&](double done) { return progressing((written + done) / all); };
        auto const rendered = sound::renderToFile(*course, file.path, part, file.wish.voice,
                                                  tagsOf(arrangement, file.wish));
        if (!rendered) return rendered.error();
        if (rendered->stopped) break;
        ++written;
    }
    return written;
}

} // namespace app
