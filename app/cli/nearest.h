#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cli {

// The word that was most likely meant: the one with the fewest letters to add, take away, change
// or swap with a neighbour, and with at most a third of them wrong. None: nothing is near.
std::optional<std::string> nearestWord(std::string_view written,
                                       std::vector<std::string> const& known);

} // namespace cli
