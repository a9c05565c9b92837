#pragma once

#include "core/explain/judgement.h"

#include <string>

// Sentences on a voicing between those on either side of it.
namespace explain {

std::string farToGo(Told const& told);
std::string blurs(Told const& told);

std::string unlinked(Told const& told);
std::string linked(Told const& told);

std::string thumbLeaps(Told const& told);
std::string thumbLeads(Told const& told);

std::string bassLeaps(Told const& told);
std::string bassWalks(Told const& told);

// The same again, or a break in the pulse.
std::string dullOrRestless(Told const& told);
std::string varied(Told const& told);

} // namespace explain
