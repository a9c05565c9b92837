#include "core/music/key.h"

#include "core/base/named.h"
#include "core/base/words.h"

#include <algorithm>
#include <cctype>

namespace music {

namespace {

// How words begin, in lower case; three letters decide, as in ABC 2.1, section 3.1.14.
constexpr auto modeWords = std::to_array<base::Named<Mode>>({
    {"maj", Mode::Ionian},
    {"ion", Mode::Ionian},
    {"dor", Mode::Dorian},
    {"phr", Mode::Phrygian},
    {"lyd", Mode::Lydian},
    {"mix", Mode::Mixolydian},
    {"min", Mode::Aeolian},
    {"aeo", Mode::Aeolian},
    {"loc", Mode::Locrian},
});

} // namespace

Key keyOf(int wanted, Mode mode)
{
    Key key{PitchName{}, mode};
    int const away = wanted - signature(key);
    key.tonic = nameAtFifths(fifths(key.tonic) + away);
    return key;
}

std::string_view modeName(Mode mode)
{
    constexpr auto names = base::markedList("major", "dorian", "phrygian", "lydian",
                                            "mixolydian", "minor", "locrian");
    return names[static_cast<std::size_t>(mode)];
}

std::string shown(Key key)
{
    constexpr auto sentences =
        base::markedList("{} major", "{} dorian", "{} phrygian", "{} lydian", "{} mixolydian",
                         "{} minor", "{} locrian");
    std::string const tonic = shown(key.tonic);
    return base::saidWith(sentences[static_cast<std::size_t>(key.mode)],
                          fmt::make_format_args(tonic));
}

std::string plain(Key key)
{
    constexpr std::array endings{"", "dor", "phr", "lyd", "mix", "m", "loc"};
    return plain(key.tonic) + endings[static_cast<std::size_t>(key.mode)];
}

std::optional<Key> keyFrom(std::string_view text)
{
    std::size_t end = text.empty() ? 0 : 1;
    while (end < text.size() && (text[end] == '#' || text[end] == 'b')) ++end;
    // "Bb" is B flat; a lone "b" behind the letter belongs to the note, never to a mode.
    while (end < text.size() &&
           (text.substr(end).starts_with("♯") || text.substr(end).starts_with("♭")))
        end += std::string_view("♯").size();
    auto const tonic = pitchNameFrom(text.substr(0, end));
    if (!tonic) return std::nullopt;

    std::string mode;
    for (char c : text.substr(end))
        if (!std::isspace(static_cast<unsigned char>(c)))
            mode += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    if (mode.empty()) return Key{*tonic, Mode::Ionian};
    if (mode == "m") return Key{*tonic, Mode::Aeolian};
    auto const word =
        std::find_if(modeWords.begin(), modeWords.end(),
                     [&mode](auto const& row) { return mode.starts_with(row.name); });
    if (word == modeWords.end()) return std::nullopt;
    return Key{*tonic, word->value};
}

} // namespace music
