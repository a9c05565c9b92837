#include "core/proposal/silence.h"

#include "core/arrange/view.h"
#include "core/base/words.h"
#include "core/harp/seats.h"
#include "core/levers/waysround.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <set>

namespace proposal {

namespace {

using tune::NoteInLine;
using tune::Way;

// Whether the left hand rests there though it had something to play.
bool silent(Proposal const& proposal, arrange::PositionIndex position)
{
    auto const& arranged = proposal.arrangement.positions[position];
    if (!arranged.voicing.notes.empty() || arranged.locked) return false;
    return true;
}

// A pick-up: the left hand is free there, whatever it does.
bool isPickUp(Proposal const& proposal, arrange::Position const& position)
{
    return arrange::viewOf(sceneOf(proposal), position,
                           arrange::longestNote(proposal.arrangement.playing))
        .upbeat;
}

// The notes of the tune on a string on both sides of a moment.
struct Sides {
    std::optional<std::size_t> before;
    std::optional<std::size_t> after;
};

Sides sidesOf(arrange::Arrangement const& a, harp::Flip const& flip)
{
    Sides sides;
    for (std::size_t i = 0; i < a.playing.notes.size(); ++i) {
        tune::PlayedNote const& note = a.playing.notes[i];
        if (harp::stringAtMoment(a.harp, a.levers, note.pitch, note.at) != flip.string) continue;
        if (note.at < flip.at) {
            sides.before = i;
        } else {
            sides.after = i;
            break;
        }
    }
    return sides;
}

tune::NotePlace placeOf(arrange::Arrangement const& a, std::size_t note)
{
    tune::PlayedNote const& n = a.playing.notes[note];
    return {a.playing.bars[n.playedBar].bar, n.note, n.ofChord, false};
}

bool isSnag(Proposal const& proposal, tune::NotePlace place)
{
    return std::ranges::any_of(proposal.snags, [&](Snag const& snag) {
        return snag.hand == harp::Side::Right && snag.place == place;
    });
}

// Why nothing fits: a lever that the left hand turns all the while, or a tune that comes down
// to where it would play.
ForcedRest forcedRest(Proposal const& proposal, arrange::View const& view,
                      arrange::PositionIndex index)
{
    arrange::Position const& position = proposal.lattice.positions[index];
    arrange::Arrangement const& a = proposal.arrangement;
    std::string const chord = music::shown(position.chord);
    harp::StringIndex lowest = a.harp.strings().beyond();
    for (arrange::PassView const& pass : view.passes) {
        for (arrange::NearFlip const& flip : pass.flips)
            if (flip.hand == harp::Side::Left && flip.freeFrom < view.span && flip.freeTo > 0)
                return {index, true, base::say("it flips a lever in the time of {}", chord)};
        for (arrange::TuneNote const& note : pass.tune) lowest = std::min(lowest, note.string);
    }
    std::string const below =
        lowest < a.harp.count()
            ? base::say("the tune goes down to string {} here, and ", lowest + 1)
            : std::string();
    return {index, false,
            below + base::say("no shape for {} fits below the tune for {} at level {}", chord,
                              a.hand.name, a.level.number)};
}

} // namespace

std::vector<SilencingFlip> silencingFlips(Proposal const& proposal)
{
    arrange::Arrangement const& a = proposal.arrangement;
    std::vector<SilencingFlip> out;
    for (std::size_t f = 0; f < a.levers.flips.size(); ++f) {
        harp::Flip const& flip = a.levers.flips[f];
        if (flip.hand != harp::Side::Left) continue;
        SilencingFlip silencing{f, {}, {}};
        for (arrange::PositionIndex const i : a.positions.indices()) {
            if (!silent(proposal, i)) continue;
            arrange::Position const& position = a.positions[i].position;
            if (std::ranges::any_of(position.played,
                                    [&](arrange::Occurrence const& when) {
                                        return when.at < flip.freeTo &&
                                               flip.freeFrom < when.at + position.span;
                                    }) &&
                !isPickUp(proposal, position))
                silencing.positions.push_back(i);
        }
        Sides const sides = sidesOf(a, flip);
        if (silencing.positions.empty() || !sides.after) continue;
        silencing.after = placeOf(a, *sides.after);
        out.push_back(std::move(silencing));
    }
    return out;
}

std::vector<SnagChoice> easedChoices(Proposal const& proposal,
                                     std::vector<SilencingFlip> const& flips)
{
    std::vector<SnagChoice> choices;
    if (flips.empty() || proposal.brief.mending.refuse) return choices;
    arrange::Arrangement const& a = proposal.arrangement;
    tune::WayPrices const& prices = proposal.brief.weights.ways;
    auto const lines = levers::notesOnHarp(a.harp, a.tune, a.tempo, prices);
    std::set<int> figures;
    for (SilencingFlip const& silencing : flips) {
        Sides const sides = sidesOf(a, a.levers.flips[silencing.flip]);
        std::optional<SnagChoice> best;
        int least = 0;
        int figure = 0;
        for (auto const& side : {sides.after, sides.before}) {
            if (!side) continue;
            auto const line =
                std::ranges::find(lines, placeOf(a, *side), &NoteInLine::place);
            if (line == lines.end() || isSnag(proposal, line->place)) continue;
            int const asWritten = tune::priceOf(*line, Way::LeftLightened, prices);
            for (levers::OpenWay const& way : levers::openWays(*line, a.harp, a.level, prices)) {
                if (way.way != Way::Plain && way.way != Way::Held) continue;
                if (way.price >= asWritten || (best && way.price >= least)) continue;
                best = SnagChoice{line->place, way.way, true};
                least = way.price;
                figure = line->figure;
            }
        }
        if (best && figures.insert(figure).second) choices.push_back(*best);
    }
    return choices;
}

std::vector<arrange::PositionIndex> addSilenceSnags(Proposal& proposal,
                                                    std::vector<SilencingFlip> const& flips)
{
    std::vector<arrange::PositionIndex> told;
    if (flips.empty()) return told;
    arrange::Arrangement& a = proposal.arrangement;
    tune::WayPrices const& prices = proposal.brief.weights.ways;
    auto const lines = levers::notesOnHarp(a.harp, a.tune, a.tempo, prices);
    for (SilencingFlip const& silencing : flips) {
        auto const line = std::ranges::find(lines, silencing.after, &NoteInLine::place);
        if (line == lines.end() || isSnag(proposal, line->place)) continue;
        harp::Flip const& flip = a.levers.flips[silencing.flip];
        Snag snag;
        snag.place = line->place;
        snag.pass = a.playing.bars[flip.playedBar].pass;
        snag.at = flip.at;
        snag.written = line->pitch;
        snag.strings = {flip.string};
        snag.way = Way::LeftLightened;
        snag.leftRests = true;
        snag.group = 10'000 + line->figure;
        tune::BarIndex const bar = a.positions[silencing.positions.front()].position.bar;
        snag.what =
            base::say("the lever can only be flipped in {}", tune::barName(a.tune, bar));
        for (levers::OpenWay const& way : levers::openWays(*line, a.harp, a.level, prices))
            snag.ways.push_back({way.way, way.sounds, way.price});
        std::ranges::stable_sort(snag.ways, {}, &SnagWay::cost);
        a.gaveWay.push_back({line->place.bar,
                             a.tune.bars[line->place.bar].notes[line->place.note].at,
                             base::say("{} as written, the left hand rests for its flip",
                                       music::shown(line->pitch))});
        proposal.snags.push_back(std::move(snag));
        told.insert(told.end(), silencing.positions.begin(), silencing.positions.end());
    }
    return told;
}

std::vector<ForcedRest> forcedRests(Proposal const& proposal)
{
    std::vector<ForcedRest> out;
    arrange::Scene const scene = sceneOf(proposal);
    music::Length const longest = arrange::longestNote(proposal.arrangement.playing);
    for (arrange::PositionIndex const i : proposal.lattice.positions.indices()) {
        if (!std::ranges::all_of(proposal.lattice.candidates[i],
                                 [](arrange::Candidate const& candidate) {
                                     return candidate.voicing.notes.empty();
                                 }))
            continue;
        arrange::View const view =
            arrange::viewOf(scene, proposal.lattice.positions[i], longest);
        if (!view.upbeat) out.push_back(forcedRest(proposal, view, i));
    }
    return out;
}

void addRestSnags(Proposal& proposal, std::vector<arrange::PositionIndex> const& told)
{
    arrange::Arrangement& a = proposal.arrangement;
    for (ForcedRest& rest : forcedRests(proposal)) {
        if (std::ranges::find(told, rest.position) != told.end()) continue;
        arrange::Position const& position = proposal.lattice.positions[rest.position];
        Snag snag;
        snag.place = {position.bar, 0, 0, false};
        snag.pass = position.played.front().pass;
        snag.at = position.played.front().at;
        snag.hand = harp::Side::Left;
        snag.way = Way::LeaveOut;
        snag.ways = {{Way::LeaveOut, std::nullopt, 0}};
        snag.group = -1;
        snag.what = std::move(rest.why);
        // A place that stands for itself on each pass is told once on the page.
        arrange::GaveWay const words{position.bar, position.at,
                                     base::say("the left hand rests, because {}", snag.what)};
        if (std::ranges::find(a.gaveWay, words) == a.gaveWay.end()) a.gaveWay.push_back(words);
        proposal.snags.push_back(std::move(snag));
    }
    std::ranges::stable_sort(proposal.snags, {}, [](Snag const& snag) {
        return std::pair(snag.hand == harp::Side::Left, snag.place);
    });
}

} // namespace proposal
