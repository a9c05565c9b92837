#pragma once

#include "app/desk.h"
#include "app/secondcopy.h"

#include <QAction>
#include <QDialog>
#include <QPointer>

namespace app {

// What a dialog of the window asks for and a second copy of the program does, so that the window
// stays free.
class BesideWindow : public QObject {
    Q_OBJECT
public:
    virtual void open() = 0; // the dialog

protected:
    // `action` opens the dialog; `program`: empty, the running one.
    BesideWindow(Desk const& desk, QAction* action, QString program);

    QString forWhom() const; // harp, hand and level of new tunes, in words
    static void show(QDialog& dialog);

    virtual void hear(QString const& line) = 0;       // that the copy said
    virtual void tellEnd(SecondCopy::End how) = 0;

    Desk m_desk;
    SecondCopy m_copy;
};

} // namespace app
