#include "ui/snagediting.h"

#include "ui/numbers.h"
#include "ui/session.h"
#include "ui/snagcard.h"
#include "ui/stringbank.h"
#include "ui/tunegrid.h"
#include "ui/words.h"

#include <QApplication>

#include <algorithm>

namespace ui {

namespace {

music::Length placeInBar(arrange::Arrangement const& arrangement, proposal::Snag const& snag)
{
    tune::BarIndex const bar = snag.place.bar;
    if (snag.hand == harp::Side::Left || !arrangement.tune.bars.holds(bar)) return {};
    auto const& notes = arrangement.tune.bars[bar].notes;
    return notes.holds(snag.place.note) ? notes[snag.place.note].at : music::Length{};
}

// "Bar 11 · D♯5"
QString snagTitle(arrange::Arrangement const& arrangement, proposal::Snag const& snag)
{
    QString title = barTitle(arrangement.tune, snag.place.bar);
    if (snag.written)
        title += QStringLiteral(" · ") + QString::fromStdString(music::shown(*snag.written));
    return title;
}

// A sentence as a line of its own.
QString asLine(std::string const& sentence)
{
    QString words = QString::fromStdString(sentence);
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words;
}

} // namespace

SnagEditing::SnagEditing(Session& session, TuneGrid& grid, StringBank& bank, QWidget* window)
    : QObject(window), m_session(session), m_grid(grid), m_bank(bank),
      m_card(new SnagCard(window)), m_trial(new Aside(this)), m_search(new Aside(this))
{
    connect(&m_grid, &TuneGrid::snagClicked, this, &SnagEditing::open);
    connect(m_card, &SnagCard::hearClicked, this, &SnagEditing::hearWay);
    connect(m_card, &SnagCard::wayChosen, this, &SnagEditing::takeWay);
    connect(m_card, &SnagCard::letChooseClicked, this,
            [this] { arrangeAnew([this] { m_session.letSnagChange(m_snag); }); });
    connect(m_card, &SnagCard::wholeTuneChosen, this, &SnagEditing::takeForWholeTune);
}

void SnagEditing::forget()
{
    m_trial->giveUp();
    m_search->giveUp();
    m_wholeTune.reset();
}

void SnagEditing::show(bool ready)
{
    m_ready = ready;
    std::vector<SnagMark> marks;
    std::vector<harp::StringIndex> strings;
    if (ready) {
        arrange::Arrangement const& arrangement = m_session.arrangement();
        auto const selected = m_session.selected();
        std::optional<tune::BarIndex> bar;
        if (selected) bar = arrangement.positions[*selected].position.bar;
        for (proposal::Snag const& snag : m_session.proposal().snags) {
            QString words = snagTitle(arrangement, snag);
            for (proposal::SnagWay const& way : snag.ways)
                if (way.way == snag.way)
                    words += QStringLiteral(": ") +
                             QString::fromStdString(proposal::wayWords(snag, way));
            marks.push_back(
                {snag.place.bar, placeInBar(arrangement, snag),
                 snag.strings.empty() ? std::nullopt : std::optional(snag.strings.front()),
                 snag.decided, words});
            if (snag.place.bar == bar)
                strings.insert(strings.end(), snag.strings.begin(), snag.strings.end());
        }
    }
    m_grid.setSnags(std::move(marks));
    m_bank.setSnags(std::move(strings));
}

void SnagEditing::open(int snag, QPoint const& where)
{
    if (!m_ready || snag < 0 || snag >= static_cast<int>(m_session.proposal().snags.size()))
        return;
    m_snag = static_cast<std::size_t>(snag);
    proposal::Snag const here = m_session.proposal().snags[m_snag];
    m_session.selectBar(here.place.bar);
    SnagTold told;
    told.title = snagTitle(m_session.arrangement(), here);
    told.why = asLine(here.what) + QLatin1Char('.');
    int cheapest = here.ways.empty() ? 0 : here.ways.front().cost;
    for (proposal::SnagWay const& way : here.ways) cheapest = std::min(cheapest, way.cost);
    told.choice = here.hand == harp::Side::Right;
    for (proposal::SnagWay const& way : here.ways)
        told.ways.push_back({asLine(proposal::wayWords(here, way)),
                             told.choice ? wayPlaceWords(way.cost - cheapest) : QString(),
                             tr("score %1, lower is better").arg(decimal(way.cost / 100.0, 1)),
                             way.way == here.way});
    told.alike = static_cast<int>(
        std::ranges::count_if(m_session.proposal().snags, [&here](proposal::Snag const& other) {
            return other.hand == here.hand && other.group == here.group;
        }));
    told.decided = here.decided;
    m_card->tell(told);
    tellWholeTune();
    m_card->openAt(where);
    lookForWholeTune();
}

// The bar with that way in it, and nothing kept.
void SnagEditing::hearWay(int way)
{
    auto const& snags = m_session.proposal().snags;
    if (m_snag >= snags.size()) return;
    proposal::Snag const& snag = snags[m_snag];
    if (way < 0 || way >= static_cast<int>(snag.ways.size())) return;
    auto const hearBar = [this, bar = snag.place.bar](arrange::Arrangement const& arrangement) {
        auto const played = playedPassage(arrangement.playing, {bar, bar});
        if (!played) return;
        emit hearWanted(arrangement, played->first, played->last);
    };
    m_trial->giveUp();
    m_card->setWaiting(std::nullopt);
    tune::Way const wanted = snag.ways[static_cast<std::size_t>(way)].way;
    if (wanted == snag.way) return hearBar(m_session.arrangement());
    m_card->setWaiting(way);
    m_trial->begin([trial = m_session.trial(m_snag, wanted)](auto const&) { return trial(); },
                   [this, hearBar](std::optional<arrange::Arrangement> made) {
                       m_card->setWaiting(std::nullopt);
                       if (made && m_card->isVisible()) hearBar(*made);
                   });
}

void SnagEditing::takeWay(int way, bool alike)
{
    auto const& snags = m_session.proposal().snags;
    if (m_snag >= snags.size() || way >= static_cast<int>(snags[m_snag].ways.size())) return;
    tune::Way const wanted = snags[m_snag].ways[static_cast<std::size_t>(way)].way;
    arrangeAnew([&] { m_session.takeSnagWay(m_snag, wanted, alike); });
}

void SnagEditing::takeForWholeTune(int which)
{
    auto const index = static_cast<std::size_t>(which);
    if (!m_wholeTune || index >= m_wholeTune->size()) return;
    proposal::WholeTuneWay const way = (*m_wholeTune)[index];
    arrangeAnew([&] {
        if (m_session.takeForWholeTune(way)) emit done(QString::fromStdString(way.sentence));
    });
}

// The card goes first, so that nothing of it is left in sight while the tune is arranged.
void SnagEditing::arrangeAnew(std::function<void()> const& edit)
{
    m_trial->giveUp();
    m_search->giveUp();
    QApplication::setOverrideCursor(Qt::WaitCursor);
    QApplication::processEvents(QEventLoop::ExcludeUserInputEvents);
    edit();
    QApplication::restoreOverrideCursor();
}

// Another key, tempo or level: each is tried, which takes a while.
void SnagEditing::lookForWholeTune()
{
    if (m_wholeTune || m_search->busy()) return;
    m_search->begin(m_session.wholeTuneSearch(),
                    [this](std::vector<proposal::WholeTuneWay> found) {
                        m_wholeTune = std::move(found);
                        tellWholeTune();
                    });
}

void SnagEditing::tellWholeTune()
{
    if (!m_wholeTune) return m_card->setWholeTune(std::nullopt);
    QStringList sentences;
    for (proposal::WholeTuneWay const& way : *m_wholeTune)
        sentences << QString::fromStdString(way.sentence);
    m_card->setWholeTune(sentences);
}

} // namespace ui
