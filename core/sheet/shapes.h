#pragma once

#include "core/arrange/arrangement.h"
#include "core/sheet/pictures.h"

#include <vector>

namespace sheet {

// Every left-hand shape that the sheet prints, each once, in the order in which they come: on
// any strings, with its degrees. Rests of the hand are left out.
std::vector<ShapePicture> shapesUsed(arrange::Arrangement const& arrangement);

// A voicing on the very strings of the harp, named by what they sound at a moment.
ShapePicture shapeOn(harp::Harp const& harp, harp::LeverTimeline const& levers,
                     arrange::Voicing const& voicing, music::Moment at);

// "fingers 4-2-1", in the order of playing.
std::string fingersCaption(arrange::Voicing const& voicing);

} // namespace sheet
