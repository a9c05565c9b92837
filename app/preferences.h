#pragma once

#include "ui/theme.h"

#include <QSettings>

namespace ui {
class Workbench;
}

namespace app {

// What the program remembers from one day to the next: theme, window and paper. Nothing of the
// music, which is kept in files.
class Preferences {
public:
    Preferences();
    explicit Preferences(QString const& file); // for tests

    ui::Theme theme() const;
    void keepTheme(ui::Theme theme);

    // Window, paper and the mark at the theme in the menu. What is not readable is passed over.
    void applyTo(ui::Workbench& workbench) const;
    void keepFrom(ui::Workbench const& workbench);

private:
    QSettings m_settings;
};

} // namespace app
