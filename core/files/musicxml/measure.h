#pragma once

#include "core/base/fault.h"
#include "core/files/musicxml/parts.h"
#include "core/files/remarks.h"
#include "core/tune/tune.h"

#include <optional>
#include <string>
#include <vector>

// Reads the measures of the tune's part one after the other. For the .cpp files of this folder.
namespace files::musicxml {

// What is wrong with a value, and at which element.
struct Problem {
    base::FaultCode code;
    std::string detail;
    pugi::xml_node at;
};
using Outcome = std::optional<Problem>; // none: all is well

class MeasureReader {
public:
    MeasureReader(TuneVoice const& voice, Places const& places, Remarks& remarks)
        : m_voice(voice), m_places(places), m_remarks(remarks)
    {}

    // Appends the measure's bar. `harmony`: the measure of another part whose chord symbols
    // stand over the tune, or a null node.
    // `guides`: the measure of another part that alone has tempo, parts and jumps, or none.
    Outcome read(Measure const& measure, pugi::xml_node harmony, pugi::xml_node guides);

    tune::Bars bars;
    std::optional<tune::Tempo> tempo; // the first
    std::vector<std::string> tempoWords;
    bool metered = false; // a time signature was read

private:
    // A note of the tune as it is being gathered: its ratio inside a tuplet, and what it said
    // of beginning and end.
    struct Gathered {
        tune::Note note;
        int actual = 1;
        int normal = 1;
        music::Length written; // its printed value without the tuplet's ratio; zero: unknown
        bool tupletStarts = false;
        bool tupletStops = false;
        bool beamGoesOn = false;
        bool beamKnown = false;
    };

    Outcome attributes(pugi::xml_node node);
    Outcome key(pugi::xml_node node);
    Outcome meter(pugi::xml_node node);
    void countFromNextBar(pugi::xml_node node, std::string const& what); // where the bar has begun
    void transposition(pugi::xml_node node);
    Outcome note(pugi::xml_node node);
    Outcome pitchOf(pugi::xml_node note, music::Pitch& out);
    Outcome lengthOf(pugi::xml_node note, music::Length& out);
    Outcome moved(pugi::xml_node node, int direction);
    Outcome grace(pugi::xml_node node);
    static void readShape(pugi::xml_node node, Gathered& gathered);
    bool noteFollows(pugi::xml_node node) const;
    void finger(pugi::xml_node node, Gathered& gathered);
    void notations(pugi::xml_node note, Gathered& gathered);
    void mark(Gathered& gathered, std::string text);
    void verses(pugi::xml_node note, tune::Note& into);
    Outcome harmonies(pugi::xml_node music);
    void harmony(pugi::xml_node node);
    void guides(pugi::xml_node music);
    void direction(pugi::xml_node node);
    void metronome(pugi::xml_node node);
    void sound(pugi::xml_node node);
    void sendPlayer(pugi::xml_node direction, std::string_view heard);
    void barline(pugi::xml_node node);
    void annotate(pugi::xml_node node, std::string words);
    void loudness(pugi::xml_node directionType);
    void markLast(std::string text);
    void remarkOnDirection(pugi::xml_node direction);
    void leaveOutSign(pugi::xml_node sign);
    void leaveOut(pugi::xml_node node, std::string const& what);
    void slur(pugi::xml_node sign, Gathered& gathered);
    int verseOf(pugi::xml_node lyric, tune::Note const& note) const;
    void playAgain();
    std::optional<music::Length> offsetOf(pugi::xml_node node) const;
    bool isOurs(pugi::xml_node note) const;
    Outcome fits(music::Length length, pugi::xml_node at);
    Outcome finish(pugi::xml_node measure);
    void layOut(std::vector<Gathered>& notes);
    void groupTuplets(std::vector<Gathered> const& notes);
    void settleMarks();

    TuneVoice const& m_voice;
    Places const& m_places;
    Remarks& m_remarks;

    music::Rational m_divisions{1};
    music::Key m_key;
    music::Meter m_meter;
    music::Interval m_transposition;
    std::vector<music::Pitch> m_graces; // for the next note
    std::vector<int> m_graceSlurs;      // numbers of slurs that began on them
    int m_graceSlursClosed = 0;         // slurs from elsewhere that ended on them
    std::vector<std::string> m_signs;   // marks for the next note
    std::string m_hairpin;              // the one that is open: its mark without the bracket
    std::optional<std::vector<int>> m_ending;
    bool m_opensNext = false;          // a repeat begins with the next bar
    int m_barsAgain = 0;               // so many bars are to be played again; 0: none
    std::vector<std::string> m_behind; // marks for the last note of the bar

    // Of the measure at hand.
    tune::Bar m_bar;
    std::vector<Gathered> m_notes;
    music::Length m_at;                      // where the file has come to
    music::Length m_end;                     // the furthest it came
    music::Length m_noteBegan;               // of the note before, for chords
    std::optional<std::size_t> m_noteBefore; // index into m_notes, where it was ours
    bool m_anyNote = false;

    std::size_t m_noteCount = 0;
    std::size_t m_textCount = 0;
    std::int64_t m_commonDenominator = 1;
    music::Rational m_total;
};

} // namespace files::musicxml
