#include "core/notation/pace.h"

#include "core/base/words.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace notation {

namespace {

// How words begin that tell of a slowing, in Italian, English and German.
constexpr std::array<std::string_view, 8> slowingBegins{
    "rit", "rall", "allarg", "slentando", "slow", "langsam", "verlangsam", "breiter"};

bool tellsOfSlowing(std::string_view text)
{
    std::string low;
    for (char c : text) low += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    auto const letter = [&low](std::size_t i) { return low[i] >= 'a' && low[i] <= 'z'; };
    return std::ranges::any_of(slowingBegins, [&](std::string_view begins) {
        for (auto at = low.find(begins); at != std::string::npos; at = low.find(begins, at + 1))
            if (at == 0 || !letter(at - 1)) return true;
        return false;
    });
}

// Bars before the slowing in which the tune may tell of it.
constexpr int barsBefore = 2;

} // namespace

std::optional<SlowingMark> slowingMark(arrange::Arrangement const& arrangement,
                                       perform::Slowing slowing)
{
    perform::SlowedTime const slowed(arrangement, slowing);
    auto const& bars = arrangement.playing.bars;
    if (!slowed.slows() || bars.empty()) return std::nullopt;
    auto const after =
        std::ranges::upper_bound(bars, slowed.begins(), {}, &tune::PlayedBar::at);
    auto const first = after == bars.begin() ? after : after - 1;
    for (auto bar = first - std::min<std::ptrdiff_t>(barsBefore, first - bars.begin());
         bar != bars.end(); ++bar)
        for (tune::Annotation const& words :
             arrange::barPlayed(arrangement, bars.indexOf(bar)).annotations)
            if (tellsOfSlowing(words.text)) return std::nullopt;
    SlowingMark mark{{first->bar, slowed.begins() - first->at}};
    mark.lastTime =
        std::ranges::any_of(bars.begin(), first, [&first](tune::PlayedBar const& earlier) {
            return earlier.bar == first->bar;
        });
    return mark;
}

std::string slowingWords(SlowingMark const& mark)
{
    return mark.lastTime ? base::said("rit. last time") : "rit.";
}

} // namespace notation
