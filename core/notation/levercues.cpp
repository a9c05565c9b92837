#include "core/notation/levercues.h"

#include "core/base/words.h"

#include <array>
#include <cstdlib>
#include <map>
#include <set>
#include <string>
#include <tuple>

namespace notation {

using arrange::Arrangement;
using music::Length;

namespace {

tune::PlayedBar const& playedBar(Arrangement const& arrangement, tune::PlayedBarIndex index)
{
    return arrangement.playing.bars[index];
}

std::set<int> passesOf(Arrangement const& arrangement, tune::BarIndex bar)
{
    std::set<int> passes;
    for (tune::PlayedBar const& played : arrangement.playing.bars)
        if (played.bar == bar) passes.insert(played.pass);
    return passes;
}

std::string accidentalSign(int alter)
{
    if (alter == 0) return "♮";
    std::string sign;
    for (int i = 0; i < std::abs(alter); ++i) sign += alter > 0 ? "♯" : "♭";
    return sign;
}

std::string cueText(harp::Harp const& harp, harp::Flip const& flip)
{
    music::Pitch const now = harp::sounding(harp.string(flip.string), flip.to);
    return harp::noteOnString(harp, flip.string,
                              music::plain(music::PitchName{now.letter, 0}) +
                                  accidentalSign(now.alter));
}

std::string ordinal(int number)
{
    constexpr auto endings =
        base::markedList("ordinal|th", "ordinal|st", "ordinal|nd", "ordinal|rd");
    bool const teen = number % 100 >= 11 && number % 100 <= 13;
    std::size_t const last = static_cast<std::size_t>(number % 10);
    return std::to_string(number) + base::said(teen || last > 3 ? endings[0] : endings[last]);
}

std::string passText(std::set<int> const& some, std::set<int> const& all)
{
    if (some == all) return "";
    std::string text;
    for (int pass : some) text += (text.empty() ? "" : ", ") + ordinal(pass);
    return " (" + base::say("{} time", text) + ")";
}

} // namespace

std::vector<Label> leverCues(Arrangement const& arrangement, tune::BarIndex bar)
{
    using Change = std::tuple<Length, int, harp::Lever>; // when, which string, to what
    std::map<Change, std::set<int>> passes;
    std::map<Change, std::string> texts;
    std::map<Length, std::set<harp::Side>> hands;
    for (harp::Flip const& flip : arrangement.levers.flips) {
        tune::PlayedBar const& played = playedBar(arrangement, flip.playedBar);
        if (played.bar != bar) continue;
        Change const change{flip.at - played.at, flip.string, flip.to};
        passes[change].insert(played.pass);
        texts[change] = cueText(arrangement.harp, flip);
        hands[std::get<Length>(change)].insert(flip.hand);
    }
    std::set<int> const all = passesOf(arrangement, bar);
    std::vector<Label> cues;
    for (auto const& [change, text] : texts) {
        std::string const shown = text + passText(passes[change], all);
        if (!cues.empty() && cues.back().at == std::get<Length>(change))
            cues.back().text += ' ' + shown;
        else
            cues.push_back({std::get<Length>(change), shown, std::nullopt});
    }
    for (Label& cue : cues)
        if (auto const& of = hands[cue.at]; of.size() == 1) cue.hand = *of.begin();
    return cues;
}

} // namespace notation
