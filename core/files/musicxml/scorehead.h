#pragma once

#include "core/tune/tune.h"

#include <pugixml.hpp>

namespace files::musicxml {

// What stands before the notes of a score: title, who wrote what, and the one part, the harp,
// "P1". What MusicXML has no element for stands among the miscellaneous fields.
void writeHead(pugi::xml_node score, tune::Tune const& tune);

} // namespace files::musicxml
