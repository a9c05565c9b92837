#pragma once

class QMenu;

namespace ui {

class Session;

// Adds to a menu the notes of the selected chord, of both hands, each with its finger and the
// choice of another or of the one proposed.
void addFingerMenu(QMenu& menu, Session& session);

} // namespace ui
