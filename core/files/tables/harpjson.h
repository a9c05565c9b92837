#pragma once

#include "core/harp/model.h"

#include "core/files/json.h"

#include <string>

// For the files that hold a harp: included in .cpp files of this room only.
namespace files {

// What cannot be used, and the pointer to it. Thrown and caught within this room.
struct WrongHarp {
    std::string pointer;
    std::string detail;
};

Json harpMember(harp::HarpModel const& model);

// Throws WrongHarp, or nlohmann's exceptions for what is no such object.
harp::HarpModel harpFromMember(Json const& member, std::string const& pointer);

} // namespace files
