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

std::vector<StringGroup> groupsOf(harp::Harp const& harp,
                                  std::vector<std::vector<NoteOption>> const& options)
{
    std::vector<int> leader(at(harp.count()));
    std::vector<int> size(leader.size(), 1);
    std::iota(leader.begin(), leader.end(), 0);
    auto const leaderOf = [&leader](int string) {
        while (leader[at(string)] != string) string = leader[at(string)];
        return string;
    };
    auto const tie = [&](int a, int b) {
        int const from = leaderOf(a);
        int const to = leaderOf(b);
        if (from == to) return;
        leader[at(from)] = to;
        size[at(to)] += size[at(from)];
    };
    std::vector<std::optional<int>> first(options.size()); // a string of each note
    for (std::size_t note = 0; note < options.size(); ++note)
        for (NoteOption const& option : options[note]) {
            if (!option.seat) continue;
            if (!first[note]) first[note] = option.seat->string;
            tie(option.seat->string, *first[note]);
        }
    for (std::size_t note = 0; note < options.size(); ++note)
        for (NoteOption const& option : options[note]) {
            if (!option.holds || !first[at(*option.holds)]) continue;
            int const held = *first[at(*option.holds)];
            if (!first[note]) first[note] = held;
            if (leaderOf(held) == leaderOf(*first[note])) continue;
            if (size[at(leaderOf(held))] + size[at(leaderOf(*first[note]))] <=
                mostTiedByHolding)
                tie(held, *first[note]);
        }

    std::vector<StringGroup> groups(leader.size());
    for (int string = 0; string < harp.count(); ++string)
        groups[at(leaderOf(string))].strings.push_back(string);
    for (std::size_t note = 0; note < options.size(); ++note)
        groups[at(leaderOf(first[note].value_or(0)))].notes.push_back(static_cast<int>(note));
    std::erase_if(groups, [](StringGroup const& group) { return group.notes.empty(); });
    return groups;
}

MomentOrder orderOf(std::span<tune::PlayedNote const> notes, bool leversTurn)
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
