#include "ui/opentunewords.h"

#include "core/tune/kindwords.h"
#include "ui/numbers.h"
#include "ui/session.h"
#include "ui/words.h"

#include <QCoreApplication>
#include <QStringList>

namespace ui {

namespace {

QString tr(char const* words) { return QCoreApplication::translate("OpenTuneWords", words); }

} // namespace

QString detailWords(arrange::Arrangement const& arrangement, double difficulty)
{
    QStringList detail;
    // The levers first: they are what must not be cut off in a narrow window.
    detail << tr("levers up: %1").arg(setupWords(arrangement.harp, arrangement.levers.setup))
           << tr("difficulty %1").arg(decimal(difficulty, 1));
    tune::Tune const& tune = arrangement.tune;
    if (!tune.rhythm.empty()) detail << QString::fromStdString(tune::rhythmShown(tune.rhythm));
    detail << QString::fromStdString(music::text(tune.meter));
    auto const flips = arrangement.levers.flips.size();
    if (flips == 1) detail << tr("1 lever flip");
    if (flips > 1) detail << tr("%1 lever flips").arg(flips);
    return detail.join(QStringLiteral(" · "));
}

QString answerWords(Session const& session)
{
    proposal::Proposal const& proposal = session.proposal();
    QStringList words;
    words << tr("Score %1, lower is better")
                 .arg(decimal(static_cast<double>(proposal.solution.best.cost) / 1000, 1));
    if (proposal.take) words << QString::fromStdString(takeWords(*proposal.take)).chopped(1);
    int locks = 0;
    for (auto const& lock : proposal.lattice.locks) locks += lock.has_value() ? 1 : 0;
    if (locks == 1) words << tr("1 shape kept");
    if (locks > 1) words << tr("%1 shapes kept").arg(locks);
    auto const shown = session.shown();
    for (proposal::Variant const& variant : session.variants())
        if (variant.candidate == shown && !variant.chosen)
            words << tr("looking at another shape: %1").arg(regretWords(variant.regret));
    return words.join(QStringLiteral(" · "));
}

} // namespace ui
