#include "tests/proposal/planrules.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace planrules {

namespace {

using music::Rational;
using nlohmann::json;

Rational fraction(json const& value)
{
    std::string const text = value.get<std::string>();
    std::size_t const bar = text.find('/');
    if (bar == std::string::npos) return std::stoll(text);
    return {std::stoll(text.substr(0, bar)), std::stoll(text.substr(bar + 1))};
}

// Strings whose lever is up at a moment.
std::set<int> raisedAt(json const& plan, Rational at)
{
    std::set<int> raised = plan.at("setup").get<std::set<int>>();
    for (json const& flip : plan.at("flips")) {
        if (fraction(flip.at("at")) > at) continue;
        if (flip.at("up"))
            raised.insert(flip.at("string").get<int>());
        else
            raised.erase(flip.at("string").get<int>());
    }
    return raised;
}

bool soundsRight(json const& plan, json const& note)
{
    int const string = note.at("string");
    json const& strings = plan.at("harp").at("strings");
    if (string < 1 || string > static_cast<int>(strings.size())) return false;
    json const& on = strings.at(static_cast<std::size_t>(string - 1));
    bool const up = raisedAt(plan, fraction(note.at("at"))).count(string) > 0;
    return on.at("n") == string && (!up || on.at("lever").get<bool>()) &&
           note.at("midi") == on.at("open_midi").get<int>() + (up ? 1 : 0);
}

// What begins at one moment.
struct Onset {
    std::vector<int> strings;
    std::vector<int> left; // strings plucked on time, not rolled
    std::vector<int> leftAll;
    std::vector<int> right;
};

std::map<Rational, Onset> onsetsOf(json const& plan)
{
    std::map<Rational, Onset> out;
    for (json const& note : plan.at("notes")) {
        Onset& onset = out[fraction(note.at("at"))];
        int const string = note.at("string");
        onset.strings.push_back(string);
        if (note.at("hand") == "right") {
            onset.right.push_back(string);
            continue;
        }
        onset.leftAll.push_back(string);
        json const& positions = plan.at("positions");
        if (!positions.at(note.at("position").get<std::size_t>()).at("roll").get<bool>())
            onset.left.push_back(string);
    }
    return out;
}

int spanOf(std::vector<int> const& strings)
{
    if (strings.empty()) return 0;
    auto const [low, high] = std::minmax_element(strings.begin(), strings.end());
    return *high - *low + 1;
}

std::string faultOf(Onset const& onset, int reach)
{
    std::set<int> const once(onset.strings.begin(), onset.strings.end());
    if (once.size() != onset.strings.size()) return "a string plucked twice at once";
    if (spanOf(onset.left) > reach) return "the left hand beyond its reach";
    if (!onset.leftAll.empty() && !onset.right.empty() &&
        *std::max_element(onset.leftAll.begin(), onset.leftAll.end()) >
            *std::min_element(onset.right.begin(), onset.right.end()))
        return "crossed hands";
    return {};
}

using Heard = std::tuple<Rational, Rational, int>; // at, held, MIDI key

} // namespace

std::vector<std::string> brokenIn(std::string const& planJson,
                                  std::vector<tune::PlayedNote> const& tune)
{
    json const plan = json::parse(planJson);
    std::vector<std::string> broken;
    std::multiset<Heard> played;
    for (json const& note : plan.at("notes")) {
        if (!soundsRight(plan, note)) broken.push_back("wrong string or pitch: " + note.dump());
        if (note.at("from_tune"))
            played.emplace(fraction(note.at("at")), fraction(note.at("held")),
                           note.at("midi").get<int>());
    }
    int const reach = plan.at("hand").at("reach_strings");
    for (auto const& [at, onset] : onsetsOf(plan))
        if (std::string const fault = faultOf(onset, reach); !fault.empty())
            broken.push_back(music::text(at) + ": " + fault);

    int const moved = plan.at("tune").at("transposed_semitones");
    std::multiset<Heard> wanted;
    for (tune::PlayedNote const& note : tune)
        wanted.emplace(note.at.wholes, note.held.wholes, music::midi(note.pitch) + moved);
    if (played != wanted) broken.push_back("the tune's own notes are not all there");
    return broken;
}

} // namespace planrules
