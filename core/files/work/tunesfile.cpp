#include "core/files/json.h"
#include "core/files/jsonwords.h"
#include "core/files/work/form.h"
#include "core/files/work/tuneindex.h"

namespace files {

namespace {


constexpr int tunesVersion = 1;

Json usesMember(std::map<collection::TuneName, std::string> const& uses, char const* name)
{
    Json out = Json::array();
    for (auto const& [tune, said] : uses)
        out.push_back(
            {{"file", tune.file}, {"tune", tune.number}, {"title", tune.title}, {name, said}});
    return out;
}

std::map<collection::TuneName, std::string> usesFrom(Json const& member, char const* name)
{
    std::map<collection::TuneName, std::string> out;
    for (Json const& each : member)
        out[{each.at("file").get<std::string>(), each.at("tune").get<int>(),
             each.at("title").get<std::string>()}] = each.at(name).get<std::string>();
    return out;
}

} // namespace

std::string tunesText(TunesKept const& kept)
{
    Json const json{{"sallow_tunes", tunesVersion},
                    {"folders", kept.folders},
                    {"opened", usesMember(kept.uses.opened, "when")},
                    {"made", usesMember(kept.uses.made, "arrangement")}};
    return json.dump(1, ' ', false, Json::error_handler_t::replace) + '\n';
}

base::Result<TunesKept> readTunes(std::string_view text, std::string const& file)
{
    try {
        Json const json = Json::parse(text);
        if (json.at("sallow_tunes").get<int>() > tunesVersion) return newerForm(file);
        TunesKept kept;
        kept.folders = json.at("folders").get<std::vector<std::string>>();
        kept.uses.opened = usesFrom(json.at("opened"), "when");
        kept.uses.made = usesFrom(json.at("made"), "arrangement");
        return kept;
    } catch (Json::exception const& error) {
        return base::Fault{base::FaultCode::Malformed, file, jsonWords(error.id, error.what())};
    }
}

} // namespace files
