#include "ui/choicemenus.h"

#include "ui/harpeditor.h"
#include "ui/header.h"
#include "ui/keydialog.h"
#include "ui/session.h"
#include "ui/sliderbox.h"

#include "core/files/tables/harpbook.h"

#include <QApplication>
#include <QMenu>
#include <QWidgetAction>

#include <algorithm>
#include <set>

namespace ui {

namespace {

QString shownText(std::string const& text) { return QString::fromStdString(text); }

QAction* addChoice(QMenu* menu, QString const& words, bool current)
{
    QAction* action = menu->addAction(words);
    action->setCheckable(true);
    action->setChecked(current);
    return action;
}

void addHeading(QMenu* menu, QString const& words)
{
    if (!menu->isEmpty()) menu->addSeparator();
    QAction* heading = menu->addAction(words);
    heading->setEnabled(false);
}

// The letters whose strings carry levers; what a harp's lever fit is known by.
std::set<music::Letter> leverLetters(harp::Harp const& harp)
{
    std::set<music::Letter> letters;
    for (harp::HarpString const& string : harp.strings())
        if (string.hasLever) letters.insert(string.open.letter);
    return letters;
}

std::string leverFitOf(harp::Harp const& harp, std::vector<files::LeverFit> const& fits)
{
    auto const carried = leverLetters(harp);
    for (files::LeverFit const& fit : fits)
        if (std::set<music::Letter>(fit.letters.begin(), fit.letters.end()) == carried)
            return fit.id;
    return fits.empty() ? std::string() : fits.front().id;
}

std::string tuningOf(harp::Harp const& harp, std::vector<files::NamedTuning> const& tunings)
{
    for (files::NamedTuning const& tuning : tunings)
        if (tuning.key == harp.tuning()) return tuning.id;
    return tunings.empty() ? std::string() : tunings.front().id;
}

} // namespace

ChoiceMenus::ChoiceMenus(Session& session, files::Tables tables, Header& header, QMenu* form,
                         QObject* parent)
    : QObject(parent), m_session(session), m_tables(std::move(tables)), m_header(header),
      m_form(form)
{
    connect(form, &QMenu::aboutToShow, this, &ChoiceMenus::fillForm);
    connect(header.keyMenu(), &QMenu::aboutToShow, this, &ChoiceMenus::fillKeys);
    connect(header.harpMenu(), &QMenu::aboutToShow, this, &ChoiceMenus::fillHarps);
    connect(header.handMenu(), &QMenu::aboutToShow, this, &ChoiceMenus::fillHands);
    connect(header.levelMenu(), &QMenu::aboutToShow, this, &ChoiceMenus::fillLevels);
    connect(header.styleMenu(), &QMenu::aboutToShow, this, &ChoiceMenus::fillStyles);
}

void ChoiceMenus::fillKeys()
{
    QMenu* menu = m_header.keyMenu();
    menu->setToolTipsVisible(true);
    menu->clear();
    proposal::KeyWish const wish = m_session.brief().key;
    auto const offer = [&](QString const& words, proposal::KeyWish const& key) {
        QAction* action = addChoice(menu, words, wish == key);
        connect(action, &QAction::triggered, this, [this, key] { m_session.setKey(key); });
        return action;
    };
    offer(tr("Best for tune and harp"), proposal::BestKey{});
    offer(tr("As written"), proposal::AsWritten{});
    if (!m_session.isOpen()) return;
    addHeading(menu, tr("Keys of this harp, best first"));
    std::set<std::string> told;
    for (levers::KeyFit const& fit : m_session.keyFits()) {
        if (!fit.possible || !told.insert(music::plain(fit.key)).second) continue;
        QString words = shownText(music::shown(fit.key));
        if (fit.flips == 1) words += tr("   1 lever flip");
        if (fit.flips > 1) words += tr("   %1 lever flips").arg(fit.flips);
        offer(words, fit.key)->setToolTip(shownText(fit.reason));
    }
    menu->addSeparator();
    connect(menu->addAction(tr("Compare keys…")), &QAction::triggered, this,
            &ChoiceMenus::compareKeys);
}

void ChoiceMenus::compareKeys()
{
    QApplication::setOverrideCursor(Qt::WaitCursor);
    auto const keys = m_session.rankedKeys();
    QApplication::restoreOverrideCursor();
    KeyDialog dialog(m_session.arrangement().harp, keys, m_session.arrangement().tune.key,
                     m_header.window());
    if (dialog.exec() != QDialog::Accepted) return;
    if (auto const key = dialog.chosen()) m_session.setKey(*key);
}

void ChoiceMenus::fillHarps()
{
    QMenu* menu = m_header.harpMenu();
    qDeleteAll(menu->findChildren<QMenu*>(Qt::FindDirectChildrenOnly));
    menu->clear();
    harp::Harp const& harp = m_session.brief().harp;
    std::string const size = harp.id();
    std::string const tuning = tuningOf(harp, m_tables.tunings);
    std::string const fit = leverFitOf(harp, m_tables.leverFits);
    for (files::HarpSize const& other : m_tables.harps)
        connect(addChoice(menu, shownText(other.name), other.id == size), &QAction::triggered,
                this, [=, this] { chooseHarp(other.id, tuning, fit); });
    bool own = false; // the user's own harp keeps its levers when it is tuned
    if (!m_tables.ownHarps.empty()) addHeading(menu, tr("My harps"));
    for (harp::HarpModel const& other : m_tables.ownHarps) {
        own = own || other.id == size;
        connect(addChoice(menu, shownText(other.name), other.id == size), &QAction::triggered,
                this, [=, this] { chooseHarp(other.id, {}, {}); });
    }
    menu->addSeparator();
    connect(menu->addAction(tr("Describe your harp…")), &QAction::triggered, this,
            &ChoiceMenus::editHarp);
    menu->addSeparator();
    QMenu* tunings = menu->addMenu(tr("Tuned in"));
    tunings->setObjectName(QStringLiteral("tunings"));
    for (files::NamedTuning const& other : m_tables.tunings)
        connect(addChoice(tunings, shownText(other.name), other.id == tuning),
                &QAction::triggered, this,
                [=, this] { chooseHarp(size, other.id, own ? std::string() : fit); });
    QMenu* levers = menu->addMenu(tr("Levers"));
    for (files::LeverFit const& other : m_tables.leverFits)
        connect(addChoice(levers, shownText(other.name), other.id == fit), &QAction::triggered,
                this, [=, this] { chooseHarp(size, tuning, other.id); });
    QMenu* names = menu->addMenu(tr("Strings named"));
    names->setObjectName(QStringLiteral("names"));
    std::pair<QString, harp::Naming> const ways[] = {
        {tr("as on printed harp music"), harp::Naming::Usual},
        {tr("middle C is C4"), harp::Naming::Scientific},
        {tr("middle C is 4C (harp octaves)"), harp::Naming::HarpOctave},
        {tr("numbered from the top"), harp::Naming::FromTop}};
    for (auto const& [words, naming] : ways)
        connect(addChoice(names, words, naming == harp.naming()), &QAction::triggered, this,
                [=, this, way = naming] {
                    m_session.setHarp(withNaming(m_session.brief().harp, way));
                });
}

// The harp that is set, to be described otherwise; a new name makes it another harp.
void ChoiceMenus::editHarp()
{
    HarpEditor editor(harp::modelOf(m_session.brief().harp), m_tables, m_header.window());
    if (editor.exec() != QDialog::Accepted) return;
    auto harp = harpOf(editor.model());
    if (!harp) return;
    if (editor.toBeKept()) {
        m_tables.ownHarps =
            files::withHarp(std::move(m_tables.ownHarps), editor.model());
        emit harpKept(editor.model());
    }
    m_session.setHarp(*std::move(harp));
}

void ChoiceMenus::chooseHarp(std::string const& size, std::string const& tuning,
                             std::string const& leverFit)
{
    auto harp = files::harpFrom(m_tables, size, tuning, leverFit);
    if (harp)
        m_session.setHarp(withNaming(*std::move(harp), m_session.brief().harp.naming()));
    else
        emit m_session.refused(harp.error());
}

void ChoiceMenus::fillHands()
{
    QMenu* menu = m_header.handMenu();
    menu->clear();
    for (harp::HandModel const& hand : m_tables.hands)
        connect(addChoice(menu, shownText(hand.name), hand.id == m_session.brief().hand.id),
                &QAction::triggered, this, [this, hand] { m_session.setHand(hand); });
    addHeading(menu, tr("The right hand plays"));
    using proposal::RightHand;
    std::pair<QString, RightHand> const choices[] = {
        {tr("The tune alone"), RightHand::Bare},
        {tr("The tune, with a note below it where phrases end"), RightHand::Closes},
        {tr("The tune, with notes below it on strong beats and where phrases end"),
         RightHand::Full}};
    for (auto const& [words, right] : choices)
        connect(addChoice(menu, words, m_session.brief().right == right), &QAction::triggered,
                this, [this, chosen = right] { m_session.setRightHand(chosen); });
}

// What stands before the tune and after it, and how often and how it goes through.
void ChoiceMenus::fillForm()
{
    m_form->clear();
    proposal::Form const form = m_session.brief().form;
    auto const offer = [&](QString const& words, int proposal::Form::* member, int bars) {
        connect(addChoice(m_form, words, form.*member == bars), &QAction::triggered, this,
                [=, this] {
                    proposal::Form next = form;
                    next.*member = bars;
                    m_session.setForm(std::move(next));
                });
    };
    addHeading(m_form, tr("Before the tune"));
    offer(tr("No introduction"), &proposal::Form::introduction, 0);
    offer(tr("Its last two bars as an introduction"), &proposal::Form::introduction, 2);
    offer(tr("Its last four bars as an introduction"), &proposal::Form::introduction, 4);
    addTimes();
    addHeading(m_form, tr("After the tune"));
    offer(tr("No ending"), &proposal::Form::ending, 0);
    offer(tr("Its last two bars again as an ending"), &proposal::Form::ending, 2);
    offer(tr("Its last four bars again as an ending"), &proposal::Form::ending, 4);
}

void ChoiceMenus::addTimes()
{
    proposal::Form const form = m_session.brief().form;
    auto const offer = [&](QString const& words,
                           std::vector<proposal::TimeManner> const& times) {
        connect(addChoice(m_form, words, form.times == times), &QAction::triggered, this,
                [this, form, times] {
                    proposal::Form next = form;
                    next.times = times;
                    m_session.setForm(std::move(next));
                });
    };
    addHeading(m_form, tr("Through the tune"));
    offer(tr("Once"), {});
    for (proposal::NamedForm const& named : m_tables.forms)
        offer(shownText(named.name), named.times);
    bool const own =
        !form.times.empty() && std::ranges::none_of(m_tables.forms, [&](auto const& named) {
            return named.times == form.times;
        });
    if (own) {
        QStringList names;
        for (auto const& time : form.times) names << shownText(time.name);
        offer(names.join(QStringLiteral(", ")), form.times);
    }
    if (form.times.size() >= proposal::mostTimes) return;
    QMenu* more = m_form->addMenu(tr("One time more"));
    for (proposal::TimeManner const& manner : m_tables.timeManners)
        connect(more->addAction(shownText(manner.name)), &QAction::triggered, this,
                [this, form, manner] {
                    proposal::Form next = form;
                    if (next.times.empty())
                        for (proposal::TimeManner const& plain : m_tables.timeManners)
                            if (plain.id == "plain") next.times.push_back(plain);
                    next.times.push_back(manner);
                    m_session.setForm(std::move(next));
                });
}

void ChoiceMenus::fillLevels()
{
    QMenu* menu = m_header.levelMenu();
    menu->clear();
    for (harp::Level const& level : m_tables.levels)
        connect(addChoice(menu, tr("%1  %2").arg(level.number).arg(shownText(level.name)),
                          level.number == m_session.brief().level.number),
                &QAction::triggered, this, [this, level] { m_session.setLevel(level); });
}

void ChoiceMenus::fillStyles()
{
    QMenu* menu = m_header.styleMenu();
    menu->clear();
    for (arrange::Weights const& style : m_tables.styles)
        connect(addChoice(menu, shownText(style.name),
                          style.style == m_session.brief().weights.style),
                &QAction::triggered, this, [this, style] { m_session.setStyle(style); });
    addSliders();
}

// Under the styles, so that the arrangement changes while a slider is drawn.
void ChoiceMenus::addSliders()
{
    QMenu* menu = m_header.styleMenu();
    menu->addSeparator();
    auto* box = new SliderBox(m_tables.sliders, menu);
    box->setTurned(m_session.brief().sliders);
    connect(box, &SliderBox::turned, this, [this, box](int index, int percent) {
        m_session.setSlider(m_tables.sliders[static_cast<std::size_t>(index)], percent);
        box->setTurned(m_session.brief().sliders);
    });
    connect(box, &SliderBox::resetClicked, this, [this, box] {
        m_session.resetSliders();
        box->setTurned(m_session.brief().sliders);
    });
    auto* action = new QWidgetAction(menu);
    action->setDefaultWidget(box);
    menu->addAction(action);
}

} // namespace ui
