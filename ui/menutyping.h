#pragma once

#include <QString>

class QMenu;

namespace ui {

// Lets a menu open on the entry that holds now, and be chosen from by typing a number: the first
// entry with a number that begins so is gone to, and chosen where no other begins so.
void takeTyping(QMenu& menu);

// Whether a number in the words begins with these digits: "34 strings · E♭" with "3" and "34".
bool numberBegins(QString const& words, QString const& digits);

} // namespace ui
