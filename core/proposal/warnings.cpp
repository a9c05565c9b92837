#include "core/proposal/warnings.h"

#include "core/proposal/barlist.h"

#include "core/arrange/build.h"
#include "core/base/words.h"
#include "core/proposal/formed.h"
#include "core/proposal/locks.h"
#include "core/proposal/mendedlevers.h"
#include "core/proposal/repeats.h"
#include "core/proposal/silence.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <optional>
#include <set>

namespace proposal {

namespace {

using arrange::Arrangement;
using Sentences = std::vector<std::string>;

constexpr int stringsOfTenth = 10;
constexpr int stringsOfOctave = 8;

// Care of the hands [trade-3.8]: limits beyond which the reader is told.
constexpr int tenthsInWindow = 4;
constexpr int windowBars = 8;
constexpr int busyBars = 16;
constexpr double busyShare = 0.8;
constexpr int leapsInARow = 8; // octaves, a beat or less apart

double seconds(music::Length length, tune::Tempo tempo)
{
    return length.wholes.toDouble() * 4 * 60 / tune::quartersPerMinute(tempo);
}

// --- reading

std::string placeName(tune::Place place)
{
    if (place.line == 0) return base::said("The file");
    if (place.column == 0) return base::say("Line {}", place.line);
    return base::say("Line {}, column {}", place.line, place.column);
}

// The same remark at many places is made once.
Sentences ofReading(tune::Tune const& tune)
{
    std::map<std::pair<std::string, std::string>, int> times;
    for (tune::Remark const& remark : tune.said) ++times[{remark.what, remark.did}];
    Sentences out;
    for (tune::Remark const& remark : tune.said) {
        auto const found = times.find({remark.what, remark.did});
        if (found == times.end()) continue;
        int const others = found->second - 1;
        times.erase(found);
        std::string const also = others == 0 ? "" : base::say(" (and {} more like it)", others);
        out.push_back(fmt::format("{}: {}; {}{}.", placeName(remark.place), remark.what,
                                  remark.did, also));
    }
    return out;
}

// --- key and tempo

Sentences ofMode(Brief const& brief)
{
    auto const* wished = std::get_if<music::Key>(&brief.key);
    if (wished == nullptr || wished->mode == brief.tune.key.mode) return {};
    return {base::say("The tune is {}, and transposing cannot make it {}, so it is now in {}.",
                      base::said(music::modeName(brief.tune.key.mode)),
                      base::said(music::modeName(wished->mode)),
                      music::shown(music::Key{wished->tonic, brief.tune.key.mode}))};
}

Sentences ofTempo(Proposal const& proposal)
{
    if (proposal.brief.quartersPerMinute || proposal.brief.tune.tempo) return {};
    return {base::say("The tune gives no tempo, so {} is used, a good speed for learning "
                      "this kind of tune.",
                      tune::tempoWords(proposal.arrangement.tempo.beat,
                                       tune::quartersPerMinute(proposal.arrangement.tempo)))};
}

// --- locks

Sentences ofLocks(Proposal const& proposal)
{
    Sentences out;
    auto const& locks = proposal.brief.locks;
    auto const dropped =
        placed(locks, proposal.lattice, proposal.brief.harp, proposal.moved).dropped;
    for (std::size_t index : dropped) {
        Lock const& lock = locks[index];
        bool const barStands = proposal.arrangement.tune.bars.holds(lock.bar);
        out.push_back(base::say(
            "The {} that you kept in {} cannot be played now, so the best other shape is used "
            "there.",
            lock.voicing.pattern,
            barStands
                ? tune::barName(proposal.arrangement.tune, lock.bar)
                : base::say("bar {}, which the tune no longer has", lock.bar.value() + 1)));
    }
    return out;
}

Sentences ofFingers(Proposal const& proposal)
{
    std::set<tune::BarIndex> bars;
    for (int const index : proposal.unkeptFingers) {
        tune::BarIndex const bar = proposal.brief.fingers[static_cast<std::size_t>(index)].bar;
        if (proposal.arrangement.tune.bars.holds(bar)) bars.insert(bar);
    }
    if (bars.empty()) return {};
    return {base::say("A finger that you chose in {} cannot be used now, so another is used "
                      "there until it can.",
                      barList(proposal.arrangement.tune, bars))};
}

std::string beyondHands(Proposal const& proposal, arrange::PositionIndex from,
                        arrange::PositionIndex to)
{
    auto const barOf = [&](arrange::PositionIndex position) {
        tune::BarIndex const bar = proposal.lattice.positions[position].bar;
        return tune::barName(proposal.arrangement.tune, bar);
    };
    return base::say("From {} to {} the left hand has no time to move between the shapes you "
                     "kept; let one of them change.",
                     barOf(from), barOf(to));
}

Sentences ofMovesBeyondHands(Proposal const& proposal)
{
    Sentences out;
    auto const& chosen = proposal.solution.best.candidates;
    for (arrange::PositionIndex position = 0; position + 1 < chosen.size(); ++position)
        if (proposal.lattice.pair(position, chosen[position], chosen[position + 1]) >=
            arrange::unplayablePair)
            out.push_back(beyondHands(proposal, position, position + 1));
    for (Conflict const& conflict : conflicts(proposal, proposal.solution.best))
        out.push_back(
            beyondHands(proposal, conflict.front().position, conflict.back().position));
    return out;
}

// --- levers

// What the arranger has changed of the tune so that the harp can give it.
Sentences ofChanges(Brief const& brief)
{
    Sentences out;
    tune::Tune before = brief.tune;
    for (tune::NoteChange const& change : brief.changes) {
        std::string sentence = tune::changeSentence(before, change);
        if (!sentence.empty()) out.push_back(base::say("As chosen: {}", sentence));
        before = tune::changed(std::move(before), {change});
    }
    return out;
}

// A tune without chords.
Sentences ofDrone(Brief const& brief)
{
    if (tune::hasChords(brief.tune)) return {};
    return {base::said(
        "The tune has no chord symbols: the left hand plays over a drone of its key until "
        "you give it chords.")};
}

// Times through that are not played in the octave that their manner asks for.
Sentences ofOctavesLeft(Proposal const& proposal)
{
    Sentences out;
    for (int const time : proposal.octavesLeft)
        out.push_back(base::say("Time {} is played in the octave it is written in, because the "
                                "harp has no room for it in the other one.",
                                time));
    return out;
}

// Grace notes of the tune that the arrangement has not.
Sentences ofGracesLeft(Proposal const& proposal)
{
    tune::Tune const asked = tune::transposed(formOf(proposal.brief).tune, proposal.moved);
    tune::Tune const& arranged = proposal.arrangement.tune;
    std::set<tune::BarIndex> bars;
    for (tune::BarIndex bar = 0; bar < asked.bars.size() && bar < arranged.bars.size(); ++bar)
        for (tune::NoteIndex const note : asked.bars[bar].notes.indices())
            if (asked.bars[bar].notes[note].graces.size() >
                    arranged.bars[bar].notes[note].graces.size() &&
                asked.bars[bar].notes[note].pitches.empty() ==
                    arranged.bars[bar].notes[note].pitches.empty())
                bars.insert(bar);
    if (bars.empty()) return {};
    return {base::say("A grace note in {} is left out, because there is no time to flip its "
                      "lever.",
                      barList(arranged, bars))};
}

Sentences ofLeverWishes(Proposal const& proposal)
{
    Sentences out;
    arrange::Arrangement const& a = proposal.arrangement;
    for (harp::LeverWish const& wish : proposal.brief.leverWishes) {
        auto const string = harp::stringFor(a.harp, {wish.letter, 0, wish.octave});
        if (!string || !a.harp.string(*string).hasLever) continue;
        if (a.levers.setup[*string] == wish.lever) continue;
        out.push_back(base::say("The lever of {} is set as the tune needs it, not as you "
                                "asked.",
                                harp::stringName(a.harp, *string)));
    }
    return out;
}

// --- left hand

Sentences ofForcedRests(Proposal const& proposal)
{
    std::set<tune::BarIndex> flips;
    std::set<tune::BarIndex> others;
    for (ForcedRest const& rest : forcedRests(proposal))
        (rest.forFlip ? flips : others).insert(proposal.lattice.positions[rest.position].bar);
    Sentences out;
    tune::Tune const& tune = proposal.arrangement.tune;
    if (!flips.empty())
        out.push_back(base::say("The left hand rests in {} to flip a lever. A slower tempo, a "
                                "higher level or another key may help.",
                                barList(tune, flips)));
    if (!others.empty())
        out.push_back(base::say("There is nothing the left hand can play in {}, so it rests "
                                "there. A slower tempo, a higher level, a larger hand or harp, "
                                "or another key may help.",
                                barList(tune, others)));
    return out;
}

Sentences ofBarsWithoutChord(Proposal const& proposal)
{
    tune::Tune const& tune = proposal.arrangement.tune;
    std::set<tune::BarIndex> bare;
    for (tune::BarIndex const bar : tune.bars.indices())
        if (tune.bars[bar].number > 0) bare.insert(bar);
    for (tune::ChordSpan const& span : tune::chordSpans(tune)) bare.erase(span.bar);
    if (bare.empty()) return {};
    return {base::say("There is no chord symbol for {}, so the left hand rests there.",
                      barList(tune, bare))};
}

// --- tune

Sentences ofLowTune(Arrangement const& arrangement)
{
    std::set<tune::BarIndex> bars;
    std::optional<music::Pitch> lowest;
    for (tune::PlayedNote const& note : arrangement.playing.notes) {
        auto const string = harp::stringFor(arrangement.harp, note.pitch);
        if (!string || *string >= stringsOfOctave) continue;
        bars.insert(arrangement.playing.bars[note.playedBar].bar);
        if (!lowest || music::midi(note.pitch) < music::midi(*lowest)) lowest = note.pitch;
    }
    if (!lowest) return {};
    return {base::say("The tune goes down to {} in {}, which leaves the left hand less than "
                      "an octave below it.",
                      music::shown(*lowest), barList(arrangement.tune, bars))};
}

// Onsets of the right hand, one for notes plucked together.
std::vector<music::Moment> onsets(tune::Playing const& playing)
{
    std::vector<music::Moment> out;
    for (tune::PlayedNote const& note : playing.notes)
        if (out.empty() || out.back() < note.at) out.push_back(note.at);
    return out;
}

// Notes a second over the busiest five onsets: a single short note is no speed.
double busiestRate(Arrangement const& arrangement)
{
    constexpr std::size_t gaps = 4;
    auto const times = onsets(arrangement.playing);
    double busiest = 0;
    for (std::size_t i = gaps; i < times.size(); ++i)
        busiest =
            std::max(busiest, gaps / seconds(times[i] - times[i - gaps], arrangement.tempo));
    return busiest;
}

Sentences ofFastTune(Arrangement const& arrangement)
{
    double const rate = busiestRate(arrangement);
    double const limit = arrangement.level.rightNotesPerSecond;
    if (rate <= limit) return {};
    std::string const fitting =
        tune::tempoWords(music::beatLength(arrangement.tune.meter),
                         tune::quartersPerMinute(arrangement.tempo) * limit / rate);
    return {base::say("The tune itself has {:.1f} notes a second, more than the {:.1f} of "
                      "level {}; try {}.",
                      rate, limit, arrangement.level.number, fitting)};
}

// --- care of the hands

bool holdsTenth(arrange::Voicing const& voicing)
{
    for (arrange::VoicedNote const& low : voicing.notes)
        for (arrange::VoicedNote const& high : voicing.notes)
            if (high.string - low.string >= stringsOfTenth - 1 &&
                low.at < high.at + high.held && high.at < low.at + low.held)
                return true;
    return false;
}

using PerPlayedBar = base::List<tune::PlayedBarIndex, int>;

// How often something falls into each played bar.
PerPlayedBar tenthsByBar(Arrangement const& arrangement)
{
    PerPlayedBar out(arrangement.playing.bars.size(), 0);
    for (arrange::ArrangedPosition const& p : arrangement.positions)
        if (holdsTenth(p.voicing))
            for (arrange::Occurrence const& when : p.position.played) ++out[when.playedBar];
    return out;
}

Sentences ofTenths(Arrangement const& arrangement)
{
    auto const tenths = tenthsByBar(arrangement);
    int inWindow = 0;
    for (tune::PlayedBarIndex const bar : tenths.indices()) {
        inWindow += tenths[bar];
        if (bar >= windowBars) inWindow -= tenths[bar - windowBars];
        if (inWindow <= tenthsInWindow) continue;
        return {base::say(
            "The left hand holds a tenth {} times in the {} bars up to {}. If your hand tires, "
            "choose narrower shapes there and ask your teacher. If anything hurts, stop; ask "
            "your teacher, and see a doctor or physiotherapist.",
            inWindow, windowBars,
            tune::barName(arrangement.tune, arrangement.playing.bars[bar].bar))};
    }
    return {};
}

// How many times each hand plucks in each played bar, notes together once.
PerPlayedBar onsetsByBar(Arrangement const& arrangement,
                         std::vector<arrange::HandNote> const& notes, harp::Side hand)
{
    PerPlayedBar out(arrangement.playing.bars.size(), 0);
    std::optional<music::Moment> last;
    for (arrange::HandNote const& note : notes) {
        if (note.hand != hand || last == note.at) continue;
        last = note.at;
        ++out[note.playedBar];
    }
    return out;
}

Sentences ofBusyHand(Arrangement const& arrangement,
                     std::vector<arrange::HandNote> const& notes, harp::Side hand)
{
    bool const left = hand == harp::Side::Left;
    auto const onsetsIn = onsetsByBar(arrangement, notes, hand);
    double const busy = busyShare * (left ? arrangement.level.leftNotesPerSecond
                                          : arrangement.level.rightNotesPerSecond);
    int run = 0;
    for (tune::PlayedBarIndex const played : onsetsIn.indices()) {
        tune::BarIndex const bar = arrangement.playing.bars[played].bar;
        double const lasts = seconds(arrangement.tune.bars[bar].length, arrangement.tempo);
        run = onsetsIn[played] > busy * lasts ? run + 1 : 0;
        if (run <= busyBars) continue;
        std::string const to = tune::barName(arrangement.tune, bar);
        return {
            left
                ? base::say("The left hand plays near its limit for more than {} bars without "
                            "a rest, up to {}. Simpler shapes or a slower tempo will rest it; "
                            "ask your teacher. If anything hurts, stop; ask your teacher, and "
                            "see a doctor or physiotherapist.",
                            busyBars, to)
                : base::say("The right hand plays near its limit for more than {} bars without "
                            "a rest, up to {}. A pause between parts or a slower tempo will "
                            "rest it; ask your teacher. If anything hurts, stop; ask your "
                            "teacher, and see a doctor or physiotherapist.",
                            busyBars, to)};
    }
    return {};
}

// Beats on which the left hand goes an octave or more from its last note, one after another.
Sentences ofLeaps(Arrangement const& arrangement, std::vector<arrange::HandNote> const& notes)
{
    arrange::HandNote const* before = nullptr;
    int run = 0;
    for (arrange::HandNote const& note : notes) {
        if (note.hand != harp::Side::Left) continue;
        if (before && before->at == note.at) continue; // the lowest of what is plucked together
        if (before) {
            tune::BarIndex const bar = arrangement.playing.bars[note.playedBar].bar;
            bool const quick =
                note.at - before->at <= music::beatLength(arrangement.tune.bars[bar].meter);
            bool const leaps = std::abs(note.string - before->string) >= stringsOfOctave - 1;
            run = quick && leaps ? run + 1 : 0;
            if (run > leapsInARow)
                return {base::say(
                    "The left hand jumps an octave on every beat up to {}. Close and relax the "
                    "hand between the jumps; ask your teacher. If anything hurts, stop; ask "
                    "your teacher, and see a doctor or physiotherapist.",
                    tune::barName(arrangement.tune, bar))};
        }
        before = &note;
    }
    return {};
}

void append(Sentences& all, Sentences more)
{
    all.insert(all.end(), std::make_move_iterator(more.begin()),
               std::make_move_iterator(more.end()));
}

} // namespace

std::vector<std::string> warningsFor(Proposal const& proposal)
{
    Sentences out = ofReading(proposal.brief.tune);
    append(out, ofMode(proposal.brief));
    append(out, ofTempo(proposal));
    append(out, ofDrone(proposal.brief));
    append(out, snagSentences(proposal));
    append(out, ofChanges(proposal.brief));
    append(out, ofGracesLeft(proposal));
    append(out, ofOctavesLeft(proposal));
    append(out, ofLeverWishes(proposal));
    append(out, ofLocks(proposal));
    append(out, ofFingers(proposal));
    append(out, ofMovesBeyondHands(proposal));
    append(out, ofForcedRests(proposal));
    append(out, ofBarsWithoutChord(proposal));
    append(out, ofLowTune(proposal.arrangement));
    append(out, ofFastTune(proposal.arrangement));
    append(out, ofTenths(proposal.arrangement));
    std::vector<arrange::HandNote> const notes = arrange::handNotes(proposal.arrangement);
    append(out, ofBusyHand(proposal.arrangement, notes, harp::Side::Left));
    append(out, ofBusyHand(proposal.arrangement, notes, harp::Side::Right));
    append(out, ofLeaps(proposal.arrangement, notes));
    return out;
}

} // namespace proposal
