#include "core/files/keysjson.h"

#include <nlohmann/json.hpp>

namespace files {

std::string keysJson(harp::Harp const& harp, std::vector<levers::KeyFit> const& fits)
{
    using Json = nlohmann::ordered_json;
    Json list = Json::array();
    for (levers::KeyFit const& fit : fits) {
        Json setup = Json::array();
        for (std::size_t s = 0; s < fit.setup.size(); ++s)
            if (fit.setup[s] == harp::Lever::Up) setup.push_back(s + 1);
        Json row{{"key", music::plain(fit.key.tonic)},
                 {"mode", music::modeName(fit.key.mode)},
                 {"moved_semitones", fit.moved.semitones},
                 {"possible", fit.possible},
                 {"setup", setup},
                 {"setup_line", harp::setupLine(harp, fit.setup)},
                 {"flips", fit.flips},
                 {"room_below", fit.roomBelow},
                 {"rank", fit.rank},
                 {"reason", fit.possible || !fit.why ? fit.reason : base::sentence(*fit.why)}};
        list.push_back(std::move(row));
    }
    return list.dump(2);
}

} // namespace files
