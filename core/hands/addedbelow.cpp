#include "core/hands/addedbelow.h"

#include "core/hands/moves.h"
#include "core/hands/pauses.h"
#include "core/harp/seats.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <utility>

namespace hands {

namespace {

using arrange::Arrangement;
using arrange::HandNote;

// What may be added, best first: string gaps below the tune's note, the semitones that sound
// well, and the fingers that take them [trade-3.2].
struct Interval {
    int gaps;
    std::array<int, 2> semitones;
    int lowFinger;
};
constexpr std::array intervals{Interval{2, {3, 4}, 2}, Interval{5, {8, 9}, 3},
                               Interval{7, {12, 12}, 4}};
constexpr int highFinger = 1;

constexpr int roomBelow = 2;  // strings from the left hand's highest note
constexpr int phraseBars = 4; // a phrase of folk tunes [trade-7]
constexpr int easyLevels = 2; // levels that want a beat's time
constexpr int strongest = 2;  // music::beatStrength of first beats and half bars

// One written note each time it is played.
using Occasions =
    std::map<std::pair<tune::BarIndex, tune::NoteIndex>, std::vector<tune::PlayedNote const*>>;

Occasions occasionsOf(tune::Playing const& playing)
{
    Occasions out;
    for (tune::PlayedNote const& note : playing.notes)
        out[{playing.bars[note.playedBar].bar, note.note}].push_back(&note);
    return out;
}

class Adding {
public:
    Adding(Arrangement const& arrangement, Fullness const& wish, FullnessByBar const& byBar)
        : m_arrangement(arrangement), m_wish(wish), m_byBar(byBar),
          m_notes(arrange::handNotes(arrangement)),
          m_chords(tune::chordSpans(arrangement.tune)),
          m_occasions(occasionsOf(arrangement.playing))
    {
        for (HandNote const& note : m_notes)
            if (note.hand == harp::Side::Right &&
                (m_onsets.empty() || m_onsets.back() < note.at))
                m_onsets.push_back(note.at);
    }

    std::vector<arrange::AddedBelow> all() const
    {
        std::vector<arrange::AddedBelow> out;
        for (auto const& [place, played] : m_occasions) {
            auto const [bar, note] = place;
            if (!isWished(bar, note) || !isSingle(bar, note)) continue;
            if (auto const pitch = addedTo(bar, played))
                out.push_back({bar, note, {*pitch}, {highFinger}});
        }
        return out;
    }

private:
    tune::Bar const& barAt(tune::BarIndex bar) const { return m_arrangement.tune.bars[bar]; }

    bool isSingle(tune::BarIndex bar, tune::NoteIndex note) const
    {
        return barAt(bar).notes[note].pitches.size() == 1;
    }

    bool isWished(tune::BarIndex bar, tune::NoteIndex note) const
    {
        tune::Bar const& written = barAt(bar);
        tune::Note const& n = written.notes[note];
        bool const strong = beatStrength(written.meter, written.upbeat + n.at) >= strongest;
        Fullness const& wish = m_byBar.empty() ? m_wish : m_byBar[bar];
        return (wish.strongBeats && strong && n.length >= beatLength(written.meter) &&
                !n.tied) ||
               (wish.closes && isClose(bar, note));
    }

    // The last sounding note of a part or phrase, a beat long at least.
    bool isClose(tune::BarIndex bar, tune::NoteIndex note) const
    {
        tune::Bar const& written = barAt(bar);
        bool const last = bar + 1 == m_arrangement.tune.bars.size();
        bool const closes = last || written.repeatCloses || written.endingCloses ||
                            written.closes == tune::BarLine::Double ||
                            written.closes == tune::BarLine::Final ||
                            (written.number > 0 && written.number % phraseBars == 0);
        if (!closes) return false;
        for (tune::NoteIndex n = written.notes.beyond() - 1; n >= 0; --n) {
            tune::Note const& candidate = written.notes[n];
            // What leads on to the next part is short; the close is the long note before it.
            if (candidate.pitches.empty() || candidate.length < beatLength(written.meter))
                continue;
            return n == note;
        }
        return false;
    }

    std::optional<music::Chord> chordAt(tune::BarIndex bar, music::Length at, int pass) const
    {
        for (tune::ChordSpan const& span : m_chords)
            if (span.bar == bar && span.at <= at && at < span.at + span.length &&
                tune::standsOn(span.pass, pass))
                return span.chord;
        return std::nullopt;
    }

    // The first interval that can be had every time the note is played.
    std::optional<music::Pitch>
    addedTo(tune::BarIndex bar, std::vector<tune::PlayedNote const*> const& played) const
    {
        for (Interval const& interval : intervals) {
            std::optional<music::Pitch> common;
            bool fits = true;
            for (tune::PlayedNote const* note : played) {
                auto const pitch = pitchBelow(bar, *note, interval);
                fits = fits && pitch && (!common || *common == *pitch);
                common = pitch;
            }
            if (fits && common) return common;
        }
        return std::nullopt;
    }

    std::optional<music::Pitch> pitchBelow(tune::BarIndex bar, tune::PlayedNote const& note,
                                           Interval const& interval) const
    {
        harp::Harp const& harp = m_arrangement.harp;
        auto const top = stringAtMoment(harp, m_arrangement.levers, note.pitch, note.at);
        if (!top || *top < interval.gaps) return std::nullopt;
        harp::StringIndex const string = *top - interval.gaps;
        music::Pitch const pitch = pitchAt(harp, m_arrangement.levers, string, note.at);
        int const apart = music::midi(note.pitch) - music::midi(pitch);
        bool const consonant = std::find(interval.semitones.begin(), interval.semitones.end(),
                                         apart) != interval.semitones.end();
        tune::PlayedBar const& in = m_arrangement.playing.bars[note.playedBar];
        auto const chord = chordAt(bar, note.at - in.at, in.pass);
        if (!consonant || !chord || !contains(*chord, music::midi(pitch) % 12))
            return std::nullopt;
        if (stringAtMoment(harp, m_arrangement.levers, pitch, note.at) != string)
            return std::nullopt;
        bool const atEase =
            easeOf(harp, m_arrangement.hand, harp::PlacedFinger{string, interval.lowFinger},
                   harp::PlacedFinger{*top, highFinger}) == harp::Ease::Easy;
        return atEase && isClear(note, string) && hasTime(bar, note) ? std::optional(pitch)
                                                                     : std::nullopt;
    }

    // Nobody else wants the string while it is counted, and the left hand leaves room.
    bool isClear(tune::PlayedNote const& note, harp::StringIndex string) const
    {
        music::Moment const until = note.at + note.held;
        double const again = 1 / m_arrangement.level.sameStringPerSecond;
        for (HandNote const& other : m_notes) {
            bool const during = note.at <= other.at && other.at < until;
            bool const ringsIn = other.at < note.at && note.at < other.at + other.held;
            if (other.hand == harp::Side::Left && (during || ringsIn) &&
                other.string > string - roomBelow)
                return false;
            if (other.string != string) continue;
            if (during || ringsIn) return false;
            music::Length const apart =
                other.at < note.at ? note.at - other.at : other.at - note.at;
            if (seconds(apart) < again) return false;
        }
        for (harp::Flip const& flip : m_arrangement.levers.flips)
            if (flip.string == string && note.at <= flip.at && flip.at < until) return false;
        return true;
    }

    double seconds(music::Length length) const
    {
        return length.wholes.toDouble() * 4 * 60 / tune::quartersPerMinute(m_arrangement.tempo);
    }

    bool isLongEnough(music::Length time, tune::BarIndex bar) const
    {
        Pause const pause = pauseFor(time, false, barAt(bar).meter, m_arrangement.tempo,
                                     m_arrangement.level.rightNotesPerSecond);
        return m_arrangement.level.number <= easyLevels ? pause >= Pause::Beat
                                                        : pause != Pause::Hurried;
    }

    bool hasTime(tune::BarIndex bar, tune::PlayedNote const& note) const
    {
        auto const now = std::lower_bound(m_onsets.begin(), m_onsets.end(), note.at);
        bool const before =
            now == m_onsets.begin() || isLongEnough(note.at - *std::prev(now), bar);
        bool const after = now == m_onsets.end() || std::next(now) == m_onsets.end() ||
                           isLongEnough(*std::next(now) - note.at, bar);
        return before && after;
    }

    Arrangement const& m_arrangement;
    Fullness m_wish;
    FullnessByBar m_byBar;
    std::vector<HandNote> m_notes;
    std::vector<tune::ChordSpan> m_chords;
    Occasions m_occasions;
    std::vector<music::Moment> m_onsets; // of the right hand
};

} // namespace

std::vector<arrange::AddedBelow> addedBelow(Arrangement const& arrangement,
                                            Fullness const& wish, FullnessByBar const& byBar)
{
    auto const adds = [](Fullness const& one) { return one != Fullness{}; };
    bool const byBars = byBar.size() == arrangement.tune.bars.size();
    if (byBars ? std::ranges::none_of(byBar, adds) : !adds(wish)) return {};
    return Adding(arrangement, wish, byBars ? byBar : FullnessByBar{}).all();
}

} // namespace hands
