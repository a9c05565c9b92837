#include "core/harmony/features.h"

#include <algorithm>
#include <array>
#include <optional>

namespace harmony {

namespace {

using music::Length;
using music::Rational;

using Histogram = std::array<int, 12>;

// A note of the melody as a unit hears it.
struct Sounding {
    int pitch = 0;  // MIDI key
    Length at;      // from the unit's start; negative: it was struck before
    Length sounds;  // within the unit
    bool struck = true;
};

// What one unit holds. Degrees count from the tonic of its frame.
struct UnitNotes {
    Histogram share{};
    std::optional<int> first;
    Histogram present{};
    std::array<Histogram, 3> struck{}; // on the unit's start, on its inner beats, elsewhere
    std::optional<int> last;
    std::optional<int> lowest;
    std::optional<int> longest;
};

constexpr int degreeOf(int pitch, int tonic) { return ((pitch - tonic) % 12 + 12) % 12; }

int shareOf(Length part, Length whole)
{
    Rational const share = part / whole * Rational(featureOne) + Rational(1, 2);
    return static_cast<int>(floorOf(share));
}

// The topmost notes of a bar between two places.
std::vector<Sounding> soundingIn(tune::Tune const& tune, tune::BarIndex index, Length from,
                                 Length to)
{
    std::vector<Sounding> notes;
    tune::Bar const& bar = tune.bars[index];
    bool tied = index > 0 && !tune.bars[index - 1].notes.empty() &&
                tune.bars[index - 1].notes.back().tied;
    for (tune::Note const& note : bar.notes) {
        bool const goesOn = tied;
        tied = note.tied;
        Length const begins = std::max(note.at, from);
        Length const ends = std::min(note.at + note.length, to);
        if (note.pitches.empty() || ends <= begins) continue;
        notes.push_back({midi(note.pitches.back()), note.at - from, ends - begins,
                         !goesOn && note.at >= from});
    }
    return notes;
}

// 0 on the unit's start, 1 on its inner beats, 2 elsewhere.
std::size_t strikeClass(Sounding const& note, Unit const& unit, music::Meter meter)
{
    if (!note.struck) return 2;
    if (note.at == Length{}) return 0;
    bool const inThree = isCompound(meter) || beatsInBar(meter) == 3;
    Rational const place = note.at / unit.length * Rational(inThree ? 3 : 2);
    return place.denominator() == 1 ? 1 : 2;
}

UnitNotes notesOf(tune::Tune const& tune, Unit const& unit, Frame const& frame)
{
    UnitNotes out;
    std::array<Length, 12> lengths{};
    std::array<std::array<Length, 12>, 3> struck{};
    int lowest = 1000;
    Length longest;
    Length next;
    for (Sounding const& note : soundingIn(tune, unit.bar, unit.at, unit.at + unit.length)) {
        int const degree = degreeOf(note.pitch, frame.tonic);
        auto const d = static_cast<std::size_t>(degree);
        lengths[d] = lengths[d] + note.sounds;
        auto& byClass = struck[strikeClass(note, unit, tune.bars[unit.bar].meter)];
        byClass[d] = byClass[d] + note.sounds;
        if (!out.first) out.first = degree;
        out.last = degree;
        if (note.pitch < lowest) {
            lowest = note.pitch;
            out.lowest = degree;
        }
        if (note.sounds > longest) {
            next = longest;
            longest = note.sounds;
            out.longest = degree;
        } else {
            next = std::max(next, note.sounds);
        }
    }
    if (longest < next * Rational(3, 2)) out.longest.reset();
    for (std::size_t d = 0; d < 12; ++d) {
        if (lengths[d] > Length{}) out.present[d] = featureOne;
        out.share[d] = shareOf(lengths[d], unit.length);
        for (std::size_t c = 0; c < 3; ++c)
            out.struck[c][d] = shareOf(struck[c][d], unit.length);
    }
    return out;
}

Histogram barShare(tune::Tune const& tune, tune::BarIndex index, int tonic)
{
    Length const whole = tune.bars[index].length;
    std::array<Length, 12> lengths{};
    for (Sounding const& note : soundingIn(tune, index, Length{}, whole)) {
        auto const d = static_cast<std::size_t>(degreeOf(note.pitch, tonic));
        lengths[d] = lengths[d] + note.sounds;
    }
    Histogram share{};
    for (std::size_t d = 0; d < 12; ++d) share[d] = shareOf(lengths[d], whole);
    return share;
}

Histogram one(std::optional<int> degree)
{
    Histogram out{};
    if (degree) out[static_cast<std::size_t>(*degree)] = featureOne;
    return out;
}

// Writes features in a fixed order, counting the indices.
class Writer {
public:
    void add(Histogram const& histogram, bool heard = true)
    {
        for (int value : histogram) add(value, heard);
    }
    // Once for every tune and once for those in the minor.
    void addTwice(Histogram const& histogram, bool minor)
    {
        add(histogram);
        add(histogram, minor);
    }
    void addPlace(int place, int places)
    {
        for (int i = 0; i < places; ++i) add(i == place ? featureOne : 0, true);
    }
    void add(int value, bool heard)
    {
        if (heard && value != 0) out.push_back({m_next, value});
        ++m_next;
    }

    Heard out;

private:
    int m_next = 0;
};

Histogram turned(Histogram const& histogram, int from, int to)
{
    if (from == to) return histogram;
    Histogram out{};
    for (std::size_t d = 0; d < 12; ++d)
        out[static_cast<std::size_t>(degreeOf(static_cast<int>(d) + from, to))] = histogram[d];
    return out;
}

std::optional<int> turned(std::optional<int> degree, int from, int to)
{
    return degree ? std::optional(degreeOf(*degree + from, to)) : std::nullopt;
}

void writePlaces(Writer& writer, Unit const& unit)
{
    int const later = unit.opensBar ? 0 : 1;
    constexpr int furthestEnd = 8;
    constexpr int furthestStart = 4;
    writer.addPlace(phrasePlace(unit), phrasePlaces);
    writer.addPlace(2 * std::min(unit.barsToEnd, furthestEnd) + later, 2 * (furthestEnd + 1));
    writer.addPlace(2 * std::min(unit.barOfStrain, furthestStart) + later,
                    2 * (furthestStart + 1));
    writer.add(unit.firstBar ? featureOne : 0, true);
    writer.add(unit.first ? featureOne : 0, true);
}

void writeCadences(Writer& writer, Unit const& unit, UnitNotes const& notes)
{
    bool const last = unit.barsToEnd == 0;
    bool const fourth = unit.barOfPhrase == 3;
    writer.add(notes.share, last && unit.opensBar);
    writer.add(notes.share, last && !unit.opensBar);
    writer.add(notes.share, unit.barsToEnd == 1);
    writer.add(notes.share, fourth);
    writer.add(notes.struck[0], last);
    writer.add(notes.struck[0], unit.opensBar);
    writer.add(notes.struck[0], fourth);
}

} // namespace

Frames framesOf(tune::Tune const& tune)
{
    Frames frames;
    for (tune::Bar const& bar : tune.bars)
        frames.push_back({pitchClass(keyOf(signature(bar.key), music::Mode::Ionian).tonic),
                          bar.key.mode == music::Mode::Aeolian});
    return frames;
}

std::vector<Heard> heard(tune::Tune const& tune, std::vector<Unit> const& units,
                         Frames const& frames)
{
    std::vector<UnitNotes> notes;
    for (Unit const& unit : units) notes.push_back(notesOf(tune, unit, frames[unit.bar]));

    std::vector<Heard> out;
    for (std::size_t i = 0; i < units.size(); ++i) {
        Unit const& unit = units[i];
        UnitNotes const& own = notes[i];
        Frame const& frame = frames[unit.bar];
        // Neighbours in another key are heard from this one's tonic.
        auto const near = [&](std::size_t step, bool before) {
            UnitNotes other;
            if (before ? i < step : i + step >= units.size()) return other;
            std::size_t const at = before ? i - step : i + step;
            int const from = frames[units[at].bar].tonic;
            other.share = turned(notes[at].share, from, frame.tonic);
            other.first = turned(notes[at].first, from, frame.tonic);
            other.last = turned(notes[at].last, from, frame.tonic);
            return other;
        };
        UnitNotes const before2 = near(2, true);
        UnitNotes const before1 = near(1, true);
        UnitNotes const after1 = near(1, false);
        UnitNotes const after2 = near(2, false);

        std::array<Histogram, histogramCount> const histograms{
            own.share,     one(own.first), own.present,     own.struck[0],   own.struck[1],
            own.struck[2], one(own.last),  one(own.lowest), one(own.longest)};
        Writer writer;
        for (Histogram const& h : histograms) writer.add(h);
        for (Histogram const& h : histograms) writer.add(h, frame.minor);
        writePlaces(writer, unit);
        for (Histogram const& h :
             {before2.share, before1.share, after1.share, after2.share, one(before1.first),
              one(after1.first), one(after2.first), one(before1.last)})
            writer.addTwice(h, frame.minor);
        writeCadences(writer, unit, own);
        writer.addTwice(barShare(tune, unit.bar, frame.tonic), frame.minor);
        writer.add(featureOne, true);
        writer.add(featureOne, frame.minor);
        out.push_back(std::move(writer.out));
    }
    return out;
}

} // namespace harmony
