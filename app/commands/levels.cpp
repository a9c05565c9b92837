#include "app/commands/levels.h"

#include "core/base/words.h"
#include "core/proposal/levels.h"
#include "core/sheet/papers/levelpack.h"
#include "ui/paint/sheetfonts.h"

#include <algorithm>
#include <iostream>

namespace app {

namespace {

bool isLevel(char c) { return c >= '1' && c <= '5'; }

} // namespace

base::Result<std::vector<int>> levelsFrom(std::string const& text)
{
    std::vector<int> levels;
    base::Fault const bad{base::FaultCode::BadCall, "--levels",
                          base::say("{}; write levels such as 1-5 or 1,3,5", text)};
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (!isLevel(text[i])) return bad;
        int const first = text[i] - '0';
        int last = first;
        if (i + 2 < text.size() && text[i + 1] == '-' && isLevel(text[i + 2])) {
            last = text[i + 2] - '0';
            i += 2;
        }
        for (int level = first; level <= last; ++level) levels.push_back(level);
        if (last < first) return bad;
        ++i; // on the comma, if there is one
        if (i < text.size() && (text[i] != ',' || i + 1 == text.size())) return bad;
    }
    std::ranges::sort(levels);
    levels.erase(std::unique(levels.begin(), levels.end()), levels.end());
    if (levels.empty()) return bad;
    return levels;
}

namespace {

// What a level cannot give, and what there is to say of each, goes to stderr.
base::Result<std::vector<proposal::Proposal>> proposed(proposal::Brief const& brief,
                                                       std::vector<int> const& levels,
                                                       files::Tables const& tables)
{
    std::vector<harp::Level> wanted;
    for (int number : levels) {
        auto level = files::levelFrom(tables, number);
        if (!level) return level.error();
        wanted.push_back(*std::move(level));
    }
    auto made = proposal::proposedForLevels(brief, wanted);
    if (!made) return made.error();
    for (base::Fault const& fault : made->leftOut)
        std::cerr << "sallow: " << base::said("note: this level is left out: ")
                  << base::sentence(fault) << '\n';
    for (proposal::Proposal const& proposal : made->proposals)
        for (std::string const& warning : proposal.warnings)
            std::cerr << "sallow: " << base::said("note: level ")
                      << proposal.arrangement.level.number << ": " << warning << '\n';
    return std::move(made->proposals);
}

base::Result<sheet::Document> packOf(std::vector<proposal::Proposal> const& made,
                                     sheet::SheetStyle const& style)
{
    std::vector<arrange::Arrangement> arrangements;
    for (proposal::Proposal const& proposal : made)
        arrangements.push_back(proposal.arrangement);
    auto font = ui::musicFont();
    if (!font) return font.error();
    return sheet::levelPack(arrangements, *font, style);
}

sheet::SheetStyle slowingAs(sheet::SheetStyle style, tune::Tune const& tune,
                            files::Tables const& tables, SoundWish const& sound)
{
    style.slowing = perform::told(
        tables.ways, perform::slowingFor(tables.ways.slowings, tune, sound.slowing));
    return style;
}

} // namespace

base::Result<sheet::Document> levelPages(proposal::Brief const& brief,
                                         std::vector<int> const& levels,
                                         files::Tables const& tables,
                                         sheet::SheetStyle const& style, SoundWish const& sound)
{
    auto const made = proposed(brief, levels, tables);
    if (!made) return made.error();
    return packOf(*made, slowingAs(style, brief.tune, tables, sound));
}

base::Result<base::Done> writeLevels(proposal::Brief const& brief, std::string const& abc,
                                     std::vector<int> const& levels,
                                     files::Tables const& tables,
                                     std::vector<Output> const& outputs, SheetKind kind,
                                     sheet::SheetStyle const& style, OutputNames& names,
                                     SoundWish const& sound)
{
    auto const made = proposed(brief, levels, tables);
    if (!made) return made.error();
    std::vector<Output> pages;
    std::vector<Output> others;
    for (Output const& output : outputs) {
        if (isPages(output.kind) && kind == SheetKind::Arrangement)
            pages.push_back(output);
        else
            others.push_back(output);
    }
    for (proposal::Proposal const& proposal : *made) {
        std::string const level = std::to_string(proposal.arrangement.level.number);
        std::vector<Output> own = others;
        for (Output& output : own) output.path = named(output.path, "level" + level);
        if (own.empty()) continue;
        auto free = claimed(own, names);
        if (!free) return free.error();
        auto written = writeOutputs({proposal, abc, tables}, *free, kind, style, sound, &names);
        if (!written) return written.error();
    }
    if (pages.empty()) return base::Done{};
    auto free = claimed(pages, names);
    if (!free) return free.error();
    auto const pack = packOf(*made, slowingAs(style, brief.tune, tables, sound));
    if (!pack) return pack.error();
    return writePages(*pack, *free, &names);
}

} // namespace app
