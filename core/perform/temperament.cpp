#include "core/perform/temperament.h"

#include "core/base/words.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

namespace perform {

namespace {

// The key within the octave, from C: "F#" is 6.
std::optional<int> keyFrom(std::string_view name)
{
    constexpr std::array<int, 7> ofLetter{9, 11, 0, 2, 4, 5, 7}; // A to G
    if (name.empty() || name.size() > 2 || name[0] < 'A' || name[0] > 'G') return std::nullopt;
    int key = ofLetter[static_cast<std::size_t>(name[0] - 'A')];
    if (name.size() == 2) {
        if (name[1] != '#' && name[1] != 'b') return std::nullopt;
        key += name[1] == '#' ? 1 : 11;
    }
    return key % 12;
}

std::optional<double> centsFrom(std::string_view text)
{
    if (text.starts_with('+')) text.remove_prefix(1);
    double cents = 0;
    auto const [stop, error] = std::from_chars(text.data(), text.data() + text.size(), cents);
    bool const whole = error == std::errc{} && stop == text.data() + text.size();
    if (!whole || !(std::abs(cents) <= 50)) return std::nullopt;
    return cents;
}

} // namespace

base::Result<Temperament> temperamentFrom(std::vector<Temperament> const& all,
                                          std::string_view text)
{
    if (auto const found = std::ranges::find(all, text, &Temperament::id); found != all.end())
        return *found;
    std::string ids;
    for (Temperament const& one : all) ids += one.id + ", ";
    base::Fault const off{
        base::FaultCode::BadCall, "--temperament",
        base::say("{}; write {}or cents by note, such as E=-14,B=-12", text, ids)};
    Temperament own{std::string(text), std::string(text), {}};
    for (std::string_view rest = text;;) {
        std::string_view const one = rest.substr(0, rest.find(','));
        auto const equals = one.find('=');
        if (equals == std::string_view::npos) return off;
        auto const key = keyFrom(one.substr(0, equals));
        auto const cents = centsFrom(one.substr(equals + 1));
        if (!key || !cents) return off;
        own.cents[static_cast<std::size_t>(*key)] = *cents;
        if (one.size() == rest.size()) return own;
        rest.remove_prefix(one.size() + 1);
    }
}

} // namespace perform
