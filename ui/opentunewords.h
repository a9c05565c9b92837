#pragma once

#include "core/arrange/arrangement.h"

#include <QString>

namespace ui {

class Session;

// What the head and the foot of the window say of the open tune.

// "levers up: F♯ · difficulty 2.5 · jig · 6/8 · 2 lever flips"
QString detailWords(arrange::Arrangement const& arrangement, double difficulty);

// "Score 41.3, lower is better · 2 shapes kept": of the answer that is shown, and the shape
// that is looked at.
QString answerWords(Session const& session);

} // namespace ui
