#include "ui/listening.h"

#include "ui/comparing.h"
#include "ui/practicecard.h"
#include "ui/session.h"
#include "ui/transport.h"
#include "ui/words.h"

#include "core/perform/practice.h"

#include <QAction>

#include <algorithm>
#include <array>
#include <utility>

namespace ui {

namespace {

perform::Steps stepsOf(Practice const& practice)
{
    return {practice.from / 100.0, practice.to / 100.0, practice.by / 100.0, practice.every};
}

double tempoOfRound(std::vector<double> const& tempos, int round)
{
    auto const last = static_cast<int>(tempos.size()) - 1;
    return tempos[static_cast<std::size_t>(std::clamp(round, 0, last))];
}

} // namespace

Listening::Listening(Session& session, Actions const& actions, Transport& transport,
                     perform::DanceWays ways, QObject* parent)
    : QObject(parent), m_session(session), m_actions(actions), m_transport(transport),
      m_comparing(new Comparing(session, actions, transport, this)), m_ways(std::move(ways))
{
    joinActions();
    connect(&m_transport, &Transport::playClicked, this, &Listening::playOrStop);
    connect(&m_transport, &Transport::stopClicked, this, &Listening::stop);
    connect(&m_transport, &Transport::hearBarClicked, this, &Listening::hearSelected);
    connect(&m_transport, &Transport::fromHereClicked, m_actions.fromHere, &QAction::trigger);
    connect(&m_transport, &Transport::settingsChanged, this, &Listening::changeHearing);
    connect(&m_transport, &Transport::flipClicked, m_comparing, &Comparing::flip);
    connect(m_comparing, &Comparing::flipped, this, &Listening::hearCompared);
}

void Listening::joinActions()
{
    auto const on = [this](QAction* action, auto what) {
        connect(action, &QAction::triggered, this, what);
    };
    on(m_actions.heardTempo, [this] { keepHeardTempo(); });
    on(m_actions.ownTempo, [this] { m_session.setTempo(std::nullopt); });
    on(m_actions.playTune, [this] { playOrStop(); });
    on(m_actions.fromHere, [this] {
        if (auto const bar = selectedPlayedBar()) hear(*bar, std::nullopt);
    });
    on(m_actions.hearBar, [this] { hearSelected(); });
    on(m_actions.hearBetween, [this] { hearBetween(); });
    on(m_actions.phrase, [this] { choosePassage(phraseAround); });
    on(m_actions.part, [this] { choosePassage(partAround); });
    Transport* const transport = &m_transport;
    on(m_actions.loop, [transport] { transport->toggleLoop(); });
    on(m_actions.countIn, [transport] { transport->toggleCountIn(); });
    on(m_actions.left, [transport] { transport->toggleLeft(); });
    on(m_actions.right, [transport] { transport->toggleRight(); });
    on(m_actions.faster, [transport] { transport->stepTempo(+5); });
    on(m_actions.slower, [transport] { transport->stepTempo(-5); });
    on(m_actions.typeTempo, [transport] { transport->typeTempo(); });
    on(m_actions.practice, [transport] { transport->openPractice(); });
    PracticeCard* const card = transport->practiceCard();
    on(m_actions.barBefore, [card] { card->toggleBarBefore(); });
    on(m_actions.click, [card] { card->toggleClicks(); });
    on(m_actions.stepsUp, [card] { card->toggleFaster(); });
    on(m_actions.playAlong, [card] { card->toggleListens(); });
}

void Listening::enable(bool ready)
{
    m_ready = ready;
    bool const selected = ready && m_session.selected();
    for (QAction* action : {m_actions.hearBar, m_actions.fromHere, m_actions.phrase,
                            m_actions.part, m_actions.hearBetween})
        action->setEnabled(selected);
    for (QAction* action : {m_actions.playTune, m_actions.heardTempo, m_actions.soundFiles})
        action->setEnabled(ready);
    m_actions.ownTempo->setEnabled(ready && m_session.brief().quartersPerMinute);
    m_comparing->enable(ready);
}

void Listening::forget()
{
    m_comparing->forget();
    setPassage(std::nullopt);
}

void Listening::keepHeardTempo()
{
    double const own = quartersPerMinute(m_session.arrangement().tempo);
    if (m_session.setTempo(own * m_transport.tempoScale())) m_transport.resetTempo();
}

perform::Slowing Listening::slowing() const
{
    if (!m_slowing) return {};
    return perform::partOf(m_slowing->most, m_transport.practice().slowing / 100.0);
}

perform::Slowing Listening::slowingTold() const { return perform::told(m_ways, slowing()); }

perform::Hearing Listening::hearing() const
{
    perform::Hearing hearing;
    Practice const practice = m_transport.practice();
    hearing.tempoScale = m_transport.tempoScale();
    hearing.left = m_transport.hearsLeft();
    hearing.right = m_transport.hearsRight();
    hearing.countIn = m_transport.countsIn();
    hearing.barBefore = practice.barBefore;
    hearing.rollGap = practice.rollGapMs / 1000.0;
    hearing.added = !practice.tuneAlone;
    hearing.balance = practice.balance / 100.0;
    if (m_lilt) hearing.lilt = {*m_lilt, practice.lilt / 100.0};
    hearing.slowing = slowing();
    return hearing;
}

Audition Listening::auditionOf(arrange::Arrangement arrangement,
                               tune::PlayedBarIndex firstPlayedBar,
                               std::optional<tune::PlayedBarIndex> lastPlayedBar) const
{
    Audition audition{std::move(arrangement), hearing(), m_transport.loops(), false, {}};
    audition.hearing.firstPlayedBar = firstPlayedBar;
    audition.hearing.lastPlayedBar = lastPlayedBar;
    Practice const practice = m_transport.practice();
    audition.clicks = practice.clicks;
    if (practice.faster && audition.loop) {
        audition.tempos = perform::temposOf(stepsOf(practice));
        if (practice.waits) {
            audition.loop = false;
            audition.tempos = {tempoOfRound(audition.tempos, m_waited)};
        }
    }
    return audition;
}

void Listening::request(Audition audition)
{
    m_round = 0;
    m_practised = m_transport.practice();
    bool const same = m_heard &&
                      m_heard->hearing.firstPlayedBar == audition.hearing.firstPlayedBar &&
                      m_heard->hearing.lastPlayedBar == audition.hearing.lastPlayedBar;
    if (!same && std::exchange(m_waited, 0) > 0 && !audition.tempos.empty())
        audition.tempos = {perform::temposOf(stepsOf(m_practised)).front()};
    m_heard = std::move(audition);
    if (!m_heard->tempos.empty()) m_transport.showTempo(m_heard->tempos.front());
    emit playRequested(*m_heard);
}

void Listening::hear(tune::PlayedBarIndex firstPlayedBar,
                     std::optional<tune::PlayedBarIndex> lastPlayedBar)
{
    if (!m_session.isOpen()) return;
    request(auditionOf(m_comparing->heard(), firstPlayedBar, lastPlayedBar));
}

void Listening::hear(arrange::Arrangement arrangement, tune::PlayedBarIndex firstPlayedBar,
                     tune::PlayedBarIndex lastPlayedBar)
{
    request(auditionOf(std::move(arrangement), firstPlayedBar, lastPlayedBar));
}

void Listening::hearSelected()
{
    if (m_passage && m_session.isOpen())
        if (auto const played = playedPassage(m_session.arrangement().playing, *m_passage))
            return hear(played->first, played->last);
    if (auto const bar = selectedPlayedBar()) hear(*bar, *bar);
}

// The shape that is looked at in its place: the bar before, its own, the bar after. Nothing is
// kept.
void Listening::hearBetween()
{
    auto const bar = selectedPlayedBar();
    if (!bar) return;
    tune::PlayedBarIndex const last = m_session.arrangement().playing.bars.beyond() - 1;
    hear(std::max(tune::PlayedBarIndex(0), *bar - 1), std::min(last, *bar + 1));
}

void Listening::hearCompared()
{
    if (!m_playing || !m_heard) {
        if (m_passage) return hearSelected();
        return hearBetween();
    }
    m_heard->arrangement = m_comparing->heard();
    emit hearingChanged(*m_heard);
}

void Listening::playOrStop()
{
    if (m_playing)
        stop();
    else
        hear(0, std::nullopt);
}

void Listening::stop()
{
    if (m_playing)
        m_waited = -1; // the next time begins with the first step, see playbackStopped()
    emit stopRequested();
}

void Listening::changeHearing()
{
    m_actions.loop->setChecked(m_transport.loops());
    m_actions.countIn->setChecked(m_transport.countsIn());
    m_actions.left->setChecked(m_transport.hearsLeft());
    m_actions.right->setChecked(m_transport.hearsRight());
    Practice const practice = m_transport.practice();
    m_actions.barBefore->setChecked(practice.barBefore);
    m_actions.click->setChecked(practice.clicks);
    m_actions.stepsUp->setChecked(practice.faster);
    m_actions.playAlong->setChecked(practice.listens);
    if (!m_playing || !m_heard) return;
    perform::Hearing changed = hearing();
    changed.firstPlayedBar = m_heard->hearing.firstPlayedBar;
    changed.lastPlayedBar = m_heard->hearing.lastPlayedBar;
    changed.barBefore = m_heard->hearing.barBefore; // has been heard, or not
    m_heard->hearing = changed;
    bool const waits = practice.faster && practice.waits;
    m_heard->loop = m_transport.loops() && !waits;
    m_heard->clicks = practice.clicks;
    bool const steps = practice.faster && m_heard->loop;
    auto const stepped = [](Practice p) { // what the steps are made of
        return std::array{p.faster ? 1 : 0, p.from, p.to, p.by, p.every};
    };
    bool const kept = !m_heard->tempos.empty() && stepped(practice) == stepped(m_practised) &&
                      tempoOfRound(m_heard->tempos, m_round) == m_transport.tempoScale();
    if (!steps)
        m_heard->tempos.clear();
    else if (!kept)
        m_heard->tempos =
            perform::temposOf(stepsOf(practice), m_round, m_transport.tempoScale());
    m_practised = practice;
    emit hearingChanged(*m_heard);
}

std::optional<tune::PlayedBarIndex> Listening::selectedPlayedBar() const
{
    auto const position = m_session.selected();
    if (!position) return std::nullopt;
    return m_session.arrangement().positions[*position].position.played.front().playedBar;
}

void Listening::choosePassage(Passage (*around)(tune::Tune const&, tune::BarIndex))
{
    auto const selected = m_session.selected();
    if (!m_ready || !selected) return;
    auto const& arrangement = m_session.arrangement();
    tune::BarIndex const bar = arrangement.positions[*selected].position.bar;
    setPassage(around(arrangement.tune, bar));
}

void Listening::setPassage(std::optional<Passage> passage)
{
    m_passage = passage;
    m_transport.setPassageWords(passage && m_session.isOpen()
                                    ? passageWords(m_session.arrangement().tune, *passage)
                                    : QString());
    emit passageChanged(passage);
}

// A tune that is opened begins with the lilt and the end of its kind; what is set for it stays.
void Listening::beginLilt()
{
    if (!m_session.isOpen()) return;
    tune::Tune const& tune = m_session.arrangement().tune;
    QString const name = QString::fromStdString(tune.title + '\n' + tune.rhythm);
    if (name == m_liltOf) return;
    m_liltOf = name;
    m_slowing = perform::slowingOf(m_ways.slowings, m_session.brief().tune);
    m_transport.practiceCard()->setSlowing(m_slowing ? m_slowing->usual : 0);
    m_lilt = perform::liltOf(m_ways.lilts, m_session.brief().tune);
    if (!m_lilt) return m_transport.practiceCard()->setLilt({}, {}, 0);
    bool const pairs = m_lilt->of == perform::LiltWay::Of::Pairs;
    m_transport.practiceCard()->setLilt(
        pairs ? tr("&Swing") : tr("&Lilt"),
        pairs ? tr("0 % as written; 100 %: the first of two lasts twice as long as the second")
              : tr("0 % as written; 100 %: the first of three as a dotted quaver, the second "
                   "as a "
                   "semiquaver"),
        m_lilt->usual);
}

void Listening::playbackStarted()
{
    m_playing = true;
    m_transport.setPlaying(true);
}

void Listening::playbackStopped()
{
    m_playing = false;
    ++m_waited;
    m_playedBar.reset();
    m_transport.setPlaying(false);
}

bool Listening::barPlaying(tune::PlayedBarIndex playedBar)
{
    if (!m_session.arrangement().playing.bars.holds(playedBar)) return false;
    m_playedBar = playedBar;
    return true;
}

void Listening::roundPlaying(int round)
{
    m_round = round;
    if (m_heard && !m_heard->tempos.empty())
        m_transport.showTempo(tempoOfRound(m_heard->tempos, round));
}

} // namespace ui
