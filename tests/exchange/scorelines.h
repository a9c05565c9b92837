#pragma once

#include "core/arrange/arrangement.h"

#include <cstdint>
#include <string>

// What a reader of our MusicXML ought to find, worked out from the sheet and not by the writer:
// a line for each note, in the form that scorenotes.js prints.
std::string scoreLines(arrange::Arrangement const& arrangement, std::int64_t divisions);

// The divisions of a crotchet that a score counts in.
std::int64_t divisionsOf(std::string const& musicXml);
