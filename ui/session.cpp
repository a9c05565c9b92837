#include "ui/session.h"

#include "core/pattern/own.h"
#include "core/proposal/asked.h"
#include "core/proposal/locks.h"
#include "core/proposal/relevel.h"

#include <QUndoCommand>

#include <algorithm>
#include <cstdlib>
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
           a.passes == b.passes && a.book.patterns == b.book.patterns &&
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
          m_after(std::move(after)), m_where(session.m_selected), m_kind(kind)
    {}
    int id() const override { return m_kind; }
    bool mergeWith(QUndoCommand const* next) override
    {
        m_after = static_cast<Edit const*>(next)->m_after;
        return true;
    }
    void undo() override { m_session.restore(m_before, m_where); }
    void redo() override
    {
        if (m_done) m_session.restore(m_after, m_where);
        m_done = true;
    }

private:
    Session& m_session;
    Brief m_before;
    Brief m_after;
    std::optional<int> m_where; // the position that was selected
    int m_kind;
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
    m_selected = answer->lattice.positions.empty() ? std::nullopt : std::optional(0);
    m_chosen.clear();
    m_brief = std::move(brief);
    m_proposal = *std::move(answer);
    look();
    emit opened();
    emit changed();
    emit selectionChanged();
    return true;
}

std::optional<int> Session::shown() const
{
    if (!m_selected) return std::nullopt;
    if (m_shown) return m_shown;
    return m_proposal->solution.best.candidates[static_cast<std::size_t>(*m_selected)];
}

bool Session::looksElsewhere() const
{
    if (!m_selected) return false;
    auto const& chosen = m_proposal->solution.best.candidates;
    return shown() != chosen[static_cast<std::size_t>(*m_selected)];
}

arrange::Arrangement Session::shownArrangement() const
{
    arrange::Arrangement shownOne = arrangement();
    if (auto const candidate = shown()) {
        auto const position = static_cast<std::size_t>(*m_selected);
        shownOne.positions[position].voicing =
            m_proposal->lattice.candidates[position][static_cast<std::size_t>(*candidate)]
                .voicing;
    }
    if (m_shown) placeHandsAfresh(shownOne);
    return shownOne;
}

// The other positions go back to what the solver chose before the hands are placed again.
void Session::placeHandsAfresh(arrange::Arrangement& arrangement) const
{
    for (std::size_t i = 0; i < arrangement.positions.size(); ++i) {
        if (static_cast<int>(i) == *m_selected) continue;
        auto const chosen = static_cast<std::size_t>(m_proposal->solution.best.candidates[i]);
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

void Session::select(int position)
{
    if (!isOpen() || position < 0 ||
        position >= static_cast<int>(arrangement().positions.size()))
        return;
    if (m_selected == position && !m_shown && !severalChosen()) return;
    m_chosen.clear();
    m_selected = position;
    look();
    emit selectionChanged();
}

void Session::selectBar(int bar)
{
    auto const& positions = arrangement().positions;
    if (m_selected && positions[static_cast<std::size_t>(*m_selected)].position.bar == bar)
        return;
    for (std::size_t i = 0; i < positions.size(); ++i)
        if (positions[i].position.bar == bar) return select(static_cast<int>(i));
}

std::vector<int> Session::chosen() const
{
    if (severalChosen()) return m_chosen;
    return m_selected ? std::vector{*m_selected} : std::vector<int>{};
}

void Session::chooseTogether(std::vector<int> positions)
{
    if (!isOpen()) return;
    std::ranges::sort(positions);
    positions.erase(std::unique(positions.begin(), positions.end()), positions.end());
    std::erase_if(positions, [&](int position) {
        return position < 0 || position >= static_cast<int>(arrangement().positions.size());
    });
    if (positions.empty()) return;
    bool const stays = m_selected && std::ranges::binary_search(positions, *m_selected);
    int const near = m_selected.value_or(0);
    int const next =
        stays ? near : *std::ranges::min_element(positions, {}, [near](int position) {
            return std::abs(position - near);
        });
    if (positions.size() == 1) return select(next);
    m_chosen = std::move(positions);
    m_selected = next;
    look();
    emit selectionChanged();
}

void Session::toggleChosen(int position)
{
    std::vector<int> positions = chosen();
    if (std::erase(positions, position) == 0) {
        positions.push_back(position);
        m_selected = position;
    } else if (positions.empty()) {
        return;
    }
    chooseTogether(std::move(positions));
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

void Session::show(int candidate)
{
    if (!m_selected || shown() == candidate) return;
    auto const& candidates =
        m_proposal->lattice.candidates[static_cast<std::size_t>(*m_selected)];
    if (candidate < 0 || candidate >= static_cast<int>(candidates.size())) return;
    m_shown = candidate;
    emit selectionChanged();
}

QString Session::placeName(int position) const
{
    auto const& at = arrangement().positions[static_cast<std::size_t>(position)].position;
    int const number = arrangement().tune.bars[static_cast<std::size_t>(at.bar)].number;
    return number > 0 ? tr("bar %1").arg(number) : tr("the pick-up bar");
}

Brief Session::withoutLocksAt(int position) const
{
    Brief next = m_brief;
    std::erase_if(next.locks, [&](Lock const& lock) {
        return proposal::positionOf(lock, m_proposal->lattice) == position;
    });
    return next;
}

bool Session::choose(int candidate)
{
    if (!m_selected) return false;
    auto const index = static_cast<std::size_t>(*m_selected);
    auto const& candidates = m_proposal->lattice.candidates[index];
    if (candidate < 0 || candidate >= static_cast<int>(candidates.size())) return false;
    arrange::Voicing const& voicing = candidates[static_cast<std::size_t>(candidate)].voicing;
    if (severalChosen()) {
        std::vector<ShapeAt> shapes;
        for (int const position : m_chosen) {
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
    if (m_proposal->lattice.locks[index] == candidate) return true;
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

arrange::Leaning Session::tasteFor(Brief const& brief) const
{
    return m_taste ? m_taste(brief.weights.style, brief.level.number) : arrange::Leaning();
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

// Left-hand snags have no ways to choose from.
bool Session::takeSnagWay(std::size_t snag, tune::Way way, bool alike)
{
    if (!isOpen() || snag >= m_proposal->snags.size()) return false;
    proposal::Snag const here = m_proposal->snags[snag];
    if (here.hand == harp::Side::Left) return false;
    if (!become(proposal::withSnagWay(*m_proposal, snag, way, alike),
                alike ? tr("a way round snags that are alike") : tr("a way round a snag")))
        return false;
    for (proposal::Snag const& now : m_proposal->snags)
        if (now.hand == here.hand && now.place == here.place && now.way != way)
            emit noticed(tr("That cannot be had here: %1.")
                             .arg(QString::fromStdString(proposal::snagLine(
                                 now, tune::barName(arrangement().tune, now.place.bar)))));
    return true;
}

bool Session::letSnagChange(std::size_t snag)
{
    if (!isOpen() || snag >= m_proposal->snags.size()) return false;
    return become(proposal::withoutSnagChoice(*m_proposal, snag), tr("let a snag change"));
}

bool Session::takeForWholeTune(proposal::WholeTuneWay const& way)
{
    if (!isOpen()) return false;
    QString const text = way.way == tune::Way::Key     ? tr("change of key")
                         : way.way == tune::Way::Level ? tr("change of level")
                                                       : tr("change of tempo");
    if (!way.tried) return become(way.brief, text);
    follow(m_brief, way.brief);
    m_undo.push(new Edit(*this, m_brief, way.brief, text));
    take(way.brief, *way.tried);
    tellOfWaitingLocks();
    return true;
}

std::function<std::optional<arrange::Arrangement>()> Session::trial(std::size_t snag,
                                                                    tune::Way way) const
{
    if (!isOpen() || snag >= m_proposal->snags.size()) return [] { return std::nullopt; };
    Brief asked = proposal::withSnagWay(*m_proposal, snag, way, false);
    // It is heard in its place: in the key that is there, which need not be looked for again.
    if (m_proposal->moved.semitones == 0)
        asked.key = proposal::AsWritten{};
    else
        asked.key = m_proposal->arrangement.tune.key;
    return [propose = m_engine.propose,
            brief = std::move(asked)]() -> std::optional<arrange::Arrangement> {
        auto made = propose(brief);
        if (!made) return std::nullopt;
        return std::move(made->arrangement);
    };
}

Session::WholeTuneSearch Session::wholeTuneSearch() const
{
    if (!isOpen() || !m_engine.wholeTuneWays)
        return [](auto const&) { return std::vector<proposal::WholeTuneWay>(); };
    return [search = m_engine.wholeTuneWays,
            proposal = *m_proposal](std::function<bool()> const& wanted) {
        return search(proposal, wanted);
    };
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
    for (int const position : m_chosen)
        shapes.push_back(
            {position,
             position == *m_selected
                 ? *candidate
                 : m_proposal->solution.best.candidates[static_cast<std::size_t>(position)]});
    return chooseEverywhere(shapes, tr("%1 shapes kept").arg(shapes.size()));
}

bool Session::unlock()
{
    if (!m_selected) return false;
    std::vector<int> const positions = chosen();
    auto const isLocked = [&](int position) {
        return m_proposal->lattice.locks[static_cast<std::size_t>(position)].has_value();
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
    auto const& candidates =
        m_proposal->lattice.candidates[static_cast<std::size_t>(*m_selected)];
    for (std::size_t i = 0; i < candidates.size(); ++i)
        if (candidates[i].voicing.notes.empty()) return choose(static_cast<int>(i));
    emit noticed(
        tr("The left hand cannot rest in %1, because a rest is not among the shapes there.")
            .arg(placeName(*m_selected)));
    return false;
}

bool Session::setHarp(harp::Harp harp)
{
    Brief next = m_brief;
    next.harp = std::move(harp);
    return become(std::move(next), tr("change of harp"));
}

bool Session::setHand(harp::HandModel hand)
{
    Brief next = m_brief;
    next.hand = std::move(hand);
    return become(std::move(next), tr("change of hand"));
}

bool Session::setLevel(harp::Level level)
{
    if (!isOpen()) {
        Brief next = m_brief;
        next.level = std::move(level);
        return become(std::move(next), {});
    }
    Proposal now = *m_proposal;
    Brief there = m_brief;
    there.level = level;
    now.brief.leaning = tasteFor(there);
    auto made = proposal::atLevel(now, level);
    if (!made) {
        emit refused(made.error());
        return false;
    }
    Brief next = made->proposal.brief;
    follow(m_brief, next);
    m_undo.push(new Edit(*this, m_brief, next, tr("level %1").arg(level.number)));
    take(std::move(next), std::move(made->proposal));
    QStringList told;
    for (std::string const& change : made->changes) told << QString::fromStdString(change);
    emit relevelled(level.number, told);
    tellOfWaitingLocks();
    return true;
}

bool Session::setStyle(arrange::Weights weights)
{
    Brief next = m_brief;
    next.weights = std::move(weights);
    next.leaning = tasteFor(next);
    return become(std::move(next), tr("change of manner"));
}

bool Session::setLeaning(arrange::Leaning const& leaning)
{
    Brief next = m_brief;
    next.leaning = leaning;
    return become(std::move(next), tr("use of your taste"));
}

bool Session::setKey(proposal::KeyWish key)
{
    Brief next = m_brief;
    next.key = key;
    return become(std::move(next), tr("change of key"));
}

bool Session::setTempo(std::optional<double> quartersPerMinute)
{
    Brief next = m_brief;
    next.quartersPerMinute = quartersPerMinute;
    return become(std::move(next), tr("change of tempo"));
}

bool Session::setRightHand(proposal::RightHand right)
{
    Brief next = m_brief;
    next.right = right;
    return become(std::move(next), tr("change of the right hand"));
}

bool Session::setFinger(arrange::SetFinger const& finger)
{
    Brief next = withoutFingerAt(finger);
    next.fingers.push_back(finger);
    if (!become(std::move(next), tr("finger %1").arg(finger.finger))) return false;
    if (!m_proposal->unkeptFingers.empty())
        emit noticed(tr("The hand cannot be placed like that. The finger you chose will be "
                        "used when it can be."));
    return true;
}

bool Session::freeFinger(arrange::SetFinger const& finger)
{
    Brief next = withoutFingerAt(finger);
    if (next.fingers.size() == m_brief.fingers.size()) return false;
    return become(std::move(next), tr("finger as suggested"));
}

Brief Session::withoutFingerAt(arrange::SetFinger const& finger) const
{
    Brief next = m_brief;
    std::erase_if(next.fingers, [&](arrange::SetFinger set) {
        set.finger = finger.finger;
        return set == finger;
    });
    return next;
}

bool Session::setPasses(proposal::Passes passes)
{
    Brief next = m_brief;
    next.passes = passes;
    return become(std::move(next), tr("shapes on the repeats"));
}

bool Session::wishLever(int string, harp::Lever lever)
{
    if (!isOpen()) return false;
    harp::Harp const& harp = arrangement().harp;
    music::Pitch const open = harp.string(string).open;
    Brief next = m_brief;
    std::erase_if(next.leverWishes, [&](harp::LeverWish const& wish) {
        return wish.letter == open.letter && wish.octave == open.octave;
    });
    next.leverWishes.push_back({open.letter, open.octave, lever});
    QString const name = QString::fromStdString(harp::stringName(harp, string));
    return become(std::move(next), lever == harp::Lever::Up ? tr("lever of %1 up").arg(name)
                                                            : tr("lever of %1 down").arg(name));
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

bool Session::setPlayer(harp::Harp harp, harp::HandModel hand, harp::Level level,
                        QString const& text)
{
    Brief next = m_brief;
    next.harp = std::move(harp);
    next.hand = std::move(hand);
    next.level = std::move(level);
    return become(std::move(next), text);
}

// The harp and hand of that time are the document's, not those of the next tune.
bool Session::goBackTo(Brief brief, QString const& text)
{
    m_following = false;
    bool const done = become(std::move(brief), text);
    m_following = true;
    return done;
}

bool Session::setWords(tune::PageWords words)
{
    if (tune::pageWords(m_brief.tune) == words) return true;
    Brief next = m_brief;
    next.tune = tune::withWords(std::move(next.tune), std::move(words));
    return become(std::move(next), tr("title and notes"));
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
    done(*std::move(answer), tr("“%1” in %2").arg(name, placeName(*m_selected)));
    if (several) {
        choose(m_proposal->solution.best.candidates[static_cast<std::size_t>(*m_selected)]);
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

bool Session::setSlider(arrange::Slider const& slider, int percent)
{
    Brief next = m_brief;
    next.sliders = arrange::withSlider(std::move(next.sliders), slider, percent);
    if (next.sliders == m_brief.sliders) return true;
    int const kind = static_cast<int>(qHash(QString::fromStdString(slider.id)) & 0x7fffffff);
    return become(std::move(next), tr("slider %1").arg(QString::fromStdString(slider.name)),
                  kind);
}

bool Session::resetSliders()
{
    if (m_brief.sliders.empty()) return true;
    Brief next = m_brief;
    next.sliders.clear();
    return become(std::move(next), tr("sliders to the middle"));
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
    done(std::move(answer), tr("another setting"));
    emit noticed(words);
    return true;
}

bool Session::bestTake()
{
    if (!isOpen() || m_brief.take == 0) return isOpen();
    done(proposal::withTake(*m_proposal, 0), tr("the best setting"));
    return true;
}

// An edit whose answer is known already.
void Session::done(Proposal answer, QString const& text)
{
    Brief next = answer.brief;
    m_undo.push(new Edit(*this, m_brief, next, text));
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
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        if (wanted[i] == proposal.lattice.locks[i]) continue;
        int const position = static_cast<int>(i);
        if (!wanted[i]) {
            proposal = m_engine.withoutLock(std::move(proposal), position);
            continue;
        }
        auto answer = m_engine.withChoice(std::move(proposal), position, *wanted[i], true);
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
    follow(m_brief, next);
    m_undo.push(new Edit(*this, m_brief, next, text, kind));
    take(std::move(next), *std::move(answer));
    if (more) tellOfWaitingLocks();
    return true;
}

void Session::restore(Brief brief, std::optional<int> where)
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
    int const before = m_proposal ? static_cast<int>(arrangement().positions.size()) : 0;
    m_proposal = std::move(proposal);
    int const positions = static_cast<int>(arrangement().positions.size());
    if (m_selected && *m_selected >= positions)
        m_selected = positions > 0 ? std::optional(positions - 1) : std::nullopt;
    if (!m_selected && positions > 0) m_selected = 0;
    // Other chords, or another one selected: those that were chosen are no longer meant.
    if (severalChosen() && (positions != before || !m_selected ||
                            !std::ranges::binary_search(m_chosen, *m_selected)))
        m_chosen.clear();
    look();
    emit changed();
    emit selectionChanged();
}

} // namespace ui
