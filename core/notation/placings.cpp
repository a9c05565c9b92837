#include "core/notation/placings.h"

namespace notation {

std::vector<PlacingBracket> placingBrackets(arrange::Arrangement const& arrangement)
{
    std::vector<PlacingBracket> out;
    arrange::PlacingGroup const* lastGroup = nullptr;
    for (arrange::PlacingGroup const& group : arrangement.groups) {
        if (group.notes.empty()) continue;
        arrange::GroupNote const& first = group.notes.front();
        arrange::GroupNote const& last = group.notes.back();
        PlacingBracket bracket{
            group.hand, group.linked, {first.bar, first.at}, {last.bar, last.at}};
        bool const atOnce = first.bar == last.bar && first.at == last.at;
        if (!atOnce || group.linked) {
            if (group.linked && lastGroup && lastGroup->hand == group.hand)
                bracket.from = {lastGroup->notes.back().bar, lastGroup->notes.back().at};
            out.push_back(bracket);
        }
        lastGroup = &group;
    }
    return out;
}

} // namespace notation
