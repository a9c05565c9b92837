// Counts engraving faults by kind over whole tune books, how their sheets are divided and
// turned: measure_sheets [--levels 1,3,5] [--slowing PERCENT] BOOK.abc ... Lead sheets of all
// tunes, arrangement sheets of those with chords at each level, on A4 and Letter; one tune in
// four also with passes that vary, and one in eight in huge print with all that helps
// beginners. Their ends are told to slow as is usual for the kind, or by so much. Built by name
// only; the tests measure a sample in the same way.

#include "core/files/abc/read.h"
#include "core/files/textfile.h"
#include "core/notation/notation.h"
#include "core/notation/placings.h"
#include "core/sheet/turns.h"
#include "tests/sheet/arranged.h"
#include "tests/sheet/violations.h"

#include <cstdlib>
#include <iostream>
#include <optional>
#include <set>

namespace {

// How sheets of one kind are divided.
struct Divided {
    int sheets = 0;
    std::map<int, std::map<int, int>> pages; // by systems: how many sheets take so many pages
    int loneLast = 0;                        // sheets whose last page has one system
    int lines = 0;                           // not the first of a sheet
    int offPhrase = 0;                       // of these
    int bars = 0;
    int brackets = 0;
    int turns = 0; // pages lie open two by two
    int easyTurns = 0;
};

struct Measured {
    measure::Counts counts;
    int leads = 0;
    int arrangements = 0;
    int pages = 0;
    std::map<std::string, Divided> divided;
    std::optional<int> slowing; // per cent, told on arrangement sheets; none: what is usual
};

// The first bar of each line, page by page.
std::vector<std::vector<tune::BarIndex>> linesOf(sheet::Document const& document)
{
    std::vector<std::vector<tune::BarIndex>> pages;
    for (sheet::Page const& page : document.pages) {
        std::vector<tune::BarIndex> lines;
        double y = -1;
        for (sheet::Area const& area : page.areas) {
            if (area.position || std::abs(area.topLeft.y - y) < 1e-6) continue;
            y = area.topLeft.y;
            lines.push_back(area.bar);
        }
        pages.push_back(std::move(lines));
    }
    return pages;
}

// Bars that begin a phrase of four of their part; bars of later endings and what is left of a
// bar after a pick-up are not counted.
std::set<int> phraseBegins(tune::Tune const& tune)
{
    std::set<int> begins;
    int inPart = 0;
    bool later = false;
    for (tune::BarIndex const i : tune.bars.indices()) {
        tune::Bar const& bar = tune.bars[i];
        bool part = !bar.part.empty() || bar.repeatOpens;
        if (i > 0) {
            tune::Bar const& before = tune.bars[i - 1];
            part = part || (before.repeatCloses && bar.endings.empty()) ||
                   before.closes == tune::BarLine::Double ||
                   music::signature(before.key) != music::signature(bar.key);
        }
        if (!bar.endings.empty()) later = bar.endings.front() > 1;
        if (part) inPart = 0;
        if (part || (!later && inPart % 4 == 0) || later) begins.insert(static_cast<int>(i));
        bool const whole = !(bar.length < music::barLength(bar.meter));
        if (!later && whole) ++inPart;
        if (bar.endingCloses) later = false;
    }
    return begins;
}

void divide(Divided& out, sheet::Document const& document, tune::Tune const& tune)
{
    auto const pages = linesOf(document);
    int systems = 0;
    for (auto const& lines : pages) systems += static_cast<int>(lines.size());
    ++out.sheets;
    ++out.pages[systems][static_cast<int>(pages.size())];
    if (pages.size() > 1 && pages.back().size() == 1) ++out.loneLast;
    auto const begins = phraseBegins(tune);
    int before = -1;
    for (auto const& lines : pages)
        for (tune::BarIndex const bar : lines) {
            if (bar < before) return; // written out: bars come again
            before = bar;
        }
    bool first = true;
    for (auto const& lines : pages)
        for (tune::BarIndex const bar : lines) {
            if (!std::exchange(first, false)) {
                ++out.lines;
                if (!begins.contains(bar)) ++out.offPhrase;
            }
        }
}

// Where a page is turned, and whether a hand is free for it.
void countTurns(Divided& out, sheet::Document const& document,
                arrange::Arrangement const& arrangement)
{
    auto const pages = linesOf(document);
    sheet::Score score;
    static_cast<notation::Notation&>(score) =
        notation::of(arrangement, notation::Kind::Arrangement);
    for (std::size_t p = 2; p < pages.size(); p += 2) {
        if (pages[p].empty()) continue;
        ++out.turns;
        if (sheet::freeBefore(score, pages[p].front()) >= sheet::enoughToTurn) ++out.easyTurns;
    }
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

constexpr std::array papers{std::pair{sheet::Paper::A4, "A4"},
                            std::pair{sheet::Paper::Letter, "Letter"}};

void measureArranged(Measured& out, arrange::Arrangement const& arrangement,
                     sheet::MusicFont const& font, std::string const& name, int level,
                     bool plain, bool helped)
{
    for (auto const& [paper, words] : papers) {
        sheet::SheetStyle style;
        style.paper = paper;
        perform::DanceWays const& ways = measure::tables().ways;
        style.slowing = perform::told(
            ways, perform::slowingFor(ways.slowings, arrangement.tune, out.slowing));
        auto const document = sheet::arrangementSheet(arrangement, font, style);
        measureSheet(out, document, font, 2, name + ' ' + words);
        ++out.arrangements;
        if (!plain) continue;
        Divided& divided = out.divided["level " + std::to_string(level) + ", " + words];
        divide(divided, document, arrangement.tune);
        countTurns(divided, document, arrangement);
        divided.bars += arrangement.tune.bars.size();
        divided.brackets += static_cast<int>(
            notation::placingBrackets(arrangement, notation::Placings::Helpful).size());
        if (!helped) continue;
        style.staffMm = sheet::hugeStaffMm;
        style.helps = {true, true, true};
        measureSheet(out, sheet::arrangementSheet(arrangement, font, style), font, 2,
                     name + ' ' + words + " for beginners");
        ++out.arrangements;
    }
}

void measureBook(Measured& out, std::string const& path, sheet::MusicFont const& font,
                 std::vector<int> const& levels)
{
    std::string const text = *files::readTextFile(path);
    auto const entries = files::abcTunes(text, path);
    if (!entries) return;
    for (std::size_t i = 0; i < entries->size(); ++i) {
        auto const tune = files::readAbc(text, (*entries)[i], path);
        if (!tune) continue;
        std::string const name =
            path.substr(path.rfind('/') + 1) + " " + std::to_string((*entries)[i].number);
        for (auto const& [paper, words] : papers) {
            sheet::SheetStyle style;
            style.paper = paper;
            auto const document = sheet::leadSheet(*tune, font, style);
            measureSheet(out, document, font, 1, name + " lead " + words);
            divide(out.divided[std::string("lead, ") + words], document, *tune);
            ++out.leads;
        }
        if (!tune::hasChords(*tune)) continue;
        for (int const level : levels)
            for (auto passes : {proposal::Passes::Written, proposal::Passes::Varied}) {
                bool const varied = passes == proposal::Passes::Varied;
                if (varied && i % 4 != 0) continue;
                if (auto const arrangement = measure::arranged(*tune, level, passes))
                    measureArranged(out, *arrangement, font,
                                    name + (varied ? " varied " : " arranged ") +
                                        std::to_string(level),
                                    level, !varied, i % 8 == 0);
            }
    }
}

void print(std::string const& name, Divided const& divided)
{
    std::cout << name << ": " << divided.sheets << " sheets, " << divided.loneLast
              << " with a last page of one system, " << divided.offPhrase << " of "
              << divided.lines << " lines off the phrase";
    if (divided.bars > 0)
        std::cout << ", " << static_cast<double>(divided.brackets) / divided.bars
                  << " brackets a bar";
    if (divided.turns > 0)
        std::cout << ", " << divided.easyTurns << " of " << divided.turns << " turns easy";
    std::cout << '\n';
    for (auto const& [systems, pages] : divided.pages) {
        std::cout << "    " << systems << " systems:";
        for (auto const& [count, sheets] : pages)
            std::cout << "  " << sheets << " on " << count << (count == 1 ? " page" : " pages");
        std::cout << '\n';
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
    std::vector<int> levels{1, 3, 5};
    for (int i = 1; i < argc; ++i) {
        if (std::string(argv[i]) == "--slowing" && i + 1 < argc) {
            all.slowing = std::atoi(argv[++i]);
        } else if (std::string(argv[i]) == "--levels" && i + 1 < argc) {
            levels.clear();
            for (char const c : std::string(argv[++i]))
                if (c >= '1' && c <= '5') levels.push_back(c - '0');
        } else {
            measureBook(all, argv[i], *font, levels);
        }
    }
    for (auto const& [name, divided] : all.divided) print(name, divided);
    std::cout << all.leads << " lead sheets, " << all.arrangements << " arrangement sheets, "
              << all.pages << " pages\n";
    for (auto const& [kind, count] : all.counts) std::cout << kind << ": " << count << '\n';
}
