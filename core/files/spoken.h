#pragma once

#include "core/arrange/arrangement.h"
#include "core/notation/notation.h"
#include "core/perform/slowing.h"
#include "core/perform/tuneset.h"

#include <string>

namespace files {

// The sheet of that kind said bar by bar, for players who do not see it and for practice
// without the page: chord, the right hand's notes with their values and fingers, the left
// hand's pattern and strings, levers to turn, repeats and endings. UTF-8, a line a bar. Notes
// are named as they are spoken, "F sharp 4", in scientific octaves. `slowing`: that which is
// told of the end.
std::string spokenText(arrange::Arrangement const& arrangement, notation::Kind kind,
                       perform::Slowing slowing = {});

// The same as a page of HTML: a heading for the piece and each part, a list item a bar that can
// be linked to ("#bar-3"). Needs no style sheet and no script.
std::string spokenHtml(arrange::Arrangement const& arrangement, notation::Kind kind,
                       perform::Slowing slowing = {});

// A set as one text or page: tune after tune, with the levers to flip between them. A bar is
// linked to as "#tune-2-bar-3". The last tune alone slows.
std::string spokenText(perform::PlayedSet const& set, notation::Kind kind,
                       perform::Slowing slowing = {});
std::string spokenHtml(perform::PlayedSet const& set, notation::Kind kind,
                       perform::Slowing slowing = {});

} // namespace files
