#include "core/files/plan.h"

#include "core/arrange/takes.h"
#include "core/base/words.h"
#include "core/files/latticebinary.h"

#include <fmt/format.h>
#include "core/files/json.h"

#include <algorithm>
#include <cmath>

namespace files {

namespace {

using arrange::Term;
using proposal::Proposal;

constexpr auto ownTerms = static_cast<std::size_t>(Term::Travel); // those of one voicing

std::string text(Json const& value)
{
    return value.dump(-1, ' ', false, Json::error_handler_t::replace);
}

// One member of the file on a line, or for a list one element a line: easy to read, to compare
// and to write without holding the whole as a tree.
void appendMember(std::string& out, std::string_view name, Json const& value)
{
    out += fmt::format(",\n  \"{}\": {}", name, text(value));
}

void appendList(std::string& out, std::string_view name, std::vector<Json> const& list)
{
    out += fmt::format(",\n  \"{}\": [", name);
    for (std::size_t i = 0; i < list.size(); ++i) {
        out += i == 0 ? "\n    " : ",\n    ";
        out += text(list[i]);
    }
    out += list.empty() ? "]" : "\n  ]";
}

std::string whole(music::Moment moment) { return music::text(moment.wholes); }
std::string whole(music::Length length) { return music::text(length.wholes); }
std::string sideName(harp::Side side) { return side == harp::Side::Left ? "left" : "right"; }

Json tuneMember(Proposal const& proposal)
{
    arrange::Arrangement const& a = proposal.arrangement;
    return {{"title", a.tune.title},
            {"key", music::plain(a.tune.key.tonic)},
            {"mode", music::modeName(a.tune.key.mode)},
            {"meter", music::text(a.tune.meter)},
            {"tempo_qpm", tune::quartersPerMinute(a.tempo)},
            {"transposed_semitones", a.transposedSemitones}};
}

Json harpMember(harp::Harp const& harp)
{
    Json strings = Json::array();
    for (harp::StringIndex const s : harp.indices())
        strings.push_back({{"n", s.value() + 1},
                           {"name", music::plain(harp.string(s).open)},
                           {"open_midi", music::midi(harp.string(s).open)},
                           {"lever", harp.string(s).hasLever}});
    return {{"id", harp.id()}, {"strings", std::move(strings)}};
}

// The widest shape that this hand plucks together at this level, in strings, where they lie
// closest.
int reachStrings(arrange::Arrangement const& arrangement)
{
    int widest = 1;
    for (harp::StringIndex const from : arrangement.harp.indices())
        widest = std::max(
            widest, harp::stringsWithin(arrangement.harp, arrangement.hand.limitMm, from));
    return std::min(widest, arrangement.level.leftStrings);
}

std::vector<int> stringsRaised(harp::LeverSetting const& setup)
{
    std::vector<int> out;
    for (harp::StringIndex const s : setup.indices())
        if (setup[s] == harp::Lever::Up) out.push_back(s + 1);
    return out;
}

std::vector<Json> flipList(arrange::Arrangement const& arrangement)
{
    std::vector<Json> out;
    for (harp::Flip const& flip : arrangement.levers.flips) {
        tune::PlayedBar const& bar = arrangement.playing.bars[flip.playedBar];
        out.push_back({{"at", whole(flip.at)},
                       {"bar", arrangement.tune.bars[bar.bar].number},
                       {"pass", bar.pass},
                       {"string", flip.string.value() + 1},
                       {"up", flip.to == harp::Lever::Up},
                       {"hand", sideName(flip.hand)}});
    }
    return out;
}

Json rootString(arrange::Voicing const& voicing)
{
    if (voicing.notes.empty()) return nullptr; // a rest stands on no string
    return voicing.rootString.value() + 1;
}

std::vector<int> degrees(arrange::Voicing const& voicing)
{
    std::vector<int> out;
    for (arrange::VoicedNote const& note : voicing.notes) out.push_back(note.degree);
    return out;
}

// What all occasions of a written position have in common.
Json positionMember(Proposal const& proposal, arrange::PositionIndex position)
{
    arrange::ArrangedPosition const& arranged = proposal.arrangement.positions[position];
    arrange::CandidateIndex const chosen = proposal.solution.best.candidates[position];
    return {{"span", whole(arranged.position.span)},
            {"chord", music::plain(arranged.position.chord)},
            {"pattern", arranged.voicing.pattern},
            {"degrees", degrees(arranged.voicing)},
            {"root_string", rootString(arranged.voicing)},
            {"rhythm", arranged.voicing.rhythm},
            {"roll", arranged.voicing.rolled},
            {"locked", arranged.locked},
            {"cost", proposal.lattice.candidates[position][chosen].cost},
            {"regret", proposal.solution.regrets[position][chosen]},
            {"reasons", proposal::reasons(proposal, position, chosen)}};
}

std::vector<Json> positionList(Proposal const& proposal)
{
    arrange::Arrangement const& a = proposal.arrangement;
    std::vector<Json> written;
    for (arrange::PositionIndex const i : a.positions.indices())
        written.push_back(positionMember(proposal, i));

    std::vector<Json> out;
    for (arrange::PlayedPosition const& played : arrange::playedPositions(a)) {
        arrange::PositionIndex const i = played.position;
        tune::BarIndex const bar = a.positions[i].position.bar;
        Json member{{"id", out.size()},
                    {"bar", a.tune.bars[bar].number},
                    {"pass", played.when.pass},
                    {"at", whole(played.when.at)},
                    {"lattice_position", played.position.value()}};
        member.update(written[i]);
        out.push_back(std::move(member));
    }
    return out;
}

std::vector<Json> noteList(std::vector<arrange::HandNote> const& notes)
{
    std::vector<Json> out;
    for (arrange::HandNote const& note : notes) {
        Json position = nullptr;
        if (note.position) position = note.position->value();
        out.push_back({{"at", whole(note.at)},
                       {"held", whole(note.held)},
                       {"hand", sideName(note.hand)},
                       {"string", note.string.value() + 1},
                       {"midi", music::midi(note.pitch)},
                       {"finger", note.finger},
                       {"position", std::move(position)},
                       {"roll_order", note.rollOrder},
                       {"from_tune", note.fromTune}});
    }
    return out;
}

std::vector<Json> groupList(arrange::Arrangement const& arrangement,
                            std::vector<arrange::HandNote> const& notes)
{
    std::vector<Json> out;
    for (arrange::PlayedGroup const& played : arrange::playedGroups(arrangement, notes)) {
        arrange::PlacingGroup const& group =
            arrangement.groups[static_cast<std::size_t>(played.group)];
        out.push_back({{"hand", sideName(group.hand)},
                       {"linked", group.linked},
                       {"notes", played.notes}});
    }
    return out;
}

std::vector<Json> remarkList(arrange::Arrangement const& arrangement)
{
    std::vector<Json> out;
    for (arrange::HandRemark const& remark : arrangement.handRemarks) {
        tune::BarIndex const bar = remark.bar;
        out.push_back({{"bar", arrangement.tune.bars[bar].number},
                       {"hand", sideName(remark.hand)},
                       {"words", remark.words}});
    }
    return out;
}

double hundredths(double figure) { return std::round(figure * 100) / 100; }

Json midiOrNull(std::optional<music::Pitch> const& pitch)
{
    return pitch ? Json(music::midi(*pitch)) : Json(nullptr);
}

std::vector<Json> snagList(Proposal const& proposal)
{
    std::vector<Json> out;
    for (proposal::Snag const& snag : proposal.snags) {
        tune::BarIndex const bar = snag.place.bar;
        std::vector<int> strings;
        for (int const string : snag.strings) strings.push_back(string + 1);
        Json ways = Json::array();
        for (proposal::SnagWay const& way : snag.ways)
            ways.push_back({{"way", tune::wayId(way.way)},
                            {"midi", midiOrNull(way.sounds)},
                            {"cost", way.cost}});
        out.push_back({{"bar", proposal.arrangement.tune.bars[bar].number},
                       {"pass", snag.pass},
                       {"at", whole(snag.at)},
                       {"hand", sideName(snag.hand)},
                       {"midi", midiOrNull(snag.written)},
                       {"strings", std::move(strings)},
                       {"time_s", hundredths(snag.timeSeconds)},
                       {"needs_s", hundredths(snag.needsSeconds)},
                       {"what", snag.what},
                       {"way", tune::wayId(snag.way)},
                       {"ways", std::move(ways)},
                       {"group", snag.group},
                       {"decided", snag.decided}});
    }
    return out;
}

std::vector<std::string> words(std::vector<hands::Asked> const& reasons)
{
    std::vector<std::string> out;
    for (hands::Asked const& asked : reasons)
        out.push_back(base::say("{} (level {:.1f})", asked.words, asked.level));
    return out;
}

Json difficultyMember(arrange::Arrangement const& arrangement,
                      hands::Difficulty const& difficulty)
{
    Json bars = Json::array();
    for (tune::BarIndex const b : difficulty.bars.indices())
        bars.push_back({{"bar", arrangement.tune.bars[b].number},
                        {"level", hundredths(difficulty.bars[b].level)},
                        {"reasons", words(difficulty.bars[b].reasons)}});
    return {{"level", hundredths(difficulty.level)},
            {"reasons", words(difficulty.reasons)},
            {"bars", std::move(bars)}};
}

Json termsMember(arrange::Account const& account)
{
    Json out = Json::object();
    for (std::size_t term = 0; term < ownTerms; ++term)
        out[std::string(arrange::termName(static_cast<Term>(term)))] = account[term];
    return out;
}

Json latticePosition(Proposal const& proposal, arrange::PositionIndex i)
{
    arrange::Position const& position = proposal.lattice.positions[i];
    Json candidates = Json::array();
    for (arrange::CandidateIndex const c : proposal.lattice.candidates[i].indices()) {
        arrange::Candidate const& candidate = proposal.lattice.candidates[i][c];
        candidates.push_back({{"id", c.value()},
                              {"pattern", candidate.voicing.pattern},
                              {"root_string", rootString(candidate.voicing)},
                              {"rhythm", candidate.voicing.rhythm},
                              {"roll", candidate.voicing.rolled},
                              {"cost", candidate.cost},
                              {"terms", termsMember(candidate.account)},
                              {"regret", proposal.solution.regrets[i][c]}});
    }
    Json locked = nullptr;
    if (proposal.lattice.locks[i]) locked = proposal.lattice.locks[i]->value();
    tune::BarIndex const bar = position.bar;
    return {{"id", i.value()},
            {"bar", proposal.arrangement.tune.bars[bar].number},
            {"at", whole(position.at)},
            {"chord", music::plain(position.chord)},
            {"locked", std::move(locked)},
            {"candidates", std::move(candidates)}};
}

// By far the largest part, so written number by number.
void appendPairs(std::string& out, arrange::Lattice const& lattice)
{
    out += ",\n  \"pairs\": [";
    for (arrange::PositionIndex const i : lattice.pairs.indices()) {
        out += i == 0 ? "\n    [" : ",\n    [";
        for (arrange::CandidateIndex const a : lattice.candidates[i].indices()) {
            out += a == 0 ? "[" : ",[";
            for (arrange::CandidateIndex const b : lattice.candidates[i + 1].indices()) {
                if (b > 0) out += ',';
                fmt::format_int const number(lattice.pair(i, a, b));
                out.append(number.data(), number.size());
            }
            out += ']';
        }
        out += ']';
    }
    out += lattice.pairs.empty() ? "]" : "\n  ]";
}

Json choiceMember(arrange::Choice const& choice)
{
    Json taken = Json::array();
    for (arrange::CandidateIndex const candidate : choice.candidates)
        taken.push_back(candidate.value());
    return {{"choice", std::move(taken)}, {"cost", choice.cost}};
}

} // namespace

std::string planJson(Proposal const& proposal,
                     std::optional<hands::Difficulty> const& difficulty)
{
    arrange::Arrangement const& a = proposal.arrangement;
    std::string out = "{\n  \"plan\": 1";
    appendMember(out, "tune", tuneMember(proposal));
    appendMember(out, "harp", harpMember(a.harp));
    appendMember(
        out, "hand",
        {{"id", a.hand.id}, {"reach_strings", reachStrings(a)}, {"level", a.level.number}});
    appendMember(out, "setup", stringsRaised(a.levers.setup));
    appendList(out, "flips", flipList(a));
    appendList(out, "positions", positionList(proposal));
    std::vector<arrange::HandNote> const notes = arrange::handNotes(a);
    appendList(out, "notes", noteList(notes));
    appendList(out, "groups", groupList(a, notes));
    appendList(out, "hand_remarks", remarkList(a));
    appendList(out, "snags", snagList(proposal));
    if (difficulty) appendMember(out, "difficulty", difficultyMember(a, *difficulty));
    appendMember(out, "total_cost", proposal.solution.best.cost);
    appendMember(out, "warnings", proposal.warnings);
    return out + "\n}\n";
}

std::string latticeJson(Proposal const& proposal)
{
    std::string out = "{\n  \"lattice\": 1";
    appendMember(out, "unit", "1/1000 point");
    std::vector<Json> positions;
    for (arrange::PositionIndex const i : proposal.lattice.positions.indices())
        positions.push_back(latticePosition(proposal, i));
    appendList(out, "positions", positions);
    appendPairs(out, proposal.lattice);
    arrange::Choice const best = bestOf(proposal);
    appendMember(out, "best", choiceMember(best));
    std::vector<Json> others;
    auto const takes = arrange::takes(proposal.lattice, best, alternativesListed);
    for (std::size_t i = 1; i < takes.size(); ++i) others.push_back(choiceMember(takes[i]));
    appendList(out, "alternatives", others);
    return out + "\n}\n";
}

} // namespace files
