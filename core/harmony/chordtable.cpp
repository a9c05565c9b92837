#include "core/harmony/chordtable.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace harmony {

std::string text(Degree degree)
{
    constexpr std::array endings{"", "m", "o"};
    return std::to_string(degree.semitones) +
           endings[static_cast<std::size_t>(degree.quality)];
}

std::optional<Degree> degreeFrom(std::string_view written)
{
    Degree degree;
    char const* const from = written.data();
    char const* const end = from + written.size();
    auto const read = std::from_chars(from, end, degree.semitones);
    if (read.ec != std::errc() || degree.semitones < 0 || degree.semitones > 11) return {};
    std::string_view const rest(read.ptr, static_cast<std::size_t>(end - read.ptr));
    if (rest == "m")
        degree.quality = Quality::Minor;
    else if (rest == "o")
        degree.quality = Quality::Diminished;
    else if (!rest.empty())
        return {};
    return degree;
}

std::optional<Degree> degreeOf(music::Chord const& chord, int tonic)
{
    auto const has = [&chord](music::Interval interval) {
        return std::find(chord.tones.begin(), chord.tones.end(), interval) != chord.tones.end();
    };
    Degree degree{((pitchClass(chord.root) - tonic) % 12 + 12) % 12, Quality::Major};
    if (has({2, 3}))
        degree.quality = has({4, 6}) ? Quality::Diminished : Quality::Minor;
    else if (!has({2, 4}))
        return {};
    return degree;
}

music::Chord chordOn(Degree degree, int signature)
{
    // Fifths from the major tonic by which each root is spelt: C D♭ D E♭ E F F♯ G A♭ A B♭ B in
    // C; minor and diminished chords on raised roots are leading chords and spelt sharp.
    constexpr std::array majors{0, -5, 2, -3, 4, -1, 6, 1, -4, 3, -2, 5};
    constexpr std::array others{0, 7, 2, -3, 4, -1, 6, 1, 8, 3, -2, 5};
    auto const s = static_cast<std::size_t>(degree.semitones);
    int const steps = degree.quality == Quality::Major ? majors[s] : others[s];
    constexpr std::array suffixes{"", "m", "dim"};
    std::string const symbol = plain(music::nameAtFifths(signature + steps)) +
                               suffixes[static_cast<std::size_t>(degree.quality)];
    return *music::chordFrom(symbol);
}

} // namespace harmony
