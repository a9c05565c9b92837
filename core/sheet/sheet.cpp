#include "core/sheet/sheet.h"

#include "core/arrange/unfold.h"
#include "core/base/words.h"
#include "core/hands/easing.h"
#include "core/notation/handcrossing.h"
#include "core/notation/notation.h"
#include "core/sheet/attachments.h"
#include "core/sheet/cautions.h"
#include "core/sheet/engrave.h"
#include "core/sheet/shapes.h"

#include <algorithm>
#include <map>
#include <utility>

namespace sheet {

namespace {

std::string harpLine(arrange::Arrangement const& arrangement)
{
    return base::say("{} strings · {} tuning · level {}", arrangement.harp.count(),
                     music::shown(arrangement.harp.tuning()), arrangement.level.number);
}

// Without what the style leaves out.
void leaveOut(Score& score, SheetStyle const& style)
{
    for (PrintedBar& bar : score.bars) {
        if (!style.chordSymbols) bar.chords.clear();
        if (!style.patternLabels)
            for (Label& label : bar.labels) label.text.clear();
        if (style.fingers) continue;
        for (StaffBar* staff : {&bar.upper, &bar.lower})
            for (StaffNote& note : staff->notes) note.fingers.clear();
    }
    if (!style.fingers) score.placings.clear();
}

// The piece ends with a final bar line, and a double one stands before a new key.
void closeParts(tune::Tune& tune)
{
    using tune::BarLine;
    for (tune::BarIndex i = 0; i + 1 < tune.bars.size(); ++i) {
        bool const newKey =
            music::signature(tune.bars[i].key) != music::signature(tune.bars[i + 1].key);
        if (newKey && tune.bars[i].closes == BarLine::Single)
            tune.bars[i].closes = BarLine::Double;
    }
    if (!tune.bars.empty() && !tune.bars.back().repeatCloses)
        tune.bars.back().closes = BarLine::Final;
}

// Signs of the tune that no sheet of ours shows are named rather than lost in silence.
std::vector<std::string> untoldSigns(tune::Tune const& tune)
{
    std::map<std::string, int> bars; // where each comes first
    for (tune::Bar const& bar : tune.bars)
        for (tune::Note const& note : bar.notes)
            for (std::string const& mark : note.marks)
                if (!isTold(mark)) bars.emplace(mark, bar.number);
    std::vector<std::string> lines;
    for (auto const& [mark, bar] : bars)
        lines.push_back(base::say("The sign “{}” (bar {}) is not drawn.", mark, bar));
    return lines;
}

// Remarks of which one goes on in the next, as lines of a paragraph do, are one.
std::vector<std::string> paragraphs(std::vector<std::string> const& notes)
{
    constexpr std::size_t fullLine = 40; // letters: a shorter one ended where it was to end
    std::vector<std::string> out;
    bool goesOn = false;
    for (std::string const& note : notes) {
        if (goesOn)
            out.back() += ' ' + note;
        else
            out.push_back(note);
        goesOn = note.size() >= fullLine &&
                 std::string(".!?:;)\"").find(note.back()) == std::string::npos;
    }
    return out;
}

Score scoreOf(notation::Notation notation, SheetStyle const& style)
{
    Score score;
    static_cast<notation::Notation&>(score) = std::move(notation);
    score.notes = paragraphs(score.tune.notes);
    score.wordsBelow = score.tune.words;
    score.footLines = untoldSigns(score.tune);
    score.helps = style.helps;
    if (style.inSet) {
        score.place = style.inSet->place;
        score.change = style.inSet->change;
        score.next = style.inSet->next;
    }
    closeParts(score.tune);
    leaveOut(score, style);
    return score;
}

// Words and the bars they hold for, each words once.
using BarsOfWords = std::vector<std::pair<std::string, std::vector<tune::BarIndex>>>;

void note(BarsOfWords& all, std::string const& words, tune::BarIndex bar)
{
    auto found = std::find_if(all.begin(), all.end(),
                              [&words](auto const& one) { return one.first == words; });
    if (found == all.end()) found = all.insert(all.end(), {words, {}});
    if (found->second.empty() || found->second.back() != bar) found->second.push_back(bar);
}

// "Bar 3", "Bars 3, 7 and others"
std::string barsWords(tune::Tune const& tune, std::vector<tune::BarIndex> const& bars)
{
    constexpr std::size_t mostBars = 8;
    std::string line = bars.size() > 1 ? base::said("Bars ") : base::said("Bar ");
    for (std::size_t i = 0; i < std::min(bars.size(), mostBars); ++i) {
        int const number = tune.bars[bars[i]].number;
        if (number == 0 && bars.size() == 1) return base::said("The pick-up");
        line += (i > 0 ? ", " : "") + (number < 0    ? base::said("introduction")
                                       : number == 0 ? base::said("pick-up")
                                                     : std::to_string(number));
    }
    return line + (bars.size() > mostBars ? base::said(" and others") : "");
}

// What the hands are to mind, each thing once with all the bars it holds for.
std::vector<std::string> handLines(arrange::Arrangement const& arrangement)
{
    BarsOfWords byWords;
    for (arrange::HandRemark const& remark : arrangement.handRemarks) {
        if (!hands::easesHand(remark)) continue; // a changed finger is printed itself
        note(byWords,
             (remark.hand == harp::Side::Left ? base::said("left hand: ")
                                              : base::said("right hand: ")) +
                 remark.words,
             remark.bar);
    }
    std::vector<std::string> lines;
    for (auto const& [words, bars] : byWords)
        lines.push_back(barsWords(arrangement.tune, bars) + ", " + words + '.');
    return lines;
}

// "* Bars 7, 15: D♯5 played plain, as D5."
std::vector<std::string> gaveWayLines(arrange::Arrangement const& arrangement)
{
    constexpr std::size_t mostLines = 8;
    BarsOfWords byWords;
    for (arrange::GaveWay const& one : arrangement.gaveWay) note(byWords, one.words, one.bar);
    std::vector<std::string> lines;
    for (auto const& [words, bars] : byWords) {
        if (lines.size() == mostLines) {
            lines.push_back(base::say("* And {} more like these.", byWords.size() - mostLines));
            break;
        }
        lines.push_back("* " + barsWords(arrangement.tune, bars) + ": " + words + '.');
    }
    return lines;
}

void addHarp(Score& score, arrange::Arrangement const& arrangement)
{
    score.levers = leverPicture(arrangement.harp, arrangement.levers.setup);
    score.harpLine = harpLine(arrangement);
}

Score grandScore(arrange::Arrangement const& arrangement, SheetStyle const& style)
{
    Score score =
        scoreOf(notation::of(arrangement, notation::Kind::Arrangement, style.slowing), style);
    for (tune::BarIndex const i : score.bars.indices())
        notation::moveHighNotes(score.bars[i], score.tune.bars[i]);
    for (std::string& line : gaveWayLines(arrangement))
        score.footLines.push_back(std::move(line));
    if (style.fingers) {
        score.placings = notation::placingBrackets(arrangement, style.placings);
        for (std::string& line : handLines(arrangement))
            score.footLines.push_back(std::move(line));
    }
    for (std::string& line : cautions(arrangement)) score.footLines.push_back(std::move(line));
    if (!style.inSet) score.caution = base::said(care); // a set says so once
    addHarp(score, arrangement);
    if (style.shapes) score.shapes = shapesUsed(arrangement);
    return score;
}

Document grandSheet(arrange::Arrangement const& arrangement, MusicFont const& font,
                    SheetStyle const& style)
{
    return engraved(grandScore(arrangement, style), font, style);
}

Document labelledSheet(arrange::Arrangement const& arrangement, MusicFont const& font,
                       SheetStyle const& style)
{
    SheetStyle labelled = style;
    labelled.patternLabels = true;
    Score score =
        scoreOf(notation::of(arrangement, notation::Kind::Patterns, style.slowing), labelled);
    for (std::string& line : gaveWayLines(arrangement))
        score.footLines.push_back(std::move(line));
    addHarp(score, arrangement);
    return engraved(score, font, style);
}

template<class Index>
std::optional<Index> mapped(std::optional<Index> index, base::List<Index, Index> const& to)
{
    return index ? std::optional(to[*index]) : std::nullopt;
}

// Whoever clicks on a page means bars and positions of the arrangement as it is.
Document folded(Document document, arrange::Unfolded const& unfolded)
{
    for (Page& page : document.pages) {
        for (Mark& mark : page.marks) {
            mark.bar = mapped(mark.bar, unfolded.bars);
            mark.position = mapped(mark.position, unfolded.positions);
        }
        for (Area& area : page.areas) {
            area.bar = unfolded.bars[area.bar];
            area.position = mapped(area.position, unfolded.positions);
        }
    }
    return document;
}

using Sheet = Document (*)(arrange::Arrangement const&, MusicFont const&, SheetStyle const&);

// What is printed is what is played: passes that differ are written out.
Document asPlayed(Sheet sheet, arrange::Arrangement const& arrangement, MusicFont const& font,
                  SheetStyle const& style)
{
    if (!arrange::passesDiffer(arrangement, style.lastTime))
        return sheet(arrangement, font, style);
    arrange::Unfolded const unfolded = arrange::unfolded(arrangement, style.lastTime);
    return folded(sheet(unfolded.arrangement, font, style), unfolded);
}

} // namespace

Document arrangementSheet(arrange::Arrangement const& arrangement, MusicFont const& font,
                          SheetStyle const& style)
{
    return asPlayed(grandSheet, arrangement, font, style);
}

Breaks commonBreaks(std::vector<arrange::Arrangement> const& arrangements,
                    MusicFont const& font, SheetStyle const& style)
{
    std::vector<Score> scores;
    for (arrange::Arrangement const& arrangement : arrangements)
        scores.push_back(grandScore(
            arrange::passesDiffer(arrangement, style.lastTime)
                ? arrange::unfolded(arrangement, style.lastTime).arrangement
                : arrangement,
            style));
    return commonBreaks(scores, font, style);
}

Document patternSheet(arrange::Arrangement const& arrangement, MusicFont const& font,
                      SheetStyle const& style)
{
    return asPlayed(labelledSheet, arrangement, font, style);
}

Document leadSheet(tune::Tune const& tune, MusicFont const& font, SheetStyle const& style)
{
    return engraved(scoreOf(notation::of(tune), style), font, style);
}

} // namespace sheet
