#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>

namespace arrange {

namespace {

// Letters from the chord's root up to the string: 2 a third, 4 a fifth, 6 a seventh.
int stepsAboveRoot(View const& view, harp::StringIndex string)
{
    int const letter = music::index(view.harp->string(string).open.letter);
    return (letter - music::index(view.chord.rootLetter) + 7) % 7;
}

bool isHeard(View const& view, Laid const& laid, int pitchClass)
{
    auto const sounds = [pitchClass](auto const& note) { return note.midi % 12 == pitchClass; };
    return std::ranges::any_of(laid.plucks, sounds) ||
           std::ranges::any_of(view.passes.front().tune, sounds);
}

// A ninth that is no tone of the chord, in any octave.
bool hasNinth(View const& view, Laid const& laid)
{
    return std::ranges::any_of(laid.plucks, [&](Pluck const& p) {
        return stepsAboveRoot(view, p.string) == 1 &&
               !view.chord.tone[static_cast<std::size_t>(p.midi % 12)];
    });
}

Points faultOf(View const& view, WrongTone wrong)
{
    Taste::Quality const& taste = view.taste->quality;
    switch (wrong) {
    case WrongTone::Third:
        return taste.wrongThird;
    case WrongTone::Fifth:
        return taste.wrongFifth;
    case WrongTone::Seventh:
        return taste.wrongSeventh;
    case WrongTone::SeventhOffScale:
        return taste.seventhOffScale;
    }
    return 0;
}

// A major seventh over a minor chord makes another chord of it.
bool majorOverMinor(View const& view, int midi)
{
    return view.chord.third == (view.chord.root + 3) % 12 &&
           (midi - view.chord.root + 120) % 12 == 11;
}

// A dominant seventh: its third is the note that leads.
bool isDominantSeventh(View const& view)
{
    auto const& chord = view.chord;
    return chord.third == (chord.root + 4) % 12 && chord.seventh == (chord.root + 10) % 12;
}

} // namespace

std::optional<WrongTone> wrongTone(View const& view, Pluck const& p)
{
    if (view.chord.tone[static_cast<std::size_t>(p.midi % 12)]) return std::nullopt;
    switch (stepsAboveRoot(view, p.string)) {
    case 2:
        if (view.chord.third) return WrongTone::Third;
        break;
    case 4:
        if (view.chord.fifth) return WrongTone::Fifth;
        break;
    case 6:
        if (view.chord.seventh || majorOverMinor(view, p.midi)) return WrongTone::Seventh;
        if (!view.chord.inScale[static_cast<std::size_t>(p.midi % 12)])
            return WrongTone::SeventhOffScale;
        break;
    default:
        break;
    }
    return std::nullopt;
}

Points quality(View const& view, Laid const& laid)
{
    if (laid.rests()) return 0;
    Taste::Quality const& taste = view.taste->quality;
    double sum = 0;
    if (view.chord.third && !isHeard(view, laid, *view.chord.third)) {
        bool const isLong = view.spanLength >= music::barLength(view.meter);
        sum += static_cast<double>(taste.thirdMissed + (isLong ? taste.longThirdMissed : 0) +
                                   (hasNinth(view, laid) ? taste.ninthWithoutThird : 0));
        if (isDominantSeventh(view))
            sum += static_cast<double>(
                taste.leadingMissed[static_cast<std::size_t>(view.level->number - 1)]);
    }
    // Over a named bass, bass and thumb alone make another chord.
    if (view.chord.slash && !isHeard(view, laid, view.chord.root))
        sum += static_cast<double>(taste.rootMissed);
    for (Pluck const& p : laid.plucks)
        if (std::optional<WrongTone> const wrong = wrongTone(view, p))
            sum += static_cast<double>(faultOf(view, *wrong)) *
                   taste.byStrength[static_cast<std::size_t>(p.strength)];
    return std::lround(sum);
}

} // namespace arrange
