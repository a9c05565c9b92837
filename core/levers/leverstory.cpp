#include "core/levers/leverstory.h"

#include "core/base/words.h"
#include "core/harp/seats.h"
#include "core/levers/uses.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace levers {

namespace {

using arrange::Arrangement;

std::optional<tune::PlayedNote> firstUse(Arrangement const& a, harp::StringIndex string)
{
    for (tune::PlayedNote const& use : usesOf(a.tune, a.playing))
        if (harp::stringAtMoment(a.harp, a.levers, use.pitch, use.at) == string) return use;
    return std::nullopt;
}

std::string barOf(Arrangement const& a, tune::PlayedBarIndex playedBar)
{
    tune::PlayedBar const& bar = a.playing.bars[playedBar];
    std::string const name = tune::barName(a.tune, bar.bar);
    return bar.pass == 1 ? name : base::say("{}, time {}", name, bar.pass);
}

std::string shownLever(harp::Lever lever)
{
    return base::said(lever == harp::Lever::Up ? "lever|up" : "lever|down");
}

std::string turns(Arrangement const& a, harp::StringIndex string)
{
    constexpr int told = 3; // more would not be read
    std::string out;
    int count = 0;
    for (harp::Flip const& flip : a.levers.flips) {
        if (flip.string != string || ++count > told) continue;
        std::string const to = shownLever(flip.to);
        std::string const bar = barOf(a, flip.playedBar);
        if (count == 1)
            out += flip.hand == harp::Side::Left
                       ? base::say("; it is flipped {} in {} by the left hand", to, bar)
                       : base::say("; it is flipped {} in {} by the right hand", to, bar);
        else
            out += flip.hand == harp::Side::Left
                       ? base::say(", {} in {} by the left hand", to, bar)
                       : base::say(", {} in {} by the right hand", to, bar);
    }
    if (count > told) out += base::say(", and {} more times", count - told);
    return out;
}

} // namespace

bool tunePlays(Arrangement const& arrangement, harp::StringIndex string)
{
    return firstUse(arrangement, string).has_value();
}

std::string leverStory(Arrangement const& a, harp::StringIndex string)
{
    std::string const name = harp::stringName(a.harp, string);
    if (!a.harp.string(string).hasLever) return base::say("{} has no lever.", name);
    auto const use = firstUse(a, string);
    harp::Lever const start = a.levers.setup[string];
    if (!use)
        return base::say("The tune does not use {}, so its lever, now {} at the start, may "
                         "be set to suit the left hand.",
                         name, shownLever(start));
    return base::say("The tune first uses {} in {}, as {}, so its lever is {} at the start{}.",
                     name, barOf(a, use->playedBar),
                     music::shown(harp::pitchAt(a.harp, a.levers, string, use->at)),
                     shownLever(start), turns(a, string));
}

} // namespace levers
