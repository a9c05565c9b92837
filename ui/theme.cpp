#include "ui/theme.h"

#include "ui/motion.h"

#include <QApplication>
#include <QEvent>
#include <QPainter>
#include <QPalette>
#include <QProxyStyle>
#include <QStyleFactory>
#include <QStyleOption>
#include <QTextLayout>
#include <QWidget>

#include <array>

namespace ui {

namespace {

QPalette widgetPalette(Palette const& p)
{
    QPalette palette;
    palette.setColor(QPalette::Window, colour(p.paper));
    palette.setColor(QPalette::WindowText, colour(p.ink));
    palette.setColor(QPalette::Base, colour(p.card));
    palette.setColor(QPalette::AlternateBase, colour(p.paper));
    palette.setColor(QPalette::Text, colour(p.ink));
    palette.setColor(QPalette::Button, colour(p.raised));
    palette.setColor(QPalette::ButtonText, colour(p.ink));
    palette.setColor(QPalette::BrightText, colour(p.warnInk));
    palette.setColor(QPalette::Highlight, colour(p.leaf));
    palette.setColor(QPalette::HighlightedText, colour(p.onLeaf));
    palette.setColor(QPalette::ToolTipBase, colour(p.raised));
    palette.setColor(QPalette::ToolTipText, colour(p.ink));
    palette.setColor(QPalette::PlaceholderText, colour(p.quiet));
    palette.setColor(QPalette::Link, colour(p.leaf));
    palette.setColor(QPalette::Light, colour(p.raised));
    palette.setColor(QPalette::Midlight, colour(p.card));
    palette.setColor(QPalette::Mid, colour(p.edge));
    palette.setColor(QPalette::Dark, colour(p.rule));
    palette.setColor(QPalette::Shadow, colour(p.sunk));
    for (auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, colour(p.rule));
    return palette;
}

// Shapes of the ordinary controls. %name% stands for a colour of the palette.
constexpr char const* controlShapes = R"(
QToolTip { color: %ink%; background: %raised%; border: 1px solid %edge%; padding: 4px 6px; }
QMenuBar { background: %card%; color: %ink%; padding: 1px 10px; }
QMenuBar::item { background: transparent; padding: 4px 9px; border-radius: 5px; }
QMenuBar::item:selected, QMenuBar::item:pressed { background: %leafWash%; color: %ink%; }
QMenu { background: %raised%; color: %ink%; border: 1px solid %edge%; padding: 5px; }
QMenu::item { padding: 5px 26px 5px 26px; border-radius: 5px; }
QMenu::item:selected { background: %leafWash%; color: %ink%; }
QMenu::item:disabled { color: %rule%; }
QMenu::separator { height: 1px; background: %edge%; margin: 5px 8px; }
QMenu::indicator { left: 7px; width: 12px; height: 12px; }
QLineEdit { border: 1px solid %rule%; border-radius: 6px; padding: 4px 6px; background: %card%; }
QLineEdit:focus { border: 1px solid %leaf%; }
ui--TempoField QSpinBox { border: 1px solid %rule%; border-radius: 6px; padding: 4px 5px; background: %card%; }
ui--TempoField QSpinBox:focus { border: 1px solid %leaf%; }
QSlider { min-height: 24px; }
QSlider::groove:horizontal { height: 4px; border-radius: 2px; background: %edge%; }
QSlider::sub-page:horizontal { height: 4px; border-radius: 2px; background: %leaf%; }
QSlider::handle:horizontal { width: 16px; height: 16px; margin: -6px 0; border-radius: 8px;
  background: %leaf%; border: 1px solid %leaf%; }
QSlider::handle:horizontal:hover { border: 1px solid %ink%; }
QSlider:focus { border: 2px solid %leaf%; border-radius: 7px; }
QScrollBar:vertical { background: transparent; width: 10px; margin: 2px; }
QScrollBar:horizontal { background: transparent; height: 10px; margin: 2px; }
QScrollBar::handle { background: %rule%; border-radius: 3px; }
QScrollBar::handle:vertical { min-height: 30px; }
QScrollBar::handle:horizontal { min-width: 30px; }
QScrollBar::handle:hover { background: %quiet%; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QSplitter::handle { background: %edge%; }
QSplitter::handle:hover { background: %leaf%; }
QDialog { background: %card%; }
)";

QString styleSheet(Palette const& p)
{
    QString sheet = QString::fromLatin1(controlShapes);
    auto const put = [&sheet](char const* name, Rgb c) {
        sheet.replace(QLatin1Char('%') + QLatin1String(name) + QLatin1Char('%'),
                      colour(c).name());
    };
    put("paper", p.paper);
    put("card", p.card);
    put("raised", p.raised);
    put("leafWash", p.leafWash);
    put("edge", p.edge);
    put("rule", p.rule);
    put("ink", p.ink);
    put("quiet", p.quiet);
    put("leaf", p.leaf);
    put("onLeaf", p.onLeaf);
    return sheet;
}

constexpr std::array<char const*, 5> themeNames{"system", "light", "dark", "strong-light",
                                                "strong-dark"};

} // namespace

QString themeName(Theme theme)
{
    return QLatin1String(themeNames[static_cast<std::size_t>(theme)]);
}

Theme themeNamed(QString const& name)
{
    for (std::size_t i = 0; i < themeNames.size(); ++i)
        if (name == QLatin1String(themeNames[i])) return static_cast<Theme>(i);
    return Theme::System;
}

// An application without a palette of its own has the desktop's.
bool desktopIsDark()
{
    QPalette const worn = QGuiApplication::palette();
    bool const dressed = worn.resolveMask() != 0;
    if (dressed) QApplication::setPalette(QPalette());
    QPalette const desktop = QGuiApplication::palette();
    bool const dark = desktop.color(QPalette::Window).lightness() <
                      desktop.color(QPalette::WindowText).lightness();
    if (dressed) QApplication::setPalette(worn);
    return dark;
}

namespace {

Palette const& paletteFor(Theme theme)
{
    switch (theme) {
    case Theme::Light:
        return dayPalette;
    case Theme::Dark:
        return nightPalette;
    case Theme::StrongLight:
        return strongDayPalette;
    case Theme::StrongDark:
        return strongNightPalette;
    case Theme::System:
        break;
    }
    return desktopIsDark() ? nightPalette : dayPalette;
}

// Fusion's own edges of fields, lists and check boxes hardly stand out where a window is very
// light or dark.
class Edged final : public QProxyStyle {
public:
    explicit Edged(Palette const& palette)
        : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))), m_palette(palette)
    {
    }
    void drawPrimitive(PrimitiveElement element, QStyleOption const* option, QPainter* painter,
                       QWidget const* widget) const override
    {
        if (element != PE_IndicatorCheckBox) {
            QProxyStyle::drawPrimitive(element, option, painter, widget);
            if (element == PE_PanelButtonCommand || element == PE_Frame) edge(option, painter);
            return;
        }
        bool const enabled = option->state.testFlag(State_Enabled);
        bool const on = option->state.testFlag(State_On);
        QColor edge = colour(on ? m_palette.leaf : m_palette.quiet);
        QColor inside = colour(on ? m_palette.leaf : m_palette.card);
        if (!enabled) edge = inside = colour(on ? m_palette.rule : m_palette.card);
        if (!enabled && !on) edge = colour(m_palette.rule);
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        QRectF const box = QRectF(option->rect).adjusted(0.75, 0.75, -0.75, -0.75);
        painter->setPen(QPen(edge, 1.5));
        painter->setBrush(inside);
        painter->drawRoundedRect(box, 3, 3);
        if (on) {
            double const w = box.width();
            QPen tick(colour(enabled ? m_palette.onLeaf : m_palette.card), 0.14 * w);
            tick.setCapStyle(Qt::RoundCap);
            tick.setJoinStyle(Qt::RoundJoin);
            painter->setPen(tick);
            painter->setBrush(Qt::NoBrush);
            painter->drawPolyline(QPolygonF{{box.left() + 0.24 * w, box.top() + 0.52 * w},
                                            {box.left() + 0.43 * w, box.top() + 0.72 * w},
                                            {box.left() + 0.77 * w, box.top() + 0.30 * w}});
        }
        painter->restore();
    }
    int styleHint(StyleHint hint, QStyleOption const* option, QWidget const* widget,
                  QStyleHintReturn* answer) const override
    {
        if (hint == SH_DialogButtonBox_ButtonsHaveIcons) return 0;
        if (hint == SH_Widget_Animation_Duration && lessMotion()) return 0;
        return QProxyStyle::styleHint(hint, option, widget, answer);
    }
    void drawComplexControl(ComplexControl control, QStyleOptionComplex const* option,
                            QPainter* painter, QWidget const* widget) const override
    {
        QProxyStyle::drawComplexControl(control, option, painter, widget);
        if (control == CC_ComboBox || control == CC_SpinBox) edge(option, painter);
    }

private:
    void edge(QStyleOption const* option, QPainter* painter) const
    {
        bool const focused = option->state.testFlag(State_HasFocus);
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->setBrush(Qt::NoBrush);
        // Dashes tell what is out of use where nothing may be faint.
        bool const enabled = option->state.testFlag(State_Enabled);
        painter->setPen(QPen(colour(focused ? m_palette.leaf : m_palette.rule), 1,
                             enabled ? Qt::SolidLine : Qt::DashLine));
        painter->drawRoundedRect(QRectF(option->rect).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
        painter->restore();
    }

    Palette const& m_palette;
};

} // namespace

void dress(QApplication& application, Theme theme)
{
    Palette const& palette = paletteFor(theme);
    QApplication::setStyle(new Edged(palette));
    QApplication::setPalette(widgetPalette(palette));
    application.setStyleSheet(styleSheet(palette));
}

ThemeFollower::ThemeFollower(QApplication& application, std::function<bool()> desktop)
    : m_application(application), m_desktop(std::move(desktop))
{
    application.installEventFilter(this);
}

bool ThemeFollower::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::ThemeChange && m_theme == Theme::System && !m_waiting) {
        m_waiting = true;
        QMetaObject::invokeMethod(this, &ThemeFollower::follow, Qt::QueuedConnection);
    }
    return QObject::eventFilter(watched, event);
}

void ThemeFollower::follow()
{
    m_waiting = false;
    if (m_theme == Theme::System)
        dress(m_application, m_desktop() ? Theme::Dark : Theme::Light);
}

Palette const& paletteOf(QWidget const& widget)
{
    QPalette const& palette = widget.palette();
    bool const dark = palette.color(QPalette::WindowText).lightness() >
                      palette.color(QPalette::Window).lightness();
    // The grounds of the strong palettes are those of no other.
    QColor const ground = palette.color(QPalette::Window);
    if (dark)
        return ground == colour(strongNightPalette.paper) ? strongNightPalette : nightPalette;
    return ground == colour(strongDayPalette.paper) ? strongDayPalette : dayPalette;
}

void paintCard(QWidget& card)
{
    Palette const& p = paletteOf(card);
    QPainter painter(&card);
    painter.fillRect(card.rect(), colour(p.card));
    painter.setPen(QPen(colour(p.rule), 1));
    painter.drawRect(card.rect().adjusted(0, 0, -1, -1));
}

QString elidedLines(QString const& text, QFont const& font, double width, int lines)
{
    QFontMetricsF const metrics(font);
    QTextLayout layout(text, font);
    QString kept;
    layout.beginLayout();
    for (int i = 0; i < lines; ++i) {
        QTextLine line = layout.createLine();
        if (!line.isValid()) break;
        line.setLineWidth(width);
        bool const last = i + 1 == lines;
        QString const words =
            last ? text.mid(line.textStart()) : text.mid(line.textStart(), line.textLength());
        kept += last ? metrics.elidedText(words, Qt::ElideRight, width)
                     : words.trimmed() + QChar::LineSeparator;
    }
    layout.endLayout();
    return kept;
}

QFont scaledFont(QWidget const& widget, double times, QFont::Weight weight)
{
    QFont font = widget.font();
    if (font.pointSizeF() > 0)
        font.setPointSizeF(font.pointSizeF() * times);
    else
        font.setPixelSize(qRound(font.pixelSize() * times));
    font.setWeight(weight);
    return font;
}

} // namespace ui
