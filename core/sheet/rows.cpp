#include "core/sheet/rows.h"

#include "core/sheet/geometry.h"
#include "core/sheet/glyphs.h"
#include "core/sheet/words.h"

#include <algorithm>
#include <cmath>

namespace sheet {

namespace {

Box boxAt(PlacedLabel const& label, RowStyle const& style, double baseline)
{
    return wordsBox(label.label.text, {label.x, baseline}, style.height, style.face,
                    Anchor::Left);
}

void drawRow(Pen& pen, std::vector<PlacedLabel> const& labels, RowStyle const& style,
             double baseline)
{
    for (PlacedLabel const& label : labels) {
        if (label.label.text.empty()) continue;
        pen.belongTo(label.bar, label.label.position);
        pen.words(label.label.text, {label.x, baseline}, style.height, style.face, Anchor::Left,
                  style.ink);
    }
    pen.belongTo({});
}

} // namespace

void drawRowAbove(Pen& pen, std::vector<PlacedLabel> const& labels, RowStyle const& style,
                  double gap, double leastAboveStaff)
{
    double baseline = -leastAboveStaff;
    for (PlacedLabel const& label : labels) {
        Box const box = boxAt(label, style, 0);
        // Chord symbols have no letters that reach below the line but g and the stroke.
        double const roof = pen.reach().top(box.left - 0.2, box.right + 0.2, 0);
        baseline = std::min(baseline, roof - gap);
    }
    drawRow(pen, labels, style, baseline);
}

void drawRowBelow(Pen& pen, std::vector<PlacedLabel> const& labels, RowStyle const& style,
                  double gap, double leastBelowStaff)
{
    double const capitals = wordsRise * style.height;
    double baseline = 4 + leastBelowStaff + capitals;
    for (PlacedLabel const& label : labels) {
        Box const box = boxAt(label, style, 0);
        double const floor =
            pen.reach().bottom(box.left - 0.2, box.right + geometry::besideLabels, 4);
        baseline = std::max(baseline, floor + gap + capitals);
    }
    drawRow(pen, labels, style, baseline);
}

void drawAnnotations(Pen& pen, std::vector<PlacedLabel> const& annotations, double rightEnd)
{
    double const height = geometry::annotationHeight;
    for (PlacedLabel const& words : annotations) {
        double const width = widthOf(words.label.text, Face::Italic, height);
        double const x = std::max(0.0, std::min(words.x, rightEnd - width));
        double const roof = std::min(pen.reach().top(x - 0.3, x + width + 0.3, 0), -0.5);
        pen.belongTo(words.bar);
        pen.words(words.label.text, {x, roof - geometry::markGap - wordsFall * height}, height,
                  Face::Italic);
    }
    pen.belongTo({});
}

void drawStars(Pen& pen, std::vector<PlacedLabel> const& notes)
{
    double const height = geometry::starHeight;
    double const width = widthOf("*", Face::Bold, height);
    double drawnAt = -1e9;
    for (PlacedLabel const& note : notes) {
        if (std::abs(note.x - drawnAt) < width / 2) continue; // of one chord
        drawnAt = note.x;
        double const middle = note.x + boxOf(pen.font(), glyph::noteheadBlack).right / 2;
        double const left = middle - width / 2;
        double const roof = std::min(pen.reach().top(left, left + width, 0), -0.4);
        pen.belongTo(note.bar);
        pen.words("*", {left, roof - geometry::markGap - wordsFall * height}, height,
                  Face::Bold);
    }
    pen.belongTo({});
}

void drawNavigation(Pen& pen, std::vector<PlacedLabel> const& words)
{
    double const height = geometry::navigationHeight;
    for (PlacedLabel const& label : words) {
        double const width = widthOf(label.label.text, Face::Bold, height);
        double const left = label.barRight - width;
        double const roof = std::min(pen.reach().top(left - 0.3, label.barRight, 0), -0.5);
        pen.belongTo(label.bar);
        pen.words(label.label.text,
                  {label.barRight, roof - geometry::markGap - wordsFall * height}, height,
                  Face::Bold, Anchor::Right);
    }
    pen.belongTo({});
}

void drawLeverCues(Pen& pen, std::vector<PlacedLabel> const& cues)
{
    constexpr double padding = 0.3;
    double const height = geometry::leverHeight;
    double free = -1e9; // where the cue before ends
    for (PlacedLabel const& cue : cues) {
        double const half = widthOf(cue.label.text, Face::SansBold, height) / 2 + padding;
        double const last = cue.barRight - half - padding;
        double const first = cue.barLeft + half + padding;
        double const wished = std::max(std::min(cue.x, last), std::min(first, last));
        double const beside = std::max(wished, free + half + padding);
        // Beside the cue before where the bar has room, else under it.
        double const middle = beside <= last ? beside : wished;
        double const roof = pen.reach().bottom(middle - half - 0.2, middle + half + 0.2, 4);
        double const top = roof + geometry::leverGap;
        double const baseline = top + 0.72 * height + padding;
        double const bottom = baseline + padding + 0.15; // accidentals reach below the words
        pen.belongTo(cue.bar, cue.label.position);
        pen.words(cue.label.text, {middle, baseline}, height, Face::SansBold, Anchor::Centre,
                  Ink::Lever);
        pen.frame({middle - half, top, middle + half, bottom},
                  engravingOf(pen.font(), "textEnclosureThickness", 0.16), Ink::Lever);
        free = middle + half;
    }
    pen.belongTo({});
}

void drawEndings(Pen& pen, std::vector<EndingBracket> const& endings)
{
    if (endings.empty()) return;
    double const thickness = engravingOf(pen.font(), "repeatEndingLineThickness", 0.16);
    double roof = -1.5;
    for (EndingBracket const& ending : endings)
        roof = std::min(roof, pen.reach().top(ending.left, ending.right, 0));
    double const foot = roof - geometry::endingGap;
    double const top = foot - geometry::endingHook;
    for (EndingBracket const& ending : endings) {
        pen.belongTo(ending.bar);
        pen.line({ending.left, top}, {ending.right, top}, thickness);
        if (ending.opens) pen.line({ending.left, top}, {ending.left, foot}, thickness);
        if (ending.closes) pen.line({ending.right, top}, {ending.right, foot}, thickness);
        if (!ending.text.empty())
            pen.words(ending.text, {ending.left + 0.5, foot - 0.1}, geometry::endingHeight,
                      Face::Bold);
    }
    pen.belongTo({});
}

void drawPartLetter(Pen& pen, std::string const& letter, double x)
{
    constexpr double padding = 0.35;
    double const height = geometry::partHeight;
    double const width = widthOf(letter, Face::Bold, height);
    Box box{x, 0, x + std::max(width + 2 * padding, 1.9), 0};
    double const roof = std::min(pen.reach().top(box.left - 0.3, box.right + 1.0, 0), -1.0);
    box.bottom = roof - geometry::markGap;
    box.top = box.bottom - 0.7 * height - 2 * padding;
    pen.words(letter, {(box.left + box.right) / 2, box.bottom - padding}, height, Face::Bold,
              Anchor::Centre);
    pen.frame(box, engravingOf(pen.font(), "textEnclosureThickness", 0.16), Ink::Words);
}

} // namespace sheet
