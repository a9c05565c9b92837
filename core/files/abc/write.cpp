#include "core/files/abc/write.h"

#include "core/arrange/unfold.h"
#include "core/files/abc/voice.h"
#include "core/files/decimal.h"
#include "core/notation/notation.h"

#include <algorithm>

namespace files {

namespace {

using arrange::Arrangement;
using music::Length;
using notation::StaffBar;
using notation::StaffNote;
using tune::Bar;
using tune::Tune;

constexpr std::size_t barsALine = 4;

void addField(std::string& out, char letter, std::string const& text)
{
    if (!text.empty()) out += std::string(1, letter) + ':' + abcEscaped(text) + '\n';
}

// Where a part's name is a single letter an order can name it.
std::string orderText(std::vector<std::string> const& order)
{
    std::string out;
    for (std::string const& part : order) {
        if (part.size() != 1) return {};
        out += part;
    }
    return out;
}

std::string head(Tune const& tune, std::optional<tune::Tempo> const& tempo)
{
    std::string out = "X:" + std::to_string(tune.number) + '\n';
    addField(out, 'T', tune.title);
    for (std::string const& title : tune.otherTitles) addField(out, 'T', title);
    addField(out, 'C', tune.composer);
    addField(out, 'O', tune.origin);
    addField(out, 'S', tune.source);
    addField(out, 'R', tune.rhythm);
    for (std::string const& note : tune.notes) addField(out, 'N', note);
    out += "M:" + abcMeterText(tune.meter) + "\nL:" + music::text(abcUnit.wholes) + '\n';
    if (tempo)
        out += "Q:" + music::text(tempo->beat.wholes) + '=' + decimal(tempo->beatsPerMinute) +
               '\n';
    addField(out, 'P', orderText(tune.partOrder));
    return out;
}

void sortByPlace(std::vector<AbcWord>& words)
{
    std::stable_sort(words.begin(), words.end(),
                     [](AbcWord const& a, AbcWord const& b) { return a.at < b.at; });
}

// Chord symbols and words over a bar. A chord of the second time alone follows a blank one.
std::vector<AbcWord> chordWords(Bar const& bar)
{
    std::vector<AbcWord> words;
    for (tune::ChordMark const& mark : bar.chords) {
        bool const stacked = !words.empty() && words.back().at == mark.at;
        std::string const blank = mark.pass == 2 && !stacked ? "\" \"" : "";
        words.push_back({mark.at, blank + abcQuoted(music::plain(mark.chord))});
    }
    return words;
}

// Words that are no chords go over the note in whose time they stand, or behind the last.
void addPlaced(std::vector<AbcWord>& words, StaffBar const& bar, Length at,
               std::string const& place, std::string const& text)
{
    Length begins;
    for (StaffNote const& sign : bar.notes) {
        if (sign.at <= at) begins = sign.at;
        if (sign.at + sign.length <= at) begins = sign.at + sign.length;
    }
    words.push_back({begins, abcQuoted(place + text)});
}

// The bars of one voice, with key and meter where they change.
class VoiceWriter {
public:
    explicit VoiceWriter(Tune const& tune) : m_tune(tune) { m_voice.setKey(tune.key); }

    // `parts`: this voice carries the names of the parts, as inline fields.
    std::string bar(tune::BarIndex i, StaffBar const& signs, std::vector<AbcWord> const& words,
                    bool parts)
    {
        Bar const& bar = m_tune.bars[i];
        std::string out;
        if (parts && !bar.part.empty()) out += "[P:" + bar.part + ']';
        if (i > 0 && bar.meter != m_tune.bars[i - 1].meter)
            out += "[M:" + abcMeterText(bar.meter) + ']';
        if (i > 0 && bar.key != m_tune.bars[i - 1].key) {
            out += "[K:" + music::plain(bar.key) + ']';
            m_voice.setKey(bar.key);
        }
        out += abcSignsBefore(bar);
        out += m_voice.notes(signs, words);
        std::string const line = abcLineAfter(m_tune.bars, i);
        return out + (line.empty() ? "" : ' ' + line);
    }

private:
    Tune const& m_tune;
    AbcVoice m_voice;
};

// Signs as ABC counts them: each lasts until the next, and a roll is a mark.
StaffBar counted(StaffBar bar, Length end)
{
    for (notation::StaffNoteIndex const i : bar.notes.indices()) {
        StaffNote& note = bar.notes[i];
        note.length = (i + 1 < bar.notes.size() ? bar.notes[i + 1].at : end) - note.at;
        if (note.rolled) note.marks.push_back("arpeggio");
    }
    return bar;
}

class ArrangementWriter {
public:
    explicit ArrangementWriter(notation::Notation const& notation)
        : m_notation(notation), m_right(notation.tune), m_left(notation.tune)
    {}

    // So many bars of both voices, one under the other.
    std::string system(tune::BarIndex from, tune::BarIndex to)
    {
        std::string right = "[V:RH]";
        std::string left = "[V:LH]";
        m_sung.clear();
        for (tune::BarIndex i = from; i < to; ++i) {
            right += ' ' + rightBar(i);
            left += ' ' + leftBar(i);
        }
        return right + '\n' + abcVerses(m_sung) + left + '\n';
    }

private:
    Bar const& written(tune::BarIndex i) const { return m_notation.tune.bars[i]; }

    std::string rightBar(tune::BarIndex i)
    {
        std::vector<AbcWord> words = chordWords(written(i));
        StaffBar const signs =
            withCuts(counted(m_notation.bars[i].upper, written(i).length), words);
        for (tune::Annotation const& note : written(i).annotations)
            addPlaced(words, signs, note.at, "^", note.text);
        for (notation::Label const& one : m_notation.bars[i].gaveWay)
            addPlaced(words, signs, one.at, "^", one.text);
        if (m_notation.slowing && m_notation.slowing->from.bar == i)
            addPlaced(words, signs, m_notation.slowing->from.at, "^",
                      notation::slowingWords(*m_notation.slowing));
        if (i == 0)
            addPlaced(words, signs, {}, "_", m_notation.setupLine);
        for (notation::Label const& cue : m_notation.bars[i].leverCues)
            addPlaced(words, signs, cue.at, "_", cue.text);
        sortByPlace(words);
        m_sung.insert(m_sung.end(), signs.notes.begin(), signs.notes.end());
        return m_right.bar(i, signs, words, true);
    }

    std::string leftBar(tune::BarIndex i)
    {
        StaffBar const signs = counted(m_notation.bars[i].lower, written(i).length);
        std::vector<AbcWord> words;
        for (notation::Label const& label : m_notation.bars[i].labels)
            if (!label.text.empty()) addPlaced(words, signs, label.at, "_", label.text);
        sortByPlace(words);
        return m_left.bar(i, signs, words, false);
    }

    notation::Notation const& m_notation;
    std::vector<StaffNote> m_sung; // of the line at hand
    VoiceWriter m_right;
    VoiceWriter m_left;
};

} // namespace

std::string abcOfTune(Tune const& tune)
{
    std::string out = head(tune, tune.tempo) + "K:" + music::plain(tune.key) + '\n';
    VoiceWriter writer(tune);
    std::size_t inLine = 0;
    std::vector<StaffNote> sung; // of the line at hand
    for (tune::BarIndex const i : tune.bars.indices()) {
        Bar const& bar = tune.bars[i];
        bool const begun = !out.ends_with('\n');
        if (begun && (inLine == barsALine || !bar.part.empty())) {
            out += '\n' + abcVerses(sung);
            sung.clear();
            inLine = 0;
        }
        if (!bar.part.empty()) out += "P:" + bar.part + '\n';
        std::vector<AbcWord> words = chordWords(bar);
        StaffBar const signs = withCuts(signsOf(bar), words);
        for (tune::Annotation const& note : bar.annotations)
            addPlaced(words, signs, note.at, "^", note.text);
        sortByPlace(words);
        if (!out.ends_with('\n')) out += ' ';
        sung.insert(sung.end(), signs.notes.begin(), signs.notes.end());
        out += writer.bar(i, signs, words, false);
        if (bar.number > 0) ++inLine;
    }
    out += '\n' + abcVerses(sung);
    for (std::string const& line : tune.words) addField(out, 'W', line);
    return out;
}

std::string abcOfArrangement(Arrangement const& arrangement, perform::Slowing slowing)
{
    notation::Notation const notation =
        notation::of(arrange::asPrinted(arrangement), notation::Kind::Arrangement, slowing);
    Tune const& tune = notation.tune;
    std::string out = "%abc-2.1\n" + head(tune, tune.tempo) +
                      "%%score {RH LH}\n"
                      "V:RH clef=treble name=\"Right hand\"\n"
                      "V:LH clef=bass name=\"Left hand\"\n"
                      "K:" +
                      music::plain(tune.key) + '\n';
    ArrangementWriter writer(notation);
    tune::BarIndex from = 0;
    std::size_t counted = 0;
    for (tune::BarIndex const i : tune.bars.indices()) {
        if (tune.bars[i].number > 0) ++counted;
        if (counted < barsALine && i + 1 < tune.bars.size()) continue;
        out += writer.system(from, i + 1);
        from = i + 1;
        counted = 0;
    }
    for (std::string const& line : tune.words) addField(out, 'W', line);
    return out;
}

} // namespace files
