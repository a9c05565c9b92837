#include "core/sheet/accidentals.h"

namespace sheet {

bool AccidentalMemory::needs(music::Pitch pitch)
{
    int const step = music::diatonicStep(pitch);
    auto const [held, first] =
        m_alters.try_emplace(step, music::alterIn(m_signature, pitch.letter));
    if (held->second == pitch.alter) return false;
    held->second = pitch.alter;
    return true;
}

} // namespace sheet
