#pragma once

#include "core/arrange/arrangement.h"
#include "core/base/marked.h"

#include <string>
#include <vector>

namespace sheet {

// Care of the hands, for the foot of every paper that is practised from [trade-3.8].
inline constexpr char const* care = base::marked(
    "Keep your hands relaxed and rest before they tire. If anything hurts, stop, and see your "
    "teacher, a doctor or a physiotherapist.");

// What else a player must be careful of in this arrangement; nothing that does not apply. A
// line each: shapes wider than the hand lies on at ease, and levers turned in play.
std::vector<std::string> cautions(arrange::Arrangement const& arrangement);

} // namespace sheet
