#include "core/tune/ways.h"

#include <algorithm>

namespace tune {

namespace {

constexpr std::array<std::string_view, 9> wayIds{
    "plain",          "held",   "leave-out", "octave", "other-string",
    "left-lightened", "slower", "key",       "level"};

} // namespace

std::string_view wayId(Way way) { return wayIds[static_cast<std::size_t>(way)]; }

std::optional<Way> wayFrom(std::string_view id)
{
    auto const found = std::find(wayIds.begin(), wayIds.end(), id);
    if (found == wayIds.end()) return std::nullopt;
    return static_cast<Way>(found - wayIds.begin());
}

std::string_view functionId(NoteFunction function)
{
    constexpr std::array<std::string_view, noteFunctions> ids{
        "neighbour",        "passing",  "leading", "arpeggio_third",
        "chromatic_phrase", "ornament", "other"};
    return ids[static_cast<std::size_t>(function)];
}

std::string_view circumstanceId(Circumstance circumstance)
{
    constexpr std::array<std::string_view, circumstances> ids{
        "on_beat",    "first_beat",  "long",         "quick",   "part_end",
        "line_apart", "sung",        "plain_in_key", "in_key",  "opening",
        "chord_root", "chord_third", "leaps_around", "off_harp"};
    return ids[static_cast<std::size_t>(circumstance)];
}

} // namespace tune
