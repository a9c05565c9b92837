// The list of the harper's tunes and what is found in it.
#include "core/collection/listing.h"
#include "tests/collection/tunes.h"

#include <catch2/catch.hpp>

using namespace collection;

namespace {

std::vector<FileEntry> oneBook()
{
    FileEntry book{"/t/book.abc", 1, 1, false, false, {}, {}};
    book.tunes = {tunes::entry(tunes::reel), tunes::entry(tunes::inD),
                  tunes::entry(tunes::waltz)};
    return {book};
}

std::vector<std::size_t> byWords(std::string const& words)
{
    Wish wish;
    wish.words = words;
    return found(rowsOf(oneBook(), {}), wish);
}

} // namespace

TEST_CASE("What a list tells of a tune is what the tune is", "[listing]")
{
    TuneEntry const reel = tunes::entry(tunes::reel);
    CHECK(reel.number == 3);
    CHECK(reel.title == "The Basket Maker");
    CHECK(reel.otherTitles == "Willow Rods");
    CHECK(kindWords(reel) == "reel");
    CHECK(reel.meter == music::Meter{4, 4, false});
    CHECK(reel.bars == 4);
    CHECK(reel.chords);
    CHECK(reel.pickUp == 0);
    CHECK(reel.opening.front() == FirstNote{32, 67}); // G4: four octaves of seven, and 4
    TuneEntry const waltz = tunes::entry(tunes::waltz);
    CHECK(kindWords(waltz) == "waltz"); // nothing says so but its time and notes
    CHECK(waltz.pickUp == 1);
    CHECK(waltz.bars == 4);
    CHECK_FALSE(waltz.chords);
}

TEST_CASE("Words find a tune by title, kind, key, time and file, without accents", "[listing]")
{
    using Hits = std::vector<std::size_t>;
    CHECK(byWords("") == Hits{0, 1, 2});
    CHECK(byWords("BASKET") == Hits{0});
    CHECK(byWords("rods") == Hits{0}); // another title
    CHECK(byWords("sean") == Hits{2});
    CHECK(byWords("SÉAN") == Hits{2});
    CHECK(byWords("dorian") == Hits{2});
    CHECK(byWords("ador") == Hits{2});
    CHECK(byWords("3/4") == Hits{2});
    CHECK(byWords("reel g") == Hits{0});
    CHECK(byWords("book.abc") == Hits{0, 1, 2});
    CHECK(byWords("weir").empty());
    // A letter alone begins a word; "d" is in "lantern and dorian" of none but D and dorian.
    CHECK(byWords("d") == Hits{1, 2});
}

TEST_CASE("Capitals and accents of Latin letters are folded away", "[listing]")
{
    CHECK(folded("Ó Súilleabháin's Åse — Œuvre Łódź") == "o suilleabhain's ase — ouvre lodz");
    CHECK(folded(std::string("caf\xC3")) == "caf\xC3"); // cut off in the middle
}

TEST_CASE("Kind, key, time and first notes narrow the list together", "[listing]")
{
    auto const rows = rowsOf(oneBook(), {});
    Wish wish;
    wish.kind = "reel";
    CHECK(found(rows, wish).front() == 0);
    wish = {};
    wish.key = music::shown(music::Key{{music::Letter::A, 0}, music::Mode::Dorian});
    CHECK(found(rows, wish) == std::vector<std::size_t>{2});
    wish = {};
    wish.meter = "4/4";
    CHECK(found(rows, wish) == std::vector<std::size_t>{0, 1});
    wish.notes = firstNotesFrom("defad");
    // The one in its key first, though its pick-up is missing: as much as another key; then
    // order.
    CHECK(found(rows, wish) == std::vector<std::size_t>{0, 1});
    wish.notes = firstNotesFrom("abdef");
    CHECK(found(rows, wish).front() == 1);
}

TEST_CASE("A tune is arranged where an arrangement of it is known", "[listing]")
{
    auto all = oneBook();
    FileEntry work{"/other/My Setting.sallow", 1, 1, true, false, {}, {}};
    SECTION("by its title and first notes, in whatever key")
    {
        TuneEntry tune = tunes::entry(tunes::reel);
        for (FirstNote& note : tune.opening) {
            note.step -= 3;
            note.midi -= 5;
        }
        work.tunes = {tune};
        all.push_back(work);
        auto const rows = rowsOf(all, {});
        CHECK(rows[0].arranged == work.path);
        CHECK(rows[1].arranged.empty());
        CHECK(rows[3].arrangement);
        Wish wish;
        wish.arranged = true;
        CHECK(found(rows, wish) == std::vector<std::size_t>{0, 3});
        wish.arranged = false;
        CHECK(found(rows, wish) == std::vector<std::size_t>{1, 2});
    }
    SECTION("by what she saved in the window")
    {
        Uses uses;
        uses.made[{"/t/book.abc", 4, "Another Setting"}] = "/x/a.sallow";
        uses.opened[{"/t/book.abc", 7, "Séan's Lantern"}] = "2026-11-30T10:00:00";
        auto const rows = rowsOf(all, uses);
        CHECK(rows[1].arranged == "/x/a.sallow");
        CHECK(rows[0].arranged.empty());
        CHECK(rows[2].opened == "2026-11-30T10:00:00");
    }
    SECTION("by the name beside a file of one tune")
    {
        FileEntry one{"/t/lantern.abc", 1, 1, false, false, {}, {tunes::entry(tunes::waltz)}};
        work.path = "/t/lantern.sallow";
        work.tunes = {tunes::entry(tunes::inD)}; // she has changed its title and notes
        auto const rows = rowsOf({one, work}, {});
        CHECK(rows[0].arranged == work.path);
    }
}
