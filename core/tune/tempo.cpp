#include "core/tune/tune.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace tune {

namespace {

using music::Length;
using music::Meter;
using music::Rational;

// The speed at which a dance is learnt, by its word.
struct DanceTempo {
    std::string_view word; // lower case; found anywhere in the rhythm field
    Rational beat;
    double beatsPerMinute;
};

// Learning speeds lie well below those of a session or a dance (reels 108 and 112 minims a
// minute, jigs 108 and 112 dotted crotchets: Breathnach 1963 and dance-band lists); the
// learning speeds themselves are from memory. Longer words first, so that "slip jig" is no
// "jig".
constexpr std::array danceTempos{
    DanceTempo{"slip jig", {3, 8}, 75},   DanceTempo{"hop jig", {3, 8}, 75},
    DanceTempo{"single jig", {3, 8}, 80}, DanceTempo{"slide", {3, 8}, 85},
    DanceTempo{"jig", {3, 8}, 75},        DanceTempo{"hornpipe", {1, 2}, 55},
    DanceTempo{"reel", {1, 2}, 80},       DanceTempo{"polka", {1, 4}, 80},
    DanceTempo{"strathspey", {1, 4}, 72}, DanceTempo{"march", {1, 4}, 80},
    DanceTempo{"waltz", {1, 4}, 84},      DanceTempo{"mazurka", {1, 4}, 90},
    DanceTempo{"planxty", {3, 8}, 50},    DanceTempo{"lullaby", {1, 4}, 40},
    DanceTempo{"air", {1, 4}, 40},
};

// For tunes without a word: the commonest dance of the meter.
struct MeterTempo {
    Meter meter;
    Rational beat;
    double beatsPerMinute;
};
constexpr std::array meterTempos{
    MeterTempo{{2, 2}, {1, 2}, 80},  // reel
    MeterTempo{{2, 4}, {1, 4}, 80},  // polka
    MeterTempo{{4, 4}, {1, 4}, 80},  // march
    MeterTempo{{3, 4}, {1, 4}, 84},  // waltz
    MeterTempo{{3, 8}, {1, 8}, 84},  // waltz, written small
    MeterTempo{{6, 8}, {3, 8}, 75},  // double jig
    MeterTempo{{9, 8}, {3, 8}, 75},  // slip jig
    MeterTempo{{12, 8}, {3, 8}, 85}, // slide
    MeterTempo{{3, 2}, {1, 2}, 60},  // hornpipe in three minims
};

std::string lowerCase(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text;
}

// A dance in a meter that its beat does not divide ("reel" in 2/4, "hornpipe" in 3/2) is
// counted as its meter is.
bool beatFits(DanceTempo const& dance, Meter meter)
{
    Rational const beats = barLength(meter).wholes / dance.beat;
    return beats.denominator() == 1 && beats > Rational(1);
}

Tempo byMeter(Meter meter)
{
    for (MeterTempo const& row : meterTempos)
        if (row.meter.beats == meter.beats && row.meter.unit == meter.unit)
            return {Length{row.beat}, row.beatsPerMinute};
    return {beatLength(meter), 80};
}

} // namespace

Tempo usualTempo(Tune const& tune)
{
    std::string const rhythm = lowerCase(tune.rhythm);
    for (DanceTempo const& dance : danceTempos)
        if (rhythm.find(dance.word) != std::string::npos)
            return beatFits(dance, tune.meter) ? Tempo{Length{dance.beat}, dance.beatsPerMinute}
                                               : byMeter(tune.meter);
    return byMeter(tune.meter);
}

std::string tempoWords(Length beat, double quarters)
{
    struct BeatName {
        Rational length;
        std::string_view name;
    };
    constexpr std::array names{
        BeatName{{3, 4}, "dotted minims"},    BeatName{{1, 2}, "minims"},
        BeatName{{3, 8}, "dotted crotchets"}, BeatName{{1, 4}, "crotchets"},
        BeatName{{3, 16}, "dotted quavers"},  BeatName{{1, 8}, "quavers"}};
    auto const known = std::find_if(names.begin(), names.end(), [beat](BeatName const& n) {
        return n.length == beat.wholes;
    });
    bool const named = known != names.end();
    double const beats = named ? quarters / (beat.wholes * Rational(4)).toDouble() : quarters;
    // A hair is added so that a tempo met exactly is not rounded down by one.
    return std::to_string(static_cast<int>(beats + 1e-6)) + ' ' +
           std::string(named ? known->name : "crotchets") + " a minute";
}

} // namespace tune
