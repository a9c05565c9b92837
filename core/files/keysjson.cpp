#include "core/files/keysjson.h"

#include <nlohmann/json.hpp>

namespace files {

std::string keysJson(harp::Harp const& harp, std::vector<proposal::RankedKey> const& keys)
{
    using Json = nlohmann::ordered_json;
    Json list = Json::array();
    for (proposal::RankedKey const& ranked : keys) {
        levers::KeyFit const& fit = ranked.fit;
        Json setup = Json::array();
        for (std::size_t s = 0; s < fit.setup.size(); ++s)
            if (fit.setup[s] == harp::Lever::Up) setup.push_back(s + 1);
        Json row{{"key", music::plain(fit.key.tonic)},
                 {"mode", music::modeName(fit.key.mode)},
                 {"moved_semitones", fit.moved.semitones},
                 {"possible", ranked.possible()},
                 {"setup", setup},
                 {"setup_line", harp::setupLine(harp, fit.setup)},
                 {"flips", fit.flips},
                 {"room_below", fit.roomBelow},
                 {"rank", fit.rank},
                 {"reason", ranked.reason},
                 {"levers_raised", ranked.leversRaised},
                 {"notes_lost", ranked.notesLost ? Json(*ranked.notesLost) : Json(nullptr)},
                 {"cost", ranked.cost ? Json(*ranked.cost) : Json(nullptr)},
                 {"chords", ranked.chords}};
        list.push_back(std::move(row));
    }
    return list.dump(2);
}

} // namespace files
