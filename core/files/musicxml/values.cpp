#include "core/files/musicxml/values.h"

#include "core/files/abc/text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace files::musicxml {

using base::FaultCode;
using music::Rational;
using pugi::xml_node;

std::string shortened(std::string_view text)
{
    constexpr std::size_t most = 40;
    return plainText(text.substr(0, most));
}

Problem wrongValue(xml_node node)
{
    if (!node) return {FaultCode::BadScoreValue, base::said("an element is missing"), node};
    return {FaultCode::BadScoreValue,
            std::string(node.name()) + ' ' + shortened(node.text().get()), node};
}

std::optional<Rational> decimalFrom(std::string_view text)
{
    constexpr std::size_t mostWhole = 9;
    constexpr std::size_t mostBehind = 4;
    text = trimmed(text);
    bool const negative = text.starts_with('-');
    if (negative) text.remove_prefix(1);
    std::size_t const point = std::min(text.find('.'), text.size());
    std::string digits(text.substr(0, point));
    std::string_view behind = text.substr(std::min(point + 1, text.size()));
    while (behind.ends_with('0')) behind.remove_suffix(1);
    if (digits.size() > mostWhole || behind.size() > mostBehind) return std::nullopt;
    digits += behind;
    std::int64_t value = 0;
    auto const [stop, error] =
        std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (error != std::errc{} || stop != digits.data() + digits.size() || value < 0)
        return std::nullopt;
    std::int64_t scale = 1;
    for (std::size_t i = 0; i < behind.size(); ++i) scale *= 10;
    return Rational(negative ? -value : value, scale);
}

std::optional<int> wholeFrom(xml_node node)
{
    auto const value = decimalFrom(node.text().get());
    if (!value || value->denominator() != 1) return std::nullopt;
    return static_cast<int>(value->numerator());
}

Alter alterOf(xml_node node)
{
    double const value = node.text().as_double();
    if (std::isnan(value)) return {0, true, false};
    double const whole = std::clamp(std::trunc(value), -2.0, 2.0);
    return {static_cast<int>(whole), std::trunc(value) != value, std::trunc(value) != whole};
}

std::optional<music::Letter> letterFrom(std::string_view step)
{
    step = trimmed(step);
    if (step.size() != 1) return std::nullopt;
    auto const name = music::pitchNameFrom(step);
    return name ? std::optional(name->letter) : std::nullopt;
}

std::optional<std::string_view> wayOf(xml_node sound)
{
    constexpr std::array<std::pair<char const*, std::string_view>, 4> ways{
        {{"dacapo", "D.C."}, {"dalsegno", "D.S."}, {"tocoda", "dacoda"}, {"fine", "fine"}}};
    for (auto const& [attribute, mark] : ways)
        if (sound.attribute(attribute)) return mark;
    return std::nullopt;
}

} // namespace files::musicxml
