#pragma once

// The one door to the JSON library.
#include <nlohmann/json.hpp>
