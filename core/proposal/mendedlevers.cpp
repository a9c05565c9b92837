#include "core/proposal/mendedlevers.h"

#include "core/base/words.h"
#include "core/harp/seats.h"
#include "core/levers/waysround.h"
#include "core/proposal/barlist.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <map>
#include <optional>
#include <set>

namespace proposal {

namespace {

using levers::MendedNote;
using tune::NoteInLine;
using tune::NotePlace;
using tune::Way;

std::vector<NoteInLine> linesOf(arrange::Arrangement const& a, tune::WayPrices const& prices)
{
    return levers::notesOnHarp(a.harp, a.tune, a.tempo, prices);
}

// What the arranger has decided, as far as it can be done here.
std::vector<MendedNote> decidedNotes(Brief const& brief, arrange::Arrangement const& a,
                                     std::vector<NoteInLine> const& lines,
                                     std::vector<SnagChoice> const& choices)
{
    std::map<NotePlace, MendedNote> byPlace;
    auto const decide = [&](NoteInLine const& line, Way way) {
        for (levers::OpenWay const& open :
             levers::openWays(line, a.harp, a.level, brief.weights.ways))
            if (open.way == way)
                byPlace[line.place] = {line.place, line.pitch, way, open.sounds, line.figure,
                                       open.price};
    };
    // What is decided for one note goes before what is decided for its like.
    for (bool const alike : {true, false})
        for (SnagChoice const& choice : choices) {
            if (choice.alike != alike) continue;
            auto const chosen = std::ranges::find(lines, choice.place, &NoteInLine::place);
            if (chosen == lines.end()) continue;
            for (NoteInLine const& line : lines)
                if (line.place == choice.place || (alike && line.figure == chosen->figure))
                    decide(line, choice.way);
        }
    std::vector<MendedNote> notes;
    for (auto const& [place, note] : byPlace) notes.push_back(note);
    return notes;
}

void change(arrange::Arrangement& a, std::vector<MendedNote> const& notes,
            std::vector<NotePlace>& quick)
{
    if (notes.empty()) return;
    levers::MendedTune mended = levers::changesFor(notes);
    quick.insert(quick.end(), mended.quick.begin(), mended.quick.end());
    if (mended.changes.empty()) return;
    a.tune = tune::changed(std::move(a.tune), mended.changes);
    a.playing = tune::played(a.tune);
}

// The note that stands in a snag's way on its string, and the time there is.
struct Rival {
    music::Pitch pitch;
    double timeSeconds = 0;
    double needsSeconds = 0;
};

// Of the tune as it was: the nearest note that wants the string's lever otherwise.
std::optional<Rival> rivalOf(arrange::Arrangement const& a, tune::Playing const& playing,
                             levers::Clock const& clock, std::size_t use,
                             harp::StringIndex string)
{
    auto const& notes = playing.notes;
    harp::Seat const own = *harp::seatOf(a.harp, notes[use].pitch);
    double const secondsAWhole = 240 / tune::quartersPerMinute(a.tempo);
    std::optional<Rival> nearest;
    auto const look = [&](std::size_t other) {
        auto const seat = harp::seatOf(a.harp, notes[other].pitch);
        if (!seat || seat->string != string || seat->lever == own.lever) return false;
        auto const& first = notes[std::min(use, other)];
        auto const& second = notes[std::max(use, other)];
        levers::Gap gap;
        gap.plucked = first.at;
        gap.ends = first.at + first.held;
        gap.wanted = second.at;
        gap.playedBar = second.playedBar;
        Rival const rival{
            notes[other].pitch, clock.silence(gap).wholes.toDouble() * secondsAWhole,
            clock.turningTime(second.playedBar).wholes.toDouble() * secondsAWhole};
        if (!nearest || rival.timeSeconds < nearest->timeSeconds) nearest = rival;
        return true;
    };
    for (std::size_t i = use; i-- > 0;)
        if (look(i)) break;
    for (std::size_t i = use + 1; i < notes.size(); ++i)
        if (look(i)) break;
    return nearest;
}

// A snag of one note. `asWritten` and `playing`: the tune before it was mended.
Snag snagOf(MendedNote const& note, bool decided, arrange::Arrangement const& a,
            tune::Playing const& playing, levers::Clock const& clock,
            std::vector<NoteInLine> const& lines, Brief const& brief)
{
    Snag snag;
    snag.place = note.place;
    snag.written = note.written;
    snag.way = note.way;
    snag.group = note.figure;
    snag.decided = decided;
    std::size_t use = 0;
    for (; use + 1 < playing.notes.size(); ++use) {
        tune::PlayedNote const& n = playing.notes[use];
        tune::PlayedBar const& bar = playing.bars[n.playedBar];
        if (NotePlace{bar.bar, n.note, n.ofChord, false} == note.place) break;
    }
    tune::PlayedNote const& played = playing.notes[use];
    snag.at = played.at;
    snag.pass = playing.bars[played.playedBar].pass;
    std::string const name = music::shown(note.written);
    auto const seat = harp::seatOf(a.harp, note.written);
    if (!seat) {
        auto const own = harp::stringFor(a.harp, note.written);
        if (own) snag.strings.push_back(*own);
        snag.what = own ? base::say("no string of this harp sounds {}", name)
                        : base::say("{} is beyond the strings of this harp", name);
    } else {
        snag.strings.push_back(seat->string);
        auto const rival = rivalOf(a, playing, clock, use, seat->string);
        if (!rival)
            snag.what = base::say("{} is played otherwise", name);
        else if (!a.level.flips)
            snag.what = base::say("{} and {} share a string, and level {} flips no levers "
                                  "while playing",
                                  name, music::shown(rival->pitch), a.level.number);
        else {
            snag.timeSeconds = rival->timeSeconds;
            snag.needsSeconds = rival->needsSeconds;
            snag.what = rival->timeSeconds < rival->needsSeconds
                            ? base::say("there is no time to flip the lever between {} and {} "
                                        "({:.2f} s; level {} needs {:.2f} s)",
                                        name, music::shown(rival->pitch), rival->timeSeconds,
                                        a.level.number, rival->needsSeconds)
                            : base::say("no hand is free to flip the lever between {} and {}",
                                        name, music::shown(rival->pitch));
        }
    }
    auto const line = std::ranges::find(lines, note.place, &NoteInLine::place);
    if (line != lines.end())
        for (levers::OpenWay const& open :
             levers::openWays(*line, a.harp, a.level, brief.weights.ways))
            snag.ways.push_back({open.way, open.sounds, open.price});
    std::ranges::stable_sort(snag.ways, {}, &SnagWay::cost);
    return snag;
}

base::Result<levers::Plan> planOf(Proposal const& out, std::vector<NotePlace> const& quick,
                                  bool anyKey, std::optional<NotePlace>* inTheWay)
{
    arrange::Arrangement const& a = out.arrangement;
    auto planning = levers::leverPlanFor(a.harp, a.tune, a.playing, a.tempo, a.level,
                                         out.brief.leverWishes, {quick, anyKey});
    if (planning.plan) return *std::move(planning.plan);
    if (inTheWay) *inTheWay = planning.refusal->note;
    return planning.refusal->fault;
}

// Grace notes that no lever can serve are taken out, the last of a note first, so that places
// before it stay what they are.
void leaveGraces(tune::Tune& tune, std::vector<NotePlace> places)
{
    std::sort(places.rbegin(), places.rend());
    std::vector<tune::NoteChange> changes;
    for (NotePlace const& place : places) changes.push_back({place, tune::Change::LeftOut});
    tune = tune::changed(std::move(tune), changes);
}

// Two pitches of one chord that sound alike, F sharp and G flat, are one pluck.
void pluckOnce(arrange::Arrangement& a)
{
    bool once = false;
    for (tune::Bar& bar : a.tune.bars)
        for (tune::Note& note : bar.notes) {
            auto const again = std::ranges::unique(
                note.pitches, {}, [](music::Pitch pitch) { return music::midi(pitch); });
            once = once || !again.empty();
            note.pitches.erase(again.begin(), again.end());
        }
    if (once) a.playing = tune::played(a.tune);
}

} // namespace

base::Result<levers::Plan> mendedLevers(Proposal& out, std::vector<SnagChoice> const& eased)
{
    arrange::Arrangement& a = out.arrangement;
    pluckOnce(a);
    Brief const& brief = out.brief;
    tune::Playing const asRead = a.playing;
    tune::Tune const asWritten = a.tune;
    std::vector<NoteInLine> lines;
    std::vector<MendedNote> mended;
    std::vector<NotePlace> quick;
    auto const read = [&] {
        if (lines.empty()) lines = linesOf(a, brief.weights.ways);
    };
    if (!brief.snagChoices.empty() || !eased.empty()) {
        read();
        mended = decidedNotes(brief, a, lines, brief.snagChoices);
    }
    std::size_t const decided = mended.size();
    for (MendedNote const& note : decidedNotes(brief, a, lines, eased))
        if (std::ranges::find(mended, note.place, &MendedNote::place) == mended.end())
            mended.push_back(note);
    change(a, mended, quick);
    std::optional<NotePlace> inTheWay;
    auto plan = planOf(out, quick, !brief.mending.refuse, &inTheWay);
    if (!plan && brief.mending.refuse) return plan.error();
    constexpr int rounds = 4;
    for (int round = 0; !plan && round < rounds; ++round) {
        read();
        auto const found =
            levers::waysRound(a.harp, a.tune, a.playing, a.tempo, a.level, brief.leverWishes,
                              {brief.weights.ways, brief.mending.only, quick});
        if (found.notes.empty()) break;
        change(a, found.notes, quick);
        mended.insert(mended.end(), found.notes.begin(), found.notes.end());
        plan = planOf(out, quick, true, &inTheWay);
    }
    // Beyond any search: what still stands in the way is left out, one note after the other.
    while (!plan && inTheWay) {
        auto const pitch = tune::pitchOf(a.tune, *inTheWay);
        if (!pitch) break;
        MendedNote const out1{*inTheWay, *pitch, Way::LeaveOut, std::nullopt,
                              static_cast<int>(1000 + mended.size()), 0};
        change(a, {out1}, quick);
        mended.push_back(out1);
        inTheWay.reset();
        plan = planOf(out, quick, true, &inTheWay);
    }
    if (!plan) return plan.error();
    leaveGraces(a.tune, plan->gracesLeft);
    if (!mended.empty() || !plan->gracesLeft.empty()) a.asWritten = asWritten;
    a.playing = tune::played(a.tune);

    if (!mended.empty()) {
        levers::Clock const clock(a.tune, asRead, a.tempo, a.level);
        std::map<NotePlace, Snag> snags;
        for (std::size_t i = 0; i < mended.size(); ++i)
            if (!mended[i].place.grace && !snags.contains(mended[i].place))
                snags.emplace(mended[i].place, snagOf(mended[i], i < decided, a, asRead, clock,
                                                      lines, brief));
        for (auto& [place, snag] : snags) {
            tellOnPage(a, snag);
            out.snags.push_back(std::move(snag));
        }
    }
    return plan;
}

std::string wayWords(Snag const& snag, SnagWay const& way)
{
    std::string const sounds = way.sounds ? music::shown(*way.sounds) : "";
    switch (way.way) {
    case Way::Plain:
        return base::say("played plain, as {}", sounds);
    case Way::Held:
        return base::said("left out, the note before rings on");
    case Way::LeaveOut:
        return snag.hand == harp::Side::Left ? base::said("the left hand rests")
                                             : base::said("left out");
    case Way::Octave:
        return base::say("played in another octave, as {}", sounds);
    case Way::OtherString:
        return base::said("played on the string beside it");
    case Way::LeftLightened:
        return snag.leftRests
                   ? base::said("as written, the left hand rests for its flip")
                   : base::said(
                         "as written, with one low note in the left hand before the flip");
    case Way::Slower:
        return base::said("as written, at a slower tempo");
    case Way::Key:
        return base::said("in another key");
    case Way::Level:
        return base::said("as written, at a higher level");
    }
    return {};
}

namespace {

// "D♯5 played plain, as D5"
std::string takenWords(Snag const& snag)
{
    SnagWay taken{snag.way, std::nullopt, 0};
    for (SnagWay const& way : snag.ways)
        if (way.way == snag.way) taken = way;
    if (!snag.written) return wayWords(snag, taken);
    return fmt::format("{} {}", music::shown(*snag.written), wayWords(snag, taken));
}

} // namespace

std::string snagLine(Snag const& snag, std::string const& bar)
{
    return fmt::format("{}: {}", bar, takenWords(snag));
}

void tellOnPage(arrange::Arrangement& arrangement, Snag const& snag)
{
    tune::Note const& note =
        arrange::writtenTune(arrangement).bars[snag.place.bar].notes[snag.place.note];
    arrangement.gaveWay.push_back({snag.place.bar, note.at, takenWords(snag)});
}

std::vector<std::string> snagSentences(Proposal const& proposal)
{
    // Alike in what is said of them, whatever pass: one sentence.
    std::vector<std::pair<Snag const*, std::set<tune::BarIndex>>> told;
    for (Snag const& snag : proposal.snags) {
        if (snag.hand == harp::Side::Left) continue;
        auto const known = std::ranges::find_if(told, [&](auto const& t) {
            return (t.first->group == snag.group || t.first->what == snag.what) &&
                   t.first->written == snag.written && t.first->way == snag.way;
        });
        if (known != told.end())
            known->second.insert(snag.place.bar);
        else
            told.push_back({&snag, {snag.place.bar}});
    }
    std::vector<std::string> out;
    for (auto const& [snag, bars] : told) {
        std::string const where = barList(proposal.arrangement.tune, bars);
        std::string line = snagLine(*snag, where);
        line.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(line.front())));
        out.push_back(base::say("{}{}, because {}.", line,
                                snag->decided ? base::said(" (you chose it)") : "",
                                snag->what));
    }
    return out;
}

} // namespace proposal
