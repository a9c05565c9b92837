#include "core/proposal/tuneset.h"

#include "core/base/words.h"
#include "core/proposal/keywish.h"

#include <algorithm>

namespace proposal {

namespace {

bool allows(KeyWish const& wish, levers::KeyFit const& fit)
{
    if (std::holds_alternative<AsWritten>(wish)) return fit.moved == music::Interval{};
    auto const* const key = std::get_if<music::Key>(&wish);
    return !key || fit.key.tonic == key->tonic;
}

} // namespace

base::Result<std::vector<levers::SetStep>> setOf(std::vector<Brief> const& briefs,
                                                 levers::SetOrder order)
{
    if (briefs.empty() || briefs.size() > longestSet)
        return base::Fault{base::FaultCode::BadCall, "--set",
                           base::say("a set has 1 to {} tunes", longestSet)};
    constexpr std::size_t keysOfEach = 5;
    std::vector<levers::SetTune> tunes;
    for (Brief const& brief : briefs) {
        levers::SetTune tune =
            levers::setTune(briefs.front().harp, tune::changed(brief.tune, brief.changes),
                            tempoWished(brief), brief.level, 64, pricesOf(brief));
        std::erase_if(tune.keys, [&](auto const& fit) { return !allows(brief.key, fit); });
        if (tune.keys.size() > keysOfEach) tune.keys.resize(keysOfEach);
        if (tune.keys.empty()) {
            auto const moves = movesWished(brief);
            base::Fault fault = moves ? base::Fault{base::FaultCode::KeyBeyondTuning, {}, {}}
                                      : moves.error();
            fault.place = "\"" + brief.tune.title + "\"" +
                          (fault.place.empty() ? "" : ", " + fault.place);
            return fault;
        }
        tunes.push_back(std::move(tune));
    }
    return levers::setPlan(briefs.front().harp, tunes, order);
}

} // namespace proposal
