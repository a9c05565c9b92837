#include "core/arrange/unfold.h"

#include "core/base/words.h"
#include "core/tune/jumps.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>

namespace arrange {

namespace {

using tune::BarIndex;
using tune::PlayedBarIndex;
using Place = std::pair<BarIndex, music::Length>; // bar and time

// Bars of which a position is not played on every pass, and places that have two positions.
std::set<BarIndex> differingBars(Arrangement const& arrangement, LastTime lastTime)
{
    std::map<BarIndex, std::set<int>> passesOfBar;
    for (tune::PlayedBar const& bar : arrangement.playing.bars)
        passesOfBar[bar.bar].insert(bar.pass);
    std::map<Place, std::vector<ArrangedPosition const*>> here;
    for (ArrangedPosition const& p : arrangement.positions)
        here[{p.position.bar, p.position.at}].push_back(&p);
    std::set<BarIndex> out;
    for (auto const& [place, positions] : here) {
        std::set<int> passes;
        for (ArrangedPosition const* p : positions)
            for (Occurrence const& played : p->position.played) passes.insert(played.pass);
        bool const apart = lastTime == LastTime::Always && positions.size() > 1;
        bool const alike =
            !apart &&
            std::all_of(positions.begin(), positions.end(), [&](ArrangedPosition const* p) {
                return p->voicing == positions.front()->voicing &&
                       p->position.chord == positions.front()->position.chord;
            });
        if (!alike || passes != passesOfBar[place.first]) out.insert(place.first);
    }
    return out;
}

// A stretch of the performance that is written as one: played bars from `first` to before
// `end`.
struct Stretch {
    PlayedBarIndex first = 0;
    PlayedBarIndex end = 0;
    bool folded = true;
    int time = 1; // of an unfolded section
    bool lastBarApart = false; // folded, with endings for its last bar
};

// The sections between repeat signs, with their endings: bars from `first` to before `end`.
struct Section {
    BarIndex first = 0;
    BarIndex end = 0;
};

bool endsSection(tune::Tune const& tune, BarIndex bar)
{
    BarIndex const next = bar + 1;
    if (next == tune.bars.size()) return true;
    tune::Bar const& here = tune.bars[bar];
    tune::Bar const& after = tune.bars[next];
    if (after.repeatOpens) return true;
    if (!after.endings.empty()) return false;
    return here.repeatCloses || (here.endingCloses && !here.repeatCloses);
}

std::vector<Section> sectionsOf(tune::Tune const& tune)
{
    std::vector<Section> out;
    BarIndex first = 0;
    for (BarIndex const bar : tune.bars.indices())
        if (endsSection(tune, bar)) {
            out.push_back({first, bar + 1});
            first = bar + 1;
        }
    return out;
}

// The section's turns, if it is played in one go: each turn begins where the bars step back.
std::optional<std::vector<Stretch>> turnsOf(Arrangement const& arrangement, Section section,
                                            PlayedBarIndex& next)
{
    auto const& bars = arrangement.playing.bars;
    std::vector<Stretch> turns;
    BarIndex last = section.end; // so that the first bar begins a turn
    for (; next < bars.beyond(); ++next) {
        BarIndex const bar = bars[next].bar;
        if (bar < section.first || bar >= section.end) break;
        if (bar <= last)
            turns.push_back({next, next, false, static_cast<int>(turns.size()) + 1});
        turns.back().end = next + 1;
        last = bar;
    }
    if (turns.empty()) return std::nullopt;
    return turns;
}

std::vector<Stretch> wholeTune(Arrangement const& arrangement)
{
    std::vector<Stretch> out;
    std::map<std::string, int> times;
    auto const& bars = arrangement.playing.bars;
    for (PlayedBarIndex const i : bars.indices()) {
        bool const stepsBack = i > 0 && bars[i].bar <= bars[i - 1].bar;
        bool const part = !arrangement.tune.bars[bars[i].bar].part.empty();
        if (out.empty() || stepsBack || part) out.push_back({i, i, false, bars[i].pass});
        out.back().end = i + 1;
    }
    return out;
}

// Whether the turns differ in nothing but the section's last bar on the last time through, so
// that two endings say it.
bool onlyEndDiffers(Arrangement const& arrangement, Section section,
                    std::vector<Stretch> const& turns, std::set<BarIndex> const& differing)
{
    BarIndex const last = section.end - 1;
    for (BarIndex bar = section.first; bar < section.end; ++bar) {
        if (!arrangement.tune.bars[bar].endings.empty()) return false;
        if (bar != last && differing.contains(bar)) return false;
    }
    for (Stretch const& turn : turns)
        if (arrangement.playing.bars[turn.end - 1].bar != last) return false;
    PlayedBarIndex const lastPlayed = turns.back().end - 1;
    return std::all_of(arrangement.positions.begin(), arrangement.positions.end(),
                       [&](ArrangedPosition const& p) {
                           auto const& played = p.position.played;
                           bool const atEnd = std::any_of(
                               played.begin(), played.end(), [&](Occurrence const& when) {
                                   return when.playedBar == lastPlayed;
                               });
                           return p.position.bar != last ||
                                  played.size() == (atEnd ? 1 : turns.size() - 1);
                       });
}

// The whole performance in stretches.
std::vector<Stretch> stretchesOf(Arrangement const& arrangement, LastTime lastTime)
{
    std::set<BarIndex> const differing = differingBars(arrangement, lastTime);
    if (!arrangement.tune.partOrder.empty()) return wholeTune(arrangement);
    std::vector<Stretch> out;
    PlayedBarIndex next = 0;
    for (Section const section : sectionsOf(arrangement.tune)) {
        auto const turns = turnsOf(arrangement, section, next);
        if (!turns) return wholeTune(arrangement);
        bool const differs = std::any_of(differing.begin(), differing.end(), [&](BarIndex bar) {
            return section.first <= bar && bar < section.end;
        });
        Stretch const whole{turns->front().first, turns->back().end, true, 1};
        if (differs && turns->size() > 1 &&
            onlyEndDiffers(arrangement, section, *turns, differing)) {
            out.push_back(whole);
            out.back().lastBarApart = true;
        } else if (differs && turns->size() > 1)
            out.insert(out.end(), turns->begin(), turns->end());
        else
            out.push_back(whole);
    }
    if (next != arrangement.playing.bars.beyond()) return wholeTune(arrangement);
    return out;
}

class Unfolding {
public:
    Unfolding(Arrangement const& folded, LastTime lastTime)
        : m_folded(folded), m_lastTime(lastTime)
    {
    }

    Unfolded made()
    {
        m_out.arrangement = m_folded;
        m_out.arrangement.tune.bars.clear();
        m_out.arrangement.tune.partOrder.clear();
        m_out.arrangement.playing.jumps = false;
        m_barOfPlayed.resize(m_folded.playing.bars.size());
        for (Stretch const& stretch : stretchesOf(m_folded, m_lastTime))
            stretch.lastBarApart ? keepWithEndings(stretch)
            : stretch.folded     ? keep(stretch)
                                 : writeOut(stretch);
        Arrangement& out = m_out.arrangement;
        out.tune.bars.back().closes = tune::BarLine::Final;
        tune::numberBars(out.tune.bars);
        base::List<BarIndex, int> passes(out.tune.bars.size(), 0);
        for (tune::PlayedBarIndex const i : out.playing.bars.indices()) {
            tune::PlayedBar& played = out.playing.bars[i];
            played.bar = m_barOfPlayed[i];
            played.pass = ++passes[played.bar];
        }
        placePositions();
        moveWritten(m_folded.rightFingers, out.rightFingers);
        moveWritten(m_folded.added, out.added);
        moveWritten(m_folded.handRemarks, out.handRemarks);
        moveWritten(m_folded.gaveWay, out.gaveWay);
        moveGroups();
        return std::move(m_out);
    }

private:
    void keep(Stretch const& stretch)
    {
        std::map<BarIndex, BarIndex> newBar;
        BarIndex last = 0;
        for (PlayedBarIndex i = stretch.first; i < stretch.end; ++i) {
            BarIndex const bar = m_folded.playing.bars[i].bar;
            newBar[bar] = 0;
            last = std::max(last, bar);
        }
        // Bars that are never played, as a third ending, stay where they stand.
        for (BarIndex bar = newBar.begin()->first; bar <= last; ++bar) {
            newBar[bar] = m_out.bars.beyond();
            add(bar, m_folded.tune.bars[bar]);
        }
        for (PlayedBarIndex i = stretch.first; i < stretch.end; ++i)
            m_barOfPlayed[i] = newBar[m_folded.playing.bars[i].bar];
    }

    // The section's last bar stands twice, in a first and a second ending.
    void keepWithEndings(Stretch const& stretch)
    {
        BarIndex const last = m_folded.playing.bars[stretch.end - 1].bar;
        int times = 0;
        for (PlayedBarIndex i = stretch.first; i < stretch.end; ++i)
            times += m_folded.playing.bars[i].bar == last;
        keep(stretch);
        tune::Bar& first = m_out.arrangement.tune.bars.back();
        tune::Bar second = first;
        for (int time = 1; time < times; ++time) first.endings.push_back(time);
        first.repeatCloses = true;
        first.endingCloses = true;
        second.endings = {times};
        second.repeatCloses = false;
        second.endingCloses = true;
        second.part.clear();
        second.repeatOpens = false;
        keepChordsOf(second, times);
        m_barOfPlayed[stretch.end - 1] = m_out.bars.beyond();
        add(last, std::move(second));
    }

    void writeOut(Stretch const& stretch)
    {
        for (PlayedBarIndex i = stretch.first; i < stretch.end; ++i) {
            BarIndex const index = m_folded.playing.bars[i].bar;
            tune::Bar bar = m_folded.tune.bars[index];
            bar.repeatOpens = false;
            bar.repeatCloses = false;
            bar.endings.clear();
            bar.endingCloses = false;
            if (m_folded.playing.jumps) tune::dropWayMarks(bar);
            if (bar.closes == tune::BarLine::Final) bar.closes = tune::BarLine::Double;
            if (i + 1 == stretch.end && bar.closes == tune::BarLine::Single)
                bar.closes = tune::BarLine::Double;
            if (stretch.time > 1 && i == stretch.first) nameTime(bar, stretch.time);
            keepChordsOf(bar, m_folded.playing.bars[i].pass);
            m_barOfPlayed[i] = m_out.bars.beyond();
            add(index, std::move(bar));
        }
    }

    // "A 2", or words where the section has no name.
    static void nameTime(tune::Bar& bar, int time)
    {
        if (bar.part.empty())
            bar.annotations.insert(bar.annotations.begin(),
                                   {{},
                                    time == 2   ? base::said("second time")
                                    : time == 3 ? base::said("third time")
                                                : base::say("time {}", time)});
        else
            bar.part += ' ' + std::to_string(time);
    }

    // Chords that stand on this pass only; a second time's takes the place of the first's.
    static void keepChordsOf(tune::Bar& bar, int pass)
    {
        std::erase_if(bar.chords, [pass](tune::ChordMark const& mark) {
            return !tune::standsOn(mark.pass, pass);
        });
        for (tune::ChordMark& mark : bar.chords) mark.pass.reset();
    }

    void add(BarIndex index, tune::Bar bar)
    {
        m_copies[index].push_back(m_out.bars.beyond());
        m_out.arrangement.tune.bars.push_back(std::move(bar));
        m_out.bars.push_back(index);
    }

    // A position stands in the bar of its first time; where it is played in bars that are now
    // written apart, a copy stands in each.
    void placePositions()
    {
        Arrangement& out = m_out.arrangement;
        m_out.positions.resize(out.positions.size());
        for (PositionIndex const p : out.positions.indices()) {
            m_out.positions[p] = p;
            std::map<BarIndex, std::vector<Occurrence>> byBar;
            BarIndex const home = m_barOfPlayed[out.positions[p].position.played[0].playedBar];
            for (Occurrence played : out.positions[p].position.played) {
                BarIndex const bar = m_barOfPlayed[played.playedBar];
                played.pass = out.playing.bars[played.playedBar].pass;
                byBar[bar].push_back(played);
            }
            for (auto& [bar, played] : byBar) {
                PositionIndex index = p;
                if (bar != home) {
                    index = out.positions.beyond();
                    out.positions.push_back(out.positions[p]);
                    m_out.positions.push_back(p);
                }
                out.positions[index].position.bar = bar;
                out.positions[index].position.played = std::move(played);
                m_positionIn[{p, bar}] = index;
            }
        }
        out.given.clear();
        for (GivenNote const& given : m_folded.given)
            for (PositionIndex const p : m_out.positions.indices())
                if (m_out.positions[p] == given.position)
                    out.given.push_back({p, given.note, given.finger});
    }

    template<typename Written>
    void moveWritten(std::vector<Written> const& from, std::vector<Written>& to) const
    {
        to.clear();
        for (Written const& one : from)
            for (BarIndex bar : copiesOf(one.bar)) {
                to.push_back(one);
                to.back().bar = bar;
            }
        std::stable_sort(to.begin(), to.end(),
                         [](Written const& a, Written const& b) { return a.bar < b.bar; });
    }

    std::vector<BarIndex> copiesOf(BarIndex bar) const
    {
        auto const found = m_copies.find(bar);
        return found == m_copies.end() ? std::vector<BarIndex>{} : found->second;
    }

    // A group is written once for every copy of its first bar, as far as the bars of its other
    // notes follow there.
    void moveGroups()
    {
        auto& groups = m_out.arrangement.groups;
        groups.clear();
        for (PlacingGroup const& group : m_folded.groups)
            if (!group.notes.empty())
                for (BarIndex const first : copiesOf(group.notes.front().bar)) {
                    PlacingGroup copy = group;
                    copy.notes.clear();
                    BarIndex bar = first;
                    for (GroupNote note : group.notes) {
                        if (m_out.bars[bar] != note.bar) ++bar;
                        if (!m_out.bars.holds(bar)) break;
                        if (m_out.bars[bar] != note.bar || !moved(note, bar)) break;
                        copy.notes.push_back(note);
                    }
                    if (!copy.notes.empty()) groups.push_back(std::move(copy));
                }
        std::stable_sort(groups.begin(), groups.end(),
                         [](PlacingGroup const& a, PlacingGroup const& b) {
                             return std::pair(a.hand == harp::Side::Left, a.notes.front().bar) <
                                    std::pair(b.hand == harp::Side::Left, b.notes.front().bar);
                         });
    }

    // The note in a new bar; false where its position does not stand there.
    bool moved(GroupNote& note, BarIndex bar) const
    {
        note.bar = bar;
        if (!note.position) return true;
        auto const position = m_positionIn.find({*note.position, bar});
        if (position == m_positionIn.end()) return false;
        note.position = position->second;
        return true;
    }

    Arrangement const& m_folded;
    LastTime m_lastTime;
    Unfolded m_out;
    base::List<PlayedBarIndex, BarIndex> m_barOfPlayed; // new bar of every played bar
    std::map<BarIndex, std::vector<BarIndex>> m_copies; // of every folded bar, ascending
    std::map<std::pair<PositionIndex, BarIndex>, PositionIndex>
        m_positionIn; // by folded position and new bar
};

} // namespace

bool passesDiffer(Arrangement const& arrangement, LastTime lastTime)
{
    return !differingBars(arrangement, lastTime).empty();
}

Unfolded unfolded(Arrangement const& arrangement, LastTime lastTime)
{
    return Unfolding(arrangement, lastTime).made();
}

Arrangement asPrinted(Arrangement arrangement)
{
    if (!passesDiffer(arrangement)) return arrangement;
    return unfolded(arrangement).arrangement;
}

} // namespace arrange
