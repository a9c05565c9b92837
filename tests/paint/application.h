#pragma once

#include <QApplication>

// The one application object that painting needs; without a display.
inline QApplication& application()
{
    static int count = 1;
    static char name[] = "test";
    static char* words[] = {name, nullptr};
    static QApplication instance(count, words);
    return instance;
}
