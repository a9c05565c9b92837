#pragma once

namespace ui {

// Two settings of the same bars: A, what was remembered or is kept, and B, what is looked at.
enum class Compared { A, B };

} // namespace ui
