#include "core/files/work/harpmember.h"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

namespace files {

namespace {

using base::Result;

struct HarpIds {
    std::string size, tuning, levers;
};

// The ids from which the tables make this very harp, names of strings apart; none for a harp of
// the user's own, which is kept whole.
std::optional<HarpIds> idsOf(harp::Harp harp, Tables const& tables)
{
    harp = withNaming(std::move(harp), harp::Naming::Usual);
    bool const own = std::any_of(tables.ownHarps.begin(), tables.ownHarps.end(),
                                 [&](auto const& model) { return model.id == harp.id(); });
    if (own) return std::nullopt;
    for (NamedTuning const& tuning : tables.tunings)
        for (LeverFit const& fit : tables.leverFits) {
            auto const made = harpFrom(tables, harp.id(), tuning.id, fit.id);
            if (made && *made == harp) return HarpIds{harp.id(), tuning.id, fit.id};
        }
    return std::nullopt;
}

} // namespace

Json harpIdsMember(harp::Harp const& harp, Tables const& tables)
{
    Json member;
    if (auto const ids = idsOf(harp, tables))
        member = {{"size", ids->size}, {"tuning", ids->tuning}, {"levers", ids->levers}};
    else
        member = {{"own", harpMember(harp::modelOf(harp))}};
    if (harp.naming() != harp::Naming::Usual)
        member["names"] = std::string(harp::namingId(harp.naming()));
    return member;
}

Result<harp::Harp> harpIn(Json const& member, Tables const& tables)
{
    auto harp = member.contains("own")
                    ? harpOf(harpFromMember(member.at("own"), "/harp/own"))
                    : harpFrom(tables, member.at("size").get<std::string>(),
                               member.at("tuning").get<std::string>(),
                               member.at("levers").get<std::string>());
    if (!harp || !member.contains("names")) return harp;
    std::string const names = member.at("names").get<std::string>();
    auto const naming = harp::namingFrom(names);
    if (!naming) throw WrongHarp{"/harp/names", names};
    return withNaming(*std::move(harp), *naming);
}

} // namespace files
