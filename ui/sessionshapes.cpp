#include "ui/session.h"

#include "core/pattern/own.h"
#include "core/proposal/asked.h"
#include "core/proposal/locks.h"

#include <algorithm>
#include <cstdlib>

namespace ui {

using proposal::Brief;
using proposal::Lock;
using proposal::Proposal;

void Session::select(arrange::PositionIndex position)
{
    if (!isOpen() || !arrangement().positions.holds(position)) return;
    if (m_selected == position && !m_shown && !severalChosen()) return;
    m_chosen.clear();
    m_selected = position;
    look();
    emit selectionChanged();
}

void Session::selectBar(tune::BarIndex bar)
{
    auto const& positions = arrangement().positions;
    if (m_selected && positions[*m_selected].position.bar == bar) return;
    for (arrange::PositionIndex const i : positions.indices())
        if (positions[i].position.bar == bar) return select(i);
}

std::vector<arrange::PositionIndex> Session::chosen() const
{
    if (severalChosen()) return m_chosen;
    return m_selected ? std::vector{*m_selected} : std::vector<arrange::PositionIndex>{};
}

void Session::chooseTogether(std::vector<arrange::PositionIndex> positions)
{
    if (!isOpen()) return;
    std::ranges::sort(positions);
    positions.erase(std::unique(positions.begin(), positions.end()), positions.end());
    std::erase_if(positions, [&](arrange::PositionIndex position) {
        return !arrangement().positions.holds(position);
    });
    if (positions.empty()) return;
    bool const stays = m_selected && std::ranges::binary_search(positions, *m_selected);
    auto const near = m_selected.value_or(arrange::PositionIndex(0));
    arrange::PositionIndex const next =
        stays
            ? near
            : *std::ranges::min_element(positions, {}, [near](arrange::PositionIndex position) {
                  return std::abs(position - near);
              });
    if (positions.size() == 1) return select(next);
    m_chosen = std::move(positions);
    m_selected = next;
    look();
    emit selectionChanged();
}

void Session::toggleChosen(arrange::PositionIndex position)
{
    std::vector<arrange::PositionIndex> positions = chosen();
    if (std::erase(positions, position) == 0) {
        positions.push_back(position);
        m_selected = position;
    } else if (positions.empty()) {
        return;
    }
    chooseTogether(std::move(positions));
}

void Session::show(arrange::CandidateIndex candidate)
{
    if (!m_selected || shown() == candidate) return;
    auto const& candidates = m_proposal->lattice.candidates[*m_selected];
    if (!candidates.holds(candidate)) return;
    m_shown = candidate;
    emit selectionChanged();
}

QString Session::placeName(arrange::PositionIndex position) const
{
    auto const& at = arrangement().positions[position].position;
    tune::Bar const& bar = arrangement().tune.bars[at.bar];
    int const number = bar.number;
    if (bar.role == tune::Role::Introduction) return tr("the introduction");
    return number > 0 ? tr("bar %1").arg(number) : tr("the pick-up bar");
}

Brief Session::withoutLocksAt(arrange::PositionIndex position) const
{
    Brief next = m_brief;
    std::erase_if(next.locks, [&](Lock const& lock) {
        return proposal::positionOf(lock, m_proposal->lattice) == position;
    });
    return next;
}

bool Session::choose(arrange::CandidateIndex candidate)
{
    if (!m_selected) return false;
    auto const& candidates = m_proposal->lattice.candidates[*m_selected];
    if (!candidates.holds(candidate)) return false;
    arrange::Voicing const& voicing = candidates[candidate].voicing;
    if (severalChosen()) {
        std::vector<ShapeAt> shapes;
        for (arrange::PositionIndex const position : m_chosen) {
            auto const like = position == *m_selected
                                  ? candidate
                                  : candidateLike(*m_proposal, position, voicing);
            if (like) shapes.push_back({position, *like});
        }
        auto const learnt = learning::choiceOf(*m_proposal, *m_selected, candidate);
        QString const text = voicing.notes.empty()
                                 ? tr("left hand rests in %1 places").arg(shapes.size())
                                 : tr("“%1” in %2 places")
                                       .arg(QString::fromStdString(voicing.pattern))
                                       .arg(shapes.size());
        if (!chooseEverywhere(shapes, text)) return false;
        if (learnt) emit chose(*learnt);
        return true;
    }
    if (m_proposal->lattice.locks[*m_selected] == candidate) return true;
    Brief next = withoutLocksAt(*m_selected);
    next.locks.push_back(proposal::lockFor(m_proposal->lattice, *m_selected, candidate,
                                           m_proposal->arrangement.harp, m_proposal->moved));
    QString const name = QString::fromStdString(voicing.pattern);
    auto const choice = learning::choiceOf(*m_proposal, *m_selected, candidate);
    if (!become(std::move(next), voicing.notes.empty()
                                     ? tr("left hand rests in %1").arg(placeName(*m_selected))
                                     : tr("“%1” in %2").arg(name, placeName(*m_selected))))
        return false;
    if (choice) emit chose(*choice);
    return true;
}

bool Session::chooseAll(std::vector<ShapeAt> const& shapes, QString const& text)
{
    if (!isOpen() || shapes.empty()) return false;
    Brief next = m_brief;
    for (ShapeAt const& shape : shapes) {
        std::erase_if(next.locks, [&](Lock const& lock) {
            return proposal::positionOf(lock, m_proposal->lattice) == shape.position;
        });
        next.locks.push_back(proposal::lockFor(m_proposal->lattice, shape.position,
                                               shape.candidate, m_proposal->arrangement.harp,
                                               m_proposal->moved));
    }
    return become(std::move(next), text);
}

// One step for all that are chosen.
bool Session::chooseEverywhere(std::vector<ShapeAt> const& shapes, QString const& text)
{
    auto const others = m_chosen.size() - shapes.size();
    if (shapes.empty() || !chooseAll(shapes, text)) return false;
    if (others == 1)
        emit noticed(tr("One of the chosen chords cannot have it and stays as it was."));
    if (others > 1)
        emit noticed(
            tr("%1 of the chosen chords cannot have it and stay as they were.").arg(others));
    return true;
}

bool Session::chooseRanked(int rank)
{
    if (rank < 0 || rank >= static_cast<int>(m_variants.size())) return false;
    return choose(m_variants[static_cast<std::size_t>(rank)].candidate);
}

bool Session::lockShown()
{
    auto const candidate = shown();
    if (!candidate || !severalChosen()) return candidate && choose(*candidate);
    std::vector<ShapeAt> shapes; // each keeps its own
    for (arrange::PositionIndex const position : m_chosen)
        shapes.push_back({position, position == *m_selected
                                        ? *candidate
                                        : m_proposal->solution.best.candidates[position]});
    return chooseEverywhere(shapes, tr("%1 shapes kept").arg(shapes.size()));
}

bool Session::unlock()
{
    if (!m_selected) return false;
    std::vector<arrange::PositionIndex> const positions = chosen();
    auto const isLocked = [&](arrange::PositionIndex position) {
        return m_proposal->lattice.locks[position].has_value();
    };
    if (std::ranges::none_of(positions, isLocked)) return false;
    Brief next = m_brief;
    std::erase_if(next.locks, [&](Lock const& lock) {
        auto const at = proposal::positionOf(lock, m_proposal->lattice);
        return at && std::ranges::binary_search(positions, *at);
    });
    return become(std::move(next), positions.size() == 1
                                       ? tr("let %1 change").arg(placeName(*m_selected))
                                       : tr("let %1 shapes change").arg(positions.size()));
}

bool Session::unlockAll()
{
    if (!isOpen() || m_brief.locks.empty()) return false;
    Brief next = m_brief;
    next.locks.clear();
    return become(std::move(next), tr("let all shapes change"));
}

bool Session::leaveEmpty()
{
    if (!m_selected) return false;
    auto const& candidates = m_proposal->lattice.candidates[*m_selected];
    for (arrange::CandidateIndex const i : candidates.indices())
        if (candidates[i].voicing.notes.empty()) return choose(i);
    emit noticed(
        tr("The left hand cannot rest in %1, because a rest is not among the shapes there.")
            .arg(placeName(*m_selected)));
    return false;
}

bool Session::usePattern(pattern::Pattern own)
{
    if (!m_selected) return false;
    Brief next = withoutLocksAt(*m_selected);
    pattern::WithOwn with = pattern::withOwn(std::move(next.book), std::move(own));
    next.book = std::move(with.book);
    auto answer = m_engine.propose(next);
    if (answer) answer = proposal::withPattern(*std::move(answer), *m_selected, with.name);
    if (!answer) {
        emit refused(answer.error());
        return false;
    }
    QString const name = QString::fromStdString(with.name);
    bool const several = severalChosen();
    if (several) m_undo.beginMacro(tr("“%1” in %2 places").arg(name).arg(m_chosen.size()));
    step(*std::move(answer), tr("“%1” in %2").arg(name, placeName(*m_selected)));
    if (several) {
        choose(m_proposal->solution.best.candidates[*m_selected]);
        m_undo.endMacro();
    }
    return true;
}

bool Session::addPattern(pattern::Pattern own)
{
    Brief next = m_brief;
    QString const name = QString::fromStdString(own.name);
    m_standing.book = pattern::withOwn(std::move(m_standing.book), own).book;
    next.book = pattern::withOwn(std::move(next.book), std::move(own)).book;
    if (next.book.patterns == m_brief.book.patterns) return true;
    return become(std::move(next), tr("your own pattern %1").arg(name));
}

bool Session::anotherTake()
{
    if (!isOpen()) return false;
    Proposal answer = proposal::withTake(*m_proposal, m_brief.take + 1);
    bool const more = answer.brief.take > m_brief.take;
    if (!more) {
        if (!bestTake()) return false;
        emit noticed(tr("There are no more settings that are clearly different, so this is the "
                        "best one again."));
        return true;
    }
    QString const words = QString::fromStdString(takeWords(*answer.take));
    step(std::move(answer), tr("another setting"));
    emit noticed(words);
    return true;
}

bool Session::bestTake()
{
    if (!isOpen() || m_brief.take == 0) return isOpen();
    step(proposal::withTake(*m_proposal, 0), tr("the best setting"));
    return true;
}

} // namespace ui
