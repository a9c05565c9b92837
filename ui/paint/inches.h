#pragma once

namespace ui {

inline constexpr double mmPerInch = 25.4;

} // namespace ui
