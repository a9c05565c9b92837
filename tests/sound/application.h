#pragma once

#include <QCoreApplication>

namespace hearing {

// Qt's timers and signals between threads want an application, even where a test turns the
// clock by hand.
inline QCoreApplication& application()
{
    static int count = 1;
    static char name[] = "test";
    static char* words[] = {name, nullptr};
    static QCoreApplication instance(count, words);
    return instance;
}

} // namespace hearing
