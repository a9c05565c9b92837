#pragma once

namespace ui {
class Workbench;
}

namespace app {

class Preferences;

// Speaks the language chosen in the window, else the system's; before the window is made.
void speakAsChosen();

// Adds the choice of a language to the menu of the view: as the system, or one by its own name.
// It is kept for the next start.
void addLanguageMenu(ui::Workbench& workbench, Preferences& preferences);

} // namespace app
