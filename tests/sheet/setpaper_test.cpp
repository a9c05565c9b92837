// A set as one paper, and what helps players who do not read.
#include "core/sheet/noteletters.h"
#include "core/sheet/papers/levelpack.h"
#include "core/sheet/papers/setpaper.h"
#include "tests/sheet/examples.h"
#include "tests/sheet/measure.h"
#include "tests/sheet/violations.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

namespace {

constexpr music::Key dMajor{{music::Letter::D, 0}, music::Mode::Ionian};

arrange::Arrangement tuneOfBars(int bars, music::Key key, std::string const& title)
{
    std::string const notes = key == dMajor
                                  ? "D4:1/8 F#4:1/8 A4:1/8 D5:1/8 F#5:1/8 A4:1/8 D5:1/4"
                                  : "G4:1/8 B4:1/8 C5:1/8 G5:1/8 F#5:1/8 C5:1/8 B4:1/4";
    tune::Bars all(bars, example::withChord(example::bar(notes, example::fourFour, key),
                                            key == dMajor ? "D" : "C"));
    arrange::Arrangement out = example::arrangementOf(example::tuneOf(all, title));
    example::fingerTune(out);
    return out;
}

std::vector<std::string> wordsOf(sheet::Page const& page)
{
    std::vector<std::string> words;
    for (sheet::Words const& w : measure::allOf<sheet::Words>(page)) words.push_back(w.text);
    return words;
}

bool says(sheet::Page const& page, std::string const& text)
{
    auto const words = wordsOf(page);
    return std::any_of(words.begin(), words.end(), [&](std::string const& word) {
        return word.find(text) != std::string::npos;
    });
}

} // namespace

TEST_CASE("A set is one paper: a list, then its tunes with what is flipped before each",
          "[set]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    perform::PlayedSet const set =
        perform::setOf("Ferry set", {tuneOfBars(8, example::gMajor, "Osier Ferry"),
                                     tuneOfBars(8, dMajor, "Willow Weir")});
    sheet::Document const paper = sheet::setPaper(set, notation::Kind::Arrangement, *font, {});
    REQUIRE(paper.pages.size() == 3);
    CHECK(paper.title == "Ferry set");
    REQUIRE(paper.bookmarks.size() == 2);
    CHECK(paper.bookmarks[1].text == "Willow Weir");
    CHECK(paper.bookmarks[1].page == 2);
    CHECK(says(paper.pages[0], "Ferry set"));
    CHECK(says(paper.pages[0], "page 3"));
    CHECK(says(paper.pages[1], "Next: Willow Weir; flip 6C 5C 4C 3C up (about 3 s)"));
    CHECK(says(paper.pages[2], "Flip 6C 5C 4C 3C up (about 3 s)"));
    CHECK(says(paper.pages[2], "3 of 3"));
    CHECK_FALSE(says(paper.pages[2], "Next:"));
    for (std::size_t p = 1; p < 3; ++p) {
        sheet::Document one;
        one.pages = {paper.pages[p]};
        for (auto const& [kind, count] : measure::violations(one, *font, 2)) {
            CAPTURE(p, kind);
            CHECK(count == 0);
        }
    }
    CHECK(measure::outside(paper.pages[0], *font, {}) == 0);
}

TEST_CASE("A tune of two pages in a set begins on a left-hand page", "[set]")
{
    // Books have even numbers on the left: common practice, no source.
    auto const font = measure::musicFont();
    if (!font) return;
    perform::PlayedSet const set = perform::setOf(
        "", {tuneOfBars(8, example::gMajor, "Short"), tuneOfBars(36, dMajor, "Long")});
    sheet::Document const paper = sheet::setPaper(set, notation::Kind::Arrangement, *font, {});
    REQUIRE(paper.bookmarks.size() >= 2);
    auto const found = std::find_if(paper.bookmarks.begin(), paper.bookmarks.end(),
                                    [](sheet::Bookmark const& b) { return b.text == "Long"; });
    REQUIRE(found != paper.bookmarks.end());
    REQUIRE(paper.pages.size() == 5);
    CHECK(found->page + 1 == 4);
    CHECK(says(paper.pages[2], "This page is empty"));
    CHECK(says(paper.pages[0], "pages 4–5"));
    CHECK(paper.opening == sheet::Opening::AsABook);
}

TEST_CASE("Coloured strings: C notes are red, F notes blue, both with their letters", "[helps]")
{
    // C strings are red and F strings blue or black on harps: common practice, no source.
    auto const font = measure::musicFont();
    if (!font) return;
    auto const arrangement = tuneOfBars(4, example::gMajor, "Osier Ferry");
    auto const counts = [&](sheet::Helps helps) {
        sheet::SheetStyle style;
        style.helps = helps;
        style.shapes = false;
        std::map<std::pair<sheet::Ink, std::string>, int> found;
        for (sheet::Page const& page :
             sheet::arrangementSheet(arrangement, *font, style).pages) {
            for (sheet::Glyph const& glyph : measure::allOf<sheet::Glyph>(page))
                if (measure::isNotehead(glyph.code)) ++found[{glyph.ink, "head"}];
            for (sheet::Words const& words : measure::allOf<sheet::Words>(page))
                if (words.ink == sheet::Ink::Paper) ++found[{words.ink, words.text}];
        }
        return found;
    };
    using sheet::Ink;
    auto plain = counts({});
    CHECK(plain[{Ink::RedString, "head"}] == 0);
    auto coloured = counts({true, false, false});
    // In each of four bars of the tune two C and one F sharp; in the left hand C3 and C4.
    CHECK(coloured[{Ink::BlueString, "head"}] == 4);
    CHECK(coloured[{Ink::RedString, "head"}] == 4 * 4);
    CHECK(coloured[{Ink::Paper, "F"}] == 4);
    CHECK(coloured[{Ink::Paper, "G"}] == 0);
    auto named = counts({false, true, false});
    CHECK(named[{Ink::RedString, "head"}] == 0);
    CHECK(named[{Ink::Paper, "G"}] > 0);
}

TEST_CASE("The string path has a bead for every string that the left hand plucks", "[helps]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto const arrangement = tuneOfBars(4, example::gMajor, "Osier Ferry");
    sheet::SheetStyle style;
    style.helps.stringPath = true;
    style.shapes = false;
    std::multiset<std::string> beads;
    for (sheet::Page const& page : sheet::arrangementSheet(arrangement, *font, style).pages)
        for (sheet::Words const& words : measure::allOf<sheet::Words>(page)) {
            if (words.ink != sheet::Ink::Music) continue;
            beads.insert(words.text);
            CHECK(words.heightMm > 1.05 * 0.88 * 7.5 / 4); // however quick the notes
        }
    // 1-5-8 on C3: C3 G3 C4, in harp octaves 5C 4G 4C (octaves change between E and F and count
    // from the top, middle C is 4C: common practice, no source).
    CHECK(beads.count("5C") == 4);
    CHECK(beads.count("4G") == 4);
    CHECK(beads.size() == 12);
}

TEST_CASE("Boxes of levers and letters of parts begin at the margin in huge print, too",
          "[helps]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    sheet::SheetStyle style;
    style.staffMm = sheet::hugeStaffMm;
    style.helps = {true, true, true};
    auto const document =
        sheet::arrangementSheet(example::arrangementOf(example::jig()), *font, style);
    int sides = 0;
    for (sheet::Page const& page : document.pages)
        for (sheet::Mark const& mark : page.marks) {
            auto const* line = std::get_if<sheet::Line>(&mark.what);
            if (!line || (line->ink != sheet::Ink::Lever && line->ink != sheet::Ink::Words))
                continue;
            ++sides;
            sheet::Box const box = measure::box(mark, *font);
            CHECK(box.left > 14 - 0.01);
            CHECK(box.right < page.widthMm - 14 + 0.01);
        }
    CHECK(sides >= 4);
    CHECK(measure::violations(document, *font, 2).count("outside the margins") == 0);
}

TEST_CASE("A long title of a tune of a set keeps clear of its place in the set", "[set]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    perform::PlayedSet const set = perform::setOf(
        "",
        {tuneOfBars(8, example::gMajor, "A Song of Slow Water with Rather a Long Title Here"),
         tuneOfBars(8, dMajor, "Willow Weir")});
    sheet::Page const page =
        sheet::setPaper(set, notation::Kind::Arrangement, *font, {}).pages.at(1);
    auto const all = measure::allOf<sheet::Words>(page);
    auto const find = [&all](std::string const& text) {
        auto const found = std::find_if(all.begin(), all.end(), [&](sheet::Words const& words) {
            return words.text.find(text) != std::string::npos;
        });
        REQUIRE(found != all.end());
        return *found;
    };
    measure::BoxOf const box{*font};
    CHECK(box(find("Tune 1 of 2")).right + 1 < box(find("A Song of")).left);
    CHECK(box(find("A Song of")).right + 1 < box(find("2 of 3")).left);
}

TEST_CASE("A long title at the head of later pages keeps clear of the page's number", "[set]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    std::string const title =
        "Long March of the Weir Keepers and Their Several Daughters, as Played at the Fair";
    sheet::SheetStyle style;
    style.staffMm = sheet::hugeStaffMm;
    measure::BoxOf const box{*font};
    auto const clear = [&](sheet::Page const& page, std::string const& number) {
        auto const all = measure::allOf<sheet::Words>(page);
        auto const find = [&all](std::string const& text) {
            return std::find_if(all.begin(), all.end(),
                                [&](sheet::Words const& words) { return words.text == text; });
        };
        REQUIRE(find(title) != all.end());
        REQUIRE(find(number) != all.end());
        CHECK(box(*find(title)).right + 1 < box(*find(number)).left);
    };
    auto const long36 = tuneOfBars(36, dMajor, title);
    auto const alone = sheet::arrangementSheet(long36, *font, style);
    REQUIRE(alone.pages.size() > 1);
    clear(alone.pages[1], "2 of " + std::to_string(alone.pages.size()));
    auto const set =
        sheet::setPaper(perform::setOf("", {tuneOfBars(8, example::gMajor, "Short"), long36}),
                        notation::Kind::Arrangement, *font, style);
    std::string const count = std::to_string(set.pages.size());
    clear(set.pages.back(), count + " of " + count);
}

TEST_CASE("Levels of two pages lie open on facing ones, as a tune of more than one does",
          "[pack]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto const longTune = tuneOfBars(36, dMajor, "Long");
    auto const pack = sheet::levelPack({longTune, longTune}, *font, {});
    REQUIRE(pack.pages.size() == 4);
    CHECK(pack.opening == sheet::Opening::InPairs);
    auto const shortTune = tuneOfBars(8, dMajor, "Short");
    CHECK(sheet::levelPack({shortTune, shortTune}, *font, {}).opening ==
          sheet::Opening::PageByPage);
}

TEST_CASE("Levels that take a page each by themselves take no more in a pack", "[pack]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    // One level is dense where the other is not: alike, all lines would be long ones.
    std::string dense;
    for (int i = 0; i < 16; ++i) dense += i % 2 == 0 ? "D4:1/16 " : "A4:1/16 ";
    auto const levelOf = [&](int half, bool first) {
        tune::Bars bars;
        for (int b = 0; b < 2 * half; ++b)
            bars.push_back(example::withChord(
                example::bar((b < half) == first ? dense : "D4:1/1", example::fourFour, dMajor),
                "D"));
        arrange::Arrangement out = example::arrangementOf(example::tuneOf(bars, "Two levels"));
        example::fingerTune(out);
        return out;
    };
    sheet::SheetStyle alike;
    alike.lastTime = arrange::LastTime::Always;
    int tried = 0;
    for (int half = 5; half < 10; ++half) {
        std::vector<arrange::Arrangement> const levels{levelOf(half, true),
                                                       levelOf(half, false)};
        std::size_t own = 0;
        for (arrange::Arrangement const& level : levels)
            own += sheet::arrangementSheet(level, *font, {}).pages.size();
        if (own > 2 || sheet::commonBreaks(levels, *font, alike).pages.size() < 2) continue;
        ++tried;
        CHECK(sheet::levelPack(levels, *font, {}).pages.size() == 2);
    }
    CHECK(tried > 0);
}

TEST_CASE("A level of more pages than the one before it begins on the left", "[pack]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    std::string dense;
    for (int i = 0; i < 16; ++i) dense += i % 2 == 0 ? "D4:1/16 " : "A4:1/16 ";
    auto const levelOf = [](std::string const& notes) {
        tune::Bars const bars(
            16, example::withChord(example::bar(notes, example::fourFour, dMajor), "D"));
        arrange::Arrangement out = example::arrangementOf(example::tuneOf(bars, "Two levels"));
        example::fingerTune(out);
        return out;
    };
    arrange::Arrangement const light = levelOf("D4:1/1");
    REQUIRE(sheet::arrangementSheet(light, *font, {}).pages.size() == 1);
    auto const pack = sheet::levelPack({light, levelOf(dense)}, *font, {});
    CHECK(pack.opening == sheet::Opening::InPairs);
    CHECK(says(pack.pages.at(1), "This page is empty"));
    REQUIRE(pack.bookmarks.size() == 2);
    CHECK(pack.bookmarks[1].page == 2);
}
