#pragma once

#include "ui/readable.h"

#include <QStringList>
#include <QWidget>

namespace ui {

class Button;

// The foot of the window: what the arrangement costs, and what the arranger should look at.
class StatusLine final : public QWidget, public SpokenAs {
    Q_OBJECT
public:
    explicit StatusLine(QWidget* parent = nullptr);

    void setWords(QString const& left, QString const& right);
    void setWarnings(QStringList const& warnings);

signals:
    void warningsClicked();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void place();

    QString m_left;
    QString m_right;
    Button* m_warnings;
};

// "2 things to check"
QString toCheckWords(qsizetype count);

} // namespace ui
