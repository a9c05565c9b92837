#include "app/batchrun.h"

#include "app/filing.h"
#include "core/base/words.h"
#include "core/files/work/player.h"
#include "ui/batchdialog.h"
#include "ui/session.h"
#include "ui/words.h"
#include "ui/workbench.h"

#include <QDir>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>

namespace app {

std::optional<BatchLine> batchLine(QString const& line)
{
    QString const note = QString::fromStdString(base::said("note: "));
    QRegularExpression const ours(
        QStringLiteral("^sallow: (%1)?(.*)$").arg(QRegularExpression::escape(note)));
    auto const said = ours.match(line);
    if (!said.hasMatch()) return std::nullopt;
    QString const words = said.captured(2);
    static QRegularExpression const progress(QStringLiteral("^(\\d+) \\pL+ (\\d+) \\pL+$"));
    if (auto const match = progress.match(words); match.hasMatch())
        return BatchLine{match.captured(1).toInt(), match.captured(2).toInt(), {}, {}};
    static QRegularExpression const tune(QStringLiteral("^(.+?), X:(\\d+)[,:]"));
    // "bar 3", "bars 3 and 5"
    QString const named = QString::fromStdString(base::say("bar {}", ""));
    QRegularExpression const bar(QStringLiteral("\\b%1\\pL? (\\d+)").arg(named.trimmed()),
                                 QRegularExpression::CaseInsensitiveOption);
    if (auto const match = tune.match(words); match.hasMatch())
        return BatchLine{0,
                         0,
                         words,
                         {match.captured(1), match.captured(2).toInt(),
                          bar.match(words, match.capturedEnd()).captured(1).toInt()}};
    static QRegularExpression const file(QStringLiteral("^(.+?\\.\\w+)(, \\pL+ \\d+)*:"));
    // What it all came to the dialog says itself.
    static QRegularExpression const summary(QStringLiteral("^\\d+ \\pL+: "));
    QString const stopped =
        QString::fromStdString(base::said("stopped; what is saved is whole"));
    if (summary.match(words).hasMatch() || words.startsWith(stopped)) return std::nullopt;
    return BatchLine{0, 0, words, {file.match(words).captured(1)}};
}

QStringList optionsFor(ui::Session const& session, files::Tables const& tables)
{
    QJsonObject const chosen =
        QJsonDocument::fromJson(
            QByteArray::fromStdString(files::standingText(session.standing(), tables)))
            .object();
    QJsonObject const harp = chosen[QStringLiteral("harp")].toObject();
    QStringList out;
    auto const add = [&out](char const* option, QString const& value) {
        if (!value.isEmpty()) out << QString::fromLatin1(option) << value;
    };
    add("--harp", harp.contains(QStringLiteral("size"))
                      ? harp[QStringLiteral("size")].toString()
                      : QString::fromStdString(session.standing().harp.id()));
    add("--tuning", harp[QStringLiteral("tuning")].toString());
    add("--levers", harp[QStringLiteral("levers")].toString());
    add("--names", harp[QStringLiteral("names")].toString());
    add("--hand", chosen[QStringLiteral("hand")].toString());
    add("--level", QString::number(chosen[QStringLiteral("level")].toInt()));
    add("--manner", chosen[QStringLiteral("style")].toString());
    add("--key", chosen[QStringLiteral("key")].toString());
    add("--right", chosen[QStringLiteral("right")].toString());
    return out;
}

BatchRun::BatchRun(Desk const& desk, QString program)
    : BesideWindow(desk, desk.workbench.actions().batch, std::move(program))
{
}

void BatchRun::open()
{
    if (!m_dialog) {
        m_dialog = new ui::BatchDialog(m_desk.filing.folder(), forWhom(), &m_desk.workbench);
        connect(m_dialog, &ui::BatchDialog::startClicked, this, &BatchRun::start);
        connect(m_dialog, &ui::BatchDialog::cancelClicked, &m_copy, &SecondCopy::stop);
        connect(m_dialog, &ui::BatchDialog::placeWanted, this,
                [this](ui::BatchPlace const& at) {
                    if (m_desk.filing.openTune(at.file, at.number))
                        m_desk.workbench.chooseBarNumber(at.bar);
                });
    }
    show(*m_dialog);
}

void BatchRun::start()
{
    QStringList words{m_dialog->from(), QStringLiteral("-o"), m_dialog->into(),
                      QStringLiteral("--to"), m_dialog->kinds().join(QLatin1Char(','))};
    if (m_dialog->leavesWhatIsThere()) words << QStringLiteral("--resume");
    m_dialog->started();
    m_copy.start(QStringLiteral("batch"), words + optionsFor(m_desk.session, m_desk.tables));
}

void BatchRun::hear(QString const& line)
{
    auto const said = batchLine(line);
    if (!said || !m_dialog) return;
    if (said->all > 0)
        m_dialog->reached(said->done, said->all);
    else
        m_dialog->addTrouble(said->words, said->place);
}

void BatchRun::tellEnd(SecondCopy::End how)
{
    if (!m_dialog) return;
    int const troubles = m_dialog->troubles();
    if (how == SecondCopy::End::Stopped)
        m_dialog->ended(tr("Stopped. The papers made so far are whole; start again with “Leave "
                           "papers that are there already” to go on."));
    else if (how == SecondCopy::End::NotStarted)
        m_dialog->ended(tr("The work could not be started."));
    else if (troubles == 1)
        m_dialog->ended(tr("Done, with 1 thing to check."));
    else if (troubles == 0)
        m_dialog->ended(tr("Done. The papers are in %1.").arg(m_dialog->into()));
    else
        m_dialog->ended(tr("Done, with %1 things to check.").arg(troubles));
}

} // namespace app
