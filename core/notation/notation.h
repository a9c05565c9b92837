#pragma once

#include "core/arrange/arrangement.h"
#include "core/notation/pace.h"
#include "core/notation/staff.h"
#include "core/perform/slowing.h"

#include <string>
#include <vector>

namespace notation {

// Which of the sheets it is for: both hands; the tune with chord symbols and pattern labels;
// the tune with chord symbols.
enum class Kind { Arrangement, Patterns, Lead };

// All that stands in the bars of a tune, with its values and signs, made once: the sheet, ABC
// and MusicXML are written from it.
struct Notation {
    tune::Tune tune;   // its tempo is that of the arrangement
    bool grand = true; // two staves, else one
    base::List<tune::BarIndex, PrintedBar> bars;
    std::vector<PlacingBracket> placings; // of each hand in written order
    std::vector<Hairpin> hairpins;
    std::optional<SlowingMark> slowing;   // none on a lead sheet: it is of the arrangement
    std::string setupLine;                // levers before the tune; empty on a lead sheet
};

Notation of(tune::Tune tune);
Notation of(arrange::Arrangement const& arrangement, Kind kind, perform::Slowing slowing = {});

} // namespace notation
