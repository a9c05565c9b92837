#include "core/files/midi/read.h"

#include "core/base/words.h"
#include "core/files/abc/text.h"
#include "core/files/midi/smfread.h"
#include "core/files/remarks.h"
#include "core/files/tidy.h"
#include "core/music/spelling.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>

namespace files {

namespace {

using base::Fault;
using base::FaultCode;
using base::Result;
using music::Length;
using music::Moment;
using music::Rational;

constexpr int drums = 9; // the tenth channel, by General MIDI
constexpr int mostBars = 20'000;

// The notes of one voice: of a track, or in a file of one track, of a channel.
struct Voice {
    std::string name;
    std::vector<SmfNote> notes;
};

std::string lower(std::string text)
{
    for (char& c : text) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return text;
}

bool isNamedMelody(std::string const& name)
{
    constexpr std::array words{"melody", "right hand", "tune", "lead", "vocal", "voice"};
    std::string const small = lower(name);
    return std::any_of(words.begin(), words.end(), [&small](char const* word) {
        return small.find(word) != std::string::npos;
    });
}

std::string nameOf(SmfContents::Track const& track)
{
    for (SmfText const& text : track.texts)
        if (text.type == 3) return std::string(trimmed(plainText(text.text)));
    return {};
}

std::vector<Voice> voicesOf(SmfContents const& file)
{
    std::vector<Voice> voices;
    std::size_t const withNotes =
        static_cast<std::size_t>(std::count_if(file.tracks.begin(), file.tracks.end(),
                                               [](auto const& t) { return !t.notes.empty(); }));
    for (SmfContents::Track const& track : file.tracks) {
        std::array<Voice, 16> channels;
        for (SmfNote const& note : track.notes) {
            if (note.channel == drums) continue;
            // Tracks of their own are the voices; in a single one the channels are.
            std::size_t const place =
                withNotes > 1 ? 0 : static_cast<std::size_t>(note.channel);
            channels[place].notes.push_back(note);
        }
        for (Voice& voice : channels) {
            voice.name = nameOf(track);
            if (!voice.notes.empty()) voices.push_back(std::move(voice));
        }
    }
    return voices;
}

double meanKey(Voice const& voice)
{
    double sum = 0;
    for (SmfNote const& note : voice.notes) sum += note.key;
    return sum / static_cast<double>(voice.notes.size());
}

// The voice that is the tune: index.
std::size_t tuneVoice(std::vector<Voice> const& voices)
{
    for (std::size_t i = 0; i < voices.size(); ++i)
        if (isNamedMelody(voices[i].name)) return i;
    auto const highest =
        std::max_element(voices.begin(), voices.end(), [](Voice const& a, Voice const& b) {
            return meanKey(a) < meanKey(b);
        });
    return static_cast<std::size_t>(highest - voices.begin());
}

// The nearest place on one of two grids, each so many steps of a whole note; of equals the
// first.
Rational onGrid(std::int64_t tick, int ticksACrotchet, int halves, int thirds)
{
    Rational const exact(tick, std::int64_t{4} * ticksACrotchet);
    auto const nearest = [&exact](int steps) {
        return Rational(floorOf(exact * Rational(steps) + Rational(1, 2)), steps);
    };
    auto const off = [&exact](Rational place) {
        return place < exact ? exact - place : place - exact;
    };
    return off(nearest(thirds)) < off(nearest(halves)) ? nearest(thirds) : nearest(halves);
}

// Notes begin on 32nds or on thirds of quavers, whichever is nearer.
Rational onGrid(std::int64_t tick, int ticksACrotchet)
{
    return onGrid(tick, ticksACrotchet, 32, 24);
}

// Where one ends says less: what is not exact is taken to the nearest semiquaver.
Rational endOnGrid(std::int64_t tick, int ticksACrotchet)
{
    Rational const fine = onGrid(tick, ticksACrotchet);
    bool const exact = fine == Rational(tick, std::int64_t{4} * ticksACrotchet);
    return exact ? fine : onGrid(tick, ticksACrotchet, 16, 24);
}

// One moment of the tune.
struct Sounding {
    Rational from;
    Rational to;
    std::vector<int> keys; // lowest first
};

class TuneFromMidi {
public:
    explicit TuneFromMidi(SmfContents const& file) : m_smf(file) {}

    Result<tune::Tune> read(std::string const& file)
    {
        for (std::string const& oddity : m_smf.oddities)
            m_remarks.addOnce({}, oddity, base::said("read as well as possible"));
        std::vector<Voice> const voices = voicesOf(m_smf);
        if (voices.empty()) return Fault{FaultCode::NoNotes, file, ""};
        std::size_t const chosen = tuneVoice(voices);
        if (voices.size() > 1)
            m_remarks.add({}, base::say("the file has {} voices", voices.size()),
                          base::say("number {} is read as the tune", chosen + 1));
        readHead();
        std::vector<Sounding> const notes = melodyOf(voices[chosen]);
        layBars(notes.back().to);
        for (Sounding const& note : notes) put(note);
        for (tune::Bar& bar : m_tune.bars) finish(bar);
        if (m_tune.bars.size() == mostBars) return Fault{FaultCode::TuneTooLong, file, ""};
        readTexts();
        m_tune.bars = tidied(std::move(m_tune.bars), false, m_remarks);
        m_tune.key = m_tune.bars.front().key;
        m_tune.meter = m_tune.bars.front().meter;
        m_remarks.count();
        return std::move(m_tune);
    }

private:
    void readHead()
    {
        if (!m_smf.tracks.empty()) m_tune.title = nameOf(m_smf.tracks.front());
        if (m_smf.slowsAtTheEnd)
            m_remarks.add({}, base::said("the tempo falls towards the end"),
                          base::said("the first tempo is that of the tune"));
        else if (m_smf.laterTempos > 0)
            m_remarks.add({},
                          base::sayCount(m_smf.laterTempos, "the tempo changes {} time",
                                         "the tempo changes {} times"),
                          base::said("the first tempo is used throughout"));
        if (m_smf.keys.empty())
            m_remarks.add({}, base::said("the file has no key"),
                          base::said("notes are spelt as in C major"));
        if (m_smf.meters.empty())
            m_remarks.add({}, base::said("the file has no time signature"),
                          base::said("the bars are in 4/4"));
        else
            m_meters = m_smf.meters;
        if (m_meters.empty() || m_meters.front().at > 0) m_meters.insert(m_meters.begin(), SmfMeter{});
        if (!m_smf.tempo) return;
        SmfMeter const main = m_meters.back();
        Length const beat = music::beatLength({main.beats, main.unit});
        double const beats = *m_smf.tempo / (4 * beat.wholes.toDouble());
        constexpr double fastest = 1000;
        if (beats >= 1 && beats <= fastest)
            m_tune.tempo = tune::Tempo{beat, std::round(beats * 100) / 100};
    }

    // One note or chord at a time: what begins together and, of that, what the tune can be.
    std::vector<Sounding> melodyOf(Voice const& voice)
    {
        constexpr std::size_t mostAtOnce = 4;
        std::vector<Sounding> out;
        bool moved = false;
        bool thinned = false;
        for (SmfNote const& note : voice.notes) {
            Rational const from = onGrid(note.from, m_smf.ticksACrotchet);
            Rational to = endOnGrid(note.to, m_smf.ticksACrotchet);
            moved =
                moved || from != Rational(note.from, std::int64_t{4} * m_smf.ticksACrotchet);
            if (to <= from) to = from + Rational(1, 32);
            if (!out.empty() && out.back().from == from) {
                out.back().keys.push_back(note.key);
                out.back().to = std::max(out.back().to, to);
                continue;
            }
            if (!out.empty() && out.back().to > from) {
                thinned = true;
                out.back().to = from;
            }
            // A gap shorter than a 32nd is how the player let go, not a rest.
            if (!out.empty() && from - out.back().to < Rational(1, 32)) out.back().to = from;
            out.push_back({from, to, {note.key}});
        }
        for (Sounding& note : out) {
            std::sort(note.keys.begin(), note.keys.end());
            note.keys.erase(std::unique(note.keys.begin(), note.keys.end()), note.keys.end());
            if (note.keys.size() <= mostAtOnce) continue;
            thinned = true;
            note.keys = {note.keys.back()};
        }
        if (moved)
            m_remarks.add({}, base::said("some notes are a little off the beat"),
                          base::said("moved to the nearest part of the beat"));
        if (thinned)
            m_remarks.add(
                {}, base::said("notes of the tune overlap"),
                base::said("each is cut short where the next begins, and only the highest note "
                           "of a large chord is used"));
        return out;
    }

    // The key signature in force; the first holds from the beginning.
    music::Key keyAt(Rational at) const
    {
        SmfKey key = m_smf.keys.empty() ? SmfKey{} : m_smf.keys.front();
        for (SmfKey const& next : m_smf.keys)
            if (onGrid(next.at, m_smf.ticksACrotchet) <= at) key = next;
        return music::keyOf(key.sharps, key.minor ? music::Mode::Aeolian : music::Mode::Ionian);
    }

    // Bars by the meters, up to the end of the last note. A first meter that holds for less
    // than two bars and gives way to another is a pick-up.
    void layBars(Rational end)
    {
        Rational at;
        for (std::size_t m = 0; m < m_meters.size(); ++m) {
            music::Meter meter{m_meters[m].beats, m_meters[m].unit};
            Rational const until = m + 1 < m_meters.size()
                                       ? onGrid(m_meters[m + 1].at, m_smf.ticksACrotchet)
                                       : end;
            Rational const whole = music::barLength(meter).wholes;
            bool const pickUp = m == 0 && m_meters.size() > 1 && until == whole &&
                                whole < Rational(m_meters[1].beats, m_meters[1].unit);
            if (pickUp) meter = {m_meters[1].beats, m_meters[1].unit};
            while (at < until && at < end && m_tune.bars.size() < mostBars) {
                tune::Bar bar;
                bar.key = keyAt(at);
                bar.meter = meter;
                Rational length = whole;
                // The last bar is filled up; one before a new meter is as long as it lasts.
                if (m + 1 < m_meters.size()) length = std::min(length, until - at);
                bar.length = {length};
                m_starts.push_back(at);
                m_tune.bars.push_back(std::move(bar));
                at += length;
            }
        }
    }

    // Into its bars, tied over bar lines.
    void put(Sounding const& note)
    {
        for (tune::BarIndex b = m_reached; b < m_tune.bars.size(); ++b) {
            tune::Bar& bar = m_tune.bars[b];
            Rational const start = m_starts[b];
            Rational const stop = start + bar.length.wholes;
            if (stop <= note.from) {
                m_reached = b; // notes come in order
                continue;
            }
            if (start >= note.to) break;
            Rational const from = std::max(start, note.from);
            Rational const to = std::min(stop, note.to);
            tune::Note part;
            part.at = {from - start};
            part.length = {to - from};
            for (int key : note.keys)
                part.pitches.push_back(music::spelt(key, music::signature(bar.key)));
            part.tied = to < note.to;
            bar.notes.push_back(std::move(part));
        }
    }

    // Rests between the notes, and the tuplets that their lengths tell of.
    static void finish(tune::Bar& bar)
    {
        tune::Notes notes;
        Length at;
        auto const rest = [&](Length to) {
            tune::Note gap;
            gap.at = at;
            gap.length = to - at;
            notes.push_back(std::move(gap));
        };
        for (tune::Note& note : bar.notes) {
            if (note.at > at) rest(note.at);
            at = note.at + note.length;
            notes.push_back(std::move(note));
        }
        if (at < bar.length) rest(bar.length);
        bar.notes = std::move(notes);
        findTriplets(bar);
    }

    static bool hasThirds(Rational length) { return length.denominator() % 3 == 0; }

    static void findTriplets(tune::Bar& bar)
    {
        tune::NoteIndex const beyond = bar.notes.beyond();
        for (tune::NoteIndex first = 0; first < beyond; ++first) {
            Rational sum;
            tune::NoteIndex last = first;
            for (; last < beyond; ++last) {
                Rational const length = bar.notes[last].length.wholes;
                if (last == first && !hasThirds(length)) break;
                sum += length;
                if (!hasThirds(sum)) break;
            }
            if (last == first || last >= beyond) continue;
            bar.tuplets.push_back({first, last, 3, 2});
            first = last;
        }
    }

    // Markers that count the alphabet up are the names of parts; else texts of one kind are
    // chord symbols when every one of them reads as such and more than one stands there; what
    // is left of the words to sing is sung.
    void readTexts()
    {
        bool const parts = areParts(textsOf(marker));
        if (parts) readParts();
        for (int const type : {marker, plainWords, lyric}) {
            if (type == marker && parts) continue;
            if (!readChords(textsOf(type))) continue;
            if (type != lyric) readLyrics(textsOf(lyric));
            return;
        }
        readLyrics(textsOf(lyric));
    }

    static constexpr int plainWords = 1;
    static constexpr int lyric = 5;
    static constexpr int marker = 6;

    std::vector<SmfText> textsOf(int type) const
    {
        std::vector<SmfText> texts;
        for (SmfContents::Track const& track : m_smf.tracks)
            for (SmfText const& text : track.texts)
                if (text.type == type) texts.push_back(text);
        std::ranges::stable_sort(texts, {}, &SmfText::at);
        return texts;
    }

    // A, B, C: each letter first comes when all before it have been.
    static bool areParts(std::vector<SmfText> const& texts)
    {
        char next = 'A';
        for (SmfText const& text : texts) {
            std::string const name(trimmed(plainText(text.text)));
            if (name.size() != 1 || name[0] < 'A' || name[0] > next) return false;
            if (name[0] == next) ++next;
        }
        return next > 'B';
    }

    // Where a text stands: the bar and the place in it. None behind the last bar.
    struct Spot {
        tune::BarIndex bar = 0;
        Length at;
    };
    std::optional<Spot> spotOf(std::int64_t tick) const
    {
        Rational const at = onGrid(tick, m_smf.ticksACrotchet);
        auto const behind = std::ranges::upper_bound(m_starts, at);
        if (behind == m_starts.begin()) return std::nullopt;
        tune::BarIndex const bar = m_starts.indexOf(behind) - 1;
        Spot const spot{bar, {at - m_starts[bar]}};
        return spot.at < m_tune.bars[bar].length ? std::optional(spot) : std::nullopt;
    }

    void readParts()
    {
        for (SmfText const& text : textsOf(marker)) {
            auto const spot = spotOf(text.at);
            if (!spot) continue;
            std::string const name(trimmed(plainText(text.text)));
            tune::Bar& bar = m_tune.bars[spot->bar];
            if (spot->at == Length{})
                bar.part = name;
            else
                bar.annotations.push_back({spot->at, name});
        }
    }

    // False where the texts are no chord symbols.
    bool readChords(std::vector<SmfText> const& texts)
    {
        std::vector<std::pair<std::int64_t, music::Chord>> chords;
        for (SmfText const& text : texts) {
            auto const chord = music::chordFrom(plainText(text.text));
            if (!chord) return false;
            chords.emplace_back(text.at, *chord);
        }
        if (chords.size() < 2) return false;
        for (auto const& [tick, chord] : chords) addChord(tick, chord);
        m_remarks.add({}, base::said("some texts in the file are chord symbols"),
                      base::said("used as chords"));
        return true;
    }

    void addChord(std::int64_t tick, music::Chord const& chord)
    {
        auto const spot = spotOf(tick);
        if (!spot) return;
        tune::Bar& bar = m_tune.bars[spot->bar];
        bool const taken = !bar.chords.empty() && bar.chords.back().at == spot->at;
        if (!taken) bar.chords.push_back({spot->at, chord, music::plain(chord), std::nullopt});
    }

    // A syllable that ends in a hyphen, or where any has a blank one that neither ends in a
    // blank nor has one behind it, goes on with the next. Strokes and line ends part lines.
    void readLyrics(std::vector<SmfText> const& texts)
    {
        struct Sung {
            std::int64_t at = 0;
            std::string text;
            bool begins = false; // a word
            bool ends = false;
        };
        std::vector<Sung> sung;
        bool blanks = false;
        for (SmfText const& text : texts) {
            Sung one{text.at, plainText(text.text), false, false};
            std::string_view const signs = " \r\n/\\";
            one.begins =
                !text.text.empty() && signs.find(text.text.front()) != std::string::npos;
            one.ends = !text.text.empty() && signs.find(text.text.back()) != std::string::npos;
            std::erase_if(one.text, [](char c) { return c == '/' || c == '\\'; });
            one.text = std::string(trimmed(one.text));
            blanks = blanks || one.begins || one.ends;
            if (one.text.empty() && !sung.empty()) sung.back().ends = true;
            if (!one.text.empty() && !one.text.starts_with('@')) sung.push_back(std::move(one));
        }
        int homeless = 0;
        for (std::size_t i = 0; i < sung.size(); ++i) {
            tune::Syllable syllable{sung[i].text, false, false};
            if (syllable.text.size() > 1 && syllable.text.ends_with('-')) {
                syllable.text.pop_back();
                syllable.hyphen = true;
            } else if (blanks && i + 1 < sung.size()) {
                syllable.hyphen = !sung[i].ends && !sung[i + 1].begins;
            }
            tune::Note* const note = noteAt(sung[i].at);
            if (note == nullptr)
                ++homeless;
            else
                note->verses = {std::move(syllable)};
        }
        if (homeless > 0)
            m_remarks.add({},
                          base::sayCount(homeless, "{} syllable is sung where no note begins",
                                         "{} syllables are sung where no note begins"),
                          base::said("left out"));
    }

    // The note that begins there, which may have been moved a little.
    tune::Note* noteAt(std::int64_t tick)
    {
        auto const spot = spotOf(tick);
        if (!spot) return nullptr;
        for (tune::Note& note : m_tune.bars[spot->bar].notes)
            if (note.at == spot->at && !note.pitches.empty()) return &note;
        return nullptr;
    }

    SmfContents const& m_smf;
    tune::Tune m_tune;
    Remarks m_remarks{m_tune.said};
    std::vector<SmfMeter> m_meters;
    base::List<tune::BarIndex, Rational> m_starts;
    tune::BarIndex m_reached = 0; // the bar of the last note put
};

} // namespace

Result<tune::Tune> readMidi(std::string_view bytes, std::string const& file)
{
    auto const contents = readSmf(bytes, file);
    if (!contents) return contents.error();
    for (SmfContents::Track const& track : contents->tracks)
        for (SmfNote const& note : track.notes)
            if (note.to / contents->ticksACrotchet > (std::int64_t{1} << 18))
                return Fault{FaultCode::TuneTooLong, file, ""};
    return TuneFromMidi(*contents).read(file);
}

} // namespace files
