#include "core/tune/playing.h"

#include "core/music/typedchord.h"

#include <algorithm>
#include <array>

namespace tune {

namespace {

using music::Chord;
using music::Length;

// The chord in force on the first and on the second time through.
using Governing = std::array<std::optional<Chord>, 2>;

std::vector<ChordMark> inOrder(std::vector<ChordMark> marks)
{
    std::stable_sort(marks.begin(), marks.end(),
                     [](ChordMark const& a, ChordMark const& b) { return a.at < b.at; });
    return marks;
}

void append(std::vector<ChordSpan>& spans, ChordSpan const& span)
{
    if (span.length.wholes > music::Rational(0)) spans.push_back(span);
}

// The spans of one bar on one pass, `governing` carried in and out.
std::vector<ChordSpan> spansOf(Bar const& bar, BarIndex index, std::optional<Chord>& governing,
                               int pass)
{
    std::vector<ChordSpan> spans;
    Length from;
    for (ChordMark const& mark : inOrder(bar.chords)) {
        if (mark.pass && *mark.pass != pass) continue;
        if (governing) append(spans, {index, from, mark.at - from, *governing, {}});
        from = mark.at;
        governing.reset();
        if (!isNoChord(mark.chord)) governing = mark.chord;
    }
    if (governing) append(spans, {index, from, bar.length - from, *governing, {}});
    return spans;
}

bool contains(std::vector<ChordSpan> const& spans, ChordSpan const& wanted)
{
    return std::find(spans.begin(), spans.end(), wanted) != spans.end();
}

// What both passes share stands once, the rest is marked with its pass.
std::vector<ChordSpan> merged(std::vector<ChordSpan> const& first,
                              std::vector<ChordSpan> const& second)
{
    std::vector<ChordSpan> spans;
    for (ChordSpan span : first) {
        if (!contains(second, span)) span.pass = 1;
        spans.push_back(span);
    }
    for (ChordSpan span : second) {
        if (contains(first, span)) continue;
        span.pass = 2;
        spans.push_back(span);
    }
    std::stable_sort(spans.begin(), spans.end(),
                     [](ChordSpan const& a, ChordSpan const& b) { return a.at < b.at; });
    return spans;
}

// What the endings after the first of a group begin with where they say nothing: the chord that
// opens the first, or else what stood before it.
class BeforeEndings {
public:
    void enter(Bar const& bar, Governing& governing)
    {
        if (!bar.endings.empty()) {
            if (m_inGroup) {
                governing = m_opening;
            } else {
                m_opening = governing;
                for (ChordMark const& mark : bar.chords)
                    if (mark.at == music::Length{} && !mark.pass && !isNoChord(mark.chord))
                        m_opening.fill(mark.chord);
            }
        }
        m_inGroup = !bar.endings.empty() || (m_inGroup && !m_left);
        m_left = bar.endingCloses || bar.repeatCloses;
    }

private:
    Governing m_opening;
    bool m_inGroup = false;
    bool m_left = false;
};

} // namespace

std::vector<ChordSpan> chordSpans(Tune const& tune)
{
    std::vector<ChordSpan> spans;
    Governing governing;
    BeforeEndings beforeEndings;
    for (BarIndex const i : tune.bars.indices()) {
        beforeEndings.enter(tune.bars[i], governing);
        auto const ofBar = merged(spansOf(tune.bars[i], i, governing[0], 1),
                                  spansOf(tune.bars[i], i, governing[1], 2));
        spans.insert(spans.end(), ofBar.begin(), ofBar.end());
    }
    return spans;
}

} // namespace tune
