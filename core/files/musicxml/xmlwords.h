#pragma once

#include <string_view>

#include <pugixml.hpp>

namespace files {

// Why a text is not XML, in words for who opened the file: what the reading library says is
// written for those who program with it. English, to be said by the catalogue.
std::string_view xmlWords(pugi::xml_parse_status status);

} // namespace files
