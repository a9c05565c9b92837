#include "core/harmony/lean.h"

#include "core/harmony/ways.h"

#include <algorithm>
#include <array>

namespace harmony {

namespace {

using music::Key;
using music::Mode;

using Logs = std::vector<int>;

// Where the chords stand by which a mode is known: its tonic, the chord a tone below, and the
// major chord on its fifth. `learned`: the numbers were learned from tunes in this mode.
struct ModeHome {
    Mode mode;
    Degree tonic;
    Degree below;
    Degree raisedFifth;
    bool learned = false;
};
constexpr std::array modeHomes{
    ModeHome{
        Mode::Ionian, {0, Quality::Major}, {10, Quality::Major}, {7, Quality::Major}, true},
    ModeHome{
        Mode::Aeolian, {9, Quality::Minor}, {7, Quality::Major}, {4, Quality::Major}, true},
    ModeHome{Mode::Dorian, {2, Quality::Minor}, {0, Quality::Major}, {9, Quality::Major}},
    ModeHome{Mode::Mixolydian, {7, Quality::Major}, {5, Quality::Major}, {2, Quality::Major}},
    ModeHome{Mode::Phrygian, {4, Quality::Minor}, {2, Quality::Minor}, {11, Quality::Major}},
    ModeHome{Mode::Lydian, {5, Quality::Major}, {4, Quality::Minor}, {0, Quality::Major}},
};
ModeHome const* homeOf(Mode mode)
{
    auto const at = std::ranges::find(modeHomes, mode, &ModeHome::mode);
    return at == modeHomes.end() ? nullptr : &*at;
}

// Measured on minor tunes harmonised from major ones alone: one nat to the tonic, no more. Read
// bar by bar, that nat turned whole parts into one chord: it is given only where the notes lie
// in the tonic chord, and half of it to the chord a tone below where they lie in that.
constexpr int homeBonus = nat;
constexpr int belowBonus = nat / 2;
constexpr int raisedFifthBonus = nat / 2;
// As large as leaves the chords of folk tunes with chords as well found as without.
constexpr int dominantBonus = nat * 3 / 4;
constexpr int restBonus = nat;

// Where a unit's histograms begin among its features; see features.cpp.
enum Place { Share = 0, First = 12, Last = 72 };

int valueOf(Heard const& heard, int index)
{
    auto const at = std::ranges::find(heard, index, &Feature::index);
    return at == heard.end() ? 0 : at->value;
}

// How much of a unit lies in a triad, in 1/featureOne.
int inside(Heard const& heard, Degree degree)
{
    int const third = degree.quality == Quality::Major ? 4 : 3;
    int const fifth = degree.quality == Quality::Diminished ? 6 : 7;
    int sum = 0;
    for (int const tone : {0, third, fifth})
        sum += valueOf(heard, Share + (degree.semitones + tone) % 12);
    return sum;
}

bool hasRaisedSeventh(tune::Tune const& tune, Key key)
{
    int const leading = (pitchClass(key.tonic) + 11) % 12;
    for (tune::Bar const& bar : tune.bars)
        for (tune::Note const& note : bar.notes)
            for (music::Pitch const& pitch : note.pitches)
                if (pitchClass(pitch) == leading) return true;
    return false;
}

// Whether the tune's last note is the tonic: then its last chord is, too.
bool endsAtHome(tune::Tune const& tune, Key home)
{
    for (tune::BarIndex b = tune.bars.beyond() - 1; b >= 0; --b) {
        auto const& notes = tune.bars[b].notes;
        for (tune::NoteIndex n = notes.beyond() - 1; n >= 0; --n)
            if (!notes[n].pitches.empty())
                return pitchClass(notes[n].pitches.back()) == pitchClass(home.tonic);
    }
    return false;
}

class Leaner {
public:
    Leaner(Chain& chain, ChordTable const& table, std::vector<Unit> const& units,
           std::vector<Heard> const& heard)
        : m_chain(chain), m_table(table), m_units(units), m_heard(heard)
    {}

    void wishes(Way way, Mode mode)
    {
        Leaning const leaning = leaningOf(way);
        std::size_t const states = m_table.degrees.size();
        for (std::size_t s = 0; s < states; ++s)
            if (isPlain(m_table.degrees[s], mode))
                for (Logs& row : m_chain.own) row[s] += leaning.plainBonus;
        for (Logs& steps : m_chain.steps)
            for (std::size_t s = 0; s < states; ++s) steps[s * states + s] += leaning.stayBonus;
    }

    void mode(ModeHome const& home, bool raised, bool endsThere)
    {
        constexpr int half = featureOne / 2;
        for (std::size_t t = 0; t < m_units.size(); ++t) {
            int const tonic = inside(m_heard[t], home.tonic);
            int const below = inside(m_heard[t], home.below);
            if (tonic > half) give(t, home.tonic, homeBonus);
            if (below >= half && below >= tonic) give(t, home.below, belowBonus);
            if (raised) give(t, home.raisedFifth, raisedFifthBonus);
        }
        if (endsThere) give(m_units.size() - 1, home.tonic, 2 * homeBonus);
    }

    // A leading note at the end of a unit that lies half in the major chord on the fifth, on
    // the way into the end of a phrase of four bars, home after it: that chord.
    void dominants(ModeHome const& home)
    {
        int const tonic = home.tonic.semitones;
        for (std::size_t t = 0; t + 1 < m_units.size(); ++t) {
            if (valueOf(m_heard[t], Last + (tonic + 11) % 12) == 0 ||
                2 * inside(m_heard[t], home.raisedFifth) < featureOne)
                continue;
            Unit const& unit = m_units[t];
            Unit const& next = m_units[t + 1];
            bool const comesHome = valueOf(m_heard[t + 1], First + tonic) > 0;
            bool const close = next.barOfPhrase % 4 == 3 && unit.barOfPhrase % 4 >= 2;
            if (close && (comesHome || next.barsToEnd == 0))
                give(t, home.raisedFifth, dominantBonus);
        }
    }

    // Hardly anything but the tonic at the end of a phrase of four bars: home.
    void rests(ModeHome const& home)
    {
        for (std::size_t t = 0; t < m_units.size(); ++t) {
            bool const lastOfBar =
                t + 1 == m_units.size() || m_units[t + 1].bar != m_units[t].bar;
            if (!lastOfBar || m_units[t].barOfPhrase % 4 != 3) continue;
            int sounding = 0;
            for (int d = 0; d < 12; ++d) sounding += valueOf(m_heard[t], Share + d);
            if (sounding > 0 &&
                4 * valueOf(m_heard[t], Share + home.tonic.semitones) >= 3 * sounding)
                give(t, home.tonic, restBonus);
        }
    }

private:
    void give(std::size_t t, Degree degree, int bonus)
    {
        auto const at = std::ranges::find(m_table.degrees, degree);
        if (at != m_table.degrees.end())
            m_chain.own[t][static_cast<std::size_t>(at - m_table.degrees.begin())] += bonus;
    }

    Chain& m_chain;
    ChordTable const& m_table;
    std::vector<Unit> const& m_units;
    std::vector<Heard> const& m_heard;
};

} // namespace

Degree homeDegree(Mode mode)
{
    ModeHome const* const home = homeOf(mode);
    return home ? home->tonic : Degree{0, Quality::Major};
}

void lean(Chain& chain, ChordTable const& table, tune::Tune const& tune,
          std::vector<Unit> const& units, std::vector<Heard> const& heard, Key home, Way way)
{
    Leaner leaner(chain, table, units, heard);
    leaner.wishes(way, home.mode);
    ModeHome const* const own = homeOf(home.mode);
    if (!own) return;
    if (!own->learned) leaner.mode(*own, hasRaisedSeventh(tune, home), endsAtHome(tune, home));
    leaner.dominants(*own);
    leaner.rests(*own);
}

} // namespace harmony
