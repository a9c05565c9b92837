#pragma once

#include "ui/readable.h"

#include <QWidget>

class QLabel;

namespace ui {

class Button;
class Session;

// Three first steps, one at a time in a line under the header, each gone when it is done: a
// tune is open, a shape is kept, the sheet is looked at. It takes neither the keyboard nor the
// tune's place.
class FirstSteps final : public QWidget, public SpokenAs {
    Q_OBJECT
public:
    static constexpr int count = 3;

    FirstSteps(Session& session, QWidget* parent);

    void begin();      // at the first that is not done yet
    void sheetShown(); // was done
    void end();
    int step() const { return m_step; } // 0 while it is not shown
    QString words() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void go(int step);

    Session& m_session;
    QLabel* m_words;
    Button* m_next;
    Button* m_close;
    int m_step = 0;
};

} // namespace ui
