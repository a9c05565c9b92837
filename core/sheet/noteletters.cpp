#include "core/sheet/noteletters.h"

#include "core/sheet/glyphs.h"
#include "core/sheet/words.h"

namespace sheet {

namespace {

constexpr double letterHeight = 0.98; // em, in spaces: capitals well inside a head
constexpr double openLetterHeight = 0.82;

bool isFilled(char32_t head) { return head == glyph::noteheadBlack; }

} // namespace

Ink inkOf(music::Letter letter, Helps const& helps)
{
    if (!helps.coloured) return Ink::Music;
    if (letter == music::Letter::C) return Ink::RedString;
    if (letter == music::Letter::F) return Ink::BlueString;
    return Ink::Music;
}

bool bearsLetter(music::Letter letter, Helps const& helps)
{
    return helps.noteNames || inkOf(letter, helps) != Ink::Music;
}

void drawHead(Pen& pen, SetNote const& note, SetHead const& head, Point at, Helps const& helps)
{
    Ink const ink = inkOf(head.pitch.letter, helps);
    if (!bearsLetter(head.pitch.letter, helps)) {
        pen.glyph(note.head, at, ink);
        return;
    }
    // White under an open head, so that no line of the staff runs through its letter.
    GlyphBox const box = boxOf(pen.font(), note.head);
    bool const filled = isFilled(note.head);
    if (!filled) {
        GlyphBox const black = boxOf(pen.font(), glyph::noteheadBlack);
        pen.glyph(glyph::noteheadBlack, {at.x + (box.right - black.right) / 2, at.y},
                  Ink::Paper);
    }
    pen.glyph(note.head, at, ink);
    double const height = filled ? letterHeight : openLetterHeight;
    pen.words(music::plain(music::PitchName{head.pitch.letter, 0}),
              {at.x + box.right / 2, at.y + 0.36 * height}, height, Face::SansBold,
              Anchor::Centre, filled ? Ink::Paper : ink);
}

} // namespace sheet
