#include "core/files/musicxml/measure.h"

#include "core/base/words.h"
#include "core/files/abc/text.h"
#include "core/files/limits.h"
#include "core/files/musicxml/values.h"
#include "core/files/musicxml/words.h"

#include <algorithm>
#include <array>
#include <utility>

namespace files::musicxml {

using music::Length;
using music::Pitch;
using music::Rational;
using pugi::xml_node;

namespace {

constexpr std::size_t mostGraces = 20;

// A stroke that tells only the rhythm: its pitch means nothing.
bool isSlash(xml_node note)
{
    return std::string_view(note.child("notehead").text().get()) == "slash";
}

} // namespace

bool MeasureReader::isOurs(xml_node note) const
{
    if (voiceOf(note) != m_voice.voice) return false;
    return m_voice.mayCrossStaves || staffOf(note) == m_voice.staff;
}

// The length that the file counts. Inside tuplets files round it to their divisions; there the
// printed value says what is meant.
Outcome MeasureReader::lengthOf(xml_node note, Length& out)
{
    constexpr int mostDots = 4;
    std::optional<Length> shown;
    if (auto const halvings = halvingsOf(trimmed(note.child("type").text().get()))) {
        auto const dots = note.select_nodes("dot").size();
        Length const plain{*halvings < 0 ? Rational(2)
                                         : Rational(1, std::int64_t{1} << *halvings)};
        if (dots <= mostDots) {
            std::int64_t const parts = std::int64_t{1} << dots;
            shown = plain * Rational(2 * parts - 1, parts);
        }
    }
    xml_node const ratio = note.child("time-modification");
    int const actual = ratio.child("actual-notes").text().as_int(1);
    int const normal = ratio.child("normal-notes").text().as_int(1);
    constexpr int largest = 64;
    bool const tuplet = ratio && actual >= 1 && actual <= largest && normal >= 1 &&
                        normal <= largest && actual != normal;
    if (ratio && !tuplet && actual != normal)
        m_remarks.addOnce(m_places.of(ratio), base::said("a tuplet of impossible numbers"),
                          base::said("its notes last as long as they are counted"));
    if (tuplet && shown) shown = *shown * Rational(normal, actual);

    xml_node const duration = note.child("duration");
    if (!duration) {
        if (!shown)
            return Problem{base::FaultCode::BadScoreValue, base::said("a note without length"),
                           note};
        out = *shown;
        return fits(out, note);
    }
    auto const counted = decimalFrom(duration.text().get());
    if (!counted || *counted < Rational(0)) return wrongValue(duration);
    out = {*counted / (m_divisions * Rational(4))};
    if (tuplet && shown) {
        Rational const off = out.wholes - shown->wholes;
        Rational const one = Rational(1) / (m_divisions * Rational(4));
        if (off < one && -off < one) out = *shown;
    }
    return fits(out, duration);
}

Outcome MeasureReader::pitchOf(xml_node note, Pitch& out)
{
    constexpr int highestKey = 127;
    xml_node const pitch = note.child("pitch");
    auto const letter = letterFrom(pitch.child("step").text().get());
    if (!letter) return wrongValue(pitch.child("step"));
    auto const octave = wholeFrom(pitch.child("octave"));
    if (!octave || *octave < 0 || *octave > 9) return wrongValue(pitch.child("octave"));
    Alter const alter = alterOf(pitch.child("alter"));
    if (alter.rounded)
        m_remarks.addOnce(m_places.of(pitch), base::said("accidentals of less than a semitone"),
                          base::said("read as whole semitones"));
    if (alter.tooFar)
        m_remarks.addOnce(m_places.of(pitch), base::said("accidentals beyond a double sharp or flat"),
                          base::said("read as double ones"));
    out = music::transposed(Pitch{*letter, alter.semitones, *octave}, m_transposition);
    int const key = midi(out);
    if (key < 0 || key > highestKey) return wrongValue(pitch.child("octave"));
    return std::nullopt;
}

Outcome MeasureReader::grace(xml_node node)
{
    if (!isOurs(node) || !node.child("pitch")) return std::nullopt;
    if (m_graces.size() >= mostGraces) {
        leaveOut(node, base::said("a great many grace notes before one note"));
        return std::nullopt;
    }
    Pitch pitch;
    if (auto problem = pitchOf(node, pitch)) return problem;
    m_graces.push_back(pitch);
    for (xml_node all : node.children("notations"))
        for (xml_node sign : all.children("slur")) {
            std::string_view const type = sign.attribute("type").value();
            int const number = sign.attribute("number").as_int(1);
            if (type == "start")
                m_graceSlurs.push_back(number);
            else if (type == "stop" && std::erase(m_graceSlurs, number) == 0)
                ++m_graceSlursClosed;
        }
    return std::nullopt;
}

// What the note's printed shape says: the ratio of its tuplet, its value, its beam.
void MeasureReader::readShape(xml_node node, Gathered& gathered)
{
    if (xml_node const ratio = node.child("time-modification")) {
        gathered.actual = ratio.child("actual-notes").text().as_int(1);
        gathered.normal = ratio.child("normal-notes").text().as_int(1);
    }
    if (auto const halvings = halvingsOf(trimmed(node.child("type").text().get())))
        gathered.written = {*halvings < 0 ? Rational(2)
                                          : Rational(1, std::int64_t{1} << *halvings)};
    for (xml_node beam : node.children("beam"))
        if (beam.attribute("number").as_int(1) == 1) {
            std::string_view const word = beam.text().get();
            gathered.beamGoesOn = word == "continue" || word == "end";
        }
}

Outcome MeasureReader::note(xml_node node)
{
    if (node.child("grace")) return grace(node);
    bool const chord = node.child("chord") && m_anyNote;
    if (node.child("chord") && !m_anyNote)
        m_remarks.addOnce(m_places.of(node), base::said("a chord has no first note"),
                          base::said("read as a note of its own"));
    Length length;
    if (auto problem = lengthOf(node, length)) return problem;
    m_anyNote = true;
    if (chord) {
        if (!m_noteBefore || !node.child("pitch") || node.child("cue")) return std::nullopt;
        Gathered& before = m_notes[*m_noteBefore];
        Pitch pitch;
        if (auto problem = pitchOf(node, pitch)) return problem;
        if (before.note.pitches.size() < limits::mostPitchesAtOnce)
            before.note.pitches.push_back(pitch);
        else
            leaveOut(node, base::said("more notes together than one hand can play"));
        notations(node, before);
        return std::nullopt;
    }
    m_noteBegan = m_at;
    m_at = m_at + length;
    m_end = std::max(m_end, m_at);
    m_noteBefore.reset();
    if (!isOurs(node)) return std::nullopt;
    if (node.child("cue")) {
        leaveOut(node, base::said("small notes that another part plays (cue notes)"));
        return std::nullopt;
    }
    if (length == Length{}) {
        m_remarks.add(m_places.of(node), base::said("a note has no length"), base::said("left out"));
        return std::nullopt;
    }
    if (++m_noteCount > limits::mostNotes)
        return Problem{base::FaultCode::TuneTooLong, "", node};

    Gathered gathered;
    gathered.note.at = m_noteBegan;
    gathered.note.length = length;
    gathered.note.place = m_places.of(node);
    if (isSlash(node)) {
        m_remarks.addOnce(m_places.of(node),
                          base::said("strokes for a rhythm instead of notes"),
                          base::said("read as rests"));
    } else if (node.child("pitch")) {
        Pitch pitch;
        if (auto problem = pitchOf(node, pitch)) return problem;
        gathered.note.pitches.push_back(pitch);
        gathered.note.graces = std::exchange(m_graces, {});
    } else if (node.child("unpitched")) {
        m_remarks.addOnce(m_places.of(node), base::said("notes without pitch"), base::said("read as rests"));
    } else {
        gathered.note.hidden = std::string_view(node.attribute("print-object").value()) == "no";
        gathered.note.graces = std::exchange(m_graces, {});
    }
    readShape(node, gathered);
    for (std::string& sign : std::exchange(m_signs, {})) mark(gathered, std::move(sign));
    notations(node, gathered);
    gathered.note.slursOpen += static_cast<int>(std::exchange(m_graceSlurs, {}).size());
    gathered.note.slursClose += std::exchange(m_graceSlursClosed, 0);
    if (!gathered.note.pitches.empty()) verses(node, gathered.note);
    m_noteBefore = m_notes.size();
    m_notes.push_back(std::move(gathered));
    return std::nullopt;
}

void MeasureReader::mark(Gathered& gathered, std::string text)
{
    bool const sayable = !text.empty() && text.find_first_of(" !|\"") == std::string::npos;
    auto& marks = gathered.note.marks;
    bool const there = std::find(marks.begin(), marks.end(), text) != marks.end();
    if (sayable && !there && marks.size() < limits::mostMarks) marks.push_back(std::move(text));
}

// As ABC has it, a mark of the note: !2!.
void MeasureReader::finger(xml_node node, Gathered& gathered)
{
    std::string_view const digit = trimmed(node.text().get());
    if (digit.size() != 1 || digit[0] < '1' || digit[0] > '5') return;
    m_remarks.addOnce(m_places.of(node), base::said("the music has fingering"),
                      base::said("kept for the lead sheet; an arrangement works out its own"));
    mark(gathered, std::string(digit));
}

void MeasureReader::notations(xml_node note, Gathered& gathered)
{
    for (xml_node tie : note.children("tie"))
        if (std::string_view(tie.attribute("type").value()) == "start")
            gathered.note.tied = !gathered.note.pitches.empty();
    for (xml_node all : note.children("notations"))
        for (xml_node sign : all.children()) {
            std::string_view const name = sign.name();
            std::string_view const type = sign.attribute("type").value();
            if (name == "tied" && type == "start") {
                gathered.note.tied = !gathered.note.pitches.empty();
            } else if (name == "tied" && type == "let-ring") {
                mark(gathered, std::string(letRing));
            } else if (name == "slur") {
                slur(sign, gathered);
            } else if (name == "tuplet") {
                gathered.tupletStarts = gathered.tupletStarts || type == "start";
                gathered.tupletStops = gathered.tupletStops || type == "stop";
            } else if (name == "fermata" && type == "inverted") {
                mark(gathered, "invertedfermata");
            } else if (name == "other-notation") {
                mark(gathered, shortened(sign.text().get()));
            } else if (MarkElement const* alone = markOf("", name)) {
                mark(gathered, std::string(alone->mark));
            } else {
                if (!sign.first_child() || sign.first_child().type() != pugi::node_element)
                    leaveOutSign(sign);
                for (xml_node inner : sign.children()) {
                    if (std::string_view(inner.name()) == "fingering")
                        finger(inner, gathered);
                    else if (MarkElement const* row = markOf(name, inner.name()))
                        mark(gathered, std::string(row->mark));
                    else
                        leaveOutSign(inner);
                }
            }
        }
}

void MeasureReader::leaveOut(xml_node node, std::string const& what)
{
    m_remarks.addOnce(m_places.of(node), what, base::said("left out"));
}

// A sign at a note that no mark of ours stands for. Those that only say more of a sign that is
// kept, or what is done anyway, need no word.
void MeasureReader::leaveOutSign(xml_node sign)
{
    constexpr std::array quiet{"wavy-line", "accidental-mark", "non-arpeggiate", "tied", "slur",
                               "tuplet", "string", "fret",
                               // groups that hold no sign
                               "ornaments", "technical", "articulations", "dynamics"};
    std::string_view const name = sign.name();
    if (std::ranges::find(quiet, name) != quiet.end() || name.empty()) return;
    leaveOut(sign, base::say("the sign {} at a note", shortened(name)));
}

// A slur that began on the grace notes of this very note is drawn with them.
void MeasureReader::slur(xml_node sign, Gathered& gathered)
{
    constexpr int mostSlurs = 16;
    std::string_view const type = sign.attribute("type").value();
    if (type == "stop" && std::erase(m_graceSlurs, sign.attribute("number").as_int(1)) > 0)
        return;
    int& count = type == "start" ? gathered.note.slursOpen : gathered.note.slursClose;
    if ((type == "start" || type == "stop") && count < mostSlurs) ++count;
}

// The verse by its number, or by the number at the end of its name; where that one is taken at
// this note, the next.
int MeasureReader::verseOf(xml_node lyric, tune::Note const& note) const
{
    std::string_view const name = lyric.attribute("number").value();
    std::size_t const digits = name.find_last_not_of("0123456789") + 1;
    std::string const number(name.substr(std::min(digits, name.size())).substr(0, 3));
    int verse = number.empty() ? 1 : std::max(std::stoi(number), 1);
    while (static_cast<std::size_t>(verse) <= note.verses.size() &&
           note.verses[static_cast<std::size_t>(verse) - 1] != tune::Syllable{})
        ++verse;
    return verse;
}

// What is sung to the note, by the number of the verse. A line that holds a syllable says so on
// the note where it goes on.
void MeasureReader::verses(xml_node note, tune::Note& into)
{
    constexpr std::size_t longest = 60; // bytes
    for (xml_node lyric : note.children("lyric")) {
        int const verse = verseOf(lyric, into);
        if (verse > static_cast<int>(limits::mostVerses)) {
            leaveOut(lyric, base::said("more verses than fit under a tune"));
            continue;
        }
        tune::Syllable syllable;
        for (xml_node part : lyric.children()) {
            // Two syllables under one note.
            bool const joins = std::string_view(part.name()) == "elision";
            if (joins && !syllable.text.empty()) syllable.text += ' ';
            if (std::string_view(part.name()) == "text")
                syllable.text +=
                    plainText(std::string_view(part.text().get()).substr(0, longest));
        }
        std::string_view const place = trimmed(lyric.child("syllabic").text().get());
        syllable.hyphen = !syllable.text.empty() && (place == "begin" || place == "middle");
        syllable.held = syllable.text.empty() && lyric.child("extend");
        if (into.verses.size() < static_cast<std::size_t>(verse))
            into.verses.resize(static_cast<std::size_t>(verse));
        into.verses[static_cast<std::size_t>(verse) - 1] = std::move(syllable);
    }
}

} // namespace files::musicxml
