#pragma once

class QWidget;

namespace ui {

// Tab goes through the controls of a window or dialog as they are read: in the order of its
// layouts, a grid row by row, a splitter pane by pane.
void tabAsRead(QWidget& window);

// The control that Tab goes to from where the keyboard is, in that order as it is now, or back
// with `next` false; nullptr where the keyboard is on none of them. For a window whose panes
// move.
QWidget* besideInOrder(QWidget& window, bool next);

} // namespace ui
