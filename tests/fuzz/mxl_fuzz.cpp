#include "core/files/musicxml/mxl.h"
#include "core/files/musicxml/read.h"
#include "tests/fuzz/outside.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

// An archive, damaged in places: the first line names the score in it, the second says how many
// bytes of the archive are changed, each by a place in two bytes and a value, and the rest is the
// score. So the check sums stay right where nothing is changed, which bytes at random never reach.
// Bytes that are an archive already are read as they are, too.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size)
{
    std::string_view rest(reinterpret_cast<char const*>(bytes), size);
    if (files::looksZipped(rest)) {
        (void)files::readMusicXml(rest, "fuzz");
        return 0;
    }
    std::size_t const named = std::min(rest.find('\n'), rest.size());
    std::string const name(rest.substr(0, std::min<std::size_t>(named, 300)));
    rest.remove_prefix(std::min(named + 1, rest.size()));
    if (rest.empty()) return 0;
    auto const changes = static_cast<std::size_t>(static_cast<unsigned char>(rest[0]) % 8);
    std::string_view const damage = rest.substr(1, 3 * changes);
    rest.remove_prefix(std::min(1 + 3 * changes, rest.size()));

    std::string zip = files::mxlFile(rest, name);
    if (changes == 0) {
        auto const score = files::scoreInMxl(zip, "fuzz");
        if (score) fuzz::demand(*score == rest, "what is packed is unpacked the same");
    }
    for (std::size_t i = 0; i + 2 < damage.size(); i += 3) {
        auto const at = static_cast<std::size_t>(static_cast<unsigned char>(damage[i]) * 256 +
                                                 static_cast<unsigned char>(damage[i + 1]));
        zip[at % zip.size()] = damage[i + 2];
    }
    (void)files::readMusicXml(zip, "fuzz");
    return 0;
}
