#include "core/arrange/laid.h"

namespace arrange {

Laid laidAs(Voicing const& voicing, View const& view)
{
    Laid laid{voicing, {}, 0};
    for (VoicedNote const& note : voicing.notes) {
        double const at = note.at.wholes.toDouble();
        laid.plucks.push_back({at, note.held.wholes.toDouble(), note.string,
                               midiAt(view.passes.front(), note.string, at), note.finger,
                               note.degree, strengthAt(view, note.at), note.rollOrder});
        laid.strings |= std::uint64_t{1} << (note.string % 64);
    }
    return laid;
}

} // namespace arrange
