#pragma once

#include "ui/palette.h"

#include <QColor>
#include <QFont>
#include <QObject>
#include <QString>

#include <functional>

class QApplication;
class QWidget;

namespace ui {

// The strong ones have a high contrast.
enum class Theme { System, Light, Dark, StrongLight, StrongDark };

// "light", "strong-dark": as it is kept and typed. Other words are the desktop's theme.
QString themeName(Theme theme);
Theme themeNamed(QString const& name);

inline QColor colour(Rgb c) { return {c.red, c.green, c.blue}; }
inline QColor colour(Rgb c, double opacity)
{
    QColor mixed = colour(c);
    mixed.setAlphaF(static_cast<float>(opacity));
    return mixed;
}

// Where it is painted faintly; less faint in a theme of high contrast.
inline QColor faint(Palette const& p, Rgb c, double opacity)
{
    return colour(c, opacity < p.leastOpacity ? p.leastOpacity : opacity);
}

// Whether the desktop's own palette is dark now.
bool desktopIsDark();

// Dresses the whole program. System: as the desktop is now.
void dress(QApplication& application, Theme theme);

// Dresses the program anew whenever the desktop changes, while it is to look like it.
class ThemeFollower final : public QObject {
    Q_OBJECT
public:
    // `desktop` tells whether the desktop is dark.
    explicit ThemeFollower(QApplication& application,
                           std::function<bool()> desktop = desktopIsDark);
    void setTheme(Theme theme) { m_theme = theme; }
    Theme theme() const { return m_theme; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void follow();

    QApplication& m_application;
    std::function<bool()> m_desktop;
    Theme m_theme = Theme::System;
    bool m_waiting = false; // several windows tell of one change
};

// The palette a widget is dressed in.
Palette const& paletteOf(QWidget const& widget);

// The ground and the frame of a card that lies over the window.
void paintCard(QWidget& card);

// The widget's font, so many times its size, and as heavy as asked.
QFont scaledFont(QWidget const& widget, double times, QFont::Weight weight = QFont::Normal);

// The text broken into so many lines of a width, with an ellipsis where more is left.
QString elidedLines(QString const& text, QFont const& font, double width, int lines);

} // namespace ui
