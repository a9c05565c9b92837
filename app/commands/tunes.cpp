#include "app/cli/job.h"
#include "app/commands/verbs.h"
#include "app/shelf.h"
#include "app/tunereading.h"
#include "core/base/words.h"
#include "core/collection/listing.h"
#include "core/files/abc/fields.h"
#include "core/files/tunesjson.h"

#include <fmt/format.h>

#include <filesystem>
#include <iostream>

namespace app {

namespace {

using base::Fault;
using base::FaultCode;
using base::Result;
using collection::Row;

Fault wrongWord(char const* option, std::string const& word, std::string why)
{
    return {FaultCode::BadCall, fmt::format("{} {}", option, word), std::move(why)};
}

// What the call looks for. Kinds are compared apart: files spell them in many ways.
Result<collection::Wish> wishOf(FindOptions const& find)
{
    collection::Wish wish;
    wish.words = find.words;
    if (!find.key.empty()) {
        auto const key = music::keyFrom(find.key);
        if (!key)
            return wrongWord("--key", find.key,
                             base::said("this is not a key; write one such as G, Em or Ador"));
        wish.key = music::shown(*key);
    }
    if (!find.meter.empty()) {
        auto const meter = files::abcMeter(find.meter);
        if (!meter || !meter->meter)
            return wrongWord("--meter", find.meter,
                             base::said("this is not a time signature; write one such as 6/8"));
        wish.meter = music::text(*meter->meter);
    }
    if (!find.notes.empty()) {
        wish.notes = collection::firstNotesFrom(find.notes);
        if (!wish.notes || wish.notes->notes.empty())
            return wrongWord(
                "--notes", find.notes,
                base::said(
                    "these are not notes; write letters, such as g a b d, or degrees, such "
                    "as 1 2 3 5"));
    }
    if (!find.arranged.empty()) wish.arranged = find.arranged == "yes";
    return wish;
}

std::string keyWords(Row const& row)
{
    return row.tune.unreadable.empty() ? music::shown(row.tune.key) : std::string("-");
}

std::string lineFor(Row const& row, bool ofFolder)
{
    collection::TuneEntry const& tune = row.tune;
    std::string const number =
        ofFolder ? row.name.file + ": " : fmt::format("X:{:<5} ", tune.number);
    if (!tune.unreadable.empty())
        return base::say("{}{:<40} cannot be read: {}\n", number, tune.title, tune.unreadable);
    std::string const kind = collection::kindWords(tune);
    std::string const arranged = row.arrangement ? base::said("an arrangement")
                                 : row.arranged.empty()
                                     ? std::string()
                                     : base::say("arranged: {}", row.arranged);
    return fmt::format("{}{:<40} {:<12} {:<12} {:<6} {:>4} {:<5} {}{}\n", number, tune.title,
                       kind.empty() ? "-" : kind, keyWords(row), music::text(tune.meter),
                       tune.bars, base::said(tune.bars == 1 ? "count|bar" : "count|bars"),
                       tune.chords ? base::said("chords") : base::said("no chords"),
                       arranged.empty() ? arranged : "; " + arranged);
}

std::vector<Row> rowsThatFit(std::vector<Row> rows, collection::Wish const& wish,
                             std::string const& kind)
{
    std::vector<Row> out;
    for (std::size_t const i : collection::found(rows, wish))
        if (kind.empty() ||
            collection::folded(collection::kindWords(rows[i].tune)) == collection::folded(kind))
            out.push_back(std::move(rows[i]));
    return out;
}

} // namespace

ExitStatus tunes(Call const& call)
{
    auto const wish = wishOf(call.find);
    if (!wish) return refuse(wish.error());
    auto const tables = openShelf();
    if (!tables) return refuse(tables.error());
    std::error_code unknown;
    bool const ofFolder = std::filesystem::is_directory(call.input, unknown);
    std::vector<collection::FileEntry> entries;
    if (ofFolder) {
        Gathered found =
            gathered({call.input}, {}, *tables, [](Gathered const&, int, int) { return true; });
        for (collection::FileEntry const& file : found.files)
            if (!file.unreadable.empty()) std::cerr << "sallow: " << file.unreadable << '\n';
        entries = std::move(found.files);
    } else {
        auto const book = openBook(call.input, *tables);
        if (!book) return refuse(book.error());
        entries.push_back(entryOfBook(call.input, *book));
    }
    std::vector<Row> const rows =
        rowsThatFit(collection::rowsOf(entries, {}), *wish, call.find.kind);
    for (Row const& row : rows)
        std::cout << (call.json ? files::tuneRowJson(row) + '\n' : lineFor(row, ofFolder));
    return Fine;
}

} // namespace app
