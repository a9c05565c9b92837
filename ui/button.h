#pragma once

#include "ui/signs.h"

#include <QAbstractButton>

class QMenu;

namespace ui {

// The workbench's button: a sign, a quiet caption, a text, and a small arrow where it opens a
// menu. Checked it is filled with the colour of its hand.
class Button final : public QAbstractButton {
    Q_OBJECT
public:
    enum class Look { Plain, Main, Flat };
    enum class Fill { Leaf, Amber }; // when checked

    explicit Button(QString const& text, QWidget* parent = nullptr);

    void setSign(Sign sign);
    void setCaption(QString const& caption); // "Key": stands before the text
    void setCaptionShown(bool shown);
    void setLook(Look look);
    void setFill(Fill fill);
    void setMenu(QMenu* menu); // owned by the button; pressing opens it
    QMenu* menu() const { return m_menu; }

    QSize sizeHint() const override;
    QSize sizeFor(bool captionShown) const; // with its caption or without
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    struct Colours {
        QColor ground, outline, text, caption;
    };
    Colours colours() const;
    QSize sizeFor(bool captionShown, QString const& text) const;
    void openMenu();

    Sign m_sign = Sign::None;
    QString m_caption;
    bool m_captionShown = true;
    Look m_look = Look::Plain;
    Fill m_fill = Fill::Leaf;
    QMenu* m_menu = nullptr;
};

} // namespace ui
