#include "ui/whynotlist.h"

#include "ui/theme.h"

namespace ui {

WhyNotList::WhyNotList(QWidget* parent) : QTextBrowser(parent)
{
    setFrameShape(QFrame::NoFrame);
    setOpenLinks(false);
    setFont(scaledFont(*this, 0.92));
    setAccessibleName(tr("Patterns that cannot be played here"));
}

void WhyNotList::setRows(std::vector<proposal::Unplayable> const& rows)
{
    QString text;
    for (proposal::Unplayable const& row : rows)
        text += QStringLiteral("<p style='margin: 0 0 7px 0'><b>%1</b>&nbsp; %2</p>")
                    .arg(QString::fromStdString(row.pattern).toHtmlEscaped(),
                         QString::fromStdString(row.why).toHtmlEscaped());
    setHtml(rows.empty() ? tr("Every pattern in the pattern book can be played here.") : text);
}

} // namespace ui
