#pragma once

#include "core/files/tables/tablerow.h"
#include "core/files/tables/tables.h"

namespace files {

// The manners of a time through, and the forms made of them (shared/forms.json); the sliders
// are read before. Throws table::Damage.
void readForms(table::Row& file, Tables& tables);

} // namespace files
