#pragma once

#include <string>
#include <string_view>

namespace files {

// What the JSON library found wrong with a member, in our words. `id` and `said` are those of its
// exception (403: a key that is not there, 302: a value of another type ...).
std::string jsonWords(int id, std::string_view said);

} // namespace files
