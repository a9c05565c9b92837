#include "core/hands/easing.h"

#include "core/base/words.h"

#include <algorithm>
#include <cstdlib>

namespace hands {

namespace {

using arrange::ArrangedPosition;
using arrange::Arrangement;
using arrange::HandNote;
using arrange::VoicedNote;

constexpr int nearGaps = 9; // from the tune's notes to one that the right hand takes
constexpr char const* rollUp =
    base::marked("roll upwards, and let finger 4 go as the thumb reaches its string");
constexpr char const* letGo = base::marked("let finger 4 go as the thumb reaches its string");
constexpr char const* takeOver = base::marked("play the left hand's highest note");
constexpr double forPlacing = 0.15; // seconds beyond the level's rate [trade-3.4]

// A hand that does not hold a tenth at 15 mm with comfort [trade-3.2]. Others are only helped
// beyond a tenth.
constexpr double comfortForATenthMm = 135;
bool isSmall(Arrangement const& arrangement)
{
    return arrangement.hand.comfortMm < comfortForATenthMm;
}
constexpr int tenthGaps = 9;

bool mayRoll(pattern::PatternBook const& book, std::string const& name)
{
    return std::any_of(book.patterns.begin(), book.patterns.end(),
                       [&](pattern::Pattern const& p) { return p.name == name && p.rolls; });
}

void remark(Arrangement& arrangement, ArrangedPosition const& p, VoicedNote const& note,
            harp::Side hand, char const* words)
{
    arrangement.handRemarks.push_back({p.position.bar, p.position.at + note.at, hand, words});
}

// Rolls what is plucked at one time and is wider than comfort. Answers whether it did.
bool rolledUp(Arrangement& arrangement, ArrangedPosition& p)
{
    auto& notes = p.voicing.notes;
    bool any = false;
    for (auto first = notes.begin(); first != notes.end();) {
        auto const last = std::find_if(
            first, notes.end(), [&](VoicedNote const& note) { return note.at != first->at; });
        bool const isBlock = std::distance(first, last) > 1;
        bool const wide =
            isBlock && stretches(arrangement, first->string, std::prev(last)->string) &&
            (isSmall(arrangement) || std::prev(last)->string - first->string > tenthGaps);
        if (wide && first->rollOrder == 0) {
            int order = 0;
            for (auto note = first; note != last; ++note) note->rollOrder = ++order;
            p.voicing.rolled = true;
            any = true;
            remark(arrangement, p, *first, harp::Side::Left, rollUp);
        }
        first = last;
    }
    return any;
}

double seconds(Arrangement const& arrangement, music::Length length)
{
    return length.wholes.toDouble() * 4 * 60 / tune::quartersPerMinute(arrangement.tempo);
}

// Whether the right hand is near and free enough to take a note at one time.
bool canTake(Arrangement const& arrangement, std::vector<HandNote> const& notes,
             music::Moment at, harp::StringIndex string)
{
    double const needed = 1 / arrangement.level.rightNotesPerSecond + forPlacing;
    bool near = false;
    for (HandNote const& note : notes) {
        if (note.hand != harp::Side::Right) continue;
        music::Length const apart = note.at < at ? at - note.at : note.at - at;
        if (seconds(arrangement, apart) < needed || note.string <= string) {
            if (seconds(arrangement, apart) < needed) return false;
            continue;
        }
        bool const sounds = note.at < at && at < note.at + note.held;
        near = near || (sounds && note.string - string <= nearGaps);
    }
    for (harp::Flip const& flip : arrangement.levers.flips)
        if (flip.hand == harp::Side::Right && flip.freeFrom < at && at < flip.freeTo)
            return false;
    return near;
}

// Positions that are one thing on every pass: what is given away is given away each time.
bool isSameOnEveryPass(Arrangement const& arrangement, ArrangedPosition const& p)
{
    auto const& bars = arrangement.playing.bars;
    auto const times = std::count_if(bars.begin(), bars.end(), [&](tune::PlayedBar const& bar) {
        return bar.bar == p.position.bar;
    });
    return times == static_cast<std::ptrdiff_t>(p.position.played.size());
}

bool givesAway(Arrangement& arrangement, std::vector<HandNote> const& notes,
               arrange::PositionIndex position, int index)
{
    auto const& p = arrangement.positions[position];
    VoicedNote const& note = p.voicing.notes[static_cast<std::size_t>(index)];
    if (!isSameOnEveryPass(arrangement, p)) return false;
    for (arrange::Occurrence const& when : p.position.played)
        if (!canTake(arrangement, notes, when.at + note.at, note.string)) return false;
    arrangement.given.push_back({position, index, 2});
    remark(arrangement, p, note, harp::Side::Right, takeOver);
    return true;
}

// A shape whose notes come one by one: the thumb's note that lies too far from finger 4's.
void easeBroken(Arrangement& arrangement, std::vector<HandNote> const& notes,
                arrange::PositionIndex position)
{
    auto const& p = arrangement.positions[position];
    auto const& voiced = p.voicing.notes;
    for (std::size_t i = 0; i < voiced.size(); ++i) {
        bool const alone = std::none_of(voiced.begin(), voiced.end(), [&](auto const& other) {
            return &other != &voiced[i] && other.at == voiced[i].at;
        });
        bool const wide =
            alone && voiced[i].finger == 1 &&
            std::any_of(voiced.begin(), voiced.begin() + static_cast<int>(i),
                        [&](VoicedNote const& low) {
                            return low.finger == harp::fingers &&
                                   low.string < voiced[i].string &&
                                   stretches(arrangement, low.string, voiced[i].string);
                        });
        if (!wide) continue;
        bool const given = isSmall(arrangement) &&
                           givesAway(arrangement, notes, position, static_cast<int>(i));
        if (!given) remark(arrangement, p, voiced[i], harp::Side::Left, letGo);
    }
}

} // namespace

bool easesHand(arrange::HandRemark const& remark)
{
    return remark.words == base::said(rollUp) || remark.words == base::said(letGo) ||
           remark.words == base::said(takeOver);
}

bool stretches(Arrangement const& arrangement, harp::StringIndex lowString,
               harp::StringIndex highString)
{
    return highString - lowString > tenthGaps || // no hand is asked to hold more
           harp::distanceMm(arrangement.harp, lowString, highString) >
               arrangement.hand.comfortMm;
}

void easeStretches(Arrangement& arrangement, pattern::PatternBook const& book)
{
    std::vector<HandNote> const notes = arrange::handNotes(arrangement);
    for (arrange::PositionIndex const i : arrangement.positions.indices()) {
        ArrangedPosition& p = arrangement.positions[i];
        if (p.voicing.notes.empty()) continue;
        if (mayRoll(book, p.voicing.pattern)) rolledUp(arrangement, p);
        easeBroken(arrangement, notes, i);
    }
}

} // namespace hands
