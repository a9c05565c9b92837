#include "core/explain/eitherside.h"

#include "core/base/words.h"
#include "core/explain/names.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <optional>

namespace explain {

using namespace arrange;

namespace {

bool isLike(Voicing const* other, Told const& told)
{
    return other && other->pattern == told.laid.voicing.pattern;
}

bool plucks(Voicing const* voicing, harp::StringIndex string)
{
    return voicing && std::ranges::any_of(voicing->notes, [&](VoicedNote const& n) {
               return n.string == string;
           });
}

std::optional<harp::StringIndex> lowestString(Voicing const* voicing)
{
    if (!voicing || voicing->notes.empty()) return std::nullopt;
    return std::ranges::min_element(voicing->notes, {}, &VoicedNote::string)->string;
}

std::optional<harp::StringIndex> highestString(Voicing const* voicing)
{
    if (!voicing || voicing->notes.empty()) return std::nullopt;
    return std::ranges::max_element(voicing->notes, {}, &VoicedNote::string)->string;
}

std::string lowName(Told const& told) { return nameOf(told, lowestNote(told.laid)); }
std::string topName(Told const& told) { return nameOf(told, highestNote(told.laid)); }

int apart(std::optional<harp::StringIndex> other, harp::StringIndex string)
{
    return other ? std::abs(*other - string) : 0;
}

// "from the one before it", "to the one after it": the side with the wider way.
std::string widerSide(std::optional<harp::StringIndex> before,
                      std::optional<harp::StringIndex> after, harp::StringIndex string)
{
    return apart(before, string) >= apart(after, string) ? base::said("from the shape before")
                                                         : base::said("to the shape after");
}

// A string in common with the shape before or after.
std::optional<std::size_t> sharedNote(Told const& told)
{
    for (std::size_t i = 0; i < told.laid.plucks.size(); ++i) {
        harp::StringIndex const string = told.laid.plucks[i].string;
        if (plucks(told.voicedBefore, string) || plucks(told.voicedAfter, string)) return i;
    }
    return std::nullopt;
}

} // namespace

std::string farToGo(Told const& told)
{
    if (told.after && told.before)
        return base::say("The left hand has a long way to move from {} to {} and on to {}.",
                         chordName(*told.before), chordName(told.position),
                         chordName(*told.after));
    if (told.after)
        return base::say("The left hand has a long way to move to {}.", chordName(*told.after));
    if (told.before)
        return base::say("The left hand has a long way to move from {}.",
                         chordName(*told.before));
    return {};
}

std::string blurs(Told const& told)
{
    if (told.before && told.before->chord != told.position.chord)
        return base::say("The strings still ringing from {} clash with it.",
                         chordName(*told.before));
    if (told.after && told.after->chord != told.position.chord)
        return base::say("It rings on into {} and clashes with it.", chordName(*told.after));
    return base::said("It clashes with the strings still ringing from the bars around it.");
}

std::string dullOrRestless(Told const& told)
{
    if (told.unlikeBar)
        return base::say("It goes otherwise than {}, which has the same tune and chord.",
                         tune::barName(told.scene.tune, *told.unlikeBar));
    if (told.laid.rests())
        return base::said("The left hand stops in the middle of the phrase.");
    if (isLike(told.voicedBefore, told))
        return base::said("It is the same pattern as the one before.");
    if (isLike(told.voicedAfter, told))
        return base::said("It is the same pattern as the one after.");
    return base::said(
        "Its notes are faster or slower than those of the shapes before and after.");
}

std::string varied(Told const& told)
{
    if (told.likeBar)
        return base::say("It goes as {} does, which has the same tune and chord.",
                         tune::barName(told.scene.tune, *told.likeBar));
    if (isLike(told.voicedBefore, told) || isLike(told.voicedAfter, told))
        return base::said(
            "It is the same pattern as the one next to it, so the phrase moves evenly.");
    if (told.voicedBefore && !told.voicedBefore->notes.empty())
        return base::say("It makes a change from the {} before it.",
                         told.voicedBefore->pattern);
    if (told.voicedAfter && !told.voicedAfter->notes.empty())
        return base::say("It makes a change before the {} that follows.",
                         told.voicedAfter->pattern);
    return base::said("It keeps the left hand moving.");
}

std::string unlinked(Told const& told)
{
    if (told.laid.rests()) return {};
    if (auto const shared = sharedNote(told))
        return base::say("{} is plucked again while it is still ringing loudly.",
                         nameOf(told, *shared));
    return base::said(
        "It shares no string with the shapes before and after, so every finger has to be "
        "placed again.");
}

std::string linked(Told const& told)
{
    if (auto const shared = sharedNote(told))
        return base::say("{} is also in the shape before or after, so the hand can stay in "
                         "place.",
                         nameOf(told, *shared));
    return base::said("It plucks no string that is still ringing.");
}

std::string thumbLeaps(Told const& told)
{
    if (told.laid.rests()) return {};
    auto const before = highestString(told.voicedBefore);
    auto const after = highestString(told.voicedAfter);
    constexpr int line = 2;
    if (std::max(apart(before, told.laid.top), apart(after, told.laid.top)) > line)
        return base::say("The top note, {}, is a jump {}.", topName(told),
                         widerSide(before, after, told.laid.top));
    return base::said("Its last note is not next to a string of the next chord.");
}

std::string thumbLeads(Told const& told)
{
    if (told.voicedAfter && !told.laid.rests()) {
        std::size_t const last = told.laid.plucks.size() - 1;
        harp::StringIndex const string = told.laid.plucks[last].string;
        for (int step : {-1, 1})
            if (plucks(told.voicedAfter, string + step))
                return base::say("Its last note, {}, leads by step into the next chord.",
                                 nameOf(told, last));
    }
    return base::say("The top note, {}, is close to the top notes before and after.",
                     topName(told));
}

std::string bassLeaps(Told const& told)
{
    if (told.laid.rests()) return {};
    return base::say("The lowest note, {}, is a jump {}.", lowName(told),
                     widerSide(lowestString(told.voicedBefore), lowestString(told.voicedAfter),
                               told.laid.bass));
}

std::string bassWalks(Told const& told)
{
    if (auto const next = lowestString(told.voicedAfter); next && !told.laid.rests()) {
        std::size_t const last = told.laid.plucks.size() - 1;
        Pluck const& leads = told.laid.plucks[last];
        constexpr int highest = 4; // degree
        bool const close = leads.degree > 1 && leads.degree <= highest;
        if (close && std::abs(*next - leads.string) == 1)
            return base::say("Its last note, {}, leads the bass by step to the next chord.",
                             nameOf(told, last));
    }
    bool const step = apart(lowestString(told.voicedBefore), told.laid.bass) == 1 ||
                      apart(lowestString(told.voicedAfter), told.laid.bass) == 1;
    return step ? base::say("The lowest note moves by step: {}.", lowName(told))
                : base::say("The lowest note moves only a little: {}.", lowName(told));
}

} // namespace explain
