#include "ui/tunegridlayout.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace ui {

namespace {

bool isPickUp(tune::Bar const& bar) { return bar.upbeat.wholes > music::Rational(0); }

bool namesParts(tune::Tune const& tune)
{
    return std::any_of(tune.bars.begin(), tune.bars.end(),
                       [](tune::Bar const& bar) { return !bar.part.empty(); });
}

// The number of the ending that begins at a bar; 0 where none does.
int beginsEnding(tune::Tune const& tune, int bar)
{
    auto const& endings = tune.bars[static_cast<std::size_t>(bar)].endings;
    return endings.empty() ? 0 : endings.front();
}

// Whether a part of a tune without part letters begins at a bar.
bool beginsPart(tune::Tune const& tune, std::size_t bar)
{
    if (tune.bars[bar].repeatOpens) return true;
    if (bar == 0) return true;
    tune::Bar const& before = tune.bars[bar - 1];
    bool const moreEndings = !tune.bars[bar].endings.empty();
    return !moreEndings && (before.repeatCloses || before.closes == tune::BarLine::Double ||
                            before.closes == tune::BarLine::Final);
}

void widen(GridLayout& layout, int step)
{
    layout.lowestStep = std::min(layout.lowestStep, step);
    layout.highestStep = std::max(layout.highestStep, step);
}

// The strings from the lowest left-hand note to the highest note of the tune.
void findSteps(GridLayout& layout, arrange::Arrangement const& arrangement)
{
    layout.lowestStep = std::numeric_limits<int>::max();
    layout.highestStep = std::numeric_limits<int>::min();
    for (tune::Bar const& bar : arrangement.tune.bars)
        for (tune::Note const& note : bar.notes)
            for (music::Pitch const pitch : note.pitches) widen(layout, diatonicStep(pitch));
    for (auto const& arranged : arrangement.positions)
        for (arrange::VoicedNote const& note : arranged.voicing.notes)
            widen(layout, diatonicStep(arrangement.harp.string(note.string).open));
    if (layout.lowestStep > layout.highestStep) layout.lowestStep = layout.highestStep = 28;
}

int barsPerRow(double width, GridMeasure const& measure)
{
    auto const fits = [&](int bars) {
        return (width - measure.gap * (bars - 1)) / bars >= measure.narrowestCard;
    };
    if ((width - measure.gap * 7) / 8 >= 1.45 * measure.narrowestCard) return 8;
    return fits(4) ? 4 : fits(2) ? 2 : 1;
}

void addSpans(GridCard& card, arrange::Arrangement const& arrangement,
              GridMeasure const& measure)
{
    auto const& bar = arrangement.tune.bars[static_cast<std::size_t>(card.bar)];
    auto const& positions = arrangement.positions;
    for (std::size_t i = 0; i < positions.size();) {
        if (positions[i].position.bar != card.bar) {
            ++i;
            continue;
        }
        std::size_t last = i + 1; // behind the passes that share the stretch
        while (last < positions.size() && positions[last].position.bar == card.bar &&
               positions[last].position.at == positions[i].position.at)
            ++last;
        arrange::Position const& position = positions[i].position;
        double const left = position.at.wholes == music::Rational(0)
                                ? card.box.x
                                : xAt(card, position.at, bar.length);
        bool const toTheEnd = position.at + position.span >= bar.length;
        double const right =
            toTheEnd ? card.box.right() : xAt(card, position.at + position.span, bar.length);
        Box const stretch{left, card.box.y, right - left, card.box.height};
        double const share = stretch.width / static_cast<double>(last - i);
        for (std::size_t k = i; k < last; ++k)
            card.spans.push_back({static_cast<int>(k),
                                  {left + share * static_cast<double>(k - i), card.box.y, share,
                                   measure.nameHeight},
                                  stretch});
        i = last;
    }
}

} // namespace

std::vector<GridSection> gridSections(tune::Tune const& tune)
{
    bool const named = namesParts(tune);
    std::vector<GridSection> sections;
    for (std::size_t i = 0; i < tune.bars.size(); ++i) {
        bool const begins = named ? !tune.bars[i].part.empty() : beginsPart(tune, i);
        // A pick-up alone is no part: it belongs to the bars behind it.
        bool const afterPickUp = !named && i > 0 && isPickUp(tune.bars[i - 1]);
        if (sections.empty() || (begins && !afterPickUp)) {
            GridSection section;
            section.firstBar = static_cast<int>(i);
            section.part = named
                               ? tune.bars[i].part
                               : std::string(1, static_cast<char>('A' + sections.size() % 26));
            sections.push_back(section);
        }
        sections.back().lastBar = static_cast<int>(i);
        if (tune.bars[i].repeatCloses)
            sections.back().timesPlayed =
                std::max(sections.back().timesPlayed, tune.bars[i].timesPlayed);
    }
    if (!named && sections.size() == 1) sections.front().part.clear();
    return sections;
}

GridLayout layOutGrid(arrange::Arrangement const& arrangement, GridMeasure const& measure)
{
    GridLayout layout;
    findSteps(layout, arrangement);
    layout.sections = gridSections(arrangement.tune);
    double const width = measure.width - 2 * measure.margin;
    layout.barsPerRow = barsPerRow(width, measure);
    double const column = (width - measure.gap * (layout.barsPerRow - 1)) / layout.barsPerRow;
    double y = measure.margin / 2;
    int row = -1;
    for (GridSection& section : layout.sections) {
        section.heading = {measure.margin, y, width, measure.headingHeight};
        y += measure.headingHeight;
        int inRow = layout.barsPerRow; // full: the first bar opens a row
        double pickUpWidth = 0;
        bool any = false;
        int firstEnding = 0; // the column of the latest first ending
        for (int bar = section.firstBar; bar <= section.lastBar; ++bar) {
            if (inRow == layout.barsPerRow) {
                if (any) y += measure.cardHeight + measure.gap;
                any = true;
                bool const another = beginsEnding(arrangement.tune, bar) > 1;
                inRow = another ? firstEnding : 0; // second endings stand below first ones
                ++row;
            }
            if (beginsEnding(arrangement.tune, bar) == 1) firstEnding = inRow;
            GridCard card;
            card.bar = bar;
            card.row = row;
            double const x = measure.margin + inRow * (column + measure.gap);
            bool const pickUp = isPickUp(arrangement.tune.bars[static_cast<std::size_t>(bar)]);
            // A pick-up shares the column of the bar it leads to.
            if (pickUp && pickUpWidth == 0 && bar < section.lastBar) {
                pickUpWidth = 0.3 * column;
                card.box = {x, y, pickUpWidth - measure.gap / 2, measure.cardHeight};
            } else {
                card.box = {x + pickUpWidth, y, column - pickUpWidth, measure.cardHeight};
                pickUpWidth = 0;
                ++inRow;
            }
            double const inset = 10;
            card.drawing = {card.box.x + inset, card.box.y + measure.nameHeight,
                            card.box.width - 2 * inset,
                            measure.cardHeight - measure.nameHeight - measure.footHeight};
            addSpans(card, arrangement, measure);
            layout.cards.push_back(std::move(card));
        }
        y += measure.cardHeight + measure.gap;
    }
    layout.height = y + measure.margin / 2;
    return layout;
}

double xAt(GridCard const& card, music::Length fromBarStart, music::Length barLength)
{
    return card.drawing.x + card.drawing.width * (fromBarStart / barLength).toDouble();
}

double yAt(GridLayout const& layout, Box const& drawing, int step)
{
    double const steps = std::max(1, layout.highestStep - layout.lowestStep);
    double const inset = 5;
    return drawing.bottom() - inset -
           (drawing.height - 2 * inset) * (step - layout.lowestStep) / steps;
}

GridCard const* cardOf(GridLayout const& layout, int position)
{
    for (GridCard const& card : layout.cards)
        for (GridSpan const& span : card.spans)
            if (span.position == position) return &card;
    return nullptr;
}

GridSpan const* spanOf(GridLayout const& layout, int position)
{
    for (GridCard const& card : layout.cards)
        for (GridSpan const& span : card.spans)
            if (span.position == position) return &span;
    return nullptr;
}

std::optional<int> positionAt(GridLayout const& layout, double x, double y,
                              std::optional<int> selected)
{
    for (GridCard const& card : layout.cards) {
        if (!card.box.contains(x, y)) continue;
        for (GridSpan const& span : card.spans)
            if (span.name.contains(x, y)) return span.position;
        std::optional<int> first;
        for (GridSpan const& span : card.spans) {
            if (!span.stretch.contains(x, y)) continue;
            if (span.position == selected) return selected;
            if (!first) first = span.position;
        }
        if (!first && !card.spans.empty()) return card.spans.front().position;
        return first;
    }
    return std::nullopt;
}

namespace {

// The position of the nearest row above (-1) or below (+1) that lies closest across.
int inRowBeside(GridLayout const& layout, int position, int direction)
{
    GridCard const* from = cardOf(layout, position);
    GridSpan const* here = spanOf(layout, position);
    double const middle = here->name.x + here->name.width / 2;
    int best = position;
    int bestRows = std::numeric_limits<int>::max();
    double bestAway = 0;
    for (GridCard const& card : layout.cards)
        for (GridSpan const& span : card.spans) {
            int const rows = (card.row - from->row) * direction;
            if (rows < 1 || rows > bestRows) continue;
            double const away = std::abs(span.name.x + span.name.width / 2 - middle);
            if (rows == bestRows && away >= bestAway) continue;
            best = span.position;
            bestRows = rows;
            bestAway = away;
        }
    return best;
}

} // namespace

int neighbour(GridLayout const& layout, int position, Step step)
{
    if (!spanOf(layout, position)) return position;
    int last = 0;
    for (GridCard const& card : layout.cards)
        for (GridSpan const& span : card.spans) last = std::max(last, span.position);
    switch (step) {
    case Step::Left:
        return std::max(0, position - 1);
    case Step::Right:
        return std::min(last, position + 1);
    case Step::Up:
        return inRowBeside(layout, position, -1);
    case Step::Down:
        return inRowBeside(layout, position, +1);
    case Step::First:
        return 0;
    case Step::Last:
        return last;
    }
    return position;
}

} // namespace ui
