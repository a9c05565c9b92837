#include "app/soundwish.h"

#include "core/perform/practice.h"

#include <charconv>

namespace app {

namespace {

using base::Fault;
using base::FaultCode;

template<typename Number>
std::optional<Number> numberFrom(std::string_view text)
{
    Number value{};
    auto const [stop, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || stop != text.data() + text.size()) return std::nullopt;
    return value;
}

} // namespace

base::Result<double> tempoShareFrom(std::string const& text)
{
    std::string_view digits = text;
    if (digits.ends_with('%')) digits.remove_suffix(1);
    auto const percent = numberFrom<double>(digits);
    if (!percent || !(*percent >= 25 && *percent <= 150))
        return Fault{FaultCode::BadCall, "--at", text + "; write 25% to 150%, such as 60%"};
    return *percent / 100;
}

base::Result<std::pair<int, int>> passageFrom(std::string const& text)
{
    auto const dash = text.find('-');
    auto const first = numberFrom<int>(std::string_view(text).substr(0, dash));
    auto const last = dash == std::string::npos
                          ? first
                          : numberFrom<int>(std::string_view(text).substr(dash + 1));
    if (!first || !last || *first < 0 || *last < *first)
        return Fault{FaultCode::BadCall, "--passage",
                     text + "; write FIRST-LAST, such as 5-8, or one bar"};
    return std::pair{*first, *last};
}

base::Result<perform::Course> heard(arrange::Arrangement const& arrangement,
                                    SoundWish const& wish,
                                    std::vector<perform::KindOfLilt> const& lilts)
{
    perform::Hearing hearing;
    hearing.tempoScale = wish.at;
    hearing.left = wish.left;
    hearing.right = wish.right;
    hearing.countIn = wish.countIn;
    if (auto const way = perform::liltOf(lilts, arrangement.tune))
        hearing.lilt = {*way, wish.lilt / 100.0};
    if (wish.passage) {
        auto const passage =
            perform::passageOf(arrangement, wish.passage->first, wish.passage->second);
        if (!passage)
            return Fault{FaultCode::BadCall, "--passage",
                         std::to_string(wish.passage->first) + '-' +
                             std::to_string(wish.passage->second) +
                             "; \"" + arrangement.tune.title + "\" has no such bars"};
        hearing.firstPlayedBar = passage->first;
        hearing.lastPlayedBar = passage->last;
    }
    perform::Rounds rounds;
    rounds.tempos.assign(static_cast<std::size_t>(wish.times), wish.at);
    rounds.clicks = wish.click;
    return perform::course(arrangement, hearing, rounds);
}

} // namespace app
