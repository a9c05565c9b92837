#include "core/sheet/shapes.h"

#include "core/notation/lefthand.h"
#include "core/notation/words.h"
#include "core/pattern/pattern.h"

#include <algorithm>
#include <map>
#include <set>

namespace sheet {

using arrange::VoicedNote;
using arrange::Voicing;

namespace {

// The finger that first plays each string, by string.
std::map<harp::StringIndex, VoicedNote> placedOnce(Voicing const& voicing)
{
    std::map<harp::StringIndex, VoicedNote> placed;
    for (VoicedNote const& note : voicing.notes) placed.emplace(note.string, note);
    return placed;
}

ShapePicture anywhere(Voicing const& voicing)
{
    auto const placed = placedOnce(voicing);
    int const below = placed.begin()->first - 1;
    ShapePicture picture;
    picture.title = notation::patternWords(voicing);
    picture.caption = fingersCaption(voicing);
    picture.strings.resize(static_cast<std::size_t>(placed.rbegin()->first - below + 2));
    for (auto const& [string, note] : placed)
        picture.dots.push_back({string - below, note.finger, notation::patternWords(pattern::degreeText(note.degree))});
    return picture;
}

} // namespace

// A rhythm may play the shape more than once.
std::string fingersCaption(Voicing const& voicing)
{
    auto const shape = pattern::patternFrom(voicing.pattern);
    std::size_t const once = shape ? shape->notes.size() : voicing.notes.size();
    std::string fingers;
    music::Length before;
    for (std::size_t i = 0; i < std::min(once, voicing.notes.size()); ++i) {
        VoicedNote const& note = voicing.notes[i];
        bool const together = !fingers.empty() && note.at == before;
        if (!fingers.empty()) fingers += together ? '+' : '-';
        fingers += std::to_string(note.finger);
        before = note.at;
    }
    return fingers;
}

std::vector<ShapePicture> shapesUsed(arrange::Arrangement const& arrangement)
{
    std::vector<ShapePicture> shapes;
    std::map<std::map<int, int>, std::size_t> seen; // fingers by degree: which shape
    std::set<std::string> named;
    for (tune::BarIndex const bar : arrangement.tune.bars.indices())
        for (arrange::PositionIndex const index :
             notation::printedPositions(arrangement, bar)) {
            Voicing const& voicing = arrangement.positions[index].voicing;
            if (voicing.notes.empty()) continue;
            std::map<int, int> fingers;
            for (auto const& [string, note] : placedOnce(voicing))
                fingers.emplace(note.degree, note.finger);
            ShapePicture picture = anywhere(voicing);
            auto const [at, fresh] = seen.emplace(fingers, shapes.size());
            std::string const name = picture.title + std::to_string(at->second);
            if (fresh) {
                shapes.push_back(std::move(picture));
            } else if (!named.count(name)) { // the same hold, played in another order
                shapes[at->second].title += ", " + picture.title;
                shapes[at->second].caption.clear();
            }
            named.insert(name);
        }
    return shapes;
}

ShapePicture shapeOn(harp::Harp const& harp, harp::LeverTimeline const& levers,
                     Voicing const& voicing, music::Moment at)
{
    auto const placed = placedOnce(voicing);
    harp::StringIndex const first = std::max(harp::StringIndex(0), placed.begin()->first - 1);
    harp::StringIndex const last = std::min(harp.highest(), placed.rbegin()->first + 1);
    ShapePicture picture;
    picture.coloured = true;
    for (harp::StringIndex i = first; i <= last; ++i)
        picture.strings.push_back({harp.string(i).open.letter, harp.string(i).hasLever,
                                   harp::leverAt(levers, i, at)});
    for (auto const& [string, note] : placed)
        picture.dots.push_back({string - first, note.finger,
                                music::shown(nameOf(harp::pitchAt(harp, levers, string, at)))});
    return picture;
}

} // namespace sheet
