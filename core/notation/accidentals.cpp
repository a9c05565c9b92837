#include "core/notation/accidentals.h"

namespace notation {

bool AccidentalMemory::needs(music::Pitch pitch)
{
    int const step = music::diatonicStep(pitch);
    auto const [held, first] =
        m_alters.try_emplace(step, music::alterIn(m_signature, pitch.letter));
    if (held->second == pitch.alter) return false;
    held->second = pitch.alter;
    return true;
}

namespace {

constexpr int stepsInOctave = 7;

music::Letter letterOf(int step)
{
    return static_cast<music::Letter>(((step % stepsInOctave) + stepsInOctave) % stepsInOctave);
}

} // namespace

bool AccidentalMemory::invitesDoubt(music::Pitch pitch)
{
    int const step = music::diatonicStep(pitch);
    for (auto const& [other, alter] : m_alters)
        if (other != step && letterOf(other) == pitch.letter && alter != pitch.alter)
            return m_doubts.insert(step).second;
    return false;
}

std::map<int, int> AccidentalMemory::altered() const
{
    std::map<int, int> out;
    for (auto const& [step, alter] : m_alters)
        if (alter != music::alterIn(m_signature, letterOf(step))) out[step] = alter;
    return out;
}

} // namespace notation
