#pragma once

namespace files {
struct Tables;
}
namespace ui {
class Session;
class Workbench;
} // namespace ui

namespace app {

class Filing;
class Preferences;

// What stands on the arranger's desk: the window, what is open in it and in which file, the
// tables and her preferences. All of it outlives those who work at it.
struct Desk {
    Preferences& preferences;
    ui::Workbench& workbench;
    ui::Session& session;
    Filing& filing;
    files::Tables const& tables;
};

} // namespace app
