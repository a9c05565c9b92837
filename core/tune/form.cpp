#include "core/tune/form.h"

#include "core/base/words.h"
#include "core/music/typedchord.h"
#include "core/tune/endings.h"
#include "core/tune/lastphrase.h"

#include <algorithm>
#include <iterator>

namespace tune {

namespace {

using music::Length;


Length missing(Bar const& bar) { return music::barLength(bar.meter) - bar.length; }

// The chord that a made bar begins with must be the one of the bar it is made from, whatever
// stands before it now.
class ChordsCarried {
public:
    explicit ChordsCarried(Tune const& tune) : m_spans(chordSpans(tune)) {}

    std::optional<music::Chord> entering(BarIndex bar, int pass) const
    {
        return chordEntering(m_spans, bar, pass);
    }

    static void begin(Bar& bar, std::optional<music::Chord> const& chord)
    {
        auto const there = [](ChordMark const& mark) { return mark.at == Length{}; };
        if (std::ranges::any_of(bar.chords, there)) return;
        // In a pick-up the chord before rings on, or nothing has been played yet.
        if (!chord && bar.upbeat != Length{}) return;
        music::Chord const begins = chord.value_or(music::noChord());
        bar.chords.insert(bar.chords.begin(),
                          {{},
                           begins,
                           music::isNoChord(begins) ? "N.C." : music::plain(begins),
                           std::nullopt});
    }

private:
    std::vector<ChordSpan> m_spans;
};

MadeBars asWritten(Tune const& tune)
{
    MadeBars out;
    for (BarIndex const i : tune.bars.indices()) out.push_back({tune.bars[i], i, 0});
    return out;
}

// Bar by bar as it is played, each beginning with its own chord.
MadeBars writtenOut(Tune const& tune, Playing const& playing, ChordsCarried const& chords)
{
    MadeBars out;
    BarIndex next = 0;
    for (PlayedBar const& played : playing.bars) {
        Bar bar = asPlayed(tune.bars[played.bar], played.pass);
        if (bar.closes == BarLine::Final) bar.closes = BarLine::Double;
        if (played.bar != next) {
            ChordsCarried::begin(bar, chords.entering(played.bar, played.pass));
            if (!out.empty()) out.back().bar.closes = BarLine::Double;
        }
        next = played.bar + 1;
        out.push_back({std::move(bar), played.bar, 0});
    }
    return out;
}

// Whether the first section goes back to its beginning, so that its sign must stand there once
// something is played before it.
bool firstSectionRepeats(MadeBars const& bars)
{
    for (BarIndex const i : bars.indices()) {
        Bar const& bar = bars[i].bar;
        if (i > 0 && bar.repeatOpens) return false;
        if (bar.repeatCloses || highest(bar.endings) > 1) return true;
        if (bar.closes == BarLine::Double || bar.closes == BarLine::Final) return false;
    }
    return false;
}

void word(Bar& bar, std::string words)
{
    if (!words.empty()) bar.annotations.insert(bar.annotations.begin(), {{}, std::move(words)});
}

// The last bar of what leads into a pick-up leaves the room for it.
void makeRoom(MadeBar& last, Bar const& pickUp)
{
    if (pickUp.upbeat == Length{} || last.bar.meter != pickUp.meter) return;
    Length const full = music::barLength(last.bar.meter);
    if (last.bar.length + pickUp.length > full && last.bar.length <= full)
        last.bar = lasting(std::move(last.bar), full - pickUp.length);
}

Bar restOf(Bar const& like, Length length)
{
    Bar bar;
    bar.meter = like.meter;
    bar.key = like.key;
    bar.length = length;
    bar.upbeat = music::barLength(like.meter) - length;
    Note rest;
    rest.length = length;
    bar.notes = {rest};
    return bar;
}

class Forming {
public:
    Forming(Tune const& tune, FormWish const& wish)
        : m_tune(tune), m_wish(wish), m_playing(played(tune)), m_chords(tune)
    {
        bool const outright = m_playing.jumps || !tune.partOrder.empty();
        m_body = outright ? writtenOut(tune, m_playing, m_chords) : asWritten(tune);
    }

    Formed made()
    {
        if (m_wish.introduction > 0) addIntroduction();
        int const times = std::max(1, static_cast<int>(m_wish.times.size()));
        for (int time = 1; time <= times; ++time) addTime(time, times);
        if (m_wish.ending > 0) addEnding(times);
        m_out.back().bar.closes = BarLine::Final;
        Formed out{m_tune, {}};
        out.tune.bars.clear();
        out.tune.partOrder.clear();
        for (MadeBar& bar : m_out) {
            out.from.push_back({bar.written, bar.firstNote});
            out.tune.bars.push_back(std::move(bar.bar));
        }
        numberBars(out.tune.bars);
        return out;
    }

private:
    MadeBars phrase(int bars, Role role) const
    {
        MadeBars out = lastPhrase(m_tune, m_playing, bars);
        for (MadeBar& made : out) {
            made.bar.role = role;
            if (made.bar.closes == BarLine::Final) made.bar.closes = BarLine::Double;
        }
        auto const first =
            std::ranges::find_if(out, [](MadeBar const& made) { return !isPickUp(made.bar); });
        if (first != out.end()) {
            auto const back = static_cast<int>(out.end() - first);
            PlayedBar const& played = m_playing.bars[m_playing.bars.beyond() - back];
            ChordsCarried::begin(first->bar, m_chords.entering(played.bar, played.pass));
        }
        return out;
    }

    void addIntroduction()
    {
        MadeBars bars = phrase(m_wish.introduction, Role::Introduction);
        if (bars.empty()) return;
        word(bars.front().bar, base::said("Introduction"));
        makeRoom(bars.back(), m_body.front().bar);
        bars.back().bar.closes = BarLine::Double;
        m_out.append(std::move(bars));
    }

    void addTime(int time, int times)
    {
        MadeBars bars = m_body;
        if (!m_out.empty()) {
            Bar& first = bars.front().bar;
            if (firstSectionRepeats(bars)) first.repeatOpens = true;
            ChordsCarried::begin(first, m_chords.entering(bars.front().written, 1));
        }
        for (MadeBar& made : bars) made.bar.time = time;
        if (times > 1) word(bars.front().bar, m_wish.times[static_cast<std::size_t>(time - 1)]);
        bool const goesOn = time < times || m_wish.ending > 0;
        Bar& last = bars.back().bar;
        if (goesOn) last.closes = last.repeatCloses ? BarLine::Single : BarLine::Double;
        if (time < times && !bars.back().bar.repeatCloses && bars.back().bar.endings.empty())
            makeRoom(bars.back(), m_body.front().bar);
        m_out.append(std::move(bars));
    }

    static bool isPickUp(Bar const& bar) { return bar.upbeat != Length{}; }

    void addEnding(int time)
    {
        MadeBars bars = phrase(m_wish.ending, Role::Ending);
        if (bars.empty()) return;
        Length const gap = missing(m_out.back().bar);
        bool const leads = isPickUp(bars.front().bar) && bars.size() > 1;
        if (leads && bars.front().bar.length != gap) bars.erase(bars.begin());
        if (gap > Length{} && !(leads && bars.front().bar.length == gap))
            bars.insert(bars.begin(),
                        MadeBar{restOf(m_out.back().bar, gap), m_out.back().written, 0});
        word(bars.front().bar, base::said("Ending"));
        for (MadeBar& made : bars) {
            made.bar.role = Role::Ending;
            made.bar.time = time;
        }
        Bar& last = bars.back().bar;
        if (missing(last) > Length{})
            last = lasting(std::move(last), music::barLength(last.meter));
        m_out.append(std::move(bars));
    }

    Tune const& m_tune;
    FormWish const& m_wish;
    Playing m_playing;
    ChordsCarried m_chords;
    MadeBars m_body; // the tune once through
    MadeBars m_out;
};

} // namespace

Formed formed(Tune const& tune, FormWish const& wish)
{
    bool const asItIs = wish.introduction <= 0 && wish.ending <= 0 && wish.times.size() < 2;
    if (!asItIs && !tune.bars.empty() && hasNotes(tune)) return Forming(tune, wish).made();
    Formed out{tune, {}};
    for (BarIndex const i : tune.bars.indices()) out.from.push_back({i, 0});
    return out;
}

} // namespace tune
