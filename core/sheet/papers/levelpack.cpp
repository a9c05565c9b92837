#include "core/sheet/papers/levelpack.h"

#include "core/base/words.h"

#include <algorithm>
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

std::size_t mostPages(std::vector<Document> const& sheets)
{
    std::size_t most = 0;
    for (Document const& sheet : sheets) most = std::max(most, sheet.pages.size());
    return most;
}

// With the same bars, lines and pages, unless every level by itself takes fewer pages.
std::vector<Document> alikeWhereTheyCan(std::vector<arrange::Arrangement> const& levels,
                                        MusicFont const& font, SheetStyle const& style)
{
    SheetStyle alike = style;
    alike.lastTime = arrange::LastTime::Always; // the same bars in every level
    alike.breaks = commonBreaks(levels, font, alike);
    if (alike.breaks->pages.size() > 1) {
        std::vector<Document> own = sheetsOf(levels, font, style);
        if (mostPages(own) < alike.breaks->pages.size()) return own;
    }
    return sheetsOf(levels, font, alike);
}

} // namespace

Document levelPack(std::vector<arrange::Arrangement> const& levels, MusicFont const& font,
                   SheetStyle const& style)
{
    std::vector<Document> sheets = alikeWhereTheyCan(levels, font, style);
    bool const pairs = std::all_of(sheets.begin(), sheets.end(), [](Document const& sheet) {
        return sheet.pages.size() % 2 == 0;
    });
    Document pack;
    if (pairs) pack.opening = Opening::InPairs; // each begins on the left
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        pack.title = sheets[i].title;
        pack.author = sheets[i].author;
        pack.bookmarks.push_back({base::say("Level {}", levels[i].level.number),
                                  static_cast<int>(pack.pages.size())});
        // What is clicked belongs to one arrangement; a pack has several.
        for (Page& page : sheets[i].pages) {
            page.areas.clear();
            pack.pages.push_back(std::move(page));
        }
    }
    return pack;
}

} // namespace sheet
