#include "core/hands/difficulty.h"

#include "core/base/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace hands {

namespace {

using arrange::Arrangement;
using arrange::HandNote;
using harp::Side;

constexpr double hardest = 6; // however far beyond the last level
constexpr double octaveGaps = 7;
constexpr int leapFrom = 4;           // gaps by which a whole hand moves: less is no leap
constexpr double handOfTheScale = 10; // strings that a hand of any size holds with comfort

bool isLeft(Demand demand)
{
    return demand == Demand::LeftRate || demand == Demand::LeftSameString ||
           demand == Demand::Reach || demand == Demand::Leap || demand == Demand::Pattern;
}
bool isRight(Demand demand)
{
    return demand == Demand::RightRate || demand == Demand::RightSameString ||
           demand == Demand::Crossing;
}

// The level whose limit a value is, where `limits` rise with the levels.
double levelOf(double value, std::vector<double> const& limits)
{
    if (value <= limits.front()) return std::max(0.0, value / limits.front());
    for (std::size_t i = 1; i < limits.size(); ++i) {
        if (value > limits[i]) continue;
        double const share = (value - limits[i - 1]) / (limits[i] - limits[i - 1]);
        return static_cast<double>(i) + share;
    }
    double const beyond = (value - limits.back()) / limits.back();
    return std::min(hardest, static_cast<double>(limits.size()) + beyond);
}

template<typename Limit>
std::vector<double> limitsOf(std::span<harp::Level const> levels, Limit limit)
{
    std::vector<double> out;
    for (harp::Level const& level : levels) out.push_back(limit(level));
    return out;
}

class Measuring {
public:
    Measuring(Arrangement const& arrangement, std::span<harp::Level const> levels,
              pattern::PatternBook const& book, DifficultyScale const& scale)
        : m_arrangement(arrangement), m_levels(levels), m_book(book), m_scale(scale),
          m_notes(arrange::handNotes(arrangement)), m_byBar(arrangement.tune.bars.size(), {})
    {}

    Difficulty all()
    {
        rates(Side::Left);
        rates(Side::Right);
        sameStrings();
        shapes();
        leaps();
        crossings();
        flips();
        return summedUp();
    }

private:
    using Hardest = std::map<Demand, Asked>;

    double seconds(music::Length length) const
    {
        return length.wholes.toDouble() * 4 * 60 / tune::quartersPerMinute(m_arrangement.tempo);
    }

    // The words are asked for where nothing harder of the kind stands in the bar already.
    template<typename Words>
    void ask(tune::PlayedBarIndex playedBar, Demand demand, double level, Words const& words)
    {
        tune::BarIndex const bar = m_arrangement.playing.bars[playedBar].bar;
        auto const known = m_byBar[bar].find(demand);
        if (known != m_byBar[bar].end() && known->second.level >= level) return;
        m_byBar[bar].insert_or_assign(demand, Asked{demand, level, words()});
    }

    // Notes a second over three onsets that follow each other.
    void rates(Side side)
    {
        bool const left = side == Side::Left;
        auto const limits = limitsOf(m_levels, [&](harp::Level const& level) {
            return left ? level.leftNotesPerSecond : level.rightNotesPerSecond;
        });
        std::vector<HandNote const*> onsets;
        for (HandNote const& note : m_notes)
            if (note.hand == side && (onsets.empty() || onsets.back()->at < note.at))
                onsets.push_back(&note);
        for (std::size_t i = 2; i < onsets.size(); ++i) {
            double const rate = 2 / seconds(onsets[i]->at - onsets[i - 2]->at);
            ask(onsets[i]->playedBar, left ? Demand::LeftRate : Demand::RightRate,
                levelOf(rate, limits), [&] {
                    return left ? base::say("left hand: {:.1f} notes a second", rate)
                                : base::say("right hand: {:.1f} notes a second", rate);
                });
        }
    }

    void sameStrings()
    {
        auto const limits = limitsOf(
            m_levels, [](harp::Level const& level) { return level.sameStringPerSecond; });
        std::map<std::pair<Side, int>, music::Moment> last;
        for (HandNote const& note : m_notes) {
            auto const found = last.find({note.hand, note.string});
            if (found != last.end() && found->second < note.at) {
                double const rate = 1 / seconds(note.at - found->second);
                bool const left = note.hand == Side::Left;
                ask(note.playedBar, left ? Demand::LeftSameString : Demand::RightSameString,
                    levelOf(rate, limits), [&] {
                        return left ? base::say(
                                          "left hand: string {} plucked again after {:.2f} s",
                                          note.string + 1, 1 / rate)
                                    : base::say(
                                          "right hand: string {} plucked again after {:.2f} s",
                                          note.string + 1, 1 / rate);
                    });
            }
            last.insert_or_assign({note.hand, note.string}, note.at);
        }
    }

    // The left hand's notes of each position as it is played.
    std::map<arrange::PlayedPositionIndex, std::vector<HandNote const*>> byPosition() const
    {
        std::map<arrange::PlayedPositionIndex, std::vector<HandNote const*>> out;
        for (HandNote const& note : m_notes)
            if (note.hand == Side::Left && note.position) out[*note.position].push_back(&note);
        return out;
    }

    static std::pair<harp::StringIndex, harp::StringIndex>
    ends(std::vector<HandNote const*> const& notes)
    {
        auto const [low, high] =
            std::minmax_element(notes.begin(), notes.end(), [](auto const* a, auto const* b) {
                return a->string < b->string;
            });
        return {(*low)->string, (*high)->string};
    }

    // How wide each shape is for this hand, and how far its pattern is in the book.
    void shapes()
    {
        std::vector<double> const reach(m_scale.reachStrings.begin(),
                                        m_scale.reachStrings.end());
        auto const played = arrange::playedPositions(m_arrangement);
        for (auto const& [position, notes] : byPosition()) {
            auto const [low, high] = ends(notes);
            double const mm = harp::distanceMm(m_arrangement.harp, low, high);
            double const strings = 1 + (handOfTheScale - 1) * mm / m_arrangement.hand.comfortMm;
            ask(notes.front()->playedBar, Demand::Reach, levelOf(strings, reach), [&] {
                return base::say("left hand: a shape {} strings wide", high - low + 1);
            });
            auto const& voicing = m_arrangement.positions[played[position].position].voicing;
            for (pattern::Pattern const& p : m_book.patterns)
                if (p.name == voicing.pattern)
                    ask(notes.front()->playedBar, Demand::Pattern, static_cast<double>(p.level),
                        [&] {
                            return base::say("left hand: {} is a level {} pattern", p.name,
                                             p.level);
                        });
        }
    }

    // Moves of the whole left hand, in octaves a second.
    void leaps()
    {
        auto const limits = limitsOf(
            m_levels, [](harp::Level const& level) { return 1 / level.octaveLeapSeconds; });
        std::vector<HandNote const*> const* before = nullptr;
        auto const all = byPosition();
        for (auto const& [position, notes] : all) {
            if (before) {
                auto const [lowBefore, highBefore] = ends(*before);
                auto const [low, high] = ends(notes);
                int const down = std::max(lowBefore - low, 0);
                int const up = std::max(high - highBefore, 0);
                int const gaps =
                    (low - lowBefore < 0) != (high - highBefore < 0)
                        ? 0
                        : std::min(std::abs(low - lowBefore), std::abs(high - highBefore));
                double const time = seconds(notes.front()->at - before->back()->at);
                if (gaps >= leapFrom && time > 0)
                    ask(notes.front()->playedBar, Demand::Leap,
                        levelOf(gaps / octaveGaps / time, limits), [&] {
                            return down > up
                                       ? base::say(
                                             "left hand: moves {} strings down in {:.1f} s",
                                             gaps, time)
                                       : base::say("left hand: moves {} strings up in {:.1f} s",
                                                   gaps, time);
                        });
            }
            before = &notes;
        }
    }

    // A linked group whose first finger comes under or over the one before.
    void crossings()
    {
        auto const played = arrange::playedGroups(m_arrangement, m_notes);
        std::map<Side, HandNote const*> last;
        for (arrange::PlayedGroup const& group : played) {
            HandNote const& first = m_notes[static_cast<std::size_t>(group.notes.front())];
            auto const found = last.find(first.hand);
            bool const linked =
                m_arrangement.groups[static_cast<std::size_t>(group.group)].linked;
            if (linked && found != last.end() && first.hand == Side::Right) {
                HandNote const& before = *found->second;
                bool const rises = before.string < first.string;
                if (rises ? before.finger < first.finger : before.finger > first.finger)
                    ask(first.playedBar, Demand::Crossing, m_scale.crossingLevel, [&] {
                        return rises
                                   ? base::say("right hand: finger {} crosses under finger {}",
                                               first.finger, before.finger)
                                   : base::say("right hand: finger {} crosses over finger {}",
                                               first.finger, before.finger);
                    });
            }
            last[first.hand] = &m_notes[static_cast<std::size_t>(group.notes.back())];
        }
    }

    // The first level that turns levers in so little time.
    void flips()
    {
        for (harp::Flip const& flip : m_arrangement.levers.flips) {
            tune::PlayedBar const& bar = m_arrangement.playing.bars[flip.playedBar];
            music::Meter const meter = m_arrangement.tune.bars[bar.bar].meter;
            double const beats = ((flip.freeTo - flip.freeFrom) / beatLength(meter)).toDouble();
            auto const able =
                std::find_if(m_levels.begin(), m_levels.end(), [&](harp::Level const& level) {
                    return level.flips && level.flipFreeBeats <= beats;
                });
            double const level = able == m_levels.end() ? static_cast<double>(m_levels.size())
                                                        : static_cast<double>(able->number);
            ask(flip.playedBar, Demand::Flip, level,
                [&] { return base::say("a lever flip in {:.1f} beats", beats); });
        }
    }

    double levelOfBar(Hardest const& asked) const
    {
        double left = 0;
        double right = 0;
        double most = 0;
        for (auto const& [demand, what] : asked) {
            if (isLeft(demand)) left = std::max(left, what.level);
            if (isRight(demand)) right = std::max(right, what.level);
            most = std::max(most, what.level);
        }
        return m_scale.hardestPart * most + (1 - m_scale.hardestPart) * (left + right) / 2;
    }

    static std::vector<Asked> hardestFirst(Hardest const& asked)
    {
        std::vector<Asked> out;
        for (auto const& [demand, what] : asked) out.push_back(what);
        std::stable_sort(out.begin(), out.end(),
                         [](Asked const& a, Asked const& b) { return a.level > b.level; });
        return out;
    }

    Difficulty summedUp() const
    {
        Difficulty out;
        Hardest everywhere;
        std::vector<double> levels;
        for (Hardest const& asked : m_byBar) {
            out.bars.push_back({levelOfBar(asked), hardestFirst(asked)});
            levels.push_back(out.bars.back().level);
            for (auto const& [demand, what] : asked) {
                auto const [place, isNew] = everywhere.try_emplace(demand, what);
                if (!isNew && place->second.level < what.level) place->second = what;
            }
        }
        out.reasons = hardestFirst(everywhere);
        if (levels.empty()) return out;
        std::sort(levels.rbegin(), levels.rend());
        auto const counted = std::max<std::size_t>(
            1, static_cast<std::size_t>(
                   std::lround(m_scale.hardestBars * static_cast<double>(levels.size()))));
        for (std::size_t i = 0; i < counted; ++i) out.level += levels[i];
        out.level /= static_cast<double>(counted);
        return out;
    }

    Arrangement const& m_arrangement;
    std::span<harp::Level const> m_levels;
    pattern::PatternBook const& m_book;
    DifficultyScale const& m_scale;
    std::vector<HandNote> m_notes;
    base::List<tune::BarIndex, Hardest> m_byBar;
};

} // namespace

Difficulty difficultyOf(Arrangement const& arrangement, std::span<harp::Level const> levels,
                        pattern::PatternBook const& book, DifficultyScale const& scale)
{
    return Measuring(arrangement, levels, book, scale).all();
}

} // namespace hands
