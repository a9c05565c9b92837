#pragma once

#include <QLocale>
#include <QString>

namespace ui {

// How numbers and dates are written in the language in use; no signs between thousands.
QLocale spokenLocale();

// "3.1", in German "3,1".
QString decimal(double value, int places);

} // namespace ui
