#include "core/notation/placings.h"

#include <algorithm>
#include <map>
#include <set>

namespace notation {

namespace {

using arrange::GroupNote;
using arrange::PlacingGroup;
using Hold = std::map<int, int>; // fingers by string

Hold holdOf(PlacingGroup const& group)
{
    Hold hold;
    for (GroupNote const& note : group.notes) hold.emplace(note.string, note.finger);
    return hold;
}

// The same hold anywhere on the strings is one shape.
Hold shapeOf(Hold const& hold)
{
    Hold shape;
    for (auto const& [string, finger] : hold)
        shape.emplace(string - hold.begin()->first, finger);
    return shape;
}

// The higher string has the lower finger number but where the hand crosses.
bool crosses(Hold const& hold)
{
    int before = 5;
    for (auto const& [string, finger] : hold) {
        if (finger >= before) return true;
        before = finger;
    }
    return false;
}

// Strings between two holds; 0 where they touch or overlap.
int leapBetween(Hold const& from, Hold const& to)
{
    if (from.empty()) return 0;
    return std::max({0, to.begin()->first - from.rbegin()->first,
                     from.begin()->first - to.rbegin()->first});
}

// What one hand's player has been told so far.
class Reader {
public:
    bool isHelped(PlacingGroup const& group)
    {
        constexpr int leap = 4;          // strings: a fifth
        constexpr std::size_t three = 3; // two fingers side by side need no bracket
        Hold const hold = holdOf(group);
        Hold const shape = shapeOf(hold);
        bool const leaps = leapBetween(m_before, hold) >= leap;
        bool const fresh = m_shapes.insert(shape).second;
        bool const right = group.hand == harp::Side::Right;
        m_before = hold;
        if (hold.size() < 2) return false;
        if (crosses(hold)) return true;
        return hold.size() >= three && (fresh || (right && leaps));
    }

private:
    Hold m_before;
    std::set<Hold> m_shapes;
};

} // namespace

std::vector<PlacingBracket> placingBrackets(arrange::Arrangement const& arrangement,
                                            Placings which)
{
    std::vector<PlacingBracket> out;
    if (which == Placings::None) return out;
    std::map<harp::Side, Reader> readers;
    PlacingGroup const* lastGroup = nullptr;
    for (PlacingGroup const& group : arrangement.groups) {
        if (group.notes.empty()) continue;
        GroupNote const& first = group.notes.front();
        GroupNote const& last = group.notes.back();
        PlacingBracket bracket{
            group.hand, group.linked, {first.bar, first.at}, {last.bar, last.at}};
        bool const atOnce = first.bar == last.bar && first.at == last.at;
        bool const helps = readers[group.hand].isHelped(group) || which == Placings::All;
        if (helps && (!atOnce || group.linked)) {
            if (group.linked && lastGroup && lastGroup->hand == group.hand)
                bracket.from = {lastGroup->notes.back().bar, lastGroup->notes.back().at};
            out.push_back(bracket);
        }
        lastGroup = &group;
    }
    return out;
}

} // namespace notation
