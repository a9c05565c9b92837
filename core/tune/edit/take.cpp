#include "core/tune/edit/take.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>

namespace tune {

using music::Length;
using music::Rational;

namespace {

constexpr double together = 0.030; // seconds: fingers of one chord
constexpr double scatter = 0.035;  // seconds: of a practised player, a little generous
constexpr double usualLag = 0.060; // seconds: of sound and hands together
constexpr double mostLate = 0.150; // seconds: a lag that is still taken for one
constexpr double shortKey = 0.060; // seconds: a device that lets go at once, as harps do
constexpr double leftOutCost = 14; // as much as five times the scatter
constexpr int parts = 12;          // of a beat, in which places are counted

// A way to divide a beat: where notes begin, in twelfths of it.
struct Division {
    std::vector<int> at;
    double cost = 0;
    bool triplet = false;
};

// How unusual a place in a beat is, in half squares of the scatter (our judgement).
double costOf(int at, bool compound)
{
    if (at == 0) return 0;
    if (compound) return at % 4 == 0 ? 0.4 : 2.2;
    return at == 6 ? 0.4 : at % 3 == 0 ? 2.0 : 1.2;
}

// Every set of the places, with one more cost for a triplet that is not whole.
void addDivisions(std::vector<Division>& into, std::vector<int> const& places, bool compound,
                  bool triplet)
{
    for (unsigned set = 0; set < 1U << places.size(); ++set) {
        Division one;
        for (std::size_t i = 0; i < places.size(); ++i)
            if ((set >> i & 1U) != 0) {
                one.at.push_back(places[i]);
                one.cost += costOf(places[i], compound);
            }
        bool const thirds = std::ranges::any_of(one.at, [](int at) { return at % 12 != 0; });
        if (triplet && !thirds) continue; // it is among the others
        one.triplet = triplet;
        if (triplet && one.at.size() < places.size()) one.cost += 3;
        into.push_back(std::move(one));
    }
}

std::vector<Division> divisionsOf(bool compound)
{
    std::vector<Division> out;
    if (compound) {
        addDivisions(out, {0, 2, 4, 6, 8, 10}, true, false);
    } else {
        addDivisions(out, {0, 3, 6, 9}, false, false);
        addDivisions(out, {0, 4, 8}, false, true);
    }
    return out;
}

// The beat that is divided: of 2/2 the crotchet, as its quavers are what is played.
Length dividedBeat(music::Meter meter)
{
    if (meter.unit == 8 && meter.beats % 3 == 0) return {Rational(3, 8)};
    return {Rational(1, std::max(meter.unit, 4))};
}

// One beat of the best way so far: how many notes are used up, by which division, from what.
struct Step {
    double cost = 0;
    std::size_t before = 0; // notes used up before the beat
    int division = -1;
    std::vector<std::size_t> skipped;
};
using Steps = std::map<std::size_t, Step>;

struct InBeat {
    std::size_t note = 0;
    int beat = 0;
    int part = 0;
};

class Path {
public:
    Path(std::vector<double> const& at, double beat, std::vector<Division> const& divisions)
        : m_at(at), m_beat(beat), m_divisions(divisions),
          m_first(at.empty() ? 0 : static_cast<int>(std::floor(at.front() / beat - 0.5)))
    {
        m_steps.emplace_back().emplace(std::size_t{0}, Step{});
        int const beats =
            at.empty() ? 0 : static_cast<int>(std::floor(at.back() / beat + 0.5)) - m_first + 1;
        for (int i = 0; i < beats; ++i) walk(m_first + i);
    }

    double cost() const { return m_steps.back().at(m_at.size()).cost; }

    // The notes that have a place; `triplets`: beats that are divided in three.
    std::vector<InBeat> placed(int& triplets) const
    {
        std::vector<InBeat> out;
        std::size_t used = m_at.size();
        triplets = 0;
        for (std::size_t i = m_steps.size() - 1; i > 0; --i) {
            Step const& step = m_steps[i].at(used);
            Division const& division = m_divisions[static_cast<std::size_t>(step.division)];
            if (division.triplet) ++triplets;
            std::size_t note = used;
            for (std::size_t p = division.at.size(); p > 0; --p) {
                do --note;
                while (std::ranges::count(step.skipped, note) > 0);
                out.push_back({note, m_first + static_cast<int>(i) - 1, division.at[p - 1]});
            }
            used = step.before;
        }
        std::ranges::reverse(out);
        return out;
    }

private:
    double off(std::size_t note, int beat, int part) const
    {
        return m_at[note] - m_beat * (beat + static_cast<double>(part) / parts);
    }

    void walk(int beat)
    {
        Steps next;
        bool const last = beat + 1 > std::floor(m_at.back() / m_beat + 0.5);
        for (auto const& [used, before] : m_steps.back())
            for (std::size_t d = 0; d < m_divisions.size(); ++d) {
                tryOne(next, used, before.cost, beat, static_cast<int>(d), {});
                // One note that fits nowhere.
                for (std::size_t i = 0; i <= m_divisions[d].at.size(); ++i)
                    if (used + i < m_at.size())
                        tryOne(next, used, before.cost + leftOutCost, beat, static_cast<int>(d),
                               {used + i});
            }
        // Of those that leave a note too far behind, or at the end one over, nothing comes.
        std::erase_if(next, [&](auto const& step) {
            std::size_t const used = step.first;
            return used < m_at.size() && (last || m_at[used] < (beat + 0.5) * m_beat);
        });
        if (next.empty()) next = rest(beat, last);
        m_steps.push_back(std::move(next));
    }

    void tryOne(Steps& next, std::size_t used, double cost, int beat, int d,
                std::vector<std::size_t> const& skipped) const
    {
        Division const& division = m_divisions[static_cast<std::size_t>(d)];
        std::size_t const end = used + division.at.size() + skipped.size();
        if (end > m_at.size()) return;
        cost += division.cost;
        std::size_t p = 0;
        for (std::size_t note = used; note < end; ++note) {
            if (std::ranges::count(skipped, note) > 0) continue;
            double const away = off(note, beat, division.at[p++]);
            if (std::abs(away) > 0.5 * m_beat) return;
            cost += away * away / (2 * scatter * scatter);
        }
        auto const [known, isNew] = next.try_emplace(end, Step{cost, used, d, skipped});
        if (!isNew && cost < known->second.cost) known->second = {cost, used, d, skipped};
    }

    // Far too many notes for the beat: the first of them is kept.
    Steps rest(int beat, bool last) const
    {
        Steps next;
        std::size_t const used = m_steps.back().begin()->first;
        std::size_t end = used;
        while (end < m_at.size() && (last || m_at[end] < (beat + 0.5) * m_beat)) ++end;
        Step step{m_steps.back().begin()->second.cost + leftOutCost, used, 0, {}};
        for (std::size_t d = 0; d < m_divisions.size(); ++d)
            if (m_divisions[d].at == std::vector<int>{0} && end > used)
                step.division = static_cast<int>(d);
        for (std::size_t note = used + 1; note < end; ++note) step.skipped.push_back(note);
        next.emplace(end, std::move(step));
        return next;
    }

    std::vector<double> const& m_at;
    double m_beat;
    std::vector<Division> const& m_divisions;
    int m_first;
    std::vector<Steps> m_steps;
};

// Of what begins together the highest.
int dropTogether(std::vector<HeardNote>& played)
{
    std::ranges::stable_sort(played, {}, &HeardNote::at);
    std::vector<HeardNote> out;
    for (HeardNote const& note : played) {
        if (out.empty() || note.at - out.back().at > together)
            out.push_back(note);
        else if (note.midi > out.back().midi)
            out.back() = {out.back().at, note.until, note.midi};
    }
    auto const dropped = static_cast<int>(played.size() - out.size());
    played = std::move(out);
    return dropped;
}

double middle(std::vector<double> all)
{
    if (all.empty()) return 0;
    auto const half = all.begin() + static_cast<std::ptrdiff_t>(all.size() / 2);
    std::nth_element(all.begin(), half, all.end());
    return *half;
}

// The notes in their places, if she is about so far behind the clicks.
struct Lagged {
    double cost = 0;
    double late = 0;
    int triplets = 0;
    std::vector<InBeat> placed;
};

Lagged laggedBy(double guess, std::vector<HeardNote> const& played, double beatSeconds,
                std::vector<Division> const& divisions)
{
    Lagged out;
    out.late = guess;
    // Twice: how far it is exactly is known once the notes have their places.
    for (int round = 0; round < 2; ++round) {
        std::vector<double> at;
        for (HeardNote const& note : played) at.push_back(note.at - out.late);
        Path const path(at, beatSeconds, divisions);
        out.placed = path.placed(out.triplets);
        out.cost = path.cost() + out.late * out.late / (2 * usualLag * usualLag);
        if (round > 0) break;
        std::vector<double> off;
        for (InBeat const& one : out.placed)
            off.push_back(played[one.note].at -
                          beatSeconds * (one.beat + static_cast<double>(one.part) / parts));
        out.late = std::clamp(middle(off), -mostLate, mostLate);
    }
    return out;
}

// Up to the next note, or less where its key was let go well before.
Length lengthOf(HeardNote const& note, Length at, Length end, Length beat, double secondsAWhole,
                double late)
{
    if (!note.until || *note.until - note.at < shortKey) return end - at;
    double const halves = (*note.until - late) / secondsAWhole / beat.wholes.toDouble() * 2;
    Length const let{beat.wholes *
                     Rational(static_cast<std::int64_t>(std::llround(halves)), 2)};
    Length const half = beat * Rational(1, 2);
    return let > at && let + half <= end ? let - at : end - at;
}

} // namespace

Taken quantised(std::vector<HeardNote> played, music::Meter meter, double secondsAWhole)
{
    Taken out;
    out.leftOut = dropTogether(played);
    if (played.empty() || !(secondsAWhole > 0)) return out;
    Length const beat = dividedBeat(meter);
    double const beatSeconds = secondsAWhole * beat.wholes.toDouble();
    std::vector<Division> const divisions =
        divisionsOf(meter.unit == 8 && meter.beats % 3 == 0);
    std::vector<InBeat> placed;
    double least = std::numeric_limits<double>::infinity();
    for (double const guess : {0.0, 0.05, 0.1, -0.05}) {
        Lagged one = laggedBy(guess, played, beatSeconds, divisions);
        if (one.cost >= least) continue;
        least = one.cost;
        out.late = one.late;
        out.triplets = one.triplets;
        placed = std::move(one.placed);
    }
    out.leftOut += static_cast<int>(played.size() - placed.size());
    auto const place = [&](InBeat const& one) {
        return beat * (Rational(one.beat) + Rational(one.part, parts));
    };
    Length const bar = barLength(meter);
    for (std::size_t i = 0; i < placed.size(); ++i) {
        Length const at = place(placed[i]);
        Length const end = i + 1 < placed.size()
                               ? place(placed[i + 1])
                               : bar * Rational(floorOf(at.wholes / bar.wholes) + 1);
        HeardNote const& note = played[placed[i].note];
        out.notes.push_back(
            {at, lengthOf(note, at, end, beat, secondsAWhole, out.late), note.midi});
    }
    return out;
}

} // namespace tune
