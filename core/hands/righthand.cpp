#include "core/hands/righthand.h"

#include "core/hands/fingerpath.h"
#include "core/harp/placing.h"

#include <algorithm>
#include <map>
#include <utility>

namespace hands {

namespace {

// A written note that begins to sound, and the strings it plucks.
struct Struck {
    int bar = 0;
    int note = 0;
    music::Length at;               // from the start of the bar
    std::vector<int> stringOfPitch; // one for each pitch
    Pluck pluck;
};

// When each written note is first played, by bar and note.
using FirstPlayed = std::map<std::pair<int, int>, music::Moment>;

FirstPlayed firstPlayed(tune::Playing const& playing)
{
    FirstPlayed out;
    for (tune::PlayedNote const& note : playing.notes) {
        int const bar = playing.bars[static_cast<std::size_t>(note.playedBar)].bar;
        out.try_emplace({bar, note.note}, note.at);
    }
    return out;
}

// The string that a pitch is plucked on. One that the harp cannot give then is fingered as if
// its string had it, at the nearest end of the harp.
int stringOf(arrange::Arrangement const& arrangement, music::Pitch pitch, music::Moment at)
{
    harp::Harp const& harp = arrangement.harp;
    if (auto const string = stringAtMoment(harp, arrangement.levers, pitch, at)) return *string;
    if (auto const seat = placeOf(harp, pitch)) return seat->string;
    int const own = diatonicStep(pitch) - diatonicStep(harp.string(0).open);
    return std::clamp(own, 0, harp.count() - 1);
}

std::vector<int> pluckedStrings(std::vector<int> strings)
{
    std::sort(strings.begin(), strings.end());
    strings.erase(std::unique(strings.begin(), strings.end()), strings.end());
    // A chord of more than four is rolled; the lowest notes share finger 4.
    if (strings.size() > harp::fingers)
        strings.erase(strings.begin(), strings.end() - harp::fingers);
    return strings;
}

bool continues(tune::Note const* before, tune::Note const& note)
{
    return before && before->tied && before->pitches == note.pitches;
}

Pause pauseOf(music::Length sinceLast, bool rested, music::Meter meter)
{
    music::Length const beat = beatLength(meter);
    if (rested || sinceLast >= beat * music::Rational(2)) return Pause::Rested;
    return sinceLast >= beat ? Pause::Beat : Pause::None;
}

// Every note that begins to sound, in written order.
std::vector<Struck> struckNotes(arrange::Arrangement const& arrangement)
{
    tune::Tune const& tune = arrangement.tune;
    FirstPlayed const played = firstPlayed(arrangement.playing);
    std::vector<Struck> out;
    tune::Note const* before = nullptr; // the note just before, when it was no rest
    music::Length sinceLast;
    bool rested = false;
    for (std::size_t b = 0; b < tune.bars.size(); ++b) {
        tune::Bar const& bar = tune.bars[b];
        for (std::size_t n = 0; n < bar.notes.size(); ++n) {
            tune::Note const& note = bar.notes[n];
            bool const rest = note.pitches.empty();
            if (!rest && !continues(before, note)) {
                Struck struck{static_cast<int>(b), static_cast<int>(n), note.at, {}, {}};
                auto const first = played.find({struck.bar, struck.note});
                music::Moment const at =
                    first == played.end() ? music::Moment{} : first->second;
                for (music::Pitch pitch : note.pitches)
                    struck.stringOfPitch.push_back(stringOf(arrangement, pitch, at));
                struck.pluck = {pluckedStrings(struck.stringOfPitch),
                                pauseOf(sinceLast, rested, bar.meter)};
                out.push_back(std::move(struck));
                sinceLast = {};
                rested = false;
            }
            sinceLast = sinceLast + note.length;
            rested = rested || rest;
            before = rest ? nullptr : &note;
        }
    }
    return out;
}

// Fingers for each pitch of a note from those of its plucked strings.
std::vector<int> fingersOfPitches(Struck const& struck, std::vector<int> const& fingers)
{
    std::vector<int> out;
    auto const& strings = struck.pluck.strings;
    for (int const string : struck.stringOfPitch) {
        auto const place = std::lower_bound(strings.begin(), strings.end(), string);
        out.push_back(fingers[static_cast<std::size_t>(place - strings.begin())]);
    }
    return out;
}

bool opensGroup(Join join) { return join != Join::Stays && join != Join::Slides; }

void addTo(std::vector<arrange::PlacingGroup>& groups, Struck const& struck,
           std::vector<int> const& fingers, Join join)
{
    if (groups.empty() || opensGroup(join))
        groups.push_back({harp::Side::Right, !groups.empty() && join == Join::Linked, {}});
    for (std::size_t i = 0; i < fingers.size(); ++i)
        groups.back().notes.push_back(
            {struck.bar, struck.at, struck.pluck.strings[i], fingers[i], std::nullopt});
}

} // namespace

RightHand rightHand(arrange::Arrangement const& arrangement)
{
    std::vector<Struck> const struck = struckNotes(arrangement);
    std::vector<Pluck> plucks;
    for (Struck const& s : struck) plucks.push_back(s.pluck);
    FingerPath const path = cheapestFingers(plucks, arrangement.harp, arrangement.hand);

    RightHand out;
    for (std::size_t i = 0; i < struck.size(); ++i) {
        out.fingers.push_back(
            {struck[i].bar, struck[i].note, fingersOfPitches(struck[i], path.fingers[i])});
        addTo(out.groups, struck[i], path.fingers[i], path.joins[i]);
    }
    return out;
}

} // namespace hands
