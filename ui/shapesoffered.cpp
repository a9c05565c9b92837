#include "ui/shapesoffered.h"

#include "ui/ownpattern.h"
#include "ui/session.h"
#include "ui/variantpanel.h"
#include "ui/whynotlist.h"
#include "ui/words.h"

#include "core/pattern/layout.h"

namespace ui {

namespace {

// "root G2 · quavers"
QString whereWords(harp::Harp const& harp, arrange::Voicing const& voicing)
{
    if (voicing.notes.empty()) return {};
    music::Pitch const root = harp.string(voicing.rootString).open;
    QString words = ShapesOffered::tr("root %1").arg(
        QString::fromStdString(music::shown(music::naturalAt(diatonicStep(root)))));
    if (!voicing.rhythm.empty())
        words += QStringLiteral(" · ") + QString::fromStdString(pattern::rhythmWords(voicing.rhythm));
    if (voicing.rolled) words += QStringLiteral(" · ") + ShapesOffered::tr("rolled");
    return words;
}

} // namespace

ShapesOffered::ShapesOffered(Session& session, VariantPanel& panel, QObject* parent)
    : QObject(parent), m_session(session), m_panel(panel)
{
    VariantList* list = m_panel.list();
    connect(list, &VariantList::shownClicked, &m_session, &Session::show);
    connect(list, &VariantList::useClicked, &m_session, &Session::choose);
    connect(list, &VariantList::unlockClicked, &m_session, &Session::unlock);
    connect(list, &VariantList::hearClicked, this, [this](arrange::CandidateIndex candidate) {
        m_session.show(candidate);
        emit hearWanted();
    });
    connect(list, &VariantList::backClicked, this, &ShapesOffered::leave);
    connect(m_panel.own(), &OwnPattern::useClicked, &m_session, &Session::usePattern);
    connect(m_panel.own(), &OwnPattern::keepClicked, this, [this](pattern::Pattern const& own) {
        if (m_session.addPattern(own)) emit keepPatternRequested(own);
    });
    connect(&m_panel, &VariantPanel::whyNotWanted, this, &ShapesOffered::showWhyNot);
}

void ShapesOffered::show(bool ready)
{
    if (!ready) {
        m_panel.setHeading(tr("Shapes"), tr("for the chord you choose"));
        m_panel.list()->setRows({});
        return;
    }
    auto const position = m_session.selected();
    m_panel.own()->setReady(position.has_value());
    if (m_panel.showsWhyNot()) showWhyNot();
    if (!position) {
        m_panel.setHeading(tr("No chords"), {});
        m_panel.list()->setRows({});
        return;
    }
    harp::Harp const& harp = m_session.arrangement().harp;
    auto const& candidates = m_session.proposal().lattice.candidates[*position];
    std::vector<VariantRow> rows;
    for (proposal::Variant const& variant : m_session.variants()) {
        auto const& voicing = candidates[variant.candidate].voicing;
        rows.push_back({variant, voicing, whereWords(harp, voicing)});
    }
    auto const together = m_session.chosen().size();
    m_panel.setHeading(positionTitle(m_session.arrangement(), *position),
                       together == 1   ? tr("%1 shapes, best first").arg(rows.size())
                       : together == 2 ? tr("for this and one more chord")
                                       : tr("for this and %1 more chords").arg(together - 1));
    m_panel.list()->setHarp(harp);
    m_panel.list()->setRows(std::move(rows));
    m_panel.list()->setShown(m_session.shown());
}

void ShapesOffered::showWhyNot()
{
    auto const position = m_session.selected();
    m_panel.whyNot()->setRows(position ? proposal::unplayable(m_session.proposal(), *position)
                                       : std::vector<proposal::Unplayable>{});
}

} // namespace ui
