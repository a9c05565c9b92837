#include "app/sound/render.h"

#include "app/sound/oggserial.h"
#include "app/sound/performance.h"
#include "core/base/named.h"
#include "core/files/draft.h"

#include <sndfile.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <cerrno>
#include <cmath>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace sound {

namespace {

constexpr int chunkFrames = 1024;
constexpr perform::Seconds fadeOut = 0.5; // of what still rings at the very end

// Formats of libsndfile, by the ending of a file.
constexpr auto formats = std::to_array<base::Named<int>>({
    {".wav", SF_FORMAT_WAV | SF_FORMAT_PCM_24},
    {".flac", SF_FORMAT_FLAC | SF_FORMAT_PCM_24},
    {".ogg", SF_FORMAT_OGG | SF_FORMAT_VORBIS},
});

std::optional<int> formatOf(std::filesystem::path const& path)
{
    std::string ending = path.extension().string();
    std::ranges::transform(ending, ending.begin(),
                           [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return base::valueNamed(formats, ending);
}

struct Close {
    void operator()(SNDFILE* file) const { sf_close(file); }
};
using SoundFile = std::unique_ptr<SNDFILE, Close>;

struct Chunk {
    std::array<float, chunkFrames> left{};
    std::array<float, chunkFrames> right{};
    int frames = 0;
};

// What rings at the end is taken away softly.
void fade(Chunk& chunk, std::int64_t framesLeft)
{
    constexpr double fadeFrames = fadeOut * sampleRate;
    for (int i = 0; i < chunk.frames; ++i) {
        auto const level =
            static_cast<float>(std::min(1.0, static_cast<double>(framesLeft - i) / fadeFrames));
        chunk.left[static_cast<std::size_t>(i)] *= level;
        chunk.right[static_cast<std::size_t>(i)] *= level;
    }
}

// Plays the whole course chunk by chunk into `sink`, which answers false to give up.
template<typename Sink>
base::Result<base::Done> play(perform::Course course, Voice const& voice, Sink&& sink,
                              Progressing const& progressing = {})
{
    auto synth = HarpSynth::open(voice);
    if (!synth) return synth.error();
    Performance performance(std::move(*synth));
    course.again = false;
    auto const total = std::llround(perform::lengthOf(course) * sampleRate);
    if (total > 0) performance.begin(std::move(course), {});

    Chunk chunk;
    for (std::int64_t done = 0; done < total; done += chunk.frames) {
        chunk.frames = static_cast<int>(std::min<std::int64_t>(chunkFrames, total - done));
        performance.render(chunk.left.data(), chunk.right.data(), chunk.frames);
        fade(chunk, total - done);
        if (!sink(chunk)) break;
        if (progressing && !progressing(static_cast<double>(done) / static_cast<double>(total)))
            return base::Done{};
    }
    return base::Done{};
}

double peakOf(Chunk const& chunk)
{
    double peak = 0;
    for (int i = 0; i < chunk.frames; ++i) {
        auto const at = static_cast<std::size_t>(i);
        peak = std::max<double>({peak, std::abs(chunk.left[at]), std::abs(chunk.right[at])});
    }
    return peak;
}

bool append(SNDFILE* file, Chunk const& chunk)
{
    std::array<float, std::size_t{2} * chunkFrames> both;
    for (int i = 0; i < chunk.frames; ++i) {
        auto const at = static_cast<std::size_t>(i);
        both[2 * at] = chunk.left[at];
        both[2 * at + 1] = chunk.right[at];
    }
    return sf_writef_float(file, both.data(), chunk.frames) == chunk.frames;
}

} // namespace

bool isSoundFile(std::filesystem::path const& path) { return formatOf(path).has_value(); }

base::Result<Rendered> renderToFile(perform::Course const& course,
                                    std::filesystem::path const& path,
                                    Progressing const& progressing, Voice const& voice,
                                    Tags const& tags)
{
    auto const format = formatOf(path);
    if (!format)
        return base::Fault{base::FaultCode::UnknownFileKind, path.string(),
                           path.extension().string()};

    auto draft = files::Draft::open(path);
    if (!draft) return draft.error();
    SF_INFO info{};
    info.samplerate = sampleRate;
    info.channels = 2;
    info.format = *format;
    SoundFile file(sf_open_fd(draft->descriptor(), SFM_WRITE, &info, SF_FALSE));
    if (!file) return draft->fault();
    sf_command(file.get(), SFC_SET_CLIPPING, nullptr, SF_TRUE);
    if (!tags.title.empty()) sf_set_string(file.get(), SF_STR_TITLE, tags.title.c_str());
    if (!tags.album.empty()) sf_set_string(file.get(), SF_STR_ALBUM, tags.album.c_str());

    Rendered rendered{perform::lengthOf(course), 0};
    bool written = true;
    int failed = 0;
    auto const played = play(
        course, voice,
        [&](Chunk const& chunk) {
            rendered.peak = std::max(rendered.peak, peakOf(chunk));
            errno = 0;
            written = append(file.get(), chunk);
            failed = errno; // before anything that is cleaned up changes it
            return written;
        },
        [&](double done) {
            rendered.stopped = progressing && !progressing(done);
            return !rendered.stopped;
        });
    if (rendered.stopped) return rendered;
    if (!played) return played.error();
    errno = failed;
    if (!written) return draft->fault();
    if (sf_close(file.release()) != 0) return draft->fault();
    bool const isOgg = (*format & SF_FORMAT_TYPEMASK) == SF_FORMAT_OGG;
    if (isOgg && !fixSerial(draft->path())) return draft->fault();
    if (auto const kept = draft->keep(); !kept) return kept.error();
    return rendered;
}

base::Result<Recording> renderToMemory(perform::Course const& course, Voice const& voice)
{
    Recording recording;
    auto const played = play(course, voice, [&](Chunk const& chunk) {
        recording.left.insert(recording.left.end(), chunk.left.begin(),
                              chunk.left.begin() + chunk.frames);
        recording.right.insert(recording.right.end(), chunk.right.begin(),
                               chunk.right.begin() + chunk.frames);
        return true;
    });
    if (!played) return played.error();
    return recording;
}

} // namespace sound
