#include "core/levers/seating.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <compare>
#include <map>
#include <numeric>

namespace levers {

namespace {

using harp::Lever;
using harp::Seat;
using Notes = std::span<tune::PlayedNote const>;

// One turn outweighs all that windows and respelt notes can add up to.
constexpr std::int64_t turnCost = 1'000'000;
// A note away from the string of its own letter has to be marked and learnt. Common practice.
constexpr std::int64_t awayFromLetterCost = 30;

// What a string has been through up to some note.
struct StringState {
    Lever start = Lever::Down;
    Lever now = Lever::Down;
    std::optional<int> lastNote; // none: not played yet
    std::optional<int> leftTo;   // the first note since then that was left to a neighbour
    friend auto operator<=>(StringState const&, StringState const&) = default;
};
using GroupState = std::vector<StringState>; // one for each string of a group

struct Step {
    GroupState state;
    std::int64_t cost = 0;
    int parent = 0; // index into the steps of the note before
    int string = 0; // on which the note is played
    std::optional<Turn> turn;
};

// Strings tied by pitches that either can give, and the notes they play.
struct Group {
    std::vector<int> strings;
    std::vector<int> notes;
};

std::size_t at(int index) { return static_cast<std::size_t>(index); }

// Why no string sounds the pitch.
base::Fault cannotBeHad(harp::Harp const& harp, int note, Notes notes,
                        Performance const& performance)
{
    music::Pitch const pitch = notes[at(note)].pitch;
    auto const string = harp::stringFor(harp, pitch);
    if (!string)
        return {base::FaultCode::NoteOffHarp, placeOfNote(note, notes, performance),
                fmt::format("{}, the harp goes from {} to {}", shown(pitch),
                            shown(harp.string(0).open),
                            shown(harp.string(harp.count() - 1).open))};
    return {base::FaultCode::KeyBeyondTuning, placeOfNote(note, notes, performance),
            fmt::format("no string sounds {}: its string gives {}{}", shown(pitch),
                        shown(harp.string(*string).open),
                        harp.string(*string).hasLever
                            ? " and " + shown(sounding(harp.string(*string), Lever::Up))
                            : ", without a lever")};
}

// What would let a lever turn in so short a silence, as far as tempo goes.
std::string tempoThatHelps(music::Length silent, music::Length beat,
                           Performance const& performance)
{
    harp::Level const& level = performance.level;
    // The same shares as in Clock::turningTime.
    double const beats = (silent / beat).toDouble();
    if (beats <= 0 || beats < level.flipFreeBeats / 4) return {};
    double const quarters = silent.wholes.toDouble() * 240 / (level.flipFreeSeconds / 2);
    return fmt::format("; at {} it would do", tune::tempoWords(beat, quarters));
}

// The refusal of a turn that finds no window: what follows what, the silence there is between
// them and the silence that turning asks for.
base::Fault noMoment(Notes notes, Turn const& turn, Performance const& performance)
{
    tune::PlayedNote const& old = notes[at(turn.after)];
    tune::PlayedNote const& next = notes[at(turn.before)];
    std::string const where = placeOfNote(turn.before, notes, performance);
    if (old.at == next.at)
        return {base::FaultCode::NoMomentForFlip, where,
                fmt::format("{} and {} together, both on string {}", shown(old.pitch),
                            shown(next.pitch), turn.string + 1)};
    std::string const change = fmt::format("{} after {}, both on string {}", shown(next.pitch),
                                           shown(old.pitch), turn.string + 1);
    if (!performance.level.flips)
        return {base::FaultCode::NoMomentForFlip, where,
                fmt::format("{}; level {} turns no levers while playing", change,
                            performance.level.number)};

    tune::Bar const& bar = performance.tune.bars[at(performance.bars[at(next.playedBar)].bar)];
    music::Length const beat = music::beatLength(bar.meter);
    double const secondsAWhole = 240 / tune::quartersPerMinute(performance.tempo);
    auto const inWords = [&](music::Length length) {
        return fmt::format("{:.2g} beats ({:.2f} s)", (length / beat).toDouble(),
                           length.wholes.toDouble() * secondsAWhole);
    };
    music::Length const silent = std::max(
        music::Length{}, notes[at(turn.by)].at - old.at - old.held * music::Rational(1, 2));
    return {base::FaultCode::NoMomentForFlip, where,
            fmt::format("{}, silent between them for at most {}; level {} needs {}{}", change,
                        inWords(silent), performance.level.number,
                        inWords(performance.clock.turningTime(next.playedBar)),
                        tempoThatHelps(silent, beat, performance))};
}

// Strings that share a note with two seats belong to one group.
std::vector<Group> groupsOf(harp::Harp const& harp, std::vector<std::vector<Seat>> const& seats)
{
    std::vector<int> leader(at(harp.count()));
    std::iota(leader.begin(), leader.end(), 0);
    auto const leaderOf = [&leader](int string) {
        while (leader[at(string)] != string) string = leader[at(string)];
        return string;
    };
    for (auto const& choice : seats)
        for (Seat const& seat : choice)
            leader[at(leaderOf(seat.string))] = leaderOf(choice.front().string);

    std::vector<Group> groups(leader.size());
    for (int string = 0; string < harp.count(); ++string)
        groups[at(leaderOf(string))].strings.push_back(string);
    for (std::size_t note = 0; note < seats.size(); ++note)
        groups[at(leaderOf(seats[note].front().string))].notes.push_back(
            static_cast<int>(note));
    std::erase_if(groups, [](Group const& group) { return group.notes.empty(); });
    return groups;
}

// Plays notes of one group in turn, keeping the cheapest way to every state.
class GroupSearch {
public:
    GroupSearch(harp::Harp const& harp, Notes notes, Performance const& performance,
                Group const& group)
        : m_harp(harp), m_notes(notes), m_performance(performance), m_group(group)
    {
        m_steps.push_back({Step{GroupState(group.strings.size()), 0, 0, 0, {}}});
    }

    // Adds the next note; the turn that found no window when there is no way to play it.
    std::optional<Turn> play(int note, std::vector<Seat> const& seats)
    {
        std::map<GroupState, Step> next;
        std::optional<Turn> refused;
        for (std::size_t parent = 0; parent < m_steps.back().size(); ++parent)
            for (Seat const& seat : seats) {
                Step step = extended(static_cast<int>(parent), note, seat);
                if (seat != seats.front()) {
                    step.cost += awayFromLetterCost;
                    leaveOwnLetter(step, note, seats.front());
                }
                if (step.turn) {
                    auto const window =
                        m_performance.clock.bestWindow(gapOf(*step.turn, m_notes, m_harp));
                    if (!window) {
                        if (!refused) refused = step.turn;
                        continue;
                    }
                    step.cost += turnCost + window->cost;
                }
                auto const [known, isNew] = next.try_emplace(step.state, step);
                if (!isNew && step.cost < known->second.cost) known->second = step;
            }
        if (next.empty()) return refused;
        std::vector<Step> steps;
        for (auto& [state, step] : next) steps.push_back(std::move(step));
        m_steps.push_back(std::move(steps));
        return std::nullopt;
    }

    // Writes the cheapest way into the seating.
    void writeBest(Seating& seating) const
    {
        auto const cheaper = [](Step const& a, Step const& b) { return a.cost < b.cost; };
        auto const& last = m_steps.back();
        Step const* step = &*std::min_element(last.begin(), last.end(), cheaper);
        for (std::size_t i = 0; i < m_group.strings.size(); ++i)
            if (step->state[i].lastNote)
                seating.starts[at(m_group.strings[i])] = step->state[i].start;
        for (std::size_t i = m_group.notes.size(); i > 0; --i) {
            seating.strings[at(m_group.notes[i - 1])] = step->string;
            if (step->turn) seating.turns.push_back(*step->turn);
            step = &m_steps[i - 1][at(step->parent)];
        }
    }

private:
    Step extended(int parent, int note, Seat const& seat) const
    {
        Step const& before = m_steps.back()[at(parent)];
        Step step{before.state, before.cost, parent, seat.string, std::nullopt};
        StringState& string = stateOf(step, seat.string);
        if (!string.lastNote)
            string.start = seat.lever;
        else if (string.now != seat.lever)
            step.turn = Turn{seat.string,
                             seat.lever,
                             *string.lastNote,
                             note,
                             string.leftTo.value_or(note),
                             seat.lever == string.start};
        string.now = seat.lever;
        string.lastNote = note;
        string.leftTo.reset();
        return step;
    }

    // A note on a neighbour: where the string of its own letter would sound it as well, that
    // string's lever must be turned by then, or the note is not where the plan says.
    void leaveOwnLetter(Step& step, int note, Seat const& own) const
    {
        StringState& string = stateOf(step, own.string);
        if (string.lastNote && string.now == own.lever && !string.leftTo) string.leftTo = note;
    }

    StringState& stateOf(Step& step, int string) const
    {
        auto const place = std::find(m_group.strings.begin(), m_group.strings.end(), string);
        return step.state[at(static_cast<int>(place - m_group.strings.begin()))];
    }

    harp::Harp const& m_harp;
    Notes m_notes;
    Performance const& m_performance;
    Group const& m_group;
    std::vector<std::vector<Step>> m_steps; // for the start and each note of the group
};

} // namespace

std::string placeOfNote(int note, Notes notes, Performance const& performance)
{
    tune::PlayedBar const& bar = performance.bars[at(notes[at(note)].playedBar)];
    std::string const name = tune::barName(performance.tune, bar.bar);
    return bar.pass == 1 ? name : fmt::format("{}, pass {}", name, bar.pass);
}

Gap gapOf(Turn const& turn, Notes notes, harp::Harp const& harp)
{
    tune::PlayedNote const& old = notes[at(turn.after)];
    tune::PlayedNote const& next = notes[at(turn.by)];
    constexpr int middleC = 60;
    return {turn.string,       old.at,
            old.at + old.held, next.at,
            next.playedBar,    music::midi(harp.string(turn.string).open) >= middleC,
            turn.returning};
}

base::Result<Seating> seated(harp::Harp const& harp, Notes notes,
                             Performance const& performance)
{
    std::vector<std::vector<Seat>> seats;
    for (std::size_t note = 0; note < notes.size(); ++note) {
        seats.push_back(harp::seats(harp, notes[note].pitch));
        if (seats.back().empty())
            return cannotBeHad(harp, static_cast<int>(note), notes, performance);
    }

    Seating seating{std::vector<int>(notes.size()),
                    std::vector<std::optional<Lever>>(at(harp.count())),
                    {}};
    std::optional<Turn> refused;
    for (Group const& group : groupsOf(harp, seats)) {
        GroupSearch search(harp, notes, performance, group);
        std::optional<Turn> stuck;
        for (int const note : group.notes) {
            stuck = search.play(note, seats[at(note)]);
            if (stuck) break;
        }
        if (!stuck)
            search.writeBest(seating);
        else if (!refused || stuck->before < refused->before)
            refused = stuck;
    }
    if (refused) return noMoment(notes, *refused, performance);
    std::sort(seating.turns.begin(), seating.turns.end(), [](Turn const& a, Turn const& b) {
        return std::pair(a.before, a.string) < std::pair(b.before, b.string);
    });
    return seating;
}

} // namespace levers
