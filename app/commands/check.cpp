#include "core/files/check.h"
#include "app/commands/verbs.h"
#include "app/input.h"
#include "app/shelf.h"
#include "core/base/words.h"

#include <fmt/format.h>

#include <iostream>

namespace app {

namespace {

std::string placeText(tune::Place place)
{
    if (place.line <= 0) return {};
    return base::say("line {}", place.line) + base::said("line|, column ") +
           std::to_string(place.column) + ": ";
}

void say(tune::Tune const& tune, std::optional<harmony::FoundKey> const& found)
{
    std::cout << "X:" << tune.number << ' ' << tune.title << ": " << tune.bars.size()
              << base::said(" bars, ") << music::shown(tune.key) << ", "
              << music::text(tune.meter) << '\n';
    if (found) {
        harmony::LikelyKey const& best = found->likely.front();
        std::cout << base::say("  from its notes: {}, {:.0f} % sure; {}\n", shown(best.key),
                               100 * best.probability, found->reason);
        if (auto const other = keyContradiction(*found, tune.key))
            std::cout << "  " << *other << base::said("; change K: if you agree\n");
    }
    for (tune::Remark const& remark : tune.said)
        std::cout << "  " << placeText(remark.place) << remark.what << "; " << remark.did
                  << '\n';
}

} // namespace

ExitStatus check(Call const& call)
{
    auto tables = openShelf();
    if (!tables) return refuse(tables.error());
    auto book = openBook(call.input, *tables);
    if (!book) return refuse(book.error());
    ExitStatus status = Fine;
    for (files::AbcEntry const& entry : book->entries) {
        auto tune = readTune(*book, entry);
        if (!tune) {
            status = refuse(tune.error());
            continue;
        }
        auto const found = harmony::foundKey(tables->harmony.keys, *tune);
        if (call.json)
            std::cout << files::checkLine(*tune, found) << '\n';
        else
            say(*tune, found);
    }
    return status;
}

} // namespace app
