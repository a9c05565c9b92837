#pragma once

#include "core/files/tables/tablerow.h"
#include "core/harmony/findchords.h"

// For tables.cpp only.
namespace files {

// The learned numbers of the chord finder and of the key finder, rows of whole numbers. Throw
// table::Damage.
void readChordTable(table::Row& file, harmony::ChordTable& learned);
void readKeyTable(table::Row& file, harmony::KeyTable& learned);

} // namespace files
