#include "app/preferences.h"

#include "ui/workbench.h"

namespace app {

namespace {

constexpr char const* themeKey = "theme";
constexpr char const* windowKey = "window";
constexpr char const* paperKey = "paper";

} // namespace

Preferences::Preferences() : m_settings(QStringLiteral("Sallow"), QStringLiteral("Sallow")) {}
Preferences::Preferences(QString const& file) : m_settings(file, QSettings::IniFormat) {}

ui::Theme Preferences::theme() const
{
    QString const name = m_settings.value(themeKey).toString();
    if (name == QStringLiteral("light")) return ui::Theme::Light;
    if (name == QStringLiteral("dark")) return ui::Theme::Dark;
    return ui::Theme::System;
}

void Preferences::keepTheme(ui::Theme theme)
{
    m_settings.setValue(themeKey, theme == ui::Theme::Light  ? QStringLiteral("light")
                                  : theme == ui::Theme::Dark ? QStringLiteral("dark")
                                                             : QStringLiteral("system"));
}

void Preferences::applyTo(ui::Workbench& workbench) const
{
    workbench.restoreGeometry(m_settings.value(windowKey).toByteArray());
    if (m_settings.value(paperKey).toString() == QStringLiteral("letter"))
        workbench.setPaper(sheet::Paper::Letter);
    ui::Actions const& actions = workbench.actions();
    QAction* const marked = theme() == ui::Theme::Light  ? actions.light
                            : theme() == ui::Theme::Dark ? actions.dark
                                                         : actions.system;
    marked->setChecked(true);
}

void Preferences::keepFrom(ui::Workbench const& workbench)
{
    m_settings.setValue(windowKey, workbench.saveGeometry());
    m_settings.setValue(paperKey, workbench.paper() == sheet::Paper::Letter
                                      ? QStringLiteral("letter")
                                      : QStringLiteral("a4"));
}

} // namespace app
