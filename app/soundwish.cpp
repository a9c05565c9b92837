#include "app/soundwish.h"

#include "core/base/words.h"

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
        return Fault{FaultCode::BadCall, "--at",
                     base::say("{}; write 25% to 150%, such as 60%", text)};
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
                     base::say("{}; write FIRST-LAST, such as 5-8, or one bar", text)};
    return std::pair{*first, *last};
}

base::Result<perform::Steps> stepsFrom(std::string const& text)
{
    Fault const off{
        FaultCode::BadCall, "--steps",
        base::say("{}; write FROM-TO/BY or FROM-TO/BYxTIMES, such as 60-100/5x2, with a "
                  "tempo of 25 to 150, a step of 1 to 50 and 1 to 20 times",
                  text)};
    std::string_view rest = text;
    auto const upTo = [&rest](char end) {
        auto const at = rest.find(end);
        std::string_view const part = rest.substr(0, at);
        rest.remove_prefix(at == std::string_view::npos ? rest.size() : at + 1);
        return numberFrom<int>(part);
    };
    auto const from = upTo('-');
    auto const to = upTo('/');
    bool const many = rest.find('x') != std::string_view::npos;
    auto const by = many ? upTo('x') : numberFrom<int>(rest);
    auto const every = many ? numberFrom<int>(rest) : std::optional(1);
    auto const within = [](std::optional<int> number, int least, int most) {
        return number && *number >= least && *number <= most;
    };
    if (!within(from, 25, 150) || !within(to, 25, 150) || *to < *from || !within(by, 1, 50) ||
        !within(every, 1, 20))
        return off;
    return perform::Steps{*from / 100.0, *to / 100.0, *by / 100.0, *every};
}

base::Result<perform::Course> heard(arrange::Arrangement const& arrangement,
                                    SoundWish const& wish, perform::DanceWays const& ways)
{
    perform::Hearing hearing;
    hearing.tempoScale = wish.at;
    hearing.left = wish.left;
    hearing.right = wish.right;
    hearing.countIn = wish.countIn;
    hearing.barBefore = wish.barBefore;
    hearing.added = !wish.tuneAlone;
    hearing.balance = wish.balance / 100.0;
    hearing.rollGap = wish.rollGapMs / 1000.0;
    if (auto const way = perform::liltOf(ways.lilts, arrangement.tune))
        hearing.lilt = {*way, wish.lilt / 100.0};
    hearing.slowing = perform::slowingFor(ways.slowings, arrangement.tune, wish.slowing);
    if (wish.passage) {
        auto const passage =
            perform::passageOf(arrangement, wish.passage->first, wish.passage->second);
        if (!passage)
            return Fault{FaultCode::BadCall, "--passage",
                         std::to_string(wish.passage->first) + '-' +
                             std::to_string(wish.passage->second) +
                             base::say("; \"{}\" has no such bars", arrangement.tune.title)};
        hearing.firstPlayedBar = passage->first;
        hearing.lastPlayedBar = passage->last;
    }
    perform::Rounds rounds;
    rounds.tempos.assign(static_cast<std::size_t>(wish.times), wish.at);
    if (wish.steps) { // the fastest as often as the others
        rounds.tempos = perform::temposOf(*wish.steps);
        for (int again = 1; again < wish.steps->every; ++again)
            rounds.tempos.push_back(rounds.tempos.back());
    }
    rounds.clicks = wish.click;
    return perform::course(arrangement, hearing, rounds);
}

} // namespace app
