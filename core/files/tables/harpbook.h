#pragma once

#include "core/base/result.h"
#include "core/harp/model.h"

#include <string>
#include <string_view>
#include <vector>

namespace files {

// Harps that their owner has described: a JSON file of our own, see DEVELOPERS.md. Strings are
// counted from 1, the lowest; strings without a lever and wound ones are listed, gaps are in mm.
std::string harpBookText(std::vector<harp::HarpModel> const& harps);

// Reads it back. Faults: Malformed with the line and what is wrong there; a harp that cannot be
// is refused with its BadHarp.
base::Result<std::vector<harp::HarpModel>> readHarpBook(std::string_view text,
                                                        std::string const& file);

// The list with one harp added, or put in the place of the one with its id.
std::vector<harp::HarpModel> withHarp(std::vector<harp::HarpModel> harps,
                                      harp::HarpModel harp);

} // namespace files
