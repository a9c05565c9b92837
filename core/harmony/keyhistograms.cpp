#include "core/harmony/keyhistograms.h"

#include "core/harmony/features.h"
#include "core/harmony/units.h"

#include <algorithm>
#include <numeric>
#include <optional>
#include <vector>

namespace harmony {

namespace {

using music::Length;
using music::Rational;

using Lengths = std::array<Length, 12>;
using Counts = std::array<int, 12>;

std::size_t classOf(tune::Note const& note)
{
    return static_cast<std::size_t>(pitchClass(note.pitches.back()));
}

bool sounds(tune::Note const& note) { return !note.pitches.empty(); }

tune::Note const* firstOf(tune::Bar const& bar)
{
    auto const at = std::find_if(bar.notes.begin(), bar.notes.end(), sounds);
    return at == bar.notes.end() ? nullptr : &*at;
}

tune::Note const* lastOf(tune::Bar const& bar)
{
    auto const at = std::find_if(bar.notes.rbegin(), bar.notes.rend(), sounds);
    return at == bar.notes.rend() ? nullptr : &*at;
}

KeyHistogram shares(Lengths const& lengths)
{
    Length whole;
    for (Length const& length : lengths) whole = whole + length;
    KeyHistogram out{};
    if (whole == Length{}) return out;
    for (std::size_t i = 0; i < 12; ++i)
        out[i] = static_cast<int>(
            floorOf(lengths[i] / whole * Rational(featureOne) + Rational(1, 2)));
    return out;
}

KeyHistogram shares(Counts const& counts)
{
    int const whole = std::accumulate(counts.begin(), counts.end(), 0);
    KeyHistogram out{};
    if (whole == 0) return out;
    for (std::size_t i = 0; i < 12; ++i) out[i] = (counts[i] * featureOne + whole / 2) / whole;
    return out;
}

// Grows with the share and is full at one part in `parts`.
KeyHistogram full(KeyHistogram const& share, int parts)
{
    KeyHistogram out{};
    for (std::size_t i = 0; i < 12; ++i) out[i] = std::min(featureOne, share[i] * parts);
    return out;
}

KeyHistogram both(KeyHistogram const& a, KeyHistogram const& b)
{
    KeyHistogram out{};
    for (std::size_t i = 0; i < 12; ++i) out[i] = a[i] > 0 && b[i] > 0 ? featureOne : 0;
    return out;
}

// Walks through a tune once.
class Listener {
public:
    explicit Listener(tune::Tune const& tune)
    {
        std::vector<Unit> const units = unitsOf(tune);
        base::List<tune::BarIndex, Unit const*> unitOf(tune.bars.size(), nullptr);
        for (Unit const& unit : units)
            if (unit.opensBar) unitOf[unit.bar] = &unit;
        if (!units.empty()) m_lastStrain = units.back().strain;
        for (tune::BarIndex const i : tune.bars.indices()) hear(tune.bars[i], unitOf[i]);
    }

    KeyHistograms histograms() const
    {
        KeyHistograms out{};
        auto const at = [&out](KeyHeard what) -> KeyHistogram& {
            return out[static_cast<std::size_t>(what)];
        };
        for (auto const& [what, lengths] : {
                 std::pair{KeyHeard::Sounding, &m_sounding},
                 std::pair{KeyHeard::FirstStrain, &m_firstStrain},
                 std::pair{KeyHeard::LastStrain, &m_lastStrainLong},
                 std::pair{KeyHeard::FirstBar, &m_firstBar},
                 std::pair{KeyHeard::FinalBar, &m_finalBar},
                 std::pair{KeyHeard::LastBars, &m_lastBars},
                 std::pair{KeyHeard::LastButOne, &m_lastButOne},
             })
            at(what) = shares(*lengths);
        for (auto const& [what, counts] : {
                 std::pair{KeyHeard::Last, &m_last},
                 std::pair{KeyHeard::EndsOfStrains, &m_strainEnds},
                 std::pair{KeyHeard::FirstStrainEnd, &m_firstStrainEnd},
                 std::pair{KeyHeard::EndsOfPhrases, &m_phraseEnds},
                 std::pair{KeyHeard::HalfWay, &m_halfWay},
                 std::pair{KeyHeard::First, &m_first},
                 std::pair{KeyHeard::StartsOfStrains, &m_strainStarts},
                 std::pair{KeyHeard::StartsOfPhrases, &m_phraseStarts},
                 std::pair{KeyHeard::BarLines, &m_barLines},
             })
            at(what) = shares(*counts);
        for (std::size_t c = 0; c < 12; ++c)
            at(KeyHeard::Present)[c] = m_sounding[c] > Length{} ? featureOne : 0;
        at(KeyHeard::Often) = full(at(KeyHeard::Sounding), 10);
        at(KeyHeard::NowAndThen) = full(at(KeyHeard::Sounding), 30);
        at(KeyHeard::FirstStrainOften) = full(at(KeyHeard::FirstStrain), 10);
        at(KeyHeard::FirstBarAtAll) = full(at(KeyHeard::FirstBar), 4);
        at(KeyHeard::FinalBarAtAll) = full(at(KeyHeard::FinalBar), 3);
        at(KeyHeard::AgreedEnd) = both(at(KeyHeard::Last), at(KeyHeard::FirstStrainEnd));
        writeMoves(out);
        return out;
    }

private:
    void hear(tune::Bar const& bar, Unit const* unit)
    {
        for (tune::Note const& note : bar.notes)
            if (sounds(note)) hear(note, unit);
        if (tune::Note const* const last = lastOf(bar)) m_last = one(*last);
        if (unit == nullptr) return; // a pick-up
        if (tune::Note const* const first = firstOf(bar)) hearFirst(*first, *unit);
        if (tune::Note const* const last = lastOf(bar)) hearLast(*last, *unit);
    }

    void hear(tune::Note const& note, Unit const* unit)
    {
        std::size_t const c = classOf(note);
        int const key = midi(note.pitches.back());
        if (m_before && key != *m_before)
            ++m_moves[static_cast<std::size_t>(((key - *m_before) % 12 + 12) % 12)][c];
        m_before = key;
        auto const add = [&note, c](Lengths& lengths) {
            lengths[c] = lengths[c] + note.length;
        };
        add(m_sounding);
        if (unit == nullptr) return;
        if (unit->strain == 0) add(m_firstStrain);
        if (unit->strain == m_lastStrain) add(m_lastStrainLong);
        if (unit->firstBar) add(m_firstBar);
        if (unit->barsToEnd == 1) add(m_lastButOne);
        if (unit->barsToEnd != 0) return;
        add(m_lastBars);
        if (unit->strain == m_lastStrain) add(m_finalBar);
    }

    void hearFirst(tune::Note const& note, Unit const& unit)
    {
        std::size_t const c = classOf(note);
        if (note.at == Length{}) ++m_barLines[c];
        if (unit.firstBar) ++m_first[c];
        if (unit.barOfStrain == 0) ++m_strainStarts[c];
        if (unit.barOfPhrase % 4 == 0) ++m_phraseStarts[c];
    }

    void hearLast(tune::Note const& note, Unit const& unit)
    {
        std::size_t const c = classOf(note);
        if (unit.barsToEnd == 0) ++m_strainEnds[c];
        if (unit.barsToEnd == 0 && unit.strain == 0) m_firstStrainEnd = one(note);
        if (unit.barOfPhrase % 4 == 3) ++m_phraseEnds[c];
        if (unit.barOfPhrase == 3) ++m_halfWay[c];
    }

    static Counts one(tune::Note const& note)
    {
        Counts counts{};
        counts[classOf(note)] = 1;
        return counts;
    }

    // Of all moves; a move that makes an eighth of them is full.
    void writeMoves(KeyHistograms& out) const
    {
        int all = 0;
        for (Counts const& counts : m_moves)
            all += std::accumulate(counts.begin(), counts.end(), 0);
        if (all == 0) return;
        for (std::size_t up = 1; up <= keyMoves; ++up)
            for (std::size_t c = 0; c < 12; ++c)
                out[static_cast<std::size_t>(KeyHeard::Moves) + up - 1][c] =
                    std::min(featureOne, m_moves[up][c] * 8 * featureOne / all);
    }

    int m_lastStrain = 0;
    std::optional<int> m_before;
    Lengths m_sounding{}, m_firstStrain{}, m_lastStrainLong{}, m_firstBar{}, m_finalBar{},
        m_lastBars{}, m_lastButOne{};
    Counts m_last{}, m_strainEnds{}, m_firstStrainEnd{}, m_phraseEnds{}, m_halfWay{}, m_first{},
        m_strainStarts{}, m_phraseStarts{}, m_barLines{};
    std::array<Counts, 12> m_moves{}; // [semitones up][to]
};

} // namespace

KeyHistograms keyHistogramsOf(tune::Tune const& tune) { return Listener(tune).histograms(); }

KeyHistogram const& of(KeyHistograms const& heard, KeyHeard what)
{
    return heard[static_cast<std::size_t>(what)];
}

} // namespace harmony
