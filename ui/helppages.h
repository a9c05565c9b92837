#pragma once

class QWidget;

namespace ui {

struct Actions;

// The pages of the Help menu. Each opens beside the window and is closed with Esc.
void showKeys(QWidget* parent, Actions const& actions);
void showCare(QWidget* parent);
void showAbout(QWidget* parent);

} // namespace ui
