#include "core/files/abc/voice.h"

#include "core/files/abc/text.h"
#include "core/notation/melody.h"

#include <algorithm>
#include <cstdlib>

namespace files {

using music::Length;
using music::Pitch;
using music::Rational;
using notation::StaffBar;
using notation::StaffNote;
using notation::StaffNoteIndex;
using notation::StaffTuplet;

StaffBar signsOf(tune::Bar const& bar)
{
    StaffBar out;
    for (tune::Note const& note : bar.notes) out.notes.push_back(notation::asWritten(note));
    for (tune::Tuplet const& t : bar.tuplets) // a sign for each note
        out.tuplets.push_back({StaffNoteIndex(t.first.value()), StaffNoteIndex(t.last.value()),
                               t.actual, t.normal});
    return out;
}

namespace {

// Makes two signs of one, at a place inside it.
void cut(StaffBar& bar, StaffNoteIndex index, Length at)
{
    StaffNote& first = bar.notes[index];
    StaffNote second = first;
    second.at = at;
    second.length = first.at + first.length - at;
    second.fingers.clear();
    second.graces.clear();
    second.marks.clear();
    second.beamBroken = false;
    second.slursOpen = 0;
    second.verses.clear();
    first.slursClose = 0;
    first.length = at - first.at;
    first.tied = !first.pitches.empty();
    bar.notes.insert(bar.notes.from(index + 1), std::move(second));
    for (StaffTuplet& tuplet : bar.tuplets) {
        if (tuplet.first > index) ++tuplet.first;
        if (tuplet.last >= index) ++tuplet.last;
    }
}

std::string factorText(Rational factor)
{
    std::string out;
    if (factor.numerator() != 1) out += std::to_string(factor.numerator());
    if (factor.denominator() != 1) out += '/' + std::to_string(factor.denominator());
    return out;
}

std::string lengthText(Length length, Rational ratio)
{
    return factorText(length.wholes * ratio / abcUnit.wholes);
}

std::string accidentalText(int alter)
{
    if (alter == 0) return "=";
    return std::string(static_cast<std::size_t>(std::abs(alter)), alter > 0 ? '^' : '_');
}

std::string letterText(Pitch pitch)
{
    std::string out = music::plain(music::PitchName{pitch.letter, 0});
    if (pitch.octave >= 5) {
        out[0] = static_cast<char>(out[0] - 'A' + 'a');
        out += std::string(static_cast<std::size_t>(pitch.octave - 5), '\'');
    } else {
        out += std::string(static_cast<std::size_t>(4 - pitch.octave), ',');
    }
    return out;
}

std::string markText(std::string const& mark) { return '!' + mark + '!'; }

StaffTuplet const* tupletAt(StaffBar const& bar, StaffNoteIndex sign)
{
    auto const found =
        std::find_if(bar.tuplets.begin(), bar.tuplets.end(), [sign](StaffTuplet const& t) {
            return t.first <= sign && sign <= t.last;
        });
    return found == bar.tuplets.end() ? nullptr : &*found;
}

std::string tupletText(StaffTuplet const& tuplet)
{
    return '(' + std::to_string(tuplet.actual) + ':' + std::to_string(tuplet.normal) + ':' +
           std::to_string(tuplet.last - tuplet.first + 1);
}

} // namespace

StaffBar withCuts(StaffBar bar, std::vector<AbcWord> const& words)
{
    for (AbcWord const& word : words)
        for (StaffNoteIndex const i : bar.notes.indices()) {
            StaffNote const& sign = bar.notes[i];
            if (sign.at < word.at && word.at < sign.at + sign.length) {
                cut(bar, i, word.at);
                break;
            }
        }
    return bar;
}

void AbcVoice::setKey(music::Key key)
{
    for (music::Letter letter : music::allLetters)
        m_signature[static_cast<std::size_t>(index(letter))] =
            music::alterIn(music::signature(key), letter);
}

// An accidental holds for its letter in every octave to the end of the bar (ABC 2.1, section
// 11.3); a tie carries its own over the bar line.
std::string AbcVoice::pitch(Pitch pitch)
{
    int understood = m_signature[static_cast<std::size_t>(index(pitch.letter))];
    if (auto const found = m_inBar.find(pitch.letter); found != m_inBar.end())
        understood = found->second;
    else
        for (Pitch const& tied : m_tiedOver)
            if (tied.letter == pitch.letter && tied.octave == pitch.octave)
                understood = tied.alter;
    if (understood == pitch.alter) return letterText(pitch);
    m_inBar[pitch.letter] = pitch.alter;
    return accidentalText(pitch.alter) + letterText(pitch);
}

std::string AbcVoice::graces(StaffNote const& sign)
{
    if (sign.graces.empty()) return {};
    std::string out = "{";
    for (Pitch const& grace : sign.graces) out += pitch(grace);
    return out + '}';
}

std::string AbcVoice::sign(StaffNote const& sign, Rational ratio)
{
    std::string out(static_cast<std::size_t>(sign.slursOpen), '(');
    std::string const closed(static_cast<std::size_t>(sign.slursClose), ')');
    for (std::string const& mark : sign.marks) out += markText(mark);
    out += graces(sign);
    if (sign.pitches.empty())
        return out + (sign.hidden ? 'x' : 'z') + lengthText(sign.length, ratio) + closed;
    bool const chord = sign.pitches.size() > 1;
    if (chord) out += '[';
    for (std::size_t i = 0; i < sign.pitches.size(); ++i) {
        if (i < sign.fingers.size()) out += markText(std::to_string(sign.fingers[i]));
        out += pitch(sign.pitches[i]);
    }
    if (chord) out += ']';
    out += lengthText(sign.length, ratio);
    if (sign.tied) out += '-';
    m_tiedOver = sign.tied ? sign.pitches : std::vector<Pitch>{};
    return out + closed;
}

std::string AbcVoice::notes(StaffBar const& bar, std::vector<AbcWord> const& words)
{
    std::string out;
    m_inBar.clear();
    std::size_t next = 0;
    for (StaffNoteIndex const i : bar.notes.indices()) {
        StaffNote const& one = bar.notes[i];
        if (one.beamBroken && i > 0) out += ' ';
        for (; next < words.size() && words[next].at < one.at + one.length; ++next)
            out += words[next].quoted;
        StaffTuplet const* const tuplet = tupletAt(bar, i);
        if (tuplet != nullptr && tuplet->first == i) out += tupletText(*tuplet);
        out += sign(one,
                    tuplet == nullptr ? Rational(1) : Rational(tuplet->actual, tuplet->normal));
    }
    for (; next < words.size(); ++next) out += words[next].quoted;
    return out;
}

namespace {

// A syllable with the signs that part others taken out or escaped.
std::string syllableText(tune::Syllable const& syllable)
{
    if (syllable.text.empty()) return !syllable.held ? "*" : syllable.hyphen ? "-" : "_";
    std::string out;
    for (char c : abcEscaped(syllable.text)) {
        if (c == '-') out += '\\';
        if (c != '*' && c != '_' && c != '|') out += c == ' ' ? '~' : c;
    }
    return out + (syllable.hyphen ? "-" : "");
}

} // namespace

std::string abcVerses(std::vector<StaffNote> const& signsOfLine)
{
    std::size_t verses = 0;
    for (StaffNote const& sign : signsOfLine) verses = std::max(verses, sign.verses.size());
    std::string out;
    for (std::size_t verse = 0; verse < verses; ++verse) {
        out += "w:";
        for (StaffNote const& sign : signsOfLine) {
            if (sign.pitches.empty()) continue;
            out += ' ' + (verse < sign.verses.size() ? syllableText(sign.verses[verse])
                                                     : std::string("*"));
        }
        out += '\n';
    }
    return out;
}

std::string abcEscaped(std::string_view text)
{
    constexpr std::size_t longestEntity = 9;
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        bool const entity =
            text[i] == '&' && text.substr(i, longestEntity).find(';') != std::string_view::npos;
        if (text[i] == '%' || text[i] == '\\' || entity) out += '\\';
        out += text[i];
    }
    return out;
}

std::string abcQuoted(std::string_view text)
{
    std::string out = "\"";
    for (char c : abcEscaped(text))
        if (c == '"')
            out += "\\u0022";
        else
            out += c;
    return out + '"';
}

namespace {

bool beginsEnding(tune::Bars const& bars, tune::BarIndex i)
{
    return i < bars.size() && !bars[i].endings.empty();
}

} // namespace

std::string abcLineAfter(tune::Bars const& bars, tune::BarIndex i)
{
    using tune::BarLine;
    tune::Bar const& bar = bars[i];
    bool const last = i + 1 == bars.size();
    std::string line = "|";
    if (bar.closes == BarLine::Double) line = "||";
    if (bar.closes == BarLine::Final && !(last && bar.repeatCloses)) line = "|]";
    if (bar.closes == BarLine::None) line = last ? "" : "[|]";
    // An ending that no other sign stops is stopped by a double line.
    bool const stopped = last || line != "|" || bar.repeatCloses || beginsEnding(bars, i + 1) ||
                         bars[i + 1].repeatOpens;
    if (bar.endingCloses && !stopped) line = "||";
    if (!bar.repeatCloses) return line;
    if (line.empty() || line == "[|]") line = "|";
    return std::string(static_cast<std::size_t>(std::max(bar.timesPlayed - 1, 1)), ':') + line;
}

std::string abcSignsBefore(tune::Bar const& bar)
{
    std::string out = bar.repeatOpens ? "|:" : "";
    for (std::size_t i = 0; i < bar.endings.size(); ++i)
        out += (i == 0 ? "[" : ",") + std::to_string(bar.endings[i]);
    if (!bar.endings.empty()) out += ' ';
    return out;
}

std::string abcMeterText(music::Meter meter)
{
    if (meter.common && meter.beats == 4 && meter.unit == 4) return "C";
    if (meter.common && meter.beats == 2 && meter.unit == 2) return "C|";
    return music::text(meter);
}

} // namespace files
