#include "tests/proposal/faults.h"

#include "core/arrange/roughness.h"
#include "core/harp/seats.h"
#include "core/tune/kind.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <optional>
#include <set>
#include <vector>

namespace faults {

namespace {

using arrange::ArrangedPosition;
using arrange::Arrangement;
using arrange::Voicing;

int within(int value, int modulus) { return ((value % modulus) + modulus) % modulus; }

// An arranged position as it is played the first time.
struct Place {
    ArrangedPosition const* arranged = nullptr;
    music::Moment at;
    tune::BarIndex bar = 0;
    std::vector<int> midi; // of the left hand's notes
    std::vector<tune::PlayedNote const*> tune;

    Voicing const& voicing() const { return arranged->voicing; }
    music::Chord const& chord() const { return arranged->position.chord; }
    music::Length span() const { return arranged->position.span; }
    bool rests() const { return voicing().notes.empty(); }
    int bass() const
    {
        return std::ranges::min(voicing().notes, {}, &arrange::VoicedNote::string).string;
    }
    int top() const
    {
        return std::ranges::max(voicing().notes, {}, &arrange::VoicedNote::string).string;
    }
    bool plucks(harp::StringIndex string) const
    {
        return std::ranges::any_of(voicing().notes, [&](arrange::VoicedNote const& n) {
            return n.string == string;
        });
    }
};

std::optional<int> thirdOf(music::Chord const& chord)
{
    for (music::Interval const& tone : chord.tones)
        if (tone.steps == 2)
            return within(music::pitchClass(chord.root) + tone.semitones, 12);
    return std::nullopt;
}

class Teacher {
public:
    Teacher(Report& report, proposal::Proposal const& proposal)
        : m_report(report), m_a(proposal.arrangement), m_kind(tune::kindOf(m_a.tune)),
          m_secondsAWhole(240 / tune::quartersPerMinute(m_a.tempo))
    {
        for (ArrangedPosition const& p : m_a.positions) m_places.push_back(placeOf(p));
    }

    void mark()
    {
        for (std::size_t i = 0; i < m_places.size(); ++i) {
            onePlace(m_places[i]);
            if (i + 1 < m_places.size()) twoPlaces(m_places[i], m_places[i + 1]);
        }
        ending();
        wholeTune();
    }

private:
    tune::Bar const& barOf(Place const& p) const { return m_a.tune.bars[p.bar]; }
    int level() const { return m_a.level.number; }
    double seconds(music::Length l) const { return l.wholes.toDouble() * m_secondsAWhole; }

    void count(std::string const& what, bool found)
    {
        Count& c = m_report[what];
        ++c.of;
        if (found) ++c.found;
    }

    // The same, and apart for each meter.
    void countByMeter(Place const& p, std::string const& what, bool found)
    {
        count(what, found);
        count(what + ", " + music::text(barOf(p).meter), found);
    }

    Place placeOf(ArrangedPosition const& p) const
    {
        Place out{&p, p.position.played.front().at, p.position.bar, {}, {}};
        for (arrange::VoicedNote const& n : p.voicing.notes)
            out.midi.push_back(
                music::midi(harp::pitchAt(m_a.harp, m_a.levers, n.string, out.at + n.at)));
        for (tune::PlayedNote const& n : m_a.playing.notes)
            if (n.at < out.at + out.span() && out.at < n.at + n.held) out.tune.push_back(&n);
        return out;
    }

    bool thirdHeard(Place const& p) const
    {
        std::optional<int> const third = thirdOf(p.chord());
        if (!third) return true;
        auto const is = [&](int midi) { return within(midi, 12) == *third; };
        return std::ranges::any_of(p.midi, is) ||
               std::ranges::any_of(p.tune, [&](tune::PlayedNote const* n) {
                   return is(music::midi(n->pitch));
               });
    }

    // A pick-up bar, or what belongs to it: a short chord that ends a part after its close.
    bool isUpbeat(Place const& p) const
    {
        tune::Bar const& bar = barOf(p);
        return bar.upbeat.wholes > music::Rational(0) &&
               p.span() <= std::max(music::beatLength(bar.meter),
                                    music::barLength(bar.meter) * music::Rational(1, 2));
    }

    bool beginsAt(Place const& p, music::Length inBar) const
    {
        music::Length const from = p.arranged->position.at;
        return std::ranges::any_of(p.voicing().notes, [&](arrange::VoicedNote const& n) {
            return from + n.at == inBar;
        });
    }

    static bool isVariation(std::string const& shape)
    {
        constexpr std::array variations{"1-5-8-7", "1-5-8-9", "1-5-9", "1-5-8-9-10", "1-5-10",
                                        "1-5-10-9", "1-5-10-8", "1-5-10-9-8", "1-5-8-7-6",
                                        "1-5-10-11-12", "1-5-10-12", "1-5-7", "1-5-8-10"};
        return std::ranges::find(variations, shape) != variations.end();
    }

    bool foreignHeard(Place const& p) const
    {
        return std::ranges::any_of(
            p.midi, [&](int m) { return !music::contains(p.chord(), within(m, 12)); });
    }

    void onePlace(Place const& p)
    {
        tune::Bar const& bar = barOf(p);
        bool const fullBar = p.span() >= music::barLength(bar.meter);
        if (isUpbeat(p)) count("17 struck upbeat", !p.rests());
        if (fullBar && m_kind == tune::Kind::Waltz && !closes(p))
            count("beat 3 of waltz bars sounds", beginsAt(p, {music::Rational(1, 2)}));
        if (fullBar && p.chord().tones.size() > 2)
            countByMeter(p,
                         bar.key.mode == music::Mode::Ionian ? "long chord without third, major"
                                                             : "long chord without third, minor",
                         !thirdHeard(p));
        if (!isUpbeat(p)) {
            count("rests where no upbeat is", p.rests());
            if (fullBar) count("rests for a whole bar", p.rests());
        }
        if (p.rests()) return;
        count("24 late for a lever", p.voicing().notes.front().at > music::Length{});
        count("bass above G3", *std::ranges::min_element(p.midi) > 55);
        if (closes(p) && level() > 1)
            count("weak close with 1-5", p.voicing().pattern == "1-5" && fullBar);
        countByMeter(p, p.chord().bass ? "foreign note over a slash chord"
                             : "foreign note over a plain chord",
              foreignHeard(p));
        bool const ninth = p.voicing().pattern == "1-5-9";
        if (ninth) count("1-5-9 without third in either hand", !thirdHeard(p));
        if (p.chord().bass) count("6 root shape on a slash bass", foreignHeard(p));
        count("1 mud", mud(p) > 3.0 * mudScale);
        count("2 close third too low", closeThird(p));
        count("5 third fights the tune", thirdFights(p));
        count("9 hands on one string", oneString(p, near()));
        count("9 hands on one string within a second", oneString(p, 1.0));
        count("9 left hand strikes what the tune has just played", struckAgain(p));
        count("4 impossible hand", impossible(p));
        count("7 leading note doubled", leadingNoteDoubled(p));
        lilt(p, fullBar);
        count("10 crowded", crowded(p));
        count("13 too fast", peakRate(p) > m_a.level.leftNotesPerSecond + 1e-6);
        if (fullBar) count("23 busy against busy", busy(p));
        if (isDance() && p.arranged->position.at == music::Length{} &&
            bar.upbeat == music::Length{})
            count("22 no bass on the first beat", !beginsAt(p, {}));
        count("tenths", p.top() - p.bass() == 9);
        count("20 six-four", isSixFour(p));
        if (closes(p)) count("20 six-four at a close", isSixFour(p));
        if (fullBar && !closes(p))
            count("variation in full bars", isVariation(p.voicing().pattern));
        if (m_kind == tune::Kind::Jig && !fullBar && p.span() == music::beatLength(bar.meter))
            count("half bars of jigs held still", p.voicing().notes.front().at ==
                                                      p.voicing().notes.back().at);
        count("25 diminished triad in root position", diminished(p));
        count("25 drone rubs the tune", droneRubs(p));
        count("25 dominant's third against the tune's seventh", dominantFights(p));
    }

    // Where the dance puts its weight: bass on the beats, chords off the quavers 2 and 5 of a
    // jig, no bass on beat 3 of a waltz.
    void lilt(Place const& p, bool fullBar)
    {
        auto const strikesLow = [&](music::Length at) {
            return std::ranges::any_of(p.voicing().notes, [&](arrange::VoicedNote const& n) {
                return n.at == at && n.string == p.bass() && n.at > music::Length{};
            });
        };
        if (m_kind == tune::Kind::Waltz && fullBar)
            count("22 waltz bass on beat 3", strikesLow({music::Rational(1, 2)}));
        bool const jig = m_kind == tune::Kind::Jig || m_kind == tune::Kind::SingleJig;
        if (jig && fullBar) {
            std::map<music::Length, int> together;
            for (arrange::VoicedNote const& n : p.voicing().notes) ++together[n.at];
            count("22 jig chords on quavers 2 or 5",
                  together[{music::Rational(1, 8)}] > 1 || together[{music::Rational(1, 2)}] > 1);
        }
    }

    // Neighbouring fingers further apart than a hand opens: 4-3 four strings, 4-2 six, 3-2
    // four, 2-1 seven; one more where rolled or broken.
    static bool impossible(Place const& p)
    {
        auto const& notes = p.voicing().notes;
        for (std::size_t i = 0; i + 1 < notes.size(); ++i) {
            auto const& a = notes[i];
            auto const& b = notes[i + 1];
            auto const [low, high] = a.string <= b.string ? std::pair{a, b} : std::pair{b, a};
            int const most = low.finger == 4 && high.finger == 3   ? 4
                             : low.finger == 4 && high.finger == 2 ? 6
                             : low.finger == 3 && high.finger == 2 ? 4
                             : low.finger == 2 && high.finger == 1 ? 7
                                                                   : 12;
            bool const together = a.at == b.at && !p.voicing().rolled;
            if (high.string - low.string > most + (together ? 0 : 1)) return true;
        }
        return false;
    }

    // The third of the dominant in two octaves at one moment.
    bool leadingNoteDoubled(Place const& p) const
    {
        std::optional<int> const third = thirdOf(p.chord());
        int const tonic = music::pitchClass(barOf(p).key.tonic);
        if (!third || *third != within(tonic - 1, 12)) return false;
        auto const& notes = p.voicing().notes;
        for (std::size_t i = 0; i < notes.size(); ++i) {
            if (within(p.midi[i], 12) != *third) continue;
            for (std::size_t j = 0; j < notes.size(); ++j)
                if (i != j && notes[i].at == notes[j].at && within(p.midi[j], 12) == *third)
                    return true;
            for (tune::PlayedNote const* n : p.tune)
                if (n->at == p.at + notes[i].at && within(music::midi(n->pitch), 12) == *third)
                    return true;
        }
        return false;
    }

    // A held open fifth a semitone from a note of the tune that stands a beat on a beat.
    bool droneRubs(Place const& p) const
    {
        if (p.voicing().notes.front().at != p.voicing().notes.back().at) return false;
        music::Length const beat = music::beatLength(barOf(p).meter);
        return std::ranges::any_of(p.tune, [&](tune::PlayedNote const* n) {
            return n->held >= beat && std::ranges::any_of(p.midi, [&](int m) {
                       int const apart = within(music::midi(n->pitch) - m, 12);
                       return apart == 1 || apart == 11;
                   });
        });
    }

    // The leading note under the key's other seventh.
    bool dominantFights(Place const& p) const
    {
        int const tonic = music::pitchClass(barOf(p).key.tonic);
        bool const leading = std::ranges::any_of(
            p.midi, [&](int m) { return within(m, 12) == within(tonic - 1, 12); });
        return leading && std::ranges::any_of(p.tune, [&](tune::PlayedNote const* n) {
                   return within(music::midi(n->pitch), 12) == within(tonic - 2, 12);
               });
    }

    void twoPlaces(Place const& a, Place const& b)
    {
        if (a.rests() || b.rests() || b.at != a.at + a.span()) return;
        for (arrange::VoicedNote const& n : a.voicing().notes) {
            if (within(n.degree, 7) != 0 || n.degree < 7 || music::contains(a.chord(), pc(a, n)))
                continue;
            // To the next lower string, or on the same where the next chord owns it.
            bool const stays = b.plucks(n.string) && music::contains(b.chord(), pc(a, n));
            count("8 seventh does not fall",
                  !falls(a, n) && !b.plucks(n.string - 1) && !stays);
        }
        sixFour(a, b);
        if (a.bar == b.bar && a.span() == b.span())
            count("another shape or rhythm in the second half of a bar",
                  a.voicing().pattern != b.voicing().pattern ||
                      a.voicing().rhythm != b.voicing().rhythm);
        int const letters = within(music::index(music::lowest(b.chord()).letter) -
                                       music::index(music::lowest(a.chord()).letter),
                                   7);
        int const way = std::abs(b.bass() - a.bass());
        if (letters == 1 || letters == 6)
            count("stepwise bass by step or fifth", way == 1 || way == 4);
        if (!(a.chord() == b.chord())) count("21 bass leaps a sixth or more", way >= 5);
        count("12 leap of an octave", std::abs(centre(b) - centre(a)) >= 7);
        for (arrange::VoicedNote const& n : a.voicing().notes)
            for (arrange::VoicedNote const& m : b.voicing().notes)
                if (n.string == m.string) {
                    double const apart = seconds(a.span() - n.at + m.at);
                    count("11 plucked again too soon",
                          apart < 1 / m_a.level.sameStringPerSecond - 1e-6);
                }
    }

    int pc(Place const& p, arrange::VoicedNote const& n) const
    {
        return music::midi(harp::pitchAt(m_a.harp, m_a.levers, n.string, p.at + n.at)) % 12;
    }

    // On its fifth, where no bass names it.
    bool isSixFour(Place const& p) const
    {
        if (p.chord().bass) return false;
        int const lowest = within(*std::ranges::min_element(p.midi), 12);
        return within(lowest - music::pitchClass(p.chord().root), 12) == 7 &&
               music::contains(p.chord(), lowest);
    }

    void sixFour(Place const& a, Place const& b)
    {
        if (isSixFour(a)) count("20 six-four left by leap", std::abs(b.bass() - a.bass()) > 1);
        if (isSixFour(b)) count("20 six-four come to by leap", std::abs(b.bass() - a.bass()) > 1);
    }

    static bool falls(Place const& a, arrange::VoicedNote const& n)
    {
        return std::ranges::any_of(a.voicing().notes, [&](arrange::VoicedNote const& later) {
            return later.at > n.at && later.string == n.string - 1;
        });
    }

    static double centre(Place const& p) { return (p.bass() + p.top()) / 2.0; }

    bool isDance() const { return m_kind != tune::Kind::Air; }

    bool closes(Place const& p) const
    {
        tune::Bar const& bar = barOf(p);
        return bar.repeatCloses || bar.endingCloses || p.bar + 1 == m_a.tune.bars.size() ||
               bar.closes == tune::BarLine::Double || bar.closes == tune::BarLine::Final ||
               (bar.number > 0 && bar.number % 8 == 0);
    }

    // The model's unit here: what 1-5-8 gives on its usual floor is 2.0 [trade-5].
    static constexpr double mudScale = 0.212 / 1.45;
    double mud(Place const& p) const
    {
        std::vector<arrange::RingingTone> tones;
        double worst = 0;
        for (std::size_t i = 0; i < p.midi.size(); ++i) {
            tones.push_back({p.midi[i], 1});
            if (tones.size() > 4) tones.erase(tones.begin());
            worst = std::max(worst, arrange::roughness(tones));
        }
        return worst;
    }

    bool closeThird(Place const& p) const
    {
        std::vector<int> sorted = p.midi;
        std::ranges::sort(sorted);
        for (std::size_t i = 0; i + 1 < sorted.size(); ++i) {
            int const gap = sorted[i + 1] - sorted[i];
            if ((gap == 3 && sorted[i] < 48) || (gap == 4 && sorted[i] < 46)) return true;
        }
        return false;
    }

    // The other third in the tune's bar.
    bool thirdFights(Place const& p) const
    {
        std::optional<int> const third = thirdOf(p.chord());
        if (!third) return false;
        bool const stated = std::ranges::any_of(
            p.midi, [&](int m) { return within(m, 12) == *third; });
        int const major = within(*third - music::pitchClass(p.chord().root), 12);
        int const other = within(*third + (major == 4 ? -1 : 1), 12);
        return stated && std::ranges::any_of(p.tune, [&](tune::PlayedNote const* n) {
                   return music::midi(n->pitch) % 12 == other;
               });
    }

    // Seconds within which the hands may not pluck one string.
    double near() const
    {
        return level() <= 3 ? seconds(music::beatLength(m_a.tune.meter)) : 0.4;
    }

    // The left hand plucks a string that the tune let ring last, within a second after it.
    bool struckAgain(Place const& p) const
    {
        for (std::size_t i = 0; i < p.midi.size(); ++i)
            for (tune::PlayedNote const& n : m_a.playing.notes) {
                if (music::midi(n.pitch) != p.midi[i]) continue;
                double const after = (p.at + p.voicing().notes[i].at - n.at).wholes.toDouble() *
                                     m_secondsAWhole;
                if (after > 0 && after < 1) return true;
            }
        return false;
    }

    bool oneString(Place const& p, double near) const
    {
        for (std::size_t i = 0; i < p.midi.size(); ++i)
            for (tune::PlayedNote const* n : p.tune)
                if (music::midi(n->pitch) == p.midi[i] &&
                    std::abs((n->at - (p.at + p.voicing().notes[i].at)).wholes.toDouble()) *
                            m_secondsAWhole <
                        near)
                    return true;
        return false;
    }

    bool crowded(Place const& p) const
    {
        for (arrange::VoicedNote const& mine : p.voicing().notes)
            for (tune::PlayedNote const* n : p.tune) {
                if (n->at != p.at + mine.at) continue;
                auto const string = harp::stringAtMoment(m_a.harp, m_a.levers, n->pitch, n->at);
                if (string && *string - mine.string < 3) return true;
            }
        return false;
    }

    double peakRate(Place const& p) const
    {
        double peak = 0;
        auto const& notes = p.voicing().notes;
        for (std::size_t i = 0; i + 1 < notes.size(); ++i)
            if (notes[i + 1].at != notes[i].at)
                peak = std::max(peak, 1 / seconds(notes[i + 1].at - notes[i].at));
        return peak;
    }

    bool busy(Place const& p) const
    {
        auto const begun = std::ranges::count_if(
            p.tune, [&](tune::PlayedNote const* n) { return n->at >= p.at; });
        return begun >= 6 && 10 * p.voicing().notes.size() > 6U * static_cast<unsigned>(begun);
    }

    bool diminished(Place const& p) const
    {
        bool const dim = std::ranges::any_of(
            p.chord().tones, [](music::Interval t) { return t.steps == 4 && t.semitones == 6; });
        int const lowest = *std::ranges::min_element(p.midi) % 12;
        return dim && lowest == music::pitchClass(p.chord().root) && p.midi.size() > 1;
    }

    // The place that sounds when the tune ends.
    Place const& lastPlayed() const
    {
        return *std::ranges::max_element(m_places, {}, [](Place const& p) {
            return std::ranges::max(p.arranged->position.played, {}, &arrange::Occurrence::at)
                .at;
        });
    }

    void ending()
    {
        Place const& last = lastPlayed();
        bool const slow = m_kind == tune::Kind::Air || m_kind == tune::Kind::Waltz;
        bool const roll = last.voicing().rolled;
        std::string const of = slow ? ", air or waltz" : ", dance";
        count("final chord with third or roll" + of,
              !last.rests() && (roll || thirdHeard(last)));
        count("final chord: left hand has third or roll" + of,
              !last.rests() && (roll || leftThird(last)));
        count("final chord is the tune's tonic",
              music::pitchClass(last.chord().root) == music::pitchClass(m_a.tune.key.tonic));
        bool const tonicBass =
            !last.rests() && *std::ranges::min_element(last.midi) % 12 ==
                                 music::pitchClass(last.chord().root);
        bool const broken = slow && level() > 1 && !last.rests() && !roll && !thirdHeard(last);
        count("19 weak ending", !tonicBass || broken);
    }

    bool leftThird(Place const& p) const
    {
        std::optional<int> const third = thirdOf(p.chord());
        return third && std::ranges::any_of(
                            p.midi, [&](int m) { return within(m, 12) == *third; });
    }

    void wholeTune()
    {
        std::set<std::string> figures;
        std::map<std::string, std::set<std::string>> byBar;
        std::map<std::size_t, std::string> keyOf;
        for (Place const& p : m_places) {
            std::string const figure = fmt::format("{} {} {}", p.voicing().pattern,
                                                   p.voicing().rhythm, p.voicing().rootString);
            figures.insert(p.voicing().pattern + p.voicing().rhythm);
            std::string key = fmt::format("{} {} ", music::plain(p.chord()),
                                          p.span().wholes.toDouble());
            for (tune::PlayedNote const* n : p.tune)
                key += fmt::format("{}@{} ", music::midi(n->pitch),
                                   (n->at - p.at).wholes.toDouble());
            byBar[key].insert(figure);
        }
        if (m_places.size() >= 32 && level() >= 3) count("14 monotony", figures.size() == 1);
        for (auto const& [key, seen] : byBar)
            count("16 same bars unlike", seen.size() > 1);
        phrasesAlike();
        restless();
        shapelessBass();
        lowStrings();
        holes();
        tenthsOften();
        breath();
    }

    // Pairs of bars with the same tune and chords, all their positions the same or not.
    void phrasesAlike()
    {
        struct Bars {
            std::string music;
            std::string figures;
            bool closes = false;
        };
        std::map<std::size_t, Bars> bars;
        for (Place const& p : m_places) {
            Bars& bar = bars[p.bar];
            bar.closes = bar.closes || closes(p);
            bar.music += fmt::format("|{} {} {} ", music::plain(p.chord()),
                                     p.arranged->position.at.wholes.toDouble(),
                                     p.span().wholes.toDouble());
            for (tune::PlayedNote const* n : p.tune)
                bar.music += fmt::format("{}@{} ", music::midi(n->pitch),
                                         (n->at - p.at).wholes.toDouble());
            bar.figures += fmt::format("{} {} {} ", p.voicing().pattern, p.voicing().rhythm,
                                       p.voicing().rootString);
        }
        std::map<std::string, std::set<std::string>> byMusic;
        std::map<std::string, std::set<std::string>> inside; // no close among them
        std::map<std::string, int> times;
        std::map<std::string, int> timesInside;
        for (auto const& [at, bar] : bars) {
            auto const next = bars.find(at + 1);
            if (next == bars.end()) continue;
            std::string const music = bar.music + next->second.music;
            ++times[music];
            byMusic[music].insert(bar.figures + next->second.figures);
            if (bar.closes || next->second.closes) continue;
            ++timesInside[music];
            inside[music].insert(bar.figures + next->second.figures);
        }
        for (auto const& [music, seen] : byMusic)
            if (times[music] > 1) count("16 same pairs of bars unlike", seen.size() > 1);
        for (auto const& [music, seen] : inside)
            if (timesInside[music] > 1)
                count("16 same pairs of bars unlike, closes aside", seen.size() > 1);
    }

    void restless()
    {
        constexpr std::array<std::size_t, 5> most{1, 2, 3, 4, 5};
        std::set<std::string> shapes;
        tune::BarIndex bar = 0;
        for (Place const& p : m_places) {
            if (p.bar / 8 != bar / 8) {
                count("15 restless", shapes.size() > most[static_cast<std::size_t>(level() - 1)]);
                shapes.clear();
            }
            bar = p.bar;
            // Closes and pick-ups are exceptions by right; what a part of a bar has room for
            // of a figure is no other figure.
            bool const fullBar = p.span() >= music::barLength(barOf(p).meter);
            if (!p.rests() && fullBar && !closes(p)) shapes.insert(p.voicing().pattern);
        }
        count("15 restless", shapes.size() > most[static_cast<std::size_t>(level() - 1)]);
    }

    // No step in eight bars with five changes of chord or more; and the same low root on more
    // than two beats running.
    void shapelessBass()
    {
        std::map<std::size_t, std::pair<int, int>> eights; // changes, steps
        for (std::size_t i = 0; i + 1 < m_places.size(); ++i) {
            Place const& a = m_places[i];
            Place const& b = m_places[i + 1];
            if (a.rests() || b.rests() || a.chord() == b.chord()) continue;
            auto& [changes, steps] = eights[a.bar / 8];
            ++changes;
            int const letters = within(music::index(music::lowest(b.chord()).letter) -
                                           music::index(music::lowest(a.chord()).letter),
                                       7);
            bool const could = letters == 1 || letters == 6;
            steps += std::abs(b.bass() - a.bass()) == 1 || !could;
        }
        for (auto const& [eight, counted] : eights)
            if (level() >= 3 && counted.first >= 5)
                count("21 no step in the bass where chords go by step", counted.second == 0);
    }

    // A string below C3 again in less than half a second.
    void lowStrings()
    {
        for (Place const& p : m_places) {
            auto const& notes = p.voicing().notes;
            bool again = false;
            for (std::size_t i = 0; i < notes.size(); ++i)
                for (std::size_t j = i + 1; j < notes.size(); ++j)
                    again = again || (p.midi[i] < 48 && notes[i].string == notes[j].string &&
                                      seconds(notes[j].at - notes[i].at) < 0.5 - 1e-6);
            count("11 low string again within half a second", again);
        }
    }

    // Two beats of a dance on which neither hand begins a note, closes aside.
    void holes()
    {
        if (!isDance()) return;
        for (Place const& p : m_places) {
            if (closes(p) || isUpbeat(p)) continue;
            music::Length const two = music::beatLength(barOf(p).meter) * music::Rational(2);
            std::set<music::Length> onsets{p.span()};
            for (arrange::VoicedNote const& n : p.voicing().notes) onsets.insert(n.at);
            for (tune::PlayedNote const* n : p.tune)
                if (n->at >= p.at) onsets.insert(n->at - p.at);
            music::Length last;
            bool hole = false;
            for (music::Length const at : onsets) {
                hole = hole || at - last > two;
                last = at;
            }
            count("24 hole", hole);
        }
    }

    void tenthsOften()
    {
        std::map<std::size_t, int> wide;
        for (Place const& p : m_places)
            if (!p.rests()) wide[p.bar / 8] += p.top() - p.bass() >= (level() < 3 ? 8 : 9);
        for (auto const& [eight, times] : wide)
            count("3 stretch", times > (level() < 3 ? 0 : 4));
    }

    // In a dance beats may be kept on at half of the closes.
    void breath()
    {
        int closesStruck = 0;
        int closesThere = 0;
        for (Place const& p : m_places) {
            tune::Bar const& bar = barOf(p);
            if (!closes(p) || p.arranged->position.at + p.span() < bar.length) continue;
            music::Length const crotchet{music::Rational(1, 4)};
            music::Length const beat = music::beatLength(bar.meter);
            music::Length const last =
                bar.length - (music::isCompound(bar.meter) ? beat : std::min(beat, crotchet));
            bool const strikes =
                std::ranges::any_of(p.voicing().notes, [&](arrange::VoicedNote const& n) {
                    // A chord that comes on the last beat has to be struck there.
                    return p.arranged->position.at + n.at >= last && n.at > music::Length{};
                });
            count("18 no breath at a close", strikes);
            ++closesThere;
            closesStruck += strikes;
        }
        bool const slow = m_kind == tune::Kind::Air || m_kind == tune::Kind::Waltz;
        if (closesThere > 0)
            count(slow ? "18 no breath, airs and waltzes" : "18 no breath, dances",
                  slow ? closesStruck > 0 : 2 * closesStruck > closesThere);
    }

    Report& m_report;
    Arrangement const& m_a;
    tune::Kind m_kind;
    double m_secondsAWhole;
    std::vector<Place> m_places;
};

} // namespace

void add(Report& report, proposal::Proposal const& proposal)
{
    Teacher(report, proposal).mark();
}

void print(std::ostream& out, Report const& report)
{
    for (auto const& [what, count] : report)
        out << fmt::format("{:50} {:5} of {:5} {:5.1f}%\n", what, count.found, count.of,
                           count.perCent());
}

} // namespace faults
