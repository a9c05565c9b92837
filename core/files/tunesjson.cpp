#include "core/files/tunesjson.h"

#include "core/files/json.h"

namespace files {

std::string tuneRowJson(collection::Row const& row)
{
    collection::TuneEntry const& tune = row.tune;
    nlohmann::json line{
        {"file", row.name.file}, {"tune", tune.number}, {"title", tune.title}};
    if (!tune.unreadable.empty()) {
        line["unreadable"] = tune.unreadable;
    } else {
        line["kind"] = collection::kindWords(tune);
        line["key"] = plain(tune.key.tonic);
        line["mode"] = modeName(tune.key.mode);
        line["meter"] = text(tune.meter);
        line["bars"] = tune.bars;
        line["chords"] = tune.chords;
        line["arrangement"] = row.arrangement;
        line["arranged"] = row.arranged.empty() ? nlohmann::json() : nlohmann::json(row.arranged);
    }
    // A stray byte of a file name would be replaced rather than thrown over.
    return line.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

} // namespace files
