#include "core/files/spoken.h"

#include "core/arrange/unfold.h"
#include "core/base/words.h"
#include "core/music/typedchord.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <string_view>
#include <vector>

namespace files {

namespace {

using notation::Label;
using notation::Notation;
using notation::StaffBar;
using notation::StaffNote;

// What is said of one bar, and of the part that begins with it.
struct SaidBar {
    std::string part;
    std::string name; // "Bar 3"
    std::string words;
    int number = 0;
};
struct Said {
    std::string title;
    std::vector<std::string> head;
    std::vector<SaidBar> bars;
    std::vector<std::string> foot;
};

// Signs of accidentals as words, so that every voice says them: "F♯" is "F sharp".
std::string spoken(std::string_view text)
{
    constexpr std::array<std::pair<std::string_view, char const*>, 3> signs{
        {{"♯", base::marked(" sharp ")},
         {"♭", base::marked(" flat ")},
         {"♮", base::marked(" natural ")}}};
    std::string out;
    while (!text.empty()) {
        bool found = false;
        for (auto const& [sign, word] : signs)
            if (text.starts_with(sign)) {
                out += base::wordsFor(word);
                text.remove_prefix(sign.size());
                found = true;
            }
        if (found) continue;
        if (!(text.front() == ' ' && (out.empty() || out.back() == ' '))) out += text.front();
        text.remove_prefix(1);
    }
    while (!out.empty() && out.back() == ' ') out.pop_back();
    for (char const mark : std::string_view(",.;:)/"))
        for (std::size_t at; (at = out.find({' ', mark})) != std::string::npos;)
            out.erase(at, 1);
    return out;
}

std::string valueName(notation::NoteValue value)
{
    constexpr auto names =
        base::markedList("breve", "semibreve", "minim", "crotchet", "quaver", "semiquaver",
                         "demisemiquaver", "hemidemisemiquaver");
    int const last = static_cast<int>(names.size()) - 1;
    std::string const name =
        base::said(names[static_cast<std::size_t>(std::clamp(value.halvings + 1, 0, last))]);
    return value.dots == 0   ? name
           : value.dots == 1 ? base::say("dotted {}", name)
                             : base::say("double dotted {}", name);
}

std::string fingerName(int finger)
{
    constexpr auto names = base::markedList("", "thumb", "finger|second", "finger|third",
                                            "finger|fourth", "finger|fifth");
    return finger >= 1 && finger <= 5 ? base::said(names[static_cast<std::size_t>(finger)])
                                      : std::to_string(finger);
}

bool contains(std::vector<std::string> const& marks, std::string_view mark)
{
    return std::find(marks.begin(), marks.end(), mark) != marks.end();
}

// "D 4 thumb and A 3 second together, crotchet".
std::string signWords(StaffNote const& note, bool tiedIn, bool under)
{
    if (note.isRest())
        return note.fillsBar ? base::said("rest for the bar")
                             : base::say("rest, {}", valueName(note.value));
    std::string out;
    for (std::size_t i = 0; i < note.pitches.size(); ++i) {
        if (i > 0) out += i + 1 == note.pitches.size() ? base::said(" and ") : ", ";
        out += spoken(music::shown(note.pitches[i]));
        if (!tiedIn && i < note.fingers.size()) out += ' ' + fingerName(note.fingers[i]);
    }
    if (tiedIn) return base::say("{} held on, {}", out, valueName(note.value));
    if (under) out += base::said(", crossing under");
    bool const rolled = note.rolled || contains(note.marks, "arpeggio");
    if (note.pitches.size() > 1)
        out += rolled ? base::said(" rolled") : base::said(" together");
    out += ", " + valueName(note.value);
    if (!note.graces.empty()) {
        out += note.graces.size() > 1 ? base::said(", after the grace notes")
                                      : base::said(", after the grace note");
        for (music::Pitch grace : note.graces) out += ' ' + spoken(music::shown(grace));
    }
    for (std::string const& mark : note.marks) {
        if (mark == "fermata") out += base::said(", with a pause");
        for (char const* told :
             {base::marked("staccato"), base::marked("accent"), base::marked("trill"),
              base::marked("turn"), base::marked("harmonic")})
            if (mark == told) out += ", " + base::said(told);
        if (mark == notation::rightHandHelps)
            out += base::said(", one note taken by the right hand");
    }
    return out;
}

std::string tupletOpens(notation::StaffTuplet const& tuplet)
{
    if (tuplet.actual == 3 && tuplet.normal == 2) return base::said("triplet, ");
    return base::say("{} in the time of {}, ", tuplet.actual, tuplet.normal);
}

std::string tupletCloses(notation::StaffTuplet const& tuplet)
{
    return tuplet.actual == 3 && tuplet.normal == 2 ? base::said(", the triplet ends")
                                                    : base::said(", the group ends");
}

// Inside a shape a finger goes on to a higher string past the one before, which is nearer the
// thumb: it passes under it.
bool crossesUnder(StaffNote const* before, StaffNote const& note)
{
    if (before == nullptr || !note.position || before->position != note.position) return false;
    auto const single = [](StaffNote const& n) {
        return n.pitches.size() == 1 && n.fingers.size() == 1;
    };
    return single(*before) && single(note) && note.fingers[0] > before->fingers[0] &&
           music::midi(note.pitches[0]) > music::midi(before->pitches[0]);
}

// Every tuplet of the bar says where it begins and ends: its notes are named by their written
// values, which are longer than they sound.
std::string staffWords(StaffBar const& bar, std::vector<music::Pitch>& tied)
{
    std::string out;
    StaffNote const* before = nullptr;
    for (notation::StaffNoteIndex const i : bar.notes.indices()) {
        StaffNote const& note = bar.notes[i];
        if (note.hidden) continue;
        bool const tiedIn = !note.isRest() && tied == note.pitches;
        if (!out.empty()) out += "; ";
        for (notation::StaffTuplet const& tuplet : bar.tuplets)
            if (tuplet.first == i) out += tupletOpens(tuplet);
        out += signWords(note, tiedIn, crossesUnder(before, note));
        before = &note;
        for (notation::StaffTuplet const& tuplet : bar.tuplets)
            if (tuplet.last == i) out += tupletCloses(tuplet);
        tied = note.tied ? note.pitches : std::vector<music::Pitch>{};
    }
    return out;
}

std::string joined(std::vector<Label> const& labels, std::string_view between)
{
    std::string out;
    for (Label const& label : labels)
        if (!label.text.empty()) out += (out.empty() ? "" : std::string(between)) + label.text;
    return spoken(out);
}

// "3C natural with the left hand after beat 2": on the page it stands where it is done.
std::string cueWords(Label const& cue, tune::Bar const& bar)
{
    std::string const words = spoken(cue.text);
    if (!cue.hand) return words;
    music::Rational const beats = (bar.upbeat + cue.at) / music::beatLength(bar.meter);
    auto const beat = music::floorOf(beats);
    bool const on = beats == music::Rational(beat);
    if (*cue.hand == harp::Side::Left)
        return on ? base::say("{} with the left hand on beat {}", words, beat + 1)
                  : base::say("{} with the left hand after beat {}", words, beat + 1);
    return on ? base::say("{} with the right hand on beat {}", words, beat + 1)
              : base::say("{} with the right hand after beat {}", words, beat + 1);
}

std::string allCues(std::vector<Label> const& cues, tune::Bar const& bar)
{
    std::string out;
    for (Label const& cue : cues) out += (out.empty() ? "" : ", ") + cueWords(cue, bar);
    return out;
}

void addSentence(std::string& out, std::string const& words)
{
    if (words.empty()) return;
    out += (out.empty() ? "" : " ") + words;
    if (out.back() != '.') out += '.';
}

std::string ordinals(std::vector<int> const& numbers)
{
    constexpr auto names =
        base::markedList("", "time|first", "time|second", "time|third", "time|fourth");
    std::string out;
    for (int number : numbers) {
        if (!out.empty()) out += base::said(" and ");
        out += number < static_cast<int>(names.size())
                   ? base::said(names[static_cast<std::size_t>(number)])
                   : base::say("{}th", number);
    }
    return out;
}

// From which beat of a bar on the tempo falls.
std::string slowingSentence(notation::SlowingMark const& mark, tune::Bar const& bar)
{
    music::Rational const beats = (mark.from.at + bar.upbeat) / music::beatLength(bar.meter);
    std::int64_t const beat = music::floorOf(beats) + 1;
    bool const fromHere = mark.from.at == music::Length{};
    if (mark.lastTime)
        return fromHere ? base::said("The last time, slow down from here to the end")
                        : base::say("The last time, slow down from beat {} to the end", beat);
    return fromHere ? base::said("Slow down from here to the end")
                    : base::say("Slow down from beat {} to the end", beat);
}

std::string barWords(Notation const& notation, tune::BarIndex i,
                     std::array<std::vector<music::Pitch>, 2>& tied)
{
    tune::Bar const& written = notation.tune.bars[i];
    notation::PrintedBar const& bar = notation.bars[i];
    std::string out;
    if (i > 0 && !(written.key == notation.tune.bars[i - 1].key))
        addSentence(out, base::say("The key is now {}", spoken(music::shown(written.key))));
    if (i > 0 && !(written.meter == notation.tune.bars[i - 1].meter))
        addSentence(out, base::say("The time signature is now {}", music::text(written.meter)));
    if (written.repeatOpens) addSentence(out, base::said("A repeat begins"));
    if (!written.endings.empty())
        addSentence(out, base::say("The {} time only", ordinals(written.endings)));
    if (notation.slowing && notation.slowing->from.bar == static_cast<int>(i))
        addSentence(out, slowingSentence(*notation.slowing, written));
    if (std::string const words = joined(bar.annotations, ", "); !words.empty())
        addSentence(out, base::say("Above the bar: {}", words));
    if (std::string const words = joined(bar.gaveWay, ", "); !words.empty())
        addSentence(out, base::say("For the levers: {}", words));
    if (std::string const words = joined(bar.dynamics, ", "); !words.empty())
        addSentence(out, base::say("Loudness: {}", words));
    if (std::string const words = allCues(bar.leverCues, written); !words.empty())
        addSentence(out, base::say("Levers: {}", words));
    addSentence(out, (notation.grand ? base::said("Right hand: ") : "") +
                         staffWords(bar.upper, tied[0]));
    if (notation.grand) {
        std::string const patterns = joined(bar.labels, base::said(", then "));
        addSentence(out, base::said("Left hand") + (patterns.empty() ? "" : ' ' + patterns) +
                             ": " + staffWords(bar.lower, tied[1]));
    } else if (std::string const words = joined(bar.labels, base::said(", then "));
               !words.empty()) {
        addSentence(out, base::say("Pattern {}", words));
    }
    if (written.repeatCloses)
        addSentence(out, written.timesPlayed > 2
                             ? base::say("Repeat, {} times in all", written.timesPlayed)
                             : base::said("bar|Repeat"));
    addSentence(out, joined(bar.navigation, ", "));
    return out;
}

std::string tempoWords(tune::Tune const& tune)
{
    tune::Tempo const tempo = tune::tempoOf(tune);
    return base::say("{} {}s a minute", std::lround(tempo.beatsPerMinute),
                     valueName(notation::nearestValue(tempo.beat)));
}

// "G, then C"; a chord of the bar before that still sounds as it begins is named too.
std::string chordWords(std::vector<Label> const& chords, std::string& inForce)
{
    std::string out = joined(chords, base::said(", then "));
    if (chords.empty()) return out;
    if (chords.front().at != music::Length{} && !inForce.empty())
        out = base::say("{} goes on", inForce) + base::said(", then ") + out;
    inForce = spoken(chords.back().text);
    return out;
}

// Notes are named with their scientific octave here: strings too, unless they are counted.
harp::Harp namedAsNotes(harp::Harp harp)
{
    return harp.naming() == harp::Naming::FromTop
               ? harp
               : withNaming(std::move(harp), harp::Naming::Scientific);
}

Said said(arrange::Arrangement arrangement, notation::Kind kind, perform::Slowing slowing)
{
    arrangement.harp = namedAsNotes(std::move(arrangement.harp));
    Notation const notation = kind == notation::Kind::Lead
                                  ? notation::of(arrangement, kind)
                                  : notation::of(arrange::asPrinted(arrangement), kind, slowing);
    tune::Tune const& tune = notation.tune;
    Said out;
    out.title = tune.title;
    auto const head = [&out](std::string const& label, std::string const& words) {
        if (!words.empty()) out.head.push_back(label + words);
    };
    head(base::said("By "), tune.composer);
    head(base::said("Arranged by "), tune.arranger);
    head("", spoken(music::shown(tune.key)) + ", " + music::text(tune.meter) + ", " +
                 (tune.rhythm.empty() ? "" : tune.rhythm + ", ") + tempoWords(tune) + '.');
    if (kind != notation::Kind::Lead) {
        head("", base::say("{} strings, level {}.", arrangement.harp.count(),
                           arrangement.level.number));
        head("", spoken(notation.setupLine) + '.');
    }
    if (notation.grand)
        head(
            "",
            base::said(
                "Fingers: thumb, second, third, fourth. Notes are named with their octave: C 4 "
                "is middle C."));
    std::array<std::vector<music::Pitch>, 2> tied;
    std::string inForce; // chord
    for (tune::BarIndex const i : notation.bars.indices()) {
        tune::Bar const& bar = tune.bars[i];
        std::string name = bar.number > 0 ? base::say("Bar {}", bar.number)
                           : bar.role == tune::Role::Introduction
                               ? base::said("Before the tune")
                               : base::said("Pick-up");
        if (std::string const chords = chordWords(notation.bars[i].chords, inForce);
            !chords.empty())
            name += ", " + chords;
        if (!bar.chords.empty() && music::isNoChord(bar.chords.back().chord)) inForce.clear();
        out.bars.push_back({bar.part, name, barWords(notation, i, tied), bar.number});
    }
    for (std::string const& note : tune.notes) out.foot.push_back(note);
    if (!tune.source.empty()) out.foot.push_back(base::say("Source: {}", tune.source));
    if (!tune.copyright.empty()) out.foot.push_back(tune.copyright);
    return out;
}

std::string escaped(std::string_view text)
{
    std::string out;
    for (char c : text) switch (c) {
        case '&':
            out += "&amp;";
            break;
        case '<':
            out += "&lt;";
            break;
        case '>':
            out += "&gt;";
            break;
        case '"':
            out += "&quot;";
            break;
        default:
            out += c;
        }
    return out;
}

std::string element(std::string const& name, std::string_view text)
{
    return '<' + name + '>' + escaped(text) + "</" + name + ">\n";
}

// The lines of one piece; its title first.
std::string textOf(Said const& what)
{
    std::string out = what.title + '\n';
    for (std::string const& line : what.head) out += line + '\n';
    out += '\n';
    for (SaidBar const& bar : what.bars) {
        if (!bar.part.empty()) out += base::say("Part {}", bar.part) + ".\n";
        out += bar.name + ". " + bar.words + '\n';
    }
    if (!what.foot.empty()) out += '\n';
    for (std::string const& line : what.foot) out += line + '\n';
    return out;
}

// The piece below a heading of a level; `place` before the names that its bars are linked to
// by.
std::string htmlOf(Said const& what, int heading, std::string const& place)
{
    std::string const title = "h" + std::to_string(heading);
    std::string const part = "h" + std::to_string(heading + 1);
    std::string out = element(title, what.title);
    for (std::string const& line : what.head) out += element("p", line);
    bool open = false;
    std::set<int> linked; // a bar of two halves is linked to at its first
    for (SaidBar const& bar : what.bars) {
        if (!bar.part.empty()) {
            if (open) out += "</ul>\n";
            open = false;
            out += element(part, base::say("Part {}", bar.part));
        }
        if (!open) out += "<ul>\n";
        open = true;
        bool const first = linked.insert(bar.number).second;
        out +=
            first ? "<li id=\"" + place + "bar-" + std::to_string(bar.number) + "\">" : "<li>";
        out += "<strong>" + escaped(bar.name) + ".</strong> " + escaped(bar.words) + "</li>\n";
    }
    if (open) out += "</ul>\n";
    for (std::string const& line : what.foot) out += element("p", line);
    return out;
}

std::string page(std::string const& title, std::string const& body)
{
    return "<!DOCTYPE html>\n<html lang=\"" + base::said("en-GB") +
           "\">\n<head>\n<meta charset=\"utf-8\">\n" +
           element("title", title) + "</head>\n<body>\n" + body + "</body>\n</html>\n";
}

// The tunes of a set, each with what is done before it and what comes next.
std::vector<Said> saidOf(perform::PlayedSet const& set, notation::Kind kind,
                         perform::Slowing slowing)
{
    std::vector<Said> out;
    for (std::size_t i = 0; i < set.tunes.size(); ++i) {
        bool const last = i + 1 == set.tunes.size();
        Said tune = said(set.tunes[i].arrangement, kind, last ? slowing : perform::Slowing{});
        tune.head.insert(tune.head.begin(), base::say("Tune {} of {}.", i + 1, set.tunes.size()));
        if (i > 0)
            tune.head.push_back(
                base::say("Before this tune: {}.", spoken(perform::changeLine(set.tunes[i]))));
        if (i + 1 < set.tunes.size())
            tune.foot.push_back(base::say("Next: {}. {}.",
                                          set.tunes[i + 1].arrangement.tune.title,
                                          spoken(perform::changeLine(set.tunes[i + 1]))));
        out.push_back(std::move(tune));
    }
    return out;
}

} // namespace

std::string spokenText(arrange::Arrangement const& arrangement, notation::Kind kind,
                       perform::Slowing slowing)
{
    return textOf(said(arrangement, kind, slowing));
}

std::string spokenHtml(arrange::Arrangement const& arrangement, notation::Kind kind,
                       perform::Slowing slowing)
{
    Said const what = said(arrangement, kind, slowing);
    return page(what.title, htmlOf(what, 1, {}));
}

std::string spokenText(perform::PlayedSet const& set, notation::Kind kind,
                       perform::Slowing slowing)
{
    std::string out = set.title + '\n';
    for (std::string const& note : set.notes) out += note + '\n';
    for (Said const& tune : saidOf(set, kind, slowing)) out += '\n' + textOf(tune);
    return out;
}

std::string spokenHtml(perform::PlayedSet const& set, notation::Kind kind,
                       perform::Slowing slowing)
{
    std::string body = element("h1", set.title);
    for (std::string const& note : set.notes) body += element("p", note);
    int number = 0;
    for (Said const& tune : saidOf(set, kind, slowing))
        body += htmlOf(tune, 2, "tune-" + std::to_string(++number) + '-');
    return page(set.title, body);
}

} // namespace files
