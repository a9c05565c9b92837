#include "core/sheet/attachments.h"

#include "core/base/words.h"
#include "core/notation/words.h"
#include "core/sheet/geometry.h"
#include "core/sheet/glyphs.h"
#include "core/sheet/words.h"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

namespace sheet {

namespace {

std::u32string tupletDigits(int number)
{
    std::u32string out;
    for (char digit : std::to_string(number))
        out += glyph::tuplet0 + static_cast<char32_t>(digit - '0');
    return out;
}

constexpr double tupletScale = 0.85;
constexpr double fingerRoom = 0.45; // to both sides: keeps clear of the end of a beam

double rowWidth(std::u32string const& glyphs, double scale, MusicFont const& font)
{
    double width = 0;
    for (char32_t code : glyphs) width += scale * advanceOf(font, code);
    return width;
}

void drawCentredRow(Pen& pen, std::u32string const& glyphs, Point middle, double scale, Ink ink)
{
    double x = middle.x - rowWidth(glyphs, scale, pen.font()) / 2;
    for (char32_t code : glyphs) {
        pen.glyph(code, {x, middle.y}, ink, scale);
        x += scale * advanceOf(pen.font(), code);
    }
}

double headRight(SetNote const& note, MusicFont const& font)
{
    return boxOf(font, note.head).right;
}

void drawTupletBracket(Pen& pen, std::u32string const& number, double left, double right,
                       bool above)
{
    double const thickness = engravingOf(pen.font(), "tupletBracketThickness", 0.16);
    double const height = tupletScale * boxOf(pen.font(), glyph::tuplet0).top;
    double const hook = above ? 0.7 : -0.7;
    double const y =
        above ? std::min(pen.reach().top(left, right, 0) - geometry::markGap - hook,
                         -0.5 - height / 2)
              : std::max(pen.reach().bottom(left, right, 4) + geometry::markGap - hook,
                         4.5 + height / 2);
    double const gap = rowWidth(number, tupletScale, pen.font()) / 2 + 0.3;
    double const middle = (left + right) / 2;
    pen.line({left, y + hook}, {left, y}, thickness);
    pen.line({right, y + hook}, {right, y}, thickness);
    if (middle - gap > left) pen.line({left, y}, {middle - gap, y}, thickness);
    if (middle + gap < right) pen.line({middle + gap, y}, {right, y}, thickness);
    drawCentredRow(pen, number, {middle, y + height / 2}, tupletScale, Ink::Music);
}

// Where a mark of ABC 2.1, section 4.14, stands and which SMuFL sign shows it.
enum class MarkPlace { AtHead, Above, Outside }; // Outside: beyond the fingers
struct MarkSign {
    std::string_view name;
    MarkPlace place;
    char32_t above;
    char32_t below; // at a head under which it stands
};
constexpr std::array markSigns{
    MarkSign{"staccato", MarkPlace::AtHead, glyph::articStaccatoAbove,
             glyph::articStaccatoBelow},
    MarkSign{"tenuto", MarkPlace::AtHead, glyph::articTenutoAbove, glyph::articTenutoBelow},
    MarkSign{"accent", MarkPlace::AtHead, glyph::articAccentAbove, glyph::articAccentBelow},
    MarkSign{"emphasis", MarkPlace::AtHead, glyph::articAccentAbove, glyph::articAccentBelow},
    MarkSign{">", MarkPlace::AtHead, glyph::articAccentAbove, glyph::articAccentBelow},
    MarkSign{"wedge", MarkPlace::AtHead, glyph::articStaccatissimoAbove,
             glyph::articStaccatissimoBelow},
    MarkSign{"roll", MarkPlace::Above, glyph::ornamentTurn, 0},
    MarkSign{"turn", MarkPlace::Above, glyph::ornamentTurn, 0},
    MarkSign{"trill", MarkPlace::Above, glyph::ornamentTrill, 0},
    MarkSign{"turnx", MarkPlace::Above, glyph::ornamentTurnSlash, 0},
    MarkSign{"invertedturn", MarkPlace::Above, glyph::ornamentTurnInverted, 0},
    MarkSign{"trill(", MarkPlace::Above, glyph::ornamentTrill, 0},
    MarkSign{"marcato", MarkPlace::AtHead, glyph::articMarcatoAbove, glyph::articMarcatoBelow},
    MarkSign{"^", MarkPlace::AtHead, glyph::articMarcatoAbove, glyph::articMarcatoBelow},
    MarkSign{"upbow", MarkPlace::Above, glyph::stringsUpBow, 0},
    MarkSign{"downbow", MarkPlace::Above, glyph::stringsDownBow, 0},
    MarkSign{"thumb", MarkPlace::Above, glyph::stringsThumbPosition, 0},
    MarkSign{"snap", MarkPlace::Above, glyph::pluckedSnapPizzicatoAbove, 0},
    MarkSign{"plus", MarkPlace::Above, glyph::pluckedLeftHandPizzicato, 0},
    MarkSign{"+", MarkPlace::Above, glyph::pluckedLeftHandPizzicato, 0},
    MarkSign{"lowermordent", MarkPlace::Above, glyph::ornamentMordent, 0},
    MarkSign{"mordent", MarkPlace::Above, glyph::ornamentMordent, 0},
    MarkSign{"uppermordent", MarkPlace::Above, glyph::ornamentShortTrill, 0},
    MarkSign{"pralltriller", MarkPlace::Above, glyph::ornamentShortTrill, 0},
    MarkSign{"fermata", MarkPlace::Outside, glyph::fermataAbove, 0},
    MarkSign{"invertedfermata", MarkPlace::Outside, glyph::fermataBelow, 0},
    // Of the harp, not of ABC: a harmonic, muffled strings.
    MarkSign{"open", MarkPlace::Above, glyph::stringsHarmonic, 0},
    MarkSign{"harmonic", MarkPlace::Above, glyph::stringsHarmonic, 0},
    MarkSign{"muffle", MarkPlace::Above, glyph::pluckedDamp, 0},
    MarkSign{"muffleall", MarkPlace::Above, glyph::pluckedDampAll, 0},
    MarkSign{"breath", MarkPlace::Outside, glyph::breathMarkComma, 0},
    MarkSign{"segno", MarkPlace::Outside, glyph::segno, 0},
    MarkSign{"coda", MarkPlace::Outside, glyph::coda, 0},
};

MarkSign const* signFor(std::string_view name)
{
    auto const found = std::find_if(markSigns.begin(), markSigns.end(),
                                    [name](MarkSign const& s) { return s.name == name; });
    return found == markSigns.end() ? nullptr : &*found;
}

// A small sign at a notehead stands in the next free space, then outside the staff.
double atHeadY(SetNote const& note, GlyphBox box)
{
    bool const below = note.stem == Stem::Up;
    int const step = below ? note.heads.front().step : note.heads.back().step;
    int place = below ? step - 2 : step + 2;
    if (onLine(place) && place > -5 && place < 5) place += below ? -1 : 1;
    return yOfStep(place) + (box.top + box.bottom) / 2;
}

void drawMark(Pen& pen, SetNote const& note, double x, MarkSign const& sign)
{
    bool const below = sign.place == MarkPlace::AtHead && note.stem == Stem::Up;
    char32_t const code = below ? sign.below : sign.above;
    GlyphBox const box = boxOf(pen.font(), code);
    double const left = x + headRight(note, pen.font()) / 2 - (box.left + box.right) / 2;
    if (sign.place == MarkPlace::AtHead) {
        pen.glyph(code, {left, atHeadY(note, box)});
        return;
    }
    double const roof = std::min(pen.reach().top(left + box.left, left + box.right, 0), -0.2);
    pen.glyph(code, {left, roof - geometry::markGap + box.bottom});
}

// Most stems of a tuplet point up: its bracket stands at their ends [gould11].
bool stemsUp(SetBar const& bar, notation::StaffTuplet const& tuplet)
{
    int up = 0;
    for (StaffNoteIndex i = tuplet.first; i <= tuplet.last; ++i) {
        SetNote const& note = bar.notes[i];
        if (!note.what.isRest()) up += note.stem == Stem::Up ? 1 : -1;
    }
    return up >= 0;
}

} // namespace

void drawTuplets(Pen& pen, SetBar const& bar, BarPlace const& place, tune::BarIndex barIndex,
                 std::vector<DrawnBeam> const& beams)
{
    pen.belongTo(barIndex);
    for (notation::StaffTuplet const& tuplet : bar.tuplets) {
        std::u32string const number = tupletDigits(tuplet.actual);
        auto const beam =
            std::find_if(beams.begin(), beams.end(), [&tuplet](DrawnBeam const& b) {
                return b.group.first == tuplet.first && b.group.last == tuplet.last;
            });
        if (beam != beams.end()) {
            double const height = tupletScale * boxOf(pen.font(), glyph::tuplet0).top;
            double const middle = (beam->from.x + beam->to.x) / 2;
            double const half = rowWidth(number, tupletScale, pen.font()) / 2 + 0.1;
            double const edge = (beam->from.y + beam->to.y) / 2;
            double const roof = pen.reach().top(middle - half, middle + half, edge);
            double const floor = pen.reach().bottom(middle - half, middle + half, edge);
            drawCentredRow(pen, number,
                           {middle, beam->up ? std::min(edge, roof) - geometry::markGap
                                             : std::max(edge, floor) + geometry::markGap +
                                                   height},
                           tupletScale, Ink::Music);
            continue;
        }
        StaffNoteIndex const first = tuplet.first;
        StaffNoteIndex const last = tuplet.last;
        drawTupletBracket(pen, number, place.x[first],
                          place.x[last] + headRight(bar.notes[last], pen.font()),
                          stemsUp(bar, tuplet));
    }
}

namespace {

// "Let ring": a short tie into the white behind every head.
void drawRing(Pen& pen, SetNote const& note, double x)
{
    for (SetHead const& head : note.heads) {
        bool const up = note.stem == Stem::Down;
        double const away = up ? -1 : 1;
        double const from = x + head.dx + headRight(note, pen.font()) + 0.15;
        double const y = yOfStep(head.step) + away * 0.4;
        pen.bow({from, y}, {from + ringLength, y}, away * 0.45);
    }
}

// "R.H." over a note of the left hand's staff.
void drawHandSign(Pen& pen, double x)
{
    std::string const words = base::said("R.H.");
    double const height = geometry::handHeight;
    double const width = widthOf(words, Face::Italic, height);
    double const roof = std::min(pen.reach().top(x - 0.1, x + width + 0.1, 0), -0.2);
    pen.words(words, {x, roof - 0.3 - wordsFall * height}, height, Face::Italic, Anchor::Left,
              Ink::Quiet);
}

} // namespace

bool isTold(std::string_view mark)
{
    constexpr std::array others{"arpeggio", "trill)", "slide", "shortphrase", "mediumphrase",
                                "longphrase"};
    bool const finger = mark.size() == 1 && mark[0] >= '0' && mark[0] <= '5';
    return finger || mark == letRing || mark == notation::rightHandHelps || signFor(mark) ||
           std::find(others.begin(), others.end(), mark) != others.end() ||
           notation::isToldInWords(mark);
}

namespace {

// A short line that rises into the notehead from the left.
void drawSlide(Pen& pen, SetNote const& note, double x)
{
    double const y = yOfStep(note.heads.front().step);
    double const right = x - 0.25;
    pen.line({right - 1.1, y + 0.9}, {right, y + 0.1}, 0.16);
}

// The end of a phrase: a stroke through the top of the staff, as long as the breath.
void drawPhraseEnd(Pen& pen, double x, std::string_view mark)
{
    double const length = mark == "shortphrase" ? 1 : mark == "mediumphrase" ? 2 : 3;
    pen.line({x, -0.6}, {x, length - 0.5}, 0.14);
}

// Fingers that the tune itself brings stand over the note.
void drawOwnFinger(Pen& pen, SetNote const& note, double x, int finger)
{
    char32_t const code = glyph::fingering0 + static_cast<char32_t>(finger);
    GlyphBox const box = boxOf(pen.font(), code);
    double const left = x + (headRight(note, pen.font()) - (box.right - box.left)) / 2;
    double const roof = std::min(pen.reach().top(left, left + box.right, 0), 0.0);
    pen.glyph(code, {left, roof - geometry::fingerGap + box.bottom}, Ink::Finger,
              geometry::fingerScale);
}

void drawOneMark(Pen& pen, SetBar const& bar, BarPlace const& place, StaffNoteIndex i,
                 std::string const& name, MarkPlace which)
{
    SetNote const& note = bar.notes[i];
    double const x = signX(note, place, i, pen.font());
    if (which == MarkPlace::AtHead && !note.what.isRest()) {
        if (name == letRing) drawRing(pen, note, x);
        if (name == "slide") drawSlide(pen, note, x);
    }
    if (which == MarkPlace::Above) {
        if (name == notation::rightHandHelps) drawHandSign(pen, x);
        bool const fingered = name.size() == 1 && name[0] >= '0' && name[0] <= '5';
        if (fingered && note.what.fingers.empty() && !note.what.isRest())
            drawOwnFinger(pen, note, x, name[0] - '0');
    }
    if (which == MarkPlace::Outside && name.ends_with("phrase")) {
        double const next = place.x.holds(i + 1) ? place.x[i + 1] : place.right;
        drawPhraseEnd(pen, next - 0.6, name);
    }
    MarkSign const* const sign = signFor(name);
    if (!sign || sign->place != which) return;
    if (note.what.isRest() && which == MarkPlace::AtHead) return;
    drawMark(pen, note, x, *sign);
}

void drawMarksAt(Pen& pen, SetBar const& bar, BarPlace const& place, tune::BarIndex barIndex,
                 MarkPlace which)
{
    for (StaffNoteIndex const i : bar.notes.indices()) {
        pen.belongTo(barIndex, bar.notes[i].what.position);
        for (std::string const& name : bar.notes[i].what.marks)
            drawOneMark(pen, bar, place, i, name, which);
    }
}

} // namespace

void drawMarks(Pen& pen, SetBar const& bar, BarPlace const& place, tune::BarIndex barIndex)
{
    // Those at the noteheads come first: what stands above the staff is set clear of them.
    drawMarksAt(pen, bar, place, barIndex, MarkPlace::AtHead);
    drawMarksAt(pen, bar, place, barIndex, MarkPlace::Above);
}

void drawOuterMarks(Pen& pen, SetBar const& bar, BarPlace const& place, tune::BarIndex barIndex)
{
    drawMarksAt(pen, bar, place, barIndex, MarkPlace::Outside);
}

void drawDynamics(Pen& pen, std::vector<PlacedDynamic> const& dynamics,
                  std::vector<PlacedHairpin> const& hairpins)
{
    constexpr double rise = 1.8; // of the f
    constexpr double half = 0.6; // of an open end
    constexpr std::string_view letters = "pmfrsz"; // in the order of SMuFL
    if (dynamics.empty() && hairpins.empty()) return;
    double floor = 4.6;
    auto const mind = [&](double left, double right) {
        floor = std::max(floor, pen.reach().bottom(left, right, 4));
    };
    auto const glyphs = [&](std::string const& text) {
        std::u32string row;
        for (char c : text)
            if (auto const at = letters.find(c); at != std::string_view::npos)
                row += glyph::dynamicPiano + static_cast<char32_t>(at);
        return row;
    };
    for (PlacedDynamic const& one : dynamics)
        mind(one.x - 0.4, one.x + rowWidth(glyphs(one.text), 1, pen.font()));
    for (PlacedHairpin const& one : hairpins) mind(one.left, one.right);
    double const baseline = floor + geometry::markGap + rise;
    double const middle = baseline - 0.55;
    for (PlacedDynamic const& one : dynamics) {
        pen.belongTo(one.bar);
        drawCentredRow(pen, glyphs(one.text), {one.x + 0.5, baseline}, 1, Ink::Music);
    }
    double const thickness = engravingOf(pen.font(), "hairpinThickness", 0.16);
    for (PlacedHairpin one : hairpins) {
        for (PlacedDynamic const& beside : dynamics) { // a hairpin makes room for the letters
            double const width = rowWidth(glyphs(beside.text), 1, pen.font()) / 2 + 0.5;
            double const at = beside.x + 0.5;
            if (at <= one.left + 2 && at + width > one.left) one.left = at + width;
            if (at >= one.right - 2 && at - width < one.right) one.right = at - width;
        }
        if (one.right - one.left < 1) continue;
        double const from = one.opens ? 0.0 : half;
        double const to = one.opens ? half : 0.0;
        pen.belongTo(one.bar);
        for (double side : {-1.0, 1.0})
            pen.line({one.left, middle + side * from}, {one.right, middle + side * to},
                     thickness);
    }
    pen.belongTo({});
}

void drawFingers(Pen& pen, SetBar const& bar, BarPlace const& place, tune::BarIndex barIndex,
                 FingerSide side)
{
    double const scale = geometry::fingerScale;
    for (StaffNoteIndex const i : bar.notes.indices()) {
        SetNote const& note = bar.notes[i];
        pen.belongTo(barIndex, note.what.position);
        double const middle = place.x[i] + headRight(note, pen.font()) / 2;
        std::vector<int> fingers = note.what.fingers;
        if (side == FingerSide::Below) std::reverse(fingers.begin(), fingers.end());
        for (int finger : fingers) { // from the staff outwards
            char32_t const code = glyph::fingering0 + static_cast<char32_t>(finger);
            GlyphBox const box = boxOf(pen.font(), code);
            double const left = middle - scale * (box.left + box.right) / 2;
            double const l = left + scale * box.left - fingerRoom;
            double const r = left + scale * box.right + fingerRoom;
            double const y = side == FingerSide::Above
                                 ? std::min(pen.reach().top(l, r, 0), 0.0) -
                                       geometry::fingerGap + scale * box.bottom
                                 : std::max(pen.reach().bottom(l, r, 4), 4.0) +
                                       geometry::fingerGap + scale * box.top;
            pen.glyph(code, {left, y}, Ink::Finger, scale);
        }
    }
}

} // namespace sheet
