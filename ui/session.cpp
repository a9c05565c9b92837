#include "ui/session.h"

#include "core/proposal/asked.h"
#include "core/proposal/locks.h"

#include <QUndoCommand>

#include <algorithm>
#include <utility>

namespace ui {

using proposal::Brief;
using proposal::Lock;
using proposal::Proposal;

namespace {

bool sameButLocks(Brief const& a, Brief const& b)
{
    return a.tune == b.tune && a.harp == b.harp && a.hand == b.hand && a.level == b.level &&
           a.weights.style == b.weights.style && a.weights.byTerm == b.weights.byTerm &&
           a.key == b.key && a.quartersPerMinute == b.quartersPerMinute &&
           a.passes == b.passes && a.form == b.form && a.book.patterns == b.book.patterns &&
           a.sliders == b.sliders && a.take == b.take && a.changes == b.changes &&
           a.leverWishes == b.leverWishes && a.snagChoices == b.snagChoices &&
           a.mending == b.mending && a.leaning == b.leaning;
}

} // namespace

// One step of the arranger: from one brief to the next. The first redo is the step itself,
// whose answer is already shown.
class Session::Edit final : public QUndoCommand {
public:
    // Edits of one kind, from 0 up, that follow each other become one.
    Edit(Session& session, Brief before, Brief after, QString const& text, int kind = -1)
        : QUndoCommand(text), m_session(session), m_before(std::move(before)),
          m_after(std::move(after)), m_where(session.m_selected), m_kind(kind),
          m_followed(session.m_following)
    {}
    int id() const override { return m_kind; }
    bool mergeWith(QUndoCommand const* next) override
    {
        m_after = static_cast<Edit const*>(next)->m_after;
        return true;
    }
    void undo() override { restore(m_before); }
    void redo() override
    {
        if (m_done) restore(m_after);
        m_done = true;
    }

private:
    void restore(Brief const& brief)
    {
        bool const follows = std::exchange(m_session.m_following, m_followed);
        m_session.restore(brief, m_where);
        m_session.m_following = follows;
    }

    Session& m_session;
    Brief m_before;
    Brief m_after;
    std::optional<arrange::PositionIndex> m_where; // the position that was selected
    int m_kind;
    bool m_followed; // it changed what new tunes are met with
    bool m_done = false;
};

Session::Session(Engine engine, Brief standing, QObject* parent)
    : QObject(parent), m_engine(std::move(engine)), m_standing(std::move(standing)),
      m_brief(m_standing)
{}

bool Session::open(tune::Tune tune)
{
    Brief next = m_standing;
    next.tune = std::move(tune);
    next.leaning = tasteFor(next);
    return open(std::move(next));
}

bool Session::open(Brief brief)
{
    auto answer = m_engine.propose(brief);
    if (!answer) {
        m_offersToOpen = true;
        emit turnedAway(QString::fromStdString(brief.tune.title));
        refuse(answer.error(), brief);
        return false;
    }
    m_undo.clear();
    m_selected.reset();
    if (!answer->lattice.positions.empty()) m_selected = arrange::PositionIndex(0);
    m_chosen.clear();
    m_brief = std::move(brief);
    m_proposal = *std::move(answer);
    look();
    emit opened();
    emit changed();
    emit selectionChanged();
    return true;
}

std::optional<arrange::CandidateIndex> Session::shown() const
{
    if (!m_selected) return std::nullopt;
    if (m_shown) return m_shown;
    return m_proposal->solution.best.candidates[*m_selected];
}

bool Session::looksElsewhere() const
{
    if (!m_selected) return false;
    auto const& chosen = m_proposal->solution.best.candidates;
    return shown() != chosen[*m_selected];
}

arrange::Arrangement Session::shownArrangement() const
{
    arrange::Arrangement shownOne = arrangement();
    if (auto const candidate = shown()) {
        arrange::PositionIndex const position = *m_selected;
        shownOne.positions[position].voicing =
            m_proposal->lattice.candidates[position][*candidate].voicing;
    }
    if (m_shown) placeHandsAfresh(shownOne);
    return shownOne;
}

// The other positions go back to what the solver chose before the hands are placed again.
void Session::placeHandsAfresh(arrange::Arrangement& arrangement) const
{
    for (arrange::PositionIndex const i : arrangement.positions.indices()) {
        if (i == m_selected) continue;
        arrange::CandidateIndex const chosen = m_proposal->solution.best.candidates[i];
        arrangement.positions[i].voicing = m_proposal->lattice.candidates[i][chosen].voicing;
    }
    hands::placeHands(arrangement, proposal::handWishes(m_brief));
}

void Session::look()
{
    m_shown.reset();
    m_variants = m_selected ? m_engine.variants(*m_proposal, *m_selected)
                            : std::vector<proposal::Variant>{};
}

bool Session::take(proposal::Remedy const& remedy)
{
    if (m_offersToOpen) return open(remedy.brief);
    return become(remedy.brief, QString::fromStdString(remedy.sentence).chopped(1));
}

// Says why, and what would help where core knows of something.
void Session::refuse(base::Fault const& fault, Brief const& brief)
{
    emit refused(fault);
    if (!m_engine.remedies) return;
    if (auto const remedies = m_engine.remedies(brief); !remedies.empty())
        emit offered(remedies);
}

// The harp and hand of that time are the document's, not those of the next tune.
bool Session::goBackTo(Brief brief, QString const& text)
{
    m_following = false;
    bool const done = become(std::move(brief), text);
    m_following = true;
    return done;
}

// An edit whose answer is known already.
void Session::step(Proposal answer, QString const& text)
{
    Brief next = answer.brief;
    step(std::move(next), std::move(answer), text);
}

void Session::step(Brief next, Proposal answer, QString const& text, int kind)
{
    follow(m_brief, next);
    m_undo.push(new Edit(*this, m_brief, next, text, kind));
    take(std::move(next), std::move(answer));
}

// Where only locks differ the lattice that is there is solved again; anything else asks for a
// whole new proposal.
base::Result<Proposal> Session::answered(Brief const& next) const
{
    if (m_proposal && sameButLocks(m_brief, next)) {
        bool const sameHands = m_brief.right == next.right && m_brief.fingers == next.fingers;
        if (sameHands) return relocked(*m_proposal, next.locks);
        return relocked(proposal::withHands(*m_proposal, next.right, next.fingers), next.locks);
    }
    return m_engine.propose(next);
}

base::Result<Proposal> Session::relocked(Proposal proposal,
                                         std::vector<Lock> const& locks) const
{
    auto const wanted =
        proposal::placed(locks, proposal.lattice, proposal.arrangement.harp, proposal.moved)
            .byPosition;
    for (arrange::PositionIndex const position : wanted.indices()) {
        if (wanted[position] == proposal.lattice.locks[position]) continue;
        if (!wanted[position]) {
            proposal = m_engine.withoutLock(std::move(proposal), position);
            continue;
        }
        auto answer =
            m_engine.withChoice(std::move(proposal), position, *wanted[position], true);
        if (!answer) return answer.error();
        proposal = *std::move(answer);
    }
    return proposal;
}

// A lock that the harp, hand or level no longer allows waits in the brief until it fits again.
void Session::tellOfWaitingLocks()
{
    auto const waiting = proposal::placed(m_brief.locks, m_proposal->lattice,
                                          m_proposal->arrangement.harp, m_proposal->moved)
                             .dropped.size();
    if (waiting == 1)
        emit noticed(tr("One shape that you kept cannot be played now. It will come back when "
                        "it can be played."));
    if (waiting > 1)
        emit noticed(tr("%1 shapes that you kept cannot be played now. They will come back "
                        "when they can be played.")
                         .arg(waiting));
}

bool Session::become(Brief next, QString const& text, int kind)
{
    if (!isOpen()) {
        follow(m_brief, next);
        m_brief = std::move(next);
        emit changed();
        return true;
    }
    auto answer = answered(next);
    if (!answer) {
        m_offersToOpen = false;
        refuse(answer.error(), next);
        return false;
    }
    bool const more = !sameButLocks(m_brief, next);
    step(std::move(next), *std::move(answer), text, kind);
    if (more) tellOfWaitingLocks();
    return true;
}

void Session::restore(Brief brief, std::optional<arrange::PositionIndex> where)
{
    auto answer = answered(brief);
    if (!answer) {
        emit refused(answer.error());
        return;
    }
    m_selected = where;
    follow(m_brief, brief);
    take(std::move(brief), *std::move(answer));
}

// What an edit changes of the things that hold for every tune, new tunes are met with; where it is
// undone, with what was before. The patterns of a tune stay with it: those to be kept have a book
// of their own.
void Session::follow(Brief const& from, Brief const& to)
{
    if (!m_following) return;
    bool moved = false;
    auto const take = [&](auto member) {
        if (from.*member == to.*member || m_standing.*member == to.*member) return;
        m_standing.*member = to.*member;
        moved = true;
    };
    take(&Brief::harp);
    take(&Brief::hand);
    take(&Brief::level);
    take(&Brief::right);
    take(&Brief::passes);
    take(&Brief::sliders);
    if (from.weights.style != to.weights.style) {
        m_standing.weights = to.weights;
        moved = true;
    }
    if (!std::holds_alternative<music::Key>(to.key)) take(&Brief::key);
    if (moved) emit standingChanged();
}

void Session::take(Brief brief, Proposal proposal)
{
    m_brief = std::move(brief);
    int const before = m_proposal ? arrangement().positions.size() : 0;
    m_proposal = std::move(proposal);
    int const positions = arrangement().positions.size();
    if (positions == 0)
        m_selected.reset();
    else
        m_selected = std::min(m_selected.value_or(arrange::PositionIndex(0)),
                              arrangement().positions.beyond() - 1);
    // Other chords, or another one selected: those that were chosen are no longer meant.
    if (severalChosen() && (positions != before || !m_selected ||
                            !std::ranges::binary_search(m_chosen, *m_selected)))
        m_chosen.clear();
    look();
    emit changed();
    emit selectionChanged();
}

} // namespace ui
