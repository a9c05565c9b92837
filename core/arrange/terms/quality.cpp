#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>

namespace arrange {

namespace {

// Letters from the chord's root up to the string: 2 a third, 4 a fifth, 6 a seventh.
int stepsAboveRoot(View const& view, int string)
{
    int const letter = music::index(view.harp->string(string).open.letter);
    return (letter - music::index(view.chord.rootLetter) + 7) % 7;
}

bool thirdIsHeard(View const& view, Laid const& laid)
{
    int const third = *view.chord.third;
    bool const inLeft =
        std::ranges::any_of(laid.plucks, [&](Pluck const& p) { return p.midi % 12 == third; });
    bool const inTune = std::ranges::any_of(
        view.passes.front().tune, [&](TuneNote const& n) { return n.midi % 12 == third; });
    return inLeft || inTune;
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
        if (view.chord.seventh) return WrongTone::Seventh;
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
    if (view.chord.third && !thirdIsHeard(view, laid)) {
        bool const isLong = view.spanLength >= music::barLength(view.meter);
        sum += static_cast<double>(taste.thirdMissed + (isLong ? taste.longThirdMissed : 0) +
                                   (hasNinth(view, laid) ? taste.ninthWithoutThird : 0));
    }
    for (Pluck const& p : laid.plucks)
        if (std::optional<WrongTone> const wrong = wrongTone(view, p))
            sum += static_cast<double>(faultOf(view, *wrong)) *
                   taste.byStrength[static_cast<std::size_t>(p.strength)];
    return std::lround(sum);
}

} // namespace arrange
