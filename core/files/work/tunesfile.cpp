#include "core/files/json.h"
#include "core/files/jsonwords.h"
#include "core/files/work/form.h"
#include "core/files/work/tuneindex.h"

namespace files {

namespace {

using TunesJson = nlohmann::ordered_json;

constexpr int tunesVersion = 1;

TunesJson usesMember(std::map<collection::TuneName, std::string> const& uses, char const* name)
{
    TunesJson out = TunesJson::array();
    for (auto const& [tune, said] : uses)
        out.push_back(
            {{"file", tune.file}, {"tune", tune.number}, {"title", tune.title}, {name, said}});
    return out;
}

std::map<collection::TuneName, std::string> usesFrom(TunesJson const& member, char const* name)
{
    std::map<collection::TuneName, std::string> out;
    for (TunesJson const& each : member)
        out[{each.at("file").get<std::string>(), each.at("tune").get<int>(),
             each.at("title").get<std::string>()}] = each.at(name).get<std::string>();
    return out;
}

} // namespace

std::string tunesText(TunesKept const& kept)
{
    TunesJson const json{{"sallow_tunes", tunesVersion},
                         {"folders", kept.folders},
                         {"opened", usesMember(kept.uses.opened, "when")},
                         {"made", usesMember(kept.uses.made, "arrangement")}};
    return json.dump(1, ' ', false, TunesJson::error_handler_t::replace) + '\n';
}

base::Result<TunesKept> readTunes(std::string_view text, std::string const& file)
{
    try {
        TunesJson const json = TunesJson::parse(text);
        if (json.at("sallow_tunes").get<int>() > tunesVersion) return newerForm(file);
        TunesKept kept;
        kept.folders = json.at("folders").get<std::vector<std::string>>();
        kept.uses.opened = usesFrom(json.at("opened"), "when");
        kept.uses.made = usesFrom(json.at("made"), "arrangement");
        return kept;
    } catch (TunesJson::exception const& error) {
        return base::Fault{base::FaultCode::Malformed, file, jsonWords(error.id, error.what())};
    }
}

} // namespace files
