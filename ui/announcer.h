#pragma once

#include "ui/readable.h"

#include <QWidget>

namespace ui {

// Says in one sentence, to readers of the screen alone, what has changed elsewhere in the
// window than where the keyboard is. A pane without room in its window.
class Announcer final : public QWidget, public SpokenAs {
    Q_OBJECT
public:
    explicit Announcer(QWidget* window);
    void say(QString const& sentence);
};

} // namespace ui
