#include "ui/variantpanel.h"

#include "ui/button.h"
#include "ui/followedbox.h"
#include "ui/ownpattern.h"
#include "ui/theme.h"
#include "ui/whynotlist.h"

#include <QPainter>

#include <algorithm>

namespace ui {

VariantPanel::VariantPanel(QWidget* parent)
    : QWidget(parent), m_list(new VariantList(this)), m_whyNot(new WhyNotList(this)),
      m_own(new OwnPattern(this)), m_followed(new FollowedBox(this)),
      m_whyNotButton(new Button(tr("Why not the others?"), this))
{
    setMinimumWidth(std::max(250, 30 * fontMetrics().averageCharWidth()));
    m_whyNot->hide();
    m_whyNotButton->setLook(Button::Look::Flat);
    m_whyNotButton->setCheckable(true);
    m_whyNotButton->setToolTip(
        tr("The patterns in the pattern book that cannot be played here, and why"));
    connect(m_whyNotButton, &Button::toggled, this, [this](bool unfolded) {
        m_list->setVisible(!unfolded);
        m_whyNot->setVisible(unfolded);
        if (unfolded) emit whyNotWanted();
    });
    connect(m_own, &OwnPattern::resized, this, &VariantPanel::layOut);
    connect(m_followed, &FollowedBox::resized, this, &VariantPanel::layOut);
}

bool VariantPanel::showsWhyNot() const { return m_whyNotButton->isChecked(); }

int VariantPanel::headingHeight() const
{
    int const words =
        static_cast<int>(QFontMetricsF(scaledFont(*this, 1.12, QFont::Bold)).height() +
                         QFontMetricsF(scaledFont(*this, 0.92)).height()) +
        18;
    return words + (isAskedBelow() ? m_whyNotButton->sizeHint().height() + 4 : 0);
}

// With large letters the button has no room beside the heading.
bool VariantPanel::isAskedBelow() const
{
    return 3 * m_whyNotButton->sizeHint().width() > 2 * width();
}

void VariantPanel::setHeading(QString const& title, QString const& detail)
{
    m_title = title;
    m_detail = detail;
    // What is painted above the list is told with it.
    m_list->setAccessibleName(detail.isEmpty() ? title : title + QStringLiteral(", ") + detail);
    update();
}

void VariantPanel::paintEvent(QPaintEvent*)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(this);
    painter.fillRect(rect(), colour(p.paper));
    int const across = width() - 34 - (isAskedBelow() ? 0 : m_whyNotButton->width());
    painter.setFont(scaledFont(*this, 1.12, QFont::Bold));
    painter.setPen(colour(p.ink));
    int const large = painter.fontMetrics().height();
    painter.drawText(QRect(14, 10, across, large), Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(m_title, Qt::ElideRight, across));
    painter.setFont(scaledFont(*this, 0.92));
    painter.setPen(colour(p.quiet));
    painter.drawText(QRect(14, 11 + large, across, painter.fontMetrics().height()),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(m_detail, Qt::ElideRight, across));
    painter.setPen(colour(p.edge));
    painter.drawLine(0, headingHeight() - 1, width(), headingHeight() - 1);
    painter.drawLine(0, m_list->geometry().bottom() + 1, width(),
                     m_list->geometry().bottom() + 1);
}

void VariantPanel::resizeEvent(QResizeEvent*) { layOut(); }

void VariantPanel::layOut()
{
    constexpr int margin = 12;
    int const top = headingHeight();
    int const foot = m_own->heightForWidth(width() - 2 * margin) > 0
                         ? m_own->heightForWidth(width() - 2 * margin)
                         : m_own->sizeHint().height();
    int const across = width() - 2 * margin;
    constexpr int roomy = 460;
    m_followed->setLow(height() < roomy);
    int const told = m_followed->heightFor(across);
    int const below = foot + margin + margin / 2 + (told > 0 ? told + margin / 2 : 0);
    QRect const middle(0, top, width(), std::max(0, height() - top - below));
    m_list->setGeometry(middle);
    m_whyNot->setGeometry(middle.adjusted(margin, margin / 2, 0, 0));
    m_followed->setGeometry(margin, height() - below + margin / 2, across, told);
    m_own->setGeometry(margin, height() - foot - margin / 2 - 3, width() - 2 * margin, foot);
    QSize const button = m_whyNotButton->sizeHint();
    int const buttonTop =
        isAskedBelow() ? top - button.height() - 5 : (top - button.height()) / 2;
    m_whyNotButton->setGeometry(width() - button.width() - 8, buttonTop, button.width(),
                                button.height());
    update();
}

} // namespace ui
