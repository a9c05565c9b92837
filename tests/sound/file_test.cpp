#include "tests/sound/hearing.h"

#include <sndfile.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

using namespace hearing;
namespace fs = std::filesystem;

namespace {

// A folder of its own for each test, gone afterwards.
class Folder {
public:
    explicit Folder(std::string const& name) : m_path(fs::temp_directory_path() / name)
    {
        fs::remove_all(m_path);
        fs::create_directories(m_path);
    }
    Folder(Folder const&) = delete;
    Folder& operator=(Folder const&) = delete;
    ~Folder() { fs::remove_all(m_path); }
    fs::path operator/(std::string const& name) const { return m_path / name; }
    long entries() const
    {
        return std::distance(fs::directory_iterator(m_path), fs::directory_iterator());
    }

private:
    fs::path m_path;
};

std::string bytesOf(fs::path const& path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

} // namespace

TEST_CASE(
    "Sound files are stereo at 48 kHz, as long as the schedule, in the kind of the ending",
    "[soundfile]")
{
    if (!canSound()) return;
    struct Row {
        char const* name;
        int format;
        char const* magic; // the first bytes, by RIFF, FLAC (RFC 9639) and Ogg (RFC 3533)
    };
    auto const row = GENERATE(Row{"a.wav", SF_FORMAT_WAV | SF_FORMAT_PCM_24, "RIFF"},
                              Row{"a.flac", SF_FORMAT_FLAC | SF_FORMAT_PCM_24, "fLaC"},
                              Row{"a.OGG", SF_FORMAT_OGG | SF_FORMAT_VORBIS, "OggS"});
    Folder const folder("sallow-soundfile-kinds");
    fs::path const path = folder / row.name;
    auto const rendered =
        sound::renderToFile(perform::onceOnly(scheduleOf({pluck(0, 20, 60)}, 1.25)), path);
    REQUIRE(rendered);
    CHECK(rendered->peak > 0.01);
    CHECK(bytesOf(path).substr(0, 4) == row.magic);
    SF_INFO info{};
    SNDFILE* const file = sf_open(path.string().c_str(), SFM_READ, &info);
    REQUIRE(file);
    sf_close(file);
    CHECK(info.channels == 2);
    CHECK(info.samplerate == 48000);
    CHECK(info.frames == 60000);
    CHECK(info.format == row.format);
    CHECK(folder.entries() == 1);
}

TEST_CASE("The same schedule gives the same sound file, byte for byte", "[soundfile]")
{
    if (!canSound()) return;
    Folder const folder("sallow-soundfile-same");
    auto const schedule = scheduleOf({pluck(0, 20, 60), pluck(0.1, 22, 64)}, 0.5);
    for (std::string const ending : {".wav", ".flac", ".ogg"}) {
        CAPTURE(ending);
        REQUIRE(sound::renderToFile(perform::onceOnly(schedule), folder / ("a" + ending)));
        REQUIRE(sound::renderToFile(perform::onceOnly(schedule), folder / ("b" + ending)));
        CHECK(bytesOf(folder / ("a" + ending)) == bytesOf(folder / ("b" + ending)));
    }
}

TEST_CASE("An Ogg file still decodes with its fixed serial number", "[soundfile]")
{
    if (!canSound()) return;
    Folder const folder("sallow-soundfile-ogg");
    fs::path const path = folder / "a.ogg";
    REQUIRE(sound::renderToFile(perform::onceOnly(scheduleOf({pluck(0, 20, 60)}, 1)), path));
    // libogg leaves out pages whose checksum is wrong, and libvorbis then has nothing to decode.
    SF_INFO info{};
    SNDFILE* const file = sf_open(path.string().c_str(), SFM_READ, &info);
    REQUIRE(file);
    std::vector<float> frames(static_cast<std::size_t>(2 * info.frames));
    CHECK(sf_readf_float(file, frames.data(), info.frames) == 48000);
    sf_close(file);
    CHECK(*std::max_element(frames.begin(), frames.end()) > 0.01F);
    CHECK(bytesOf(path).substr(14, 4) == std::string("\1\0\0\0", 4)); // RFC 3533, section 6
}

TEST_CASE("A sound file that cannot be written leaves nothing behind", "[soundfile]")
{
    Folder const folder("sallow-soundfile-refused");
    auto const schedule = scheduleOf({pluck(0, 20, 60)}, 0.2);
    auto const unknown = sound::renderToFile(perform::onceOnly(schedule), folder / "a.mp9");
    REQUIRE_FALSE(unknown);
    CHECK(unknown.error().code == base::FaultCode::UnknownFileKind);
    auto const nowhere =
        sound::renderToFile(perform::onceOnly(schedule), folder / "missing/a.wav");
    REQUIRE_FALSE(nowhere);
    CHECK(nowhere.error().code == base::FaultCode::CannotWrite);
    CHECK(folder.entries() == 0);
}

TEST_CASE("A FLAC and an Ogg file carry the title of the tune and what is heard of it",
          "[soundfile]")
{
    if (!canSound()) return;
    Folder const folder("sallow-tags");
    auto const schedule = scheduleOf({pluck(0, 20, 60)}, 0.2);
    for (char const* name : {"a.flac", "a.ogg", "a.wav"}) {
        fs::path const path = folder / name;
        REQUIRE(sound::renderToFile(perform::onceOnly(schedule), path, {}, {},
                                    {"Fancy (left hand, 60 %)", "Fancy"}));
        SF_INFO info{};
        SNDFILE* const file = sf_open(path.c_str(), SFM_READ, &info);
        REQUIRE(file);
        char const* const title = sf_get_string(file, SF_STR_TITLE);
        char const* const album = sf_get_string(file, SF_STR_ALBUM);
        CHECK(std::string(title ? title : "") == "Fancy (left hand, 60 %)");
        CHECK(std::string(album ? album : "") == "Fancy");
        sf_close(file);
    }
}

TEST_CASE("A sound font that is named but missing or damaged is refused, not replaced",
          "[soundfile]")
{
    Folder const folder("sallow-soundfont");
    auto const schedule = scheduleOf({pluck(0, 20, 60)}, 0.2);
    std::ofstream(folder / "damaged.sf2") << "this is no sound font";
    for (char const* name : {"missing.sf2", "damaged.sf2"}) {
        char const* const before = std::getenv("SALLOW_SOUNDFONT");
        std::string const kept = before ? before : "";
        setenv("SALLOW_SOUNDFONT", (folder / name).c_str(), 1);
        auto const refused = sound::renderToFile(perform::onceOnly(schedule), folder / "a.wav");
        if (before)
            setenv("SALLOW_SOUNDFONT", kept.c_str(), 1);
        else
            unsetenv("SALLOW_SOUNDFONT");
        auto const named = sound::renderToFile(perform::onceOnly(schedule), folder / "a.wav", {},
                                               {folder / name, 440, {}, 0});
        REQUIRE_FALSE(named);
        CHECK(named.error().code == base::FaultCode::NoSoundFont);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == base::FaultCode::NoSoundFont);
        CHECK_FALSE(fs::exists(folder / "a.wav"));
    }
    CHECK(folder.entries() == 1);
}

TEST_CASE("A sound file that is stopped on its way leaves nothing, and not the file of before",
          "[soundfile]")
{
    if (!canSound()) return;
    Folder const folder("sallow-stopped");
    auto const lasting = scheduleOf({pluck(0, 20, 60), pluck(30, 21, 62)}, 60);
    for (char const* name : {"a.wav", "a.flac", "a.ogg"}) {
        fs::path const path = folder / name;
        std::ofstream(path) << "before";
        double last = 0;
        auto const stopped =
            sound::renderToFile(perform::onceOnly(lasting), path, [&last](double done) {
                last = done;
                return done < 0.3;
            });
        REQUIRE(stopped);
        CHECK(stopped->stopped);
        CHECK(last == Approx(0.3).margin(0.01));
        CHECK(bytesOf(path) == "before");
    }
    CHECK(folder.entries() == 3); // no drafts
}
