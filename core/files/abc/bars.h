#pragma once

#include "core/files/abc/pitches.h"
#include "core/files/abc/scan.h"
#include "core/files/remarks.h"
#include "core/tune/tune.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace files {

// Why a tune cannot be read on; the reader adds file, line and column.
struct AbcProblem {
    base::FaultCode code;
    std::string detail;
};
using AbcOutcome = std::optional<AbcProblem>; // none: all is well

// Puts the signs of a tune's music together into bars.
class AbcBars {
public:
    explicit AbcBars(Remarks& remarks) : m_remarks(remarks) {}

    void setKey(AbcKey const& key);
    // MeterMidBar when notes stand before it in a bar that is not full.
    AbcOutcome setMeter(AbcMeter const& meter, tune::Place place);
    void setUnitLength(music::Rational length) { m_unit = length; }
    void setPropagation(Propagation reach) { m_pitches.setPropagation(reach); }
    void setPart(std::string const& name, tune::Place place);
    void addWords(std::string_view words); // over the next note
    void breakBeam() { m_gap = true; }
    // Left out until further notice: another voice.
    void setListening(bool listening) { m_listening = listening; }
    // Notes sound so many octaves higher than their key has them.
    void setVoiceOctave(int octaves) { m_pitches.setVoiceOctave(octaves); }

    AbcOutcome take(sign::Any const& sign, tune::Place place);

    // Words to sing (w:) stand under the notes of the line before them, each such line a verse.
    void beginLine();
    AbcOutcome addVerse(std::string_view text, tune::Place place);
    // A line of chord symbols, words and marks (s:), one for each note of the line before it.
    AbcOutcome addSymbols(std::string_view text, tune::Place place);

    // All bars, tidied: endings bounded, pick-ups found, bars numbered.
    tune::Bars finish();

private:
    AbcOutcome on(sign::Note const& sign, tune::Place place);
    AbcOutcome on(sign::Chord const& sign, tune::Place place);
    AbcOutcome on(sign::Rest const& sign, tune::Place place);
    AbcOutcome on(sign::BarRest const& sign, tune::Place place);
    AbcOutcome on(sign::Grace const& sign, tune::Place place);
    AbcOutcome on(sign::Tuplet const& sign, tune::Place place);
    AbcOutcome on(sign::Broken const& sign, tune::Place place);
    AbcOutcome on(sign::Tie const& sign, tune::Place place);
    AbcOutcome on(sign::Slur const& sign, tune::Place place);
    AbcOutcome on(sign::Quoted const& sign, tune::Place place);
    AbcOutcome on(sign::Mark const& sign, tune::Place place);
    AbcOutcome on(sign::Bar const& sign, tune::Place place);
    AbcOutcome on(sign::Ending const& sign, tune::Place place);
    AbcOutcome on(sign::Field const& sign, tune::Place place);
    AbcOutcome on(sign::Overlay const& sign, tune::Place place);
    AbcOutcome on(sign::Space const& sign, tune::Place place);
    AbcOutcome on(sign::Stray const& sign, tune::Place place);
    AbcOutcome on(sign::Refused const& sign, tune::Place place);

    AbcOutcome pitches(std::vector<sign::Note> const& notes, tune::Place place,
                       std::vector<music::Pitch>& out);
    AbcOutcome put(tune::Note note, music::Rational factor, tune::Place place);
    AbcOutcome fits(music::Rational length);
    void countTuplet();
    void closeTuplet();
    AbcOutcome addChord(music::Chord const& chord, std::string const& written,
                        tune::Place place);
    void addStacked(tune::ChordMark mark, tune::Place place);
    AbcOutcome addAnnotation(std::string_view text);
    AbcOutcome symbolAt(tune::Bar& bar, tune::Note& note, std::string_view symbol);
    std::size_t firstOfNextBar(std::size_t next) const;
    void keepBehindLast();
    void overlaidText(sign::Quoted const& sign, tune::Place place);
    AbcOutcome countText();

    bool barIsFull() const;
    bool barIsEmpty() const { return m_bar.notes.empty(); }
    void closeBar(tune::BarLine line, int closes);
    void strengthenLast(sign::Bar const& sign, tune::Place place);
    void endEnding(bool bracketStops);
    struct NotePlace {
        tune::BarIndex bar = 0;
        tune::NoteIndex note = 0;
    };
    tune::Note* lastNote();
    tune::Bar& barAt(NotePlace place);
    tune::Note& sungNote(NotePlace place);

    struct OpenTuplet {
        tune::NoteIndex first = 0;
        int actual = 3;
        int normal = 2;
        int left = 3; // notes still to come
        tune::Place place;
    };

    Remarks& m_remarks;
    AbcPitches m_pitches;
    AbcKey m_key;
    AbcMeter m_meter;
    bool m_everMetered = false;
    music::Rational m_unit{1, 8};
    bool m_listening = true;
    bool m_overlaid = false; // behind & until the bar line

    tune::Bars m_bars;
    tune::Bar m_bar; // the one being filled
    bool m_inEnding = false;

    std::optional<OpenTuplet> m_tuplet;
    music::Rational m_brokenFactor{1}; // for the next note
    bool m_blankFirst = false;         // a blank text stood where a chord could stand
    bool m_gap = true;
    std::vector<music::Pitch> m_graces;
    std::vector<std::string> m_marks;
    int m_slursOpened = 0; // for the next note
    int m_slursNow = 0;    // open after the last note
    tune::Place m_chordPlace; // of the last chord symbol

    std::vector<NotePlace> m_sung; // notes of the line, without rests
    std::size_t m_verse = 0;       // under that line

    std::size_t m_noteCount = 0;
    std::size_t m_textCount = 0;
    std::int64_t m_commonDenominator = 1; // of all lengths
    music::Rational m_total;
};

} // namespace files
