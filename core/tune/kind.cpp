#include "core/tune/kind.h"

#include "core/base/named.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <optional>
#include <string>

namespace tune {

namespace {

using music::Length;
using music::Meter;
using music::Rational;

struct KindRow {
    Kind kind;
    std::string_view name;
    Rational beat;  // that the tempo counts
    double learn;   // beats a minute at which it is learnt
    double harp;    // and at which a harp setting goes
};

// Learning and harp speeds: common practice, no source; those of dancers, which lie above, by
// dance bands' lists and Breathnach 1963.
constexpr std::array kinds{
    KindRow{Kind::Waltz, "waltz", {1, 4}, 72, 108},
    KindRow{Kind::Jig, "jig", {3, 8}, 60, 84},
    KindRow{Kind::SingleJig, "single_jig", {3, 8}, 65, 96},
    KindRow{Kind::SlipJig, "slip_jig", {3, 8}, 55, 84},
    KindRow{Kind::Reel, "reel", {1, 2}, 55, 80},
    KindRow{Kind::Hornpipe, "hornpipe", {1, 2}, 48, 66},
    KindRow{Kind::Polka, "polka", {1, 4}, 70, 100},
    KindRow{Kind::March, "march", {1, 4}, 72, 96},
    KindRow{Kind::Strathspey, "strathspey", {1, 4}, 66, 92},
    KindRow{Kind::Air, "air", {1, 4}, 40, 48},
    KindRow{Kind::Mazurka, "mazurka", {1, 4}, 80, 108},
    KindRow{Kind::TripleHornpipe, "triple_hornpipe", {1, 2}, 48, 72},
    KindRow{Kind::Other, "other", {1, 4}, 72, 96},
};

KindRow const& rowOf(Kind kind)
{
    return *std::find_if(kinds.begin(), kinds.end(),
                         [kind](KindRow const& row) { return row.kind == kind; });
}

// Words of the rhythm field or the title. Longer ones first, so that "slip jig" is no "jig".
constexpr auto words = std::to_array<base::Named<Kind>>({
    {"slip jig", Kind::SlipJig},
    {"hop jig", Kind::SlipJig},
    {"single jig", Kind::SingleJig},
    {"slide", Kind::SingleJig},
    {"jig", Kind::Jig},
    {"hornpipe", Kind::Hornpipe},
    {"reel", Kind::Reel},
    {"polka", Kind::Polka},
    {"strathspey", Kind::Strathspey},
    {"schottische", Kind::Strathspey},
    {"march", Kind::March},
    {"mazurka", Kind::Mazurka},
    {"varsovienne", Kind::Mazurka},
    {"waltz", Kind::Waltz},
    {"planxty", Kind::Air},
    {"lullaby", Kind::Air},
    {"lament", Kind::Air},
    {"song", Kind::Air},
    {"air", Kind::Air},
});

bool isLetter(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }

// The word as a word of its own, or in the plural: "air" is not in "fair".
bool holdsWord(std::string const& text, std::string_view word)
{
    for (std::size_t at = text.find(word); at != std::string::npos;
         at = text.find(word, at + 1)) {
        std::size_t end = at + word.size();
        if (end < text.size() && text[end] == 's') ++end;
        bool const begins = at == 0 || !isLetter(text[at - 1]);
        if (begins && (end == text.size() || !isLetter(text[end]))) return true;
    }
    return false;
}

std::optional<Kind> kindNamed(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    for (auto const& [word, kind] : words)
        if (holdsWord(text, word)) return kind;
    return std::nullopt;
}

bool isMeter(Meter m, int beats, int unit) { return m.beats == beats && m.unit == unit; }

bool isCommon(Meter m) { return isMeter(m, 4, 4) || isMeter(m, 2, 2); }

// Whether a dance of that name goes in the meter. A word that does not fit is a word in a
// title, no more.
bool suits(Kind kind, Meter m)
{
    switch (kind) {
    case Kind::Waltz:
    case Kind::Mazurka:
        return isMeter(m, 3, 4) || isMeter(m, 3, 8);
    case Kind::Jig:
    case Kind::SingleJig:
        return isMeter(m, 6, 8) || isMeter(m, 12, 8);
    case Kind::SlipJig:
        return isMeter(m, 9, 8);
    case Kind::Reel:
    case Kind::Hornpipe:
        return isCommon(m) || isMeter(m, 2, 4);
    case Kind::TripleHornpipe:
        return isMeter(m, 3, 2);
    case Kind::Polka:
        return isMeter(m, 2, 4) || isCommon(m);
    case Kind::March:
        return isCommon(m) || isMeter(m, 2, 4) || isMeter(m, 6, 8);
    case Kind::Strathspey:
        return isCommon(m);
    case Kind::Air:
    case Kind::Other:
        return true;
    }
    return true;
}

// What the notes of the whole bars say.
struct Density {
    double notesABar = 0;   // median
    double longShort = 0;   // share of the beats that are a dotted pair
    double shortLong = 0;   // or one the other way
    double crotchetQuaver = 0; // of the compound beats
    double quicker = 0;     // share of notes shorter than a quaver
    double evenCloses = 0;  // share of strains whose last bar opens with three equal crotchets
};

bool isWhole(Bar const& bar)
{
    return bar.upbeat == Length{} && bar.length == music::barLength(bar.meter) &&
           !bar.notes.empty();
}

bool endsStrain(Tune const& tune, BarIndex bar)
{
    Bar const& here = tune.bars[bar];
    bool const partNext = bar + 1 < tune.bars.size() && !tune.bars[bar + 1].part.empty();
    return here.repeatCloses || here.endingCloses || partNext ||
           here.closes == BarLine::Double || here.closes == BarLine::Final ||
           bar + 1 == tune.bars.size();
}

// A note as it is heard: tied ones are one.
struct JoinedNote {
    Length at;
    Length length;
    bool begins = true; // it is plucked here: no rest, and not tied over from the bar before
};

// The notes of a bar; `over`: that of the bar before which is tied into it, and then its own.
std::vector<JoinedNote> joinedNotes(Bar const& bar, Note const*& over)
{
    std::vector<JoinedNote> heard;
    for (Note const& note : bar.notes) {
        bool const goesOn = over && !note.pitches.empty() && over->pitches == note.pitches;
        over = note.tied ? &note : nullptr;
        if (goesOn && !heard.empty())
            heard.back().length = heard.back().length + note.length;
        else
            heard.push_back({note.at, note.length, !note.pitches.empty() && !goesOn});
    }
    return heard;
}

bool opensEvenly(Bar const& bar, std::vector<JoinedNote> const& notes, Length crotchet)
{
    constexpr std::size_t three = 3;
    if (bar.upbeat != Length{}) return false;
    if (notes.size() < three) return false;
    return std::all_of(
        notes.begin(), notes.begin() + three,
        [crotchet](JoinedNote const& note) { return note.begins && note.length == crotchet; });
}

Density densityOf(Tune const& tune)
{
    Density out;
    std::vector<int> counts;
    int beats = 0;
    int notes = 0;
    int strains = 0;
    Note const* over = nullptr;
    for (BarIndex const b : tune.bars.indices()) {
        Bar const& bar = tune.bars[b];
        std::vector<JoinedNote> const heard = joinedNotes(bar, over);
        // A reel written small counts quavers as its beats.
        Length const pair{isMeter(bar.meter, 2, 4) ? Rational(1, 8)
                                                   : music::beatLength(bar.meter).wholes};
        if (endsStrain(tune, b)) {
            ++strains;
            out.evenCloses += opensEvenly(bar, heard, pair);
        }
        if (!isWhole(bar)) continue;
        int count = 0;
        for (std::size_t i = 0; i < heard.size(); ++i) {
            JoinedNote const& first = heard[i];
            if (!first.begins) continue;
            ++count;
            out.quicker += first.length.wholes < Rational(1, 8);
            if (i + 1 == heard.size()) continue;
            JoinedNote const& second = heard[i + 1];
            bool const onBeat = (first.at / pair).denominator() == 1;
            if (!onBeat || first.length + second.length != pair) continue;
            ++beats;
            out.longShort += first.length > second.length;
            out.shortLong += first.length < second.length;
            out.crotchetQuaver += first.length.wholes == second.length.wholes * Rational(2);
        }
        counts.push_back(count);
        notes += count;
    }
    if (!counts.empty()) {
        std::sort(counts.begin(), counts.end());
        out.notesABar = counts[counts.size() / 2];
    }
    double const wholeBeats = std::max(1, beats);
    out.longShort /= wholeBeats;
    out.shortLong /= wholeBeats;
    out.quicker /= std::max(1, notes);
    out.evenCloses /= std::max(1, strains);
    Meter const meter = tune.meter;
    out.crotchetQuaver /=
        std::max(1.0, static_cast<double>(counts.size()) * music::beatsInBar(meter));
    return out;
}

// Thresholds as found over labelled tunes of several tune books [music-1.3].
Kind byNotes(Tune const& tune)
{
    Meter const m = tune.meter;
    if (isMeter(m, 9, 8)) return Kind::SlipJig;
    if (isMeter(m, 3, 2)) return Kind::TripleHornpipe;
    if (isMeter(m, 12, 8)) return Kind::SingleJig;
    Density const d = densityOf(tune);
    if (isMeter(m, 6, 8)) {
        constexpr double fewNotes = 3;
        constexpr double manyQuick = 0.2;
        if (d.notesABar <= fewNotes || d.quicker > manyQuick) return Kind::Air;
        return d.crotchetQuaver > 0.5 ? Kind::SingleJig : Kind::Jig;
    }
    if (isMeter(m, 3, 4) || isMeter(m, 3, 8)) {
        constexpr double mostOfWaltz = 5;
        return d.notesABar > mostOfWaltz ? Kind::Air : Kind::Waltz;
    }
    bool const small = isMeter(m, 2, 4);
    if (!small && !isCommon(m)) return Kind::Other;
    constexpr double mostOfPolka = 5;
    constexpr double leastOfReel = 6.5;
    constexpr double fewestOfDance = 3;
    if (small && d.notesABar <= mostOfPolka) return Kind::Polka;
    if (!small && d.notesABar < fewestOfDance) return Kind::Air;
    if (!small && d.shortLong >= 0.1) return Kind::Strathspey;
    bool const closesSo = d.evenCloses >= 0.25 && d.notesABar >= mostOfPolka;
    if (d.longShort >= 0.4 || closesSo) return Kind::Hornpipe;
    return small || d.notesABar >= leastOfReel ? Kind::Reel : Kind::March;
}

} // namespace

std::string_view kindName(Kind kind) { return rowOf(kind).name; }

Kind kindOf(Tune const& tune)
{
    if (auto const named = kindNamed(tune.rhythm); named && suits(*named, tune.meter))
        return *named;
    if (auto const named = kindNamed(tune.title); named && suits(*named, tune.meter))
        return *named;
    return byNotes(tune);
}

std::optional<Length> pulseOf(Kind kind, Meter meter)
{
    if (kind == Kind::Air) return std::nullopt;
    if (isCommon(meter)) return Length{Rational(1, 2)};
    return music::beatLength(meter);
}

Tempo tempoFor(Kind kind, Meter meter, int level)
{
    constexpr std::array<double, 5> towardsHarp{0, 0, 0.25, 0.65, 1};
    KindRow const& row = rowOf(kind);
    double const share = towardsHarp[static_cast<std::size_t>(std::clamp(level, 1, 5) - 1)];
    double const beats = std::round(row.learn + share * (row.harp - row.learn));
    // A dance whose beat fills the bar, or does not divide it, goes by the beats of its meter:
    // a reel written in 2/4, an air in 6/8.
    Rational const inBar = music::barLength(meter).wholes / row.beat;
    bool const fits = inBar.denominator() == 1 && inBar > Rational(1) &&
                      !(music::isCompound(meter) && row.beat != music::beatLength(meter).wholes);
    return {fits ? Length{row.beat} : music::beatLength(meter), beats};
}

} // namespace tune
