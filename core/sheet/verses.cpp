#include "core/sheet/verses.h"

#include "core/sheet/geometry.h"
#include "core/sheet/pen.h"
#include "core/sheet/words.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace sheet {

namespace {

using geometry::hyphenWidth;
constexpr double betweenHyphens = 7;
constexpr double sungOnGap = 0.25; // before the line that holds a syllable

// One syllable on the line.
struct Sung {
    tune::Syllable const* syllable = nullptr;
    double left = 0;  // of its words
    double right = 0; // of its words, or of the notehead where it is held
    tune::BarIndex bar = 0;
};

std::vector<Sung> row(StaffLine const& line, std::size_t verse, bool grand,
                      MusicFont const& font)
{
    std::vector<Sung> out;
    for (std::size_t b = 0; b < line.bars.size(); ++b)
        for (StaffNoteIndex const i : line.bars[b].notes.indices()) {
            SetNote const& note = line.bars[b].notes[i];
            if (verse >= note.what.verses.size()) continue;
            tune::Syllable const& syllable = note.what.verses[verse];
            if (syllable == tune::Syllable{}) continue;
            double const x = signX(note, line.places[b], i, font);
            double const head = boxOf(font, note.head).right;
            SyllableReach const reach = syllableReach(
                syllable, head, grand && b > 0 && note.what.at == music::Length{});
            double const left = syllable.held ? x : std::max(0.0, x - reach.left);
            out.push_back({&syllable, left,
                           syllable.held ? x + head : left + reach.left + reach.right,
                           line.indices[b]});
        }
    return out;
}

std::size_t verseCount(StaffLine const& line)
{
    std::size_t count = 0;
    for (SetBar const& bar : line.bars)
        for (SetNote const& note : bar.notes) count = std::max(count, note.what.verses.size());
    return count;
}

// Beside a bar line, never on it.
double offBarLines(double x, double left, std::vector<BarPlace> const& bars)
{
    for (BarPlace const& bar : bars)
        if (std::abs(bar.right - x) < hyphenWidth)
            return bar.right - hyphenWidth > left ? bar.right - hyphenWidth
                                                  : bar.right + hyphenWidth;
    return x;
}

void drawHyphens(Pen& pen, double left, double right, double baseline,
                 std::vector<BarPlace> const& bars)
{
    double const room = right - left;
    if (room < hyphenWidth / 2) return;
    int const count = std::max(1, static_cast<int>(room / betweenHyphens));
    for (int i = 0; i < count; ++i)
        pen.words("-",
                  {offBarLines(left + room * (2 * i + 1) / (2 * count), left, bars), baseline},
                  geometry::verseHeight, Face::Roman, Anchor::Centre);
}

void drawRow(Pen& pen, std::vector<Sung> const& row, std::vector<BarPlace> const& bars,
             double baseline)
{
    double const lineLeft = bars.front().left;
    double const lineRight = bars.back().right;
    constexpr double thickness = 0.1;
    for (std::size_t i = 0; i < row.size(); ++i) {
        Sung const& here = row[i];
        pen.belongTo(here.bar);
        if (!here.syllable->held)
            pen.words(here.syllable->text, {here.left, baseline}, geometry::verseHeight,
                      Face::Roman);
        std::size_t next = i + 1;
        while (next < row.size() && row[next].syllable->held) ++next;
        bool const begins = !here.syllable->held;
        if (!begins && i > 0) continue;
        double const from = begins ? here.right : lineLeft;
        if (here.syllable->hyphen)
            drawHyphens(pen, from, next < row.size() ? row[next].left : lineRight, baseline,
                        bars);
        else if (next > i + 1 || !begins) {
            double const to = row[next - 1].right;
            if (to - from > sungOnGap)
                pen.line({from + (begins ? sungOnGap : 0), baseline}, {to, baseline}, thickness,
                         Ink::Words);
        }
    }
    pen.belongTo({});
}

} // namespace

SyllableReach syllableReach(tune::Syllable const& syllable, double head, bool afterBarLine)
{
    double const width = widthOf(syllable.text, Face::Roman, geometry::verseHeight);
    double const centred = (width - head) / 2;
    double const left =
        afterBarLine ? std::min(centred, geometry::syllableAfterBarLine) : centred;
    return {left, width - left};
}

void drawVerses(Pen& pen, StaffLine const& line, bool grand)
{
    double const capitals = wordsRise * geometry::verseHeight;
    double baseline = 4 + geometry::verseBelowStaff + capitals;
    std::size_t const verses = verseCount(line);
    std::vector<std::vector<Sung>> rows;
    for (std::size_t verse = 0; verse < verses; ++verse) {
        rows.push_back(row(line, verse, grand, pen.font()));
        for (Sung const& sung : rows.back()) {
            double const floor = pen.reach().bottom(sung.left - 0.2, sung.right + 0.2, 4);
            baseline = std::max(baseline, floor + geometry::verseGap + capitals);
        }
    }
    for (std::vector<Sung> const& sung : rows) {
        drawRow(pen, sung, line.places, baseline);
        baseline += geometry::verseHeight * 1.15;
    }
}

} // namespace sheet
