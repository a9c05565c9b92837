#include "ui/numbers.h"

#include "core/base/words.h"

namespace ui {

QLocale spokenLocale()
{
    // What a page says of its own language.
    QLocale locale(QString::fromStdString(base::said("en-GB")));
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale;
}

QString decimal(double value, int places)
{
    return spokenLocale().toString(value, 'f', places);
}

} // namespace ui
