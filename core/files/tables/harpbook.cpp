#include "core/files/tables/harpbook.h"

#include "core/base/words.h"
#include "core/files/jsonreading.h"
#include "core/files/tables/harpjson.h"

#include <algorithm>
#include <set>

namespace files {

namespace {

using base::Fault;
using base::FaultCode;
using Result = base::Result<std::vector<harp::HarpModel>>;
using harp::HarpModel;

constexpr int version = 1;

// The numbers of the strings for which a list says `value`, from 1.
std::vector<int> numbersOf(std::vector<bool> const& list, bool value)
{
    std::vector<int> out;
    for (std::size_t i = 0; i < list.size(); ++i)
        if (list[i] == value) out.push_back(static_cast<int>(i) + 1);
    return out;
}

std::vector<bool> listOf(Json const& numbers, int strings, bool named,
                         std::string const& pointer)
{
    std::vector<bool> out(static_cast<std::size_t>(strings), !named);
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        int const number = numbers.at(i).get<int>();
        if (number < 1 || number > strings)
            throw WrongHarp{pointer + '/' + std::to_string(i),
                            base::say("there is no string {}", number)};
        out[static_cast<std::size_t>(number) - 1] = named;
    }
    return out;
}

std::string asked(Json const& member, char const* key, std::string const& pointer)
{
    if (!member.contains(key)) throw WrongHarp{pointer, base::say("\"{}\" is missing", key)};
    return member.at(key).get<std::string>();
}

std::vector<HarpModel> harpsFrom(Json const& json)
{
    if (!json.is_object() || !json.contains("sallow_harps"))
        throw WrongHarp{"", base::said("this is not a file of harps")};
    if (json.at("sallow_harps").get<int>() != version)
        throw WrongHarp{"/sallow_harps",
                        base::said("it was saved by a newer version of Sallow")};
    std::vector<HarpModel> harps;
    std::set<std::string> ids;
    for (std::size_t i = 0; i < json.at("harps").size(); ++i) {
        std::string const pointer = "/harps/" + std::to_string(i);
        harps.push_back(harpFromMember(json.at("harps").at(i), pointer));
        if (!ids.insert(harps.back().id).second)
            throw WrongHarp{pointer + "/id",
                            base::say("{} stands here a second time", harps.back().id)};
    }
    return harps;
}

} // namespace

Json harpMember(HarpModel const& model)
{
    return {{"id", model.id},
            {"name", model.name},
            {"lowest", music::plain(model.lowest)},
            {"strings", model.strings()},
            {"tuning", music::plain(model.tuning)},
            {"without_lever", numbersOf(model.levers, false)},
            {"wound", numbersOf(model.wound, true)},
            {"gaps_mm", model.gapsMm},
            {"names", std::string(harp::namingId(model.naming))}};
}

HarpModel harpFromMember(Json const& member, std::string const& pointer)
{
    HarpModel model;
    model.id = asked(member, "id", pointer);
    model.name = asked(member, "name", pointer);
    auto const lowest = music::pitchFrom(asked(member, "lowest", pointer));
    if (!lowest || lowest->alter != 0)
        throw WrongHarp{pointer + "/lowest",
                        base::said("a letter and an octave are needed, such as C2")};
    model.lowest = *lowest;
    int const strings = member.at("strings").get<int>();
    if (strings < harp::fewestStrings || strings > harp::mostStrings)
        throw WrongHarp{pointer + "/strings", base::say("{} strings", strings)};
    auto const tuning = music::pitchNameFrom(asked(member, "tuning", pointer));
    if (!tuning) throw WrongHarp{pointer + "/tuning", asked(member, "tuning", pointer)};
    model.tuning = *tuning;
    model.levers = listOf(member.at("without_lever"), strings, false, pointer + "/without_lever");
    model.wound = listOf(member.at("wound"), strings, true, pointer + "/wound");
    model.gapsMm = member.at("gaps_mm").get<std::vector<double>>();
    if (member.contains("names")) {
        auto const naming = harp::namingFrom(asked(member, "names", pointer));
        if (!naming) throw WrongHarp{pointer + "/names", asked(member, "names", pointer)};
        model.naming = *naming;
    }
    if (auto const harp = harpOf(model); !harp)
        throw WrongHarp{pointer, base::sentence(harp.error())};
    return model;
}

std::string harpBookText(std::vector<HarpModel> const& harps)
{
    Json list = Json::array();
    for (HarpModel const& harp : harps) list.push_back(harpMember(harp));
    return Json{{"sallow_harps", version}, {"harps", list}}.dump(
               1, ' ', false, Json::error_handler_t::replace) +
           '\n';
}

base::Result<std::vector<HarpModel>> readHarpBook(std::string_view text,
                                                  std::string const& file)
{
    try {
        return readJson(text, file, base::said("this is not a file of harps"),
                        [](Json const& json) { return Result(harpsFrom(json)); });
    } catch (WrongHarp const& wrong) {
        return faultAt(text, file, wrong.pointer, wrong.detail);
    }
}

std::vector<HarpModel> withHarp(std::vector<HarpModel> harps, HarpModel harp)
{
    auto const same = std::find_if(harps.begin(), harps.end(),
                                   [&](HarpModel const& h) { return h.id == harp.id; });
    if (same == harps.end())
        harps.push_back(std::move(harp));
    else
        *same = std::move(harp);
    return harps;
}

} // namespace files
