#pragma once

#include <cstddef>
#include <string_view>

namespace files {

// The line (from 1) on which a value begins in a JSON text that has been parsed without fault;
// `pointer` names it as "/patterns/6/level" does: keys and places (from 0) from the outside in.
// Where there is no such value, the line of the last step that there is.
int lineOf(std::string_view json, std::string_view pointer);

// The line on which the byte stands that a parser stumbled over, counted from 1.
int lineOfByte(std::string_view json, std::size_t byte);

} // namespace files
