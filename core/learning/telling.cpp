#include "core/learning/telling.h"

#include "core/base/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace learning {

namespace {

// What a term looks at, as the end of "You care more about ...".
constexpr auto matters = base::markedList(
    "small stretches", "having time for each note", "notes of the chord", "a clear third",
    "keeping out of the tune's way", "thirds and sixths with the tune",
    "room between the hands", "clear low notes", "rhythms that fit the beat",
    "movement where the tune rests", "few lever flips", "plain closes", "familiar patterns",
    "a fuller second time through", "small moves of the hand", "strings that the hand can keep",
    "strings that still ring", "the line of the top notes", "the line of the bass",
    "keeping to one pattern");
static_assert(matters.size() == arrange::termCount);

// All that kinds() makes of the kinds of tunes.
[[maybe_unused]] constexpr auto allKinds = base::markedList(
    "waltzes", "jigs", "single jigs", "slip jigs", "reels", "hornpipes", "polkas", "marches",
    "strathspeys", "airs", "mazurkas", "triple hornpipes");

std::string kinds(std::string const& kind)
{
    if (kind.empty() || kind == "other") return base::said("other tunes");
    std::string words = kind;
    std::ranges::replace(words, '_', ' ');
    bool const hisses = kind.ends_with("z") || kind.ends_with("ch") || kind.ends_with("s");
    words += hisses ? "es" : "s";
    return base::said(words);
}

std::string shapeWords(std::string const& shape)
{
    return shape == "rest" ? base::said("a rest") : shape;
}

struct Sentence {
    double sure = 0;
    std::string words;
};

// Shapes that are taken where another was proposed.
void addHabits(std::span<Choice const> choices, std::vector<Sentence>& out)
{
    std::map<std::pair<std::string, std::string>, std::map<std::string, int>> taken;
    for (Choice const& choice : choices)
        ++taken[{choice.kind, choice.offers[choice.proposed].shape}]
               [choice.offers[choice.taken].shape];
    for (auto const& [proposed, shapes] : taken) {
        int all = 0;
        for (auto const& [shape, times] : shapes) all += times;
        auto const most = std::ranges::max_element(
            shapes, {}, [](auto const& entry) { return entry.second; });
        constexpr int seldom = 3;
        if (most->first == proposed.second || most->second < seldom || 2 * most->second <= all)
            continue;
        out.push_back({static_cast<double>(most->second),
                       base::say("In {} you take {} where {} is suggested: {} of {} times.",
                                 kinds(proposed.first), shapeWords(most->first),
                                 shapeWords(proposed.second), most->second, all)});
    }
}

void addCares(Learned const& learned, std::vector<Sentence>& out)
{
    constexpr double clear = 1.5; // standard deviations
    constexpr double slight = 0.2;
    for (std::size_t t = 0; t < matters.size(); ++t) {
        double const from = learned.factor[t] - 1;
        if (std::abs(from) < slight || std::abs(from) < clear * learned.spread[t]) continue;
        out.push_back({std::abs(from) / learned.spread[t],
                       from > 0
                           ? base::say("You care more about {} than the manner does: {:.1f} "
                                       "times as much.",
                                       base::said(matters[t]), learned.factor[t])
                           : base::say("You care less about {} than the manner does: {:.0f} % "
                                       "as much.",
                                       base::said(matters[t]), 100 * learned.factor[t])});
    }
}

} // namespace

std::vector<std::string> tasteSentences(std::span<Choice const> choices, Learned const& learned)
{
    std::vector<Sentence> habits;
    std::vector<Sentence> cares;
    addHabits(choices, habits);
    if (learned.inUse) addCares(learned, cares);
    std::vector<std::string> out;
    for (std::vector<Sentence>* part : {&habits, &cares}) {
        std::ranges::stable_sort(*part, std::greater(), &Sentence::sure);
        constexpr std::size_t most = 6;
        if (part->size() > most) part->resize(most);
        for (Sentence& sentence : *part) out.push_back(std::move(sentence.words));
    }
    return out;
}

std::string tasteStanding(Learned const& learned)
{
    if (learned.choices < fewest)
        return base::say("{} so far. From {} on, Sallow looks for what they have in common.",
                         base::sayCount(learned.choices, "{} choice", "{} choices"), fewest);
    if (!learned.inUse)
        return base::say(
            "{} choices so far. They show no taste of their own yet: the manner as "
            "it is would have got {} of them right.",
            learned.choices, learned.asShipped);
    return base::say(
        "Going by your other choices, Sallow would have got {} of {} right; by the "
        "manner as it is, {}.",
        learned.asLearned, learned.heldBack, learned.asShipped);
}

} // namespace learning
