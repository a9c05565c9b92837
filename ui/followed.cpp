#include "ui/followed.h"

#include "core/pattern/layout.h"
#include "ui/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace ui {

namespace {

QString tr(char const* text) { return QCoreApplication::translate("Followed", text); }

bool comparable(ShapesThen const& then, proposal::Proposal const& now)
{
    auto const& candidates = now.lattice.candidates;
    if (then.voicings.size() != candidates.size()) return false;
    for (arrange::PositionIndex const i : candidates.indices()) {
        arrange::CandidateIndex const before = then.candidates[i];
        if (!(then.positions[i] == now.arrangement.positions[i].position)) return false;
        if (!candidates[i].holds(before)) return false;
        if (candidates[i][before].voicing.pattern != then.voicings[i].pattern ||
            candidates[i][before].voicing.rootString != then.voicings[i].rootString)
            return false;
    }
    return true;
}

} // namespace

ShapesThen shapesOf(proposal::Proposal const& proposal)
{
    ShapesThen then;
    then.candidates = proposal.solution.best.candidates;
    for (arrange::PositionIndex const i : proposal.arrangement.positions.indices()) {
        then.positions.push_back(proposal.arrangement.positions[i].position);
        if (proposal.arrangement.positions[i].locked) then.kept.insert(i);
        arrange::CandidateIndex const chosen = then.candidates[i];
        then.voicings.push_back(proposal.lattice.candidates[i][chosen].voicing);
    }
    return then;
}

std::vector<Followed> followedAfter(std::vector<Followed> const& soFar, ShapesThen const& then,
                                    proposal::Proposal const& now,
                                    std::optional<arrange::PositionIndex> chosen)
{
    if (!comparable(then, now)) return {};
    std::vector<Followed> all = soFar;
    for (arrange::PositionIndex const position : then.candidates.indices()) {
        bool const known = std::ranges::any_of(
            all, [position](Followed const& f) { return f.position == position; });
        bool const changed =
            then.candidates[position] != now.solution.best.candidates[position];
        // What was kept and is let change moved by the arranger's own hand.
        if (changed && !known && position != chosen && !then.kept.contains(position))
            all.push_back({position, then.candidates[position], then.voicings[position]});
    }
    std::erase_if(all, [&](Followed const& f) {
        return now.arrangement.positions[f.position].locked ||
               now.solution.best.candidates[f.position] == f.before;
    });
    std::ranges::sort(all, {}, &Followed::position);
    return all;
}

QString followedWords(arrange::Arrangement const& arrangement, Followed const& followed)
{
    auto const& now = arrangement.positions[followed.position].voicing;
    arrange::Voicing const& then = followed.shapeBefore;
    QString const place = positionTitle(arrangement, followed.position);
    auto const root = [&](arrange::Voicing const& voicing) {
        return QString::fromStdString(
            harp::stringName(arrangement.harp, voicing.rootString));
    };
    QString const name = patternWords(now);
    if (now.pattern != then.pattern)
        return tr("%1: %2 where %3 was").arg(place, name, patternWords(then));
    if (now.rootString != then.rootString)
        return tr("%1: %2 from %3 where it was from %4")
            .arg(place, name, root(now), root(then));
    if (now.rhythm != then.rhythm)
        return tr("%1: %2, %3 where it was %4")
            .arg(place, name, QString::fromStdString(pattern::rhythmWords(now.rhythm)),
                 QString::fromStdString(pattern::rhythmWords(then.rhythm)));
    return tr("%1: %2 played another way").arg(place, name);
}

} // namespace ui
