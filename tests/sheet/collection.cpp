// Counts engraving faults by kind over whole tune books: measure_sheets BOOK.abc ...
// Lead sheets of all tunes, arrangement sheets of those with chords. Built by name only; the
// tests measure a sample in the same way.

#include "core/files/abc/read.h"
#include "core/files/tables/tables.h"
#include "core/files/textfile.h"
#include "core/proposal/proposal.h"
#include "tests/places.h"
#include "tests/sheet/violations.h"

#include <iostream>

namespace {

struct Measured {
    measure::Counts counts;
    int leads = 0;
    int arrangements = 0;
    int pages = 0;
};

std::optional<arrange::Arrangement> proposed(tune::Tune const& tune, proposal::Passes passes)
{
    static files::Tables const tables = *files::readTables(places::shared());
    proposal::Brief brief;
    brief.tune = tune;
    brief.harp = *files::harpFrom(tables, "floor34", "Eb");
    brief.hand = *files::handFrom(tables, "medium");
    brief.level = *files::levelFrom(tables, 4);
    brief.book = tables.book;
    brief.weights = tables.styles.front();
    brief.passes = passes;
    auto const proposal = proposal::propose(brief);
    if (!proposal) return std::nullopt;
    return proposal->arrangement;
}

void measureSheet(Measured& out, sheet::Document const& document, sheet::MusicFont const& font,
                  int staves, std::string const& name)
{
    measure::Counts const found = measure::violations(document, font, staves);
    for (auto const& [kind, count] : found)
        std::cout << "  " << name << ": " << kind << ' ' << count << '\n';
    measure::add(out.counts, found);
    out.pages += static_cast<int>(document.pages.size());
}

void measureBook(Measured& out, std::string const& path, sheet::MusicFont const& font)
{
    std::string const text = *files::readTextFile(path);
    auto const entries = files::abcTunes(text, path);
    if (!entries) return;
    for (std::size_t i = 0; i < entries->size(); ++i) {
        auto const tune = files::readAbc(text, (*entries)[i], path);
        if (!tune) continue;
        std::string const name =
            path.substr(path.rfind('/') + 1) + " " + std::to_string((*entries)[i].number);
        measureSheet(out, sheet::leadSheet(*tune, font, {}), font, 1, name + " lead");
        ++out.leads;
        if (!tune::hasChords(*tune)) continue;
        for (auto passes : {proposal::Passes::Written, proposal::Passes::Varied}) {
            bool const varied = passes == proposal::Passes::Varied;
            if (varied && i % 4 != 0) continue;
            if (auto const arrangement = proposed(*tune, passes)) {
                measureSheet(out, sheet::arrangementSheet(*arrangement, font, {}), font, 2,
                             name + (varied ? " varied" : " arranged"));
                ++out.arrangements;
            }
        }
    }
}

} // namespace

int main(int argc, char** argv)
{
    auto const metadata = files::readTextFile(places::musicFont() + "/metadata.json");
    auto const font = files::musicFontFrom(metadata ? *metadata : std::string());
    if (!font) {
        std::cerr << "the music font is not there (npm ci in packaging/)\n";
        return 1;
    }
    Measured all;
    for (int i = 1; i < argc; ++i) measureBook(all, argv[i], *font);
    std::cout << all.leads << " lead sheets, " << all.arrangements << " arrangement sheets, "
              << all.pages << " pages\n";
    for (auto const& [kind, count] : all.counts) std::cout << kind << ": " << count << '\n';
}
