#include "app/cli/job.h"
#include "app/commands/verbs.h"
#include "app/shelf.h"
#include "core/base/words.h"
#include "core/files/abc/headings.h"

#include <fmt/format.h>

#include <iostream>

namespace app {

namespace {

// A line for each tune of a book; one that cannot be read stands among them with its reason.
std::string lineFor(Book const& book, files::AbcEntry const& entry)
{
    std::string const number = fmt::format("X:{:<5} ", entry.number);
    auto const tune = readTune(book, entry);
    if (!tune)
        return base::say("{}{:<40} cannot be read: {}\n", number, entry.title,
                         base::sentence(tune.error()));
    int const bars = files::barsCounted(*tune);
    return fmt::format("{}{:<40} {:<12} {:<12} {:<6} {:>4} {:<5} {}\n", number, tune->title,
                       tune->rhythm.empty() ? "-" : tune->rhythm, music::shown(tune->key),
                       music::text(tune->meter), bars,
                       base::said(bars == 1 ? "count|bar" : "count|bars"),
                       tune::hasChords(*tune) ? base::said("chords") : base::said("no chords"));
}

} // namespace

ExitStatus tunes(Call const& call)
{
    auto const tables = openShelf();
    if (!tables) return refuse(tables.error());
    auto const book = openBook(call.input, *tables);
    if (!book) return refuse(book.error());
    for (files::AbcEntry const& entry : book->entries) std::cout << lineFor(*book, entry);
    return Fine;
}

} // namespace app
