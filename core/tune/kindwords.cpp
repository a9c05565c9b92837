#include "core/tune/kindwords.h"

#include "core/base/words.h"

#include <algorithm>
#include <cctype>

namespace tune {

namespace {

// The kinds by their names, and other words of rhythm fields. The bar tells them from words
// that are written alike; what stands before it is not shown.
constexpr auto kindSayings = base::markedList(
    "kind|waltz", "kind|jig", "kind|single jig", "kind|slip jig", "kind|reel", "kind|hornpipe",
    "kind|polka", "kind|march", "kind|strathspey", "kind|air", "kind|mazurka",
    "kind|triple hornpipe", "kind|other", "kind|double jig", "kind|hop jig", "kind|slide",
    "kind|slow air", "kind|schottische", "kind|barndance", "kind|lament", "kind|lullaby",
    "kind|song", "kind|carol", "kind|hymn");

std::string lowered(std::string text)
{
    for (char& c : text) {
        c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
        if (c == '_') c = ' ';
    }
    return text;
}

} // namespace

std::string kindText(Kind kind) { return lowered(std::string(kindName(kind))); }

std::string kindShown(Kind kind) { return rhythmShown(kindText(kind)); }

std::string rhythmShown(std::string const& rhythm)
{
    std::string const name = lowered(rhythm);
    auto const* const found =
        std::ranges::find_if(kindSayings, [&name](std::string_view saying) {
            return saying.substr(saying.find('|') + 1) == name;
        });
    if (found == kindSayings.end()) return rhythm;
    std::string const shown = base::said(*found);
    return shown == name ? rhythm : shown;
}

} // namespace tune
