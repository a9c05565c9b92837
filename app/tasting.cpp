#include "app/tasting.h"

#include "app/keeping/userfolder.h"
#include "core/files/textfile.h"
#include "core/learning/telling.h"
#include "ui/actions.h"
#include "ui/session.h"
#include "ui/tastedialog.h"
#include "ui/workbench.h"

#include <QFileDialog>

namespace app {

namespace {

QString asText(std::string const& words) { return QString::fromStdString(words); }

} // namespace

std::filesystem::path tasteFile() { return userFolder() / "taste.json"; }

Tasting::Tasting(ui::Workbench& workbench, ui::Session& session, std::filesystem::path file)
    : QObject(&workbench), m_workbench(workbench), m_session(session), m_file(std::move(file))
{
    std::error_code failed;
    if (std::filesystem::exists(m_file, failed)) {
        auto const text = files::readTextFile(m_file);
        auto kept = text ? files::readTaste(*text, m_file.string())
                         : base::Result<files::TasteKept>(text.error());
        m_readable = static_cast<bool>(kept);
        if (kept)
            m_kept = *std::move(kept);
        else
            m_workbench.tellFault(kept.error());
    }
    session.setTaste([this](std::string const& manner, int level) {
        return m_kept.on ? learned(manner, level).leaning : arrange::Leaning();
    });
    connect(&session, &ui::Session::chose, this, &Tasting::take);
    connect(&session, &ui::Session::opened, this, [this] { m_steps.clear(); });
    connect(&session, &ui::Session::changed, this, &Tasting::tell);
    connect(&session.undoStack(), &QUndoStack::indexChanged, this, &Tasting::followUndo);
    connect(workbench.actions().taste, &QAction::triggered, this, &Tasting::showDialog);
}

learning::Learned const& Tasting::learned(std::string const& manner, int level)
{
    auto const [known, isNew] = m_learned.try_emplace({manner, level});
    if (isNew)
        known->second =
            learning::learnedFrom(learning::choicesFor(m_kept.choices, manner, level));
    return known->second;
}

void Tasting::take(learning::Choice const& choice)
{
    if (!m_kept.on || !m_readable) return;
    QUndoStack const& stack = m_session.undoStack();
    int const index = stack.index();
    Step step{index > 0 ? stack.command(index - 1) : nullptr, index, m_kept.choices, {}, true};
    m_kept.choices = learning::withChoice(std::move(m_kept.choices), choice);
    step.after = m_kept.choices;
    m_steps.push_back(std::move(step));
    changed();
}

// A choice that is undone was none.
void Tasting::followUndo(int index)
{
    QUndoStack const& stack = m_session.undoStack();
    std::erase_if(m_steps, [&stack](Step const& step) {
        return step.index < 1 || step.index > stack.count() ||
               stack.command(step.index - 1) != step.command;
    });
    bool moved = false;
    for (auto step = m_steps.rbegin(); step != m_steps.rend(); ++step)
        if (step->stands && step->index > index) {
            m_kept.choices = step->before;
            step->stands = false;
            moved = true;
        }
    for (Step& step : m_steps)
        if (!step.stands && step.index <= index) {
            m_kept.choices = step.after;
            step.stands = true;
            moved = true;
        }
    if (moved) changed();
}

void Tasting::changed()
{
    m_learned.clear();
    keep();
    tell();
}

void Tasting::keep()
{
    if (!m_readable) return; // what is there may be mended by hand
    std::error_code failed;
    std::filesystem::create_directories(m_file.parent_path(), failed);
    auto const done = files::writeWhole(m_file, files::tasteText(m_kept));
    if (!done) m_workbench.tellFault(done.error());
}

ui::TasteDialog* Tasting::dialog() const
{
    return static_cast<ui::TasteDialog*>(m_dialog.data());
}

void Tasting::showDialog()
{
    if (!m_dialog) {
        auto* const made = new ui::TasteDialog(&m_workbench);
        made->setAttribute(Qt::WA_DeleteOnClose);
        m_dialog = made;
        connect(made, &ui::TasteDialog::switched, this, [this](bool on) {
            m_kept.on = on;
            changed();
        });
        connect(made, &ui::TasteDialog::useClicked, this, [this] {
            auto const& brief = m_session.brief();
            m_session.setLeaning(learned(brief.weights.style, brief.level.number).leaning);
        });
        connect(made, &ui::TasteDialog::saveClicked, this, &Tasting::saveAs);
        connect(made, &ui::TasteDialog::forgetClicked, this, [this] {
            m_kept.choices.clear();
            m_steps.clear();
            changed();
        });
    }
    tell();
    dialog()->show();
    dialog()->raise();
}

void Tasting::tell()
{
    if (!m_dialog) return;
    auto const& brief = m_session.brief();
    auto const choices =
        learning::choicesFor(m_kept.choices, brief.weights.style, brief.level.number);
    learning::Learned const& now = learned(brief.weights.style, brief.level.number);
    ui::TasteTold told;
    told.on = m_kept.on;
    // The name of a manner goes on with what it is like.
    told.heading = ui::TasteDialog::tr("Manner %1, level %2")
                       .arg(asText(brief.weights.name).section(QLatin1Char(':'), 0, 0))
                       .arg(brief.level.number);
    told.standing = asText(learning::tasteStanding(now));
    for (std::string const& sentence : learning::tasteSentences(choices, now))
        told.sentences << asText(sentence);
    told.any = !m_kept.choices.empty();
    told.canUse =
        m_kept.on && m_session.isOpen() && now.inUse && !(brief.leaning == now.leaning);
    dialog()->tell(told);
}

void Tasting::saveAs()
{
    QString const path = QFileDialog::getSaveFileName(
        dialog(), ui::TasteDialog::tr("Save what is remembered of your taste"),
        QStringLiteral("taste.json"), ui::TasteDialog::tr("JSON (*.json)"));
    if (path.isEmpty()) return;
    auto const done = files::writeWhole(path.toStdString(), files::tasteText(m_kept));
    if (done)
        m_workbench.tellDone(ui::TasteDialog::tr("Saved: %1").arg(path));
    else
        m_workbench.tellFault(done.error());
}

} // namespace app
