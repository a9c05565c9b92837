#pragma once

namespace ui {

// Whether she wishes to see less motion: strings light up and go out without fading, what is
// played is followed by whole pages, menus and lists open at once. Of the whole program; off
// until it is set. Qt 6.4 tells nothing of the desktop's own wish.
bool lessMotion();
void setLessMotion(bool less);

} // namespace ui
