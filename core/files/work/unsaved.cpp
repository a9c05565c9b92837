#include "core/files/work/unsaved.h"

#include "core/files/json.h"
#include "core/files/jsonwords.h"
#include "core/files/work/form.h"

namespace files {

namespace {

using base::Fault;
using base::FaultCode;

constexpr int version = 1;

} // namespace

std::string unsavedText(Unsaved const& unsaved)
{
    Json const json{{"sallow_unsaved", version},   {"title", unsaved.title},
                    {"file", unsaved.file},        {"source", unsaved.source},
                    {"changed", unsaved.changed},  {"steps", Json(unsaved.steps)},
                    {"document", unsaved.document}};
    return json.dump(1, ' ', false, Json::error_handler_t::replace) + '\n';
}

base::Result<Unsaved> readUnsaved(std::string_view text, std::string const& file)
{
    try {
        Json const json = Json::parse(text);
        if (json.at("sallow_unsaved").get<int>() > version)
            return newerForm(file);
        return Unsaved{json.at("title").get<std::string>(),
                       json.at("file").get<std::string>(),
                       json.at("source").get<std::string>(),
                       json.at("changed").get<std::string>(),
                       json.at("steps").get<std::vector<std::string>>(),
                       json.at("document").get<std::string>()};
    } catch (Json::exception const& error) {
        return Fault{FaultCode::Malformed, file, jsonWords(error.id, error.what())};
    }
}

} // namespace files
