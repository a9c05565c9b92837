#include "core/files/abc/read.h"
#include "core/proposal/levels.h"
#include "core/sheet/cautions.h"
#include "core/sheet/papers/drill.h"
#include "core/sheet/papers/handout.h"
#include "core/sheet/papers/levelpack.h"
#include "core/sheet/shapes.h"
#include "tests/places.h"
#include "tests/sheet/examples.h"
#include "tests/sheet/measure.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using sheet::Box;
using sheet::Document;
using sheet::Page;

namespace {

files::Tables const& shelf()
{
    static files::Tables const tables = *files::readTables(places::shared());
    return tables;
}

sheet::HandoutWish wishFor(std::string const& harp, music::Key key,
                           std::vector<pattern::Pattern> patterns)
{
    return {*files::harpFrom(shelf(), harp, "Eb"),
            *files::handFrom(shelf(), "medium"),
            *files::levelFrom(shelf(), 3),
            shelf().book,
            key,
            std::move(patterns),
            {},
            {}};
}

bool overlap(Box a, Box b)
{
    constexpr double touch = 0.12; // mm
    return a.left + touch < b.right && b.left + touch < a.right && a.top + touch < b.bottom &&
           b.top + touch < a.bottom;
}

// Marks that reach beyond the margins, and pairs of words, fingers and noteheads on one
// another.
struct Faults {
    int outside = 0;
    int collisions = 0;
};
Faults faultsOf(Page const& page, sheet::MusicFont const& font)
{
    constexpr double margin = 14;
    constexpr double brace = 6; // hangs in the margin
    Faults faults;
    std::vector<Box> legends;
    std::vector<Box> heads;
    for (sheet::Mark const& mark : page.marks) {
        Box const box = measure::box(mark, font);
        auto const* glyph = std::get_if<sheet::Glyph>(&mark.what);
        bool const isBrace = glyph && glyph->code == sheet::glyph::brace;
        if (box.left < margin - 0.3 - (isBrace ? brace : 0) ||
            box.right > page.widthMm - margin + 0.6 || box.top < margin - 0.3 ||
            box.bottom > page.heightMm - margin + 0.6)
            ++faults.outside;
        bool const finger = glyph && glyph->ink == sheet::Ink::Finger;
        if (finger || std::holds_alternative<sheet::Words>(mark.what)) legends.push_back(box);
        if (glyph && measure::isNotehead(glyph->code)) heads.push_back(box);
    }
    for (std::size_t i = 0; i < legends.size(); ++i) {
        for (std::size_t j = i + 1; j < legends.size(); ++j)
            if (overlap(legends[i], legends[j])) ++faults.collisions;
        for (Box const& head : heads)
            if (overlap(legends[i], head)) ++faults.collisions;
    }
    return faults;
}

void isClean(Document const& document, sheet::MusicFont const& font)
{
    REQUIRE_FALSE(document.pages.empty());
    for (std::size_t p = 0; p < document.pages.size(); ++p) {
        CAPTURE(document.title, p);
        Faults const faults = faultsOf(document.pages[p], font);
        CHECK(faults.outside == 0);
        CHECK(faults.collisions <= 1); // a pack of levels has one
    }
}

std::multiset<std::string> wordsOf(Page const& page)
{
    std::multiset<std::string> words;
    for (sheet::Words const& w : measure::allOf<sheet::Words>(page)) words.insert(w.text);
    return words;
}

// Major keys that the tuning in E flat has, and some modes of them.
std::vector<music::Key> keysAtHand()
{
    std::vector<music::Key> keys;
    for (char const* name : {"Eb", "Bb", "F", "C", "G", "D", "A", "E", "Cm", "Gm", "Dm", "Am",
                             "Em", "Bm", "Ddor", "Amix", "Dmix", "Edor"})
        keys.push_back(*music::keyFrom(name));
    return keys;
}

} // namespace

TEST_CASE("The triads of a major key are I IV V vi ii iii, of A minor i iv v VI III VII",
          "[papers]")
{
    // Any harmony primer; Piston, Harmony, 1941, chapter 2: triads of the major and the natural
    // minor scale, the diminished one left out. From memory.
    auto const names = [](char const* key) {
        std::string text;
        for (sheet::Triad const& triad : sheet::triadsOf(*music::keyFrom(key)))
            text += (text.empty() ? "" : " ") + music::plain(triad.chord) + ':' + triad.numeral;
        return text;
    };
    CHECK(names("C") == "C:I F:IV G:V Am:vi Dm:ii Em:iii");
    CHECK(names("G") == "G:I C:IV D:V Em:vi Am:ii Bm:iii");
    CHECK(names("Eb") == "Eb:I Ab:IV Bb:V Cm:vi Fm:ii Gm:iii");
    CHECK(names("Am") == "Am:i Dm:iv Em:v F:VI C:III G:VII");
    CHECK(names("Ddor") == "Dm:i G:IV Am:v Em:ii F:III C:VII");
}

TEST_CASE("On every chord a shape sounds its degrees of the key as the levers stand",
          "[papers]")
{
    // Degree d is the string d - 1 above the root; what it sounds is the key's own note of that
    // letter, by the signature alone.
    int notes = 0;
    for (files::HarpSize const& size : shelf().harps)
        for (music::Key key : keysAtHand())
            for (std::size_t p = 0; p < shelf().book.patterns.size(); p += 3) {
                pattern::Pattern const& pattern = shelf().book.patterns[p];
                auto const wish = wishFor(size.id, key, {pattern});
                std::vector<music::Chord> chords;
                for (sheet::Triad const& triad : sheet::triadsOf(key))
                    chords.push_back(triad.chord);
                auto const made =
                    sheet::exerciseOf({wish.harp, wish.hand, wish.level, wish.book, key},
                                      pattern, sheet::handoutMeters(pattern).front(), chords);
                CAPTURE(size.id, music::shown(key), pattern.name);
                REQUIRE(made);
                for (arrange::ArrangedPosition const& position : made->positions)
                    for (arrange::VoicedNote const& note : position.voicing.notes) {
                        int const step =
                            music::index(position.position.chord.root.letter) + note.degree - 1;
                        auto const letter = static_cast<music::Letter>(((step % 7) + 7) % 7);
                        music::Pitch const sounds =
                            harp::pitchAt(made->harp, made->levers, note.string, {});
                        REQUIRE(sounds.letter == letter);
                        REQUIRE(sounds.alter == music::alterIn(music::signature(key), letter));
                        ++notes;
                    }
            }
    CHECK(notes > 10000);
}

TEST_CASE("Handouts keep inside the page and clear of themselves on every harp, in every key",
          "[papers]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    std::size_t which = 0;
    std::size_t pages = 0;
    std::size_t handouts = 0;
    for (files::HarpSize const& size : shelf().harps)
        for (music::Key key : keysAtHand()) {
            pattern::Pattern const& pattern =
                shelf().book.patterns[which++ % shelf().book.patterns.size()];
            CAPTURE(size.id, music::shown(key), pattern.name);
            sheet::SheetStyle style;
            if (which % 2 == 0) style.paper = sheet::Paper::Letter;
            auto const document =
                sheet::handout(wishFor(size.id, key, {pattern}), *font, style);
            REQUIRE(document);
            CHECK(document->pages.size() <= 2);
            pages += document->pages.size();
            ++handouts;
            isClean(*document, *font);
        }
    CHECK(handouts >= 12 * shelf().harps.size());
    CHECK(4 * pages <= 5 * handouts); // one page each, but for the widest shapes
}

TEST_CASE("A handout has the pattern's strings, music in two meters and staves to write on",
          "[papers]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto const pattern = *pattern::patternFrom("1-5-8");
    auto const document =
        sheet::handout(wishFor("floor34", example::gMajor, {pattern}), *font, {});
    REQUIRE(document);
    auto const words = wordsOf(document->pages.front());
    for (char const* text : {"1-5-8", "G major", "fingers 4-2-1", "The pattern in 4/4",
                             "The same in 6/8", "Eight bars to practise", "Write your own"})
        CHECK(words.count(text) == 1);
    CHECK(words.count("G") >= 5);  // over bars and pictures, and among the strings
    CHECK(words.count("Bm") == 3); // picture and two lines; not in the eight bars
    CHECK(words.count(harp::setupLine(
              example::floor34(), *harp::settingFor(example::floor34(), example::gMajor))) ==
          1);
    // Twelve bars of shapes and eight to practise, of three notes and in 6/8 of six.
    int heads = 0;
    for (sheet::Glyph const& glyph : measure::allOf<sheet::Glyph>(document->pages.front()))
        heads += measure::isNotehead(glyph.code) ? 1 : 0;
    CHECK(heads == 6 * 3 + 6 * 6 + 8 * 3);
    CHECK(measure::staffLines(document->pages.front()).size() >= 5 * (4 + 1));
}

TEST_CASE("A handout beyond the tuning is refused, and so is a pattern wider than the harp",
          "[papers]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto const shape = *pattern::patternFrom("1-5-8");
    auto const refused =
        sheet::handout(wishFor("floor34", *music::keyFrom("B"), {shape}), *font, {});
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == base::FaultCode::KeyBeyondTuning);
    pattern::Pattern wide = shape;
    wide.notes.back().degree = 30;
    auto const tooWide = sheet::handout(wishFor("lap22", example::gMajor, {wide}), *font, {});
    REQUIRE_FALSE(tooWide);
    CHECK(tooWide.error().code == base::FaultCode::NothingPlayable);
}

TEST_CASE("Every shape that is printed is shown once in the box, with its fingers", "[papers]")
{
    auto const arrangement = example::arrangementOf(example::jig());
    auto const shapes = sheet::shapesUsed(arrangement);
    REQUIRE(shapes.size() == 1);
    CHECK(shapes[0].title == "1-5-8");
    CHECK(shapes[0].caption == "4-2-1");
    REQUIRE(shapes[0].dots.size() == 3);
    CHECK(shapes[0].dots[0].under == "1");
    CHECK(shapes[0].dots[1].under == "5");
    CHECK(shapes[0].dots[2].under == "8");
    CHECK(shapes[0].dots[1].string - shapes[0].dots[0].string == 4);
    CHECK(shapes[0].dots[2].finger == 1);
}

TEST_CASE("The picture at the head shows the levers that the set-up line names", "[papers]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto const arrangement = example::arrangementOf(example::jig());
    Document const document = sheet::arrangementSheet(arrangement, *font, {});
    int up = 0;
    for (sheet::Shape const& shape : measure::allOf<sheet::Shape>(document.pages.front()))
        up += shape.ink == sheet::Ink::Lever ? 1 : 0;
    auto const& setup = arrangement.levers.setup;
    CHECK(up == std::count(setup.begin(), setup.end(), harp::Lever::Up));
    // Both letters are written under their strings, beside the colour.
    int red = 0;
    for (sheet::Words const& w : measure::allOf<sheet::Words>(document.pages.front()))
        red += w.ink == sheet::Ink::RedString && w.text == "C" ? 1 : 0;
    CHECK(red == 5); // C2 to C6
}

TEST_CASE("The page says the arranger's words and no others", "[papers]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto tune = example::jig();
    tune.arranger = "A. Willow";
    tune.copyright = "© A. Willow, to be copied for lessons";
    tune.source = "from a green notebook";
    tune.notes = {"Let the last bar ring."};
    auto const document = sheet::arrangementSheet(example::arrangementOf(tune), *font, {});
    CHECK(wordsOf(document.pages.front()).count("arr. A. Willow") == 1);
    auto const words = wordsOf(document.pages.back());
    CHECK(words.count("© A. Willow, to be copied for lessons") == 1);
    CHECK(words.count("Source: from a green notebook") == 1);
    CHECK(words.count("Let the last bar ring.") == 1);
    for (Page const& page : document.pages)
        for (std::string const& text : wordsOf(page))
            CHECK(text.find("Sallow") == std::string::npos);
    isClean(document, *font);

    auto bare = example::jig();
    bare.composer.clear();
    bare.rhythm.clear();
    for (Page const& page : sheet::leadSheet(bare, *font, {}).pages)
        for (std::string const& text : wordsOf(page)) {
            CHECK(text.find("arr.") == std::string::npos);
            CHECK(text.find("©") == std::string::npos);
        }
}

TEST_CASE("Lines of one remark are one paragraph, remarks of their own stay apart", "[papers]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto tune = example::jig();
    tune.notes = {"One of several tunes for the parades and the", "balls of the guild.", "Slow",
                  "with care"};
    auto const words = wordsOf(sheet::leadSheet(tune, *font, {}).pages.back());
    CHECK(words.count("One of several tunes for the parades and the balls of the guild.") == 1);
    CHECK(words.count("Slow") == 1);
    CHECK(words.count("with care") == 1);
}

TEST_CASE("A drill, whose bars are only places, has no time signature", "[papers]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto const arrangement = example::arrangementOf(example::jig());
    auto const meters = [](Document const& document) {
        int count = 0;
        for (Page const& page : document.pages)
            for (sheet::Glyph const& glyph : measure::allOf<sheet::Glyph>(page))
                if (glyph.code >= sheet::glyph::timeSig0 &&
                    glyph.code <= sheet::glyph::timeSig0 + 9)
                    ++count;
        return count;
    };
    CHECK(meters(sheet::arrangementSheet(arrangement, *font, {})) == 4);
    CHECK(meters(sheet::drillSheet(arrangement, *font, {})) == 0);
}

TEST_CASE("Cautions are given only where they apply", "[papers]")
{
    auto arrangement = example::arrangementOf(example::jig());
    CHECK(sheet::cautions(arrangement).empty());
    arrangement.positions.front().voicing.notes.back().string += 3; // an eleventh
    CHECK(sheet::cautions(arrangement).size() == 1);
    arrangement.levers.flips.push_back({});
    CHECK(sheet::cautions(arrangement).size() == 2);
}

namespace {

std::vector<tune::Tune> demoTunes()
{
    std::string const path = places::shared() + "/demo/demo.abc";
    std::string const text = *files::readTextFile(path);
    std::vector<tune::Tune> tunes;
    auto const entries = *files::abcTunes(text, path);
    for (files::AbcEntry const& entry : entries)
        if (auto tune = files::readAbc(text, entry, path)) tunes.push_back(*tune);
    return tunes;
}

proposal::Brief briefOf(tune::Tune tune, std::string const& harp)
{
    proposal::Brief brief;
    brief.tune = std::move(tune);
    brief.harp = *files::harpFrom(shelf(), harp, "Eb");
    brief.hand = *files::handFrom(shelf(), "medium");
    brief.level = *files::levelFrom(shelf(), 3);
    brief.book = shelf().book;
    brief.weights = shelf().styles.front();
    return brief;
}

} // namespace

TEST_CASE("A drill holds every left-hand note of the tune, in order, on one finger a string",
          "[papers]")
{
    auto const arrangement = example::arrangementOf(example::jig());
    auto const shapes = sheet::drillShapes(arrangement);
    REQUIRE_FALSE(shapes.empty());
    // G stands for two bars: placed once.
    CHECK(shapes.front().bars == std::vector<tune::BarIndex>{1, 2});
    std::size_t shape = 0;
    for (arrange::ArrangedPosition const& position : arrangement.positions) {
        std::set<int> strings;
        for (arrange::VoicedNote const& note : position.voicing.notes)
            strings.insert(note.string);
        std::set<int> held;
        for (std::size_t s = shape; s < shapes.size(); ++s) {
            auto const& bars = shapes[s].bars;
            if (std::count(bars.begin(), bars.end(), position.position.bar) == 0) continue;
            if (!(shapes[s].chord == position.position.chord)) continue;
            for (arrange::VoicedNote const& note : shapes[s].held) held.insert(note.string);
        }
        CAPTURE(position.position.bar);
        CHECK(std::includes(held.begin(), held.end(), strings.begin(), strings.end()));
    }
    for (sheet::DrillShape const& each : shapes) {
        std::set<int> fingers;
        for (arrange::VoicedNote const& note : each.held) fingers.insert(note.finger);
        CHECK(fingers.size() == each.held.size());
    }
    // One that stays is named once: no shape is followed by itself.
    for (std::size_t i = 1; i < shapes.size(); ++i) {
        bool same = shapes[i].chord == shapes[i - 1].chord &&
                    shapes[i].held.size() == shapes[i - 1].held.size();
        for (std::size_t n = 0; same && n < shapes[i].held.size(); ++n)
            same = shapes[i].held[n].string == shapes[i - 1].held[n].string;
        CHECK_FALSE(same);
    }
}

TEST_CASE("The steps of a drill rise to the tempo with rests between", "[papers]")
{
    auto const steps = sheet::tempoSteps();
    CHECK(steps.back().percent == 100);
    CHECK(std::is_sorted(steps.begin(), steps.end(),
                         [](auto const& a, auto const& b) { return a.percent < b.percent; }));
    CHECK(std::count_if(steps.begin(), steps.end(),
                        [](auto const& step) { return step.restAfter; }) == 2);
}

TEST_CASE("Drills keep inside the page and clear of themselves on every harp", "[papers]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto const tunes = demoTunes();
    std::size_t which = 0;
    int drills = 0;
    for (files::HarpSize const& size : shelf().harps) {
        tune::Tune const& tune = tunes[which++ % tunes.size()];
        CAPTURE(size.id, tune.title);
        auto const proposal = proposal::propose(briefOf(tune, size.id));
        if (!proposal) continue; // too wide for the harp
        isClean(sheet::drillSheet(proposal->arrangement, *font, {}), *font);
        ++drills;
    }
    CHECK(drills >= 10);
}

TEST_CASE("All levels of a tune have the same key, bars, lines and pages", "[papers]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto const tunes = demoTunes();
    // The first demo tune asks for a lever in play, which the first level does not turn.
    proposal::Brief brief = briefOf(tunes.front(), "floor34");
    brief.mending.refuse = true;
    auto const made = proposal::proposedForLevels(brief, shelf().levels);
    REQUIRE(made);
    REQUIRE(made->leftOut.size() == 1);
    CHECK(made->leftOut.front().place.find("level 1") == 0);
    std::vector<arrange::Arrangement> levels;
    for (proposal::Proposal const& proposal : made->proposals) {
        levels.push_back(proposal.arrangement);
        CHECK(levels.back().tune.key == levels.front().tune.key);
        CHECK(levels.back().tune.bars.size() == levels.front().tune.bars.size());
    }
    Document const pack = sheet::levelPack(levels, *font, {});
    isClean(pack, *font);
    REQUIRE(pack.bookmarks.size() == 4);
    CHECK(pack.bookmarks.front().text == "Level 2");
    CHECK(pack.pages.size() % 4 == 0);

    sheet::SheetStyle alike;
    alike.lastTime = arrange::LastTime::Always;
    alike.breaks = sheet::commonBreaks(levels, *font, alike);
    auto const first = sheet::arrangementSheet(levels.front(), *font, alike);
    for (arrange::Arrangement const& level : levels) {
        auto const own = sheet::arrangementSheet(level, *font, alike);
        REQUIRE(own.pages.size() == first.pages.size());
        for (std::size_t p = 0; p < own.pages.size(); ++p) {
            // The bars of a page, and those that begin a line: where the left edge goes back.
            auto const barsOf = [](Page const& page) {
                std::vector<std::pair<int, bool>> bars;
                double before = 1e9;
                for (sheet::Area const& area : page.areas) {
                    if (area.position) continue;
                    bars.emplace_back(area.bar, area.topLeft.x < before);
                    before = area.topLeft.x;
                }
                return bars;
            };
            CHECK(barsOf(own.pages[p]) == barsOf(first.pages[p]));
        }
    }
}
