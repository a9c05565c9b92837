#include "core/perform/schedule.h"

#include "core/harp/seats.h"
#include "core/tune/kind.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <map>
#include <optional>
#include <span>
#include <tuple>
#include <utility>
#include <vector>

namespace perform {

namespace {

using arrange::Arrangement;
using arrange::HandNote;
using harp::Side;
using music::Length;
using music::Moment;
using music::Rational;

constexpr double slowest = 0.25;
constexpr double quickest = 1.5;
constexpr Seconds longestRoll = 0.35;    // [science-9]
constexpr Seconds shortestCountIn = 1.5; // of one bar; else two are counted [science-9]
constexpr Seconds graceNote = 0.08;
constexpr Seconds longestEnd = 6; // after the last counted beat, however long strings ring

// The tune leads, the left hand keeps below it, and beats are felt without being hammered.
constexpr int tuneVelocity = 84;
constexpr int leftVelocity = 70;
constexpr int graceVelocity = 66;
constexpr std::array velocityOfStrength{-4, 0, 3, 7}; // by music::beatStrength

// The played bars that are heard, and the count-in before them.
struct Region {
    tune::PlayedBarIndex first = 0;
    tune::PlayedBarIndex last = 0; // inclusive
    Moment from;  // the bar before, where it is heard, or `begins`
    Moment begins;
    Moment to;
    tune::PlayedBarIndex heardFirst = 0; // `first`, or the bar before
    int countedBars = 0;
    Length countIn;
};

// Turns places in the region into seconds.
struct Clock {
    tune::Tempo tempo;
    double scale = 1;
    Moment from;
    Length countIn;
    Seconds lead = 0; // of grace notes that have no count-in to fall into
    LiltedTime lilted;
    SlowedTime slowed;

    Seconds lasting(Length length) const { return secondsOf(length, tempo, scale); }
    Seconds lasting(double wholes) const
    {
        return wholes / tempo.beat.wholes.toDouble() * 60 / (tempo.beatsPerMinute * scale);
    }
    // Of a beat, and of what is counted: as written, but for the end.
    Seconds counted(Moment moment) const
    {
        return lead + lasting(countIn + (moment - from)) +
               lasting(slowed.later(moment.wholes.toDouble()));
    }
    // Of what sounds.
    Seconds at(Moment moment) const
    {
        double const written = moment.wholes.toDouble();
        double const played = lilted.at(moment);
        return lead + lasting(countIn + (moment - from)) +
               lasting(played - written + slowed.later(played));
    }
};

Moment startOf(Arrangement const& arrangement, tune::PlayedBarIndex playedBar)
{
    auto const& bars = arrangement.playing.bars;
    return bars.holds(playedBar) ? bars[playedBar].at
                                 : Moment{arrangement.playing.total.wholes};
}

Region regionOf(Arrangement const& arrangement, Hearing const& hearing, double scale)
{
    tune::PlayedBarIndex const end = arrangement.playing.bars.beyond() - 1;
    Region region;
    region.first = std::clamp(hearing.firstPlayedBar, tune::PlayedBarIndex(0), end);
    region.last = std::clamp(hearing.lastPlayedBar.value_or(end), region.first, end);
    region.heardFirst = hearing.barBefore && region.first > 0 ? region.first - 1 : region.first;
    region.from = startOf(arrangement, region.heardFirst);
    region.begins = startOf(arrangement, region.first);
    region.to = startOf(arrangement, region.last + 1);
    if (hearing.countIn) {
        tune::Bar const& bar = arrange::barPlayed(arrangement, region.heardFirst);
        Length const whole = music::barLength(bar.meter);
        bool const quick = secondsOf(whole, arrangement.tempo, scale) < shortestCountIn;
        region.countedBars = quick ? 2 : 1;
        bool const pickUp = bar.upbeat > Length{};
        region.countIn = whole * Rational(region.countedBars - (pickUp ? 1 : 0)) + bar.upbeat;
    }
    return region;
}

bool isHeard(Region const& region, tune::PlayedBarIndex playedBar)
{
    return playedBar >= region.heardFirst && playedBar <= region.last;
}

bool endsOnBeat(Arrangement const& arrangement, RollOn rollOn)
{
    if (rollOn != RollOn::AsKind) return rollOn == RollOn::Last;
    return tune::kindOf(arrangement.tune) == tune::Kind::Air;
}

// Seconds by which a note of a roll comes after its beat, or before it. `together` are the notes
// of both hands at that moment.
Seconds rollDelay(HandNote const& note, std::span<HandNote const> together, Clock const& clock,
                  Seconds wantedGap, bool ontoBeat)
{
    int first = note.rollOrder;
    int last = note.rollOrder;
    Length shortest = note.held;
    for (HandNote const& other : together) {
        if (other.hand != note.hand) continue;
        first = std::min(first, other.rollOrder);
        last = std::max(last, other.rollOrder);
        shortest = std::min(shortest, other.held);
    }
    if (first == last) return 0;
    Seconds const whole = std::min(
        {longestRoll, clock.lasting(clock.tempo.beat) / 3, clock.lasting(shortest) / 2});
    Seconds const gap = std::min(wantedGap, whole / (last - first));
    return (note.rollOrder - (ontoBeat ? last : first)) * gap;
}

// How long before the first beat a roll begins that ends on it.
Seconds rollLead(Arrangement const& arrangement, Hearing const& hearing, Region const& region,
                 Clock const& clock, bool ontoBeat)
{
    std::vector<HandNote> const notes = arrange::handNotes(arrangement);
    std::vector<HandNote> together;
    std::ranges::copy_if(notes, std::back_inserter(together), [&](HandNote const& note) {
        bool const wanted = note.hand == Side::Left ? hearing.left : hearing.right;
        return note.at == region.from && wanted;
    });
    Seconds lead = 0;
    for (HandNote const& note : together)
        lead = std::max(lead, -rollDelay(note, together, clock, hearing.rollGap, ontoBeat));
    return lead;
}

// The notes of both hands, without grace notes.
std::vector<Event> handPlucks(Arrangement const& arrangement, Hearing const& hearing,
                              Region const& region, Clock const& clock, bool ontoBeat)
{
    std::vector<HandNote> const notes = arrange::handNotes(arrangement);
    std::vector<Event> plucks;
    for (auto begin = notes.begin(); begin != notes.end();) {
        auto const end = std::find_if(
            begin, notes.end(), [&](HandNote const& note) { return note.at != begin->at; });
        std::span<HandNote const> const together(begin, end);
        for (HandNote const& note : together) {
            bool const wanted = note.hand == Side::Left ? hearing.left : hearing.right;
            if (!wanted || !isHeard(region, note.playedBar)) continue;
            if (!hearing.added && note.hand == Side::Right && !note.fromTune) continue;
            Seconds const at = clock.at(note.at) +
                               rollDelay(note, together, clock, hearing.rollGap, ontoBeat);
            int const velocity =
                balanced(velocityOf(arrangement, note), note.hand, hearing.balance);
            plucks.push_back({at, Event::Kind::Pluck, note.string, music::midi(note.pitch),
                              velocity, note.hand, note.position});
        }
        begin = end;
    }
    return plucks;
}

// A played note of the tune that has grace notes, and how long each of them may last.
struct Graced {
    Moment at;
    std::vector<music::Pitch> const* graces;
    Seconds each = 0;
};

std::vector<Graced> gracedNotes(Arrangement const& arrangement, Region const& region,
                                double scale)
{
    std::vector<Graced> graced;
    std::optional<Moment> before; // the onset before this one
    std::optional<Moment> now;
    for (tune::PlayedNote const& note : arrangement.playing.notes) {
        if (now == note.at) continue;
        before = now;
        now = note.at;
        auto const& graces =
            arrange::barPlayed(arrangement, note.playedBar).notes[note.note].graces;
        if (graces.empty() || !isHeard(region, note.playedBar)) continue;
        Seconds each = graceNote;
        if (before) {
            Seconds const gap = secondsOf(note.at - *before, arrangement.tempo, scale);
            each = std::min(each, gap / 2 / static_cast<double>(graces.size()));
        }
        graced.push_back({note.at, &graces, each});
    }
    return graced;
}

std::vector<Event> gracePlucks(Arrangement const& arrangement,
                               std::vector<Graced> const& graced, Clock const& clock,
                               int velocity)
{
    std::vector<Event> plucks;
    for (Graced const& note : graced) {
        auto left = static_cast<double>(note.graces->size());
        for (music::Pitch const pitch : *note.graces) {
            auto const string =
                harp::stringAtMoment(arrangement.harp, arrangement.levers, pitch, note.at);
            if (string)
                plucks.push_back({clock.at(note.at) - left * note.each,
                                  Event::Kind::Pluck,
                                  *string,
                                  music::midi(pitch),
                                  velocity,
                                  Side::Right,
                                  {}});
            --left;
        }
    }
    return plucks;
}

auto order(Event const& event)
{
    return std::tuple(event.at, event.kind == Event::Kind::Pluck, event.string);
}

bool before(Event const& a, Event const& b) { return order(a) < order(b); }

// Puts the damps between the plucks: a string stops when its lever turns and when it is plucked
// again.
std::vector<Event> withDamps(std::vector<Event> plucks, std::vector<Event> const& turns)
{
    std::vector<Event> all = std::move(plucks);
    all.insert(all.end(), turns.begin(), turns.end());
    std::ranges::stable_sort(all, before);
    std::vector<Event> events;
    std::map<int, Event> ringing; // by string: its last pluck
    for (Event const& event : all) {
        auto const found = ringing.find(event.string);
        bool const rings = found != ringing.end();
        bool const pluck = event.kind == Event::Kind::Pluck;
        if (pluck && rings && found->second.at == event.at) continue; // one string, one pluck
        if (rings) {
            Event damp = found->second;
            damp.at = event.at;
            damp.kind = Event::Kind::Damp;
            damp.velocity = 0;
            events.push_back(damp);
            ringing.erase(found);
        }
        if (pluck) {
            events.push_back(event);
            ringing.emplace(event.string, event);
        }
    }
    std::ranges::stable_sort(events, before);
    return events;
}

std::vector<Event> leverTurns(Arrangement const& arrangement, Region const& region,
                              Clock const& clock)
{
    std::vector<Event> turns;
    for (harp::Flip const& flip : arrangement.levers.flips)
        if (flip.at >= region.from && flip.at < region.to)
            turns.push_back(
                {clock.at(flip.at), Event::Kind::Damp, flip.string, 0, 0, flip.hand, {}});
    return turns;
}

// Every string as the levers stand where the region begins, and what each flip makes of it.
std::vector<Tuned> tunedStrings(Arrangement const& arrangement, Region const& region,
                                Clock const& clock)
{
    auto const sounding = [&arrangement](harp::StringIndex string, Moment at) {
        return music::midi(harp::pitchAt(arrangement.harp, arrangement.levers, string, at));
    };
    std::vector<Tuned> tuned;
    for (harp::StringIndex const string : arrangement.harp.indices())
        tuned.push_back({0, string, sounding(string, region.from)});
    for (harp::Flip const& flip : arrangement.levers.flips)
        if (flip.at > region.from && flip.at < region.to)
            tuned.push_back({clock.at(flip.at), flip.string, sounding(flip.string, flip.at)});
    std::ranges::stable_sort(tuned, {}, &Tuned::at);
    return tuned;
}

std::vector<Click> countInClicks(Region const& region, music::Meter meter, Clock const& clock)
{
    std::vector<Click> clicks;
    Length const beat = music::beatLength(meter);
    for (int i = 0; beat * Rational(i) < region.countIn; ++i) {
        int const strength =
            music::beatStrength(meter, beat * Rational(i % music::beatsInBar(meter)));
        clicks.push_back({clock.lasting(beat * Rational(i)), strength == 3, strength == 2});
    }
    return clicks;
}

Seconds fadedAway(std::vector<Event> const& events, harp::Harp const& harp, Seconds counted)
{
    std::map<int, Seconds> silentAt; // by string
    for (Event const& event : events)
        silentAt[event.string] = event.kind == Event::Kind::Damp
                                     ? event.at
                                     : event.at + harp::ringSeconds(harp.string(event.string));
    Seconds last = counted;
    for (auto const& [string, at] : silentAt) last = std::max(last, at);
    return std::min(last, counted + longestEnd);
}

} // namespace

SlowedTime slowedTime(Arrangement const& arrangement, Hearing const& hearing)
{
    tune::PlayedBarIndex const last = arrangement.playing.bars.beyond() - 1;
    bool const toTheEnd = hearing.lastPlayedBar.value_or(last) >= last;
    return toTheEnd ? SlowedTime(arrangement, hearing.slowing) : SlowedTime();
}

Seconds afterCrotchets(Schedule const& schedule, double crotchets)
{
    double const waited = schedule.slowed.later(schedule.from + crotchets / 4) -
                          schedule.slowed.later(schedule.from);
    return schedule.begins + (crotchets + 4 * waited) * schedule.crotchet;
}

Seconds secondsOf(Length length, tune::Tempo tempo, double tempoScale)
{
    return (length / tempo.beat).toDouble() * 60 / (tempo.beatsPerMinute * tempoScale);
}

int velocityOf(Arrangement const& arrangement, HandNote const& note)
{
    tune::Bar const& bar = arrange::barPlayed(arrangement, note.playedBar);
    Length const inBar = note.at - startOf(arrangement, note.playedBar) + bar.upbeat;
    int const strength = music::beatStrength(bar.meter, inBar);
    return (note.fromTune ? tuneVelocity : leftVelocity) +
           velocityOfStrength[static_cast<std::size_t>(strength)];
}

int balanced(int velocity, Side hand, double balance)
{
    double const off = hand == Side::Left ? balance : -balance;
    return std::max(1, static_cast<int>(std::lround(velocity * (1 - std::clamp(off, 0.0, 1.0)))));
}

Schedule scheduled(Arrangement const& arrangement, Hearing const& hearing)
{
    if (arrangement.playing.bars.empty()) return {};
    double const scale = std::clamp(hearing.tempoScale, slowest, quickest);
    Region const region = regionOf(arrangement, hearing, scale);
    Clock clock{arrangement.tempo,
                scale,
                region.from,
                region.countIn,
                0,
                LiltedTime(arrangement, hearing.lilt),
                slowedTime(arrangement, hearing)};

    std::vector<Graced> graced;
    if (hearing.right) graced = gracedNotes(arrangement, region, scale);
    if (!graced.empty() && graced.front().at == region.from && !hearing.countIn)
        clock.lead = graced.front().each * static_cast<double>(graced.front().graces->size());
    bool const ontoBeat = endsOnBeat(arrangement, hearing.rollOn);
    if (ontoBeat && !hearing.countIn)
        clock.lead =
            std::max(clock.lead, rollLead(arrangement, hearing, region, clock, ontoBeat));

    std::vector<Event> plucks = handPlucks(arrangement, hearing, region, clock, ontoBeat);
    int const grace = balanced(graceVelocity, Side::Right, hearing.balance);
    std::ranges::copy(gracePlucks(arrangement, graced, clock, grace),
                      std::back_inserter(plucks));

    Schedule schedule;
    schedule.events = withDamps(std::move(plucks), leverTurns(arrangement, region, clock));
    for (tune::PlayedBarIndex bar = region.heardFirst; bar <= region.last; ++bar)
        schedule.bars.push_back({bar, clock.counted(startOf(arrangement, bar))});
    schedule.clicks =
        countInClicks(region, arrange::barPlayed(arrangement, region.heardFirst).meter, clock);
    schedule.tuned = tunedStrings(arrangement, region, clock);
    schedule.crotchet = secondsOf(Length{Rational(1, 4)}, arrangement.tempo, scale);
    schedule.from = region.begins.wholes.toDouble();
    schedule.slowed = clock.slowed;
    schedule.begins = clock.counted(region.begins);
    schedule.counted = clock.counted(region.to);
    schedule.ringing = fadedAway(schedule.events, arrangement.harp, schedule.counted);
    return schedule;
}

} // namespace perform
