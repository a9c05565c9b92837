#include "core/files/tables/tables.h"
#include "tests/places.h"
#include "tests/trade/table.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <iterator>
#include <regex>
#include <sstream>

// The shipped tables against the collected facts of the trade, which lie beside the project on
// a developer's machine. Where they are absent there is nothing to compare.

namespace {

using files::Tables;
using trade::Row;

Tables const& tables()
{
    static Tables const read = *files::readTables(places::shared());
    return read;
}

// "4 then 2+1", "4-3-2-1 rolled up" -> "421", "4321"; crossings keep their letter.
std::string fingersOnly(std::string const& written)
{
    static std::regex const finger("[1-4][us]?");
    std::string all;
    for (std::sregex_iterator f(written.begin(), written.end(), finger), end; f != end; ++f)
        all += f->str();
    return all;
}

music::Rational fraction(std::string const& written)
{
    auto const slash = written.find('/');
    return {std::stoi(written),
            slash == std::string::npos ? 1 : std::stoi(written.substr(slash + 1))};
}

std::vector<std::string> words(std::string const& written)
{
    std::istringstream in(written);
    return {std::istream_iterator<std::string>(in), {}};
}

// "1 2+3" -> {{0}, {1, 2}}
std::vector<std::vector<int>> plays(std::string const& written)
{
    std::vector<std::vector<int>> all;
    for (std::string const& word : words(written)) {
        all.emplace_back();
        std::istringstream in(word);
        for (std::string note; std::getline(in, note, '+');)
            all.back().push_back(std::stoi(note) - 1);
    }
    return all;
}

} // namespace

TEST_CASE("Sizes of harp agree with the trade's table", "[trade]")
{
    auto const rows = trade::table("harps.csv");
    if (!rows) return;
    REQUIRE_FALSE(rows->empty());
    for (Row const& row : *rows) {
        CAPTURE(row.at("id"));
        harp::Harp const h = *files::harpFrom(tables(), row.at("id"), "C");
        auto const count = [&](music::Letter letter) {
            return std::count_if(h.strings().begin(), h.strings().end(),
                                 [&](auto const& s) { return s.open.letter == letter; });
        };
        CHECK(h.count() == std::stoi(row.at("strings")));
        CHECK(plain(h.string(0).open) == row.at("low_spn"));
        CHECK(plain(h.string(h.highest()).open) == row.at("high_spn"));
        CHECK(harp::harpOctave(h.string(0).open) == std::stoi(row.at("low_harp_octave")));
        for (music::Letter letter : music::allLetters)
            CHECK(count(letter) ==
                  std::stoi(row.at(std::string("n_") + "CDEFGAB"[music::index(letter)])));
    }
}

TEST_CASE("Patterns agree with the trade's table in strings, fingers and level", "[trade]")
{
    auto const rows = trade::table("patterns.csv");
    if (!rows) return;
    CHECK(rows->size() <= tables().book.patterns.size());
    for (Row const& row : *rows) {
        std::string name = pattern::patternFrom(row.at("degrees"))->name;
        // The open chord of a tenth stands there twice: broken for us, and as the rolled close.
        if (row.at("id") == "t15810") name = "1-5-8-10";
        CAPTURE(name);
        auto const& all = tables().book.patterns;
        auto const ours = std::find_if(
            all.begin(), all.end(), [&](pattern::Pattern const& p) { return p.name == name; });
        REQUIRE(ours != all.end());
        CHECK(stringsSpanned(*ours) == std::stoi(row.at("strings_spanned")));
        CHECK(ours->level == std::stoi(row.at("min_level")));
        // Root with 2 and the string below it with 4, so that the hand need not cross: there
        // the trade's other fingering is ours.
        std::string const theirs = row.at(name == "1-low5" ? "fingers_alt" : "fingers");
        CHECK(fingersOnly(fingersText(ours->notes)) == fingersOnly(theirs));
    }
}

TEST_CASE("The book lays patterns on the beats in every way that the trade lists", "[trade]")
{
    auto const rows = trade::table("pattern_rhythms.csv");
    if (!rows) return;
    CHECK(rows->size() == 37);
    for (Row const& row : *rows) {
        CAPTURE(row.at("meter"), row.at("pattern_notes"), row.at("name"));
        std::vector<music::Length> onsets;
        for (std::string const& at : words(row.at("onsets_whole_notes")))
            onsets.push_back({fraction(at)});
        auto const& all = tables().book.rhythms;
        CHECK(std::any_of(all.begin(), all.end(), [&](pattern::Rhythm const& r) {
            return text(r.meter) == row.at("meter") && r.span == barLength(r.meter) &&
                   r.notes == std::stoi(row.at("pattern_notes")) && r.onsets == onsets &&
                   r.plays == plays(row.at("which_note"));
        }));
    }
}

TEST_CASE("Levels agree with the trade's table", "[trade]")
{
    auto const rows = trade::table("levels.csv");
    if (!rows) return;
    REQUIRE(rows->size() == tables().levels.size());
    for (std::size_t i = 0; i < rows->size(); ++i) {
        Row const& row = (*rows)[i];
        harp::Level const& level = tables().levels[i];
        // The trade's two longest names are said more shortly.
        std::map<std::string, std::string> const said{
            {"late beginner", "improver"}, {"late intermediate", "upper intermediate"}};
        auto const shorter = said.find(row.at("name"));
        CHECK(level.name == (shorter == said.end() ? row.at("name") : shorter->second));
        CHECK(level.leftNotesPerSecond == std::stod(row.at("lh_notes_per_s")));
        CHECK(level.rightNotesPerSecond == std::stod(row.at("rh_notes_per_s")));
        CHECK(level.leftStrings == std::stoi(row.at("lh_strings_spanned")));
    }
}

TEST_CASE("Hands agree with the trade's table of spans", "[trade]")
{
    auto const rows = trade::table("reach_hand.csv");
    if (!rows) return;
    std::map<std::string, std::string> const names{{"child7", "child ~7"},
                                                   {"child10", "child ~10"},
                                                   {"small", "woman 5th pct"},
                                                   {"medium", "woman 50th pct"},
                                                   {"large", "man 50th pct"}};
    for (harp::HandModel const& hand : tables().hands) {
        CAPTURE(hand.id);
        auto const row = std::find_if(rows->begin(), rows->end(), [&](Row const& r) {
            return r.at("hand") == names.at(hand.id);
        });
        REQUIRE(row != rows->end());
        CHECK(hand.comfortMm == std::stod(row->at("comfort_1_4_mm")));
        CHECK(hand.limitMm == std::stod(row->at("max_1_4_mm")));
    }
}
