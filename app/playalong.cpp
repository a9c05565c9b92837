#include "app/playalong.h"

#include "app/sound/player.h"
#include "ui/playedalong.h"
#include "ui/transport.h"
#include "ui/workbench.h"

#include <algorithm>

namespace app {

namespace {

// The hand that is not heard is hers; where both are heard, both are.
perform::Mine mineOf(perform::Hearing const& hearing)
{
    if (hearing.left == hearing.right) return {};
    return {!hearing.left, !hearing.right};
}

// What is hers to play, though it is not heard.
perform::Schedule wholeOf(ui::Audition const& audition, double tempo)
{
    perform::Hearing both = audition.hearing;
    both.left = both.right = true;
    both.tempoScale = tempo;
    return perform::scheduled(audition.arrangement, both);
}

} // namespace

PlayAlong::PlayAlong(ui::Workbench& workbench, sound::Player& player)
    : QObject(&workbench), m_workbench(workbench), m_player(player)
{
    connect(&player, &sound::Player::stopped, this, &PlayAlong::ended);
}

bool PlayAlong::begin(ui::Audition const& audition, perform::Course const& course)
{
    stop();
    ui::Practice const practice = m_workbench.transport()->practice();
    if (!practice.listens || course.rounds.empty()) return false;
    if (m_told) m_told->close();
    m_audition = audition;
    m_course = course;
    m_mine = mineOf(audition.hearing);
    m_takes.clear();
    if (!practice.rightString) return false;
    m_player.stop();
    m_audition = audition;
    perform::Hearing plain = audition.hearing;
    plain.countIn = plain.barBefore = false;
    ui::Audition alone = audition;
    alone.hearing = plain;
    m_whole = wholeOf(alone, plain.tempoScale);
    m_waiting.emplace(perform::togethers(m_whole, m_mine));
    m_waited = {};
    for (perform::Event const& event : m_whole.events)
        if (event.kind == perform::Event::Kind::Pluck &&
            (event.hand == harp::Side::Left ? m_mine.left : m_mine.right))
            m_waited.notes.push_back({event, 0, perform::Verdict::Right, 0, 0});
    if (m_waiting->over()) return false;
    m_workbench.playbackStarted();
    playOthers(-1, m_waiting->now().at);
    await();
    return true;
}

void PlayAlong::change(perform::Course const& course)
{
    if (m_audition && !m_waiting) m_course = course;
}

void PlayAlong::hear(int midi)
{
    if (!m_audition) return;
    if (!m_waiting) {
        if (!m_player.isPlaying()) return;
        perform::Place const place = m_player.place();
        m_takes.push_back({place.round, {place.at, midi}});
        return;
    }
    auto const at = m_waiting->now();
    switch (m_waiting->play(midi)) {
    case perform::Waiting::Answer::Wrong:
        m_waited.extra.push_back({{at.at, midi}, at.playedBar});
        break;
    case perform::Waiting::Answer::Right:
        await();
        break;
    case perform::Waiting::Answer::GoesOn:
        playOthers(at.at, m_waiting->over() ? m_whole.counted : m_waiting->now().at);
        if (!m_waiting->over()) return await();
        m_waiting.reset();
        m_workbench.awaitStrings({});
        m_workbench.playbackStopped();
        tell(m_waited);
        m_audition.reset();
        break;
    }
}

void PlayAlong::stop()
{
    bool const waited = m_waiting.has_value();
    m_waiting.reset();
    if (!waited) return;
    m_audition.reset();
    m_workbench.awaitStrings({});
    m_workbench.playbackStopped();
}

// Every time round is judged by itself; what is told is the latest that she played in.
void PlayAlong::ended()
{
    if (!m_audition || m_waiting) return;
    ui::Audition const audition = *std::exchange(m_audition, {});
    if (m_takes.empty()) return;
    int const round = m_takes.back().round;
    std::vector<perform::Heard> heard;
    for (Take const& take : m_takes)
        if (take.round == round) heard.push_back(take.heard);
    // Her notes in the time of that round.
    perform::Schedule const& played = m_course.round(round);
    double const tempo = audition.tempos.empty()
                             ? audition.hearing.tempoScale
                             : audition.tempos[std::min(audition.tempos.size() - 1,
                                                        static_cast<std::size_t>(round))];
    ui::Audition later = audition;
    if (round > 0) later.hearing.countIn = later.hearing.barBefore = false;
    perform::Schedule whole = wholeOf(later, tempo);
    double const shift = played.begins - whole.begins;
    for (perform::Event& event : whole.events) event.at += shift;
    for (perform::BarStart& bar : whole.bars) bar.at += shift;
    perform::Judgement judgement = perform::judged(whole, m_mine, heard);
    std::erase_if(judgement.notes, [&](perform::JudgedNote const& note) {
        return note.wanted.at > heard.back().at + 1 && note.verdict == perform::Verdict::Missed;
    }); // she stopped before
    m_audition = audition; // whose bars are told
    tell(judgement);
    m_audition.reset();
}

void PlayAlong::tell(perform::Judgement const& judgement)
{
    m_told = new ui::PlayedDialog(ui::playedWords(m_audition->arrangement, judgement),
                                  &m_workbench);
    connect(m_told, &ui::PlayedDialog::barChosen, &m_workbench,
            &ui::Workbench::choosePlayedBar);
    m_told->show();
}

void PlayAlong::await()
{
    perform::Together const& now = m_waiting->now();
    m_workbench.barPlaying(now.playedBar);
    QStringList names;
    for (perform::Event const& event : now.notes) {
        if (!m_waiting->missing().contains(event.midi)) continue;
        harp::Harp const& harp = m_audition->arrangement.harp;
        for (harp::Lever const lever : {harp::Lever::Down, harp::Lever::Up}) {
            auto const pitch = harp::sounding(harp.string(event.string), lever);
            if (music::midi(pitch) != event.midi) continue;
            names.append(QString::fromStdString(music::shown(pitch)));
            break;
        }
    }
    m_workbench.awaitStrings(names.join(QStringLiteral("  ")));
}

// What the other hand has from one moment up to the next, in its own time.
void PlayAlong::playOthers(perform::Seconds from, perform::Seconds to)
{
    constexpr double first = 0.001;
    for (perform::Event const& event : m_whole.events) {
        bool const hers = event.hand == harp::Side::Left ? m_mine.left : m_mine.right;
        if (hers || event.kind != perform::Event::Kind::Pluck) continue;
        if (event.at < from - first || event.at >= to - first) continue;
        auto const later = std::max(0.0, from < 0 ? 0.0 : event.at - from) * 1000;
        QTimer::singleShot(static_cast<int>(later), &m_player,
                           [player = &m_player, event] { player->pluck(event.string, event.midi); });
    }
}

} // namespace app
