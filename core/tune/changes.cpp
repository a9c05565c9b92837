#include "core/tune/changes.h"

#include "core/base/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

namespace tune {

namespace {

constexpr std::array ids{std::pair{Change::OctaveHigher, std::string_view("octave_higher")},
                         std::pair{Change::OctaveLower, std::string_view("octave_lower")},
                         std::pair{Change::LeftOut, std::string_view("left_out")},
                         std::pair{Change::AsKeySays, std::string_view("as_key_says")},
                         std::pair{Change::SemitoneHigher, std::string_view("semitone_higher")},
                         std::pair{Change::SemitoneLower, std::string_view("semitone_lower")},
                         std::pair{Change::HeldOver, std::string_view("held_over")}};

Note const* noteAt(Tune const& tune, NotePlace place)
{
    if (!tune.bars.holds(place.bar)) return nullptr;
    auto const& notes = tune.bars[place.bar].notes;
    return notes.holds(place.note) ? &notes[place.note] : nullptr;
}

std::vector<music::Pitch> const* pitchesAt(Tune const& tune, NotePlace place)
{
    Note const* const note = noteAt(tune, place);
    if (!note) return nullptr;
    auto const& pitches = place.grace ? note->graces : note->pitches;
    bool const there =
        place.ofChord >= 0 && static_cast<std::size_t>(place.ofChord) < pitches.size();
    return there ? &pitches : nullptr;
}

music::Pitch after(Change change, music::Pitch pitch, music::Key key)
{
    switch (change) {
    case Change::OctaveHigher: ++pitch.octave; break;
    case Change::OctaveLower: --pitch.octave; break;
    case Change::AsKeySays:
        pitch.alter = music::alterIn(music::signature(key), pitch.letter);
        break;
    case Change::SemitoneHigher: ++pitch.alter; break;
    case Change::SemitoneLower: --pitch.alter; break;
    case Change::LeftOut:
    case Change::HeldOver: break;
    }
    return pitch;
}

// Changes one pitch of a note; answers whether the note stays tied on from there.
void changePitch(Bar& bar, NotePlace place, Change change)
{
    Note& note = bar.notes[place.note];
    auto& pitches = place.grace ? note.graces : note.pitches;
    auto const at = pitches.begin() + place.ofChord;
    if (change == Change::LeftOut) {
        pitches.erase(at);
        if (note.pitches.empty()) {
            note.tied = false;
            note.graces.clear();
            note.marks.clear();
        }
        return;
    }
    *at = after(change, *at, bar.key);
    if (!place.grace)
        std::sort(pitches.begin(), pitches.end(), [](music::Pitch a, music::Pitch b) {
            return std::pair(midi(a), diatonicStep(a)) < std::pair(midi(b), diatonicStep(b));
        });
}

// A pitch that was moved onto another of its chord, however that is spelt, is plucked once.
void pluckOnce(Tune& tune, NotePlace place)
{
    auto& pitches = tune.bars[place.bar].notes[place.note].pitches;
    auto const again =
        std::ranges::unique(pitches, {}, [](music::Pitch pitch) { return music::midi(pitch); });
    pitches.erase(again.begin(), again.end());
}

// The note of the next sounding place, where a tie from `place` would arrive.
std::optional<NotePlace> tiedTo(Tune const& tune, NotePlace place)
{
    Note const& note = *noteAt(tune, place);
    if (place.grace || !note.tied) return std::nullopt;
    auto const pitch = pitchOf(tune, place);
    NotePlace next{place.bar, place.note + 1, 0, false};
    if (!noteAt(tune, next)) next = {place.bar + 1, 0, 0, false};
    Note const* const other = noteAt(tune, next);
    if (!other) return std::nullopt;
    auto const same = std::find(other->pitches.begin(), other->pitches.end(), *pitch);
    if (same == other->pitches.end()) return std::nullopt;
    next.ofChord = static_cast<int>(same - other->pitches.begin());
    return next;
}

// The note straight before a place in writing, if it has one pitch.
Note* soleNoteBefore(Tune& tune, NotePlace place)
{
    NotePlace before{place.bar, place.note - 1, 0, false};
    if (place.note == 0) {
        if (place.bar == 0) return nullptr;
        auto const& notes = tune.bars[place.bar - 1].notes;
        before = {place.bar - 1, notes.beyond() - 1, 0, false};
    }
    Note* const note = const_cast<Note*>(noteAt(tune, before));
    return note && note->pitches.size() == 1 ? note : nullptr;
}

// The note before sounds on through the notes at these places, which are tied together.
void holdOver(Tune& tune, std::vector<NotePlace> const& together)
{
    Note* const before = soleNoteBefore(tune, together.front());
    if (!before || together.front().grace) return;
    before->tied = true;
    for (NotePlace const& place : together) {
        Note& note = tune.bars[place.bar].notes[place.note];
        note.pitches = before->pitches;
        note.graces.clear();
        note.marks.clear();
    }
}

} // namespace

std::optional<music::Pitch> pitchOf(Tune const& tune, NotePlace place)
{
    auto const* const pitches = pitchesAt(tune, place);
    if (!pitches) return std::nullopt;
    return (*pitches)[static_cast<std::size_t>(place.ofChord)];
}

Tune changed(Tune tune, std::vector<NoteChange> const& changes)
{
    std::vector<NotePlace> moved;
    for (NoteChange const& change : changes) {
        if (!pitchOf(tune, change.place)) continue;
        std::vector<NotePlace> together{change.place};
        while (auto const next = tiedTo(tune, together.back())) together.push_back(*next);
        if (change.change == Change::HeldOver) {
            holdOver(tune, together);
            continue;
        }
        for (NotePlace const& place : together)
            changePitch(tune.bars[place.bar], place, change.change);
        moved.insert(moved.end(), together.begin(), together.end());
    }
    // Last, because the places of the changes count the pitches that the tune had.
    for (NotePlace const& place : moved) pluckOnce(tune, place);
    return tune;
}

std::string noteName(Tune const& tune, NotePlace place)
{
    auto const pitch = pitchOf(tune, place);
    std::string const name = pitch ? shown(*pitch) : base::said("remedy|note");
    std::string const bar = barName(tune, place.bar);
    return place.grace ? base::say("the grace note {} in {}", name, bar)
                       : base::say("the {} in {}", name, bar);
}

std::string changeSentence(Tune const& before, NoteChange const& change)
{
    auto const pitch = pitchOf(before, change.place);
    if (!pitch) return {};
    std::string name = noteName(before, change.place);
    name.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(name.front())));
    switch (change.change) {
    case Change::OctaveHigher:
        return base::say("{} is played an octave higher.", name);
    case Change::OctaveLower:
        return base::say("{} is played an octave lower.", name);
    case Change::LeftOut:
        return base::say("{} is left out.", name);
    case Change::HeldOver:
        return base::say("{} gives way: the note before rings on through it.", name);
    case Change::SemitoneHigher:
    case Change::SemitoneLower:
        return base::say("{} is played as {}, the other pitch of its string.", name,
                         shown(after(change.change, *pitch, {})));
    case Change::AsKeySays: break;
    }
    auto const& bar = before.bars[change.place.bar];
    return base::say("{} is played as {}, without its accidental.", name,
                     shown(after(Change::AsKeySays, *pitch, bar.key)));
}

std::string_view changeId(Change change)
{
    auto const row = std::find_if(ids.begin(), ids.end(),
                                  [change](auto const& r) { return r.first == change; });
    return row->second;
}

std::optional<Change> changeFrom(std::string_view id)
{
    for (auto const& [change, name] : ids)
        if (name == id) return change;
    return std::nullopt;
}

} // namespace tune
