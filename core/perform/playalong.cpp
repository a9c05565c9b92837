#include "core/perform/playalong.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace perform {

namespace {

constexpr Seconds together = 0.06; // notes so near each other are one moment, rolls beside

bool isMine(Event const& event, Mine mine)
{
    return event.kind == Event::Kind::Pluck &&
           (event.hand == harp::Side::Left ? mine.left : mine.right);
}

tune::PlayedBarIndex barAt(Schedule const& schedule, Seconds at)
{
    tune::PlayedBarIndex bar = 0;
    if (!schedule.bars.empty()) bar = schedule.bars.front().playedBar;
    for (BarStart const& start : schedule.bars)
        if (start.at <= at + together) bar = start.playedBar;
    return bar;
}

// Pairs of two lists of times, both in order: as many as can be within a limit, and of those the
// ones that are least off. Answers the second's index for each of the first, -1 for none.
std::vector<int> joined(std::vector<Seconds> const& wanted, std::vector<Seconds> const& heard,
                        Seconds limit)
{
    std::size_t const rows = wanted.size() + 1;
    std::size_t const columns = heard.size() + 1;
    std::vector<double> cost(rows * columns);
    auto const at = [&](std::size_t row, std::size_t column) -> double& {
        return cost[row * columns + column];
    };
    for (std::size_t row = 0; row < rows; ++row)
        for (std::size_t column = 0; column < columns; ++column) {
            if (row == 0 || column == 0) {
                at(row, column) = static_cast<double>(row + column) * limit;
                continue;
            }
            double const off = std::abs(wanted[row - 1] - heard[column - 1]);
            double best = std::min(at(row - 1, column), at(row, column - 1)) + limit;
            if (off <= limit) best = std::min(best, at(row - 1, column - 1) + off);
            at(row, column) = best;
        }
    std::vector<int> pairs(wanted.size(), -1);
    std::size_t row = wanted.size();
    std::size_t column = heard.size();
    while (row > 0 && column > 0) {
        double const off = std::abs(wanted[row - 1] - heard[column - 1]);
        if (off <= limit && at(row, column) == at(row - 1, column - 1) + off)
            pairs[--row] = static_cast<int>(--column);
        else if (at(row, column) == at(row - 1, column) + limit)
            --row;
        else
            --column;
    }
    return pairs;
}

Verdict verdictOf(Seconds off, Latitude latitude)
{
    if (off < -latitude.inTime) return Verdict::Early;
    return off > latitude.inTime ? Verdict::Late : Verdict::Right;
}

} // namespace

Judgement judged(Schedule const& schedule, Mine mine, std::vector<Heard> const& heard,
                 Latitude latitude)
{
    Judgement judgement;
    for (Event const& event : schedule.events)
        if (isMine(event, mine))
            judgement.notes.push_back(
                {event, barAt(schedule, event.at), Verdict::Missed, 0, 0});
    std::vector<Heard> played = heard;
    std::ranges::stable_sort(played, {}, &Heard::at);
    std::vector<bool> used(played.size(), false);

    std::map<int, std::vector<std::size_t>> wantedOf; // by key
    for (std::size_t i = 0; i < judgement.notes.size(); ++i)
        wantedOf[judgement.notes[i].wanted.midi].push_back(i);
    for (auto const& [midi, wanted] : wantedOf) {
        std::vector<Seconds> wantedAt;
        for (std::size_t const i : wanted) wantedAt.push_back(judgement.notes[i].wanted.at);
        std::vector<std::size_t> of;
        std::vector<Seconds> heardAt;
        for (std::size_t i = 0; i < played.size(); ++i)
            if (played[i].midi == midi) {
                of.push_back(i);
                heardAt.push_back(played[i].at);
            }
        auto const pairs = joined(wantedAt, heardAt, latitude.meant);
        for (std::size_t i = 0; i < pairs.size(); ++i) {
            if (pairs[i] < 0) continue;
            std::size_t const one = of[static_cast<std::size_t>(pairs[i])];
            used[one] = true;
            JudgedNote& note = judgement.notes[wanted[i]];
            note.off = played[one].at - note.wanted.at;
            note.verdict = verdictOf(note.off, latitude);
        }
    }

    // What was played where something is missing: another string than the one that was meant.
    std::vector<Seconds> missedAt;
    std::vector<std::size_t> missed;
    for (std::size_t i = 0; i < judgement.notes.size(); ++i)
        if (judgement.notes[i].verdict == Verdict::Missed) {
            missed.push_back(i);
            missedAt.push_back(judgement.notes[i].wanted.at);
        }
    std::vector<std::size_t> of;
    std::vector<Seconds> strayAt;
    for (std::size_t i = 0; i < played.size(); ++i)
        if (!used[i]) {
            of.push_back(i);
            strayAt.push_back(played[i].at);
        }
    auto const pairs = joined(missedAt, strayAt, latitude.meant / 2);
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        if (pairs[i] < 0) continue;
        std::size_t const one = of[static_cast<std::size_t>(pairs[i])];
        used[one] = true;
        JudgedNote& note = judgement.notes[missed[i]];
        note.verdict = Verdict::WrongString;
        note.off = played[one].at - note.wanted.at;
        note.heard = played[one].midi;
    }
    for (std::size_t i = 0; i < played.size(); ++i)
        if (!used[i]) judgement.extra.push_back({played[i], barAt(schedule, played[i].at)});
    return judgement;
}

std::vector<Together> togethers(Schedule const& schedule, Mine mine)
{
    std::vector<Together> moments;
    Seconds last = 0;
    for (Event const& event : schedule.events) {
        if (!isMine(event, mine)) continue;
        if (moments.empty() || event.at - last > together)
            moments.push_back({event.at, barAt(schedule, event.at), {}});
        moments.back().notes.push_back(event);
        last = event.at;
    }
    return moments;
}

Waiting::Waiting(std::vector<Together> moments) : m_moments(std::move(moments)) { await(); }

void Waiting::await()
{
    m_missing.clear();
    if (over()) return;
    for (Event const& event : now().notes) m_missing.insert(event.midi);
}

Waiting::Answer Waiting::play(int midi)
{
    if (over() || m_missing.erase(midi) == 0) return Answer::Wrong;
    if (!m_missing.empty()) return Answer::Right;
    ++m_now;
    await();
    return Answer::GoesOn;
}

} // namespace perform
