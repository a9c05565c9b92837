#pragma once

#include "ui/palette.h"

#include <QColor>
#include <QFont>
#include <QString>

class QApplication;
class QWidget;

namespace ui {

enum class Theme { System, Light, Dark };

inline QColor colour(Rgb c) { return {c.red, c.green, c.blue}; }
inline QColor colour(Rgb c, double opacity)
{
    QColor mixed = colour(c);
    mixed.setAlphaF(static_cast<float>(opacity));
    return mixed;
}

// Dresses the whole program. System: as the desktop was when the program began.
void dress(QApplication& application, Theme theme);

// The palette a widget is dressed in.
Palette const& paletteOf(QWidget const& widget);

// The widget's font, so many times its size, and as heavy as asked.
QFont scaledFont(QWidget const& widget, double times, QFont::Weight weight = QFont::Normal);

// The text broken into so many lines of a width, with an ellipsis where more is left.
QString elidedLines(QString const& text, QFont const& font, double width, int lines);

} // namespace ui
