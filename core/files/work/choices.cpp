#include "core/files/tables/tables.h"

#include "core/base/words.h"
#include "core/music/key.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace files {

namespace {

template<typename Item, typename Id>
base::Result<Item> named(std::vector<Item> const& items, Id id, std::string_view wanted,
                         base::FaultCode code)
{
    std::vector<std::string> known;
    for (Item const& item : items) {
        if (item.*id == wanted) return item;
        known.push_back(item.*id);
    }
    return base::Fault{code, std::string(wanted),
                       base::say("known: {}", fmt::join(known, ", "))};
}

// Gap above a string, from the spacing table.
double gapMm(std::vector<SpacingPoint> const& spacing, int step)
{
    auto below = std::find_if(spacing.begin() + 1, spacing.end() - 1,
                              [&](SpacingPoint p) { return diatonicStep(p.pitch) <= step; });
    SpacingPoint const& low = *below;
    SpacingPoint const& high = *(below - 1);
    double const from = diatonicStep(low.pitch);
    double const share = (step - from) / (diatonicStep(high.pitch) - from);
    return low.gapMm + std::min(share, 1.0) * (high.gapMm - low.gapMm);
}

base::Result<harp::Harp> ownHarp(Tables const& tables, harp::HarpModel model,
                                 std::string_view tuning, std::string_view leverFit)
{
    if (!tuning.empty()) {
        auto const tuned =
            named(tables.tunings, &NamedTuning::id, tuning, base::FaultCode::NoSuchTuning);
        if (!tuned) return tuned.error();
        model = withTuning(std::move(model), tuned->key);
    }
    if (!leverFit.empty()) {
        auto const fitted =
            named(tables.leverFits, &LeverFit::id, leverFit, base::FaultCode::NoSuchTuning);
        if (!fitted) return fitted.error();
        model = withLevers(std::move(model), fitted->letters);
    }
    return harpOf(model);
}

} // namespace

base::Result<harp::Harp> harpFrom(Tables const& tables, std::string_view size,
                                  std::string_view tuning, std::string_view leverFit)
{
    for (harp::HarpModel const& own : tables.ownHarps)
        if (own.id == size) return ownHarp(tables, own, tuning, leverFit);
    auto const ofSize = named(tables.harps, &HarpSize::id, size, base::FaultCode::NoSuchHarp);
    if (!ofSize) return ofSize.error();
    auto const tuned =
        named(tables.tunings, &NamedTuning::id,
              tuning.empty() ? tables.tunings.front().id : tuning,
              base::FaultCode::NoSuchTuning);
    if (!tuned) return tuned.error();
    auto const fitted =
        named(tables.leverFits, &LeverFit::id,
              leverFit.empty() ? tables.leverFits.front().id : leverFit,
              base::FaultCode::NoSuchTuning);
    if (!fitted) return fitted.error();

    int const signature = music::signature({tuned->key, music::Mode::Ionian});
    harp::HarpStrings strings;
    for (int step = diatonicStep(ofSize->lowest); step <= diatonicStep(ofSize->highest);
         ++step) {
        music::Pitch open = music::naturalAt(step);
        open.alter = music::alterIn(signature, open.letter);
        bool const hasLever = std::find(fitted->letters.begin(), fitted->letters.end(),
                                        open.letter) != fitted->letters.end();
        strings.push_back({open, hasLever, gapMm(tables.spacing, step),
                           step < diatonicStep(tables.lowestPlain)});
    }
    return harp::Harp::make(ofSize->id, ofSize->name, tuned->key, std::move(strings));
}

base::Result<harp::HandModel> handFrom(Tables const& tables, std::string_view id)
{
    return named(tables.hands, &harp::HandModel::id, id, base::FaultCode::NoSuchHand);
}

base::Result<harp::Level> levelFrom(Tables const& tables, int number)
{
    for (harp::Level const& level : tables.levels)
        if (level.number == number) return level;
    return base::Fault{base::FaultCode::NoSuchHand, base::say("level {}", number),
                       base::say("levels go from 1 to {}", tables.levels.size())};
}

base::Result<arrange::Weights> styleFrom(Tables const& tables, std::string_view id)
{
    return named(tables.styles, &arrange::Weights::style, id, base::FaultCode::NoSuchStyle);
}

base::Result<arrange::Slider> sliderFrom(Tables const& tables, std::string_view id)
{
    return named(tables.sliders, &arrange::Slider::id, id, base::FaultCode::NoSuchSlider);
}

base::Result<proposal::TimeManner> timeMannerFrom(Tables const& tables, std::string_view id)
{
    return named(tables.timeManners, &proposal::TimeManner::id, id,
                 base::FaultCode::NoSuchForm);
}

} // namespace files
