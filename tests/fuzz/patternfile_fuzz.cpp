#include "core/files/patternsjson.h"
#include "core/files/tables/patternfile.h"
#include "core/pattern/own.h"
#include "tests/fuzz/outside.h"

#include <cstddef>
#include <cstdint>
#include <string_view>

// The arranger's own patterns.json: patterns or a fault, and what is read is written and read the
// same, and can join the book.
extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size)
{
    std::string_view const text(reinterpret_cast<char const*>(bytes), size);
    auto const own = files::readPatternFile(text, "fuzz");
    if (!own) return 0;
    auto const again = files::readPatternFile(files::patternFileText(*own), "again");
    fuzz::demand(again && *again == *own, "patterns are written and read the same");
    pattern::PatternBook book;
    for (pattern::Pattern const& p : *own) book = pattern::withOwn(std::move(book), p).book;
    (void)files::patternsJson(book);
    return 0;
}
