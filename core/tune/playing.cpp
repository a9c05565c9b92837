#include "core/tune/playing.h"

#include "core/tune/endings.h"
#include "core/tune/jumps.h"

#include <algorithm>
#include <utility>

namespace tune {

namespace {

using music::Length;
using music::Moment;
using music::Rational;

constexpr std::size_t mostPlayedBars = 4000;

// Bars of one part, or of the whole tune: from `from` up to but not including `to`.
struct Stretch {
    BarIndex from = 0;
    BarIndex to = 0;
};

bool holds(std::vector<int> const& endings, int pass)
{
    return std::find(endings.begin(), endings.end(), pass) != endings.end();
}

// Follows the repeats and endings of one stretch, bar by bar.
class Walk {
public:
    Walk(Bars const& bars, Stretch stretch)
        : m_bars(bars), m_stretch(stretch), m_start(stretch.from)
    {}

    // Appends the bars as played. False when there would be too many.
    bool run(std::vector<BarIndex>& order)
    {
        for (BarIndex i = m_start; i < m_stretch.to;) {
            if (i != m_start && sectionBegins(i)) begin(i, m_bars[i].repeatOpens);
            if (i == m_start) m_opened = m_opened || m_bars[i].repeatOpens;
            if (!m_bars[i].endings.empty()) {
                m_inEnding = holds(m_bars[i].endings, m_pass);
                if (!m_inEnding) {
                    i = endOfEnding(m_bars, i, m_stretch.to) + 1;
                    continue;
                }
            }
            if (order.size() == mostPlayedBars) return false;
            order.push_back(i);
            i = after(i);
        }
        return true;
    }

private:
    void begin(BarIndex start, bool opened)
    {
        m_start = start;
        m_pass = 1;
        m_opened = opened;
    }

    // A repeat without an opening sign goes back to the last double bar line, part or repeat
    // end, whichever is latest (ABC 2.1, section 4.8).
    bool sectionBegins(BarIndex i) const
    {
        if (m_bars[i].repeatOpens) return true;
        if (m_opened || !m_bars[i].endings.empty()) return false;
        BarLine const before = m_bars[i - 1].closes;
        return !m_bars[i].part.empty() || before == BarLine::Double || before == BarLine::Final;
    }

    bool nextBeginsEnding(BarIndex i) const
    {
        return i + 1 < m_stretch.to && !m_bars[i + 1].endings.empty();
    }

    // How often the section that closes after bar `last` is played: as its sign says, or as
    // often as its endings ask.
    int timesOfSection(BarIndex last) const
    {
        int times = m_bars[last].repeatCloses ? m_bars[last].timesPlayed : 1;
        for (BarIndex i = m_start; i <= last; ++i)
            times = std::max(times, highest(m_bars[i].endings));
        for (BarIndex i = last + 1; i < m_stretch.to && !m_bars[i].endings.empty();
             i = endOfEnding(m_bars, i, m_stretch.to) + 1)
            times = std::max(times, highest(m_bars[i].endings));
        return times;
    }

    // Whether the bar before an ending lets this pass go on into it: ":|2" with nothing
    // under 1.
    bool goesOnIntoEnding(BarIndex i) const
    {
        return !m_inEnding && nextBeginsEnding(i) && holds(m_bars[i + 1].endings, m_pass);
    }

    // The bar that follows bar i on this pass. The end of an ending repeats even without a
    // repeat sign while later endings wait.
    BarIndex after(BarIndex i)
    {
        if (goesOnIntoEnding(i)) return i + 1;
        bool const leavesEnding = m_inEnding && endingEnds(m_bars, i, m_stretch.to);
        if (leavesEnding) m_inEnding = false;
        if (!leavesEnding && !m_bars[i].repeatCloses) return i + 1;
        if (m_pass < timesOfSection(i)) {
            ++m_pass;
            return m_start;
        }
        begin(i + 1, false);
        return i + 1;
    }

    Bars const& m_bars;
    Stretch m_stretch;
    BarIndex m_start;        // where a repeat goes back to
    int m_pass = 1;          // through the section at hand
    bool m_opened = false;   // the section began with a repeat sign
    bool m_inEnding = false; // inside an ending of this pass
};

struct Part {
    std::string name;
    Stretch stretch;
};

std::vector<Part> partsOf(Bars const& bars)
{
    std::vector<Part> parts;
    for (BarIndex const i : bars.indices()) {
        if (bars[i].part.empty()) continue;
        if (!parts.empty()) parts.back().stretch.to = i;
        parts.push_back({bars[i].part, {i, bars.beyond()}});
    }
    return parts;
}

bool isWrittenOrder(std::vector<Part> const& parts, std::vector<std::string> const& order)
{
    return std::equal(
        parts.begin(), parts.end(), order.begin(), order.end(),
        [](Part const& part, std::string const& name) { return part.name == name; });
}

bool isRepeated(Bars const& bars, Stretch stretch)
{
    return std::any_of(bars.from(stretch.from), bars.from(stretch.to),
                       [](Bar const& bar) { return bar.repeatCloses; });
}

// A part of the order, and how often in a row it has been named: 1 for the first.
struct Turn {
    Stretch stretch;
    int inRow = 1;
    bool lastInRow = true;
};

// The parts in the order they are named; names that no part carries are passed over.
std::vector<Turn> turnsOf(std::vector<Part> const& parts, std::vector<std::string> const& order)
{
    std::vector<Turn> turns;
    for (std::string const& name : order) {
        auto const part = std::find_if(parts.begin(), parts.end(),
                                       [&name](Part const& p) { return p.name == name; });
        if (part == parts.end()) continue;
        Turn turn{part->stretch, 1, true};
        if (!turns.empty() && turns.back().stretch.from == turn.stretch.from) {
            turns.back().lastInRow = false;
            turn.inRow = turns.back().inRow + 1;
        }
        turns.push_back(turn);
    }
    return turns;
}

// An order that names a repeated part twice in a row ("AABB") spells its repeats out.
bool spellsRepeatsOut(Bars const& bars, std::vector<Turn> const& turns)
{
    return std::any_of(turns.begin(), turns.end(), [&bars](Turn const& turn) {
        return turn.inRow > 1 && isRepeated(bars, turn.stretch);
    });
}

// The stretch once through, repeat signs passed over. Each turn in a row takes its own ending,
// the last of them the last.
void playOnce(Bars const& bars, Turn const& turn, std::vector<BarIndex>& order)
{
    int last = 1;
    for (BarIndex i = turn.stretch.from; i < turn.stretch.to; ++i)
        last = std::max(last, highest(bars[i].endings));
    int const pass = turn.lastInRow ? last : std::min(turn.inRow, last);
    for (BarIndex i = turn.stretch.from; i < turn.stretch.to; ++i) {
        if (!bars[i].endings.empty() && !holds(bars[i].endings, pass))
            i = endOfEnding(bars, i, turn.stretch.to);
        else
            order.push_back(i);
    }
}

std::vector<BarIndex> writtenOrder(Bars const& bars)
{
    base::Indices<BarIndex> const all = bars.indices();
    return {all.begin(), all.end()};
}

// Appends the turns in order. False when there would be too many bars.
bool playTurns(Bars const& bars, std::vector<Turn> const& turns, std::vector<BarIndex>& order)
{
    bool const spelledOut = spellsRepeatsOut(bars, turns);
    for (Turn const& turn : turns) {
        if (spelledOut)
            playOnce(bars, turn, order);
        else if (!Walk(bars, turn.stretch).run(order))
            return false;
        if (order.size() > mostPlayedBars) return false;
    }
    return true;
}

struct Order {
    std::vector<BarIndex> bars;
    bool jumps = false;
};

Order playedOrder(Tune const& tune)
{
    Stretch const whole{0, tune.bars.beyond()};
    std::vector<Part> const parts = partsOf(tune.bars);
    std::vector<Turn> turns = turnsOf(parts, tune.partOrder);
    std::vector<BarIndex> order;
    bool fits = false;
    if (turns.empty() || isWrittenOrder(parts, tune.partOrder)) {
        fits = Walk(tune.bars, whole).run(order);
    } else {
        // Bars before the first labelled part come first.
        if (BarIndex const first = parts.front().stretch.from; first > 0)
            turns.insert(turns.begin(), {{0, first}, 1, true});
        fits = playTurns(tune.bars, turns, order);
    }
    if (!fits) return {writtenOrder(tune.bars)};
    if (auto jumping = orderWithJump(tune, order)) return {std::move(*jumping), true};
    return {std::move(order)};
}

PlayedBars playedBars(Tune const& tune, Order const& order, Length& total)
{
    PlayedBars bars;
    base::List<BarIndex, int> passes(tune.bars.size(), 0);
    Moment at;
    for (BarIndex const i : order.bars) {
        bars.push_back({i, ++passes[i], at});
        at = at + tune.bars[i].length;
    }
    total = at - Moment{};
    return bars;
}

// Notes gathered in order, ties joined as they come.
class NoteGatherer {
public:
    void add(Note const& note, PlayedNote const& frame)
    {
        std::vector<std::size_t> stillTied;
        for (std::size_t i = 0; i < note.pitches.size(); ++i) {
            PlayedNote played = frame;
            played.pitch = note.pitches[i];
            played.ofChord = static_cast<int>(i);
            stillTied.push_back(joinedOrNew(played));
        }
        m_tied.clear();
        if (note.tied) m_tied = std::move(stillTied);
    }

    std::vector<PlayedNote> notes;

private:
    // Index of the note that now sounds: a tied one that is lengthened, or a new one.
    std::size_t joinedOrNew(PlayedNote const& played)
    {
        for (std::size_t i : m_tied)
            if (notes[i].pitch == played.pitch && notes[i].at + notes[i].held == played.at) {
                notes[i].held = notes[i].held + played.held;
                return i;
            }
        notes.push_back(played);
        return notes.size() - 1;
    }

    std::vector<std::size_t> m_tied; // indices of notes that sound on
};

} // namespace

Playing played(Tune const& tune)
{
    Playing playing;
    Order const order = playedOrder(tune);
    playing.jumps = order.jumps;
    playing.bars = playedBars(tune, order, playing.total);
    NoteGatherer gatherer;
    for (PlayedBarIndex const b : playing.bars.indices()) {
        PlayedBar const& bar = playing.bars[b];
        Notes const& notes = tune.bars[bar.bar].notes;
        for (NoteIndex const n : notes.indices())
            gatherer.add(notes[n], {bar.at + notes[n].at, notes[n].length, {}, b, n, 0});
    }
    playing.notes = std::move(gatherer.notes);
    return playing;
}

} // namespace tune
