#include "core/levers/stringgroup.h"

#include "core/base/at.h"

#include <algorithm>
#include <numeric>
#include <optional>

namespace levers {

namespace {

using base::at;

// Strings that share a note with two seats belong to one group; so do those of a note that may
// ring on through another, as long as the group stays small: beyond that a note rings on
// wherever its neighbour is plucked, and the plan that follows sees what it does to the levers.
constexpr int mostTiedByHolding = 2; // strings; the states of a group grow with each

} // namespace

std::vector<StringGroup> groupsOf(harp::Harp const& harp, NoteOptions const& options)
{
    base::List<harp::StringIndex, harp::StringIndex> leader;
    for (harp::StringIndex const string : harp.indices()) leader.push_back(string);
    base::List<harp::StringIndex, int> size(leader.size(), 1);
    auto const leaderOf = [&leader](harp::StringIndex string) {
        while (leader[string] != string) string = leader[string];
        return string;
    };
    auto const tie = [&](harp::StringIndex a, harp::StringIndex b) {
        harp::StringIndex const from = leaderOf(a);
        harp::StringIndex const to = leaderOf(b);
        if (from == to) return;
        leader[from] = to;
        size[to] += size[from];
    };
    base::List<UseIndex, std::optional<harp::StringIndex>> first(
        options.size(), std::nullopt); // a string of each note
    for (UseIndex const note : options.indices())
        for (NoteOption const& option : options[note]) {
            if (!option.seat) continue;
            if (!first[note]) first[note] = option.seat->string;
            tie(option.seat->string, *first[note]);
        }
    for (UseIndex const note : options.indices())
        for (NoteOption const& option : options[note]) {
            if (!option.holds || !first[*option.holds]) continue;
            harp::StringIndex const held = *first[*option.holds];
            if (!first[note]) first[note] = held;
            if (leaderOf(held) == leaderOf(*first[note])) continue;
            if (size[leaderOf(held)] + size[leaderOf(*first[note])] <= mostTiedByHolding)
                tie(held, *first[note]);
        }

    base::List<harp::StringIndex, StringGroup> groups(leader.size(), {}); // by leader
    for (harp::StringIndex const string : harp.indices())
        groups[leaderOf(string)].strings.push_back(string);
    for (UseIndex const note : options.indices())
        groups[leaderOf(first[note].value_or(harp::StringIndex(0)))].notes.push_back(note);
    std::vector<StringGroup> out;
    for (StringGroup& group : groups)
        if (!group.notes.empty()) out.push_back(std::move(group));
    return out;
}

MomentOrder orderOf(Uses const& notes, bool leversTurn)
{
    std::vector<music::Moment> moments;
    for (tune::PlayedNote const& note : notes) {
        moments.push_back(note.at);
        moments.push_back(note.at + note.held);
    }
    std::sort(moments.begin(), moments.end());
    moments.erase(std::unique(moments.begin(), moments.end()), moments.end());
    auto const placeOf = [&moments](music::Moment moment) {
        return static_cast<int>(std::lower_bound(moments.begin(), moments.end(), moment) -
                                moments.begin());
    };
    MomentOrder order{{}, {}, leversTurn};
    for (tune::PlayedNote const& note : notes) {
        order.begins.push_back(placeOf(note.at));
        order.ends.push_back(placeOf(note.at + note.held));
    }
    return order;
}

} // namespace levers
