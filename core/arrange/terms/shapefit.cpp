#include "core/arrange/terms.h"

#include <algorithm>
#include <bitset>

namespace arrange {

namespace {

// Departures from root, fifth and octave by degree within the octave, and of those above it:
// the tenth is the best of them, the ninth airy, sixth and seventh lean.
Points degreeCost(Taste::ShapeFit const& taste, int degree)
{
    auto const within = static_cast<std::size_t>(((degree - 1) % 7 + 7) % 7);
    return degree > 8 ? taste.highDegree[within] : taste.closeDegree[within];
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

struct Degrees {
    int distinct = 0;
    Points cost = 0;
    bool fifth = false;
};

Degrees degreesOf(View const& view, Laid const& laid)
{
    Taste::ShapeFit const& taste = view.taste->shapeFit;
    constexpr int lowestDegree = -15;
    std::bitset<64> heard;
    Degrees out;
    for (Pluck const& p : laid.plucks) {
        auto const place = static_cast<std::size_t>(std::clamp(p.degree - lowestDegree, 0, 63));
        if (heard[place]) continue;
        heard.set(place);
        // Over a named bass the chord's own notes are at home, whatever their degree.
        bool const own =
            view.chord.slash && view.chord.tone[static_cast<std::size_t>(p.midi % 12)];
        if (!own) out.cost += degreeCost(taste, p.degree);
        out.fifth = out.fifth || own || ((p.degree - 5) % 7 + 7) % 7 == 0;
    }
    out.distinct = static_cast<int>(heard.count());
    return out;
}

// Notes on strings that the shape has plucked before, one by one.
int returnsOf(Laid const& laid, int distinct)
{
    bool const together = laid.plucks.front().at == laid.plucks.back().at;
    return together ? 0 : static_cast<int>(laid.plucks.size()) - distinct;
}

// A root alone says little, but for a chord that is gone after a beat of a bar with several one
// stroke is enough [music-2].
Points bareRoot(View const& view)
{
    Points const bare = view.taste->shapeFit.bareRoot;
    bool const gone = !music::isCompound(view.meter) && view.span <= view.beat &&
                      view.spanLength <= music::Length{music::Rational(1, 4)};
    return gone ? bare / 2 : bare;
}

// Too few notes for the time there is, or too many.
Points fullness(View const& view, int notes)
{
    constexpr int plain = 3;
    Taste::ShapeFit const& taste = view.taste->shapeFit;
    int const room = notesWithoutHurry(view);
    return taste.missingNote * std::max(0, std::min(room, plain) - notes) +
           taste.missingRichness * std::max(0, room - std::max(notes, plain)) +
           taste.extraNote * std::max(0, notes - room) +
           (notes == 1 && view.level->number > 1 ? bareRoot(view) : 0);
}

Points shape(View const& view, Laid const& laid)
{
    Taste::ShapeFit const& taste = view.taste->shapeFit;
    Degrees const degrees = degreesOf(view, laid);
    bool const several = degrees.distinct > 1;
    bool const together = laid.plucks.front().at == laid.plucks.back().at;
    Points sum = degrees.cost + fullness(view, degrees.distinct);
    if (several && !degrees.fifth) sum += taste.noFifth;
    sum += taste.turn * std::max(0, turnsOf(laid) - 1);
    sum += taste.returns * returnsOf(laid, degrees.distinct);
    // A block is plain where there was room to break it.
    if (several && together && notesWithoutHurry(view) > 1 && view.close == Close::None)
        sum += taste.block;
    return sum;
}

// What the book says of the pattern, and how it suits the player's level: what is far below it
// is outgrown, what it has just come to is practised. Over a named bass nothing speaks for
// shapes that are made for a root.
Points bookOf(View const& view, Laid const& laid)
{
    auto const at = [](int level) {
        return static_cast<std::size_t>(std::clamp(level, 1, static_cast<int>(levelCount)) - 1);
    };
    auto const& byLevel = view.taste->shapeFit.byPatternLevel;
    Points const ofBook = view.chord.slash ? std::max<Points>(0, laid.penalty) : laid.penalty;
    return ofBook + byLevel[at(view.level->number)][at(laid.level)];
}

int beyond(int midi, int low, int high) { return std::max({0, low - midi, midi - high}); }

// The left hand's home, by its lowest note.
Points registerOf(Taste::ShapeFit const& taste, Laid const& laid)
{
    int const lowest = std::ranges::min_element(laid.plucks, {}, &Pluck::midi)->midi;
    return taste.outsideHome * beyond(lowest, taste.lowestHome, taste.highestHome) +
           taste.belowBest * std::max(0, taste.lowestBest - lowest) +
           taste.aboveBest * std::max(0, lowest - taste.highestBest);
}

// A third close above a root that stands too low for it.
Points lowThird(Taste::ShapeFit const& taste, Laid const& laid)
{
    bool const growls = std::ranges::any_of(laid.plucks, [&](Pluck const& p) {
        constexpr int thirdAbove = 4;
        return p.degree == 3 && p.midi - thirdAbove < taste.lowestThird;
    });
    return growls ? taste.lowClosedThird : 0;
}

// A seventh that is struck after the octave, a semitone below it, grinds on it.
Points rubsOctave(View const& view, Laid const& laid)
{
    bool rubs = false;
    for (std::size_t i = 1; i < laid.plucks.size(); ++i)
        rubs = rubs || (laid.plucks[i - 1].degree == 8 && laid.plucks[i].degree == 7 &&
                        laid.plucks[i - 1].midi - laid.plucks[i].midi == 1);
    return rubs ? view.taste->shapeFit
                      .rubsOctave[static_cast<std::size_t>(view.level->number - 1)]
                : 0;
}

} // namespace

int notesWithoutHurry(View const& view)
{
    Taste::ShapeFit const& taste = view.taste->shapeFit;
    auto const level = static_cast<std::size_t>(view.level->number - 1);
    constexpr double metExactly = 0.01;
    int const room =
        static_cast<int>(view.seconds(view.span) / taste.unhurriedSeconds[level] + metExactly);
    return std::clamp(room, 1, taste.mostNotes[level]);
}

Points shapeFit(View const& view, Laid const& laid)
{
    Taste::ShapeFit const& taste = view.taste->shapeFit;
    if (laid.rests()) return view.upbeat ? 0 : taste.rests;
    return shape(view, laid) + bookOf(view, laid) + registerOf(taste, laid) +
           lowThird(taste, laid) + rubsOctave(view, laid);
}

} // namespace arrange
