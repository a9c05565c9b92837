#include "core/files/tables/patternfile.h"

#include "core/base/words.h"
#include "core/files/jsonreading.h"
#include "core/pattern/own.h"

namespace files {

namespace {

using base::Fault;
using base::FaultCode;

constexpr int version = 1;

base::Result<std::vector<pattern::Pattern>> patternsFrom(Json const& json,
                                                         std::string const& file)
{
    if (json.at("sallow_patterns").get<int>() != version)
        return Fault{FaultCode::Malformed, file,
                     base::said("it was saved by a newer version of Sallow")};
    std::vector<pattern::Pattern> own;
    for (Json const& member : json.at("patterns")) {
        auto read = pattern::ownPatternFrom(member.at("pattern").get<std::string>());
        if (!read) {
            Fault fault = read.error();
            fault.place =
                file + ", pattern " + std::to_string(own.size() + 1) + ", " + fault.place;
            return fault;
        }
        if (std::string note = member.value("note", std::string()); !note.empty())
            read->feel = std::move(note);
        own.push_back(*std::move(read));
    }
    return own;
}

} // namespace

std::string patternFileText(std::vector<pattern::Pattern> const& own)
{
    Json list = Json::array();
    for (pattern::Pattern const& p : own)
        list.push_back({{"pattern", p.name}, {"note", p.feel}});
    Json const file{{"sallow_patterns", version}, {"patterns", list}};
    return file.dump(1, ' ', false, Json::error_handler_t::replace) + '\n';
}

base::Result<std::vector<pattern::Pattern>> readPatternFile(std::string_view text,
                                                            std::string const& file)
{
    return readJson(text, file, base::said("this is not a file of patterns"),
                    [&](Json const& json) { return patternsFrom(json, file); });
}

} // namespace files
