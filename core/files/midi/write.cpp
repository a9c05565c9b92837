#include "core/files/midi/write.h"

#include "core/files/midi/messages.h"
#include "core/files/midi/smf.h"
#include "core/perform/schedule.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <numeric>
#include <optional>
#include <set>

namespace files {

namespace {

using arrange::Arrangement;
using arrange::HandNote;
using music::Length;
using music::Moment;
using music::Rational;

constexpr int usualDivision = 960;
constexpr int richDivision = 20160; // exact for tuplets of 3, 5, 7 and 9
constexpr int largestDivision = 32767;
constexpr int clocksACrotchet = 24;
constexpr int slowerABeat = 8; // tempos written where it falls

struct HandTrack {
    harp::Side hand;
    char const* name;
    int channel;
};
constexpr std::array handTracks{HandTrack{harp::Side::Right, "Right hand", 0},
                                HandTrack{harp::Side::Left, "Left hand", 1}};

// One tune of a file, and the tick on which it begins.
struct Piece {
    Arrangement const& arrangement;
    std::vector<HandNote> notes;
    std::int64_t from = 0;
    perform::SlowedTime slowed = {};
};

// Ticks a crotchet with which every note falls on a tick; the rich one where none does.
int divisionFor(std::vector<Piece> const& pieces)
{
    std::int64_t division = usualDivision;
    auto const include = [&division](Rational wholes) {
        division = std::lcm(division, (wholes * Rational(4)).denominator());
        return division <= largestDivision;
    };
    for (Piece const& piece : pieces)
        for (HandNote const& note : piece.notes)
            if (!include(note.at.wholes) || !include(note.held.wholes)) return richDivision;
    return static_cast<int>(division);
}

// The nearest tick: the exact one wherever the division allows.
std::int64_t ticks(Rational wholes, int division)
{
    return music::floorOf(wholes * Rational(std::int64_t{4} * division) + Rational(1, 2));
}

// The bar's own length as a meter: a pick-up of one quaver is 1/8. None where it is no such
// fraction.
std::optional<music::Meter> ownMeter(tune::Bar const& bar)
{
    Rational const length = bar.length.wholes;
    std::int64_t const unit = std::lcm(length.denominator(), std::int64_t{bar.meter.unit});
    std::int64_t const beats = length.numerator() * (unit / length.denominator());
    bool const powerOfTwo = (unit & (unit - 1)) == 0;
    if (!powerOfTwo || unit > 64 || beats < 1 || beats > 64) return std::nullopt;
    return music::Meter{static_cast<int>(beats), static_cast<int>(unit)};
}

// Where the bar lines of a reader of the file fall, who knows nothing but the meters written so
// far.
struct BarLines {
    std::optional<music::Meter> meter;
    Moment since;

    // How far into a bar the reader believes to be.
    Length intoBar(Moment at) const
    {
        Length const whole = music::barLength(*meter);
        Rational const bars = (at - since) / whole;
        return whole * (bars - Rational(music::floorOf(bars)));
    }
};

void writeMeter(SmfTrack& track, BarLines& lines, music::Meter meter, Moment at,
                std::int64_t tick)
{
    Rational const clocks = music::beatLength(meter).wholes * Rational(std::int64_t{4} * clocksACrotchet);
    track.meter(tick, meter.beats, meter.unit, static_cast<int>(music::floorOf(clocks)));
    lines = {meter, at};
}

// Meters and keys of the played bars, each where it changes or where bar lines need it.
void writeSignatures(SmfTrack& track, Piece const& piece, int division)
{
    Arrangement const& arrangement = piece.arrangement;
    BarLines lines;
    std::optional<music::Key> key;
    for (tune::PlayedBar const& played : arrangement.playing.bars) {
        auto const& bar = arrangement.tune.bars[played.bar];
        std::int64_t const tick = piece.from + ticks(played.at.wholes, division);
        bool const sameMeter = lines.meter && lines.meter->beats == bar.meter.beats &&
                               lines.meter->unit == bar.meter.unit;
        if (!sameMeter || lines.intoBar(played.at) != bar.upbeat) {
            bool const pickUp = bar.upbeat > Length{};
            auto const meter = pickUp ? ownMeter(bar).value_or(bar.meter) : bar.meter;
            writeMeter(track, lines, meter, played.at, tick);
        }
        int const sharps = music::signature(bar.key);
        if (key != bar.key && sharps >= -7 && sharps <= 7)
            track.key(tick, sharps, bar.key.mode == music::Mode::Aeolian);
        key = bar.key;
    }
}

std::int64_t endOf(Piece const& piece, int division)
{
    return piece.from + ticks(piece.arrangement.playing.total.wholes, division);
}

// The tempos of a final slowing.
void writeSlowing(SmfTrack& track, Piece const& piece, int division)
{
    if (!piece.slowed.slows()) return;
    double const whole = 4.0 * division; // ticks
    std::int64_t const begins = ticks(piece.slowed.begins().wholes, division);
    std::set<std::int64_t> places{begins}; // ticks of the piece, the last onset at the end
    for (HandNote const& note : piece.notes)
        if (std::int64_t const tick = ticks(note.at.wholes, division); tick > begins)
            places.insert(tick);
    std::int64_t const last = *places.rbegin();
    double const beat = piece.arrangement.tempo.beat.wholes.toDouble() * whole;
    for (int i = 1; std::llround(i * beat / slowerABeat) < last - begins; ++i)
        places.insert(begins + std::llround(i * beat / slowerABeat));
    double const tempo = tune::quartersPerMinute(piece.arrangement.tempo);
    auto const later = [&](std::int64_t tick) {
        return piece.slowed.later(static_cast<double>(tick) / whole) * whole;
    };
    for (auto place = places.begin(); *place != last; ++place) {
        std::int64_t const to = *std::next(place);
        auto const ticksBetween = static_cast<double>(to - *place);
        track.tempo(piece.from + *place,
                    tempo * ticksBetween / (ticksBetween + later(to) - later(*place)));
    }
    track.tempo(piece.from + last, tempo * piece.slowed.endTempo());
}

SmfTrack conductor(std::string const& title, std::vector<Piece> const& pieces, int division)
{
    SmfTrack track;
    track.name(title);
    for (Piece const& piece : pieces) {
        if (pieces.size() > 1) track.marker(piece.from, piece.arrangement.tune.title);
        track.tempo(piece.from, tune::quartersPerMinute(piece.arrangement.tempo));
        writeSlowing(track, piece, division);
        writeSignatures(track, piece, division);
    }
    track.end(endOf(pieces.back(), division));
    return track;
}

SmfTrack handTrack(HandTrack const& hand, std::vector<Piece> const& pieces, int division)
{
    SmfTrack track;
    track.name(hand.name);
    track.program(hand.channel, midi::harpProgram);
    for (Piece const& piece : pieces)
        for (HandNote const& note : piece.notes)
            if (note.hand == hand.hand)
                track.note(piece.from + ticks(note.at.wholes, division),
                           piece.from + ticks((note.at + note.held).wholes, division),
                           hand.channel, music::midi(note.pitch),
                           perform::velocityOf(piece.arrangement, note));
    track.end(endOf(pieces.back(), division));
    return track;
}

std::string fileOf(std::string const& title, std::vector<Piece> const& pieces, int division)
{
    std::vector<SmfTrack> tracks{conductor(title, pieces, division)};
    for (HandTrack const& hand : handTracks)
        tracks.push_back(handTrack(hand, pieces, division));
    return smf(division, tracks);
}

// Of the beat that goes on through a pause.
std::int64_t ticksOfPause(perform::Seconds pause, Arrangement const& before, int division)
{
    double const crotchets = pause * tune::quartersPerMinute(before.tempo) / 60;
    return std::llround(crotchets * division);
}

} // namespace

std::string midiFile(Arrangement const& arrangement, perform::Slowing slowing)
{
    std::vector<Piece> const pieces{{arrangement, arrange::handNotes(arrangement), 0,
                                     perform::SlowedTime(arrangement, slowing)}};
    return fileOf(arrangement.tune.title, pieces, divisionFor(pieces));
}

std::string midiFile(perform::PlayedSet const& set, perform::Slowing slowing)
{
    std::vector<Piece> pieces;
    for (perform::TuneOfSet const& tune : set.tunes)
        pieces.push_back({tune.arrangement, arrange::handNotes(tune.arrangement), 0});
    int const division = divisionFor(pieces);
    for (std::size_t i = 1; i < pieces.size(); ++i)
        pieces[i].from = endOf(pieces[i - 1], division) +
                         ticksOfPause(set.tunes[i].pause, pieces[i - 1].arrangement, division);
    pieces.back().slowed = perform::SlowedTime(pieces.back().arrangement, slowing);
    return fileOf(set.title, pieces, division);
}

} // namespace files
