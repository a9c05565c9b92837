#include "core/sheet/cautions.h"

#include "core/base/words.h"
#include "core/harp/hand.h"

#include <algorithm>

namespace sheet {

namespace {

// Whether the voicing asks for fingers further apart than the hand lies on at ease, at once or
// one after the other in one placing.
bool isWide(arrange::Arrangement const& arrangement, arrange::Voicing const& voicing)
{
    for (arrange::VoicedNote const& low : voicing.notes)
        for (arrange::VoicedNote const& high : voicing.notes) {
            if (low.string >= high.string || low.finger == high.finger) continue;
            if (high.at < low.at) continue;
            if (harp::easeOf(arrangement.harp, arrangement.hand, {low.string, low.finger},
                             {high.string, high.finger}) != harp::Ease::Easy)
                return true;
        }
    return false;
}

} // namespace

std::vector<std::string> cautions(arrange::Arrangement const& arrangement)
{
    std::vector<std::string> lines;
    auto const& positions = arrangement.positions;
    if (std::any_of(positions.begin(), positions.end(), [&](auto const& position) {
            return isWide(arrangement, position.voicing);
        }))
        lines.emplace_back(
            base::said("Where a shape is wide, let the low finger go as the thumb reaches "
                       "its string; with a smaller hand, roll it or leave out the top note."));
    if (!arrangement.levers.flips.empty())
        lines.emplace_back(
            base::said("Damp the string with a fingertip before you flip its lever."));
    return lines;
}

} // namespace sheet
