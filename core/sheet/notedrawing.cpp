#include "core/sheet/notedrawing.h"

#include "core/sheet/beamline.h"
#include "core/sheet/geometry.h"
#include "core/sheet/glyphs.h"
#include "core/sheet/noteletters.h"

#include <algorithm>
#include <cmath>

namespace sheet {

double signX(SetNote const& note, BarPlace const& place, StaffNoteIndex index,
             MusicFont const& font)
{
    if (!note.what.fillsBar) return place.x[index];
    return (place.left + place.right - boxOf(font, note.head).right) / 2;
}

namespace {

double stemThickness(MusicFont const& font) { return engravingOf(font, "stemThickness", 0.12); }

// The notehead at the stem's foot, and the one nearest to its end.
SetHead const& footHead(SetNote const& note)
{
    return note.stem == Stem::Up ? note.heads.front() : note.heads.back();
}
SetHead const& nearHead(SetNote const& note)
{
    return note.stem == Stem::Up ? note.heads.back() : note.heads.front();
}

} // namespace

double stemX(SetNote const& note, double x, MusicFont const& font)
{
    double const half = stemThickness(font) / 2;
    if (note.stem == Stem::Down)
        return x + anchorOf(font, note.head, "stemDownNW", {0, -0.17}).x + half;
    return x + anchorOf(font, note.head, "stemUpSE", {boxOf(font, note.head).right, 0.17}).x -
           half;
}

double loneStemEnd(SetNote const& note)
{
    int const step = nearHead(note).step;
    double const length = stemLengthFor(step, note.stem, beamCount(note.what.value));
    return yOfStep(step) + (note.stem == Stem::Up ? -length : length);
}

namespace {

constexpr double dotWidth = 0.4;

void drawStem(Pen& pen, SetNote const& note, double x, double endY)
{
    Point const anchor = note.stem == Stem::Up
                             ? anchorOf(pen.font(), note.head, "stemUpSE", {1.18, 0.17})
                             : anchorOf(pen.font(), note.head, "stemDownNW", {0, -0.17});
    double const at = stemX(note, x, pen.font());
    pen.line({at, yOfStep(footHead(note).step) - anchor.y}, {at, endY},
             stemThickness(pen.font()));
}

void drawLoneStem(Pen& pen, SetNote const& note, double x)
{
    double const end = loneStemEnd(note);
    drawStem(pen, note, x, end);
    if (beamCount(note.what.value) > 0)
        pen.glyph(flagFor(note.what.value, note.stem),
                  {stemX(note, x, pen.font()) - stemThickness(pen.font()) / 2, end});
}

void drawLedgerLines(Pen& pen, SetNote const& note, double x)
{
    double const reach = engravingOf(pen.font(), "legerLineExtension", 0.4);
    double const thickness = engravingOf(pen.font(), "legerLineThickness", 0.16);
    double const width = boxOf(pen.font(), note.head).right;
    for (SetHead const& head : note.heads) {
        int const lines = ledgerLines(head.step);
        for (int line = 1; line <= std::abs(lines); ++line) {
            double const y = yOfStep(lines > 0 ? 4 + 2 * line : -4 - 2 * line);
            pen.line({x + head.dx - reach, y}, {x + head.dx + width + reach, y}, thickness,
                     Ink::Music);
        }
    }
}

void drawAccidental(Pen& pen, SetHead const& head, double x)
{
    double const y = yOfStep(head.step);
    if (head.courtesy) {
        pen.glyph(glyph::accidentalParensLeft, {x, y});
        x += advanceOf(pen.font(), glyph::accidentalParensLeft);
    }
    pen.glyph(accidentalFor(*head.accidental), {x, y});
    if (head.courtesy)
        pen.glyph(glyph::accidentalParensRight,
                  {x + advanceOf(pen.font(), accidentalFor(*head.accidental)), y});
}

void drawHeads(Pen& pen, SetNote const& note, double x, Helps const& helps)
{
    for (SetHead const& head : note.heads) {
        drawHead(pen, note, head, {x + head.dx, yOfStep(head.step)}, helps);
        if (head.accidental) drawAccidental(pen, head, x + head.accidentalDx);
    }
    for (SetHead const& head : note.heads)
        for (int dot = 0; dot < note.what.value.dots; ++dot)
            pen.glyph(
                glyph::augmentationDot,
                {x + note.dotDx + dot * (dotWidth + geometry::dotGap), yOfStep(head.dotStep)});
}

void drawRest(Pen& pen, SetNote const& note, double x, Voice voice)
{
    if (note.what.hidden) return;
    // A semibreve rest hangs from the second line, all others lie about the middle line; above
    // another voice they move up.
    double const up = voice == Voice::Above ? 1.0 : 0.0;
    pen.glyph(note.head, {x, (note.what.value.halvings == 0 ? 1.0 : 2.0) - up});
    double const right = boxOf(pen.font(), note.head).right;
    for (int dot = 0; dot < note.what.value.dots; ++dot)
        pen.glyph(
            glyph::augmentationDot,
            {x + right + geometry::dotGap + dot * (dotWidth + geometry::dotGap), 1.5 - up});
}

// The wiggle runs a little beyond the outer noteheads.
void drawRoll(Pen& pen, SetNote const& note, double x)
{
    double const link = advanceOf(pen.font(), glyph::wiggleArpeggiatoUp);
    double const bottom = yOfStep(note.heads.front().step) + 0.5;
    double const top = yOfStep(note.heads.back().step) - 0.5;
    int const links = std::max(2, static_cast<int>(std::ceil((bottom - top) / link)));
    double const spare = links * link - (bottom - top);
    double const half = boxOf(pen.font(), glyph::wiggleArpeggiatoUp).top / 2;
    for (int i = 0; i < links; ++i)
        pen.uprightGlyph(glyph::wiggleArpeggiatoUp,
                         {x + note.rollDx + half, bottom + spare / 2 - i * link});
}

// A straight bracket: all together.
void drawTogether(Pen& pen, SetNote const& note, double x)
{
    double const thickness = geometry::bracketThickness;
    double const left = x + note.rollDx - geometry::bracketHook / 2 + thickness / 2;
    double const right = x + note.rollDx + geometry::bracketHook / 2;
    double const top = yOfStep(note.heads.back().step) - 0.5;
    double const bottom = yOfStep(note.heads.front().step) + 0.5;
    pen.line({left, top}, {left, bottom}, thickness);
    pen.line({left - thickness / 2, top}, {right, top}, thickness);
    pen.line({left - thickness / 2, bottom}, {right, bottom}, thickness);
}

// Grace notes: small, stems up; one alone is a quaver with a stroke, several share two beams.
void drawGraces(Pen& pen, SetNote const& note, double x, Clef clef)
{
    double const scale = geometry::graceScale;
    std::size_t const count = note.graces.size();
    std::vector<BeamStem> stems; // from the first
    std::vector<double> headYs;
    for (std::size_t i = 0; i < count; ++i) {
        SetGrace const& grace = note.graces[i];
        int const place = staffStep(grace.pitch, clef);
        double const left = x + grace.dx;
        double const y = yOfStep(place);
        if (grace.accidental)
            pen.glyph(accidentalFor(*grace.accidental), {x + grace.accidentalDx, y}, Ink::Music,
                      scale);
        pen.glyph(glyph::noteheadBlack, {left, y}, Ink::Music, scale);
        int const lines = ledgerLines(place);
        for (int line = 1; line <= std::abs(lines); ++line) {
            double const ledger = yOfStep(lines > 0 ? 4 + 2 * line : -4 - 2 * line);
            pen.line({left - 0.25, ledger}, {left + scale * 1.18 + 0.25, ledger},
                     engravingOf(pen.font(), "legerLineThickness", 0.16));
        }
        Point const anchor =
            anchorOf(pen.font(), glyph::noteheadBlack, "stemUpSE", {1.18, 0.17});
        stems.push_back({left + scale * anchor.x - 0.04, y, 2});
        headYs.push_back(y - scale * anchor.y);
    }
    double const thickness = 0.09;
    if (count == 1) {
        double const end = stems[0].headY - 3.3 * scale;
        pen.line({stems[0].x, headYs[0]}, {stems[0].x, end}, thickness);
        pen.glyph(glyph::flag8thUp, {stems[0].x - thickness / 2, end}, Ink::Music, scale);
        pen.line({stems[0].x - 0.5, end + 1.55}, {stems[0].x + 0.75, end + 0.5}, thickness);
        return;
    }
    double highest = stems[0].headY;
    for (BeamStem const& stem : stems) highest = std::min(highest, stem.headY);
    double const rise = std::clamp((stems.back().headY - stems.front().headY) / 2, -0.6, 0.6);
    double const width = stems.back().x - stems.front().x;
    double const first = highest - 3.0 * scale - std::max(0.0, rise);
    double const beam = 0.3;
    for (std::size_t i = 0; i < count; ++i) {
        double const end = first + rise * (stems[i].x - stems.front().x) / width;
        pen.line({stems[i].x, headYs[i]}, {stems[i].x, end}, thickness);
    }
    double const left = stems.front().x - thickness / 2;
    double const right = stems.back().x + thickness / 2;
    for (int level = 0; level < 2; ++level) {
        double const y = first + level * 0.47;
        pen.shape({{left, y}, {right, y + rise}, {right, y + rise + beam}, {left, y + beam}});
    }
}

// Draws the beams of one group and its stems; answers the beam's outer edge for what stands by.
DrawnBeam drawBeam(Pen& pen, SetBar const& bar, BarPlace const& place, SetBeam const& beam)
{
    BeamGroup const group = beam.group;
    MusicFont const& font = pen.font();
    double const thickness = engravingOf(font, "beamThickness", 0.5);
    double const spacing = engravingOf(font, "beamSpacing", 0.25);
    auto const noteAt = [&](StaffNoteIndex i) -> SetNote const& { return bar.notes[i]; };
    bool const up = noteAt(group.first).stem == Stem::Up;
    std::vector<BeamStem> stems; // from the first
    for (StaffNoteIndex i = group.first; i <= group.last; ++i)
        stems.push_back({stemX(noteAt(i), place.x[i], font), yOfStep(nearHead(noteAt(i)).step),
                         beamCount(noteAt(i).what.value)});
    BeamLine const edge = beamLine(stems, up, thickness, spacing);
    double const left = stems.front().x;
    double const right = stems.back().x;
    auto const edgeAt = [&](double x) {
        return edge.first + (edge.last - edge.first) * (x - left) / (right - left);
    };
    for (StaffNoteIndex i = group.first; i <= group.last; ++i)
        drawStem(pen, noteAt(i), place.x[i],
                 edgeAt(stems[static_cast<std::size_t>(i - group.first)].x));
    double const half = stemThickness(font) / 2;
    for (BeamRun const& run : beam.runs) {
        double from = stems[static_cast<std::size_t>(run.from - group.first)].x - half;
        double to = stems[static_cast<std::size_t>(run.to - group.first)].x + half;
        if (run.from == run.to && run.stubToLeft)
            from = to - geometry::beamStub;
        else if (run.from == run.to)
            to = from + geometry::beamStub;
        double const inward = (run.level - 1) * (thickness + spacing) * (up ? 1 : -1);
        double const a = edgeAt(from) + inward;
        double const b = edgeAt(to) + inward;
        double const depth = up ? thickness : -thickness;
        pen.shape({{from, a}, {to, b}, {to, b + depth}, {from, a + depth}});
    }
    return {group, up, {left, edge.first}, {right, edge.last}};
}

} // namespace

std::vector<DrawnBeam> drawNotes(Pen& pen, SetBar const& bar, BarPlace const& place,
                                 tune::BarIndex barIndex, Helps const& helps)
{
    for (StaffNoteIndex const i : bar.notes.indices()) {
        SetNote const& note = bar.notes[i];
        double const x = signX(note, place, i, pen.font());
        pen.belongTo(barIndex, note.what.position);
        if (note.what.isRest()) {
            drawRest(pen, note, x, bar.voice);
            continue;
        }
        drawLedgerLines(pen, note, x);
        drawHeads(pen, note, x, helps);
        if (note.what.rolled) drawRoll(pen, note, x);
        if (note.what.bracketed) drawTogether(pen, note, x);
        if (!note.graces.empty()) drawGraces(pen, note, x, bar.clef);
        if (hasStem(note.what.value) && !note.beam) drawLoneStem(pen, note, x);
    }
    std::vector<DrawnBeam> beams;
    for (SetBeam const& beam : bar.beams) {
        pen.belongTo(barIndex, bar.notes[beam.group.first].what.position);
        beams.push_back(drawBeam(pen, bar, place, beam));
    }
    return beams;
}

} // namespace sheet
