#include "ui/lefthandediting.h"

#include "ui/words.h"

#include <QAction>

#include <algorithm>

namespace ui {

namespace {

QString chordsWords(std::size_t count)
{
    return count == 1 ? LeftHandEditing::tr("1 chord")
                      : LeftHandEditing::tr("%1 chords").arg(count);
}

// What of a copy was not laid anywhere.
QString leftOutWords(Laying const& laying)
{
    QString words;
    if (laying.unplayable == 1)
        words += LeftHandEditing::tr(" One shape cannot be played there.");
    if (laying.unplayable > 1)
        words +=
            LeftHandEditing::tr(" %1 shapes cannot be played there.").arg(laying.unplayable);
    if (laying.nowhere == 1)
        words += LeftHandEditing::tr(" One shape is left over: no chord begins in its place.");
    if (laying.nowhere > 1)
        words +=
            LeftHandEditing::tr(" %1 shapes are left over: no chord begins in their places.")
                .arg(laying.nowhere);
    return words;
}

} // namespace

LeftHandEditing::LeftHandEditing(Session& session, Actions const& actions,
                                 std::function<std::optional<Passage>()> passage,
                                 QObject* parent)
    : QObject(parent), m_session(session), m_actions(actions), m_passage(std::move(passage))
{
    auto const on = [this](QAction* action, auto what) {
        connect(action, &QAction::triggered, this, what);
    };
    on(actions.copyShape, [this] { copy(); });
    on(actions.pasteShape, [this] { paste(); });
    on(actions.swapShapes, [this] { swap(); });
    on(actions.everyChord, [this] { useAtEvery(Like::Chord); });
    on(actions.everyBar, [this] { useAtEvery(Like::Notes); });
    on(actions.everyClose, [this] { useAtEvery(Like::Close); });
    on(actions.chooseAll, [this] { chooseAll(); });
    on(actions.chooseLike, [this] { chooseLikeBars(); });
    on(actions.nextLike, [this] { nextLikeBar(); });
}

void LeftHandEditing::forget() { m_copied.reset(); }

void LeftHandEditing::enable(bool ready)
{
    bool const position = ready && m_session.selected();
    for (QAction* action :
         {m_actions.copyShape, m_actions.everyChord, m_actions.everyBar, m_actions.everyClose,
          m_actions.chooseAll, m_actions.chooseLike, m_actions.nextLike})
        action->setEnabled(position);
    for (QAction* action : {m_actions.pasteShape, m_actions.swapShapes})
        action->setEnabled(position && m_copied);
}

bool LeftHandEditing::ready() const { return m_session.isOpen() && m_session.selected(); }

tune::BarIndex LeftHandEditing::selectedBar() const
{
    return m_session.arrangement().positions[*m_session.selected()].position.bar;
}

// What is chosen, or else the passage, or else the selected chord.
void LeftHandEditing::copy()
{
    if (!ready()) return;
    arrange::Arrangement const shown = m_session.shownArrangement();
    std::vector<arrange::PositionIndex> positions = m_session.chosen();
    auto const passage = m_passage();
    if (positions.size() < 2 && passage)
        positions = positionsIn(shown, *passage, passOf(shown, *m_session.selected()));
    m_copied = copiedFrom(shown, positions);
    enable(true);
    if (m_copied->shapes.size() > 1)
        emit done(tr("The left hand of %1 is copied. Select the chord where it is to begin, "
                     "then paste.")
                      .arg(chordsWords(m_copied->shapes.size())));
}

void LeftHandEditing::lay(Laying const& laying, QString const& step, QString const& sentence)
{
    QString const leftOut = leftOutWords(laying);
    if (laying.shapes.empty())
        return emit told(tr("Nothing of the copy fits there.") + leftOut);
    if (!m_session.chooseAll(laying.shapes, step)) return;
    if (!leftOut.isEmpty())
        emit told(sentence + leftOut);
    else if (laying.shapes.size() > 1)
        emit done(sentence + tr(" Undo takes it back."));
}

void LeftHandEditing::paste()
{
    if (!ready() || !m_copied) return;
    proposal::Proposal const& proposal = m_session.proposal();
    auto const chosen = m_session.chosen();
    auto const passage = m_passage();
    bool const one = m_copied->shapes.size() == 1;
    if (one && chosen.size() == 1 && !passage) { // as if it were chosen from the list
        auto const& shape = m_copied->shapes.front().voicing;
        if (auto const candidate = candidateLike(proposal, chosen.front(), shape))
            m_session.choose(*candidate);
        else
            emit told(tr("%1 cannot be played at %2.")
                          .arg(patternWords(shape),
                               positionTitle(proposal.arrangement, chosen.front())));
        return;
    }
    int const pass = passOf(proposal.arrangement, *m_session.selected());
    std::vector<arrange::PositionIndex> over = chosen;
    if (chosen.size() == 1 && passage) over = positionsIn(proposal.arrangement, *passage, pass);
    if (over.empty()) return emit told(tr("There is no chord in these bars."));
    Laying const laying = one ? laidOver(proposal, over, *m_copied)
                              : laidFrom(proposal, over.front(), *m_copied,
                                         chosen.size() == 1 ? passage : std::nullopt);
    QString const count = chordsWords(laying.shapes.size());
    lay(laying, tr("left hand pasted"), tr("The left hand is pasted over %1.").arg(count));
}

void LeftHandEditing::swap()
{
    if (!ready() || !m_copied) return;
    proposal::Proposal const& proposal = m_session.proposal();
    arrange::PositionIndex const here = m_session.chosen().front();
    int const positions = proposal.arrangement.positions.size();
    if (std::ranges::any_of(m_copied->shapes,
                            [&](auto const& s) { return s.position >= positions; }))
        return emit told(tr("The tune has been changed since. Copy the left hand again."));
    auto const laying = swappedFrom(proposal, here, *m_copied);
    if (!laying)
        return emit told(
            tr("What was copied and what it is to be swapped with overlap. Select a "
               "chord further away."));
    QString const there =
        positionTitle(proposal.arrangement, m_copied->shapes.front().position);
    QString const title = positionTitle(proposal.arrangement, here);
    if (laying->shapes.empty())
        return emit told(tr("The shapes of %1 and %2 cannot be swapped: one of them cannot be "
                            "played in the other's place.")
                             .arg(there, title));
    lay(*laying, tr("%1 and %2 swapped").arg(there, title),
        tr("The left hands from %1 and from %2 are swapped.").arg(there, title));
}

void LeftHandEditing::useAtEvery(Like like)
{
    auto const selected = m_session.selected();
    auto const shown = m_session.shown();
    if (!ready() || !shown) return;
    proposal::Proposal const& proposal = m_session.proposal();
    arrange::PositionIndex const place = *selected;
    arrange::Voicing const shape = proposal.lattice.candidates[place][*shown].voicing;
    QString const chord = QString::fromStdString(
        music::shown(proposal.arrangement.positions[place].position.chord));
    QString const places = like == Like::Chord   ? chord
                           : like == Like::Notes ? tr("bar like this")
                                                 : tr("close");
    auto shapes = atEveryPlaceLike(proposal, *selected, shape, like);
    auto const others = shapes.size();
    shapes.push_back({*selected, *shown});
    if (others == 0)
        return emit told(like == Like::Chord
                             ? tr("There is no other %1 as long as this one that can have %2.")
                                   .arg(chord, patternWords(shape))
                             : tr("There is no other %1 that can have %2.")
                                   .arg(places, patternWords(shape)));
    if (m_session.chooseAll(shapes, tr("“%1” at every %2").arg(patternWords(shape), places)))
        emit done((others == 1
                       ? tr("%1 is kept here and in one more place. Undo takes it back.")
                       : tr("%1 is kept here and in %2 more places. Undo takes it back.")
                             .arg(QStringLiteral("%1"), QString::number(others)))
                      .arg(patternWords(shape)));
}

// The chords of the passage, or of the whole tune, every time they are played.
void LeftHandEditing::chooseAll()
{
    if (!ready()) return;
    arrange::Arrangement const& arrangement = m_session.arrangement();
    tune::BarIndex const last = arrangement.tune.bars.beyond() - 1;
    m_session.chooseTogether(
        positionsIn(arrangement, m_passage().value_or(Passage{0, last}), std::nullopt));
}

LikeBars LeftHandEditing::likeBars()
{
    LikeBars like = barsLike(m_session.arrangement().tune, selectedBar());
    if (like.bars.empty()) emit told(tr("No other bar has these chords."));
    return like;
}

void LeftHandEditing::chooseLikeBars()
{
    if (!ready()) return;
    LikeBars const like = likeBars();
    if (like.bars.empty()) return;
    arrange::Arrangement const& arrangement = m_session.arrangement();
    std::vector<tune::BarIndex> bars = like.bars;
    bars.push_back(selectedBar());
    std::vector<arrange::PositionIndex> positions;
    for (tune::BarIndex const bar : bars)
        for (arrange::PositionIndex const position :
             positionsIn(arrangement, {bar, bar}, std::nullopt))
            positions.push_back(position);
    auto const count = bars.size();
    m_session.chooseTogether(std::move(positions));
    emit done(like.sameNotes
                  ? tr("%1 bars have the same tune and chords. They are chosen together.")
                        .arg(count)
                  : tr("%1 bars have the same chords, under other notes. They are chosen "
                       "together.")
                        .arg(count));
}

void LeftHandEditing::nextLikeBar()
{
    if (!ready()) return;
    LikeBars const like = likeBars();
    if (like.bars.empty()) return;
    auto next = std::ranges::upper_bound(like.bars, selectedBar());
    tune::BarIndex const bar = next == like.bars.end() ? like.bars.front() : *next;
    arrange::Arrangement const& arrangement = m_session.arrangement();
    auto const positions =
        positionsIn(arrangement, {bar, bar}, passOf(arrangement, *m_session.selected()));
    if (!positions.empty()) m_session.select(positions.front());
}

} // namespace ui
