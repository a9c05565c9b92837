#include "core/music/spelling.h"

namespace music {

Pitch spelt(int key, int sharps)
{
    for (int fifth = sharps - 3; fifth <= sharps + 8; ++fifth) {
        PitchName const name = nameAtFifths(fifth);
        if (pitchClass(name) != key % 12) continue;
        int const natural =
            key - name.alter - semitonesAboveC[static_cast<std::size_t>(index(name.letter))];
        return {name.letter, name.alter, natural / 12 - 1};
    }
    return {};
}

} // namespace music
