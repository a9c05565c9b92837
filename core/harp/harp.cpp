#include "core/harp/harp.h"

#include "core/base/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

namespace harp {

namespace {

constexpr std::array<std::string_view, 4> namingIds{"usual", "scientific", "harp", "number"};

base::Fault outOfOrder(StringIndex index, std::string detail)
{
    return {base::FaultCode::StringsOutOfOrder, base::say("string {}", index + 1),
            std::move(detail)};
}

} // namespace

base::Result<Harp> Harp::make(std::string id, std::string name, music::PitchName tuning,
                              HarpStrings strings)
{
    if (strings.empty()) return outOfOrder(0, base::said("no strings at all"));
    for (StringIndex const i : strings.indices()) {
        if (!(strings[i].gapMm > 0))
            return outOfOrder(i, base::say("gap of {} mm", strings[i].gapMm));
        if (i > 0 && diatonicStep(strings[i].open) != diatonicStep(strings[i - 1].open) + 1)
            return outOfOrder(i, base::say("{} after {}", shown(strings[i].open),
                                           shown(strings[i - 1].open)));
    }
    Harp harp;
    harp.m_id = std::move(id);
    harp.m_name = std::move(name);
    harp.m_tuning = tuning;
    harp.m_strings = std::move(strings);
    double place = 0;
    for (HarpString const& s : harp.m_strings) {
        harp.m_placesMm.push_back(place);
        place += s.gapMm;
    }
    return harp;
}

std::optional<StringIndex> stringFor(Harp const& harp, music::Pitch pitch)
{
    StringIndex const index(diatonicStep(pitch) - diatonicStep(harp.string(0).open));
    return harp.strings().holds(index) ? std::optional(index) : std::nullopt;
}

std::optional<Lever> leverFor(HarpString const& string, music::Pitch pitch)
{
    if (pitch == string.open) return Lever::Down;
    if (string.hasLever && pitch == sounding(string, Lever::Up)) return Lever::Up;
    return std::nullopt;
}

double distanceMm(Harp const& harp, StringIndex from, StringIndex to)
{
    return std::abs(harp.placeMm(to) - harp.placeMm(from));
}

double ringSeconds(HarpString const& string)
{
    double const hz = music::frequencyHz(midi(string.open));
    // Losses a second: one part grows with frequency, one is the same for all strings.
    double const losses = string.wound ? 1e-4 * hz + 0.175 : 6e-4 * hz + 0.223;
    return 2.2 / losses;
}

int harpOctave(music::Pitch pitch)
{
    return pitch.letter < music::Letter::F ? 8 - pitch.octave : 7 - pitch.octave;
}

Harp withNaming(Harp harp, Naming naming)
{
    harp.m_naming = naming;
    return harp;
}

std::string_view namingId(Naming naming)
{
    return namingIds[static_cast<std::size_t>(naming)];
}

std::optional<Naming> namingFrom(std::string_view id)
{
    auto const found = std::find(namingIds.begin(), namingIds.end(), id);
    if (found == namingIds.end()) return std::nullopt;
    return static_cast<Naming>(found - namingIds.begin());
}

std::string stringName(Harp const& harp, StringIndex index)
{
    music::Pitch const open = harp.string(index).open;
    switch (harp.naming()) {
    case Naming::HarpOctave:
        return base::say("{}{} (string {})", harpOctave(open), shown(nameOf(open)), index + 1);
    case Naming::FromTop:
        return base::say("{}, string {} from the top", shown(nameOf(open)),
                         harp.count() - index);
    case Naming::Usual:
    case Naming::Scientific: break;
    }
    return base::say("{} (string {})", shown(open), index + 1);
}

} // namespace harp
