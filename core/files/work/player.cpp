#include "core/files/work/player.h"

#include "core/base/words.h"
#include "core/files/jsonreading.h"
#include "core/files/work/form.h"
#include "core/files/work/harpmember.h"

#include <algorithm>
#include <utility>

namespace files {

namespace {

using base::Fault;
using base::FaultCode;
using base::Result;

constexpr int version = 1;

Json playerMember(Player const& player, Tables const& tables)
{
    return {{"name", player.name},
            {"harp", harpIdsMember(player.harp, tables)},
            {"hand", player.hand.id},
            {"level", player.level.number}};
}

// Throws what harpIn throws.
Result<Player> playerFrom(Json const& member, Tables const& tables)
{
    auto harp = harpIn(member.at("harp"), tables);
    if (!harp) return harp.error();
    auto hand = handFrom(tables, member.at("hand").get<std::string>());
    if (!hand) return hand.error();
    auto level = levelFrom(tables, member.at("level").get<int>());
    if (!level) return level.error();
    return Player{member.value("name", std::string()), *std::move(harp), *std::move(hand),
                  *std::move(level)};
}

// Each part by itself, so that one that cannot be had does not cost the others.
void takeHarp(Json const& json, Tables const& tables, proposal::Brief& brief)
{
    if (!json.contains("harp")) return;
    if (auto harp = harpIn(json.at("harp"), tables)) brief.harp = *std::move(harp);
}

void takeRest(Json const& json, Tables const& tables, proposal::Brief& brief)
{
    if (auto hand = handFrom(tables, json.value("hand", std::string())))
        brief.hand = *std::move(hand);
    if (auto level = levelFrom(tables, json.value("level", 0))) brief.level = *std::move(level);
    if (auto manner = styleFrom(tables, json.value("style", std::string())))
        brief.weights = *std::move(manner);
    std::string const key = json.value("key", std::string());
    if (key == "asis") brief.key = proposal::AsWritten{};
    if (key == "best") brief.key = proposal::BestKey{};
    std::string const right = json.value("right", std::string());
    if (right == "bare") brief.right = proposal::RightHand::Bare;
    if (right == "closes") brief.right = proposal::RightHand::Closes;
    if (right == "full") brief.right = proposal::RightHand::Full;
}

std::string rightText(proposal::RightHand right)
{
    switch (right) {
    case proposal::RightHand::Bare:
        return "bare";
    case proposal::RightHand::Closes:
        return "closes";
    case proposal::RightHand::Full:
        break;
    }
    return "full";
}

} // namespace

std::string standingText(proposal::Brief const& standing, Tables const& tables)
{
    bool const asWritten = std::holds_alternative<proposal::AsWritten>(standing.key);
    Json const json{{"harp", harpIdsMember(standing.harp, tables)},
                    {"hand", standing.hand.id},
                    {"level", standing.level.number},
                    {"style", standing.weights.style},
                    {"key", asWritten ? "asis" : "best"},
                    {"right", rightText(standing.right)}};
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

proposal::Brief withStanding(proposal::Brief known, std::string_view text, Tables const& tables)
{
    Json const json = Json::parse(text, nullptr, false);
    if (!json.is_object()) return known;
    try {
        takeHarp(json, tables, known);
    } catch (Json::exception const&) {
        // as it was known
    } catch (WrongHarp const&) {
        // as it was known
    }
    try {
        takeRest(json, tables, known);
    } catch (Json::exception const&) {
        // as it was known
    }
    return known;
}

std::string pupilsText(std::vector<Player> const& pupils, Tables const& tables)
{
    Json list = Json::array();
    for (Player const& pupil : pupils) list.push_back(playerMember(pupil, tables));
    Json const json{{"sallow_pupils", version}, {"pupils", list}};
    return json.dump(1, ' ', false, Json::error_handler_t::replace) + '\n';
}

Result<Pupils> readPupils(std::string_view text, Tables const& tables, std::string const& file)
{
    auto const pupilsFrom = [&](Json const& json) -> Result<Pupils> {
        if (json.at("sallow_pupils").get<int>() > version) return newerForm(file);
        Pupils out;
        for (Json const& member : json.at("pupils")) {
            auto pupil = playerFrom(member, tables);
            if (pupil)
                out.players.push_back(*std::move(pupil));
            else
                out.leftOut.push_back(member.value("name", std::string()));
        }
        return out;
    };
    try {
        return readJson(text, file, base::said("this is not a list of pupils"), pupilsFrom);
    } catch (WrongHarp const& wrong) {
        return Fault{FaultCode::Malformed, file, wrong.detail};
    }
}

std::vector<Player> withPupil(std::vector<Player> pupils, Player pupil)
{
    auto const same = std::ranges::find(pupils, pupil.name, &Player::name);
    if (same != pupils.end())
        *same = std::move(pupil);
    else
        pupils.push_back(std::move(pupil));
    return pupils;
}

} // namespace files
