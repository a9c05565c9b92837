#pragma once

#include "core/explain/judgement.h"

#include <optional>
#include <string>

// Sentences on the tones of the chord and on the levers that give them.
namespace explain {

std::string foreignNote(Told const& told);
std::string fitsChord(Told const& told);

// A third, fifth or seventh that is wrong for the chord, by pitch; none where all are right.
std::optional<std::string> wrongNote(Told const& told);
std::string wrongQuality(Told const& told);
std::string statesQuality(Told const& told);

std::string wantsLevers(Told const& told);

} // namespace explain
