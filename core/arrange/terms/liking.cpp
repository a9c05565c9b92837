#include "core/arrange/terms.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace arrange {

namespace {

// The left hand's home: roots from C2 to G3, best between G2 and E3 (MIDI keys).
constexpr int lowestHome = 36;
constexpr int highestHome = 55;
constexpr int lowestBest = 41;
constexpr int highestBest = 52;

constexpr Points rests = 1500;
constexpr Points outsideHome = 120; // a semitone
constexpr Points outsideBest = 20;  // a semitone
constexpr Points eachDegreeOutside158 = 110;
constexpr Points missingOfThree = 180; // each note fewer than three
constexpr Points eachNoteMore = 70;    // beyond three
constexpr Points block = 60;
constexpr Points closeThirdBelowC3 = 350;

bool isPlain(int degree) { return degree == 1 || degree == 5 || degree == 8; }

Points shape(Laid const& laid)
{
    std::array<bool, 32> heard{};
    Points sum = 0;
    int notes = 0;
    for (Pluck const& p : laid.plucks) {
        auto const place = static_cast<std::size_t>(std::clamp(p.degree + 12, 0, 31));
        if (heard[place]) continue;
        heard[place] = true;
        ++notes;
        if (!isPlain(p.degree)) sum += eachDegreeOutside158;
    }
    if (notes < 3) sum += missingOfThree * (3 - notes);
    if (notes > 3) sum += eachNoteMore * (notes - 3);
    if (laid.plucks.size() > 1 && laid.plucks.front().at == laid.plucks.back().at) sum += block;
    return sum;
}

Points beyond(int midi, int low, int high) { return std::max({0, low - midi, midi - high}); }

Points registerOf(Laid const& laid)
{
    int lowest = laid.plucks.front().midi;
    for (Pluck const& p : laid.plucks) lowest = std::min(lowest, p.midi);
    return outsideHome * beyond(lowest, lowestHome, highestHome) +
           outsideBest * beyond(lowest, lowestBest, highestBest);
}

// A third close above the lowest note, low in the bass: below C3 it growls.
Points lowThird(Laid const& laid)
{
    constexpr int c3 = 48;
    for (Pluck const& p : laid.plucks)
        if (p.degree == 3 && p.midi - 4 < c3) return closeThirdBelowC3;
    return 0;
}

} // namespace

Points liking(View const&, Laid const& laid)
{
    if (laid.rests()) return rests;
    return shape(laid) + registerOf(laid) + lowThird(laid);
}

} // namespace arrange
