#include "core/explain/whynot.h"

#include "core/arrange/handmove.h"
#include "core/base/words.h"
#include "core/pattern/layout.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <tuple>

namespace explain {

using namespace arrange;

namespace {

// The middle of the left hand's home, F2 to E3 (MIDI key). Common practice, no source.
constexpr int home = 46;

// A place for the arranger's eyes.
struct Place {
    Scene const& scene;
    Position const& position;
    View const& view;

    std::string string(harp::StringIndex index, double at, std::size_t time = 0) const
    {
        if (index < 0 || index >= scene.harp.count())
            return base::said("a string that the harp does not have");
        music::Moment const when{position.played[time].at.wholes +
                                 music::Rational(std::lround(at * parts), parts)};
        return music::shown(harp::pitchAt(scene.harp, scene.levers, index, when));
    }
    std::string beat(double at) const
    {
        double const beats = (view.fromBar.wholes.toDouble() + at) / view.beat;
        auto const whole = static_cast<int>(beats + nearly);
        return beats - whole < 2 * nearly ? base::say("on beat {}", whole + 1)
                                          : base::say("after beat {}", whole + 1);
    }

private:
    static constexpr int parts = 5040; // of a whole note: every division in use
    static constexpr double nearly = 1e-6;
};

std::string offHarp(Place const& place, Hindrance const& h)
{
    int const beyond = h.string < 0 ? -h.string.value() : h.string - place.scene.harp.highest();
    std::string const end =
        place.string(h.string < 0 ? harp::StringIndex(0) : place.scene.harp.highest(), 0);
    return h.string < 0
               ? base::sayCount(
                     beyond, "it needs {} string below {}, the lowest string of this harp",
                     "it needs {} strings below {}, the lowest string of this harp", end)
               : base::sayCount(
                     beyond, "it needs {} string above {}, the highest string of this harp",
                     "it needs {} strings above {}, the highest string of this harp", end);
}

std::string variedSounds(Place const& place, Hindrance const& h)
{
    std::vector<std::string> names;
    for (std::size_t time = 0; time < place.position.played.size(); ++time) {
        std::string const name = place.string(h.string, h.at, time);
        if (std::ranges::find(names, name) == names.end()) names.push_back(name);
    }
    return base::say("one of its strings sounds {}, depending on the time through",
                     fmt::join(names, base::said(" and ")));
}

std::string tooFast(Place const& place, Hindrance const& h)
{
    return base::say("{}, its notes are faster than {:.2g} a second, the limit for the left "
                     "hand at level {}",
                     place.beat(h.at), place.view.level->leftNotesPerSecond,
                     place.view.level->number);
}

std::string beyondReach(Place const& place, Hindrance const& h)
{
    harp::StringIndex const from = h.other.value_or(h.string);
    double const mm = harp::distanceMm(place.scene.harp, from, h.string);
    return base::say("from {} to {} {} is {:.0f} mm, more than this hand can reach, and "
                     "there is no time to move the hand",
                     place.string(from, h.at), place.string(h.string, h.at), place.beat(h.at),
                     mm);
}

WhyNot told(Place const& place, Hindrance const& h, pattern::Pattern const& shape)
{
    std::string const own = place.string(h.string, h.at);
    std::string const other = h.other ? place.string(*h.other, h.at) : std::string();
    switch (h.what) {
    case Obstacle::OffHarp:
        return {offHarp(place, h), base::said("choose a narrower shape or a larger harp")};
    case Obstacle::RootTooLow:
        return {base::say("its lowest note would be {}, where notes so close together sound "
                          "muddy",
                          own),
                base::said("choose an open pattern such as 1-5-8")};
    case Obstacle::RootSilent:
        return {base::say("with the levers as they are, the string of its root sounds {}", own),
                base::said("choose another key, another tuning or another chord")};
    case Obstacle::SoundsVary:
        return {variedSounds(place, h), base::said("allow different shapes on the repeats")};
    case Obstacle::OnTunesString:
        return {base::say("{}, the tune is on {}, a string that this shape needs",
                          place.beat(h.at), own),
                base::said("choose a narrower shape or a higher key")};
    case Obstacle::HandsCross:
        return {base::say("{}, it would pluck {}, above the tune's {}, so the hands would "
                          "cross",
                          place.beat(h.at), own, other),
                base::said("choose a narrower shape or a higher key")};
    case Obstacle::TooFast:
        return {tooFast(place, h),
                base::said("play slower, or choose a higher level or a pattern with "
                           "fewer notes")};
    case Obstacle::StringTooSoon:
        return {base::say("{}, the {} string is plucked again sooner than level {} allows",
                          place.beat(h.at), own, place.view.level->number),
                base::said("play slower or choose a higher level")};
    case Obstacle::BeyondReach:
        return {beyondReach(place, h),
                shape.together ? base::said("choose a narrower shape, or pluck its "
                                            "notes one after another")
                               : base::said("play slower or choose a narrower shape")};
    case Obstacle::HandBusy:
        return {
            base::say("{}, the left hand is flipping the lever of {}", place.beat(h.at), other),
            base::said("choose a shape that begins later or has fewer notes")};
    case Obstacle::LeverTurned:
        return {base::say("the lever of {} is flipped {}, while its note is still needed", own,
                          place.beat(h.at)),
                base::said("choose a shape without that string")};
    }
    return {};
}

std::optional<WhyNot> againstLevel(pattern::Pattern const& shape, harp::Level const& level)
{
    if (suitsLevel(shape, level)) return std::nullopt;
    int const strings = stringsSpanned(shape);
    if (strings > level.leftStrings)
        return WhyNot{base::say("it spans {} strings, and level {} allows {}", strings,
                                level.number, level.leftStrings),
                      base::said("choose a higher level")};
    return WhyNot{
        base::say("it is a level {} pattern, and your level is {}", shape.level, level.number),
        base::said("choose a higher level")};
}

std::optional<WhyNot> againstMeter(pattern::Pattern const& shape, music::Meter meter)
{
    if (suits(shape, meter)) return std::nullopt;
    std::string meters;
    for (std::string const& m : shape.meters) meters += (meters.empty() ? "" : ", ") + m;
    return WhyNot{base::say("the pattern book gives it for {}, and this bar is in {}", meters,
                            music::text(meter)),
                  base::said("write it as your own pattern, which may be used in any metre")};
}

// One way to lay the shape, and what stands in its way.
struct Attempt {
    Hindrance hindrance;
    int fromHome = 0; // semitones
    // Lower tells more: not that a root cannot be had at all, near home, far on.
    auto rank() const
    {
        bool const noRoot = hindrance.what <= Obstacle::RootSilent;
        return std::tuple(noRoot, fromHome, -static_cast<int>(hindrance.what));
    }
};

} // namespace

std::string sentence(WhyNot const& why)
{
    std::string out = why.reason + ": " + why.remedy + ".";
    if (out[0] >= 'a' && out[0] <= 'z') out[0] = static_cast<char>(out[0] - 'a' + 'A');
    return out;
}

std::optional<WhyNot> whyNot(Scene const& scene, Position const& position,
                             pattern::Pattern const& shape)
{
    View const view = viewOf(scene, position, longestNote(scene.playing));
    if (auto const why = againstLevel(shape, scene.level)) return why;
    if (auto const why = againstMeter(shape, view.meter)) return why;

    std::optional<Attempt> furthest;
    std::size_t room = 0;
    for (pattern::Rhythm& rhythm :
         pattern::rhythmsFor(scene.book, shape, view.meter, view.spanLength)) {
        room = std::max(room, rhythm.onsets.size());
        if (!playsAllNotes(rhythm, shape)) continue;
        Figure const figure{shape, std::move(rhythm)};
        for (harp::StringIndex const root : rootStrings(view)) {
            auto const laid = laidOn(figure, root, view);
            if (std::holds_alternative<Laid>(laid)) return std::nullopt;
            int const midi = view.passes.front().midi[root];
            Attempt const here{std::get<Hindrance>(laid), std::abs(midi - home)};
            if (!furthest || here.rank() < furthest->rank()) furthest = here;
        }
    }
    if (furthest) return told({scene, position, view}, furthest->hindrance, shape);
    return WhyNot{
        base::say("it has {} notes, and this chord has room for {}", shape.notes.size(), room),
        base::said("choose a shorter pattern, or write your own")};
}

} // namespace explain
