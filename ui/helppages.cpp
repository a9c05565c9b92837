#include "ui/helppages.h"

#include "ui/actions.h"
#include "ui/button.h"
#include "ui/theme.h"

#include <QCoreApplication>
#include <QDialog>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace ui {

namespace {

QString tr(char const* text) { return QCoreApplication::translate("HelpPages", text); }

void showPage(QWidget* parent, QString const& title, QString const& html, QSize size)
{
    auto* page = new QDialog(parent);
    page->setAttribute(Qt::WA_DeleteOnClose);
    page->setWindowTitle(title);
    auto* text = new QTextBrowser(page);
    text->setFrameShape(QFrame::NoFrame);
    text->document()->setDocumentMargin(14);
    text->setHtml(html);
    text->setAccessibleName(title);
    auto* close = new Button(tr("Close"), page);
    QObject::connect(close, &QAbstractButton::clicked, page, &QDialog::accept);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 12, 12);
    column->addWidget(text, 1);
    column->addWidget(close, 0, Qt::AlignRight);
    page->resize(size);
    page->show();
}

QString row(QString const& keys, QString const& words)
{
    return QStringLiteral("<tr><td style='padding:3px 22px 3px 0'><b>%1</b></td>"
                          "<td style='padding:3px 0'>%2</td></tr>")
        .arg(keys.toHtmlEscaped(), words.toHtmlEscaped());
}

QString heading(QString const& words) { return QStringLiteral("<h3>%1</h3>").arg(words); }

QString paragraph(QString const& words) { return QStringLiteral("<p>%1</p>").arg(words); }

} // namespace

void showKeys(QWidget* parent, Actions const& actions)
{
    QString html =
        heading(tr("In the tune grid")) + QStringLiteral("<table>") +
        row(tr("Arrow keys, Home, End"), tr("choose a chord")) +
        row(tr("1 to 9"), tr("use and keep the shape with that number")) +
        row(tr("Enter"), tr("go to the shapes")) +
        row(tr("Space"), tr("hear the bar, or the passage")) +
        row(tr("Shift and arrow keys"),
            tr("choose a passage, as dragging or Shift and a click do; Esc lets it go")) +
        row(tr("Ctrl and a click, Alt and arrow keys"),
            tr("choose another chord as well: what you do is done to all of them")) +
        row(tr("S"), tr("the ways round a snag in this bar")) + QStringLiteral("</table>") +
        heading(tr("In the shapes")) + QStringLiteral("<table>") +
        row(tr("Up, Down, Page keys"), tr("look at a shape")) +
        row(tr("Space"), tr("hear it")) + row(tr("Enter"), tr("use it and keep it")) +
        row(tr("Left, Esc"), tr("back to the grid")) + QStringLiteral("</table>") +
        heading(tr("While you change notes")) + QStringLiteral("<table>") +
        row(tr("a to g, z"), tr("a note, nearest to the one before; a rest")) +
        row(tr("1 to 9, / * ."), tr("length in quavers; half, double, dotted")) +
        row(tr("' and ,"), tr("an octave higher, lower")) +
        row(tr("^ _ ="), tr("sharp, flat, natural: before the letter")) +
        row(tr("Up, Down"), tr("by a string; with Shift a semitone, with Ctrl an octave")) +
        row(tr("- ( { }"), tr("tie; triplet; grace notes")) +
        row(tr("Del, Backspace"), tr("a note becomes a rest, a rest is taken out")) +
        row(tr("Enter, Page keys"), tr("next bar, other bars")) +
        row(tr("F2, Esc"), tr("back to the grid")) + QStringLiteral("</table>") +
        heading(tr("In the string bank")) + QStringLiteral("<table>") +
        row(tr("Left, Right"), tr("choose a string; Page keys move by an octave")) +
        row(tr("Space"), tr("pluck it")) + QStringLiteral("</table>") +
        heading(tr("Everywhere")) + QStringLiteral("<table>");
    for (QAction const* action : actions.all())
        if (!action->shortcut().isEmpty())
            html += row(action->shortcut().toString(QKeySequence::NativeText),
                        action->text().remove(QLatin1Char('&')));
    html += row(tr("Alt+1 to Alt+5"), tr("key, harp, hand, level, manner")) +
            QStringLiteral("</table>");
    showPage(parent, tr("Keyboard shortcuts"), html, {480, 560});
}

void showCare(QWidget* parent)
{
    showPage(
        parent, tr("Care of hands and harp"),
        heading(tr("Your hands")) +
            paragraph(
                tr("Reach: the shapes you are offered fit the measurements of the hand you "
                   "chose. If a shape pulls, it is too wide for you, whatever the screen says: "
                   "choose a smaller hand, roll the shape, or take one string off it.")) +
            paragraph(
                tr("Tension: relax after every group, keep your shoulders down and do not hold "
                   "a stretch. Holding a tenth more than four times in eight bars, playing "
                   "near your top speed for long, and jumping an octave on every beat tire any "
                   "hand; the line at the foot of the window says where.")) +
            paragraph(tr("Breaks: rest for five minutes after every 25 to 30 minutes. Warm up, "
                         "and begin slowly. Sit with forearms level, feet flat and shoulders "
                         "down.")) +
            paragraph(tr("Your teacher comes first: the fingering and shapes here are only "
                         "suggestions. If you feel pain, numbness or weakness, stop, and see a "
                         "doctor or physiotherapist. Sallow cannot judge your hand.")) +
            heading(tr("Your harp")) +
            paragraph(
                tr("Sallow assumes that your strings are made for the tuning you choose. "
                   "Tuning a string higher than its maker intended can break it or damage the "
                   "soundboard, so ask the maker before you retune a harp.")) +
            paragraph(
                tr("Levers on wound strings are stiff. If a lever has to be forced, stop and "
                   "ask the harp's maker.")),
        {520, 480});
}

void showAbout(QWidget* parent)
{
    showPage(
        parent, tr("About Sallow"),
        heading(tr("Sallow")) +
            paragraph(tr("A workbench for arranging tunes for the lever harp: from a lead "
                         "sheet it makes a left hand that you can play, hear and print.")) +
            paragraph(tr("Version %1").arg(QCoreApplication::applicationVersion())) +
            paragraph(tr("The sallow is the willow that old harps were carved from.")),
        {420, 280});
}

} // namespace ui
