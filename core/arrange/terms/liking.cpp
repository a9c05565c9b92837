#include "core/arrange/terms.h"

#include <algorithm>
#include <array>
#include <bitset>
#include <cmath>

namespace arrange {

namespace {

// The left hand's home: lowest notes from C2 to G3, best between F2 and E3 (MIDI keys).
constexpr int lowestHome = 36;
constexpr int highestHome = 55;
constexpr int lowestBest = 41;
constexpr int highestBest = 52;
constexpr int c3 = 48;

constexpr Points outsideHome = 110; // a semitone
constexpr Points outsideBest = 18;  // a semitone
constexpr Points rests = 1400;
constexpr Points missingNote = 150;
constexpr Points missingRichness = 70; // each note that a higher level would add
constexpr Points extraNote = 20;
constexpr Points block = 160;
constexpr Points noFifth = 70; // root and octave alone
constexpr Points bareRoot = 120; // one note where the level has more
constexpr Points turn = 50;    // each change of direction beyond the first
constexpr Points lowClosedThird = 350;

// Departures from root, fifth and octave by degree within the octave, and of those above it:
// the tenth is the best of them, the ninth airy, sixth and seventh lean.
constexpr std::array<Points, 7> closeDegree{0, 120, 90, 120, 0, 60, 40};
constexpr std::array<Points, 7> highDegree{0, 25, 15, 90, 30, 100, 100};

// How many notes a span has room for without hurry: one in each half second; three at most, at
// the higher levels one for each level.
int naturalNotes(View const& view)
{
    constexpr double unhurried = 0.5;
    int const room = static_cast<int>(view.seconds(view.span) / unhurried + 0.01);
    return std::clamp(room, 1, std::max(3, view.level->number));
}

Points degreeCost(int degree)
{
    auto const within = static_cast<std::size_t>(((degree - 1) % 7 + 7) % 7);
    return degree > 8 ? highDegree[within] : closeDegree[within];
}

int turnsOf(Laid const& laid)
{
    int turns = 0;
    int direction = 0;
    for (std::size_t i = 0; i + 1 < laid.plucks.size(); ++i) {
        if (laid.plucks[i].at == laid.plucks[i + 1].at) continue;
        int const step = laid.plucks[i + 1].string > laid.plucks[i].string ? 1 : -1;
        if (direction != 0 && step != direction) ++turns;
        direction = step;
    }
    return turns;
}

Points shape(View const& view, Laid const& laid)
{
    constexpr int lowestDegree = -15;
    std::bitset<64> heard;
    Points sum = 0;
    for (Pluck const& p : laid.plucks) {
        auto const place = static_cast<std::size_t>(std::clamp(p.degree - lowestDegree, 0, 63));
        if (heard[place]) continue;
        heard.set(place);
        sum += degreeCost(p.degree);
    }
    auto const notes = static_cast<int>(heard.count());
    int const natural = naturalNotes(view);
    sum += missingNote * std::max(0, std::min(natural, 3) - notes);
    sum += missingRichness * std::max(0, natural - std::max(notes, 3));
    sum += extraNote * std::max(0, notes - natural);
    bool const fifth = std::ranges::any_of(
        laid.plucks, [](Pluck const& p) { return ((p.degree - 5) % 7 + 7) % 7 == 0; });
    if (notes > 1 && !fifth) sum += noFifth;
    if (notes == 1 && view.level->number > 1) sum += bareRoot;
    sum += turn * std::max(0, turnsOf(laid) - 1);
    bool const together = laid.plucks.front().at == laid.plucks.back().at;
    // A block is plain where there was room to break it.
    if (notes > 1 && together && natural > 1 && view.close == Close::None) sum += block;
    return sum;
}

Points beyond(int midi, int low, int high) { return std::max({0, low - midi, midi - high}); }

Points registerOf(Laid const& laid)
{
    int const lowest = std::ranges::min_element(laid.plucks, {}, &Pluck::midi)->midi;
    return outsideHome * beyond(lowest, lowestHome, highestHome) +
           outsideBest * beyond(lowest, lowestBest, highestBest);
}

// A third close above a root that stands below C3.
Points lowThird(Laid const& laid)
{
    bool const growls = std::ranges::any_of(laid.plucks, [](Pluck const& p) {
        constexpr int thirdAbove = 4;
        return p.degree == 3 && p.midi - thirdAbove < c3;
    });
    return growls ? lowClosedThird : 0;
}

} // namespace

Points liking(View const& view, Laid const& laid)
{
    if (laid.rests()) return rests;
    return shape(view, laid) + registerOf(laid) + lowThird(laid);
}

} // namespace arrange
