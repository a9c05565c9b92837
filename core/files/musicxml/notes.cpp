#include "core/files/musicxml/notes.h"

#include "core/files/musicxml/words.h"
#include "core/files/musicxml/xmltext.h"
#include "core/notation/accidentals.h"
#include "core/notation/beams.h"
#include "core/notation/words.h"

#include <algorithm>
#include <array>
#include <string>

namespace files::musicxml {

namespace {

using music::Length;
using music::Pitch;
using notation::StaffNote;
using notation::StaffNoteIndex;
using pugi::xml_node;
using xml::addNumber;
using xml::addText;

char const* accidentalName(int alter)
{
    constexpr std::array names{"flat-flat", "flat", "natural", "sharp", "double-sharp"};
    return names[static_cast<std::size_t>(std::clamp(alter, -2, 2) + 2)];
}

void addPitch(xml_node note, Pitch pitch)
{
    xml_node const element = note.append_child("pitch");
    addText(element, "step", music::plain(music::PitchName{pitch.letter, 0}));
    if (pitch.alter != 0) addNumber(element, "alter", pitch.alter);
    addNumber(element, "octave", pitch.octave);
}

bool contains(std::vector<Pitch> const& pitches, Pitch pitch)
{
    return std::find(pitches.begin(), pitches.end(), pitch) != pitches.end();
}

// What the beams of a bar ask of each note: words by level.
using BeamWords = base::List<StaffNoteIndex, std::vector<std::string>>;

BeamWords beamWords(notation::StaffBar const& bar, tune::Bar const& written)
{
    BeamWords words(bar.notes.size(), {});
    auto const put = [&words](StaffNoteIndex note, int level, char const* word) {
        auto& levels = words[note];
        if (levels.size() < static_cast<std::size_t>(level))
            levels.resize(static_cast<std::size_t>(level));
        levels[static_cast<std::size_t>(level) - 1] = word;
    };
    for (notation::BeamGroup group : notation::beamGroups(bar, written.meter, written.upbeat))
        for (notation::BeamRun run : notation::beamRuns(bar, group, written.meter, written.upbeat)) {
            if (run.from == run.to) {
                put(run.from, run.level, run.stubToLeft ? "backward hook" : "forward hook");
                continue;
            }
            put(run.from, run.level, "begin");
            for (StaffNoteIndex note = run.from + 1; note < run.to; ++note)
                put(note, run.level, "continue");
            put(run.to, run.level, "end");
        }
    return words;
}

notation::StaffTuplet const* tupletOf(notation::StaffBar const& bar, StaffNoteIndex note)
{
    auto const found = std::find_if(
        bar.tuplets.begin(), bar.tuplets.end(),
        [note](notation::StaffTuplet const& t) { return t.first <= note && note <= t.last; });
    return found == bar.tuplets.end() ? nullptr : &*found;
}

// One sign of the staff on its way into the file.
class NoteWriter {
public:
    NoteWriter(xml_node measure, notation::StaffBar const& bar, StaffFrame const& frame,
               Carried& carried)
        : m_measure(measure), m_bar(bar), m_frame(frame), m_carried(carried),
          m_memory(music::signature(frame.written.key)), m_beams(beamWords(bar, frame.written))
    {}

    void write(StaffNoteIndex index, Length length)
    {
        StaffNote const& sign = m_bar.notes[index];
        m_staff = m_frame.onUpper(sign) ? 1 : m_frame.staff;
        writeGraces(sign);
        if (sign.isRest()) writeRest(sign, index, length);
        for (std::size_t i = 0; i < sign.pitches.size(); ++i)
            writePitch(sign, index, i, length);
        m_carried.ties = sign.tied ? sign.pitches : std::vector<Pitch>{};
    }

private:
    void addVoice(xml_node note) { addNumber(note, "voice", m_frame.voice); }
    void addStaff(xml_node note)
    {
        if (m_frame.grand) addNumber(note, "staff", m_staff);
    }

    void addAccidental(xml_node note, Pitch pitch)
    {
        if (m_memory.needs(pitch)) addText(note, "accidental", accidentalName(pitch.alter));
    }

    // Grace notes are quavers, or semiquavers where there are several, under one beam.
    void writeGraces(StaffNote const& sign)
    {
        std::size_t const count = sign.graces.size();
        for (std::size_t i = 0; i < count; ++i) {
            xml_node note = m_measure.append_child("note");
            note.append_child("grace");
            addPitch(note, sign.graces[i]);
            addVoice(note);
            addText(note, "type", count == 1 ? "eighth" : "16th");
            addAccidental(note, sign.graces[i]);
            addStaff(note);
            for (int level = 1; count > 1 && level <= 2; ++level) {
                xml_node beam = note.append_child("beam");
                beam.append_attribute("number") = level;
                beam.text() = i == 0 ? "begin" : i + 1 == count ? "end" : "continue";
            }
        }
    }

    void addValue(xml_node note, StaffNote const& sign)
    {
        addText(note, "type", typeName(sign.value));
        for (int dot = 0; dot < sign.value.dots; ++dot) note.append_child("dot");
    }

    void addTuplet(xml_node note, notation::StaffTuplet const* tuplet)
    {
        if (tuplet == nullptr) return;
        xml_node element = note.append_child("time-modification");
        addNumber(element, "actual-notes", tuplet->actual);
        addNumber(element, "normal-notes", tuplet->normal);
    }

    void writeRest(StaffNote const& sign, StaffNoteIndex index, Length length)
    {
        xml_node note = m_measure.append_child("note");
        if (sign.hidden) note.append_attribute("print-object") = "no";
        xml_node rest = note.append_child("rest");
        if (sign.fillsBar) rest.append_attribute("measure") = "yes";
        addNumber(note, "duration", inDivisions(length, m_frame.divisions));
        addVoice(note);
        if (!sign.fillsBar) addValue(note, sign);
        notation::StaffTuplet const* const tuplet = tupletOf(m_bar, index);
        addTuplet(note, tuplet);
        addStaff(note);
        xml_node notations = note.append_child("notations");
        addTupletMarks(notations, tuplet, index);
        addMarks(notations, sign);
        if (!notations.first_child()) note.remove_child(notations);
    }

    void writePitch(StaffNote const& sign, StaffNoteIndex index, std::size_t place,
                    Length length)
    {
        Pitch const pitch = sign.pitches[place];
        bool const tiedIn = contains(m_carried.ties, pitch);
        xml_node note = m_measure.append_child("note");
        if (place > 0) note.append_child("chord");
        addPitch(note, pitch);
        addNumber(note, "duration", inDivisions(length, m_frame.divisions));
        if (tiedIn) note.append_child("tie").append_attribute("type") = "stop";
        if (sign.tied) note.append_child("tie").append_attribute("type") = "start";
        addVoice(note);
        addValue(note, sign);
        if (!tiedIn) addAccidental(note, pitch);
        notation::StaffTuplet const* const tuplet = tupletOf(m_bar, index);
        addTuplet(note, tuplet);
        addStaff(note);
        if (place == 0) addBeams(note, index);
        xml_node notations = note.append_child("notations");
        if (tiedIn) notations.append_child("tied").append_attribute("type") = "stop";
        if (sign.tied) notations.append_child("tied").append_attribute("type") = "start";
        if (place == 0) addSlurs(notations, sign);
        if (place == 0) addTupletMarks(notations, tuplet, index);
        if (place == 0) addMarks(notations, sign);
        if (rings(sign)) notations.append_child("tied").append_attribute("type") = "let-ring";
        addFinger(notations, sign, place);
        addChordSign(notations, sign, place);
        if (!notations.first_child()) note.remove_child(notations);
        if (place == 0) addVerses(note, sign);
    }

    // One that ends where another begins ends first. MusicXML numbers those open at once up to
    // 16.
    void addSlurs(xml_node notations, StaffNote const& sign)
    {
        constexpr int mostSlurs = 16;
        auto const add = [&](char const* type, int number) {
            xml_node slur = notations.append_child("slur");
            slur.append_attribute("type") = type;
            slur.append_attribute("number") = number;
        };
        for (int i = 0; i < sign.slursClose && m_carried.slurs > 0; ++i)
            add("stop", m_carried.slurs--);
        for (int i = 0; i < sign.slursOpen && m_carried.slurs < mostSlurs; ++i)
            add("start", ++m_carried.slurs);
    }

    void addVerses(xml_node note, StaffNote const& sign)
    {
        if (m_carried.wordsGoOn.size() < sign.verses.size())
            m_carried.wordsGoOn.resize(sign.verses.size());
        for (std::size_t verse = 0; verse < sign.verses.size(); ++verse) {
            tune::Syllable const& syllable = sign.verses[verse];
            if (syllable.text.empty() && !syllable.held) continue;
            xml_node lyric = note.append_child("lyric");
            lyric.append_attribute("number") = static_cast<int>(verse) + 1;
            if (syllable.text.empty()) {
                lyric.append_child("extend");
                continue;
            }
            bool const goesOn = m_carried.wordsGoOn[verse];
            addText(lyric, "syllabic",
                    syllable.hyphen ? (goesOn ? "middle" : "begin")
                                    : (goesOn ? "end" : "single"));
            addText(lyric, "text", syllable.text);
            m_carried.wordsGoOn[verse] = syllable.hyphen;
        }
    }

    void addBeams(xml_node note, StaffNoteIndex index)
    {
        int level = 0;
        for (std::string const& word : m_beams[index]) {
            ++level;
            if (word.empty()) continue;
            xml_node beam = note.append_child("beam");
            beam.append_attribute("number") = level;
            beam.text() = word.c_str();
        }
    }

    static void addTupletMarks(xml_node notations, notation::StaffTuplet const* tuplet,
                               StaffNoteIndex index)
    {
        if (tuplet == nullptr) return;
        auto const add = [&notations](char const* type) {
            xml_node mark = notations.append_child("tuplet");
            mark.append_attribute("type") = type;
            mark.append_attribute("number") = 1;
        };
        if (index == tuplet->first) add("start");
        if (index == tuplet->last) add("stop");
    }

    static xml_node groupIn(xml_node notations, std::string_view name)
    {
        std::string const group(name);
        if (group.empty()) return notations;
        if (xml_node const found = notations.child(group.c_str())) return found;
        return notations.append_child(group.c_str());
    }

    static bool rings(StaffNote const& sign)
    {
        return std::find(sign.marks.begin(), sign.marks.end(), letRing) != sign.marks.end();
    }

    static bool isFinger(std::string const& mark)
    {
        return mark.size() == 1 && mark[0] >= '0' && mark[0] <= '5';
    }

    static void addMarks(xml_node notations, StaffNote const& sign)
    {
        for (std::string const& mark : sign.marks) {
            if (isDirection(mark)) continue; // stands among the directions
            if (mark == letRing) continue;   // at every note of a chord
            if (isFinger(mark)) {
                addText(groupIn(notations, "technical"), "fingering", mark);
            } else if (mark == "invertedfermata") {
                notations.append_child("fermata").append_attribute("type") = "inverted";
            } else if (MarkElement const* row = elementOf(mark)) {
                std::string const element(row->element);
                groupIn(notations, row->group).append_child(element.c_str());
            } else {
                xml_node other = notations.append_child("other-notation");
                other.append_attribute("type") = "single";
                other.text() = mark.c_str();
            }
        }
    }

    static void addFinger(xml_node notations, StaffNote const& sign, std::size_t place)
    {
        if (place >= sign.fingers.size()) return;
        addNumber(groupIn(notations, "technical"), "fingering", sign.fingers[place]);
    }

    // Rolled, or plucked strictly together.
    static void addChordSign(xml_node notations, StaffNote const& sign, std::size_t place)
    {
        bool const asked = place > 0 && std::find(sign.marks.begin(), sign.marks.end(),
                                                  "arpeggio") != sign.marks.end();
        if (sign.rolled || asked) notations.append_child("arpeggiate");
        bool const outer = place == 0 || place + 1 == sign.pitches.size();
        if (sign.bracketed && outer)
            notations.append_child("non-arpeggiate").append_attribute("type") =
                place == 0 ? "bottom" : "top";
    }

    xml_node m_measure;
    notation::StaffBar const& m_bar;
    StaffFrame const& m_frame;
    Carried& m_carried;
    int m_staff = 1; // of the sign being written
    notation::AccidentalMemory m_memory;
    BeamWords m_beams;
};

// The element as it stands in the bar, `from` the place written so far.
void writePlaced(xml_node measure, Placed const& placed, Length from, std::int64_t divisions)
{
    xml_node copy = measure.append_copy(placed.element);
    std::int64_t const offset = inDivisions(placed.at - from, divisions);
    if (offset == 0) return;
    // The offset stands behind what is shown and before the staff and the sound.
    xml_node behind = copy.last_child();
    while (std::string_view(behind.name()) == "staff" ||
           std::string_view(behind.name()) == "sound")
        behind = behind.previous_sibling();
    copy.insert_child_after("offset", behind).text().set(std::to_string(offset).c_str());
}

} // namespace

std::int64_t inDivisions(Length length, std::int64_t divisions)
{
    return music::floorOf(length.wholes * music::Rational(4 * divisions) +
                          music::Rational(1, 2));
}

bool isDirection(std::string_view mark)
{
    return directionOf(mark) != nullptr || notation::isToldInWords(mark);
}

void writeNotes(xml_node measure, notation::StaffBar const& bar, StaffFrame const& frame,
                std::vector<Placed> const& placed, Carried& carried)
{
    NoteWriter writer(measure, bar, frame, carried);
    std::size_t next = 0;
    for (StaffNoteIndex const i : bar.notes.indices()) {
        Length const from = bar.notes[i].at;
        Length const to = bar.notes.holds(i + 1) ? bar.notes[i + 1].at : frame.written.length;
        for (; next < placed.size() && placed[next].at < to; ++next)
            writePlaced(measure, placed[next], from, frame.divisions);
        writer.write(i, to - from);
    }
    for (; next < placed.size(); ++next)
        writePlaced(measure, placed[next], frame.written.length, frame.divisions);
}

} // namespace files::musicxml
