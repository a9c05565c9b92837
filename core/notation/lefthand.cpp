#include "core/notation/lefthand.h"

#include <algorithm>

namespace notation {

using arrange::ArrangedPosition;
using arrange::Arrangement;
using arrange::VoicedNote;
using music::Length;

namespace {

int passOf(ArrangedPosition const& position) { return position.position.played.front().pass; }

std::vector<arrange::PositionIndex> positionsOfBar(Arrangement const& arrangement,
                                                   tune::BarIndex bar)
{
    std::vector<arrange::PositionIndex> found;
    for (arrange::PositionIndex const i : arrangement.positions.indices())
        if (arrangement.positions[i].position.bar == bar) found.push_back(i);
    return found;
}

ArrangedPosition const& at(Arrangement const& arrangement, arrange::PositionIndex position)
{
    return arrangement.positions[position];
}

int firstPass(Arrangement const& arrangement,
              std::vector<arrange::PositionIndex> const& positions)
{
    int first = passOf(at(arrangement, positions.front()));
    for (arrange::PositionIndex const p : positions)
        first = std::min(first, passOf(at(arrangement, p)));
    return first;
}

// What the left hand plucks at one moment of a bar.
struct LeftStroke {
    Length at;
    Length held;
    std::vector<music::Pitch> pitches;
    std::vector<int> fingers;
    bool rolled = false;
    arrange::PositionIndex position = 0;
    bool rightHandHelps = false; // it takes one of the notes
};

void add(LeftStroke& pluck, VoicedNote const& note, int finger, music::Pitch pitch)
{
    auto const place =
        std::find_if(pluck.pitches.begin(), pluck.pitches.end(), [pitch](music::Pitch other) {
            return music::diatonicStep(other) > music::diatonicStep(pitch);
        });
    pluck.fingers.insert(pluck.fingers.begin() + (place - pluck.pitches.begin()), finger);
    pluck.pitches.insert(place, pitch);
    pluck.held = std::max(pluck.held, note.held);
}

arrange::GivenNote const* givenNote(Arrangement const& arrangement,
                                    arrange::PositionIndex position, int note)
{
    for (arrange::GivenNote const& given : arrangement.given)
        if (given.position == position && given.note == note) return &given;
    return nullptr;
}

std::vector<LeftStroke> plucks(Arrangement const& arrangement, tune::BarIndex bar)
{
    std::vector<LeftStroke> out;
    for (arrange::PositionIndex const index : printedPositions(arrangement, bar)) {
        ArrangedPosition const& arranged = at(arrangement, index);
        for (std::size_t n = 0; n < arranged.voicing.notes.size(); ++n) {
            VoicedNote const& note = arranged.voicing.notes[n];
            Length const place = arranged.position.at + note.at;
            if (out.empty() || out.back().at != place)
                out.push_back({place, {}, {}, {}, arranged.voicing.rolled, index, false});
            music::Moment const moment = arranged.position.played.front().at + note.at;
            auto const* const given = givenNote(arrangement, index, static_cast<int>(n));
            if (given) out.back().rightHandHelps = true;
            add(out.back(), note, given ? given->finger : note.finger,
                harp::pitchAt(arrangement.harp, arrangement.levers, note.string, moment));
        }
    }
    return out;
}

void addRests(StaffBar& bar, Length from, Length to, tune::Bar const& written)
{
    for (Piece const& piece : restPieces(written.upbeat + from, to - from, written.meter)) {
        StaffNote rest;
        rest.at = piece.at - written.upbeat;
        rest.value = piece.value;
        rest.length = lengthOf(piece.value);
        bar.notes.push_back(std::move(rest));
    }
}

void addNotes(StaffBar& bar, LeftStroke const& pluck, Length length, tune::Bar const& written)
{
    auto const pieces = ringingPieces(written.upbeat + pluck.at, length, written.meter);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        StaffNote note;
        note.at = pieces[i].at - written.upbeat;
        note.value = pieces[i].value;
        note.length = lengthOf(note.value);
        note.pitches = pluck.pitches;
        note.position = pluck.position;
        note.tied = i + 1 < pieces.size();
        if (i == 0) {
            note.fingers = pluck.fingers;
            if (pluck.rightHandHelps) note.marks.emplace_back(rightHandHelps);
            note.rolled = pluck.rolled && pluck.pitches.size() > 1;
            note.bracketed = !pluck.rolled && pluck.pitches.size() > 2;
        }
        bar.notes.push_back(std::move(note));
    }
}

// A full bar's rest is one sign in its middle; a pick-up's is spelt out.
StaffBar emptyBar(tune::Bar const& written)
{
    StaffBar bar;
    if (written.length < music::barLength(written.meter)) {
        addRests(bar, {}, written.length, written);
        return bar;
    }
    StaffNote rest;
    rest.length = written.length;
    rest.value = {0, 0};
    rest.fillsBar = true;
    bar.notes.push_back(std::move(rest));
    return bar;
}

} // namespace

std::vector<arrange::PositionIndex> printedPositions(Arrangement const& arrangement,
                                                     tune::BarIndex bar)
{
    std::vector<arrange::PositionIndex> positions = positionsOfBar(arrangement, bar);
    if (positions.empty()) return positions;
    int const first = firstPass(arrangement, positions);
    std::erase_if(positions, [&](arrange::PositionIndex p) {
        return passOf(at(arrangement, p)) != first;
    });
    std::stable_sort(positions.begin(), positions.end(),
                     [&](arrange::PositionIndex a, arrange::PositionIndex b) {
                         return at(arrangement, a).position.at < at(arrangement, b).position.at;
                     });
    return positions;
}

StaffBar leftBar(Arrangement const& arrangement, tune::BarIndex index)
{
    tune::Bar const& written = arrangement.tune.bars[index];
    std::vector<LeftStroke> const all = plucks(arrangement, index);
    if (all.empty()) return emptyBar(written);
    StaffBar bar;
    Length done;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all[i].at > done) addRests(bar, done, all[i].at, written);
        Length const next = i + 1 < all.size() ? all[i + 1].at : written.length;
        done = std::min(all[i].at + all[i].held, next);
        addNotes(bar, all[i], done - all[i].at, written);
    }
    if (done < written.length) addRests(bar, done, written.length, written);
    return bar;
}

} // namespace notation
