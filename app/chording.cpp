#include "app/chording.h"

#include "core/base/words.h"
#include "core/harmony/findchords.h"

#include <fmt/format.h>

namespace app {

namespace {

tune::Remark remarkOn(tune::Tune const& tune, harmony::Suggestion const& found)
{
    std::string did = base::say("chords are found from its notes, in {}", shown(found.heardIn));
    if (!found.leastSure.empty()) {
        harmony::FoundChord const& least = found.chords[found.leastSure.front()];
        did += base::say("; the least sure is {} in {}", shown(least.chord),
                         tune::barName(tune, least.unit.bar));
    }
    return {{},
            tune::hasChords(tune) ? base::said("the chords as written are set aside")
                                  : base::said("the tune has no chords"),
            std::move(did)};
}

// A strain that was left without letters, in a tune that has them.
tune::Tune filled(tune::Tune tune, files::Tables const& tables)
{
    if (auto const home = harmony::homeAtEnd(tune)) {
        tune = harmony::withHomeAtEnd(std::move(tune));
        tune.said.push_back(
            {{},
             base::said("the last bar has no chord, and the one before it does not close"),
             base::say("{} is put there", shown(*home))});
    }
    auto const runs = harmony::unletteredBars(tune);
    if (runs.empty()) return tune;
    tune = harmony::withUnletteredFilled(tables.harmony, std::move(tune));
    for (auto const& [from, to] : runs)
        tune.said.push_back({{},
                             base::say("{} to {} have no chords", tune::barName(tune, from),
                                       tune::barName(tune, to)),
                             base::said("chords for them are found from the notes")});
    return tune;
}

} // namespace

tune::Tune chorded(tune::Tune tune, std::string const& wish, files::Tables const& tables)
{
    bool const find = wish == "suggest" || (wish == "auto" && !tune::hasChords(tune));
    if (!find) return wish == "auto" ? filled(std::move(tune), tables) : tune;
    harmony::Suggestion const found = harmony::suggestChords(tables.harmony, tune);
    if (found.chords.empty()) return tune;
    tune::Remark remark = remarkOn(tune, found);
    tune = harmony::withChords(std::move(tune), found);
    tune.said.push_back(std::move(remark));
    return tune;
}

} // namespace app
