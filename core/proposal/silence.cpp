#include "core/proposal/silence.h"

#include "core/harp/placing.h"
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
bool silent(Proposal const& proposal, std::size_t position)
{
    auto const& arranged = proposal.arrangement.positions[position];
    if (!arranged.voicing.notes.empty() || arranged.locked) return false;
    return true;
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
    return {a.playing.bars[static_cast<std::size_t>(n.playedBar)].bar, n.note, n.ofChord, false};
}

bool isSnag(Proposal const& proposal, tune::NotePlace place)
{
    return std::ranges::any_of(proposal.snags, [&](Snag const& snag) {
        return snag.hand == harp::Side::Right && snag.place == place;
    });
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
        for (std::size_t i = 0; i < a.positions.size(); ++i) {
            if (!silent(proposal, i)) continue;
            for (arrange::Occurrence const& when : a.positions[i].position.played)
                if (when.at < flip.freeTo && flip.freeFrom < when.at + a.positions[i].position.span) {
                    silencing.positions.push_back(static_cast<int>(i));
                    break;
                }
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

void addSilenceSnags(Proposal& proposal, std::vector<SilencingFlip> const& flips)
{
    if (flips.empty()) return;
    arrange::Arrangement& a = proposal.arrangement;
    tune::WayPrices const& prices = proposal.brief.weights.ways;
    auto const lines = levers::notesOnHarp(a.harp, a.tune, a.tempo, prices);
    for (SilencingFlip const& silencing : flips) {
        auto const line = std::ranges::find(lines, silencing.after, &NoteInLine::place);
        if (line == lines.end() || isSnag(proposal, line->place)) continue;
        harp::Flip const& flip = a.levers.flips[silencing.flip];
        Snag snag;
        snag.place = line->place;
        snag.pass = a.playing.bars[static_cast<std::size_t>(flip.playedBar)].pass;
        snag.at = flip.at;
        snag.written = line->pitch;
        snag.strings = {flip.string};
        snag.way = Way::LeftLightened;
        snag.group = 10'000 + line->figure;
        int const bar =
            a.positions[static_cast<std::size_t>(silencing.positions.front())].position.bar;
        snag.what = fmt::format("the left hand rests in {} to flip the lever for {}",
                                tune::barName(a.tune, bar), music::shown(line->pitch));
        for (levers::OpenWay const& way : levers::openWays(*line, a.harp, a.level, prices))
            snag.ways.push_back({way.way, way.sounds, way.price});
        std::ranges::stable_sort(snag.ways, {}, &SnagWay::cost);
        a.gaveWay.push_back(
            {line->place.bar,
             a.tune.bars[static_cast<std::size_t>(line->place.bar)]
                 .notes[static_cast<std::size_t>(line->place.note)]
                 .at,
             fmt::format("{} as written, the left hand rests to flip its lever",
                         music::shown(line->pitch))});
        proposal.snags.push_back(std::move(snag));
    }
    std::ranges::stable_sort(proposal.snags, {}, [](Snag const& snag) {
        return std::pair(snag.hand == harp::Side::Left, snag.place);
    });
}

} // namespace proposal
