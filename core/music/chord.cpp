#include "core/music/chord.h"

namespace music {

PitchName lowest(Chord const& chord) { return chord.bass ? *chord.bass : chord.root; }

std::vector<PitchName> toneNames(Chord const& chord)
{
    std::vector<PitchName> names;
    for (Interval tone : chord.tones) names.push_back(transposed(chord.root, tone));
    return names;
}

bool contains(Chord const& chord, int wanted)
{
    if (chord.bass && pitchClass(*chord.bass) == wanted) return true;
    for (PitchName name : toneNames(chord))
        if (pitchClass(name) == wanted) return true;
    return false;
}

std::string shown(Chord const& chord)
{
    return shown(chord.root) + chord.suffix + (chord.bass ? '/' + shown(*chord.bass) : "");
}
std::string plain(Chord const& chord)
{
    return plain(chord.root) + chord.suffix + (chord.bass ? '/' + plain(*chord.bass) : "");
}

Chord transposed(Chord chord, Interval by)
{
    chord.root = transposed(chord.root, by);
    if (chord.bass) chord.bass = transposed(*chord.bass, by);
    return chord;
}

} // namespace music
