#include "core/hands/handsof.h"

#include "core/base/words.h"
#include "core/hands/easing.h"
#include "core/hands/lefthand.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <utility>

namespace hands {

namespace {

void takeRight(arrange::Arrangement& arrangement, RightHand right)
{
    arrangement.rightFingers = std::move(right.fingers);
    arrangement.added = std::move(right.added);
    arrangement.given = std::move(right.given);
    arrangement.groups = std::move(right.groups);
}

void takeLeft(arrange::Arrangement& arrangement, LeftHand left)
{
    for (arrange::PositionIndex const p : arrangement.positions.indices()) {
        auto& notes = arrangement.positions[p].voicing.notes;
        for (std::size_t n = 0; n < notes.size(); ++n) notes[n].finger = left.fingers[p][n];
    }
    std::move(left.groups.begin(), left.groups.end(), std::back_inserter(arrangement.groups));
    for (ChangedFinger const& change : left.changed) {
        auto const& p = arrangement.positions[change.position];
        auto const& note = p.voicing.notes[static_cast<std::size_t>(change.note)];
        arrangement.handRemarks.push_back({p.position.bar, p.position.at + note.at,
                                           harp::Side::Left,
                                           base::say("finger {} instead of {}: {}",
                                                     change.finger, change.usual, change.why)});
    }
}

} // namespace

std::vector<int> placeHands(arrange::Arrangement& arrangement, HandWishes const& wishes)
{
    std::optional<PlacedRight> none;
    return placeHands(arrangement, wishes, none);
}

std::vector<int> placeHands(arrange::Arrangement& arrangement, HandWishes const& wishes,
                            std::optional<PlacedRight>& before)
{
    arrangement.handRemarks.clear();
    arrangement.given.clear();
    arrangement.added.clear();
    easeStretches(arrangement, wishes.book);
    arrangement.added = addedBelow(arrangement, wishes.right, wishes.rightByBar);
    bool const gives = !arrangement.given.empty(); // its strings are the left hand's
    if (gives || (before && before->added != arrangement.added)) before.reset();
    if (!before) before = PlacedRight{arrangement.added, rightHand(arrangement, wishes.set)};
    RightHand right = before->hand;
    if (gives) before.reset();
    LeftHand left = leftHand(arrangement, wishes.set);
    std::vector<int> unkept = right.unkept;
    unkept.insert(unkept.end(), left.unkept.begin(), left.unkept.end());
    std::sort(unkept.begin(), unkept.end());
    takeRight(arrangement, std::move(right));
    takeLeft(arrangement, std::move(left));
    std::stable_sort(arrangement.handRemarks.begin(), arrangement.handRemarks.end(),
                     [](arrange::HandRemark const& a, arrange::HandRemark const& b) {
                         return std::pair(a.bar, a.at) < std::pair(b.bar, b.at);
                     });
    return unkept;
}

} // namespace hands
