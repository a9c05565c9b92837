#include "core/files/musicxml/write.h"

#include "core/arrange/unfold.h"
#include "core/files/decimal.h"
#include "core/files/musicxml/notes.h"
#include "core/files/musicxml/scorehead.h"
#include "core/files/musicxml/words.h"
#include "core/files/musicxml/xmltext.h"
#include "core/music/typedchord.h"
#include "core/notation/handcrossing.h"

#include <algorithm>
#include <array>
#include <numeric>

namespace files {

namespace {

using music::Length;
using music::Rational;
using musicxml::Placed;
using notation::Label;
using notation::Notation;
using notation::PrintedBar;
using pugi::xml_node;
using xml::addNumber;
using xml::addText;

// Divisions of a crotchet with which every place and length is a whole number.
std::int64_t divisionsFor(Notation const& notation)
{
    std::int64_t divisions = 1;
    auto const include = [&divisions](Length place) {
        divisions = std::lcm(divisions, (place.wholes * Rational(4)).denominator());
    };
    for (tune::BarIndex const i : notation.bars.indices()) {
        tune::Bar const& written = notation.tune.bars[i];
        PrintedBar const& bar = notation.bars[i];
        include(written.length);
        for (auto const* staff : {&bar.upper, &bar.lower})
            for (notation::StaffNote const& note : staff->notes) include(note.at);
        for (auto const* labels : {&bar.leverCues, &bar.labels, &bar.gaveWay})
            for (Label const& label : *labels) include(label.at);
        for (tune::ChordMark const& mark : written.chords) include(mark.at);
        for (tune::Annotation const& words : written.annotations) include(words.at);
    }
    if (notation.slowing) include(notation.slowing->from.at);
    for (notation::Hairpin const& pin : notation.hairpins) {
        include(pin.from.at);
        include(pin.to.at);
    }
    return divisions;
}

// Elements that are made before their place among the notes is known.
class Drawer {
public:
    xml_node harmony() { return m_document.append_child("harmony"); }

    xml_node direction(char const* placement)
    {
        xml_node direction = m_document.append_child("direction");
        direction.append_attribute("placement") = placement;
        return direction;
    }

private:
    pugi::xml_document m_document;
};

xml_node addWords(xml_node direction, std::string const& text)
{
    xml_node words = direction.append_child("direction-type").append_child("words");
    words.text() = text.c_str();
    return words;
}

void addDegree(xml_node harmony, musicxml::Degree const& degree)
{
    xml_node element = harmony.append_child("degree");
    addNumber(element, "degree-value", degree.value);
    addNumber(element, "degree-alter", degree.alter);
    addText(element, "degree-type", degree.type);
}

void addNamedNote(xml_node harmony, std::string const& name, music::PitchName note)
{
    xml_node element = harmony.append_child(name.c_str());
    addText(element, (name + "-step").c_str(), music::plain(music::PitchName{note.letter, 0}));
    if (note.alter != 0) addNumber(element, (name + "-alter").c_str(), note.alter);
}

// A chord of the second time through is the alternate one.
Placed harmonyOf(tune::ChordMark const& mark, Drawer& drawer)
{
    xml_node harmony = drawer.harmony();
    if (mark.pass.value_or(1) > 1) harmony.append_attribute("type") = "alternate";
    harmony.append_attribute("placement") = "above";
    addNamedNote(harmony, "root", mark.chord.root);
    musicxml::Kind const kind = music::isNoChord(mark.chord) ? musicxml::Kind{"none", {}}
                                                      : musicxml::kindOf(mark.chord.suffix);
    xml_node element = harmony.append_child("kind");
    element.append_attribute("text") = mark.chord.suffix.c_str();
    element.text() = std::string(kind.name).c_str();
    if (mark.chord.bass) addNamedNote(harmony, "bass", *mark.chord.bass);
    for (musicxml::Degree const& degree : kind.degrees) addDegree(harmony, degree);
    return {mark.at, harmony};
}

void addStaff(xml_node direction, int staff, bool grand)
{
    if (grand) addNumber(direction, "staff", staff);
}

Placed wordsAt(Drawer& drawer, Label const& label, char const* placement, int staff,
               bool grand)
{
    xml_node direction = drawer.direction(placement);
    addWords(direction, label.text);
    addStaff(direction, staff, grand);
    return {label.at, direction};
}

// Bold and boxed, between the staves under the moment at which the hand moves.
Placed leverWords(Drawer& drawer, Label const& cue)
{
    Placed const placed = wordsAt(drawer, cue, "below", 1, true);
    xml_node words = placed.element.child("direction-type").child("words");
    words.append_attribute("font-weight") = "bold";
    words.append_attribute("enclosure") = "rectangle";
    return placed;
}

// Italic, as words of the tempo are.
Placed slowingWords(Drawer& drawer, notation::SlowingMark const& mark, bool grand)
{
    Placed const placed = wordsAt(
        drawer, {mark.from.at, notation::slowingWords(mark), std::nullopt}, "above", 1, grand);
    placed.element.child("direction-type").child("words").append_attribute("font-style") =
        "italic";
    return placed;
}

std::string capitalised(std::string text)
{
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

Placed tempoMark(Drawer& drawer, tune::Tune const& tune, bool grand)
{
    xml_node direction = drawer.direction("above");
    if (!tune.rhythm.empty())
        addWords(direction, capitalised(tune.rhythm))
            .append_attribute("font-weight") = "bold";
    xml_node metronome = direction.append_child("direction-type").append_child("metronome");
    notation::NoteValue const beat = notation::nearestValue(tune.tempo->beat);
    addText(metronome, "beat-unit", musicxml::typeName(beat));
    for (int dot = 0; dot < beat.dots; ++dot) metronome.append_child("beat-unit-dot");
    addText(metronome, "per-minute", decimal(tune.tempo->beatsPerMinute));
    addStaff(direction, 1, grand);
    direction.append_child("sound").append_attribute("tempo") =
        decimal(tune::quartersPerMinute(*tune.tempo)).c_str();
    return {Length{}, direction};
}

void sortByPlace(std::vector<Placed>& placed)
{
    std::stable_sort(placed.begin(), placed.end(),
                     [](Placed const& a, Placed const& b) { return a.at < b.at; });
}

void addKey(xml_node attributes, music::Key key)
{
    xml_node element = attributes.append_child("key");
    addNumber(element, "fifths", music::signature(key));
    addText(element, "mode", music::modeName(key.mode));
}

void addMeter(xml_node attributes, music::Meter meter)
{
    xml_node time = attributes.append_child("time");
    if (meter.common && meter.unit == 4 && meter.beats == 4)
        time.append_attribute("symbol") = "common";
    if (meter.common && meter.unit == 2 && meter.beats == 2)
        time.append_attribute("symbol") = "cut";
    addNumber(time, "beats", meter.beats);
    addNumber(time, "beat-type", meter.unit);
}

void addClef(xml_node attributes, int number, bool grand, char const* sign, int line)
{
    xml_node clef = attributes.append_child("clef");
    if (grand) clef.append_attribute("number") = number;
    addText(clef, "sign", sign);
    addNumber(clef, "line", line);
}

char const* barStyle(tune::Bar const& bar)
{
    if (bar.repeatCloses || bar.closes == tune::BarLine::Final) return "light-heavy";
    if (bar.closes == tune::BarLine::Double) return "light-light";
    return bar.closes == tune::BarLine::None ? "none" : nullptr;
}

std::string endingNumbers(std::vector<int> const& endings)
{
    std::string text;
    for (int ending : endings) text += (text.empty() ? "" : ",") + std::to_string(ending);
    return text;
}

// Where a mark sends the player, as MusicXML's sound element has it.
struct Way {
    std::string_view mark;
    std::string_view words;
    char const* attribute;
    char const* value;
};
Way const* wayOf(std::string_view mark)
{
    static constexpr std::array ways{
        Way{"D.C.", "D.C.", "dacapo", "yes"},
        Way{"dacapo", "D.C.", "dacapo", "yes"},
        Way{"D.S.", "D.S.", "dalsegno", "segno"},
        Way{"D.C.alfine", "D.C. al Fine", "dacapo", "yes"},
        Way{"D.C.alcoda", "D.C. al Coda", "dacapo", "yes"},
        Way{"D.S.alfine", "D.S. al Fine", "dalsegno", "segno"},
        Way{"D.S.alcoda", "D.S. al Coda", "dalsegno", "segno"},
        Way{"dacoda", "To Coda", "tocoda", "coda"},
        Way{"fine", "Fine", "fine", "yes"},
    };
    auto const found = std::find_if(ways.begin(), ways.end(),
                                    [mark](Way const& way) { return way.mark == mark; });
    return found == ways.end() ? nullptr : &*found;
}

// Writes the bars one after the other.
class PartWriter {
public:
    PartWriter(xml_node part, Notation const& notation)
        : m_part(part), m_notation(notation), m_grand(notation.grand),
          m_divisions(divisionsFor(notation))
    {}

    void write()
    {
        for (tune::BarIndex const i : m_notation.bars.indices()) writeBar(i);
    }

private:
    tune::Bar const& written(tune::BarIndex i) const { return m_notation.tune.bars[i]; }
    bool isLast(tune::BarIndex i) const { return i + 1 == m_notation.bars.size(); }

    void writeBar(tune::BarIndex i)
    {
        xml_node measure = m_part.append_child("measure");
        nameMeasure(measure, i);
        writeAttributes(measure, i);
        writeLeft(measure, i);
        Drawer drawer;
        musicxml::StaffFrame frame{written(i), 1, 1, m_grand, m_divisions};
        writeNotes(measure, m_notation.bars[i].upper, frame, placedAbove(drawer, i), m_carriedAbove);
        if (m_grand) {
            addNumber(measure.append_child("backup"), "duration",
                      musicxml::inDivisions(written(i).length, m_divisions));
            frame.staff = frame.voice = 2;
            frame.upper = onUpperStaff(i);
            writeNotes(measure, m_notation.bars[i].lower, frame, placedBelow(drawer, i), m_carriedBelow);
        }
        writeRight(measure, i);
    }

    // The left hand's notes that the sheet prints on the upper staff, by place.
    std::vector<Length> onUpperStaff(tune::BarIndex i) const
    {
        PrintedBar bar = m_notation.bars[i];
        notation::moveHighNotes(bar, written(i));
        std::vector<Length> places;
        for (notation::StaffNote const& note : bar.upperBelow.notes) places.push_back(note.at);
        return places;
    }

    // A pick-up does not count; one inside the tune has a number of its own kind.
    void nameMeasure(xml_node measure, tune::BarIndex i)
    {
        bool const counts =
            written(i).number > 0 && (i == 0 || written(i).number != written(i - 1).number);
        bool const numbered = written(i).number >= 0 && (counts || i == 0);
        std::string const name =
            numbered ? std::to_string(written(i).number) : 'X' + std::to_string(++m_uncounted);
        measure.append_attribute("number") = name.c_str();
        if (!counts) measure.append_attribute("implicit") = "yes";
    }

    void writeAttributes(xml_node measure, tune::BarIndex i)
    {
        tune::Bar const& bar = written(i);
        bool const newKey = i == 0 || bar.key != written(i - 1).key;
        bool const newMeter = i == 0 || bar.meter != written(i - 1).meter;
        if (!newKey && !newMeter) return;
        xml_node attributes = measure.append_child("attributes");
        if (i == 0) addNumber(attributes, "divisions", m_divisions);
        if (newKey) addKey(attributes, bar.key);
        if (newMeter) addMeter(attributes, bar.meter);
        if (i > 0) return;
        if (m_grand) addNumber(attributes, "staves", 2);
        addClef(attributes, 1, m_grand, "G", 2);
        if (m_grand) addClef(attributes, 2, m_grand, "F", 4);
    }

    // The left bar line: an opening repeat, the beginning of an ending.
    void writeLeft(xml_node measure, tune::BarIndex i)
    {
        tune::Bar const& bar = written(i);
        if (!bar.repeatOpens && bar.endings.empty()) return;
        xml_node line = measure.append_child("barline");
        line.append_attribute("location") = "left";
        if (bar.repeatOpens) addText(line, "bar-style", "heavy-light");
        if (!bar.endings.empty()) {
            m_ending = endingNumbers(bar.endings);
            addEnding(line, "start");
        }
        if (bar.repeatOpens)
            line.append_child("repeat").append_attribute("direction") = "forward";
    }

    void addEnding(xml_node line, char const* type)
    {
        xml_node ending = line.append_child("ending");
        ending.append_attribute("number") = m_ending.c_str();
        ending.append_attribute("type") = type;
    }

    bool endingStops(tune::BarIndex i) const
    {
        tune::Bar const& bar = written(i);
        return bar.endingCloses || bar.repeatCloses || isLast(i) ||
               !written(i + 1).endings.empty() || written(i + 1).repeatOpens;
    }

    void writeRight(xml_node measure, tune::BarIndex i)
    {
        tune::Bar const& bar = written(i);
        char const* const style = barStyle(bar);
        bool const stops = !m_ending.empty() && endingStops(i);
        if (style == nullptr && !stops) return;
        xml_node line = measure.append_child("barline");
        line.append_attribute("location") = "right";
        if (style != nullptr) addText(line, "bar-style", style);
        if (stops) addEnding(line, bar.endingCloses ? "stop" : "discontinue");
        if (stops) m_ending.clear();
        if (!bar.repeatCloses) return;
        xml_node repeat = line.append_child("repeat");
        repeat.append_attribute("direction") = "backward";
        if (bar.timesPlayed != 2) repeat.append_attribute("times") = bar.timesPlayed;
    }

    // Chord symbols and words that go with the upper staff.
    std::vector<Placed> placedAbove(Drawer& drawer, tune::BarIndex i)
    {
        tune::Bar const& bar = written(i);
        std::vector<Placed> placed;
        if (!bar.part.empty()) placed.push_back(partLetter(drawer, bar.part));
        if (i == 0) placed.push_back(tempoMark(drawer, m_notation.tune, m_grand));
        if (i == 0 && m_grand)
            placed.push_back(
                leverWords(drawer, {Length{}, m_notation.setupLine, std::nullopt}));
        for (tune::ChordMark const& mark : bar.chords)
            placed.push_back(harmonyOf(mark, drawer));
        for (tune::Annotation const& words : bar.annotations)
            placed.push_back(
                wordsAt(drawer, {words.at, words.text, std::nullopt}, "above", 1, m_grand));
        if (m_notation.slowing && m_notation.slowing->from.bar == i)
            placed.push_back(slowingWords(drawer, *m_notation.slowing, m_grand));
        for (Label const& one : m_notation.bars[i].gaveWay)
            placed.push_back(wordsAt(drawer, one, "above", 1, m_grand));
        for (Label const& cue : m_notation.bars[i].leverCues)
            placed.push_back(leverWords(drawer, cue));
        addDirections(placed, drawer, i);
        addPlacings(placed, drawer, i, harp::Side::Right);
        if (!m_grand) addLabels(placed, drawer, i);
        sortByPlace(placed);
        return placed;
    }

    // Signs at a note that MusicXML has as directions.
    void addDirections(std::vector<Placed>& placed, Drawer& drawer, tune::BarIndex i) const
    {
        auto const add = [&](char const* placement, Length at) {
            xml_node direction = drawer.direction(placement);
            placed.push_back({at, direction});
            return direction;
        };
        for (tune::Note const& note : written(i).notes)
            for (std::string const& mark : note.marks) {
                if (auto const sign = musicxml::directionOf(mark)) {
                    xml_node direction = add("above", note.at);
                    direction.append_child("direction-type")
                        .append_child(std::string(sign->element).c_str());
                    addStaff(direction, 1, m_grand);
                } else if (auto const way = wayOf(mark)) {
                    xml_node direction = add("above", note.at);
                    addWords(direction, std::string(way->words));
                    addStaff(direction, 1, m_grand);
                    direction.append_child("sound").append_attribute(way->attribute) =
                        way->value;
                }
            }
        for (Label const& label : m_notation.bars[i].dynamics) {
            xml_node direction = add("below", label.at);
            direction.append_child("direction-type")
                .append_child("dynamics")
                .append_child(label.text.c_str());
            addStaff(direction, 1, m_grand);
        }
        for (notation::Hairpin const& pin : m_notation.hairpins)
            for (bool const begins : {true, false}) {
                notation::Spot const& spot = begins ? pin.from : pin.to;
                if (spot.bar != static_cast<int>(i)) continue;
                xml_node direction = add("below", spot.at);
                direction.append_child("direction-type")
                    .append_child("wedge")
                    .append_attribute("type") = !begins     ? "stop"
                                                : pin.opens ? "crescendo"
                                                            : "diminuendo";
                addStaff(direction, 1, m_grand);
            }
    }

    // What is placed together as a bracket over the right hand or under the left. Two of a hand
    // may overlap, so that they have two numbers in turn.
    void addPlacings(std::vector<Placed>& placed, Drawer& drawer, tune::BarIndex i,
                     harp::Side hand) const
    {
        bool const right = hand == harp::Side::Right;
        int turn = 0;
        for (notation::PlacingBracket const& bracket : m_notation.placings) {
            if (bracket.hand != hand) continue;
            turn = 1 - turn;
            for (bool const begins : {true, false}) {
                notation::Spot const& spot = begins ? bracket.from : bracket.to;
                if (spot.bar != static_cast<int>(i)) continue;
                xml_node direction = drawer.direction(right ? "above" : "below");
                xml_node element =
                    direction.append_child("direction-type").append_child("bracket");
                element.append_attribute("type") = begins ? "start" : "stop";
                element.append_attribute("number") = (right ? 1 : 3) + turn;
                element.append_attribute("line-end") = right ? "down" : "up";
                element.append_attribute("line-type") = "solid";
                addStaff(direction, right ? 1 : 2, m_grand);
                placed.push_back({spot.at, direction});
            }
        }
    }

    Placed partLetter(Drawer& drawer, std::string const& part) const
    {
        xml_node direction = drawer.direction("above");
        addText(direction.append_child("direction-type"), "rehearsal", part);
        addStaff(direction, 1, m_grand);
        return {Length{}, direction};
    }

    void addLabels(std::vector<Placed>& placed, Drawer& drawer, tune::BarIndex i) const
    {
        for (Label const& label : m_notation.bars[i].labels)
            if (!label.text.empty())
                placed.push_back(wordsAt(drawer, label, "below", 2, m_grand));
    }

    std::vector<Placed> placedBelow(Drawer& drawer, tune::BarIndex i) const
    {
        std::vector<Placed> placed;
        addLabels(placed, drawer, i);
        addPlacings(placed, drawer, i, harp::Side::Left);
        sortByPlace(placed);
        return placed;
    }

    xml_node m_part;
    Notation const& m_notation;
    bool m_grand;
    std::int64_t m_divisions = 1;
    musicxml::Carried m_carriedAbove; // over the bar line
    musicxml::Carried m_carriedBelow;
    std::string m_ending; // numbers of the ending that is open
    int m_uncounted = 0;  // pick-ups inside the tune so far
};

// A lead sheet keeps its repeats: it has no left hand that could differ.
Notation printed(arrange::Arrangement const& arrangement, notation::Kind kind,
                 perform::Slowing slowing)
{
    return kind == notation::Kind::Lead
               ? notation::of(arrangement, kind)
               : notation::of(arrange::asPrinted(arrangement), kind, slowing);
}

} // namespace

std::string musicXml(arrange::Arrangement const& arrangement, notation::Kind kind,
                     perform::Slowing slowing)
{
    Notation const notation = printed(arrangement, kind, slowing);
    pugi::xml_document document = xml::declared();
    document.append_child(pugi::node_doctype)
        .set_value("score-partwise PUBLIC \"-//Recordare//DTD MusicXML 4.0 Partwise//EN\" "
                   "\"http://www.musicxml.org/dtds/partwise.dtd\"");
    xml_node score = document.append_child("score-partwise");
    score.append_attribute("version") = "4.0";
    musicxml::writeHead(score, notation.tune);
    xml_node part = score.append_child("part");
    part.append_attribute("id") = "P1";
    PartWriter(part, notation).write();
    return xml::textOf(document);
}

} // namespace files
