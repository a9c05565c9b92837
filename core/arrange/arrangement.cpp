#include "core/arrange/arrangement.h"

#include "core/harp/placing.h"

#include <algorithm>
#include <map>
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

int fingerOf(Fingers const& fingers, int bar, tune::PlayedNote const& note)
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
        std::optional<int> const string =
            harp::stringAtMoment(arrangement.harp, arrangement.levers, n.pitch, n.at);
        if (!string) continue;
        int const bar = arrangement.playing.bars[static_cast<std::size_t>(n.playedBar)].bar;
        notes.push_back({n.at, n.held, harp::Side::Right, *string,
                         harp::pitchAt(arrangement.harp, arrangement.levers, *string, n.at),
                         fingerOf(fingers, bar, n), std::nullopt, 0, true, n.playedBar});
    }
}

void addLeftHand(Arrangement const& arrangement, std::vector<HandNote>& notes)
{
    std::vector<PlayedPosition> const played = playedPositions(arrangement);
    for (std::size_t i = 0; i < played.size(); ++i) {
        auto const position = static_cast<std::size_t>(played[i].position);
        for (VoicedNote const& v : arrangement.positions[position].voicing.notes) {
            music::Moment const at = played[i].when.at + v.at;
            notes.push_back({at, v.held, harp::Side::Left, v.string,
                             harp::pitchAt(arrangement.harp, arrangement.levers, v.string, at),
                             v.finger, static_cast<int>(i), v.rollOrder, false,
                             played[i].when.playedBar});
        }
    }
}

} // namespace

std::vector<PlayedPosition> playedPositions(Arrangement const& arrangement)
{
    std::vector<PlayedPosition> out;
    for (std::size_t i = 0; i < arrangement.positions.size(); ++i)
        for (Occurrence const& when : arrangement.positions[i].position.played)
            out.push_back({static_cast<int>(i), when});
    std::ranges::stable_sort(out, {}, [](PlayedPosition const& p) { return p.when.at; });
    return out;
}

std::vector<HandNote> handNotes(Arrangement const& arrangement)
{
    std::vector<HandNote> notes;
    addTune(arrangement, notes);
    addLeftHand(arrangement, notes);
    std::ranges::stable_sort(notes, [](HandNote const& a, HandNote const& b) {
        return a.at != b.at ? a.at < b.at : a.string < b.string;
    });
    return notes;
}

} // namespace arrange
