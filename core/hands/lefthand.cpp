#include "core/hands/lefthand.h"

#include <algorithm>

namespace hands {

namespace {

using arrange::GroupNote;
using arrange::PlacingGroup;

// Whether two fingers can lie on their strings at once, the thumb's side above.
bool lieTogether(arrange::Arrangement const& arrangement, GroupNote const& a,
                 GroupNote const& b)
{
    if (a.string == b.string) return a.finger == b.finger;
    GroupNote const& low = a.string < b.string ? a : b;
    GroupNote const& high = a.string < b.string ? b : a;
    return low.finger > high.finger &&
           withinReach(arrangement.harp, arrangement.hand, low.string, low.finger, high.string,
                       high.finger);
}

bool joins(arrange::Arrangement const& arrangement, PlacingGroup const& group,
           GroupNote const& note)
{
    return std::all_of(group.notes.begin(), group.notes.end(), [&](GroupNote const& other) {
        return lieTogether(arrangement, other, note);
    });
}

// The finger before stays on: it is another one, beside this one or crossed by it.
bool isLinked(arrange::Arrangement const& arrangement, GroupNote const& before,
              GroupNote const& note)
{
    if (before.finger == note.finger || before.string == note.string) return false;
    bool const rises = before.string < note.string;
    GroupNote const& low = rises ? before : note;
    GroupNote const& high = rises ? note : before;
    return withinReach(arrangement.harp, arrangement.hand, low.string, low.finger, high.string,
                       high.finger);
}

bool isGiven(arrange::Arrangement const& arrangement, int position, int note)
{
    return std::any_of(arrangement.given.begin(), arrangement.given.end(),
                       [&](arrange::GivenNote const& given) {
                           return given.position == position && given.note == note;
                       });
}

std::vector<PlacingGroup> groupsOf(arrange::Arrangement const& arrangement, int position)
{
    auto const& arranged = arrangement.positions[static_cast<std::size_t>(position)];
    auto const& voiced = arranged.voicing.notes;
    std::vector<PlacingGroup> out;
    for (std::size_t i = 0; i < voiced.size(); ++i) {
        if (isGiven(arrangement, position, static_cast<int>(i))) continue;
        GroupNote const note{arranged.position.bar, arranged.position.at + voiced[i].at,
                             voiced[i].string, voiced[i].finger, position};
        if (out.empty() || !joins(arrangement, out.back(), note)) {
            bool const linked =
                !out.empty() && isLinked(arrangement, out.back().notes.back(), note);
            out.push_back({harp::Side::Left, linked, {}});
        }
        out.back().notes.push_back(note);
    }
    return out;
}

} // namespace

std::vector<PlacingGroup> leftGroups(arrange::Arrangement const& arrangement)
{
    std::vector<PlacingGroup> out;
    for (int p = 0; p < static_cast<int>(arrangement.positions.size()); ++p)
        for (PlacingGroup& group : groupsOf(arrangement, p)) out.push_back(std::move(group));
    return out;
}

} // namespace hands
