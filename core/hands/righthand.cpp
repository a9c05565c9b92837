#include "core/hands/righthand.h"

#include "core/hands/fingerpath.h"
#include "core/hands/pauses.h"
#include "core/harp/seats.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

namespace hands {

namespace {

using arrange::Arrangement;

// Where a plucked note comes from, and its number there.
enum class Source { Tune, Added, Given };
struct Voice {
    harp::StringIndex string = 0;
    Source source = Source::Tune;
    int index = 0; // of Note::pitches, AddedBelow::pitches, or Arrangement::given
};

// What the right hand plucks at one written time.
struct Struck {
    tune::BarIndex bar = 0;
    music::Length at;        // from the start of the bar
    std::optional<tune::NoteIndex> note; // none where only a given note is plucked
    std::vector<Voice> voices;
    Stroke pluck;
};

// When each written note is first played, by bar and note.
using FirstPlayed = std::map<std::pair<tune::BarIndex, tune::NoteIndex>, music::Moment>;

FirstPlayed firstPlayed(tune::Playing const& playing)
{
    FirstPlayed out;
    for (tune::PlayedNote const& note : playing.notes) {
        tune::BarIndex const bar = playing.bars[note.playedBar].bar;
        out.try_emplace({bar, note.note}, note.at);
    }
    return out;
}

// The string that a pitch is plucked on. One that the harp cannot give then is fingered as if
// its string had it, at the nearest end of the harp.
harp::StringIndex stringOf(Arrangement const& arrangement, music::Pitch pitch, music::Moment at)
{
    harp::Harp const& harp = arrangement.harp;
    if (auto const string = stringAtMoment(harp, arrangement.levers, pitch, at)) return *string;
    if (auto const seat = seatOf(harp, pitch)) return seat->string;
    harp::StringIndex const own(diatonicStep(pitch) - diatonicStep(harp.string(0).open));
    return std::clamp(own, harp::StringIndex(0), harp.highest());
}

std::vector<harp::StringIndex> pluckedStrings(std::vector<Voice> const& voices)
{
    std::vector<harp::StringIndex> strings;
    for (Voice const& voice : voices) strings.push_back(voice.string);
    std::sort(strings.begin(), strings.end());
    strings.erase(std::unique(strings.begin(), strings.end()), strings.end());
    // A chord of more than four is rolled; the lowest notes share finger 4.
    if (strings.size() > harp::fingers)
        strings.erase(strings.begin(), strings.end() - harp::fingers);
    return strings;
}

bool continues(tune::Note const* before, tune::Note const& note)
{
    return before && before->tied && before->pitches == note.pitches;
}

// Every note of the tune that begins to sound, in written order, with what is added to it.
std::vector<Struck> tuneStruck(Arrangement const& arrangement)
{
    FirstPlayed const played = firstPlayed(arrangement.playing);
    std::map<std::pair<tune::BarIndex, tune::NoteIndex>, arrange::AddedBelow const*> below;
    for (arrange::AddedBelow const& a : arrangement.added) below[{a.bar, a.note}] = &a;
    std::vector<Struck> out;
    tune::Note const* before = nullptr; // the note just before, when it was no rest
    for (tune::BarIndex const b : arrangement.tune.bars.indices()) {
        tune::Bar const& bar = arrangement.tune.bars[b];
        for (tune::NoteIndex const n : bar.notes.indices()) {
            tune::Note const& note = bar.notes[n];
            bool const begins = !note.pitches.empty() && !continues(before, note);
            before = note.pitches.empty() ? nullptr : &note;
            if (!begins) continue;
            auto const first = played.find({b, n});
            music::Moment const at = first == played.end() ? music::Moment{} : first->second;
            Struck struck{b, note.at, n, {}, {}};
            for (std::size_t i = 0; i < note.pitches.size(); ++i)
                struck.voices.push_back({stringOf(arrangement, note.pitches[i], at),
                                         Source::Tune, static_cast<int>(i)});
            if (auto const found = below.find({b, n}); found != below.end())
                for (std::size_t i = 0; i < found->second->pitches.size(); ++i)
                    struck.voices.push_back(
                        {stringOf(arrangement, found->second->pitches[i], at), Source::Added,
                         static_cast<int>(i)});
            out.push_back(std::move(struck));
        }
    }
    return out;
}

// Notes taken from the left hand join what is plucked with them, or stand alone.
void addGiven(Arrangement const& arrangement, std::vector<Struck>& struck)
{
    for (std::size_t g = 0; g < arrangement.given.size(); ++g) {
        arrange::GivenNote const& given = arrangement.given[g];
        auto const& p = arrangement.positions[given.position];
        auto const& note = p.voicing.notes[static_cast<std::size_t>(given.note)];
        std::pair const place(p.position.bar, p.position.at + note.at);
        auto const later = std::find_if(struck.begin(), struck.end(), [&](Struck const& s) {
            return std::pair(s.bar, s.at) >= place;
        });
        Voice const voice{note.string, Source::Given, static_cast<int>(g)};
        if (later != struck.end() && std::pair(later->bar, later->at) == place)
            later->voices.push_back(voice);
        else
            struck.insert(later, {place.first, place.second, std::nullopt, {voice}, {}});
    }
}

// From the start of the first bar to each bar, as written.
base::List<tune::BarIndex, music::Length> barStarts(tune::Tune const& tune)
{
    base::List<tune::BarIndex, music::Length> out;
    music::Length at;
    for (tune::Bar const& bar : tune.bars) {
        out.push_back(at);
        at = at + bar.length;
    }
    return out;
}

bool restsBetween(tune::Tune const& tune, Struck const& before, Struck const& now)
{
    for (tune::BarIndex b = before.bar; b <= now.bar; ++b)
        for (tune::Note const& note : tune.bars[b].notes)
            if (note.pitches.empty() &&
                std::pair(b, note.at) > std::pair(before.bar, before.at) &&
                std::pair(b, note.at) < std::pair(now.bar, now.at))
                return true;
    return false;
}

void addPlucks(Arrangement const& arrangement, std::vector<Struck>& struck)
{
    auto const starts = barStarts(arrangement.tune);
    for (std::size_t i = 0; i < struck.size(); ++i) {
        Struck& now = struck[i];
        now.pluck.strings = pluckedStrings(now.voices);
        if (i == 0) continue;
        Struck const& before = struck[i - 1];
        auto const whole = [&](Struck const& s) { return starts[s.bar] + s.at; };
        now.pluck.before =
            pauseFor(whole(now) - whole(before), restsBetween(arrangement.tune, before, now),
                     arrangement.tune.bars[now.bar].meter, arrangement.tempo,
                     arrangement.level.rightNotesPerSecond);
    }
}

// The player's own fingers. Answers those that no pluck can keep.
std::vector<int> addSet(std::span<arrange::SetFinger const> set, std::vector<Struck>& struck)
{
    std::vector<int> unkept;
    for (std::size_t i = 0; i < set.size(); ++i) {
        if (set[i].hand != harp::Side::Right) continue;
        auto const found = std::find_if(struck.begin(), struck.end(), [&](Struck const& s) {
            return s.bar == set[i].bar && s.at == set[i].at;
        });
        auto const voice = static_cast<std::size_t>(set[i].voice);
        bool kept = found != struck.end() && voice < found->pluck.strings.size();
        if (kept) {
            Stroke with = found->pluck;
            with.set.resize(with.strings.size());
            with.set[voice] = set[i].finger;
            kept = canKeepSet(with);
            if (kept) found->pluck = std::move(with);
        }
        if (!kept) unkept.push_back(static_cast<int>(i));
    }
    return unkept;
}

// The finger of a voice from those of the plucked strings.
int fingerOf(Struck const& struck, Voice const& voice, Fingers const& fingers)
{
    auto const& strings = struck.pluck.strings;
    auto const place = std::lower_bound(strings.begin(), strings.end(), voice.string);
    return fingers[static_cast<std::size_t>(place - strings.begin())];
}

bool inReach(Arrangement const& arrangement, Stroke const& pluck, Fingers const& fingers)
{
    for (std::size_t low = 0; low < fingers.size(); ++low)
        for (std::size_t high = low + 1; high < fingers.size(); ++high)
            if (!lieTogether(arrangement.harp, arrangement.hand,
                             {pluck.strings[low], fingers[low]},
                             {pluck.strings[high], fingers[high]}))
                return false;
    return true;
}

// Whether there are strings that got no finger of their own.
bool hasMoreStrings(Struck const& struck)
{
    return std::any_of(struck.voices.begin(), struck.voices.end(), [&](Voice const& voice) {
        return !std::binary_search(struck.pluck.strings.begin(), struck.pluck.strings.end(),
                                   voice.string);
    });
}

bool opensGroup(Join join) { return join != Join::Stays && join != Join::Slides; }

class Account {
public:
    explicit Account(Arrangement const& arrangement) : m_arrangement(arrangement)
    {
        m_out.added = arrangement.added;
        m_out.given = arrangement.given;
    }

    void add(Struck const& struck, Fingers const& fingers, Join join)
    {
        addFingers(struck, fingers);
        addToGroups(struck, fingers, join);
    }

    RightHand take() { return std::move(m_out); }

private:
    void addFingers(Struck const& struck, Fingers const& fingers)
    {
        arrange::NoteFingers note{
            struck.bar, struck.note.value_or(tune::NoteIndex(0)), {}, false};
        note.rolled = hasMoreStrings(struck) || !inReach(m_arrangement, struck.pluck, fingers);
        for (Voice const& voice : struck.voices) {
            int const finger = fingerOf(struck, voice, fingers);
            if (voice.source == Source::Tune) note.fingers.push_back(finger);
            if (voice.source == Source::Given)
                m_out.given[static_cast<std::size_t>(voice.index)].finger = finger;
            if (voice.source == Source::Added) {
                auto const below =
                    std::find_if(m_out.added.begin(), m_out.added.end(), [&](auto const& a) {
                        return a.bar == struck.bar && a.note == struck.note;
                    });
                below->fingers.resize(below->pitches.size());
                below->fingers[static_cast<std::size_t>(voice.index)] = finger;
            }
        }
        if (struck.note) m_out.fingers.push_back(std::move(note));
    }

    void addToGroups(Struck const& struck, Fingers const& fingers, Join join)
    {
        auto& groups = m_out.groups;
        for (std::size_t i = 0; i < fingers.size(); ++i) {
            arrange::GroupNote note{struck.bar, struck.at, struck.pluck.strings[i], fingers[i],
                                    std::nullopt};
            for (Voice const& voice : struck.voices)
                if (voice.string == note.string && voice.source == Source::Given)
                    note.position =
                        m_arrangement.given[static_cast<std::size_t>(voice.index)].position;
            bool const first = i == 0 && (groups.empty() || opensGroup(join));
            bool const apart = i > 0 && !joins(groups.back(), note);
            if (first || apart)
                groups.push_back({harp::Side::Right,
                                  apart || (!groups.empty() && join == Join::Linked),
                                  {}});
            groups.back().notes.push_back(note);
        }
    }

    // Of a chord that is rolled not all fingers lie on their strings at once.
    bool joins(arrange::PlacingGroup const& group, arrange::GroupNote const& note) const
    {
        return std::all_of(
            group.notes.begin(), group.notes.end(), [&](arrange::GroupNote const& other) {
                return std::tie(other.bar, other.at) != std::tie(note.bar, note.at) ||
                       lieTogether(m_arrangement.harp, m_arrangement.hand,
                                   {other.string, other.finger}, {note.string, note.finger});
            });
    }

    Arrangement const& m_arrangement;
    RightHand m_out;
};

} // namespace

RightHand rightHand(Arrangement const& arrangement, std::span<arrange::SetFinger const> set)
{
    std::vector<Struck> struck = tuneStruck(arrangement);
    addGiven(arrangement, struck);
    addPlucks(arrangement, struck);
    std::vector<int> unkept = addSet(set, struck);

    std::vector<Stroke> plucks;
    for (Struck const& s : struck) plucks.push_back(s.pluck);
    harp::Level const& level = arrangement.level;
    FingerPath const path =
        cheapestFingers(plucks, {arrangement.harp, arrangement.hand, level.crosses,
                                 level.slides, level.rightFingers});

    Account account(arrangement);
    for (std::size_t i = 0; i < struck.size(); ++i)
        account.add(struck[i], path.fingers[i], path.joins[i]);
    RightHand out = account.take();
    out.unkept = std::move(unkept);
    return out;
}

} // namespace hands
