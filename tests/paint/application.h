#pragma once

#include <QApplication>

// The one application object that painting needs; without a display. It is never destroyed: at the
// end of the program Qt's own statics would be gone before it.
inline QApplication& application()
{
    static int count = 1;
    static char name[] = "test";
    static char* words[] = {name, nullptr};
    static QApplication* const instance = new QApplication(count, words);
    return *instance;
}
