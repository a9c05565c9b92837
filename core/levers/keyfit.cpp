#include "core/levers/keyfit.h"

#include "core/base/words.h"
#include "core/levers/planned.h"
#include "core/levers/uses.h"
#include "core/levers/waysround.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <limits>
#include <optional>
#include <utility>

namespace levers {

namespace {

// What counts against a fit, in points that add up to its rank. Common practice, no source: a
// harper expects her key, so leaving it must gain about two turned levers, or an octave's worth
// of strings for the left hand.
constexpr int perFlip = 30;    // a lever turned in play, each time it is played
constexpr int otherKey = 60;   // the tune leaves its written key
constexpr int perSemitone = 4; // ... and so far, octaves aside
constexpr int perOctave = 40;  // the tune leaves its written octave
constexpr int perMissingString = 12;
constexpr int perRaisedLetter = 2; // levers set before playing
constexpr int perThinString = 5;   // a string of the tune above C6, short and thin
constexpr int notPossible = 1'000'000;
// A note away from what is written, as a share of its price: a neighbour played plain weighs
// less than leaving the key, two of them as much.
constexpr double perSnagPoint = 0.5;

// Strings that the left hand wants below the tune: a tenth.
constexpr int wantedBelow = 10;
constexpr music::Pitch lastFullString{music::Letter::C, 0, 6};

constexpr int furthestSemitones = 6; // of the key; octaves come on top
constexpr int smallHarp = 28;        // strings; a lap harp may have to go further for its room
int furthestOctaves(harp::Harp const& harp) { return harp.count() <= smallHarp ? 2 : 1; }

// The signature a harp can take for a pitch class so many fifths away: within the tuning and
// seven sharps more, where all eight signatures that levers give lie [trade-1.4]; outside them
// the one nearest to no sharps.
int signatureNear(int fifths, int tuningFifths)
{
    int inTuning = fifths;
    while (inTuning < tuningFifths) inTuning += 12;
    while (inTuning >= tuningFifths + 12) inTuning -= 12;
    if (inTuning <= tuningFifths + 7) return inTuning;
    int plain = fifths;
    while (plain > 6) plain -= 12;
    while (plain < -5) plain += 12;
    return plain;
}

// The move by so many semitones, spelt for the harp. Keys that the harp can take as they are
// spelt stay so.
music::Interval moveBy(int semitones, music::Key key, harp::Harp const& harp)
{
    int const tuning = music::fifths(harp.tuning());
    int const signature = music::signature(key);
    bool const asSpelt = signature >= tuning && signature <= tuning + 7;
    if (semitones % 12 == 0 && asSpelt) return {semitones / 12 * 7, semitones};
    int const wanted = signatureNear(signature + 7 * semitones, tuning);
    if (semitones % 12 == 0 && wanted == signature) return {semitones / 12 * 7, semitones};
    music::PitchName const tonic = music::keyOf(wanted, key.mode).tonic;
    music::Pitch const from{key.tonic.letter, key.tonic.alter, 4};
    music::Pitch to{tonic.letter, tonic.alter, 4};
    to.octave += (midi(from) + semitones - midi(to)) / 12;
    return music::between(from, to);
}

Uses moved(Uses notes, music::Interval by)
{
    for (tune::PlayedNote& note : notes) note.pitch = transposed(note.pitch, by);
    return notes;
}

int raisedLetters(harp::Harp const& harp, harp::LeverSetting const& setup)
{
    std::array<bool, 7> raised{};
    for (harp::StringIndex const i : harp.indices())
        if (setup[i] == harp::Lever::Up)
            raised[static_cast<std::size_t>(index(harp.string(i).open.letter))] = true;
    return static_cast<int>(std::count(raised.begin(), raised.end(), true));
}

// Semitones of a move without its octaves, between -5 and 6.
int withoutOctaves(int semitones)
{
    int const up = ((semitones % 12) + 12) % 12;
    return up > 6 ? up - 12 : up;
}

int octavesOf(int semitones) { return (semitones - withoutOctaves(semitones)) / 12; }

std::string moveInWords(music::Interval by)
{
    constexpr auto names = base::markedList(
        "", "a semitone", "a tone", "a minor third", "a major third", "a fourth", "a tritone",
        "a fifth", "a minor sixth", "a major sixth", "a minor seventh", "a major seventh");
    if (by.semitones == 0)
        return by.steps == 0 ? base::said("as written") : base::said("as written, respelt");
    int const distance = std::abs(by.semitones);
    std::string words = base::said(names[static_cast<std::size_t>(distance % 12)]);
    if (distance >= 12)
        words += words.empty() ? base::said("an octave") : base::said(" and an octave");
    return by.semitones > 0 ? base::say("{} higher", words) : base::say("{} lower", words);
}

int rankOf(KeyFit const& fit, harp::Harp const& harp, int highestStep)
{
    int const key = withoutOctaves(fit.moved.semitones);
    int const thin = std::max(0, highestStep - diatonicStep(lastFullString));
    return perFlip * fit.flips + (key == 0 ? 0 : otherKey + perSemitone * std::abs(key)) +
           perOctave * std::abs(octavesOf(fit.moved.semitones)) +
           perMissingString * std::max(0, wantedBelow - fit.roomBelow) +
           perRaisedLetter * raisedLetters(harp, fit.setup) + perThinString * thin +
           static_cast<int>(perSnagPoint * fit.snagPrice);
}

std::string reasonFor(KeyFit const& fit)
{
    std::string const move = moveInWords(fit.moved);
    if (!fit.possible)
        return fmt::format("{}, {}: {}", shown(fit.key), move, sentence(*fit.why));
    return base::say(
        "{}, {}: {}{} while playing, {} below the tune{}", shown(fit.key), move,
        fit.snags == 0 ? "" : base::sayCount(fit.snags, "{} snag, ", "{} snags, "),
        fit.flips == 0 ? base::said("no lever flips")
                       : base::sayCount(fit.flips, "{} lever flip", "{} lever flips"),
        fit.roomBelow == 0 ? base::said("no strings")
                           : base::sayCount(fit.roomBelow, "{} string", "{} strings"),
        fit.roomBelow < wantedBelow ? base::said(", fewer than the left hand needs") : "");
}

// The tune in every key, and what it needs where the levers cannot serve every note.
class Fitting {
public:
    Fitting(tune::Tune const& tune, harp::Harp const& harp, Performance const& performance)
        : m_tune(tune), m_harp(harp), m_performance(performance),
          m_written(usesOf(tune, tune::played(tune)))
    {
    }

    // Without ways round: not possible where a note cannot be had.
    KeyFit asWritten(music::Interval by) const
    {
        KeyFit fit;
        fit.moved = by;
        fit.key = {transposed(m_tune.key.tonic, by), m_tune.key.mode};
        auto const notes = moved(m_written, by);
        if (!notes.empty())
            fit.roomBelow = std::max(
                0, lowestStep(notes) - diatonicStep(m_harp.string(0).open));
        auto planning = planned(m_harp, fit.key, notes, m_performance);
        if (planning.plan) {
            fit.possible = true;
            fit.setup = std::move(planning.plan->timeline.setup);
            fit.atEnd = fit.setup;
            for (harp::Flip const& flip : planning.plan->timeline.flips)
                fit.atEnd[flip.string] = flip.to;
            fit.flips = static_cast<int>(planning.plan->timeline.flips.size());
            fit.rank = rankOf(fit, m_harp, highestStep(notes));
        } else {
            fit.why = planning.refusal->fault;
            fit.rank = notPossible + std::abs(by.semitones);
        }
        fit.reason = reasonFor(fit);
        return fit;
    }

    // A refused key in the best case: as if its snags weighed nothing.
    int leastRank(KeyFit fit) const
    {
        setLevers(fit);
        return rankOf(fit, m_harp, highestStep(moved(m_written, fit.moved)));
    }

    // A refused key with its notes played otherwise. In a key that is not the written one a
    // long search is not worth its time: such a key stays refused. Nor is it where it cannot
    // come below `rank`.
    void mend(KeyFit& fit, tune::WayPrices const& prices, std::optional<int> rank) const
    {
        tune::Tune const there = tune::transposed(m_tune, fit.moved);
        WaysAsked asked{prices, {}, {}, fit.moved.semitones != 0};
        if (rank) asked.mostPoints = pointsWithin(*rank - leastRank(fit), prices);
        WaysRound const ways = waysRound(m_harp, there, tune::played(there),
                                         m_performance.tempo, m_performance.level, {}, asked);
        if (!ways.found) return;
        fit.possible = true;
        fit.why.reset();
        setLevers(fit);
        for (MendedNote const& note : ways.notes) fit.snags += note.place.grace ? 0 : 1;
        fit.snagPrice = ways.price;
        fit.flips = ways.flips;
        fit.rank = rankOf(fit, m_harp, highestStep(moved(m_written, fit.moved)));
        fit.reason = reasonFor(fit);
    }

private:

    // What a plan may come to, in points each time something is played, before what its flips
    // and snags weigh comes to so much of a rank. Snags weigh once however often they are
    // played, and less than flips; grace notes and windows do not weigh at all.
    int pointsWithin(int ofRank, tune::WayPrices const& prices) const
    {
        constexpr int windowsOfAll = 10; // points: less than one turn, see seating.cpp
        auto const graces = std::ranges::count_if(m_written, isGrace);
        int passes = 1;
        for (tune::PlayedBar const& bar : m_performance.bars)
            passes = std::max(passes, bar.pass);
        return static_cast<int>((ofRank + 1) * passes / perSnagPoint) + windowsOfAll +
               static_cast<int>(graces) * prices.graceLeftOut;
    }

    static int stepOf(tune::PlayedNote const& note) { return diatonicStep(note.pitch); }
    static int lowestStep(Uses const& notes)
    {
        return stepOf(*std::ranges::min_element(notes, {}, stepOf));
    }
    static int highestStep(Uses const& notes)
    {
        return notes.empty() ? 0 : stepOf(*std::ranges::max_element(notes, {}, stepOf));
    }

    void setLevers(KeyFit& fit) const
    {
        auto const setup = harp::settingFor(m_harp, fit.key);
        fit.setup = setup ? *setup : harp::nearestSetting(m_harp, fit.key);
        fit.atEnd = fit.setup;
    }

    tune::Tune const& m_tune;
    harp::Harp const& m_harp;
    Performance const& m_performance;
    Uses m_written;
};

// Finds ways round where they could make a refused key the best: in the key as written, and in
// every other that would lead if its snags weighed nothing. Where only the first is asked for,
// a key is given up as soon as it cannot be.
void mendWhereItMayLead(std::vector<KeyFit>& fits, Fitting const& fitting,
                        tune::WayPrices const& prices, KeysAsked asked)
{
    std::vector<std::pair<int, KeyFit*>> refused; // by the least rank they may come to
    int best = notPossible;
    for (KeyFit& fit : fits) {
        if (fit.possible)
            best = std::min(best, fit.rank);
        else if (fit.moved.semitones == 0) {
            fitting.mend(fit, prices, std::nullopt);
            best = std::min(best, fit.rank);
        } else
            refused.emplace_back(fitting.leastRank(fit), &fit);
    }
    std::ranges::stable_sort(refused, {}, &std::pair<int, KeyFit*>::first);
    for (auto const& [least, fit] : refused) {
        if (least >= best) return;
        std::optional<int> within;
        if (asked == KeysAsked::TheBest) within = best;
        if (asked == KeysAsked::Compared) within = best + farBehind;
        fitting.mend(*fit, prices, within);
        best = std::min(best, fit->rank);
    }
}

} // namespace

std::vector<KeyFit> keyFits(tune::Tune const& tune, harp::Harp const& harp, tune::Tempo tempo,
                            harp::Level const& level,
                            std::optional<tune::WayPrices> const& prices, KeysAsked asked)
{
    tune::Playing const playing = tune::played(tune);
    Performance const performance{tune, playing.bars, tempo, level,
                                  Clock(tune, playing, tempo, level)};
    Fitting const fitting(tune, harp, performance);
    std::vector<KeyFit> fits;
    int const furthest = furthestSemitones + 12 * furthestOctaves(harp);
    for (int semitones = -furthest; semitones <= furthest; ++semitones)
        fits.push_back(fitting.asWritten(moveBy(semitones, tune.key, harp)));
    if (prices) mendWhereItMayLead(fits, fitting, *prices, asked);
    std::stable_sort(fits.begin(), fits.end(), [](KeyFit const& a, KeyFit const& b) {
        auto const order = [](KeyFit const& fit) {
            return std::tuple(fit.rank, std::abs(fit.moved.semitones), fit.moved.semitones);
        };
        return order(a) < order(b);
    });
    return fits;
}

std::optional<int> notesLost(tune::Tune const& tune, harp::Harp const& harp, tune::Tempo tempo,
                             harp::Level const& level, music::Interval moved)
{
    tune::Playing const playing = tune::played(tune);
    Performance const performance{tune, playing.bars, tempo, level,
                                  Clock(tune, playing, tempo, level)};
    if (!harp::settingFor(harp, {transposed(tune.key.tonic, moved), tune.key.mode}))
        return std::nullopt;
    constexpr int uncrowded = 0; // levers that crowd are not looked at
    auto uses = levers::moved(usesOf(tune, playing), moved);
    for (int lost = 0; lost <= mostLost;) {
        auto const seated = mendedSeating(harp, uses, performance, {}, uncrowded);
        if (!seated.refused) return lost;
        tune::PlayedNote const inTheWay = uses[seated.refused->note];
        tune::NotePlace const place = placeOf(inTheWay, playing.bars);
        lost += isGrace(inTheWay) ? 0 : 1;
        uses.eraseIf([&](tune::PlayedNote const& use) {
            return isGrace(use) == isGrace(inTheWay) && placeOf(use, playing.bars) == place;
        });
    }
    return std::nullopt;
}

int leversRaised(harp::LeverSetting const& setup)
{
    return static_cast<int>(std::count(setup.begin(), setup.end(), harp::Lever::Up));
}

} // namespace levers
