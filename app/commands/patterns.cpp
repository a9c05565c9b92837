#include "app/commands/verbs.h"
#include "app/keptpatterns.h"
#include "app/shelf.h"
#include "app/wishes.h"
#include "core/files/patternsjson.h"
#include "core/files/tables/tables.h"
#include "core/pattern/own.h"

#include <fmt/format.h>

#include <iostream>

namespace app {

namespace {

// With the patterns that the arranger keeps for herself and those of the call.
base::Result<pattern::PatternBook> bookFor(Call const& call,
                                           files::Tables const& tables)
{
    auto kept = keptPatterns();
    if (!kept) return kept.error();
    pattern::PatternBook book = tables.book;
    for (pattern::Pattern& own : *kept)
        book = pattern::withOwn(std::move(book), std::move(own)).book;
    return withWishes(std::move(book), call.options.wishes);
}

} // namespace

ExitStatus patterns(Call const& call)
{
    auto tables = openShelf();
    if (!tables) return refuse(tables.error());
    auto book = bookFor(call, *tables);
    if (!book) return refuse(book.error());
    if (call.json) {
        std::cout << files::patternsJson(*book) << '\n';
        return Fine;
    }
    std::cout << fmt::format("{:<16}{:<14}{:>6}  {}\n", "pattern", "fingers", "level", "feel");
    for (pattern::Pattern const& pattern : book->patterns)
        std::cout << fmt::format("{:<16}{:<14}{:>6}  {}\n", pattern.name,
                                 pattern::fingersText(pattern.notes), pattern.level,
                                 pattern.feel);
    return Fine;
}

} // namespace app
