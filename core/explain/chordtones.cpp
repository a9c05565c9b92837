#include "core/explain/chordtones.h"

#include "core/arrange/terms.h"
#include "core/base/words.h"
#include "core/explain/names.h"

#include <fmt/format.h>

#include <algorithm>

namespace explain {

using namespace arrange;

namespace {

bool allTones(Told const& told)
{
    return std::ranges::all_of(told.laid.plucks,
                               [&](Pluck const& p) { return isTone(told.view, p.midi); });
}

// "diminished" for a fifth a semitone short.
std::string fifthName(View const& view, int midi)
{
    constexpr int perfect = 7;
    int const above = (midi - view.chord.root + 120) % 12;
    return base::said(above < perfect ? "fifth|diminished" : "fifth|augmented");
}

// The pitch that the other position of a string's lever gives, where that is a tone.
std::optional<std::string> byTurning(Told const& told, harp::StringIndex string)
{
    harp::HarpString const& s = told.scene.harp.string(string);
    if (!s.hasLever) return std::nullopt;
    for (harp::Lever lever : {harp::Lever::Down, harp::Lever::Up}) {
        music::Pitch const pitch = harp::sounding(s, lever);
        if (isTone(told.view, music::midi(pitch))) return music::shown(pitch);
    }
    return std::nullopt;
}

} // namespace

std::string foreignNote(Told const& told)
{
    for (std::size_t i = 0; i < told.laid.plucks.size(); ++i) {
        Pluck const& p = told.laid.plucks[i];
        if (isTone(told.view, p.midi)) continue;
        return base::say("The {} sounds {}, which is not a note of {}.", degreeName(p.degree),
                         nameOf(told, i), chordName(told.position));
    }
    return base::said("Its lowest note is not the bass note that the chord symbol asks for.");
}

std::string fitsChord(Told const& told)
{
    if (allTones(told)) return base::say("Every note belongs to {}.", chordName(told.position));
    return base::say("It has fewer notes outside {}.", chordName(told.position));
}

std::optional<std::string> wrongNote(Told const& told)
{
    for (std::size_t i = 0; i < told.laid.plucks.size(); ++i) {
        Pluck const& p = told.laid.plucks[i];
        std::optional<WrongTone> const wrong = wrongTone(told.view, p);
        if (!wrong) continue;
        std::string const name = nameOf(told, i);
        std::string const chord = chordName(told.position);
        switch (*wrong) {
        case WrongTone::Third:
            return base::say("{} is the wrong third for {}.", name, chord);
        case WrongTone::Fifth:
            return base::say("With the levers as they are, the fifth, {}, is {}, which is "
                             "not the fifth of {}.",
                             name, fifthName(told.view, p.midi), chord);
        case WrongTone::Seventh:
            return base::say("{} is the wrong seventh for {}.", name, chord);
        case WrongTone::SeventhOffScale:
            return base::say("The seventh, {}, is neither in {} nor in the key.", name, chord);
        }
    }
    return std::nullopt;
}

std::string wrongQuality(Told const& told)
{
    return wrongNote(told).value_or(base::said("Neither hand plays the third of the chord."));
}

std::string statesQuality(Told const& told)
{
    for (std::size_t i = 0; i < told.laid.plucks.size(); ++i)
        if (isThird(told.view, told.laid.plucks[i].midi))
            return base::say("It has the third of the chord, {}.", nameOf(told, i));
    return base::say("It has no wrong note for {}.", chordName(told.position));
}

std::string wantsLevers(Told const& told)
{
    for (std::size_t i = 0; i < told.laid.plucks.size(); ++i) {
        Pluck const& p = told.laid.plucks[i];
        if (!wrongTone(told.view, p)) continue;
        if (auto const wanted = byTurning(told, p.string))
            return base::say("It would need a lever flip from {} to {}.", nameOf(told, i),
                             *wanted);
        return base::say("The string of {} gives no note of {}, whether its lever is up or "
                         "down.",
                         nameOf(told, i), chordName(told.position));
    }
    return base::said("It leaves the left hand little time to flip a lever.");
}

} // namespace explain
