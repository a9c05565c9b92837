// The kept list: it reads back as it was, and a damaged one is never taken for a whole one.
#include "core/files/work/tuneindex.h"
#include "tests/collection/tunes.h"

#include <catch2/catch.hpp>

#include <random>

using namespace collection;
using base::FaultCode;

namespace {

std::vector<FileEntry> someFiles()
{
    FileEntry book{"/t/a\tbook\\n.abc", 1764460800123456789, 4711, false, false, {}, {}};
    book.tunes = {tunes::entry(tunes::reel), tunes::entry(tunes::waltz)};
    book.tunes[1].title = "Two\nlines\\ and\ta tab";
    TuneEntry bad;
    bad.number = 9;
    bad.unreadable = "line 3: there is no key line";
    book.tunes.push_back(bad);
    return {book,
            {"/t/notes.txt", 5, 6, false, true, {}, {}},
            {"/t/x.mid", 7, 8, false, false, "x.mid: this is not a MIDI file", {}},
            {"/t/y.sallow", 7, 8, true, false, {}, {tunes::entry(tunes::inD)}}};
}

} // namespace

TEST_CASE("The index of tunes reads back as it was written", "[tuneindex]")
{
    auto const read = files::readTuneIndex(files::tuneIndexText(someFiles()), "index");
    REQUIRE(read);
    CHECK(*read == someFiles());
    auto const none = files::readTuneIndex(files::tuneIndexText({}), "index");
    REQUIRE(none);
    CHECK(none->empty());
}

TEST_CASE("An index that is cut off anywhere is refused", "[tuneindex]")
{
    std::string const whole = files::tuneIndexText(someFiles());
    for (std::size_t length = 0; length < whole.size(); ++length) {
        CAPTURE(length);
        auto const read = files::readTuneIndex(whole.substr(0, length), "index");
        REQUIRE_FALSE(read);
        CHECK(read.error().code == FaultCode::Malformed);
    }
}

TEST_CASE("A damaged index is refused with its line, or is one that might have been written",
          "[tuneindex]")
{
    struct Damage {
        char const* text;
        char const* place;
    };
    auto const row = GENERATE(values<Damage>({
        {"", "index, line 1"},
        {"sallow tunes 2\nend 0\n", "index, line 1"},
        {"sallow tunes 1\nT\t1\t\nend 1\n", "index, line 2"},
        {"sallow tunes 1\nF\t/a.abc\tx\t1\t0\t0\t\t\nend 1\n", "index, line 2"},
        {"sallow tunes 1\nF\t/a.abc\t1\t1\t0\t7\t\t\nend 1\n", "index, line 2"},
        {"sallow tunes 1\nF\t/a.abc\t1\t1\t0\t0\t\t\nend 2\n", "index, line 2"},
        {"sallow tunes 1\nend 0\nmore\n", "index, line 1"},
    }));
    CAPTURE(row.text);
    auto const read = files::readTuneIndex(row.text, "index");
    REQUIRE_FALSE(read);
    CHECK(read.error().place == row.place);

    std::mt19937 random(20261130);
    std::string const whole = files::tuneIndexText(someFiles());
    for (int i = 0; i < 3000; ++i) {
        std::string changed = whole;
        for (int times = 0; times < 3; ++times)
            changed[random() % changed.size()] = static_cast<char>(random() % 256);
        auto const other = files::readTuneIndex(changed, "index");
        if (!other) continue;
        auto const again = files::readTuneIndex(files::tuneIndexText(*other), "index");
        REQUIRE(again);
        CHECK(*again == *other);
    }
}

TEST_CASE("Folders and what was opened and arranged read back", "[tuneindex]")
{
    files::TunesKept kept;
    kept.folders = {"/music/Tunes", "/media/stick"};
    kept.uses.opened[{"/t/a.abc", 3, "The Basket Maker"}] = "2026-11-30T10:00:00";
    kept.uses.made[{"/t/a.abc", 3, "The Basket Maker"}] = "/t/b.sallow";
    auto const read = files::readTunes(files::tunesText(kept), "tunes.json");
    REQUIRE(read);
    CHECK(*read == kept);
    CHECK(files::readTunes("{\"sallow_tunes\": 1}", "f").error().code == FaultCode::Malformed);
    CHECK(files::readTunes("[", "f").error().code == FaultCode::Malformed);
    CHECK(files::readTunes("{\"sallow_tunes\": 9}", "f").error().code ==
          FaultCode::FileUnreadable);
}
