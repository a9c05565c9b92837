#include "app/commands/verbs.h"
#include "app/exitstatus.h"
#include "app/keptpatterns.h"
#include "app/wishes.h"
#include "app/shelf.h"
#include "core/files/patternsjson.h"
#include "core/files/tables/tables.h"
#include "core/pattern/own.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <iostream>

namespace app {

namespace {

struct PatternsCall {
    bool json = false;
    Wishes wishes;
};

// With the patterns that the arranger keeps for herself and those of the call.
base::Result<pattern::PatternBook> bookFor(PatternsCall const& call,
                                           files::Tables const& tables)
{
    auto kept = keptPatterns();
    if (!kept) return kept.error();
    pattern::PatternBook book = tables.book;
    for (pattern::Pattern& own : *kept)
        book = pattern::withOwn(std::move(book), std::move(own)).book;
    return withWishes(std::move(book), call.wishes);
}

ExitStatus patterns(PatternsCall const& call)
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

} // namespace

void declarePatterns(CLI::App& program, int& status)
{
    auto call = std::make_shared<PatternsCall>();
    CLI::App* verb = program.add_subcommand(
        "patterns", "list the pattern book, with the patterns you keep for yourself");
    verb->add_flag("--json", call->json, "as JSON");
    verb->add_option("--pattern", call->wishes.patterns, "check and list one of your own")
        ->take_all();
    verb->add_option("--patterns", call->wishes.patternFiles, "list those of a file, too")
        ->take_all();
    verb->callback([call, &status] { status = patterns(*call); });
}

} // namespace app
