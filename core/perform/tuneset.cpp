#include "core/perform/tuneset.h"

#include "core/base/words.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace perform {

namespace {

// Above it no lever matters to the tune.
harp::StringIndex highestString(arrange::Arrangement const& arrangement)
{
    harp::StringIndex highest = 0;
    for (arrange::HandNote const& note : arrange::handNotes(arrangement))
        highest = std::max(highest, note.string);
    return highest;
}

// As the levers stand once it has been played.
void playThrough(harp::LeverSetting& levers, arrange::Arrangement const& arrangement)
{
    for (harp::Flip const& flip : arrangement.levers.flips) levers[flip.string] = flip.to;
}

std::vector<levers::LeverChange> changed(harp::LeverSetting& levers,
                                         arrange::Arrangement const& next)
{
    std::vector<levers::LeverChange> out;
    harp::StringIndex const top = highestString(next);
    for (harp::StringIndex string = 0; string <= top; ++string) {
        if (levers[string] == next.levers.setup[string]) continue;
        levers[string] = next.levers.setup[string];
        out.push_back({string, levers[string]});
    }
    return out;
}

std::string joinedTitles(std::vector<arrange::Arrangement> const& arrangements)
{
    std::string title;
    for (arrange::Arrangement const& one : arrangements)
        title += (title.empty() ? "" : " / ") + one.tune.title;
    return title;
}

// A schedule to which others are added, each so much later.
class Joining {
public:
    void add(Schedule const& from, Seconds shift, Seconds until)
    {
        for (Event event : from.events) {
            if (event.at >= until) continue;
            event.at += shift;
            event.position.reset();
            m_all.events.push_back(event);
        }
        for (Click click : from.clicks) {
            click.at += shift;
            m_all.clicks.push_back(click);
        }
        for (Tuned tuned : from.tuned) {
            tuned.at += shift;
            m_all.tuned.push_back(tuned);
        }
        m_all.counted = shift + from.counted;
        m_all.ringing = std::max(m_all.ringing, shift + from.ringing);
    }

    // One lever after another, each in the middle of its time.
    void flip(TuneOfSet const& next)
    {
        Seconds const each =
            next.pause / static_cast<double>(std::max<std::size_t>(1, next.changes.size()));
        Seconds at = m_all.counted + each / 2;
        for (levers::LeverChange const& change : next.changes) {
            harp::HarpString const& string = next.arrangement.harp.string(change.string);
            m_all.events.push_back({at,
                                    Event::Kind::Damp,
                                    change.string,
                                    music::midi(harp::sounding(string, change.to)),
                                    1,
                                    harp::Side::Left,
                                    {}});
            m_all.tuned.push_back(
                {at, change.string, music::midi(harp::sounding(string, change.to))});
            at += each;
        }
        m_all.counted += next.pause;
    }

    Seconds counted() const { return m_all.counted; }
    void beginAt(Seconds begins) { m_all.begins = begins; }

    Schedule ordered() &&
    {
        auto const byTime = [](auto& all) {
            std::stable_sort(all.begin(), all.end(),
                             [](auto const& a, auto const& b) { return a.at < b.at; });
        };
        std::stable_sort(m_all.events.begin(), m_all.events.end(),
                         [](Event const& a, Event const& b) {
                             return std::pair(a.at, a.kind == Event::Kind::Pluck) <
                                    std::pair(b.at, b.kind == Event::Kind::Pluck);
                         });
        byTime(m_all.clicks);
        byTime(m_all.tuned);
        return std::move(m_all);
    }

private:
    Schedule m_all;
};

} // namespace

PlayedSet setOf(std::string title, std::vector<arrange::Arrangement> arrangements)
{
    PlayedSet set{std::move(title), {}};
    if (set.title.empty()) set.title = joinedTitles(arrangements);
    harp::LeverSetting now;
    for (arrange::Arrangement& arrangement : arrangements) {
        TuneOfSet tune{std::move(arrangement), {}, 0};
        if (now.empty())
            now = tune.arrangement.levers.setup;
        else
            tune.changes = changed(now, tune.arrangement);
        tune.pause = levers::secondsALever * static_cast<double>(tune.changes.size());
        playThrough(now, tune.arrangement);
        set.tunes.push_back(std::move(tune));
    }
    return set;
}

std::string changesBySide(harp::Harp const& harp,
                          std::vector<levers::LeverChange> const& changes)
{
    std::vector<std::string> parts;
    for (auto const& [lever, word] : {std::pair{harp::Lever::Up, base::said("flip|up")},
                                      std::pair{harp::Lever::Down, base::said("flip|down")}}) {
        std::vector<std::string> strings;
        for (levers::LeverChange const& change : changes) {
            if (change.to != lever) continue;
            music::Pitch const open = harp.string(change.string).open;
            strings.push_back(fmt::format("{}{}", harp::harpOctave(open),
                                          music::plain(music::PitchName{open.letter, 0})));
        }
        if (!strings.empty())
            parts.push_back(fmt::format("{} {}", fmt::join(strings, " "), word));
    }
    return fmt::format("{}", fmt::join(parts, ", "));
}

std::string changeLine(TuneOfSet const& tune)
{
    if (tune.changes.empty()) return base::said("Leave the levers as they are");
    return base::say("Flip {} (about {:.0f} s)",
                     changesBySide(tune.arrangement.harp, tune.changes), std::ceil(tune.pause));
}

Course courseOf(PlayedSet const& set, std::vector<Course> const& tunes)
{
    Joining all;
    for (std::size_t i = 0; i < tunes.size(); ++i) {
        if (i > 0) all.flip(set.tunes[i]);
        for (std::size_t r = 0; r < tunes[i].rounds.size(); ++r) {
            Schedule const& round = *tunes[i].rounds[r];
            bool const first = r == 0;
            bool const last = r + 1 == tunes[i].rounds.size();
            bool const straightOn =
                first && i > 0 && set.tunes[i].changes.empty() && round.clicks.empty();
            Seconds const shift =
                all.counted() -
                (first && !straightOn ? 0 : std::min(round.begins, all.counted()));
            if (first && i == 0) all.beginAt(round.begins);
            all.add(round, shift, last ? round.ringing + 1 : round.counted);
        }
    }
    return onceOnly(std::move(all).ordered());
}

} // namespace perform
