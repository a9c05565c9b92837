#include "core/tune/jumps.h"

#include "core/tune/endings.h"

#include <algorithm>
#include <array>
#include <set>

namespace tune {

namespace {

using music::Length;

constexpr std::array marks{
    WayMark{"D.C.", "D.C."},
    WayMark{"dacapo", "D.C."},
    WayMark{"D.S.", "D.S."},
    WayMark{"D.C.alfine", "D.C. al Fine"},
    WayMark{"D.C.alcoda", "D.C. al Coda"},
    WayMark{"D.S.alfine", "D.S. al Fine"},
    WayMark{"D.S.alcoda", "D.S. al Coda"},
    WayMark{"dacoda", "To Coda"},
    WayMark{"fine", "Fine"},
};

// The same in full, as some write them.
struct InFull {
    std::string_view words; // bare
    std::string_view mark;
};
constexpr std::array inFull{
    InFull{"dalsegno", "D.S."},
    InFull{"dacapoalfine", "D.C.alfine"},
    InFull{"dacapoalcoda", "D.C.alcoda"},
    InFull{"dalsegnoalfine", "D.S.alfine"},
    InFull{"dalsegnoalcoda", "D.S.alcoda"},
};

// Words as they are compared: small letters without blanks, points and brackets.
std::string bare(std::string_view words)
{
    std::string out;
    for (char c : words)
        if (std::string_view(" .\"<>").find(c) == std::string_view::npos)
            out += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return out;
}

// A mark and where it stands in its bar.
struct Placed {
    BarIndex bar = 0;
    Length at;
    std::string_view mark; // of `marks`, or "segno", "coda"
};

std::vector<Placed> placedMarks(Tune const& tune)
{
    std::vector<Placed> out;
    auto const add = [&](BarIndex bar, Length at, std::string_view text) {
        if (auto const known = wayMark(text))
            out.push_back({bar, at, known->mark});
        else if (bare(text) == "segno")
            out.push_back({bar, at, "segno"});
        else if (bare(text) == "coda")
            out.push_back({bar, at, "coda"});
    };
    for (BarIndex const i : tune.bars.indices()) {
        for (Note const& note : tune.bars[i].notes)
            for (std::string const& mark : note.marks) add(i, note.at, mark);
        for (Annotation const& words : tune.bars[i].annotations) add(i, words.at, words.text);
    }
    std::ranges::stable_sort(out, {}, [](Placed const& p) { return std::pair(p.bar, p.at); });
    return out;
}

bool isBack(Placed const& p) { return p.mark.starts_with("D.") || p.mark == "dacapo"; }

// The bar after which the mark counts.
BarIndex barBefore(Tune const& tune, Placed const& p, bool signAtStart)
{
    if (p.at != Length{} || p.bar == 0) return p.bar;
    Bar const& before = tune.bars[p.bar - 1];
    bool const sectionBegins = before.closes == BarLine::Double ||
                               before.closes == BarLine::Final || before.repeatCloses;
    return signAtStart || sectionBegins ? p.bar - 1 : p.bar;
}

// The bar that a sign stands at the head of; behind a bar's last note it is the next.
BarIndex barFrom(Tune const& tune, Placed const& p)
{
    return p.at < tune.bars[p.bar].length ? p.bar : p.bar + 1;
}

// A held end of a section before the jump ends the tune where no Fine does.
std::optional<BarIndex> heldEnd(Tune const& tune, BarIndex from, BarIndex before)
{
    for (BarIndex i = from; i < before; ++i) {
        Bar const& bar = tune.bars[i];
        bool const sectionEnds =
            bar.repeatCloses || bar.closes == BarLine::Double || bar.closes == BarLine::Final;
        bool const held =
            !bar.notes.empty() && std::ranges::count(bar.notes.back().marks, "fermata") > 0;
        if (sectionEnds && held) return i;
    }
    return std::nullopt;
}

struct Ways {
    BarIndex jumpAfter = 0;
    BarIndex backTo = 0;
    std::optional<BarIndex> endsAfter;
    std::optional<BarIndex> leavesAfter, codaFrom;
};

std::optional<Ways> waysOf(Tune const& tune)
{
    std::vector<Placed> const placed = placedMarks(tune);
    std::vector<Placed> back, fines, codas;
    std::optional<BarIndex> segno, toCoda;
    for (Placed const& p : placed) {
        if (isBack(p)) back.push_back(p);
        if (p.mark == "fine") fines.push_back(p);
        if (p.mark == "coda") codas.push_back(p);
        if (p.mark == "segno" && !segno) segno = p.bar;
        if (p.mark == "dacoda" && !toCoda) toCoda = barBefore(tune, p, false);
    }
    // The same words over one note and in a mark are one jump.
    auto const again = [&](Placed const& a, Placed const& b) { return a.bar == b.bar; };
    back.erase(std::unique(back.begin(), back.end(), again), back.end());
    if (back.size() != 1) return std::nullopt;
    Ways ways;
    ways.jumpAfter = barBefore(tune, back.front(), false);
    bool const toSign = back.front().mark.starts_with("D.S.");
    if (toSign && !segno) return std::nullopt;
    if (toSign) ways.backTo = *segno;
    if (ways.backTo > ways.jumpAfter) return std::nullopt;
    bool const byCoda = back.front().mark.ends_with("coda") || fines.empty();
    if (byCoda && !codas.empty()) {
        if (!toCoda && codas.size() > 1) toCoda = barBefore(tune, codas.front(), true);
        BarIndex const coda = barFrom(tune, codas.back());
        if (!toCoda || coda <= ways.jumpAfter || coda >= tune.bars.size()) return std::nullopt;
        ways.leavesAfter = toCoda;
        ways.codaFrom = coda;
    } else if (!fines.empty()) {
        ways.endsAfter = barBefore(tune, fines.front(), false);
        if (*ways.endsAfter < ways.backTo) return std::nullopt;
    } else {
        ways.endsAfter = heldEnd(tune, ways.backTo, ways.jumpAfter);
    }
    return ways;
}

// The bars once through, of neighbouring endings the last alone.
std::vector<BarIndex> onceThrough(Bars const& bars, BarIndex from)
{
    struct Bracket {
        BarIndex first, last;
    };
    std::vector<BarIndex> out;
    for (BarIndex i = from; i < bars.size();) {
        std::vector<Bracket> chain;
        while (i < bars.size() && !bars[i].endings.empty()) {
            BarIndex const last = endOfEnding(bars, i, bars.beyond());
            chain.push_back({i, last});
            i = last + 1;
        }
        if (chain.empty()) {
            out.push_back(i++);
            continue;
        }
        Bracket const played = *std::ranges::max_element(
            chain, {}, [&](Bracket const& b) { return highest(bars[b.first].endings); });
        for (BarIndex bar = played.first; bar <= played.last; ++bar) out.push_back(bar);
    }
    return out;
}

} // namespace

std::optional<WayMark> wayMark(std::string_view markOrWords)
{
    std::string asked = bare(markOrWords);
    for (InFull const& full : inFull)
        if (full.words == asked) asked = bare(full.mark);
    for (WayMark const& known : marks)
        if (bare(known.words) == asked || bare(known.mark) == asked) return known;
    return std::nullopt;
}

std::optional<std::vector<BarIndex>> orderWithJump(Tune const& tune,
                                                   std::vector<BarIndex> const& order)
{
    if (!tune.partOrder.empty()) return std::nullopt;
    auto const ways = waysOf(tune);
    if (!ways) return std::nullopt;
    auto const last = std::find(order.rbegin(), order.rend(), ways->jumpAfter);
    if (last == order.rend()) return std::nullopt;
    std::vector<BarIndex> out(order.begin(), last.base());
    for (BarIndex bar : onceThrough(tune.bars, ways->backTo)) {
        out.push_back(bar);
        if (bar == ways->endsAfter) break;
        if (bar == ways->leavesAfter) {
            auto const coda = onceThrough(tune.bars, *ways->codaFrom);
            out.insert(out.end(), coda.begin(), coda.end());
            break;
        }
    }
    std::set<BarIndex> const heard(out.begin(), out.end());
    bool const allHeard =
        std::ranges::all_of(order, [&](BarIndex bar) { return heard.contains(bar); });
    if (!allHeard) return std::nullopt;
    return out;
}

std::optional<BarIndex> barOfJump(Tune const& tune)
{
    for (Placed const& p : placedMarks(tune))
        if (isBack(p)) return p.bar;
    return std::nullopt;
}

void dropWayMarks(Bar& bar)
{
    auto const isWay = [](std::string const& text) {
        std::string const known = bare(text);
        return wayMark(text) || known == "segno" || known == "coda";
    };
    for (Note& note : bar.notes) std::erase_if(note.marks, isWay);
    std::erase_if(bar.annotations, [&](Annotation const& a) { return isWay(a.text); });
}

} // namespace tune
