#pragma once

#include "core/files/tables/tables.h"
#include "core/tune/tune.h"

#include <string>

namespace app {

// The tune with the chords that --chords asks for: "keep" what is written, "suggest" what is
// found anew, what is written set aside; "auto" keeps what is written and finds chords for a
// tune, or a strain of eight bars and more, that has none. What was found is said among the
// tune's remarks.
tune::Tune chorded(tune::Tune tune, std::string const& wish, files::Tables const& tables);

} // namespace app
