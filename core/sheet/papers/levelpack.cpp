#include "core/sheet/papers/levelpack.h"

#include "core/base/words.h"

#include <iterator>

namespace sheet {

Document levelPack(std::vector<arrange::Arrangement> const& levels, MusicFont const& font,
                   SheetStyle const& style)
{
    SheetStyle alike = style;
    alike.lastTime = arrange::LastTime::Always; // the same bars in every level
    alike.breaks = commonBreaks(levels, font, alike);
    Document pack;
    for (arrange::Arrangement const& level : levels) {
        Document sheet = arrangementSheet(level, font, alike);
        pack.title = sheet.title;
        pack.author = sheet.author;
        pack.bookmarks.push_back(
            {base::say("Level {}", level.level.number), static_cast<int>(pack.pages.size())});
        // What is clicked belongs to one arrangement; a pack has several.
        for (Page& page : sheet.pages) {
            page.areas.clear();
            pack.pages.push_back(std::move(page));
        }
    }
    return pack;
}

} // namespace sheet
