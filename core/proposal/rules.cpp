#include "core/proposal/rules.h"

#include "core/proposal/handrules.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <map>
#include <optional>
#include <tuple>

namespace proposal {

namespace {

using arrange::Arrangement;
using arrange::HandNote;
using harp::Side;
using tune::PlayedBarIndex;

constexpr double gapMmOfReach = 15;   // PairReach counts gaps of this width
constexpr double shortOfLimit = 1e-9; // seconds; limits met exactly are kept

PlayedBarIndex playedBarAt(Arrangement const& arrangement, music::Moment at)
{
    auto const& bars = arrangement.playing.bars;
    auto const after = std::find_if(bars.begin(), bars.end(),
                                    [at](tune::PlayedBar const& bar) { return bar.at > at; });
    return bars.indexOf(after) - 1;
}

// All that is looked at, and what was found.
struct Inquiry {
    Arrangement const& arrangement;
    pattern::PatternBook const& book;
    std::vector<HandNote> notes; // by time, then string
    std::vector<std::string> broken;
};

std::string barOf(Arrangement const& arrangement, PlayedBarIndex playedBar)
{
    auto const& bars = arrangement.playing.bars;
    if (!bars.holds(playedBar)) return "beyond the last bar";
    tune::PlayedBar const& bar = bars[playedBar];
    return fmt::format("{}, time {}", tune::barName(arrangement.tune, bar.bar), bar.pass);
}

void report(Inquiry& inquiry, PlayedBarIndex playedBar, std::string const& what)
{
    inquiry.broken.push_back(barOf(inquiry.arrangement, playedBar) + ": " + what);
}

double seconds(Arrangement const& arrangement, music::Length length)
{
    return length.wholes.toDouble() * 4 * 60 / tune::quartersPerMinute(arrangement.tempo);
}

bool isOnHarp(Inquiry const& inquiry, harp::StringIndex string)
{
    return string >= 0 && string < inquiry.arrangement.harp.count();
}

// Followed flip by flip from the set-up.
harp::Lever leverThen(harp::LeverTimeline const& levers, harp::StringIndex string,
                      music::Moment at)
{
    harp::Lever lever = levers.setup[string];
    for (harp::Flip const& flip : levers.flips)
        if (flip.string == string && flip.at <= at) lever = flip.to;
    return lever;
}

// Asked first and of the voicings themselves: nothing sounds on a string that is not there.
void askStrings(Inquiry& inquiry)
{
    Arrangement const& a = inquiry.arrangement;
    for (arrange::ArrangedPosition const& p : a.positions)
        for (arrange::VoicedNote const& note : p.voicing.notes)
            if (!isOnHarp(inquiry, note.string))
                report(inquiry, p.position.played.front().playedBar,
                       fmt::format("left hand: there is no string {}", note.string + 1));
}

void askLevers(Inquiry& inquiry)
{
    Arrangement const& a = inquiry.arrangement;
    for (harp::StringIndex const string : a.harp.indices())
        if (a.levers.setup[string] == harp::Lever::Up && !a.harp.string(string).hasLever)
            report(inquiry, 0, fmt::format("string {} has no lever to set", string + 1));
    for (HandNote const& note : inquiry.notes) {
        music::Pitch sounds = a.harp.string(note.string).open;
        if (leverThen(a.levers, note.string, note.at) == harp::Lever::Up) ++sounds.alter;
        if (!(sounds == note.pitch))
            report(inquiry, note.playedBar,
                   fmt::format("string {} sounds {}, not {}", note.string + 1,
                               music::plain(sounds), music::plain(note.pitch)));
    }
}

// Calls ask(first, last) for each run of notes that begin together.
template<typename Ask>
void atEachOnset(std::vector<HandNote> const& notes, Ask ask)
{
    for (auto first = notes.begin(); first != notes.end();) {
        auto const last = std::find_if(
            first, notes.end(), [&](HandNote const& note) { return !(note.at == first->at); });
        ask(first, last);
        first = last;
    }
}

void askHandsTogether(Inquiry& inquiry)
{
    atEachOnset(inquiry.notes, [&](auto first, auto last) {
        std::map<int, int> plucks;
        std::optional<harp::StringIndex> leftTop;
        std::optional<harp::StringIndex> rightBottom;
        for (auto note = first; note != last; ++note) {
            ++plucks[note->string];
            if (note->hand == Side::Left)
                leftTop = std::max(leftTop.value_or(note->string), note->string);
            else
                rightBottom = std::min(rightBottom.value_or(note->string), note->string);
        }
        for (auto const& [string, times] : plucks)
            if (times > 1)
                report(inquiry, first->playedBar,
                       fmt::format("string {} is plucked twice at once", string + 1));
        if (leftTop && rightBottom && *leftTop > *rightBottom)
            report(inquiry, first->playedBar,
                   fmt::format("the hands are crossed: left on string {}, right on {}",
                               *leftTop + 1, *rightBottom + 1));
    });
}

std::optional<harp::PairReach> reachOf(harp::HandModel const& hand, int low, int high)
{
    for (harp::PairReach const& pair : hand.pairs)
        if (pair.low == low && pair.high == high) return pair;
    return std::nullopt;
}

// Two notes of the left hand, the lower first, that begin together and are not rolled.
void askReach(Inquiry& inquiry, HandNote const& low, HandNote const& high)
{
    harp::HandModel const& hand = inquiry.arrangement.hand;
    if (low.finger <= high.finger) {
        report(inquiry, low.playedBar,
               fmt::format("left hand: finger {} on string {} under finger {} on string {}",
                           low.finger, low.string + 1, high.finger, high.string + 1));
        return;
    }
    double const width = harp::distanceMm(inquiry.arrangement.harp, low.string, high.string);
    auto const pair = reachOf(hand, low.finger, high.finger);
    double const limit =
        pair ? std::min(hand.limitMm, pair->hardGaps * gapMmOfReach) : hand.limitMm;
    if (width > limit)
        report(inquiry, low.playedBar,
               fmt::format("left hand: strings {} and {} are {:.0f} mm apart, beyond {:.0f} "
                           "for fingers {} and {}",
                           low.string + 1, high.string + 1, width, limit, low.finger,
                           high.finger));
}

void askLeftReach(Inquiry& inquiry)
{
    std::vector<HandNote> left;
    for (HandNote const& note : inquiry.notes)
        if (note.hand == Side::Left) left.push_back(note);
    atEachOnset(left, [&](auto first, auto last) {
        for (auto low = first; low != last; ++low)
            for (auto high = std::next(low); high != last; ++high)
                if (low->rollOrder == 0 || high->rollOrder == 0 ||
                    low->rollOrder == high->rollOrder)
                    askReach(inquiry, *low, *high);
    });
}

bool mayRoll(pattern::PatternBook const& book, std::string const& name)
{
    return std::any_of(book.patterns.begin(), book.patterns.end(),
                       [&](pattern::Pattern const& p) { return p.name == name && p.rolls; });
}

void askShapes(Inquiry& inquiry)
{
    Arrangement const& a = inquiry.arrangement;
    for (arrange::ArrangedPosition const& p : a.positions) {
        auto const& notes = p.voicing.notes;
        if (notes.empty()) continue;
        PlayedBarIndex const playedBar = p.position.played.front().playedBar;
        auto const [low, high] =
            std::minmax_element(notes.begin(), notes.end(), [](auto const& x, auto const& y) {
                return x.string < y.string;
            });
        int const strings = high->string - low->string + 1;
        if (strings > a.level.leftStrings)
            report(inquiry, playedBar,
                   fmt::format("left hand: a shape {} strings wide, the level allows {}",
                               strings, a.level.leftStrings));
        bool const rolls = std::any_of(notes.begin(), notes.end(),
                                       [](auto const& note) { return note.rollOrder > 0; });
        if (rolls && !mayRoll(inquiry.book, p.voicing.pattern))
            report(inquiry, playedBar,
                   fmt::format("left hand: {} is not a pattern to roll", p.voicing.pattern));
        for (arrange::VoicedNote const& note : notes)
            if (note.string != pattern::stringOf(p.voicing.rootString, note.degree) ||
                note.at < music::Length{} || note.at >= p.position.span ||
                note.held <= music::Length{})
                report(inquiry, playedBar,
                       fmt::format("left hand: degree {} is not on its string or in its chord",
                                   note.degree));
    }
}

void askLeftRates(Inquiry& inquiry)
{
    Arrangement const& a = inquiry.arrangement;
    double const shortest = 1 / a.level.leftNotesPerSecond - shortOfLimit;
    double const shortestOnString = 1 / a.level.sameStringPerSecond - shortOfLimit;
    std::optional<music::Moment> before;
    std::map<int, music::Moment> lastOn;
    for (HandNote const& note : inquiry.notes) {
        if (note.hand != Side::Left) continue;
        if (before && !(*before == note.at) && seconds(a, note.at - *before) < shortest)
            report(inquiry, note.playedBar,
                   fmt::format("left hand: {:.2f} s between two notes, the level needs {:.2f}",
                               seconds(a, note.at - *before), shortest));
        before = note.at;
        auto const last = lastOn.find(note.string);
        if (last != lastOn.end() && seconds(a, note.at - last->second) < shortestOnString)
            report(inquiry, note.playedBar,
                   fmt::format("left hand: string {} again after {:.2f} s", note.string + 1,
                               seconds(a, note.at - last->second)));
        lastOn.insert_or_assign(note.string, note.at);
    }
}

// What the left hand covers from the first to the last note of one position as it is played.
struct Covered {
    music::Moment first;
    music::Moment last;
    harp::StringIndex low = 0;
    harp::StringIndex high = 0;
};

std::vector<Covered> coveredByLeft(std::vector<HandNote> const& notes)
{
    std::map<int, Covered> byPosition;
    for (HandNote const& note : notes) {
        if (!note.position) continue;
        auto const [place, isNew] = byPosition.try_emplace(
            *note.position, Covered{note.at, note.at, note.string, note.string});
        Covered& covered = place->second;
        covered.last = note.at;
        covered.low = std::min(covered.low, note.string);
        covered.high = std::max(covered.high, note.string);
    }
    std::vector<Covered> out;
    for (auto const& [position, covered] : byPosition) out.push_back(covered);
    return out;
}

// By how many strings the whole hand has moved: none when only it opens or closes.
int leapOf(Covered const& before, Covered const& after)
{
    int const low = after.low - before.low;
    int const high = after.high - before.high;
    if ((low < 0) != (high < 0)) return 0;
    return std::min(std::abs(low), std::abs(high));
}

// A leap of an octave wants the level's time, of which a hand in a hurry may save a fifth.
void askLeaps(Inquiry& inquiry)
{
    Arrangement const& a = inquiry.arrangement;
    constexpr int octave = 7;
    constexpr double inHurry = 0.8;
    auto const covered = coveredByLeft(inquiry.notes);
    for (std::size_t i = 1; i < covered.size(); ++i) {
        if (leapOf(covered[i - 1], covered[i]) < octave) continue;
        double const time = seconds(a, covered[i].first - covered[i - 1].last);
        if (time < inHurry * a.level.octaveLeapSeconds - shortOfLimit)
            report(inquiry, playedBarAt(a, covered[i].first),
                   fmt::format("left hand: a leap of an octave in {:.2f} s", time));
    }
}

void askFlips(Inquiry& inquiry)
{
    for (harp::Flip const& flip : inquiry.arrangement.levers.flips) {
        if (!isOnHarp(inquiry, flip.string) ||
            !inquiry.arrangement.harp.string(flip.string).hasLever)
            report(inquiry, flip.playedBar,
                   fmt::format("string {} has no lever to flip", flip.string + 1));
        for (HandNote const& note : inquiry.notes) {
            if (note.hand == flip.hand && flip.freeFrom < note.at && note.at < flip.freeTo)
                report(inquiry, note.playedBar,
                       fmt::format("string {} is plucked by the hand that flips the lever of "
                                   "string {}",
                                   note.string + 1, flip.string + 1));
            // A note of the tune may be damped for it in its second half, see levers/clock.h.
            music::Length const wanted =
                note.held * (note.fromTune ? music::Rational(1, 2) : music::Rational(1));
            if (note.string == flip.string && note.at < flip.at && flip.at < note.at + wanted)
                report(inquiry, note.playedBar,
                       fmt::format("the lever of string {} is flipped while its note is counted",
                                   flip.string + 1));
        }
    }
}

// A note of the tune as it must be heard: time, length, MIDI key.
using Heard = std::tuple<music::Moment, music::Length, int>;

void askTune(Inquiry& inquiry)
{
    std::map<Heard, int> missing; // less than none: too many
    std::map<Heard, PlayedBarIndex> where;
    for (tune::PlayedNote const& note : tune::played(inquiry.arrangement.tune).notes) {
        Heard const heard{note.at, note.held, music::midi(note.pitch)};
        ++missing[heard];
        where[heard] = note.playedBar;
    }
    for (HandNote const& note : inquiry.notes) {
        if (!note.fromTune) continue;
        Heard const heard{note.at, note.held, music::midi(note.pitch)};
        --missing[heard];
        where[heard] = note.playedBar;
    }
    for (auto const& [heard, times] : missing)
        if (times != 0)
            report(inquiry, where[heard],
                   fmt::format("the tune's note of MIDI key {} {}", std::get<int>(heard),
                               times > 0 ? "is missing" : "is not a note of the tune"));
}

} // namespace

std::vector<std::string> brokenRules(arrange::Arrangement const& arrangement,
                                     pattern::PatternBook const& book)
{
    Inquiry inquiry{arrangement, book, {}, {}};
    askStrings(inquiry);
    if (!inquiry.broken.empty()) return inquiry.broken;
    inquiry.notes = arrange::handNotes(arrangement);
    askLevers(inquiry);
    askHandsTogether(inquiry);
    askLeftReach(inquiry);
    askShapes(inquiry);
    askLeftRates(inquiry);
    askLeaps(inquiry);
    askFlips(inquiry);
    askTune(inquiry);
    for (std::string& sentence : brokenHandRules(arrangement))
        inquiry.broken.push_back(std::move(sentence));
    return inquiry.broken;
}

} // namespace proposal
