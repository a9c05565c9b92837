#include "core/hands/lefthand.h"

#include "core/base/words.h"
#include "core/hands/easing.h"
#include "core/hands/fingerpath.h"
#include "core/hands/pauses.h"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

namespace hands {

namespace {

using arrange::Arrangement;
using arrange::VoicedNote;

// What the left hand plucks at once: notes of one position, one by one where they are rolled.
struct Struck {
    arrange::PositionIndex position = 0;
    std::vector<int> notes; // indices into Voicing::notes, from the lowest string
    Stroke pluck;
};

bool isGiven(Arrangement const& arrangement, arrange::PositionIndex position, int note)
{
    return std::any_of(arrangement.given.begin(), arrangement.given.end(),
                       [&](arrange::GivenNote const& given) {
                           return given.position == position && given.note == note;
                       });
}

arrange::ArrangedPosition const& at(Arrangement const& arrangement,
                                    arrange::PositionIndex position)
{
    return arrangement.positions[position];
}

VoicedNote const& noteAt(Arrangement const& arrangement, arrange::PositionIndex position,
                         int note)
{
    return at(arrangement, position).voicing.notes[static_cast<std::size_t>(note)];
}

// The plucks of one position, in the order of playing.
std::vector<Struck> struckIn(Arrangement const& arrangement, arrange::PositionIndex position)
{
    auto const& notes = at(arrangement, position).voicing.notes;
    std::vector<int> order;
    for (int n = 0; n < static_cast<int>(notes.size()); ++n)
        if (!isGiven(arrangement, position, n)) order.push_back(n);
    auto const key = [&](int n) {
        VoicedNote const& note = notes[static_cast<std::size_t>(n)];
        return std::tuple(note.at, note.rollOrder, note.string);
    };
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return key(a) < key(b); });

    std::vector<Struck> out;
    for (int const n : order) {
        VoicedNote const& note = notes[static_cast<std::size_t>(n)];
        bool const together =
            !out.empty() && note.rollOrder == 0 &&
            notes[static_cast<std::size_t>(out.back().notes.back())].at == note.at &&
            notes[static_cast<std::size_t>(out.back().notes.back())].string != note.string;
        if (!together) out.push_back({position, {}, {}});
        out.back().notes.push_back(n);
        out.back().pluck.strings.push_back(note.string);
        out.back().pluck.usual.push_back(note.finger);
    }
    return out;
}

// Where a position is played right after another: from there to here. None: long after.
std::optional<music::Length> timeBetween(arrange::ArrangedPosition const& before,
                                         music::Length last,
                                         arrange::ArrangedPosition const& now,
                                         music::Length first)
{
    std::optional<music::Length> least;
    for (arrange::Occurrence const& b : before.position.played)
        for (arrange::Occurrence const& n : now.position.played) {
            if (n.at < b.at + before.position.span) continue;
            music::Length const apart = n.at + first - (b.at + last);
            if (!least || apart < *least) least = apart;
        }
    return least;
}

Pause pauseBetween(Arrangement const& arrangement, Struck const& before, Struck const& now)
{
    auto const& p = at(arrangement, now.position);
    music::Length const then = noteAt(arrangement, before.position, before.notes.front()).at;
    music::Length const here = noteAt(arrangement, now.position, now.notes.front()).at;
    std::optional<music::Length> const since =
        before.position == now.position
            ? here - then
            : timeBetween(at(arrangement, before.position), then, p, here);
    music::Meter const meter = arrangement.tune.bars[p.position.bar].meter;
    return pauseFor(since.value_or(music::Length{}), !since, meter, arrangement.tempo,
                    arrangement.level.leftNotesPerSecond);
}

std::vector<Struck> allStruck(Arrangement const& arrangement)
{
    std::vector<Struck> out;
    for (arrange::PositionIndex const p : arrangement.positions.indices())
        for (Struck& struck : struckIn(arrangement, p)) {
            if (!out.empty())
                struck.pluck.before = pauseBetween(arrangement, out.back(), struck);
            out.push_back(std::move(struck));
        }
    return out;
}

// Whether some fingers, those set among them, lie on the strings of a pluck together.
bool canLie(Arrangement const& arrangement, Stroke const& pluck)
{
    Player const player{arrangement.harp, arrangement.hand};
    auto const ways = movesTo({}, pluck, player);
    auto const lies = [&](HandMove const& move) {
        for (std::size_t i = 0; i + 1 < move.fingers.size(); ++i)
            for (std::size_t j = i + 1; j < move.fingers.size(); ++j)
                if (!lieTogether(arrangement.harp, arrangement.hand,
                                 {pluck.strings[i], move.fingers[i]},
                                 {pluck.strings[j], move.fingers[j]}))
                    return false;
        return true;
    };
    return canKeepSet(pluck) && std::ranges::any_of(ways, lies);
}

// The notes that stand at a place of the tune, from the lowest.
std::vector<std::pair<Struck*, std::size_t>> voicesAt(Arrangement const& arrangement,
                                                      arrange::SetFinger const& set,
                                                      std::vector<Struck>& struck)
{
    std::vector<std::pair<Struck*, std::size_t>> out;
    for (Struck& s : struck) {
        auto const& position = at(arrangement, s.position).position;
        if (position.bar != set.bar || position.played.front().pass != set.pass) continue;
        for (std::size_t i = 0; i < s.notes.size(); ++i)
            if (position.at + noteAt(arrangement, s.position, s.notes[i]).at == set.at)
                out.emplace_back(&s, i);
    }
    std::stable_sort(out.begin(), out.end(), [](auto const& a, auto const& b) {
        return a.first->pluck.strings[a.second] < b.first->pluck.strings[b.second];
    });
    return out;
}

std::vector<int> addSet(Arrangement const& arrangement, std::span<arrange::SetFinger const> set,
                        std::vector<Struck>& struck)
{
    std::vector<int> unkept;
    for (std::size_t i = 0; i < set.size(); ++i) {
        if (set[i].hand != harp::Side::Left) continue;
        auto const voices = voicesAt(arrangement, set[i], struck);
        auto const voice = static_cast<std::size_t>(set[i].voice);
        bool kept = voice < voices.size();
        if (kept) {
            auto const [where, index] = voices[voice];
            Stroke with = where->pluck;
            with.set.resize(with.strings.size());
            with.set[index] = set[i].finger;
            kept = canLie(arrangement, with);
            if (kept) where->pluck = std::move(with);
        }
        if (!kept) unkept.push_back(static_cast<int>(i));
    }
    return unkept;
}

// Why a finger is not the pattern's: seen from the pluck before.
std::string whyChanged(Arrangement const& arrangement, std::vector<Struck> const& struck,
                       FingerPath const& path, std::size_t now, std::size_t index)
{
    Struck const& here = struck[now];
    if (!here.pluck.set.empty()) {
        if (here.pluck.set[index]) return base::said("you chose it");
        return base::said("it goes with the finger you chose next to it");
    }
    int const usual = here.pluck.usual[index];
    harp::StringIndex const string = here.pluck.strings[index];
    if (now > 0) {
        Struck const& before = struck[now - 1];
        auto const& fingers = path.fingers[now - 1];
        for (std::size_t i = 0; i < fingers.size(); ++i) {
            if (fingers[i] == usual && before.pluck.strings[i] != string)
                return base::say("finger {} has just played on string {}", usual,
                                 before.pluck.strings[i] + 1);
            harp::PlacedFinger const a{before.pluck.strings[i], fingers[i]};
            harp::PlacedFinger const b{string, usual};
            auto const [low, high] = a.string < b.string ? std::pair(a, b) : std::pair(b, a);
            if (before.position == here.position && a.string != b.string &&
                easeOf(arrangement.harp, arrangement.hand, low, high) != harp::Ease::Easy)
                return base::say("fingers {} and {} would lie {} strings apart", low.finger,
                                 high.finger, high.string - low.string);
        }
    }
    return base::said("this way the hand does not have to be placed again");
}

bool opensGroup(Join join) { return join != Join::Stays && join != Join::Slides; }
bool staysOn(Join join) { return join == Join::Stays || join == Join::Linked; }

// Finger 4 of the group lies too far from where the thumb is wanted: it leaves, the others
// stay.
bool leavesForTheThumb(Arrangement const& arrangement, arrange::PlacingGroup const& group,
                       Struck const& struck, Fingers const& fingers)
{
    if (fingers != Fingers{1}) return false;
    return std::any_of(
        group.notes.begin(), group.notes.end(), [&](arrange::GroupNote const& note) {
            return note.finger == harp::fingers &&
                   stretches(arrangement, note.string, struck.pluck.strings.front());
        });
}

void addToGroups(Arrangement const& arrangement, std::vector<arrange::PlacingGroup>& groups,
                 Struck const& struck, bool sameOnwards, FingerPath const& path,
                 std::size_t index)
{
    Join const join = path.joins[index];
    if (!sameOnwards || opensGroup(join) ||
        leavesForTheThumb(arrangement, groups.back(), struck, path.fingers[index]))
        groups.push_back({harp::Side::Left, !groups.empty() && staysOn(join), {}});
    auto const& position = at(arrangement, struck.position).position;
    for (std::size_t i = 0; i < struck.notes.size(); ++i) {
        VoicedNote const& note = noteAt(arrangement, struck.position, struck.notes[i]);
        groups.back().notes.push_back({position.bar, position.at + note.at, note.string,
                                       path.fingers[index][i], struck.position});
    }
}

} // namespace

LeftHand leftHand(Arrangement const& arrangement, std::span<arrange::SetFinger const> set)
{
    std::vector<Struck> struck = allStruck(arrangement);
    LeftHand out;
    out.unkept = addSet(arrangement, set, struck);
    std::vector<Stroke> plucks;
    for (Struck const& s : struck) plucks.push_back(s.pluck);
    harp::Level const& level = arrangement.level;
    FingerPath const path = cheapestFingers(
        plucks, {arrangement.harp, arrangement.hand, level.crosses, level.slides});

    for (arrange::ArrangedPosition const& p : arrangement.positions) {
        out.fingers.emplace_back();
        for (VoicedNote const& note : p.voicing.notes)
            out.fingers.back().push_back(note.finger);
    }
    for (std::size_t s = 0; s < struck.size(); ++s) {
        auto& fingers = out.fingers[static_cast<std::size_t>(struck[s].position)];
        for (std::size_t i = 0; i < struck[s].notes.size(); ++i) {
            int& finger = fingers[static_cast<std::size_t>(struck[s].notes[i])];
            int const solved = path.fingers[s][i];
            if (solved != finger)
                out.changed.push_back({struck[s].position, struck[s].notes[i], finger, solved,
                                       whyChanged(arrangement, struck, path, s, i)});
            finger = solved;
        }
        bool const onwards = s > 0 && struck[s - 1].position == struck[s].position;
        addToGroups(arrangement, out.groups, struck[s], onwards, path, s);
    }
    return out;
}

} // namespace hands
