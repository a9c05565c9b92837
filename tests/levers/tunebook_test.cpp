#include "core/files/abc/read.h"
#include "core/hands/righthand.h"
#include "core/levers/keyfit.h"
#include "core/levers/leverplan.h"
#include "tests/harp/harps.h"
#include "tests/levers/lines.h"
#include "tests/levers/promises.h"
#include "tests/levers/timeline.h"
#include "tests/places.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <sstream>

// Real tunes, where they are at hand: what is refused and why, and whether every plan keeps its
// promises.

namespace {

std::vector<std::filesystem::path> books()
{
    std::vector<std::filesystem::path> out;
    std::filesystem::path const folder =
        std::filesystem::path(places::outside()) / "data" / "nottingham-dev";
    if (!std::filesystem::is_directory(folder)) return out;
    for (auto const& entry : std::filesystem::directory_iterator(folder))
        if (entry.path().extension() == ".abc") out.push_back(entry.path());
    std::sort(out.begin(), out.end());
    return out;
}

std::vector<tune::Tune> tunesOf(std::filesystem::path const& book)
{
    std::ifstream file(book, std::ios::binary);
    std::string const text{std::istreambuf_iterator<char>(file), {}};
    std::vector<tune::Tune> out;
    auto const entries = files::abcTunes(text);
    if (!entries) return out;
    for (files::AbcEntry const& entry : *entries)
        if (auto tune = files::readAbc(text, entry, book.filename().string()))
            if (hasNotes(*tune)) out.push_back(*std::move(tune));
    return out;
}

// How many tunes came out how.
struct Count {
    std::map<std::string, int> byOutcome;
    void add(std::string const& outcome) { ++byOutcome[outcome]; }
    void add(base::Fault const& fault) { add(std::string(wording(fault.code).wrong)); }
    std::string shown() const
    {
        std::ostringstream out;
        for (auto const& [outcome, count] : byOutcome)
            out << "\n  " << count << "  " << outcome;
        return out.str();
    }
};

// The trade's free beats for each level that flips [trade-3.6].
harp::Level intermediate() { return lines::level(2); }
harp::Level lateIntermediate() { return lines::level(1); }
harp::Level advanced() { return lines::level(0.5); }

} // namespace

TEST_CASE("Every tune at hand is planned in its best key or refused with its reason",
          "[levers][slow]")
{
    auto const all = books();
    if (all.empty()) {
        WARN("SKIPPED: the tunebooks are absent");
        return;
    }
    auto const harp = example::floor34();
    Count written;
    Count best;
    int flips = 0;
    for (auto const& book : all)
        for (tune::Tune const& tune : tunesOf(book)) {
            CAPTURE(book.filename().string(), tune.number, tune.title);
            tune::Tempo const tempo = tempoOf(tune);
            for (harp::Level const& level : {intermediate(), lateIntermediate(), advanced()}) {
                auto const plan =
                    lines::timelineFor(harp, tune, tune::played(tune), tempo, level);
                if (plan) promises::check(harp, tune, *plan, level, quartersPerMinute(tempo));
                if (level != intermediate()) continue;
                plan ? written.add("planned") : written.add(plan.error());
                flips += plan ? static_cast<int>(plan->flips.size()) : 0;
            }
            auto const fit = levers::keyFits(tune, harp, tempo, intermediate()).front();
            fit.possible ? best.add("planned") : best.add(*fit.why);
            if (fit.possible) {
                auto const moved = tune::transposed(tune, fit.moved);
                auto const plan =
                    lines::timelineFor(harp, moved, tune::played(moved), tempo, intermediate());
                REQUIRE(plan);
                promises::check(harp, moved, *plan, intermediate(), quartersPerMinute(tempo));
            }
            if (!fit.possible) {
                CHECK(fit.why->code == base::FaultCode::NoMomentForFlip);
                CHECK_FALSE(fit.why->place.empty());
            }
        }
    WARN("as written, with " << flips << " flips:" << written.shown());
    WARN("in the best key:" << best.shown());
    CHECK(best.byOutcome["planned"] >= written.byOutcome["planned"]);
    // 39 of 511 have semitones on one string faster than half a beat, in every key.
    CHECK(best.byOutcome["planned"] > 450);
}

TEST_CASE("Every tune at hand has fingers for each note that begins", "[hands][slow]")
{
    auto const all = books();
    if (all.empty()) {
        WARN("SKIPPED: the tunebooks are absent");
        return;
    }
    for (auto const& book : all)
        for (tune::Tune const& tune : tunesOf(book)) {
            CAPTURE(book.filename().string(), tune.number, tune.title);
            auto const harp = example::floor34();
            auto const setup = harp::settingFor(harp, tune.key);
            arrange::Arrangement const arrangement{
                .tune = tune,
                .transposedSemitones = 0,
                .harp = harp,
                .hand = example::mediumHand(),
                .level = intermediate(),
                .levers = {setup ? *setup : harp::LeverSetting(harp.count(), harp::Lever::Down),
                           {}},
                .tempo = tune::tempoOf(tune),
                .playing = tune::played(tune),
                .positions = {},
                .rightFingers = {}};
            auto const right = hands::rightHand(arrangement);
            auto const& fingers = right.fingers;
            std::size_t grouped = 0;
            for (arrange::PlacingGroup const& group : right.groups) grouped += group.notes.size();
            CHECK(grouped >= fingers.size());
            std::size_t begun = 0;
            for (tune::Bar const& bar : tune.bars)
                for (tune::Note const& note : bar.notes) begun += note.pitches.empty() ? 0 : 1;
            CHECK(fingers.size() <= begun);
            bool inOrder = true;
            for (auto const& f : fingers) {
                auto const& note = tune.bars[f.bar].notes[f.note];
                inOrder = inOrder && f.fingers.size() == note.pitches.size() &&
                          std::is_sorted(f.fingers.rbegin(), f.fingers.rend());
            }
            CHECK(inOrder);
        }
}
