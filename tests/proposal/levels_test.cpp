// One tune at every level: each is an arrangement of the whole tune that its player can play.

#include "core/files/textfile.h"
#include "core/proposal/rules.h"
#include "tests/places.h"
#include "tests/proposal/nottingham.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <iostream>

using namespace proposal;

namespace {

constexpr int levels = 5;

// Where each position stands, and what chord it has.
struct Place {
    int bar = 0;
    music::Length at;
    music::Length span;
    music::Chord chord;
    friend bool operator==(Place const&, Place const&) = default;
};

std::vector<Place> placesOf(arrange::Arrangement const& a)
{
    std::vector<Place> places;
    for (arrange::ArrangedPosition const& p : a.positions)
        places.push_back({p.position.bar, p.position.at, p.position.span, p.position.chord});
    return places;
}

std::size_t notesOf(arrange::Arrangement const& a)
{
    std::size_t notes = 0;
    for (arrange::ArrangedPosition const& p : a.positions) notes += p.voicing.notes.size();
    return notes;
}

std::vector<tune::Tune> demoTunes()
{
    std::string const path = places::shared() + "/demo/demo.abc";
    auto const text = files::readTextFile(path);
    REQUIRE(text);
    auto const entries = files::abcTunes(text.value(), path);
    REQUIRE(entries);
    std::vector<tune::Tune> tunes;
    for (files::AbcEntry const& entry : entries.value()) {
        auto tune = files::readAbc(text.value(), entry, path);
        REQUIRE(tune);
        tunes.push_back(*std::move(tune));
    }
    return tunes;
}

// What became of one tune at the levels from 1 to 5.
struct ByLevel {
    std::vector<arrange::Arrangement> arranged;
    std::vector<base::Fault> refused;
};

ByLevel atEveryLevel(tune::Tune const& tune)
{
    ByLevel out;
    for (int level = 1; level <= levels; ++level) {
        CAPTURE(tune.title, level);
        Brief brief = scenario::briefFor(tune, level);
        brief.mending.refuse = true;
        auto const result = propose(brief);
        if (!result) {
            out.refused.push_back(result.error());
            continue;
        }
        CHECK(brokenRules((*result).arrangement, (*result).brief.book) ==
              std::vector<std::string>{});
        out.arranged.push_back((*result).arrangement);
    }
    return out;
}

// Refusals that a tune earns by its levers or its compass, in the key it is written in.
bool isTheTunesOwn(base::Fault const& fault)
{
    return fault.code == base::FaultCode::NoMomentForFlip ||
           fault.code == base::FaultCode::KeyBeyondTuning ||
           fault.code == base::FaultCode::NoteOffHarp;
}

void checkSameBars(std::vector<arrange::Arrangement> const& byLevel)
{
    for (arrange::Arrangement const& a : byLevel) {
        CAPTURE(a.tune.title, a.level.number);
        CHECK(a.tune.bars.size() == byLevel.front().tune.bars.size());
        CHECK(placesOf(a) == placesOf(byLevel.front()));
        CHECK(a.transposedSemitones == byLevel.front().transposedSemitones);
    }
}

using NotesByLevel = std::array<std::size_t, levels>;

void count(NotesByLevel& notes, std::vector<arrange::Arrangement> const& byLevel)
{
    for (std::size_t i = 0; i < byLevel.size(); ++i) notes[i] += notesOf(byLevel[i]);
}

void print(std::string const& what, NotesByLevel const& notes)
{
    std::cout << what << ", left-hand notes by level:";
    for (std::size_t n : notes) std::cout << ' ' << n;
    std::cout << '\n';
}

} // namespace

TEST_CASE("Demo tunes have playable levels of the same bars, fuller at the top, but level one "
          "leaves out the tune with a lever to turn",
          "[levels]")
{
    NotesByLevel notes{};
    for (tune::Tune const& tune : demoTunes()) {
        CAPTURE(tune.title);
        auto const [arranged, refused] = atEveryLevel(tune);
        REQUIRE_FALSE(arranged.empty());
        checkSameBars(arranged);
        // Level 1 turns no levers while playing (levels.json); one tune asks for that.
        bool const turns = !arranged.back().levers.flips.empty();
        REQUIRE(refused.size() == (turns ? 1 : 0));
        if (turns) {
            CHECK(refused.front().code == base::FaultCode::NoMomentForFlip);
            CHECK(arranged.front().level.number == 2);
        } else {
            CHECK(notesOf(arranged.front()) < notesOf(arranged.back()));
            count(notes, arranged);
        }
    }
    print("Demo tunes at every level", notes);
}

TEST_CASE("Twenty folk tunes have five playable levels of the same bars", "[levels][slow]")
{
    auto const tunes = nottingham::tunesWithChords();
    if (!tunes) {
        WARN("SKIPPED: the Nottingham tunes are absent: no levels compared");
        return;
    }
    constexpr int wanted = 20;
    int compared = 0;
    int passedOver = 0;
    NotesByLevel notes{};
    std::size_t const step = tunes->size() / 60;
    for (std::size_t i = 0; i < tunes->size() && compared < wanted; i += step) {
        auto const [arranged, refused] = atEveryLevel((*tunes)[i].tune);
        CAPTURE((*tunes)[i].name);
        CHECK(std::ranges::all_of(refused, isTheTunesOwn));
        if (!refused.empty()) {
            ++passedOver;
            continue;
        }
        checkSameBars(arranged);
        count(notes, arranged);
        ++compared;
    }
    CHECK(compared == wanted);
    print("Twenty folk tunes", notes);
    std::cout << passedOver << " others ask too much of the levers at some level\n";
    CHECK(notes[0] < notes[1]);
    CHECK(notes[1] < notes[4]);
}
