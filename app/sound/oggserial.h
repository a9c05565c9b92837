#pragma once

#include <filesystem>

namespace sound {

// Gives the stream of an Ogg file (RFC 3533) a fixed serial number instead of one drawn by lot, so that the
// same music gives the same bytes. False if the file is not whole or cannot be written.
bool fixSerial(std::filesystem::path const& oggFile);

} // namespace sound
