#include "app/chording.h"

#include "core/harmony/findchords.h"

#include <fmt/format.h>

namespace app {

namespace {

tune::Remark remarkOn(tune::Tune const& tune, harmony::Suggestion const& found)
{
    std::string did = fmt::format("chords are found from its notes, in {}", shown(found.heardIn));
    if (!found.leastSure.empty()) {
        harmony::FoundChord const& least = found.chords[found.leastSure.front()];
        did += fmt::format("; the least sure is {} in {}", shown(least.chord),
                           tune::barName(tune, least.unit.bar));
    }
    return {{},
            tune::hasChords(tune) ? "the chords as written are set aside"
                                  : "the tune has no chords",
            std::move(did)};
}

} // namespace

tune::Tune chorded(tune::Tune tune, std::string const& wish, files::Tables const& tables)
{
    bool const find = wish == "suggest" || (wish == "auto" && !tune::hasChords(tune));
    if (!find) return tune;
    harmony::Suggestion const found = harmony::suggestChords(tables.harmony, tune);
    if (found.chords.empty()) return tune;
    tune::Remark remark = remarkOn(tune, found);
    tune = harmony::withChords(std::move(tune), found);
    tune.said.push_back(std::move(remark));
    return tune;
}

} // namespace app
