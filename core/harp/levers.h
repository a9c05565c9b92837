#pragma once

#include "core/base/result.h"
#include "core/harp/harp.h"
#include "core/music/key.h"
#include "core/music/time.h"
#include "core/tune/indices.h"

#include <vector>

namespace harp {

enum class Side { Left, Right };

// One lever for each string.
using LeverSetting = base::List<StringIndex, Lever>;

// The levers that give a key its signature on this harp. Fault: KeyBeyondTuning naming the
// first letter that the tuning or a missing lever cannot give.
base::Result<LeverSetting> settingFor(Harp const& harp, music::Key key);

// The same as far as the levers go: a string that cannot give its note of the key is left as near
// to it as it can be.
LeverSetting nearestSetting(Harp const& harp, music::Key key);

// A lever turned while playing. The hand that turns it plucks nothing strictly between freeFrom
// and freeTo; the string rings neither before (it is silent or damped) nor changes a note still
// wanted.
struct Flip {
    music::Moment at; // in played time
    music::Moment freeFrom;
    music::Moment freeTo;
    StringIndex string = 0;
    Lever to = Lever::Up;
    Side hand = Side::Left;
    tune::PlayedBarIndex playedBar = 0;
    int effort = 0; // how little its moment suits, in points of the lever plan, apart from
                    // what the left hand gives up for it
    friend bool operator==(Flip const&, Flip const&) = default;
};

// How the arranger wants one lever to stand before playing, on a string that the tune itself
// does not play: for the left hand. The string is named by the letter and octave of its pitch,
// so that the wish outlives another harp.
struct LeverWish {
    music::Letter letter = music::Letter::C;
    int octave = 3; // scientific
    Lever lever = Lever::Up;
    friend bool operator==(LeverWish const&, LeverWish const&) = default;
};

// What the levers do through a whole performance. Flips are ordered by time.
struct LeverTimeline {
    LeverSetting setup;
    std::vector<Flip> flips;
    friend bool operator==(LeverTimeline const&, LeverTimeline const&) = default;
};

// The lever of a string at a moment; a flip counts from its own moment on.
Lever leverAt(LeverTimeline const& levers, StringIndex string, music::Moment at);
music::Pitch pitchAt(Harp const& harp, LeverTimeline const& levers, StringIndex string,
                     music::Moment at);

// What one string of a letter sounds, by the harp's way of naming strings: "4C", the harp's
// octave first so that it is not taken for a scientific one; "C4"; or "C (string 20 from the
// top)".
std::string noteOnString(Harp const& harp, StringIndex string, std::string const& name);

// "Set levers: A♮, E♮, B♮, F♯" for the head of the sheet, in the order in which keys raise
// them; "All levers down" where none is up. A letter whose strings differ is named by its few
// strings with their harp octaves, "only 4C♯ 3C♯", or as the rule and its exceptions, "C♯ but
// not 4C" [trade-6].
std::string setupLine(Harp const& harp, LeverSetting const& setup);

} // namespace harp
