#include "core/harp/levers.h"

#include "core/base/words.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cassert>

namespace harp {

namespace {

using music::Letter;

// The letters from the first that a signature alters: sharps in their order, flats in theirs.
std::array<Letter, 7> inOrderOf(int signature)
{
    std::array<Letter, 7> letters = music::orderOfSharps;
    if (signature < 0) std::reverse(letters.begin(), letters.end());
    return letters;
}

base::Fault beyondTuning(Harp const& harp, music::Key key, StringIndex string,
                         music::Pitch wanted)
{
    HarpString const& s = harp.string(string);
    std::string reason;
    if (wanted.alter < s.open.alter)
        reason = base::said("and a lever cannot lower a string");
    else if (wanted.alter > s.open.alter + 1)
        reason = base::said("and a lever raises a string by only one semitone");
    else
        reason = base::said("and that string has no lever");
    return {base::FaultCode::KeyBeyondTuning, shown(key),
            base::say("needs {} on {}, {}", shown(nameOf(wanted)), stringName(harp, string),
                      reason)};
}

music::Pitch inSignature(music::Pitch open, int signature)
{
    return {open.letter, alterIn(signature, open.letter), open.octave};
}

// "F♯", "A♮": the natural sign is written, as the lever takes a flat away.
std::string raised(music::PitchName open)
{
    music::PitchName const up{open.letter, open.alter + 1};
    return up.alter == 0 ? shown(up) + "♮" : shown(up);
}

// What the set-up line says of one letter; nothing when all its levers are down.
std::string letterSetup(Harp const& harp, LeverSetting const& setup, Letter letter)
{
    std::vector<std::string> up;
    std::vector<std::string> down;
    std::string name;
    for (StringIndex i = harp.highest(); i >= 0; --i) {
        music::Pitch const open = harp.string(i).open;
        if (open.letter != letter) continue;
        name = raised(nameOf(open));
        if (setup[i] == Lever::Up)
            up.push_back(noteOnString(harp, i, name));
        else
            down.push_back(noteOnString(harp, i, shown(nameOf(open))));
    }
    if (up.empty()) return {};
    if (down.empty()) return name;
    if (up.size() > down.size()) return base::say("{} but not {}", name, fmt::join(down, " "));
    return base::say("only {}", fmt::join(up, " "));
}

// Letters of the harp in the order in which keys with more sharps raise them.
std::vector<Letter> inOrderOfRaising(Harp const& harp)
{
    std::vector<music::PitchName> names;
    for (StringIndex i = 0; i < std::min(harp.count(), 7); ++i)
        names.push_back(nameOf(harp.string(i).open));
    std::sort(names.begin(), names.end(),
              [](music::PitchName a, music::PitchName b) { return fifths(a) < fifths(b); });
    std::vector<Letter> letters;
    for (music::PitchName name : names) letters.push_back(name.letter);
    return letters;
}

} // namespace

LeverSetting nearestSetting(Harp const& harp, music::Key key)
{
    int const sharps = music::signature(key);
    LeverSetting setting;
    for (HarpString const& string : harp.strings())
        setting.push_back(string.hasLever &&
                                  music::alterIn(sharps, string.open.letter) > string.open.alter
                              ? Lever::Up
                              : Lever::Down);
    return setting;
}

base::Result<LeverSetting> settingFor(Harp const& harp, music::Key key)
{
    int const sharps = signature(key);
    LeverSetting setting(harp.count(), Lever::Down);
    for (Letter letter : inOrderOf(sharps)) {
        for (StringIndex const i : harp.indices()) {
            HarpString const& s = harp.string(i);
            if (s.open.letter != letter) continue;
            music::Pitch const wanted = inSignature(s.open, sharps);
            std::optional<Lever> const lever = leverFor(s, wanted);
            if (!lever) return beyondTuning(harp, key, i, wanted);
            setting[i] = *lever;
        }
    }
    return setting;
}

Lever leverAt(LeverTimeline const& levers, StringIndex string, music::Moment at)
{
    auto flip =
        std::upper_bound(levers.flips.begin(), levers.flips.end(), at,
                         [](music::Moment moment, Flip const& f) { return moment < f.at; });
    while (flip != levers.flips.begin()) {
        --flip;
        if (flip->string == string) return flip->to;
    }
    return levers.setup[string];
}

music::Pitch pitchAt(Harp const& harp, LeverTimeline const& levers, StringIndex string,
                     music::Moment at)
{
    return sounding(harp.string(string), leverAt(levers, string, at));
}

std::string noteOnString(Harp const& harp, StringIndex string, std::string const& name)
{
    music::Pitch const open = harp.string(string).open;
    if (harp.naming() == Naming::Scientific) return name + std::to_string(open.octave);
    if (harp.naming() == Naming::FromTop)
        return base::say("{} (string {} from the top)", name, harp.count() - string);
    return std::to_string(harpOctave(open)) + name;
}

std::string setupLine(Harp const& harp, LeverSetting const& setup)
{
    assert(setup.size() == harp.strings().size());
    std::vector<std::string> letters;
    for (Letter letter : inOrderOfRaising(harp)) {
        std::string said = letterSetup(harp, setup, letter);
        if (!said.empty()) letters.push_back(std::move(said));
    }
    if (letters.empty()) return base::said("All levers down");
    return base::say("Set levers: {}", fmt::join(letters, ", "));
}

} // namespace harp
