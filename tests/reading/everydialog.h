#pragma once

#include <QDialog>

#include <memory>
#include <vector>

namespace ui {
class Session;
class Workbench;
} // namespace ui

namespace reading {

// Every dialog of the window, with something in each, as it opens over a tune that is open; not
// yet shown. All are to go before the window.
std::vector<std::unique_ptr<QDialog>> everyDialog(ui::Workbench& workbench,
                                                  ui::Session& session);

} // namespace reading
