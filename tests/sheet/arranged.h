#pragma once

#include "core/files/tables/tables.h"
#include "core/proposal/proposal.h"
#include "tests/places.h"

#include <optional>

// A tune arranged as sheets are measured with it: 34 strings, a medium hand.
namespace measure {

inline files::Tables const& tables()
{
    static files::Tables const tables = *files::readTables(places::shared());
    return tables;
}

// None where the level refuses the tune, as the first refuses to turn levers.
inline std::optional<arrange::Arrangement>
arranged(tune::Tune const& tune, int level, proposal::Passes passes = proposal::Passes::Written)
{
    proposal::Brief brief;
    brief.tune = tune;
    brief.harp = *files::harpFrom(tables(), "floor34", "Eb");
    brief.hand = *files::handFrom(tables(), "medium");
    brief.level = *files::levelFrom(tables(), level);
    brief.book = tables().book;
    brief.weights = tables().styles.front();
    brief.passes = passes;
    auto const proposal = proposal::propose(brief);
    if (!proposal) return std::nullopt;
    return proposal->arrangement;
}

} // namespace measure
