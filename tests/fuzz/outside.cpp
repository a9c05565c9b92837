#include "tests/fuzz/outside.h"

#include "core/files/textfile.h"

#include <cstdio>
#include <cstdlib>
#include <optional>

namespace fuzz {

files::Tables const& tables()
{
    static files::Tables const read = [] {
        auto result = files::readTables(SALLOW_FUZZ_SHARED);
        demand(static_cast<bool>(result), "the shipped tables can be read");
        return *std::move(result);
    }();
    return read;
}

sheet::MusicFont const* font()
{
    static std::optional<sheet::MusicFont> const read = []() -> std::optional<sheet::MusicFont> {
        auto const metadata = files::readTextFile(SALLOW_FUZZ_FONT "/metadata.json");
        if (!metadata) return std::nullopt;
        auto result = files::musicFontFrom(*metadata);
        demand(static_cast<bool>(result), "the font's metadata can be read");
        return *std::move(result);
    }();
    return read ? &*read : nullptr;
}

void demand(bool holds, std::string const& promise)
{
    if (holds) return;
    std::fprintf(stderr, "broken: %s\n", promise.c_str());
    std::abort();
}

} // namespace fuzz
