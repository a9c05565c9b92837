#include "tests/exchange/same.h"

#include "core/tune/repeatsigns.h"

#include <array>
#include <sstream>
#include <utility>

namespace same {

namespace {

using tune::Bar;
using tune::Tune;

std::string shown(tune::Note const& note)
{
    std::string out;
    for (music::Pitch const& grace : note.graces) out += '{' + music::plain(grace) + '}';
    for (music::Pitch const& pitch : note.pitches) out += music::plain(pitch) + '+';
    if (note.pitches.empty()) out += note.hidden ? "hidden" : "rest";
    out += ':' + music::text(note.length.wholes) + (note.tied ? "~" : "");
    for (tune::Syllable const& syllable : note.verses)
        out += " '" + syllable.text + (syllable.hyphen ? "-" : "") + (syllable.held ? "_" : "");
    return out + std::string(static_cast<std::size_t>(note.slursOpen), '(') +
           std::string(static_cast<std::size_t>(note.slursClose), ')');
}

// The notes of a bar, those that are tied within it joined when asked.
tune::Notes notesOf(Bar const& bar, bool joined)
{
    tune::Notes out;
    for (tune::Note const& note : bar.notes) {
        bool const goesOn = joined && !out.empty() && out.back().pitches == note.pitches &&
                            (out.back().tied || note.pitches.empty());
        if (goesOn) {
            out.back().length = out.back().length + note.length;
            out.back().tied = note.tied;
        } else {
            out.push_back(note);
        }
    }
    return out;
}

std::string notesText(Bar const& bar, Besides const& besides)
{
    std::string out;
    for (tune::Note const& note : notesOf(bar, besides.splitNotes)) {
        out += shown(note) + ' ';
        if (!besides.marks)
            for (std::string const& mark : note.marks) out += '!' + mark + "! ";
    }
    return out;
}

std::string chordsText(Bar const& bar)
{
    std::string out;
    for (tune::ChordMark const& mark : bar.chords)
        out += music::text(mark.at.wholes) + ' ' + music::plain(mark.chord) + '(' +
               std::to_string(mark.pass.value_or(0)) + ") ";
    return out;
}

std::string wordsText(Bar const& bar)
{
    std::string out;
    for (tune::Annotation const& words : bar.annotations)
        out += music::text(words.at.wholes) + " '" + words.text + "' ";
    return out;
}

std::string tupletsText(Bar const& bar)
{
    std::string out;
    for (tune::Tuplet const& t : bar.tuplets)
        out += std::to_string(t.first) + '-' + std::to_string(t.last) + ':' +
               std::to_string(t.actual) + '/' + std::to_string(t.normal) + ' ';
    return out;
}

std::string frameText(Bar const& bar)
{
    std::ostringstream out;
    out << "number " << bar.number << " key " << music::plain(bar.key) << " meter "
        << music::text(bar.meter) << (bar.meter.common ? " C" : "") << " length "
        << music::text(bar.length.wholes) << " upbeat " << music::text(bar.upbeat.wholes)
        << " part " << bar.part << (bar.repeatOpens ? " |:" : "");
    if (bar.repeatCloses) out << " :|" << bar.timesPlayed;
    for (int ending : bar.endings) out << " [" << ending;
    if (bar.endingCloses) out << " ]";
    // A repeat's own thick line says nothing beside.
    if (!bar.repeatCloses) out << " closes " << static_cast<int>(bar.closes);
    return out.str();
}

std::string compared(char const* what, std::string const& a, std::string const& b)
{
    return a == b ? "" : std::string(what) + ": " + a + " | " + b;
}

std::string difference(Bar const& a, Bar const& b, Besides const& besides)
{
    std::string out = compared("frame", frameText(a), frameText(b));
    if (out.empty()) out = compared("notes", notesText(a, besides), notesText(b, besides));
    if (out.empty()) out = compared("chords", chordsText(a), chordsText(b));
    if (out.empty() && !besides.splitNotes)
        out = compared("tuplets", tupletsText(a), tupletsText(b));
    if (out.empty() && !besides.words) out = compared("words", wordsText(a), wordsText(b));
    return out;
}

std::string headText(Tune const& tune)
{
    std::ostringstream out;
    out << tune.title << " / ";
    for (std::string const& title : tune.otherTitles) out << title << " / ";
    out << tune.composer << " / " << tune.origin << " / " << tune.source << " / " << tune.rhythm
        << " / ";
    for (std::string const& note : tune.notes)
        if (!note.empty()) out << note << " / ";
    for (std::string const& line : tune.words)
        if (!line.empty()) out << line << " / ";
    for (std::string const& part : tune.partOrder) out << part << ' ';
    out << tempoOf(tune).beatsPerMinute << ' ' << music::text(tempoOf(tune).beat.wholes);
    return out.str();
}

} // namespace

tune::Tune sounding(tune::Tune tune)
{
    using music::Letter;
    constexpr std::array named{std::pair{Letter::C, 0}, std::pair{Letter::C, 1},
                               std::pair{Letter::D, 0}, std::pair{Letter::D, 1},
                               std::pair{Letter::E, 0}, std::pair{Letter::F, 0},
                               std::pair{Letter::F, 1}, std::pair{Letter::G, 0},
                               std::pair{Letter::G, 1}, std::pair{Letter::A, 0},
                               std::pair{Letter::A, 1}, std::pair{Letter::B, 0}};
    for (auto& bar : tune.bars)
        for (tune::Note& note : bar.notes)
            for (music::Pitch& pitch : note.pitches) {
                int const key = music::midi(pitch);
                auto const [letter, alter] = named[static_cast<std::size_t>(key % 12)];
                pitch = {letter, alter, key / 12 - 1};
            }
    return tune;
}

std::string difference(Tune const& one, Tune const& other, Besides const& besides)
{
    Tune const a = tune::withRepeatSigns(one);
    Tune const b = tune::withRepeatSigns(other);
    if (std::string const head = compared("head", headText(a), headText(b)); !head.empty())
        return head;
    for (tune::BarIndex i = 0; i < std::min(a.bars.size(), b.bars.size()); ++i)
        if (std::string const bar = difference(a.bars[i], b.bars[i], besides); !bar.empty())
            return "bar index " + std::to_string(i) + ", " + bar;
    if (a.bars.size() != b.bars.size())
        return std::to_string(a.bars.size()) + " bars | " + std::to_string(b.bars.size());
    return "";
}

} // namespace same
