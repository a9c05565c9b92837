#include "core/sheet/notesetting.h"

#include "core/sheet/geometry.h"
#include "core/sheet/glyphs.h"
#include "core/sheet/pen.h"

#include <algorithm>

namespace sheet {

char32_t noteheadFor(NoteValue value)
{
    if (value.halvings < 0) return glyph::noteheadDoubleWhole;
    if (value.halvings == 0) return glyph::noteheadWhole;
    return value.halvings == 1 ? glyph::noteheadHalf : glyph::noteheadBlack;
}

char32_t restFor(NoteValue value)
{
    return static_cast<char32_t>(static_cast<int>(glyph::restWhole) + value.halvings);
}

char32_t flagFor(NoteValue value, Stem stem)
{
    // Up and down flags alternate, two code points a value.
    char32_t const first = stem == Stem::Up ? glyph::flag8thUp : glyph::flag8thDown;
    return first + static_cast<char32_t>(2 * (beamCount(value) - 1));
}

char32_t accidentalFor(int alter)
{
    switch (alter) {
    case -2:
        return glyph::accidentalDoubleFlat;
    case -1:
        return glyph::accidentalFlat;
    case 1:
        return glyph::accidentalSharp;
    case 2:
        return glyph::accidentalDoubleSharp;
    default:
        return glyph::accidentalNatural;
    }
}

namespace {

std::vector<int> stepsOf(std::vector<SetHead> const& heads)
{
    std::vector<int> steps;
    for (SetHead const& head : heads) steps.push_back(head.step);
    return steps;
}

// Noteheads a second apart stand on both sides of the stem: the one nearer the stem's foot
// keeps its place [gould11].
void displaceSeconds(SetNote& note, MusicFont const& font)
{
    double const width =
        boxOf(font, note.head).right -
        (hasStem(note.what.value) ? engravingOf(font, "stemThickness", 0.12) : 0);
    auto const displace = [&](auto const& first, auto const& last, double dx) {
        for (auto head = first; head != last; ++head)
            if (head != first && std::abs(head->step - (head - 1)->step) <= 1 &&
                (head - 1)->dx == 0)
                head->dx = dx;
    };
    if (note.stem == Stem::Up)
        displace(note.heads.begin(), note.heads.end(), width);
    else
        displace(note.heads.rbegin(), note.heads.rend(), -width);
}

// Dots stand in spaces: a note on a line takes the space above; in a crowded chord the space
// below that is still free.
void placeDots(std::vector<SetHead>& heads)
{
    std::vector<int> taken;
    for (auto head = heads.rbegin(); head != heads.rend(); ++head) {
        int step = onLine(head->step) ? head->step + 1 : head->step;
        while (std::find(taken.begin(), taken.end(), step) != taken.end()) step -= 2;
        head->dotStep = step;
        taken.push_back(step);
    }
}

double bracketAdvance(MusicFont const& font)
{
    return advanceOf(font, glyph::accidentalParensLeft);
}

Box accidentalBox(SetHead const& head, MusicFont const& font)
{
    GlyphBox const box = boxOf(font, accidentalFor(*head.accidental));
    double const y = yOfStep(head.step);
    double const brackets = head.courtesy ? 2 * bracketAdvance(font) : 0;
    return {0, y - std::max(box.top, head.courtesy ? 1.0 : 0.0),
            brackets + advanceOf(font, accidentalFor(*head.accidental)),
            y - std::min(box.bottom, head.courtesy ? -1.0 : 0.0)};
}

// Accidentals of a chord stand in as few columns as keep them apart; the outermost notes come
// first, highest before lowest [gould11].
double placeAccidentals(std::vector<SetHead>& heads, double headsLeft, MusicFont const& font)
{
    std::vector<SetHead*> order;
    std::size_t low = 0;
    std::size_t high = heads.size();
    while (low < high) {
        order.push_back(&heads[--high]);
        if (low < high) order.push_back(&heads[low++]);
    }
    std::erase_if(order, [](SetHead* head) { return !head->accidental; });

    std::vector<Box> placedBoxes;
    double leftmost = headsLeft;
    for (SetHead* head : order) {
        Box const box = accidentalBox(*head, font);
        double right = headsLeft - geometry::accidentalGap;
        for (bool moved = true; moved;) {
            moved = false;
            for (Box const& other : placedBoxes)
                if (box.top < other.bottom && box.bottom > other.top &&
                    right > other.left - 0.1 && right - box.right < other.right) {
                    right = other.left - 0.1;
                    moved = true;
                }
        }
        head->accidentalDx = right - box.right;
        placedBoxes.push_back(sheet::moved(box, head->accidentalDx, 0));
        leftmost = std::min(leftmost, head->accidentalDx);
    }
    return leftmost;
}

// Grace notes from right to left, each with its accidental; answers where they begin.
double placeGraces(std::vector<SetGrace>& graces, double left, MusicFont const& font)
{
    if (graces.empty()) return left;
    // A grace note alone has a flag to its right.
    double const flag =
        graces.size() == 1 ? geometry::graceScale * boxOf(font, glyph::flag8thUp).right : 0;
    left -= std::max(geometry::beforeGraced, flag) - geometry::betweenGraces;
    for (auto grace = graces.rbegin(); grace != graces.rend(); ++grace) {
        left -= geometry::betweenGraces +
                geometry::graceScale * boxOf(font, glyph::noteheadBlack).right;
        grace->dx = left;
        if (!grace->accidental) continue;
        left -= geometry::graceScale *
                (advanceOf(font, accidentalFor(*grace->accidental)) + geometry::accidentalGap);
        grace->accidentalDx = left;
    }
    return left - geometry::betweenGraces / 2;
}

double flagReach(SetNote const& note, MusicFont const& font)
{
    return boxOf(font, flagFor(note.what.value, note.stem)).right;
}

constexpr double roomForTie = 0.4; // beside a flag, so that a tie can begin behind it

// Reach of the sign to both sides of its place.
void measure(SetNote& note, MusicFont const& font)
{
    GlyphBox const box = boxOf(font, note.head);
    double left = 0;
    double right = box.right;
    for (SetHead const& head : note.heads) {
        left = std::min(left, head.dx);
        right = std::max(right, head.dx + box.right);
    }
    double const headsRight = right;
    bool const ledger = std::any_of(note.heads.begin(), note.heads.end(),
                                    [](SetHead const& h) { return ledgerLines(h.step) != 0; });
    if (ledger) right += engravingOf(font, "legerLineExtension", 0.4) / 2;
    bool const flagged = !note.what.isRest() && !note.beam && beamCount(note.what.value) > 0;
    // Two flags and more hang down beside the dots; so does one beside a dot above its line.
    bool const dotAbove = std::any_of(note.heads.begin(), note.heads.end(),
                                      [](SetHead const& h) { return h.dotStep > h.step; });
    bool const flagsBeside =
        flagged && note.stem == Stem::Up && (beamCount(note.what.value) > 1 || dotAbove);
    note.dotDx = geometry::dotGap +
                 (flagsBeside ? std::max(headsRight, box.right + flagReach(note, font) - 0.1)
                              : headsRight);
    if (note.what.value.dots > 0)
        right = note.dotDx - geometry::dotGap + note.what.value.dots * (geometry::dotGap + 0.4);
    if (flagged && note.stem == Stem::Up)
        right = std::max(right, box.right + boxOf(font, glyph::flag8thUp).right +
                                    (note.what.tied ? roomForTie : 0));
    auto const& marks = note.what.marks;
    if (std::find(marks.begin(), marks.end(), letRing) != marks.end())
        right = headsRight + ringLength + 0.2;
    left = placeAccidentals(note.heads, left, font);
    if (ledger && left == 0) left = -engravingOf(font, "legerLineExtension", 0.4) / 2;
    if (note.what.rolled || note.what.bracketed) {
        double const half = note.what.rolled ? boxOf(font, glyph::wiggleArpeggiatoUp).top / 2
                                             : geometry::bracketHook / 2;
        note.rollDx = left - geometry::rollGap - half;
        left = note.rollDx - half;
    }
    left = placeGraces(note.graces, left, font);
    note.left = -left;
    note.right = right;
}

SetNote headsSet(StaffNote const& what, Clef clef)
{
    SetNote note;
    note.what = what;
    auto const& marks = what.marks;
    if (what.pitches.size() > 1 &&
        std::find(marks.begin(), marks.end(), "arpeggio") != marks.end())
        note.what.rolled = true;
    note.head = what.isRest() ? restFor(what.value) : noteheadFor(what.value);
    for (music::Pitch grace : what.graces) note.graces.push_back({grace, 0, std::nullopt, 0});
    for (music::Pitch pitch : what.pitches) {
        SetHead head;
        head.pitch = pitch;
        head.step = staffStep(pitch, clef);
        note.heads.push_back(head);
    }
    return note;
}

void chooseStems(SetBar& bar, Voice voice)
{
    if (voice != Voice::Alone) {
        Stem const stem = voice == Voice::Above ? Stem::Up : Stem::Down;
        for (SetNote& note : bar.notes) note.stem = stem;
        for (std::size_t b = 0; b < bar.beams.size(); ++b)
            for (StaffNoteIndex i = bar.beams[b].group.first; i <= bar.beams[b].group.last; ++i)
                bar.notes[i].beam = static_cast<int>(b);
        return;
    }
    for (SetNote& note : bar.notes)
        if (!note.heads.empty()) note.stem = stemDirection(stepsOf(note.heads));
    for (std::size_t b = 0; b < bar.beams.size(); ++b) {
        auto const first = bar.notes.from(bar.beams[b].group.first);
        auto const last = bar.notes.from(bar.beams[b].group.last + 1);
        std::vector<int> steps;
        for (auto note = first; note != last; ++note)
            for (SetHead const& head : note->heads) steps.push_back(head.step);
        Stem const stem = stemDirection(steps);
        for (auto note = first; note != last; ++note) {
            note->stem = stem;
            note->beam = static_cast<int>(b);
        }
    }
}

// Accidentals where they are needed, and in brackets where the bar before, or another octave,
// leaves a doubt [gould11].
void markAccidentals(SetBar& bar, int signature, BarBefore const& before)
{
    notation::AccidentalMemory memory(signature);
    std::vector<music::Pitch> carried = before.tied;
    std::map<int, int> doubts = before.altered;
    for (SetNote& note : bar.notes) {
        for (SetGrace& grace : note.graces)
            if (memory.needs(grace.pitch)) grace.accidental = grace.pitch.alter;
        std::vector<music::Pitch> next;
        for (SetHead& head : note.heads) {
            bool const tiedIn =
                std::find(carried.begin(), carried.end(), head.pitch) != carried.end();
            auto const doubt = doubts.find(music::diatonicStep(head.pitch));
            bool const doubted = doubt != doubts.end() && doubt->second != head.pitch.alter;
            if (doubt != doubts.end()) doubts.erase(doubt);
            if (!tiedIn && memory.needs(head.pitch)) {
                head.accidental = head.pitch.alter;
            } else if (!tiedIn && (doubted || memory.invitesDoubt(head.pitch))) {
                head.accidental = head.pitch.alter;
                head.courtesy = true;
            }
            if (tiedIn && note.what.tied) next.push_back(head.pitch);
        }
        carried = next;
    }
    bar.altered = memory.altered();
}

} // namespace

SetBar setBar(StaffBar const& bar, tune::Bar const& written, Clef clef, BarBefore const& before,
              MusicFont const& font, Voice voice)
{
    SetBar out;
    out.voice = voice;
    out.clef = clef;
    for (BeamGroup group : beamGroups(bar, written.meter, written.upbeat))
        out.beams.push_back({group, beamRuns(bar, group, written.meter, written.upbeat)});
    out.tuplets = bar.tuplets;
    for (StaffNote const& note : bar.notes) out.notes.push_back(headsSet(note, clef));
    chooseStems(out, voice);
    markAccidentals(out, music::signature(written.key), before);
    for (SetNote& note : out.notes) {
        displaceSeconds(note, font);
        placeDots(note.heads);
        measure(note, font);
    }
    return out;
}

} // namespace sheet
