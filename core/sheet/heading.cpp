#include "core/sheet/heading.h"

#include "core/base/words.h"
#include "core/notation/durations.h"
#include "core/sheet/glyphs.h"
#include "core/sheet/words.h"
#include "core/tune/kindwords.h"

#include <algorithm>
#include <cmath>

namespace sheet {

namespace {

// Heights of the em in spaces.
constexpr double titleHeight = 4.2;
constexpr double longTitleHeight = 3.2; // of one that is wrapped
constexpr double besideTitle = 1.5;     // white beside what stands in a corner
constexpr double titleShare = 0.88; // of the width, at most
constexpr double subtitleHeight = 2.0;
constexpr double lineHeight = 1.9;
constexpr double smallHeight = 1.55;
constexpr double footHeight = 1.3;
constexpr double noteHeight = 1.6;
constexpr double betweenNotes = 0.5;
constexpr double aroundPicture = 1.6; // white beside the picture of the levers

// A long title is set smaller rather than cut.
double fitted(std::string const& text, Face face, double height, double width)
{
    double const needed = widthOf(text, face, height);
    return needed <= width ? height : height * width / needed;
}

char32_t metronomeNote(NoteValue value)
{
    switch (value.halvings) {
    case 0:
        return glyph::metNoteWhole;
    case 1:
        return glyph::metNoteHalfUp;
    case 3:
        return glyph::metNote8thUp;
    case 4:
        return glyph::metNote16thUp;
    default:
        return glyph::metNoteQuarterUp;
    }
}

std::string beatsText(double beats)
{
    double const rounded = std::round(beats * 10) / 10;
    std::string text = std::to_string(static_cast<int>(rounded));
    int const tenth = static_cast<int>(std::lround(rounded * 10)) % 10;
    return tenth == 0 ? text : text + '.' + std::to_string(tenth);
}

std::string capitalised(std::string text)
{
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

// "Jig" and the metronome mark.
void drawTempo(Pen& pen, tune::Tune const& tune, double baseline)
{
    double x = 0;
    std::string const rhythm = capitalised(tune::rhythmShown(tune.rhythm));
    if (!rhythm.empty()) {
        pen.words(rhythm, {x, baseline}, lineHeight, Face::Bold);
        x += widthOf(rhythm, Face::Bold, lineHeight) + 0.9;
    }
    constexpr double scale = 0.62;
    tune::Tempo const tempo = tune::tempoOf(tune);
    NoteValue const beat = notation::nearestValue(tempo.beat);
    char32_t const note = metronomeNote(beat);
    pen.glyph(note, {x, baseline - 0.3}, Ink::Words, scale);
    x += scale * advanceOf(pen.font(), note) + 0.1;
    for (int dot = 0; dot < beat.dots; ++dot) {
        pen.glyph(glyph::metAugmentationDot, {x, baseline - 0.3}, Ink::Words, scale);
        x += scale * advanceOf(pen.font(), glyph::metAugmentationDot) + 0.1;
    }
    pen.words(" = " + beatsText(tempo.beatsPerMinute), {x, baseline}, lineHeight, Face::Roman);
}

std::string originLine(tune::Tune const& tune)
{
    if (tune.composer.empty() || tune.origin.empty()) return tune.composer + tune.origin;
    return tune.composer + " (" + tune.origin + ")";
}

// Answers the last line's baseline.
double drawSetup(Pen& pen, std::string const& setup, double baseline, double room)
{
    if (setup.empty()) return baseline;
    constexpr double padding = 0.45;
    double const top = baseline - 0.72 * smallHeight - padding;
    double width = 0;
    double y = baseline - 1.3 * smallHeight;
    for (std::string const& line : wrapped(setup, Face::SansBold, smallHeight, room)) {
        y += 1.3 * smallHeight;
        pen.words(line, {padding, y}, smallHeight, Face::SansBold, Anchor::Left, Ink::Lever);
        width = std::max(width, widthOf(line, Face::SansBold, smallHeight));
    }
    // Accidentals reach below the line of the words.
    pen.frame({0, top, width + 2 * padding, y + padding + 0.15}, 0.13, Ink::Lever);
    return y;
}

// Of a tune of a set: what is flipped before it in the box, and all that is set then beside it.
double drawChange(Pen& pen, Score const& score, double baseline, double room)
{
    double y = drawSetup(pen, score.change, baseline, room);
    if (score.setupLine.empty()) return y;
    y += 2.2;
    pen.words(score.setupLine, {0, y}, smallHeight, Face::Sans, Anchor::Left, Ink::Quiet);
    return y;
}

constexpr double probe = 0.25; // spaces

bool isEmpty(Pen const& pen, double left, double right)
{
    constexpr double nothing = -1e6;
    return pen.reach().bottom(left, right, nothing) == nothing;
}

// The picture of the levers stands between what is left and right of it, in the middle of the
// page where it can; below them where they leave no room. Answers how far down all reaches.
double drawLevers(Pen& pen, LeverPicture const& levers, Pen const& left, Pen const& right,
                  Box room)
{
    Box const size = leverPictureBox(levers);
    double from = room.right;
    while (from > room.left && isEmpty(left, from - probe, from)) from -= probe;
    double to = room.left;
    while (to < room.right && isEmpty(right, to, to + probe)) to += probe;
    double const centred = (room.right - size.right) / 2;
    double const least = from + aroundPicture;
    double const most = to - aroundPicture - size.right;
    if (least <= most) {
        double const foot = std::max(room.bottom, room.top + size.bottom);
        drawLeverPicture(pen, levers, {std::clamp(centred, least, most), foot - size.bottom});
        return foot;
    }
    double const top = room.bottom + 0.8;
    drawLeverPicture(pen, levers, {centred, top});
    return top + size.bottom;
}

// What the player is told in words: a paragraph a note, the arranger's own.
double drawNotes(Pen& pen, std::vector<std::string> const& notes, double width)
{
    std::vector<std::string> lines;
    double y = 0;
    for (std::string const& note : notes) {
        for (std::string const& line : wrapped(note, Face::Roman, noteHeight, width)) {
            y += 1.25 * noteHeight;
            pen.words(line, {0, y}, fitted(line, Face::Roman, noteHeight, width), Face::Roman);
        }
        y += betweenNotes;
    }
    return y;
}

// What comes next in a set, in a box.
double drawNext(Pen& pen, std::string const& next, double width)
{
    if (next.empty()) return 0;
    constexpr double padding = 0.45;
    Pen box(pen.font());
    double y = 0.72 * noteHeight + padding - 1.3 * noteHeight;
    double widest = 0;
    for (std::string const& line : wrapped(next, Face::SansBold, noteHeight, 0.8 * width)) {
        y += 1.3 * noteHeight;
        double const needed = widthOf(line, Face::SansBold, noteHeight);
        box.words(line, {width - padding, y}, noteHeight, Face::SansBold, Anchor::Right,
                  Ink::Lever);
        widest = std::max(widest, needed);
    }
    box.frame({width - widest - 2 * padding, 0, width, y + padding}, 0.13, Ink::Lever);
    pen.take(box, 0);
    return y + padding + betweenNotes;
}

} // namespace

namespace {

// A long title is wrapped, in smaller letters; it leaves the number of the page room in both
// corners, that of a tune of a set its place in the set. Answers the last line's baseline.
double drawTitle(Pen& pen, Score const& score, double width)
{
    std::string const& title = score.tune.title;
    std::string const beside = score.place.empty() ? base::say("{} of {}", 2, 2) : score.place;
    double const corner = widthOf(beside, Face::Italic, smallHeight) + besideTitle;
    double const room = std::min(titleShare * width, width - 2 * corner);
    double y = 0.72 * titleHeight;
    if (widthOf(title, Face::Bold, longTitleHeight) <= room) {
        pen.words(title, {width / 2, y}, fitted(title, Face::Bold, titleHeight, room),
                  Face::Bold, Anchor::Centre);
        return y;
    }
    y = 0.72 * longTitleHeight;
    for (std::string const& line : wrapped(title, Face::Bold, longTitleHeight, room)) {
        pen.words(line, {width / 2, y}, fitted(line, Face::Bold, longTitleHeight, room),
                  Face::Bold, Anchor::Centre);
        y += 1.15 * longTitleHeight;
    }
    return y - 1.15 * longTitleHeight;
}

} // namespace

double drawHeading(Pen& pen, Score const& score, double width)
{
    tune::Tune const& tune = score.tune;
    double y = drawTitle(pen, score, width);
    if (!tune.otherTitles.empty()) {
        std::string const& other = tune.otherTitles.front();
        y += 1.35 * subtitleHeight;
        pen.words(other, {width / 2, y}, fitted(other, Face::Italic, subtitleHeight, width),
                  Face::Italic, Anchor::Centre);
    }
    y += 3.0;
    Pen left(pen.font());
    Pen right(pen.font());
    double const top = y - 1.2;
    drawTempo(left, tune, y);
    right.words(originLine(tune), {width, y}, lineHeight, Face::Italic, Anchor::Right);
    if (!tune.arranger.empty()) {
        y += 1.25 * lineHeight;
        right.words(base::say("arr. {}", tune.arranger), {width, y}, lineHeight, Face::Italic,
                    Anchor::Right);
    }
    if (!score.setupLine.empty() || !score.harpLine.empty() || !score.change.empty()) {
        y += 2.7;
        constexpr double changeShare = 0.45; // of the width
        double const from = y;
        if (score.change.empty())
            drawSetup(left, score.setupLine, y, width);
        else
            y = drawChange(left, score, y, changeShare * width);
        right.words(score.harpLine, {width, from}, smallHeight, Face::Sans, Anchor::Right,
                    Ink::Quiet);
    }
    y += 0.6;
    if (score.levers) y = drawLevers(pen, *score.levers, left, right, {0, top, width, y});
    pen.take(left, 0);
    pen.take(right, 0);
    return y;
}

double drawRunningHead(Pen& pen, Score const& score, std::string const& page, double width)
{
    double const y = 0.72 * smallHeight;
    // A set writes the number there itself.
    std::string const number = page.empty() ? base::say("{} of {}", 22, 22) : page;
    double const room = width - widthOf(number, Face::Roman, smallHeight) - besideTitle;
    pen.words(score.tune.title, {0, y},
              fitted(score.tune.title, Face::Italic, smallHeight, room), Face::Italic,
              Anchor::Left, Ink::Quiet);
    pen.words(page, {width, y}, smallHeight, Face::Roman, Anchor::Right,
              Ink::Quiet);
    return y + 0.4;
}

double drawFoot(Pen& pen, Score const& score, double width, double shapesScale)
{
    Pen foot(pen.font());
    double y = drawNext(foot, score.next, width);
    Pen own(pen.font());
    double const notesHeight = drawNotes(own, score.notes, width);
    foot.take(own, y);
    y += notesHeight;
    if (!score.shapes.empty() && shapesScale > 0) {
        Pen box(pen.font());
        double const height = drawShapeBox(
            box, score.shapes, base::said("Patterns in this arrangement"), width, shapesScale);
        foot.take(box, y + 0.4);
        y += height + 0.8;
    }
    auto const line = [&](std::string const& text, Ink ink) {
        if (text.empty()) return;
        y += 1.35 * footHeight;
        foot.words(text, {width / 2, y}, fitted(text, Face::Italic, footHeight, width),
                   Face::Italic, Anchor::Centre, ink);
    };
    for (std::string const& text : score.footLines) line(text, Ink::Quiet);
    line(score.caution, Ink::Caution);
    if (!score.tune.source.empty())
        line(base::say("Source: {}", score.tune.source), Ink::Quiet);
    line(score.tune.copyright, Ink::Words);
    pen.take(foot, -y);
    return y;
}

} // namespace sheet
