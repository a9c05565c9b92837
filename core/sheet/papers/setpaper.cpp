#include "core/sheet/papers/setpaper.h"

#include "core/base/words.h"
#include "core/harp/levers.h"
#include "core/sheet/cautions.h"
#include "core/sheet/geometry.h"
#include "core/sheet/heading.h"
#include "core/sheet/papers/emptypage.h"
#include "core/sheet/papers/papers.h"
#include "core/sheet/pictures.h"
#include "core/sheet/words.h"
#include "core/tune/kindwords.h"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace sheet {

namespace {

using perform::PlayedSet;
using perform::TuneOfSet;

// Heights of the em in spaces.
constexpr double titleOfSet = 4.2;
constexpr double longTitleOfSet = 3.0;
constexpr double nameOfTune = 2.2;
constexpr double wordsOfTune = 1.7;
constexpr double aroundTune = 2.2;
constexpr double indent = 3.2;

// What comes next, at the foot of a tune.
std::string nextWords(TuneOfSet const& next)
{
    std::string change = perform::changeLine(next);
    if ('A' <= change.front() && change.front() <= 'Z')
        change.front() = static_cast<char>(change.front() - 'A' + 'a');
    return base::say("Next: {}; {}", next.arrangement.tune.title, change);
}

PlaceInSet placeOf(PlayedSet const& set, std::size_t index)
{
    PlaceInSet out;
    out.place = base::say("Tune {} of {}", index + 1, set.tunes.size());
    if (index > 0) out.change = perform::changeLine(set.tunes[index]);
    if (index + 1 < set.tunes.size()) out.next = nextWords(set.tunes[index + 1]);
    return out;
}

Document sheetOf(PlayedSet const& set, std::size_t index, notation::Kind kind,
                 MusicFont const& font, SheetStyle style)
{
    style.inSet = placeOf(set, index);
    if (index + 1 < set.tunes.size()) style.slowing = {}; // the next one goes on in time
    arrange::Arrangement const& arrangement = set.tunes[index].arrangement;
    switch (kind) {
    case notation::Kind::Patterns:
        return patternSheet(arrangement, font, style);
    case notation::Kind::Lead:
        return leadSheet(writtenTune(arrangement), font, style);
    case notation::Kind::Arrangement:
        break;
    }
    return arrangementSheet(arrangement, font, style);
}

double drawTitleOfSet(Pen& pen, std::string const& title, double width)
{
    double const room = 0.88 * width;
    bool const fits = widthOf(title, Face::Bold, titleOfSet) <= room;
    double const height = fits ? titleOfSet : longTitleOfSet;
    double y = 0.72 * height;
    for (std::string const& line : wrapped(title, Face::Bold, height, room)) {
        pen.words(line, {width / 2, y}, height, Face::Bold, Anchor::Centre);
        y += 1.2 * height;
    }
    return y - 1.2 * height;
}

// Words below each other from a left edge; answers the last baseline.
double drawLines(Pen& pen, std::string const& text, double y, double width, Face face, Ink ink)
{
    double baseline = y - 1.3 * wordsOfTune;
    for (std::string const& line : wrapped(text, face, wordsOfTune, width - indent)) {
        baseline += 1.3 * wordsOfTune;
        pen.words(line, {indent, baseline}, wordsOfTune, face, Anchor::Left, ink);
    }
    return baseline;
}

std::string keyAndTempo(arrange::Arrangement const& arrangement)
{
    tune::Tune const& tune = arrangement.tune;
    std::string words = music::shown(tune.key) + " · " + music::text(tune.meter);
    if (!tune.rhythm.empty()) words += " · " + tune::rhythmShown(tune.rhythm);
    return words;
}

// "page 2" or "pages 2–3"
std::string pagesWords(int first, int count)
{
    if (count < 2) return base::say("page {}", first);
    return base::say("pages {}–{}", first, first + count - 1);
}

// One tune of the list on the first page.
struct Entry {
    Pen pen;
    double height = 0;
};
Entry entryOf(PlayedSet const& set, std::size_t index, std::string const& pages,
              MusicFont const& font, double width)
{
    TuneOfSet const& tune = set.tunes[index];
    Entry entry{Pen(font), 0};
    double y = 0.75 * nameOfTune;
    double const pagesWidth = widthOf(pages, Face::Roman, wordsOfTune) + 1.5;
    entry.pen.words(std::to_string(index + 1) + ".", {0, y}, nameOfTune, Face::Bold);
    double const titleWidth = widthOf(tune.arrangement.tune.title, Face::Bold, nameOfTune);
    double const room = width - indent - pagesWidth;
    entry.pen.words(tune.arrangement.tune.title, {indent, y},
                    nameOfTune * std::min(1.0, room / std::max(titleWidth, 1.0)), Face::Bold);
    entry.pen.words(pages, {width, y}, wordsOfTune, Face::Roman, Anchor::Right, Ink::Quiet);
    y += 1.45 * wordsOfTune;
    y = drawLines(entry.pen, keyAndTempo(tune.arrangement), y, width, Face::Roman, Ink::Words);
    y += 1.45 * wordsOfTune;
    std::string const levers =
        index == 0 ? harp::setupLine(tune.arrangement.harp, tune.arrangement.levers.setup)
                   : perform::changeLine(tune);
    y = drawLines(entry.pen, levers, y, width, Face::SansBold, Ink::Lever);
    entry.height = y + 0.4;
    return entry;
}

// Where each tune begins and how many pages it takes; pages count from 1, the list's first.
struct Place {
    int first = 0;
    int count = 0;
    bool emptyBefore = false; // so that it lies on two facing pages
};
std::vector<Place> placesOf(std::vector<Document> const& sheets, int from)
{
    std::vector<Place> out;
    int page = from;
    for (Document const& sheet : sheets) {
        Place place{page, static_cast<int>(sheet.pages.size()), false};
        // A book's even pages are the left-hand ones.
        if (place.count > 1 && page % 2 == 1) {
            place.emptyBefore = true;
            ++place.first;
        }
        page = place.first + place.count;
        out.push_back(place);
    }
    return out;
}

Document listOf(PlayedSet const& set, std::vector<Place> const& places, notation::Kind kind,
                MusicFont const& font, SheetStyle const& style)
{
    Papers papers(font, style);
    papers.setRunningTitle(set.title);
    Pen title(font);
    double const titleHeight = drawTitleOfSet(title, set.title, papers.width());
    papers.add(title, titleHeight, 0);
    arrange::Arrangement const& first = set.tunes.front().arrangement;
    Pen harp(font);
    harp.words(base::say("{} tunes · {} strings · {} tuning · level {}", set.tunes.size(),
                         first.harp.count(), music::shown(first.harp.tuning()),
                         first.level.number),
               {papers.width() / 2, 0.75 * wordsOfTune}, wordsOfTune, Face::Sans,
               Anchor::Centre, Ink::Quiet);
    papers.add(harp, wordsOfTune, 1.6);
    if (kind != notation::Kind::Lead) {
        LeverPicture const picture = leverPicture(first.harp, first.levers.setup);
        Box const box = leverPictureBox(picture);
        Pen levers(font);
        drawLeverPicture(levers, picture, {(papers.width() - box.right) / 2, 0});
        papers.add(levers, box.bottom, 2.0);
    }
    for (std::size_t i = 0; i < set.tunes.size(); ++i) {
        Entry const entry =
            entryOf(set, i, pagesWords(places[i].first, places[i].count), font, papers.width());
        papers.add(entry.pen, entry.height, i == 0 ? 3.0 : aroundTune);
    }
    std::vector<std::string> closing = set.notes;
    if (kind == notation::Kind::Arrangement) closing.push_back(base::said(care));
    for (std::string const& note : closing) {
        Pen words(font);
        double y = 0;
        for (std::string const& line :
             wrapped(note, Face::Roman, wordsOfTune, papers.width())) {
            y += 1.3 * wordsOfTune;
            words.words(line, {0, y}, wordsOfTune, Face::Roman);
        }
        papers.add(words, y, aroundTune);
    }
    return std::move(papers).document(set.title, {});
}

// Marks in the style's measure, at its margins.
void addHead(Page& page, std::string const& number, SheetStyle const& style,
             MusicFont const& font)
{
    double const space = style.staffMm / 4;
    Pen head(font);
    drawRunningHead(head, {}, number, (page.widthMm - 2 * style.marginMm) / space);
    for (Mark& mark : head.marksAt({style.marginMm, style.marginMm}, space))
        page.marks.push_back(std::move(mark));
}

} // namespace

Document setPaper(PlayedSet const& set, notation::Kind kind, MusicFont const& font,
                  SheetStyle const& style)
{
    std::vector<Document> sheets;
    for (std::size_t i = 0; i < set.tunes.size(); ++i)
        sheets.push_back(sheetOf(set, i, kind, font, style));
    // The list is made twice: how long it is decides the pages that it names.
    std::vector<Place> places = placesOf(sheets, 2);
    Document out = listOf(set, places, kind, font, style);
    if (out.pages.size() > 1) {
        places = placesOf(sheets, static_cast<int>(out.pages.size()) + 1);
        out = listOf(set, places, kind, font, style);
    }
    std::size_t const listed = out.pages.size();
    out.opening = Opening::AsABook;
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        std::string const& title = set.tunes[i].arrangement.tune.title;
        if (places[i].emptyBefore) out.pages.push_back(emptyPage(title, style, font));
        int const first = static_cast<int>(out.pages.size());
        out.bookmarks.push_back({title, first, 0, 0});
        for (Bookmark const& part : sheets[i].bookmarks)
            out.bookmarks.push_back({part.text, first + part.page, part.yMm, 1});
        // What is clicked belongs to one arrangement; a set has several.
        for (Page& page : sheets[i].pages) {
            page.areas.clear();
            out.pages.push_back(std::move(page));
        }
    }
    for (std::size_t p = listed; p < out.pages.size(); ++p)
        addHead(out.pages[p], base::say("{} of {}", p + 1, out.pages.size()), style, font);
    return out;
}

} // namespace sheet
