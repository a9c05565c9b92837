#include "core/arrange/arrangement.h"

#include "core/harp/seats.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>
#include <utility>

namespace arrange {

namespace {

// Fingers by bar and note of the written tune.
using Fingers = std::map<std::pair<int, int>, std::vector<int> const*>;

Fingers fingersByNote(Arrangement const& arrangement)
{
    Fingers out;
    for (NoteFingers const& f : arrangement.rightFingers) out[{f.bar, f.note}] = &f.fingers;
    return out;
}

int fingerOf(Fingers const& fingers, tune::BarIndex bar, tune::PlayedNote const& note)
{
    constexpr int usual = 2; // a single note that nobody has fingered [trade-3.2]
    auto const found = fingers.find({bar, note.note});
    if (found == fingers.end()) return usual;
    auto const place = static_cast<std::size_t>(note.ofChord);
    return place < found->second->size() ? (*found->second)[place] : usual;
}

void addTune(Arrangement const& arrangement, std::vector<HandNote>& notes)
{
    Fingers const fingers = fingersByNote(arrangement);
    for (tune::PlayedNote const& n : arrangement.playing.notes) {
        std::optional<harp::StringIndex> const string =
            harp::stringAtMoment(arrangement.harp, arrangement.levers, n.pitch, n.at);
        if (!string) continue;
        tune::BarIndex const bar = arrangement.playing.bars[n.playedBar].bar;
        notes.push_back({n.at, n.held, harp::Side::Right, *string,
                         harp::pitchAt(arrangement.harp, arrangement.levers, *string, n.at),
                         fingerOf(fingers, bar, n), std::nullopt, 0, true, n.playedBar});
    }
}

// What the right hand plucks with the tune's notes, below them.
void addBelow(Arrangement const& arrangement, std::vector<HandNote>& notes)
{
    std::map<std::pair<int, int>, AddedBelow const*> below;
    for (AddedBelow const& a : arrangement.added) below[{a.bar, a.note}] = &a;
    if (below.empty()) return;
    for (tune::PlayedNote const& n : arrangement.playing.notes) {
        if (n.ofChord != 0) continue;
        tune::BarIndex const bar = arrangement.playing.bars[n.playedBar].bar;
        auto const found = below.find({bar, n.note});
        if (found == below.end()) continue;
        AddedBelow const& added = *found->second;
        for (std::size_t i = 0; i < added.pitches.size(); ++i)
            if (auto const string = harp::stringAtMoment(arrangement.harp, arrangement.levers,
                                                         added.pitches[i], n.at))
                notes.push_back(
                    {n.at, n.held, harp::Side::Right, *string,
                     harp::pitchAt(arrangement.harp, arrangement.levers, *string, n.at),
                     added.fingers[i], std::nullopt, 0, false, n.playedBar});
    }
}

// Chords of the tune that are wider than the hand go from low to high. `notes` are those of the
// right hand, by time and string.
void rollWideChords(Arrangement const& arrangement, std::vector<HandNote>& notes)
{
    std::set<music::Moment> rolled;
    std::set<std::pair<int, int>> wide;
    for (NoteFingers const& f : arrangement.rightFingers)
        if (f.rolled) wide.insert({f.bar, f.note});
    if (wide.empty()) return;
    for (tune::PlayedNote const& n : arrangement.playing.notes)
        if (wide.contains({arrangement.playing.bars[n.playedBar].bar, n.note}))
            rolled.insert(n.at);
    for (std::size_t i = 0; i < notes.size(); ++i)
        if (rolled.contains(notes[i].at))
            notes[i].rollOrder =
                i > 0 && notes[i - 1].at == notes[i].at ? notes[i - 1].rollOrder + 1 : 1;
}

GivenNote const* givenNote(Arrangement const& arrangement, PositionIndex position, int note)
{
    for (GivenNote const& g : arrangement.given)
        if (g.position == position && g.note == note) return &g;
    return nullptr;
}

void addLeftHand(Arrangement const& arrangement, std::vector<HandNote>& notes)
{
    auto const played = playedPositions(arrangement);
    for (PlayedPositionIndex const i : played.indices()) {
        auto const& voiced = arrangement.positions[played[i].position].voicing.notes;
        for (std::size_t n = 0; n < voiced.size(); ++n) {
            VoicedNote const& v = voiced[n];
            GivenNote const* const given =
                givenNote(arrangement, played[i].position, static_cast<int>(n));
            music::Moment const at = played[i].when.at + v.at;
            notes.push_back({at, v.held, given ? harp::Side::Right : harp::Side::Left, v.string,
                             harp::pitchAt(arrangement.harp, arrangement.levers, v.string, at),
                             given ? given->finger : v.finger, i, v.rollOrder, false,
                             played[i].when.playedBar});
        }
    }
}

} // namespace

base::List<PlayedPositionIndex, PlayedPosition> playedPositions(Arrangement const& arrangement)
{
    base::List<PlayedPositionIndex, PlayedPosition> out;
    for (PositionIndex const i : arrangement.positions.indices())
        for (Occurrence const& when : arrangement.positions[i].position.played)
            out.push_back({i, when});
    std::ranges::stable_sort(out, {}, [](PlayedPosition const& p) { return p.when.at; });
    return out;
}

std::vector<HandNote> handNotes(Arrangement const& arrangement)
{
    std::vector<HandNote> notes;
    addTune(arrangement, notes);
    addBelow(arrangement, notes);
    auto const byTimeAndString = [](HandNote const& a, HandNote const& b) {
        return a.at != b.at ? a.at < b.at : a.string < b.string;
    };
    std::ranges::stable_sort(notes, byTimeAndString);
    rollWideChords(arrangement, notes);
    addLeftHand(arrangement, notes);
    std::ranges::stable_sort(notes, byTimeAndString);
    return notes;
}

namespace {

// Where a note of a group is written.
using WrittenPlace =
    std::tuple<harp::Side, int, music::Length, int, std::optional<PositionIndex>>;

struct PlaceInGroup {
    int group = 0;
    int order = 0;
};

std::map<WrittenPlace, PlaceInGroup> placesOf(Arrangement const& arrangement)
{
    std::map<WrittenPlace, PlaceInGroup> places;
    for (std::size_t g = 0; g < arrangement.groups.size(); ++g) {
        PlacingGroup const& group = arrangement.groups[g];
        for (std::size_t n = 0; n < group.notes.size(); ++n) {
            GroupNote const& note = group.notes[n];
            places[{group.hand, note.bar, note.at, note.string, note.position}] = {
                static_cast<int>(g), static_cast<int>(n)};
        }
    }
    return places;
}

} // namespace

std::vector<PlayedGroup> playedGroups(Arrangement const& arrangement,
                                      std::vector<HandNote> const& notes)
{
    auto const places = placesOf(arrangement);
    auto const positions = playedPositions(arrangement);
    struct Open {
        std::size_t played = 0; // index into the answer
        PlaceInGroup last;
    };
    std::map<harp::Side, Open> open;
    std::vector<PlayedGroup> out;
    for (std::size_t i = 0; i < notes.size(); ++i) {
        HandNote const& note = notes[i];
        tune::PlayedBar const& bar = arrangement.playing.bars[note.playedBar];
        std::optional<PositionIndex> position;
        if (note.position) position = positions[*note.position].position;
        auto const place =
            places.find({note.hand, bar.bar, note.at - bar.at, note.string, position});
        if (place == places.end()) continue;
        auto const now = open.find(note.hand);
        bool const goesOn = now != open.end() &&
                            now->second.last.group == place->second.group &&
                            now->second.last.order < place->second.order;
        if (!goesOn) {
            out.push_back({place->second.group, {}});
            open[note.hand] = {out.size() - 1, place->second};
        }
        Open& current = open[note.hand];
        current.last = place->second;
        out[current.played].notes.push_back(static_cast<int>(i));
    }
    return out;
}

} // namespace arrange
