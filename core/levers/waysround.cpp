#include "core/levers/waysround.h"

#include "core/base/at.h"
#include "core/harp/seats.h"
#include "core/levers/planned.h"
#include "core/levers/uses.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace levers {

namespace {

using tune::Circumstance;
using tune::NoteInLine;
using tune::NotePlace;
using tune::Way;

// Ten points are as bad as one flip (tune/ways.h), which is a million in a plan.
constexpr std::int64_t ofPoint = 100'000;

using base::at;

// The other pitch of the note's own string, a semitone away.
std::optional<music::Pitch> plainOf(harp::Harp const& harp, music::Pitch pitch)
{
    auto const string = harp::stringFor(harp, pitch);
    if (!string) return std::nullopt;
    harp::HarpString const& own = harp.string(*string);
    for (harp::Lever const lever : {harp::Lever::Down, harp::Lever::Up}) {
        if (lever == harp::Lever::Up && !own.hasLever) continue;
        music::Pitch const sounds = harp::sounding(own, lever);
        if (std::abs(sounds.alter - pitch.alter) == 1) return sounds;
    }
    return std::nullopt;
}

// The nearest octave in which the harp has the note; the one towards its middle first.
std::optional<music::Pitch> octaveOf(harp::Harp const& harp, music::Pitch pitch)
{
    int const middle = (music::diatonicStep(harp.string(0).open) +
                        music::diatonicStep(harp.string(harp.highest()).open)) /
                       2;
    int const towards = music::diatonicStep(pitch) > middle ? -1 : 1;
    for (int const octaves : {towards, -towards, 2 * towards, 3 * towards}) {
        music::Pitch moved = pitch;
        moved.octave += octaves;
        if (!harp::seats(harp, moved).empty()) return moved;
    }
    return std::nullopt;
}

// What the search works on.
struct Work {
    harp::Harp const& harp;
    Performance const& performance;
    WaysAsked const& asked;
    Uses const& uses;
    std::vector<NoteInLine> const& lines;
    template<class T>
    using PerUse = base::List<UseIndex, T>;
    PerUse<std::optional<std::size_t>> lineOf{}; // none: a grace note
    PerUse<int> figure{};
    PerUse<std::vector<harp::Seat>> seats{};
    PerUse<char> open{};   // 1: to other ways than as written
    std::set<int> never{}; // figures that do not go as written
};

Gap between(Work const& work, harp::StringIndex string, UseIndex first, UseIndex second)
{
    return gapOf(Turn{string, harp::Lever::Up, first, second, second}, work.uses, work.harp);
}

bool tight(Work const& work, harp::StringIndex string, UseIndex first, UseIndex second)
{
    return !work.performance.clock.hasWindow(between(work, string, first, second));
}

struct OnString {
    UseIndex use = 0;
    harp::Lever lever = harp::Lever::Down;
};

// Opens ways where notes stand in each other's way: true when something was opened.
class Opening {
public:
    explicit Opening(Work& work) : m_work(work), m_strings(work.harp.count(), {})
    {
        for (UseIndex const i : work.uses.indices())
            for (harp::Seat const& seat : work.seats[i])
                m_strings[seat.string].push_back({i, seat.lever});
    }

    void rivals()
    {
        for (UseIndex const i : m_work.uses.indices())
            if (m_work.seats[i].empty()) m_work.open[i] = 1;
        for (harp::StringIndex const string : m_work.harp.indices()) {
            auto const& on = m_strings[string];
            for (std::size_t a = 0; a < on.size(); ++a)
                for (std::size_t b = a + 1; b < on.size(); ++b) {
                    bool const isTight = tight(m_work, string, on[a].use, on[b].use);
                    if (!isTight && m_work.performance.level.flips) break;
                    if (on[a].lever == on[b].lever || !isTight) continue;
                    m_work.open[on[a].use] = m_work.open[on[b].use] = 1;
                }
        }
        spread();
    }

    // To notes as close on the same string, and to all that are alike.
    void spread()
    {
        bool changed = true;
        while (changed) {
            changed = alike();
            for (harp::StringIndex const string : m_work.harp.indices()) {
                auto const& on = m_strings[string];
                for (std::size_t a = 0; a + 1 < on.size(); ++a) {
                    char& first = m_work.open[on[a].use];
                    char& second = m_work.open[on[a + 1].use];
                    if (first == second) continue;
                    if (!tight(m_work, string, on[a].use, on[a + 1].use)) continue;
                    first = second = 1;
                    changed = true;
                }
            }
        }
    }

private:
    bool alike()
    {
        std::set<int> figures;
        for (UseIndex const i : m_work.uses.indices())
            if (m_work.open[i]) figures.insert(m_work.figure[i]);
        bool changed = false;
        for (UseIndex const i : m_work.uses.indices())
            if (!m_work.open[i] && figures.contains(m_work.figure[i]))
                m_work.open[i] = 1, changed = true;
        return changed;
    }

    Work& m_work;
    base::List<harp::StringIndex, std::vector<OnString>> m_strings;
};

std::optional<UseIndex> useBefore(Work const& work, UseIndex use)
{
    NoteInLine const& line = work.lines[*work.lineOf[use]];
    for (UseIndex other = use - 1; other >= 0; --other) {
        tune::PlayedNote const& before = work.uses[other];
        if (isGrace(before)) continue;
        bool const meets = before.at + before.held == work.uses[use].at;
        if (meets && placeOf(before, work.performance.bars) == *line.before) return other;
        if (before.at < work.uses[use].at && !meets) return std::nullopt;
    }
    return std::nullopt;
}

NoteChoice choiceOf(Work const& work, UseIndex use)
{
    NoteChoice choice;
    choice.figure = work.figure[use];
    auto const line = work.lineOf[use];
    bool const decidedQuick =
        line && std::ranges::find(work.asked.quick, work.lines[*line].place) !=
                    work.asked.quick.end();
    if (decidedQuick)
        choice.ways.push_back({Way::LeftLightened, work.uses[use].pitch, ofPoint});
    if (!work.open[use]) return choice;
    if (!line) {
        choice.ways.push_back({Way::LeaveOut, std::nullopt,
                               ofPoint * work.asked.prices.graceLeftOut});
        return choice;
    }
    choice.before = work.lines[*line].before ? useBefore(work, use) : std::nullopt;
    auto const open = openWays(work.lines[*line], work.harp, work.performance.level,
                               work.asked.prices);
    std::optional<Way> wanted;
    if (work.asked.only && std::ranges::any_of(open, [&](OpenWay const& way) {
            return way.way == *work.asked.only;
        }))
        wanted = work.asked.only;
    for (OpenWay const& way : open) {
        if (wanted && way.way != *wanted) continue;
        if (way.way == Way::Held && !choice.before) continue;
        if (way.way == Way::LeftLightened && decidedQuick) continue;
        // The octave is no way among neighbours: offered where asked for, or nothing is nearer.
        NoteInLine const& note = work.lines[*line];
        if (way.way == Way::Octave && !wanted && !note.is(Circumstance::OffHarp) &&
            !note.is(Circumstance::LeapsAround))
            continue;
        choice.ways.push_back({way.way, way.sounds, ofPoint * way.price});
    }
    choice.asWritten = !work.seats[use].empty() && !work.never.contains(choice.figure);
    return choice;
}

NoteChoices choicesOf(Work const& work)
{
    NoteChoices choices;
    for (UseIndex const i : work.uses.indices()) choices.push_back(choiceOf(work, i));
    // A figure goes the ways that all its notes can go.
    std::map<int, std::vector<UseIndex>> figures;
    for (UseIndex const i : choices.indices())
        if (!choices[i].ways.empty()) figures[choices[i].figure].push_back(i);
    for (auto const& [figure, notes] : figures) {
        if (notes.size() == 1) continue;
        for (UseIndex const i : notes)
            std::erase_if(choices[i].ways, [&](NoteWay const& way) {
                if (way.way == Way::LeftLightened) return false; // leave to hurry, note by note
                return !std::ranges::all_of(notes, [&](UseIndex other) {
                    return std::ranges::any_of(choices[other].ways, [&](NoteWay const& w) {
                        return w.way == way.way;
                    });
                });
            });
    }
    return choices;
}

std::vector<MendedNote> notesOf(Work const& work, Seating const& seating)
{
    std::map<NotePlace, MendedNote> byPlace;
    for (TakenWay const& taken : seating.taken) {
        tune::PlayedNote const& use = work.uses[taken.note];
        if (taken.way.way == Way::LeftLightened && taken.way.cost == ofPoint) continue;
        NotePlace const place = placeOf(use, work.performance.bars);
        byPlace[place] = {place,
                          use.pitch,
                          taken.way.way,
                          taken.way.sounds,
                          work.figure[taken.note],
                          static_cast<int>(taken.way.cost / ofPoint)};
    }
    std::vector<MendedNote> notes;
    for (auto const& [place, note] : byPlace) notes.push_back(note);
    return notes;
}

WaysRound searched(Work& work)
{
    Opening opening(work);
    opening.rivals();
    constexpr std::size_t fewRounds = 3;
    constexpr int seatings = 40;
    constexpr int uncrowded = 0; // levers that crowd are not looked at
    std::size_t const mostRounds =
        work.asked.briefly ? fewRounds : 2 * work.uses.values().size() + 8;
    std::optional<std::int64_t> dearest;
    if (work.asked.briefly && work.asked.mostPoints) dearest = ofPoint * *work.asked.mostPoints;
    for (std::size_t round = 0; round < mostRounds; ++round) {
        NoteChoices const choices = choicesOf(work);
        MendedSeating const found =
            mendedSeating(work.harp, work.uses, work.performance, choices,
                          work.asked.briefly ? uncrowded : seatings, dearest);
        if (found.tooDear) break;
        if (!found.refused) {
            WaysRound out{notesOf(work, found.seating), 0,
                          static_cast<int>(found.seating.turns.size())};
            for (MendedNote const& note : out.notes)
                if (!note.place.grace) out.price += note.price;
            return out;
        }
        // Something that no way was open to: open it, and if it is open, it must give way.
        auto const openNow = [&work] { return std::ranges::count(work.open, 1); };
        auto const before = openNow();
        for (std::optional<UseIndex> const note :
             {std::optional(found.refused->note), found.refused->after})
            if (note) work.open[*note] = 1;
        opening.spread();
        if (openNow() == before) {
            int const figure = work.figure[found.refused->note];
            if (!work.never.insert(figure).second) {
                if (!found.refused->after) break;
                work.never.insert(work.figure[*found.refused->after]);
            }
        }
    }
    WaysRound out;
    out.found = !work.asked.briefly;
    if (!out.found) return out;
    // Beyond any search: what remains in the way is left out.
    std::set<NotePlace> seen;
    for (UseIndex const i : work.uses.indices()) {
        if (!work.open[i]) continue;
        NotePlace const place = placeOf(work.uses[i], work.performance.bars);
        if (!seen.insert(place).second) continue;
        int const price = work.lineOf[i] ? tune::priceOf(work.lines[*work.lineOf[i]],
                                                         Way::LeaveOut, work.asked.prices)
                                         : work.asked.prices.graceLeftOut;
        out.notes.push_back(
            {place, work.uses[i].pitch, Way::LeaveOut, std::nullopt, work.figure[i], price});
        out.price += price;
    }
    return out;
}

} // namespace

std::vector<NoteInLine> notesOnHarp(harp::Harp const& harp, tune::Tune const& tune,
                                    tune::Tempo tempo, tune::WayPrices const& prices)
{
    std::vector<NoteInLine> lines = tune::notesInLine(tune, tempo, prices);
    for (NoteInLine& line : lines) {
        line.plain = plainOf(harp, line.pitch);
        music::Key const key = tune.bars[line.place.bar].key;
        line.when.set(static_cast<std::size_t>(Circumstance::PlainInKey),
                      line.plain && line.plain->alter == music::alterIn(music::signature(key),
                                                                        line.plain->letter));
        line.when.set(static_cast<std::size_t>(Circumstance::OffHarp),
                      harp::seats(harp, line.pitch).empty());
    }
    return lines;
}

std::vector<OpenWay> openWays(NoteInLine const& note, harp::Harp const& harp,
                              harp::Level const& level, tune::WayPrices const& prices)
{
    std::vector<OpenWay> ways;
    auto const offer = [&](Way way, std::optional<music::Pitch> sounds) {
        ways.push_back({way, sounds, tune::priceOf(note, way, prices)});
    };
    if (note.plain) offer(Way::Plain, note.plain);
    if (note.before) offer(Way::Held, std::nullopt);
    offer(Way::LeaveOut, std::nullopt);
    if (auto const octave = octaveOf(harp, note.pitch)) offer(Way::Octave, octave);
    if (level.flips && !harp::seats(harp, note.pitch).empty())
        offer(Way::LeftLightened, note.pitch);
    return ways;
}

WaysRound waysRound(harp::Harp const& harp, tune::Tune const& tune,
                    tune::Playing const& playing, tune::Tempo tempo,
                    harp::Level const& level, std::vector<harp::LeverWish> const& wishes,
                    WaysAsked const& asked)
{
    Performance const performance{tune,  playing.bars, tempo, level,
                                  Clock(tune, playing, tempo, level), wishes, asked.quick, true};
    Uses const uses = usesOf(tune, playing);
    auto const lines = notesOnHarp(harp, tune, tempo, asked.prices);
    Work work{harp, performance, asked, uses, lines};
    std::map<NotePlace, std::size_t> lineAt;
    for (std::size_t i = 0; i < lines.size(); ++i) lineAt[lines[i].place] = i;
    std::map<std::tuple<int, bool, bool>, int> figures;
    std::map<NotePlace, int> graces;
    for (tune::PlayedNote const& use : uses) {
        NotePlace const place = placeOf(use, playing.bars);
        work.seats.push_back(harp::seats(harp, use.pitch));
        auto const line = lineAt.find(place);
        if (isGrace(use) || line == lineAt.end()) {
            work.lineOf.push_back(std::nullopt);
            work.figure.push_back(
                -1 - graces.try_emplace(place, static_cast<int>(graces.size())).first->second);
            continue;
        }
        NoteInLine const& note = lines[line->second];
        work.lineOf.push_back(line->second);
        work.figure.push_back(
            figures
                .try_emplace({note.figure, note.plain.has_value(), note.before.has_value()},
                             static_cast<int>(figures.size()))
                .first->second);
    }
    work.open = Work::PerUse<char>(uses.size(), 0);
    return searched(work);
}

MendedTune changesFor(std::vector<MendedNote> const& notes)
{
    using tune::Change;
    MendedTune out;
    std::vector<tune::NoteChange> held;
    std::vector<tune::NoteChange> graces;
    for (MendedNote const& note : notes) {
        switch (note.way) {
        case Way::Plain:
            if (note.sounds)
                out.changes.push_back({note.place, note.sounds->alter > note.written.alter
                                                       ? Change::SemitoneHigher
                                                       : Change::SemitoneLower});
            break;
        case Way::Octave:
            if (note.sounds)
                for (int i = 0; i < std::abs(note.sounds->octave - note.written.octave); ++i)
                    out.changes.push_back({note.place,
                                           note.sounds->octave > note.written.octave
                                               ? Change::OctaveHigher
                                               : Change::OctaveLower});
            break;
        case Way::Held: held.push_back({note.place, Change::HeldOver}); break;
        case Way::LeftLightened: out.quick.push_back(note.place); break;
        default:
            (note.place.grace ? graces : out.changes).push_back({note.place, Change::LeftOut});
        }
    }
    // The higher pitch of a chord and the later grace note first, so that places stay what they
    // are; notes that ring on after what they ring on from.
    std::reverse(out.changes.begin(), out.changes.end());
    std::reverse(graces.begin(), graces.end());
    out.changes.insert(out.changes.end(), graces.begin(), graces.end());
    out.changes.insert(out.changes.end(), held.begin(), held.end());
    return out;
}

} // namespace levers
