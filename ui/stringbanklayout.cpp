#include "ui/stringbanklayout.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace ui {

StringBankLayout layOutBank(harp::Harp const& harp, Box area, double letters)
{
    StringBankLayout layout;
    layout.area = area;
    int const count = harp.count();
    if (count == 0) return layout;
    double total = 0;
    for (harp::StringIndex i = 0; i < harp.highest(); ++i) total += harp.string(i).gapMm;
    double const inset = 22;
    double const perMm = (area.width - 2 * inset) / std::max(1.0, total);
    double const neck = area.y + 8;
    double const longest = area.height - 8 - 22 * letters; // names stand below the strings
    double x = area.x + inset;
    double narrowest = area.width;
    for (harp::StringIndex const i : harp.indices()) {
        double const along = count > 1 ? static_cast<double>(i) / (count - 1) : 0;
        double const length = longest * (1 - 0.26 * std::pow(along, 1.3));
        double const thickness = 3.4 - 2.1 * std::sqrt(along);
        layout.strings.push_back({x, neck, neck + length, thickness});
        double const gap = harp.string(i).gapMm * perMm;
        if (i < harp.highest()) narrowest = std::min(narrowest, gap);
        x += gap;
    }
    layout.leverUpY = neck + 5;
    layout.leverDownY = neck + 15;
    double const free = layout.strings.back().bottom - layout.leverDownY;
    layout.discRadius =
        std::clamp(std::min(narrowest * 0.46, free * 0.14), 6.0, 12.0 * letters);
    // From the levers down: right hand, left hand, bracket, its words.
    double const below = layout.leverDownY + 5;
    layout.rightHandY = below + std::max(layout.discRadius, 0.26 * free);
    layout.leftHandY = layout.rightHandY + std::max(2.1 * layout.discRadius, 0.26 * free);
    layout.bracketY = layout.leftHandY + layout.discRadius + 8 * letters;
    layout.reachY = layout.bracketY + 12 * letters;
    double const lowest = layout.strings.back().bottom - 9; // the words stay on the strings
    if (layout.reachY > lowest)
        layout.reachY = layout.bracketY = std::min(lowest, layout.bracketY);
    return layout;
}

std::optional<harp::StringIndex> stringNear(StringBankLayout const& layout, double x, double y)
{
    if (layout.strings.empty() || !layout.area.contains(x, y)) return std::nullopt;
    auto const nearest = std::min_element(layout.strings.begin(), layout.strings.end(),
                                          [x](BankString const& a, BankString const& b) {
                                              return std::abs(a.x - x) < std::abs(b.x - x);
                                          });
    return layout.strings.indexOf(nearest);
}

namespace {

void addFinger(std::vector<FingerDisc>& fingers, harp::Side hand, harp::StringIndex string,
               int finger)
{
    int order = 0;
    for (FingerDisc const& disc : fingers) {
        if (disc.hand != hand) continue;
        if (disc.string == string) return;
        ++order;
    }
    fingers.push_back({hand, string, finger, order});
}

std::vector<int> fingersOf(arrange::Arrangement const& arrangement, tune::BarIndex bar,
                           tune::NoteIndex note)
{
    for (arrange::NoteFingers const& fingers : arrangement.rightFingers)
        if (fingers.bar == bar && fingers.note == note) return fingers.fingers;
    return {};
}

} // namespace

std::optional<harp::StringIndex> leverNear(StringBankLayout const& layout, double x, double y)
{
    constexpr double margin = 7; // a lever is small, a finger or pointer is not
    bool const atLevers = y >= std::min(layout.leverUpY, layout.leverDownY) - margin &&
                          y <= std::max(layout.leverUpY, layout.leverDownY) + margin;
    return atLevers ? stringNear(layout, x, y) : std::nullopt;
}

std::vector<FingerDisc> fingersAt(arrange::Arrangement const& arrangement,
                                  arrange::PositionIndex position)
{
    std::vector<FingerDisc> fingers;
    auto const& arranged = arrangement.positions[position];
    auto notes = arranged.voicing.notes;
    std::stable_sort(notes.begin(), notes.end(), [](auto const& a, auto const& b) {
        return std::tie(a.at, a.rollOrder, a.string) < std::tie(b.at, b.rollOrder, b.string);
    });
    for (arrange::VoicedNote const& note : notes)
        addFinger(fingers, harp::Side::Left, note.string, note.finger);
    arrange::Position const& where = arranged.position;
    auto const& bar = arrangement.tune.bars[where.bar];
    for (tune::NoteIndex const n : bar.notes.indices()) {
        tune::Note const& note = bar.notes[n];
        if (note.at < where.at || note.at >= where.at + where.span) continue;
        auto const numbers = fingersOf(arrangement, where.bar, n);
        for (std::size_t p = 0; p < note.pitches.size(); ++p)
            if (auto const string = harp::stringFor(arrangement.harp, note.pitches[p]))
                if (p < numbers.size())
                    addFinger(fingers, harp::Side::Right, *string, numbers[p]);
    }
    return fingers;
}

harp::LeverSetting leversAt(arrange::Arrangement const& arrangement, music::Moment at)
{
    harp::LeverSetting levers;
    for (harp::StringIndex const i : arrangement.harp.indices())
        levers.push_back(harp::leverAt(arrangement.levers, i, at));
    return levers;
}

std::optional<Reach> reachOf(std::vector<FingerDisc> const& fingers)
{
    std::optional<Reach> reach;
    for (FingerDisc const& disc : fingers) {
        if (disc.hand != harp::Side::Left) continue;
        if (!reach) reach = Reach{disc.string, disc.string};
        reach->lowest = std::min(reach->lowest, disc.string);
        reach->highest = std::max(reach->highest, disc.string);
    }
    if (reach && reach->lowest == reach->highest) return std::nullopt;
    return reach;
}

} // namespace ui
