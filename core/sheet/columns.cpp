#include "core/sheet/columns.h"

#include "core/sheet/geometry.h"
#include "core/sheet/stringpath.h"
#include "core/sheet/verses.h"
#include "core/sheet/words.h"

#include <algorithm>
#include <set>
#include <utility>

namespace sheet {

using music::Length;

namespace {

constexpr double signGap = 0.6; // before a changed key or meter

// Pitches that the last sign of a bar ties over the bar line.
std::vector<music::Pitch> tiedOut(StaffBar const& bar)
{
    if (bar.notes.empty() || !bar.notes.back().tied) return {};
    return bar.notes.back().pitches;
}

std::size_t at(int index) { return static_cast<std::size_t>(index); }

} // namespace

SetScore setScore(Score const& score, MusicFont const& font)
{
    SetScore out{&score, &font, {}, {}, {}, {}, slurSpans(score.bars)};
    BarBefore upper;
    BarBefore lower;
    int signature = 0;
    for (tune::BarIndex const i : score.bars.indices()) {
        tune::Bar const& written = score.tune.bars[i];
        PrintedBar const& bar = score.bars[i];
        // A new key signature leaves no doubt.
        if (std::exchange(signature, music::signature(written.key)) != signature) {
            upper.altered.clear();
            lower.altered.clear();
        }
        Voice const voice = bar.upperBelow.notes.empty() ? Voice::Alone : Voice::Above;
        Clef const clef = score.grand ? Clef::Treble : score.clef;
        out.upper.push_back(setBar(bar.upper, written, clef, upper, font, voice));
        out.upperBelow.push_back(
            setBar(bar.upperBelow, written, Clef::Treble, {}, font, Voice::Below));
        out.lower.push_back(setBar(bar.lower, written, Clef::Bass, lower, font));
        out.tiedIntoUpper.push_back(upper.tied);
        upper = {tiedOut(bar.upper), out.upper.back().altered};
        lower = {{}, out.lower.back().altered};
    }
    return out;
}

bool beginsPart(SetScore const& score, tune::BarIndex index)
{
    if (index == 0) return true;
    tune::Bar const& here = score.bar(index);
    tune::Bar const& before = score.bar(index - 1);
    if (!here.endings.empty()) return false;
    return !here.part.empty() || here.repeatOpens || before.repeatCloses ||
           before.closes == tune::BarLine::Double || before.closes == tune::BarLine::Final;
}

Change changeAt(SetScore const& score, tune::BarIndex index)
{
    Change change;
    if (index == 0 || index >= score.count()) return change;
    tune::Bar const& before = score.bar(index - 1);
    tune::Bar const& here = score.bar(index);
    int const oldSignature = music::signature(before.key);
    int const newSignature = music::signature(here.key);
    if (oldSignature != newSignature) change.key = keySign(newSignature, oldSignature);
    if (!(before.meter == here.meter)) change.meter = here.meter;
    return change;
}

double changeWidth(Change const& change, MusicFont const& font)
{
    double width = 0;
    if (change.key) width += signGap + keySignWidth(*change.key, font);
    if (change.meter) width += signGap + meterWidth(*change.meter, font);
    return width;
}

void drawChange(Pen& pen, Change const& change, Clef clef, double x)
{
    if (change.key) {
        drawKeySign(pen, *change.key, clef, x + signGap);
        x += signGap + keySignWidth(*change.key, pen.font());
    }
    if (change.meter) drawMeter(pen, *change.meter, x + signGap);
}

namespace {

void addMoments(std::set<Length>& moments, StaffBar const& bar)
{
    for (StaffNote const& note : bar.notes)
        if (!note.fillsBar) moments.insert(note.at);
}
void addMoments(std::set<Length>& moments, std::vector<Label> const& labels)
{
    for (Label const& label : labels) moments.insert(label.at);
}

std::vector<Length> momentsOf(PrintedBar const& bar, Length barLength)
{
    std::set<Length> moments{Length{}};
    addMoments(moments, bar.upper);
    addMoments(moments, bar.upperBelow);
    addMoments(moments, bar.lower);
    addMoments(moments, bar.chords);
    addMoments(moments, bar.labels);
    moments.erase(moments.lower_bound(barLength), moments.end());
    if (moments.empty()) moments.insert(Length{});
    return {moments.begin(), moments.end()};
}

// Length of the shortest sign that counts on at this moment; none where only a bar's rest does.
std::optional<Length> shortestAt(PrintedBar const& bar, Length moment)
{
    std::optional<Length> shortest;
    for (StaffBar const* staff : {&bar.upper, &bar.upperBelow, &bar.lower}) {
        auto const after =
            std::upper_bound(staff->notes.begin(), staff->notes.end(), moment,
                             [](Length m, StaffNote const& note) { return m < note.at; });
        if (after == staff->notes.begin()) continue;
        StaffNote const& note = *(after - 1);
        bool const counts = !note.fillsBar && moment < note.at + note.length;
        if (counts && (!shortest || note.length < *shortest)) shortest = note.length;
    }
    return shortest;
}

double dueFrom(PrintedBar const& bar, Length moment, Length next)
{
    Length const gap = next - moment;
    Length const shortest = std::max(shortestAt(bar, moment).value_or(gap), gap);
    return spaceFor(shortest) * (gap / shortest).toDouble();
}

struct Builder {
    SetScore const& score;
    LineColumns line;

    MusicFont const& font() const { return *score.font; }
    int column() const { return static_cast<int>(line.row.springs.size()); }
    void spring(double fixed, double elastic) { line.row.springs.push_back({fixed, elastic}); }
    void strut(int from, int to, double least) { line.row.struts.push_back({from, to, least}); }

    // What stands between the column before a bar and its first moment.
    double opening(tune::BarIndex bar, bool firstOfLine) const
    {
        if (firstOfLine) return 0;
        BarLineShape const border = barLineShape(&score.bar(bar - 1), &score.bar(bar), font());
        return border.width + changeWidth(changeAt(score, bar), font()) +
               geometry::afterBarLine;
    }

    void addBar(tune::BarIndex bar, bool firstOfLine)
    {
        PrintedBar const& what = score.score->bars[bar];
        Length const length = score.bar(bar).length;
        LineColumns::OfBar columns;
        columns.moments = momentsOf(what, length);
        int const before = column();
        double const lead = opening(bar, firstOfLine);
        spring(lead, 0);
        columns.firstColumn = column();
        for (std::size_t i = 0; i < columns.moments.size(); ++i) {
            Length const next =
                i + 1 < columns.moments.size() ? columns.moments[i + 1] : length;
            spring(0, dueFrom(what, columns.moments[i], next));
        }
        columns.endColumn = column();
        addStruts(score.upper[bar], columns, before, lead);
        addStruts(score.upperBelow[bar], columns, before, lead);
        addStruts(score.lower[bar], columns, before, lead);
        double boxes = 0; // lever cues stand side by side inside their bar
        for (Label const& cue : what.leverCues)
            boxes += widthOf(cue.text, Face::SansBold, geometry::leverHeight) +
                     geometry::aroundLeverCue;
        strut(columns.firstColumn, columns.endColumn, boxes);
        line.bars.push_back(columns);
    }

    void addStruts(SetBar const& bar, LineColumns::OfBar const& columns, int before,
                   double lead)
    {
        SetNote const* last = nullptr;
        for (SetNote const& note : bar.notes) {
            if (note.what.hidden) continue;
            if (note.what.fillsBar) {
                strut(columns.firstColumn, columns.endColumn, note.right + 2.5);
                continue;
            }
            int const here = columnOf(columns, note.what.at);
            if (last)
                strut(columnOf(columns, last->what.at), here,
                      last->right + geometry::betweenNotes + note.left);
            else
                strut(before, here, lead + note.left * (note.left > 0.3 ? 1.0 : 0.0));
            last = &note;
        }
        if (last)
            strut(columnOf(columns, last->what.at), columns.endColumn,
                  last->right + geometry::beforeBarLine);
    }

    // Words of one row keep clear of each other, and the last one of the end of the line.
    void addWords(BarRange range, std::vector<Label> PrintedBar::*row, Face face, double height,
                  double gap)
    {
        std::optional<int> lastColumn;
        double lastWidth = 0;
        for (tune::BarIndex bar = range.first; bar < range.end; ++bar)
            for (Label const& label : score.score->bars[bar].*row) {
                int const here = columnOf(line.bars[at(bar - range.first)], label.at);
                if (lastColumn && *lastColumn < here) strut(*lastColumn, here, lastWidth + gap);
                lastColumn = here;
                lastWidth = widthOf(label.text, face, height);
            }
        if (lastColumn) strut(*lastColumn, column(), lastWidth - line.closing);
    }

    // The beads of the string path have room to be read.
    void addPath(BarRange range)
    {
        std::optional<int> lastColumn;
        for (tune::BarIndex bar = range.first; bar < range.end; ++bar) {
            std::set<int> stops;
            for (auto const* staff : {&score.lower, &score.upperBelow})
                for (SetNote const& note : (*staff)[bar].notes)
                    if (!note.what.isRest())
                        stops.insert(columnOf(line.bars[at(bar - range.first)], note.what.at));
            for (int const here : stops) {
                if (lastColumn) strut(*lastColumn, here, betweenStops);
                lastColumn = here;
            }
        }
    }

    // Syllables keep clear of each other and of bar lines; a held one takes no room of its own.
    void addVerse(BarRange range, std::size_t verse)
    {
        bool const grand = score.score->grand;
        std::optional<int> lastColumn;
        double lastRight = 0;
        bool hyphen = false; // behind the last one: it has room of its own
        for (tune::BarIndex bar = range.first; bar < range.end; ++bar) {
            if (grand && lastColumn)
                strut(*lastColumn, line.bars[at(bar - range.first - 1)].endColumn,
                      lastRight + geometry::syllableBeforeBarLine);
            for (SetNote const& note : score.upper[bar].notes) {
                if (verse >= note.what.verses.size()) continue;
                if (note.what.verses[verse].text.empty()) continue;
                int const here = columnOf(line.bars[at(bar - range.first)], note.what.at);
                SyllableReach const reach =
                    syllableReach(note.what.verses[verse], boxOf(font(), note.head).right,
                                  grand && bar > range.first && note.what.at == Length{});
                if (lastColumn && *lastColumn < here)
                    strut(*lastColumn, here,
                          lastRight + reach.left +
                              (hyphen ? geometry::aroundHyphen : geometry::betweenSyllables));
                lastColumn = here;
                hyphen = note.what.verses[verse].hyphen;
                lastRight = reach.right;
            }
        }
        if (lastColumn) strut(*lastColumn, column(), lastRight + 0.1 - line.closing);
    }

    std::size_t verses(BarRange range) const
    {
        std::size_t count = 0;
        for (tune::BarIndex bar = range.first; bar < range.end; ++bar)
            for (SetNote const& note : score.upper[bar].notes)
                count = std::max(count, note.what.verses.size());
        return count;
    }
};

} // namespace

LineColumns lineColumns(SetScore const& score, BarRange range)
{
    Builder builder{score, {}};
    for (tune::BarIndex bar = range.first; bar < range.end; ++bar)
        builder.addBar(bar, bar == range.first);
    Change const courtesy = changeAt(score, range.end);
    builder.line.closing = barLineShape(&score.bar(range.end - 1), nullptr, *score.font).width +
                           changeWidth(courtesy, *score.font) + (courtesy.any() ? signGap : 0);
    builder.addWords(range, &PrintedBar::chords, Face::Bold, geometry::chordHeight,
                     geometry::betweenChordSymbols);
    builder.addWords(range, &PrintedBar::labels, Face::SansBold, geometry::labelHeight,
                     geometry::betweenLabels);
    if (score.score->helps.stringPath) builder.addPath(range);
    std::size_t const verses = builder.verses(range);
    for (std::size_t verse = 0; verse < verses; ++verse) builder.addVerse(range, verse);
    return builder.line;
}

int columnOf(LineColumns::OfBar const& bar, Length moment)
{
    auto const after = std::upper_bound(bar.moments.begin(), bar.moments.end(), moment);
    auto const index = std::max<std::ptrdiff_t>(after - bar.moments.begin() - 1, 0);
    return bar.firstColumn + static_cast<int>(index);
}

} // namespace sheet
