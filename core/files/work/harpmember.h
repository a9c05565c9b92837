#pragma once

#include "core/base/result.h"
#include "core/files/json.h"
#include "core/files/tables/harpjson.h"
#include "core/files/tables/tables.h"

// How a chosen harp is kept: by its ids in the tables, or whole where it is the user's own.
// Included in .cpp files of this room only.
namespace files {

Json harpIdsMember(harp::Harp const& harp, Tables const& tables);

// Throws WrongHarp, or nlohmann's exceptions for what is not such an object. Faults: what the
// tables do not have.
base::Result<harp::Harp> harpIn(Json const& member, Tables const& tables);

} // namespace files
