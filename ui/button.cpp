#include "ui/button.h"

#include "ui/theme.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>

#include <algorithm>

namespace ui {

namespace {

// A button that opens a menu, as a reader of the screen meets it: told so, and opened.
class MenuButtonInterface final : public QAccessibleWidget {
public:
    explicit MenuButtonInterface(Button* button)
        : QAccessibleWidget(button, QAccessible::ButtonMenu)
    {}
    QString text(QAccessible::Text kind) const override
    {
        QString const own = QAccessibleWidget::text(kind);
        return kind == QAccessible::Name && own.isEmpty() ? button()->text() : own;
    }
    QAccessible::State state() const override
    {
        QAccessible::State state = QAccessibleWidget::state();
        state.hasPopup = true;
        state.expandable = true;
        state.expanded = button()->menu()->isVisible();
        state.collapsed = !state.expanded;
        return state;
    }
    QStringList actionNames() const override
    {
        QStringList names = QAccessibleWidget::actionNames();
        if (button()->isEnabled()) names.prepend(showMenuAction());
        return names;
    }
    void doAction(QString const& name) override
    {
        if (name != showMenuAction()) return QAccessibleWidget::doAction(name);
        button()->click();
    }

private:
    Button* button() const { return static_cast<Button*>(widget()); }
};

QAccessibleInterface* menuButtonFactory(QString const&, QObject* object)
{
    auto* button = qobject_cast<Button*>(object);
    return button && button->menu() ? new MenuButtonInterface(button) : nullptr;
}

constexpr int side = 11;   // between outline and content
constexpr int between = 7; // between sign, caption and text
constexpr int signSide = 13;
constexpr int arrowWidth = 8;

} // namespace

Button::Button(QString const& text, QWidget* parent) : QAbstractButton(parent)
{
    setText(text);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    setCursor(Qt::PointingHandCursor);
    connect(this, &QAbstractButton::clicked, this, [this] {
        if (m_menu) openMenu();
    });
}

void Button::setSign(Sign sign)
{
    m_sign = sign;
    update();
}

void Button::setCaption(QString const& caption)
{
    m_caption = caption;
    updateGeometry();
    update();
}

void Button::setCaptionShown(bool shown)
{
    if (m_captionShown == shown) return;
    m_captionShown = shown;
    updateGeometry();
    update();
}

void Button::setLook(Look look)
{
    m_look = look;
    update();
}

void Button::setFill(Fill fill)
{
    m_fill = fill;
    update();
}

void Button::setMenu(QMenu* menu)
{
    menu->setParent(this, menu->windowFlags());
    m_menu = menu;
    QAccessible::installFactory(menuButtonFactory);
    updateGeometry();
}

QSize Button::sizeFor(bool captionShown, QString const& text) const
{
    QFontMetricsF const plain(scaledFont(*this, 1.0));
    QFontMetricsF const bold(scaledFont(*this, 1.0, QFont::DemiBold));
    double width = 2 * side;
    bool any = false;
    auto const add = [&](double part) {
        width += part + (any ? between : 0);
        any = true;
    };
    if (m_sign != Sign::None) add(signSide);
    if (captionShown && !m_caption.isEmpty()) add(plain.horizontalAdvance(m_caption));
    if (!text.isEmpty()) add(bold.horizontalAdvance(text) + 1);
    if (m_menu) add(arrowWidth);
    int const height = qRound(bold.height()) + 14;
    return {std::max(qRound(width + 0.5), height), height};
}

QSize Button::sizeFor(bool captionShown) const { return sizeFor(captionShown, text()); }
QSize Button::sizeHint() const { return sizeFor(m_captionShown); }

QSize Button::minimumSizeHint() const
{
    QSize const whole = sizeHint();
    QSize const least = sizeFor(false, m_menu ? text().left(5) : text());
    return least.boundedTo(whole);
}

Button::Colours Button::colours() const
{
    Palette const& p = paletteOf(*this);
    bool const pointed = underMouse() && isEnabled();
    Rgb const fill = m_fill == Fill::Leaf ? p.leaf : p.amber;
    Rgb const onFill = m_fill == Fill::Leaf ? p.onLeaf : p.onAmber;
    if (!isEnabled())
        return {m_look == Look::Flat ? QColor(Qt::transparent) : colour(p.paper),
                m_look == Look::Flat ? QColor(Qt::transparent) : colour(p.edge), colour(p.rule),
                colour(p.rule)};
    if (m_look == Look::Main || isChecked())
        return {isDown() ? colour(fill).darker(112) : colour(fill),
                pointed ? colour(p.ink) : colour(fill), colour(onFill), colour(onFill)};
    if (m_look == Look::Flat)
        return {pointed || isDown() ? colour(p.leafWash) : QColor(Qt::transparent),
                Qt::transparent, colour(p.ink), colour(p.quiet)};
    return {isDown() ? colour(p.leafWash) : colour(p.raised),
            pointed ? colour(p.rule) : colour(p.edge), colour(p.ink), colour(p.quiet)};
}

void Button::paintEvent(QPaintEvent*)
{
    Palette const& p = paletteOf(*this);
    Colours const c = colours();
    QPainter painter(this);
    painter.setLayoutDirection(layoutDirection());
    painter.setRenderHint(QPainter::Antialiasing);
    QRectF const body = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
    painter.setPen(QPen(c.outline, 1));
    painter.setBrush(c.ground);
    painter.drawRoundedRect(body, 7, 7);
    if (hasFocus()) {
        bool const filled = m_look == Look::Main || isChecked();
        painter.setPen(QPen(colour(filled ? p.ink : p.leaf), 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 7.5, 7.5);
    }

    // Places are laid from the left; where a language reads from the right they are mirrored,
    // as the painter does with words in them.
    auto const there = [this](QRectF const& place) {
        return isRightToLeft()
                   ? QRectF(width() - place.right(), place.top(), place.width(), place.height())
                   : place;
    };
    QRectF inside = QRectF(rect()).adjusted(side, 0, -side, 0);
    if (text().isEmpty() && m_caption.isEmpty()) {
        paintSign(
            painter, m_sign,
            inside.adjusted(-side, 0, side, 0)
                .adjusted(0, (height() - signSide) / 2.0, 0, -(height() - signSide) / 2.0),
            c.text);
        return;
    }
    bool const heavy = !m_caption.isEmpty() || m_look == Look::Main || isChecked();
    QFont const words = scaledFont(*this, 1.0, heavy ? QFont::DemiBold : QFont::Normal);
    // Contents stand in the middle of a button that opens no menu.
    if (!m_menu) {
        double const sign = m_sign == Sign::None ? 0 : signSide + between;
        double const used = sign + QFontMetricsF(words).horizontalAdvance(text());
        inside.setLeft(std::max(inside.left(), (width() - used) / 2));
    }
    if (m_sign != Sign::None) {
        paintSign(painter, m_sign,
                  there({inside.left(), (height() - signSide) / 2.0, signSide, signSide}),
                  c.text);
        inside.setLeft(inside.left() + signSide + between);
    }
    if (m_menu) {
        double const at = inside.right() - arrowWidth;
        double const x = there({at, 0, arrowWidth, 0}).left();
        double const y = height() / 2.0;
        painter.setPen(QPen(c.caption, 1.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.setBrush(Qt::NoBrush);
        painter.drawPolyline(QPolygonF({{x, y - 2}, {x + 4, y + 2}, {x + 8, y - 2}}));
        inside.setRight(at - between);
    }
    int const upright = Qt::AlignVCenter | Qt::AlignLeft;
    bool const roomForCaption = width() >= sizeFor(true).width();
    if (m_captionShown && roomForCaption && !m_caption.isEmpty()) {
        painter.setFont(scaledFont(*this, 1.0));
        painter.setPen(c.caption);
        painter.drawText(there(inside), upright, m_caption);
        inside.setLeft(inside.left() + painter.fontMetrics().horizontalAdvance(m_caption) +
                       between);
    }
    painter.setFont(words);
    painter.setPen(c.text);
    painter.drawText(
        there(inside), upright,
        painter.fontMetrics().elidedText(text(), Qt::ElideRight, qRound(inside.width() + 1)));
}

void Button::keyPressEvent(QKeyEvent* event)
{
    bool const enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    bool const opens = m_menu && event->key() == Qt::Key_Down;
    if (!enter && !opens) {
        QAbstractButton::keyPressEvent(event);
        return;
    }
    click();
}

void Button::enterEvent(QEnterEvent* event)
{
    QAbstractButton::enterEvent(event);
    update();
}

void Button::leaveEvent(QEvent* event)
{
    QAbstractButton::leaveEvent(event);
    update();
}

void Button::openMenu()
{
    m_menu->setMinimumWidth(width());
    m_menu->popup(mapToGlobal(QPoint(0, height() + 2)));
}

} // namespace ui
