#include "tests/proposal/tasting.h"

#include "core/arrange/build.h"
#include "core/arrange/neighbours.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

namespace tasting {

namespace {

using arrange::Seam;
using arrange::Voicing;

bool fillsBar(arrange::Arrangement const& a, arrange::Position const& p)
{
    return p.span >= music::barLength(a.tune.bars[p.bar].meter);
}

// A third close above a root below C3.
bool hasLowThird(arrange::Arrangement const& a, Voicing const& voicing)
{
    constexpr int c3 = 48;
    return std::ranges::any_of(voicing.notes, [&](arrange::VoicedNote const& n) {
        return n.degree == 3 && music::midi(a.harp.string(voicing.rootString).open) < c3;
    });
}

int stringsSpanned(Voicing const& voicing)
{
    auto const [low, high] =
        std::ranges::minmax_element(voicing.notes, {}, &arrange::VoicedNote::string);
    return high->string - low->string + 1;
}

bool beginAlike(Voicing const& a, Voicing const& b)
{
    constexpr std::size_t alike = 2;
    return a.notes.size() >= alike && b.notes.size() >= alike &&
           a.notes[0].degree == b.notes[0].degree && a.notes[1].degree == b.notes[1].degree;
}

void compare(Keeping& keeping, Voicing const& a, Voicing const& b)
{
    ++keeping.all;
    if (a.pattern == b.pattern)
        ++keeping.kept;
    else if (beginAlike(a, b))
        ++keeping.family;
}

Seam seamAt(proposal::Proposal const& p, arrange::PositionIndex position)
{
    arrange::Scene const scene = proposal::sceneOf(p);
    auto const& positions = p.lattice.positions;
    auto const longest = arrange::longestNote(scene.playing);
    arrange::View const before = arrange::viewOf(scene, positions[position - 1], longest);
    arrange::View const after = arrange::viewOf(scene, positions[position], longest);
    return arrange::neighboursOf(scene, positions[position - 1], before, positions[position],
                                 after)
        .seam;
}

std::vector<std::pair<std::string, int>> byNumber(Shapes const& shapes)
{
    std::vector<std::pair<std::string, int>> sorted(shapes.begin(), shapes.end());
    std::ranges::stable_sort(sorted,
                             [](auto const& a, auto const& b) { return a.second > b.second; });
    return sorted;
}

int sum(Shapes const& shapes)
{
    int all = 0;
    for (auto const& [name, count] : shapes) all += count;
    return all;
}

void printShapes(std::ostream& out, std::string const& what, Shapes const& shapes)
{
    constexpr double leastShare = 0.5;
    out << fmt::format("{} ({}):", what, sum(shapes));
    for (auto const& [name, count] : byNumber(shapes))
        if (share(shapes, {name}) >= leastShare)
            out << fmt::format(" {} {:.0f}%", name, share(shapes, {name}));
    out << '\n';
}

} // namespace

void add(Tasting& tasting, proposal::Proposal const& proposal)
{
    arrange::Arrangement const& a = proposal.arrangement;
    std::set<std::string> shapes;
    for (arrange::PositionIndex const i : a.positions.indices()) {
        auto const& [position, voicing, locked] = a.positions[i];
        bool const full = fillsBar(a, position);
        ++tasting.positions;
        ++(full ? tasting.inFullBars : tasting.inPartsOfBars)[voicing.pattern];
        std::string const meter = music::text(a.tune.bars[position.bar].meter);
        ++tasting.byMeter[meter + (full ? " bar" : " part")][voicing.pattern];
        ++tasting.byKey[music::shown(a.tune.key)][voicing.pattern];
        shapes.insert(voicing.pattern);
        tasting.shapes.insert(voicing.pattern);
        tasting.notes += voicing.notes.size();
        tasting.seconds += position.span.wholes.toDouble() * 60 / a.tempo.beatsPerMinute /
                           a.tempo.beat.wholes.toDouble();
        tasting.candidates += proposal.lattice.candidates[i].size();
        if (hasLowThird(a, voicing)) ++tasting.lowThirds;
        if (!voicing.notes.empty()) {
            ++tasting.sounding;
            tasting.strings += static_cast<std::size_t>(stringsSpanned(voicing));
            tasting.widest = std::max(tasting.widest, stringsSpanned(voicing));
        }
        if (i == 0) continue;
        Seam const seam = seamAt(proposal, i);
        if (seam == Seam::InPair || seam == Seam::Pairs)
            compare(tasting.inPhrases, a.positions[i - 1].voicing, voicing);
        if (seam == Seam::Phrases)
            compare(tasting.acrossPhrases, a.positions[i - 1].voicing, voicing);
    }
    ++tasting.last[a.positions.back().voicing.pattern];
    ++tasting.tunes;
    constexpr int fewPositions = 4;
    if (shapes.size() == 1 && a.positions.size() > fewPositions) ++tasting.ofOneShape;
}

double share(Shapes const& shapes, std::initializer_list<std::string_view> names)
{
    int const all = sum(shapes);
    int found = 0;
    for (auto const& [name, count] : shapes)
        if (std::ranges::find(names, name) != names.end()) found += count;
    return all == 0 ? 0 : 100.0 * found / all;
}

std::string commonest(Shapes const& shapes)
{
    return shapes.empty() ? std::string() : byNumber(shapes).front().first;
}

double keptShare(Keeping const& keeping)
{
    return keeping.all == 0 ? 0 : 100.0 * keeping.kept / keeping.all;
}

void print(std::ostream& out, Tasting const& t)
{
    out << fmt::format("{} tunes, {} refused, {} positions, {} candidates each\n", t.tunes,
                       t.refused, t.positions,
                       t.candidates / static_cast<std::size_t>(std::max(1, t.positions)));
    out << fmt::format("{:.2f} notes a second, {:.1f} strings on the average, {} at most, {} "
                       "shapes, {} low thirds, {} tunes of one shape\n",
                       t.notesASecond(), t.meanStrings(), t.widest, t.shapes.size(),
                       t.lowThirds, t.ofOneShape);
    auto const keeping = [&](char const* where, Keeping const& k) {
        out << fmt::format("{}: shape kept {:.0f}%, begun alike {:.0f}%\n", where, keptShare(k),
                           k.all == 0 ? 0 : 100.0 * k.family / k.all);
    };
    keeping("inside phrases", t.inPhrases);
    keeping("from phrase to phrase", t.acrossPhrases);
    printShapes(out, "full bars", t.inFullBars);
    printShapes(out, "parts of bars", t.inPartsOfBars);
    printShapes(out, "last", t.last);
    for (auto const& [meter, shapes] : t.byMeter) printShapes(out, meter, shapes);
    for (auto const& [key, shapes] : t.byKey) printShapes(out, key, shapes);
}

void printPlan(std::ostream& out, std::string const& name, proposal::Proposal const& proposal)
{
    arrange::Arrangement const& a = proposal.arrangement;
    out << fmt::format("\n{}: {}, {}, {:.0f} beats a minute\n", name, music::text(a.tune.meter),
                       music::shown(a.tune.key), a.tempo.beatsPerMinute);
    for (arrange::PositionIndex const i : a.positions.indices()) {
        auto const& [position, voicing, locked] = a.positions[i];
        std::string const root = music::shown(
            harp::pitchAt(a.harp, a.levers, voicing.rootString, position.played.front().at));
        out << fmt::format(
            "bar {:2} pass {} {:6} {:14} {:24} {:4} |", a.tune.bars[position.bar].number,
            position.played.front().pass, music::shown(position.chord),
            voicing.pattern + (voicing.rolled ? " rolled" : ""), voicing.rhythm, root);
        std::vector<proposal::Variant> const variants = proposal::variants(proposal, i);
        int shown = 0;
        std::set<std::string> seen{voicing.pattern};
        for (proposal::Variant const& v : variants) {
            Voicing const& other = proposal.lattice.candidates[i][v.candidate].voicing;
            constexpr int mostShown = 3;
            if (shown == mostShown || !seen.insert(other.pattern).second) continue;
            out << fmt::format(" {} {}", other.pattern, v.regret);
            ++shown;
        }
        out << '\n';
    }
}

} // namespace tasting
