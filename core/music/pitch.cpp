#include "core/music/pitch.h"

#include <charconv>
#include <cmath>

namespace music {

namespace {

int floorDiv(int a, int b) { return a >= 0 ? a / b : -((b - 1 - a) / b); }

std::string signs(int alter, std::string_view sharp, std::string_view flat)
{
    std::string out;
    for (int i = 0; i < alter; ++i) out += sharp;
    for (int i = 0; i > alter; --i) out += flat;
    return out;
}

} // namespace

PitchName nameAtFifths(int fifths)
{
    // Letters along the line of fifths, F first.
    constexpr std::array line{Letter::F, Letter::C, Letter::G, Letter::D,
                              Letter::A, Letter::E, Letter::B};
    int const alter = floorDiv(fifths + 1, 7);
    return {line[static_cast<std::size_t>(fifths + 1 - 7 * alter)], alter};
}

double frequencyHz(int midiKey) { return 440.0 * std::exp2((midiKey - 69) / 12.0); }

std::string shown(PitchName name)
{
    return std::string(1, "CDEFGAB"[index(name.letter)]) + signs(name.alter, "♯", "♭");
}
std::string plain(PitchName name)
{
    return std::string(1, "CDEFGAB"[index(name.letter)]) + signs(name.alter, "#", "b");
}
std::string shown(Pitch pitch) { return shown(nameOf(pitch)) + std::to_string(pitch.octave); }
std::string plain(Pitch pitch) { return plain(nameOf(pitch)) + std::to_string(pitch.octave); }

std::optional<PitchName> pitchNameFrom(std::string_view text)
{
    if (text.empty()) return std::nullopt;
    char const upper = text[0] >= 'a' && text[0] <= 'z' ? char(text[0] - 'a' + 'A') : text[0];
    auto const at = std::string_view("CDEFGAB").find(upper);
    if (at == std::string_view::npos) return std::nullopt;
    PitchName name{static_cast<Letter>(at), 0};
    for (std::string_view rest = text.substr(1); !rest.empty();) {
        auto eat = [&rest](std::string_view sign) {
            if (!rest.starts_with(sign)) return false;
            rest.remove_prefix(sign.size());
            return true;
        };
        if (eat("#") || eat("♯"))
            ++name.alter;
        else if (eat("b") || eat("♭"))
            --name.alter;
        else
            return std::nullopt;
    }
    return name;
}

std::optional<Pitch> pitchFrom(std::string_view text)
{
    auto const digits = text.find_first_of("-0123456789");
    if (digits == std::string_view::npos) return std::nullopt;
    auto const name = pitchNameFrom(text.substr(0, digits));
    if (!name) return std::nullopt;
    Pitch pitch{name->letter, name->alter, 0};
    char const* const end = text.data() + text.size();
    auto const [stop, error] = std::from_chars(text.data() + digits, end, pitch.octave);
    if (error != std::errc{} || stop != end) return std::nullopt;
    return pitch;
}

Pitch transposed(Pitch pitch, Interval by)
{
    Pitch out = naturalAt(diatonicStep(pitch) + by.steps);
    out.alter = midi(pitch) + by.semitones - midi(out);
    return out;
}

PitchName transposed(PitchName name, Interval by)
{
    return nameOf(transposed(Pitch{name.letter, name.alter, 4}, by));
}

Interval between(Pitch from, Pitch to)
{
    return {diatonicStep(to) - diatonicStep(from), midi(to) - midi(from)};
}

} // namespace music
