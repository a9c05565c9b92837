#include "core/proposal/handrules.h"

#include "core/music/chord.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <map>
#include <optional>
#include <utility>

namespace proposal {

namespace {

using arrange::Arrangement;
using arrange::HandNote;
using harp::Side;

constexpr double gapMm = 15;          // hard limits count gaps of this width
constexpr double shortOfLimit = 1e-9; // seconds; limits met exactly are kept
constexpr std::array addedGaps{2, 5, 7};

std::string sideName(Side side) { return side == Side::Left ? "left hand" : "right hand"; }

struct Inquiry {
    Arrangement const& arrangement;
    std::vector<HandNote> notes;
    std::vector<std::string> broken;
};

void report(Inquiry& inquiry, tune::BarIndex bar, std::string const& what)
{
    inquiry.broken.push_back(tune::barName(inquiry.arrangement.tune, bar) + ": " + what);
}

tune::BarIndex writtenBar(Inquiry const& inquiry, HandNote const& note)
{
    return inquiry.arrangement.playing.bars[note.playedBar].bar;
}

// How far two fingers reach at most; none for fingers out of their order.
std::optional<double> limitMm(harp::HandModel const& hand, int low, int high)
{
    for (harp::PairReach const& pair : hand.pairs)
        if (pair.low == low && pair.high == high)
            return std::min(hand.limitMm, pair.hardGaps * gapMm);
    return std::nullopt;
}

// Two fingers of one hand that are on their strings together.
void askPair(Inquiry& inquiry, Side side, tune::BarIndex bar, harp::PlacedFinger low,
             harp::PlacedFinger high)
{
    auto const limit = limitMm(inquiry.arrangement.hand, low.finger, high.finger);
    double const width = harp::distanceMm(inquiry.arrangement.harp, low.string, high.string);
    if (limit && width <= *limit) return;
    report(inquiry, bar,
           limit ? fmt::format("{}: fingers {} and {} on strings {} and {} lie {:.0f} mm "
                               "apart, beyond {:.0f}",
                               sideName(side), low.finger, high.finger, low.string + 1,
                               high.string + 1, width, *limit)
                 : fmt::format("{}: finger {} on string {} under finger {} on string {}",
                               sideName(side), low.finger, low.string + 1, high.finger,
                               high.string + 1));
}

void askFingers(Inquiry& inquiry)
{
    for (HandNote const& note : inquiry.notes)
        if (note.finger < 1 || note.finger > harp::fingers)
            report(inquiry, writtenBar(inquiry, note),
                   fmt::format("{}: there is no finger {}", sideName(note.hand), note.finger));
}

bool isRolled(HandNote const& a, HandNote const& b)
{
    return a.rollOrder != 0 && b.rollOrder != 0 && a.rollOrder != b.rollOrder;
}

// The left hand's own plucks are asked about elsewhere.
void askRightTogether(Inquiry& inquiry)
{
    auto const& notes = inquiry.notes;
    for (std::size_t i = 0; i < notes.size(); ++i)
        for (std::size_t j = i + 1; j < notes.size() && notes[j].at == notes[i].at; ++j)
            if (notes[i].hand == Side::Right && notes[j].hand == Side::Right &&
                notes[i].string != notes[j].string && !isRolled(notes[i], notes[j]))
                askPair(inquiry, Side::Right, writtenBar(inquiry, notes[i]),
                        {notes[i].string, notes[i].finger}, {notes[j].string, notes[j].finger});
}

void askGroup(Inquiry& inquiry, arrange::PlacingGroup const& group)
{
    for (std::size_t i = 0; i < group.notes.size(); ++i)
        for (std::size_t j = i + 1; j < group.notes.size(); ++j) {
            arrange::GroupNote const& a = group.notes[i];
            arrange::GroupNote const& b = group.notes[j];
            if (a.string == b.string && a.finger == b.finger) continue;
            bool const slide = a.finger == b.finger && inquiry.arrangement.level.slides &&
                               (a.finger == 1 || a.finger == harp::fingers);
            if (slide) continue;
            auto const [low, high] =
                a.string < b.string ? std::pair(&a, &b) : std::pair(&b, &a);
            askPair(inquiry, group.hand, a.bar, {low->string, low->finger},
                    {high->string, high->finger});
        }
}

// The chord that governs a written place on a pass, if there is one.
std::optional<music::Chord> chordAt(Arrangement const& arrangement, tune::BarIndex bar,
                                    music::Length at, int pass)
{
    for (tune::ChordSpan const& span : tune::chordSpans(arrangement.tune))
        if (span.bar == bar && span.at <= at && at < span.at + span.length &&
            tune::standsOn(span.pass, pass))
            return span.chord;
    return std::nullopt;
}

void askAdded(Inquiry& inquiry)
{
    Arrangement const& a = inquiry.arrangement;
    for (HandNote const& note : inquiry.notes) {
        if (note.hand != Side::Right || note.fromTune || note.position) continue;
        tune::BarIndex const bar = writtenBar(inquiry, note);
        bool const below =
            std::any_of(inquiry.notes.begin(), inquiry.notes.end(), [&](HandNote const& other) {
                return other.fromTune && other.at == note.at && other.held == note.held &&
                       std::find(addedGaps.begin(), addedGaps.end(),
                                 other.string - note.string) != addedGaps.end();
            });
        if (!below)
            report(inquiry, bar,
                   fmt::format("right hand: string {} is no third, sixth or octave below the "
                               "tune",
                               note.string + 1));
        tune::PlayedBar const& played = a.playing.bars[note.playedBar];
        auto const chord = chordAt(a, bar, note.at - played.at, played.pass);
        if (!chord || !music::contains(*chord, music::midi(note.pitch) % 12))
            report(inquiry, bar,
                   fmt::format("right hand: {} below the tune is not a note of the chord",
                               music::plain(note.pitch)));
    }
}

void askGiven(Inquiry& inquiry)
{
    Arrangement const& a = inquiry.arrangement;
    double const shortest = 1 / a.level.rightNotesPerSecond - shortOfLimit;
    for (HandNote const& note : inquiry.notes) {
        if (note.hand != Side::Right || !note.position) continue;
        for (HandNote const& other : inquiry.notes) {
            if (other.hand != Side::Right || other.at == note.at) continue;
            music::Length const apart =
                other.at < note.at ? note.at - other.at : other.at - note.at;
            double const seconds =
                apart.wholes.toDouble() * 4 * 60 / tune::quartersPerMinute(a.tempo);
            if (seconds < shortest)
                report(inquiry, writtenBar(inquiry, note),
                       fmt::format("right hand: string {} is taken from the left {:.2f} s from "
                                   "the tune's note",
                                   note.string + 1, seconds));
        }
    }
}

} // namespace

std::vector<std::string> brokenHandRules(Arrangement const& arrangement)
{
    Inquiry inquiry{arrangement, arrange::handNotes(arrangement), {}};
    askFingers(inquiry);
    askRightTogether(inquiry);
    for (arrange::PlacingGroup const& group : arrangement.groups) askGroup(inquiry, group);
    askAdded(inquiry);
    askGiven(inquiry);
    return inquiry.broken;
}

} // namespace proposal
