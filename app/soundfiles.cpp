#include "app/soundfiles.h"

#include "app/outputs.h"

namespace app {

namespace {

constexpr double usualSlow = 0.6;

} // namespace

std::vector<SoundFile> soundFiles(std::string const& path, SoundWish const& wish)
{
    if (!wish.pack) return {{path, wish}};
    SoundWish slow = wish;
    slow.pack = false;
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
        auto const rendered = sound::renderToFile(*course, file.path, part, file.wish.pitch);
        if (!rendered) return rendered.error();
        if (rendered->stopped) break;
        ++written;
    }
    return written;
}

} // namespace app
