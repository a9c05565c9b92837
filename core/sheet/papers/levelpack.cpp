#include "core/sheet/papers/levelpack.h"

#include "core/base/words.h"
#include "core/sheet/papers/emptypage.h"

#include <string>
#include <utility>

namespace sheet {

namespace {

std::vector<Document> sheetsOf(std::vector<arrange::Arrangement> const& levels,
                               MusicFont const& font, SheetStyle const& style)
{
    std::vector<Document> out;
    for (arrange::Arrangement const& level : levels)
        out.push_back(arrangementSheet(level, font, style));
    return out;
}

std::size_t pagesOf(std::vector<Document> const& sheets)
{
    std::size_t all = 0;
    for (Document const& sheet : sheets) all += sheet.pages.size();
    return all;
}

// With the same bars, lines and pages, unless the sheets by themselves take fewer pages.
std::vector<Document> alikeWhereTheyCan(std::vector<arrange::Arrangement> const& levels,
                                        MusicFont const& font, SheetStyle const& style)
{
    SheetStyle alike = style;
    alike.lastTime = arrange::LastTime::Always; // the same bars in every level
    alike.breaks = commonBreaks(levels, font, alike);
    if (alike.breaks->pages.size() > 1) {
        std::vector<Document> own = sheetsOf(levels, font, style);
        if (pagesOf(own) < alike.breaks->pages.size() * levels.size()) return own;
    }
    return sheetsOf(levels, font, alike);
}

} // namespace

Document levelPack(std::vector<arrange::Arrangement> const& levels, MusicFont const& font,
                   SheetStyle const& style)
{
    std::vector<Document> sheets = alikeWhereTheyCan(levels, font, style);
    Document pack;
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        pack.title = sheets[i].title;
        pack.author = sheets[i].author;
        std::string const level = base::say("Level {}", levels[i].level.number);
        if (sheets[i].pages.size() > 1) {
            pack.opening = Opening::InPairs;
            if (pack.pages.size() % 2 == 1) // a page on the left comes next
                pack.pages.push_back(emptyPage(level, style, font));
        }
        pack.bookmarks.push_back({level, static_cast<int>(pack.pages.size())});
        // What is clicked belongs to one arrangement; a pack has several.
        for (Page& page : sheets[i].pages) {
            page.areas.clear();
            pack.pages.push_back(std::move(page));
        }
    }
    return pack;
}

} // namespace sheet
