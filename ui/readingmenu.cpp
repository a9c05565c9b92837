#include "ui/readingmenu.h"

#include <QActionGroup>
#include <QStringList>

namespace ui {

namespace {

// Brackets are chosen apart from it.
bool isBeginners(Reading const& reading)
{
    Reading const beginners = beginnersReading();
    return reading.staffMm == beginners.staffMm && reading.helps == beginners.helps;
}

} // namespace

sheet::SheetStyle styled(sheet::SheetStyle style, Reading const& reading)
{
    style.staffMm = reading.staffMm;
    style.helps = reading.helps;
    style.placings = reading.placings;
    return style;
}

Reading readingOf(sheet::SheetStyle const& style)
{
    return {style.staffMm, style.helps, style.placings};
}

Reading beginnersReading() { return {sheet::hugeStaffMm, {true, true, true}}; }

QString readingWords(Reading const& reading)
{
    if (isBeginners(reading)) return ReadingMenu::tr("Beginner's paper");
    QStringList words;
    words << (reading.staffMm >= sheet::hugeStaffMm    ? ReadingMenu::tr("Huge print")
              : reading.staffMm >= sheet::largeStaffMm ? ReadingMenu::tr("Large print")
                                                       : ReadingMenu::tr("Normal print"));
    if (reading.helps != sheet::Helps{}) words << ReadingMenu::tr("with help");
    return words.join(QLatin1Char(' '));
}

ReadingMenu::ReadingMenu(QWidget* parent) : QMenu(parent)
{
    auto* const sizes = new QActionGroup(this);
    for (auto const& [words, staffMm] : {std::pair{tr("&Normal print"), sheet::usualStaffMm},
                                         std::pair{tr("&Large print"), sheet::largeStaffMm},
                                         std::pair{tr("&Huge print"), sheet::hugeStaffMm}})
        sizes->addAction(size(words, staffMm));
    addSeparator();
    help(tr("&Red C and blue F strings"), &sheet::Helps::coloured);
    help(tr("Note n&ames in the heads"), &sheet::Helps::noteNames);
    help(tr("&String path under the staff"), &sheet::Helps::stringPath);
    addSeparator();
    auto* const which = new QActionGroup(this);
    which->addAction(brackets(tr("&Every placing bracket"), sheet::Placings::All));
    which->addAction(
        brackets(tr("&Placing brackets where they help"), sheet::Placings::Helpful));
    which->addAction(brackets(tr("N&o placing brackets"), sheet::Placings::None));
    addSeparator();
    m_beginners = addAction(tr("&Beginner's paper"));
    m_beginners->setCheckable(true);
    connect(m_beginners, &QAction::triggered, this, [this](bool on) {
        Reading reading = on ? beginnersReading() : Reading{};
        reading.placings = m_reading.placings;
        emit chosen(reading);
    });
    setReading({});
}

QAction* ReadingMenu::size(QString const& words, double staffMm)
{
    QAction* const action = addAction(words);
    action->setCheckable(true);
    connect(action, &QAction::triggered, this, [this, staffMm] {
        Reading reading = m_reading;
        reading.staffMm = staffMm;
        emit chosen(reading);
    });
    m_sizes.append({action, staffMm});
    return action;
}

QAction* ReadingMenu::help(QString const& words, bool sheet::Helps::* which)
{
    QAction* const action = addAction(words);
    action->setCheckable(true);
    connect(action, &QAction::triggered, this, [this, which](bool on) {
        Reading reading = m_reading;
        reading.helps.*which = on;
        emit chosen(reading);
    });
    m_helps.append({action, which});
    return action;
}

QAction* ReadingMenu::brackets(QString const& words, sheet::Placings which)
{
    QAction* const action = addAction(words);
    action->setCheckable(true);
    connect(action, &QAction::triggered, this, [this, which] {
        Reading reading = m_reading;
        reading.placings = which;
        emit chosen(reading);
    });
    m_brackets.append({action, which});
    return action;
}

void ReadingMenu::setReading(Reading const& reading)
{
    m_reading = reading;
    for (auto const& [action, staffMm] : m_sizes)
        action->setChecked(staffMm == reading.staffMm);
    for (auto const& [action, which] : m_helps) action->setChecked(reading.helps.*which);
    for (auto const& [action, which] : m_brackets)
        action->setChecked(which == reading.placings);
    m_beginners->setChecked(isBeginners(reading));
}

} // namespace ui
