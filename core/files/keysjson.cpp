#include "core/files/keysjson.h"

#include "core/files/json.h"

namespace files {

namespace {

Json raised(harp::LeverSetting const& setup)
{
    Json strings = Json::array();
    for (harp::StringIndex const s : setup.indices())
        if (setup[s] == harp::Lever::Up) strings.push_back(s.value() + 1);
    return strings;
}

} // namespace

std::string keysJson(harp::Harp const& harp, std::vector<proposal::RankedKey> const& keys)
{
    Json list = Json::array();
    for (proposal::RankedKey const& ranked : keys) {
        levers::KeyFit const& fit = ranked.fit;
        Json row{{"key", music::plain(fit.key.tonic)},
                 {"mode", music::modeName(fit.key.mode)},
                 {"moved_semitones", fit.moved.semitones},
                 {"possible", ranked.possible()},
                 {"setup", raised(fit.setup)},
                 {"setup_line", fit.setup.empty() ? "" : harp::setupLine(harp, fit.setup)},
                 {"flips", fit.flips},
                 {"room_below", fit.roomBelow},
                 {"rank", fit.rank},
                 {"reason", ranked.reason},
                 {"levers_raised", ranked.leversRaised},
                 {"snags", ranked.fit.snags},
                 {"notes_lost", ranked.notesLost ? Json(*ranked.notesLost) : Json(nullptr)},
                 {"cost", ranked.cost ? Json(*ranked.cost) : Json(nullptr)},
                 {"chords", ranked.chords}};
        list.push_back(std::move(row));
    }
    return list.dump(2);
}

std::string setJson(harp::Harp const& harp, std::vector<proposal::Brief> const& briefs,
                    std::vector<levers::SetStep> const& steps)
{
    Json list = Json::array();
    for (levers::SetStep const& step : steps) {
        Json changes = Json::array();
        for (levers::LeverChange const& change : step.changes)
            changes.push_back(
                {{"string", change.string.value() + 1}, {"up", change.to == harp::Lever::Up}});
        tune::Tune const& tune = briefs[static_cast<std::size_t>(step.tune)].tune;
        list.push_back({{"tune", tune.number},
                        {"title", tune.title},
                        {"key", music::plain(step.fit.key.tonic)},
                        {"mode", music::modeName(step.fit.key.mode)},
                        {"moved_semitones", step.fit.moved.semitones},
                        {"setup", raised(step.fit.setup)},
                        {"setup_line", harp::setupLine(harp, step.fit.setup)},
                        {"flips", step.fit.flips},
                        {"changes", changes},
                        {"seconds", step.seconds},
                        {"changes_line", levers::changesInWords(harp, step)}});
    }
    return list.dump(2, ' ', false, Json::error_handler_t::replace);
}

} // namespace files
