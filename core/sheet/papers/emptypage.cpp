#include "core/sheet/papers/emptypage.h"

#include "core/base/words.h"
#include "core/sheet/pen.h"

#include <utility>

namespace sheet {

Page emptyPage(std::string const& next, SheetStyle const& style, MusicFont const& font)
{
    PaperSize const paper = sizeOf(style.paper);
    Page page{paper.widthMm, paper.heightMm, {}, {}};
    double const space = style.staffMm / 4;
    constexpr double wordsHeight = 1.7; // of the em, in spaces
    Pen words(font);
    words.words(base::say("This page is empty so that “{}” lies open on two pages.", next),
                {(paper.widthMm / 2 - style.marginMm) / space,
                 (paper.heightMm / 2 - style.marginMm) / space},
                wordsHeight, Face::Italic, Anchor::Centre, Ink::Quiet);
    for (Mark& mark : words.marksAt({style.marginMm, style.marginMm}, space))
        page.marks.push_back(std::move(mark));
    return page;
}

} // namespace sheet
