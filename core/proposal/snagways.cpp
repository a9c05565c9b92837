#include "core/base/words.h"
#include "core/levers/keyfit.h"
#include "core/levers/waysround.h"
#include "core/proposal/formed.h"
#include "core/proposal/keywish.h"
#include "core/proposal/proposal.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <optional>
#include <set>

namespace proposal {

namespace {

using tune::Way;

// What a change of the whole tune weighs by itself, in the points of a snag's ways: as bad as
// two or three notes played plain. Common practice, no source.
constexpr int slowerByATenth = 120;
constexpr int otherKey = 240;
constexpr int aSemitoneFurther = 25;
constexpr int aLevelHigher = 220;

struct Left {
    int snags = 0;
    int price = 0;
};

// The snags of the tune in that key for this brief.
Left leftOver(Brief const& brief, music::Interval moved)
{
    tune::Tune const tune = tune::transposed(formOf(brief).tune, moved);
    auto const playing = tune::played(tune);
    auto const tempo = tempoWished(brief);
    auto const plan = levers::leverPlanFor(brief.harp, tune, playing, tempo, brief.level,
                                           brief.leverWishes, {{}, true});
    if (plan.plan) return {};
    auto const ways = levers::waysRound(brief.harp, tune, playing, tempo, brief.level,
                                        brief.leverWishes, {brief.weights.ways, {}, {}});
    Left left{0, ways.price};
    for (levers::MendedNote const& note : ways.notes) left.snags += note.place.grace ? 0 : 1;
    return left;
}

int rightSnags(Proposal const& proposal)
{
    return static_cast<int>(std::ranges::count_if(
        proposal.snags, [](Snag const& snag) { return snag.hand == harp::Side::Right; }));
}

bool leftHandRests(Proposal const& proposal)
{
    return static_cast<int>(proposal.snags.size()) > rightSnags(proposal);
}

// Whether so many snags of the tune's notes are worth a trial: fewer than there are, or as many
// where the left hand may gain.
bool worthTrying(Left const& left, Proposal const& proposal)
{
    int const now = rightSnags(proposal);
    return left.snags < now || (left.snags == now && leftHandRests(proposal));
}

std::string leftWords(int snags)
{
    if (snags == 0) return base::said("no snag is left");
    return base::sayCount(snags, "{} snag is left", "{} snags are left");
}

using Wanted = std::function<bool()>;

// "7 of 8 snags are left"
std::string leftOfWords(int left, std::size_t of)
{
    return left == 0
               ? leftWords(0)
               : base::sayCount(left, "{} of {} snags is left", "{} of {} snags are left", of);
}

void trySlower(Proposal const& proposal, Wanted const& wanted, std::vector<WholeTuneWay>& out)
{
    constexpr int fastFlips = 4; // below this level time in beats binds, not in seconds
    if (proposal.arrangement.level.number < fastFlips) return;
    double const own = tune::quartersPerMinute(proposal.arrangement.tempo);
    for (int tenths = 1; tenths <= 2; ++tenths) {
        if (!wanted()) return;
        Brief slower = proposal.brief;
        slower.quartersPerMinute = own * (1 - 0.1 * tenths);
        Left const left = leftOver(slower, proposal.moved);
        if (!worthTrying(left, proposal)) continue;
        out.push_back(
            {Way::Slower,
             base::say("At {}: {}.",
                       tune::tempoWords(music::beatLength(proposal.arrangement.tune.meter),
                                        *slower.quartersPerMinute),
                       leftWords(left.snags)),
             slower, left.snags, slowerByATenth * tenths + left.price});
        return;
    }
}

void tryLevels(Proposal const& proposal, std::vector<harp::Level> const& levels,
               Wanted const& wanted, std::vector<WholeTuneWay>& out)
{
    for (harp::Level const& level : levels) {
        if (!wanted()) return;
        if (level.number <= proposal.arrangement.level.number) continue;
        Brief higher = proposal.brief;
        higher.level = level;
        higher.key = proposal.arrangement.tune.key;
        Left const left = leftOver(higher, proposal.moved);
        if (!worthTrying(left, proposal)) continue;
        out.push_back(
            {Way::Level,
             base::say("At level {}, {}: {}.", level.number, level.name, leftWords(left.snags)),
             higher, left.snags,
             aLevelHigher * (level.number - proposal.arrangement.level.number) + left.price});
    }
}

void tryKeys(Proposal const& proposal, std::vector<WholeTuneWay>& out)
{
    Brief const& brief = proposal.brief;
    auto const fits = levers::keyFits(tune::changed(brief.tune, brief.changes), brief.harp,
                                      tempoWished(brief), brief.level, brief.weights.ways);
    auto const now = std::ranges::find(fits, proposal.moved, &levers::KeyFit::moved);
    for (levers::KeyFit const& fit : fits) {
        // A left hand that rests needs strings below the tune.
        bool const more = now == fits.end() || fit.roomBelow > now->roomBelow;
        if (!fit.possible || fit.key == proposal.arrangement.tune.key ||
            !worthTrying({fit.snags, 0}, proposal) ||
            (fit.snags == rightSnags(proposal) && !more))
            continue;
        Brief other = brief;
        other.key = fit.key;
        int const apart = std::abs(fit.moved.semitones - proposal.moved.semitones);
        out.push_back({Way::Key,
                       base::say("In {}: {}.", music::shown(fit.key), leftWords(fit.snags)),
                       other, fit.snags,
                       otherKey + aSemitoneFurther * std::min(apart % 12, 12 - apart % 12) +
                           fit.snagPrice});
        return;
    }
}

} // namespace

std::vector<WholeTuneWay> wholeTuneWays(Proposal const& proposal,
                                        std::vector<harp::Level> const& levels,
                                        std::function<bool()> const& asked)
{
    Wanted const wanted = asked ? asked : [] { return true; };
    std::vector<WholeTuneWay> out;
    if (proposal.snags.empty()) return out;
    trySlower(proposal, wanted, out);
    if (wanted()) tryKeys(proposal, out);
    tryLevels(proposal, levels, wanted, out);
    // Each is tried: what is offered leaves as many snags, in both hands, as it says. Of levels
    // the lowest that helps is offered, and a higher one where it leaves less than half of those.
    std::optional<int> leftAtLevel;
    std::erase_if(out, [&](WholeTuneWay& way) {
        if ((way.way == Way::Level && leftAtLevel == 0) || !wanted()) return true;
        auto there = propose(way.brief);
        if (!there || there->snags.size() >= proposal.snags.size()) return true;
        int const left = static_cast<int>(there->snags.size());
        if (way.way == Way::Level && leftAtLevel && 2 * left >= *leftAtLevel) return true;
        std::string const told = leftWords(way.snagsLeft);
        if (auto const at = way.sentence.find(told); at != std::string::npos)
            way.sentence.replace(at, told.size(), leftOfWords(left, proposal.snags.size()));
        way.snagsLeft = left;
        way.tried = std::make_shared<Proposal const>(*std::move(there));
        if (way.way == Way::Level) leftAtLevel = left;
        return false;
    });
    std::ranges::stable_sort(out, {}, &WholeTuneWay::cost);
    return out;
}

Brief withoutSnagChoice(Proposal const& proposal, std::size_t snag)
{
    Brief brief = proposal.brief;
    Snag const& here = proposal.snags[snag];
    std::set<tune::NotePlace> places{here.place};
    for (Snag const& other : proposal.snags)
        if (other.hand == here.hand && other.group == here.group && here.decided &&
            other.decided)
            places.insert(other.place);
    // What was decided for all that are alike goes with any of them.
    std::erase_if(brief.snagChoices, [&](SnagChoice const& choice) {
        return choice.place == here.place || (choice.alike && places.contains(choice.place));
    });
    return brief;
}

Brief withSnagWay(Proposal const& proposal, std::size_t snag, tune::Way way, bool alike)
{
    Brief brief = proposal.brief;
    Snag const& here = proposal.snags[snag];
    if (alike)
        brief = withoutSnagChoice(proposal, snag);
    else
        std::erase_if(brief.snagChoices, [&](SnagChoice const& choice) {
            return !choice.alike && choice.place == here.place;
        });
    brief.snagChoices.push_back({here.place, way, alike});
    return brief;
}

} // namespace proposal
