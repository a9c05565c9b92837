#include "core/files/musicxml/measure.h"

#include "core/files/abc/fields.h"
#include "core/files/abc/text.h"
#include "core/files/musicxml/words.h"
#include "core/music/typedchord.h"
#include "core/tune/jumps.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <numeric>

namespace files::musicxml {

namespace {

using base::FaultCode;
using music::Length;
using music::Pitch;
using music::Rational;
using pugi::xml_node;
using tune::BarLine;

constexpr std::size_t mostNotes = 200'000; // of a tune
constexpr std::size_t mostTexts = 50'000;
constexpr std::size_t mostPitchesAtOnce = 20; // no hand plucks more
constexpr std::size_t mostGraces = 20;
constexpr std::size_t mostMarks = 16;
constexpr std::int64_t largestCommonDenominator = std::int64_t{1} << 20;
constexpr Rational longestTune{std::int64_t{1} << 20};
constexpr Rational longestNote{256};
constexpr std::size_t longestWords = 300; // bytes

std::string shortened(std::string_view text)
{
    constexpr std::size_t most = 40;
    return plainText(text.substr(0, most));
}

Problem wrongValue(xml_node node)
{
    if (!node) return {FaultCode::BadScoreValue, "an element is missing", node};
    return {FaultCode::BadScoreValue,
            std::string(node.name()) + ' ' + shortened(node.text().get()), node};
}

// "12", "0.5": at most nine digits before the point and four behind; none for anything else.
std::optional<Rational> decimalFrom(std::string_view text)
{
    constexpr std::size_t mostWhole = 9;
    constexpr std::size_t mostBehind = 4;
    text = trimmed(text);
    bool const negative = text.starts_with('-');
    if (negative) text.remove_prefix(1);
    std::size_t const point = std::min(text.find('.'), text.size());
    std::string digits(text.substr(0, point));
    std::string_view behind = text.substr(std::min(point + 1, text.size()));
    while (behind.ends_with('0')) behind.remove_suffix(1);
    if (digits.size() > mostWhole || behind.size() > mostBehind) return std::nullopt;
    digits += behind;
    std::int64_t value = 0;
    auto const [stop, error] =
        std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (error != std::errc{} || stop != digits.data() + digits.size() || value < 0)
        return std::nullopt;
    std::int64_t scale = 1;
    for (std::size_t i = 0; i < behind.size(); ++i) scale *= 10;
    return Rational(negative ? -value : value, scale);
}

std::optional<int> wholeFrom(xml_node node)
{
    auto const value = decimalFrom(node.text().get());
    if (!value || value->denominator() != 1) return std::nullopt;
    return static_cast<int>(value->numerator());
}

// The alteration in whole semitones, and whether it had to be rounded.
struct Alter {
    int semitones = 0;
    bool rounded = false;
    bool tooFar = false; // beyond a double sharp or flat
};
Alter alterOf(xml_node node)
{
    double const value = node.text().as_double();
    if (std::isnan(value)) return {0, true, false};
    double const whole = std::clamp(std::trunc(value), -2.0, 2.0);
    return {static_cast<int>(whole), std::trunc(value) != value, std::trunc(value) != whole};
}

std::optional<music::Letter> letterFrom(std::string_view step)
{
    step = trimmed(step);
    if (step.size() != 1) return std::nullopt;
    auto const name = music::pitchNameFrom(step);
    return name ? std::optional(name->letter) : std::nullopt;
}

// Steps along the white notes for a transposition that gives semitones alone.
int usualSteps(int semitones)
{
    constexpr std::array steps{0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6};
    int const size = std::abs(semitones);
    int const up = 7 * (size / 12) + steps[static_cast<std::size_t>(size % 12)];
    return semitones < 0 ? -up : up;
}

std::vector<int> endingsFrom(std::string_view text)
{
    constexpr int last = 99;
    std::vector<int> endings;
    int number = 0;
    for (char c : std::string(text.substr(0, longestWords)) + ' ') {
        if (c >= '0' && c <= '9') {
            number = std::min(number * 10 + (c - '0'), last + 1);
        } else {
            if (number >= 1 && number <= last) endings.push_back(number);
            number = 0;
        }
    }
    std::sort(endings.begin(), endings.end());
    endings.erase(std::unique(endings.begin(), endings.end()), endings.end());
    return endings;
}

// The mark that an element `sound` stands for: where it sends the player.
std::optional<std::string_view> wayOf(xml_node sound)
{
    constexpr std::array<std::pair<char const*, std::string_view>, 4> ways{
        {{"dacapo", "D.C."}, {"dalsegno", "D.S."}, {"tocoda", "dacoda"}, {"fine", "fine"}}};
    for (auto const& [attribute, mark] : ways)
        if (sound.attribute(attribute)) return mark;
    return std::nullopt;
}

bool isPowerOfTwo(std::int64_t value) { return value > 0 && (value & (value - 1)) == 0; }

} // namespace

Outcome MeasureReader::read(Measure const& measure, xml_node harmonyMusic)
{
    m_bar = {};
    m_bar.place = m_places.of(measure.music);
    m_notes.clear();
    m_at = m_end = m_noteBegan = {};
    m_noteBefore.reset();
    m_anyNote = false;
    m_bar.key = m_key;
    m_bar.meter = m_meter;
    for (xml_node child : measure.music.children()) {
        std::string_view const name = child.name();
        Outcome outcome;
        if (name == "note")
            outcome = note(child);
        else if (name == "backup")
            outcome = moved(child, -1);
        else if (name == "forward")
            outcome = moved(child, 1);
        else if (name == "attributes")
            outcome = attributes(child);
        else if (name == "harmony" && !harmonyMusic)
            harmony(child);
        else if (name == "direction")
            direction(child);
        else if (name == "sound") {
            sound(child);
            if (auto const way = wayOf(child)) sendPlayer(child, *way);
        } else if (name == "barline")
            barline(child);
        if (outcome) return outcome;
    }
    if (harmonyMusic)
        if (auto outcome = harmonies(harmonyMusic)) return outcome;
    return finish(measure.music);
}

Outcome MeasureReader::attributes(xml_node node)
{
    if (xml_node const divisions = node.child("divisions")) {
        auto const value = decimalFrom(divisions.text().get());
        if (!value || *value <= Rational(0) || *value > Rational(largestCommonDenominator))
            return wrongValue(divisions);
        m_divisions = *value;
    }
    auto const ownStaff = [this](xml_node element) {
        int const number = element.attribute("number").as_int(m_voice.staff);
        return number == m_voice.staff;
    };
    for (xml_node child : node.children()) {
        std::string_view const name = child.name();
        if (!ownStaff(child)) continue;
        Outcome outcome;
        if (name == "key") outcome = key(child);
        if (name == "time") outcome = meter(child);
        if (name == "transpose") transposition(child);
        if (outcome) return outcome;
    }
    return std::nullopt;
}

// A change inside a measure counts from the next one on.
Outcome MeasureReader::key(xml_node node)
{
    constexpr int mostFifths = 14;
    int fifths = 0;
    if (xml_node const element = node.child("fifths")) {
        auto const value = wholeFrom(element);
        if (!value || std::abs(*value) > mostFifths) return wrongValue(element);
        fifths = *value;
    } else {
        // A signature of single signs: as many sharps or flats as it has.
        for (xml_node alter : node.children("key-alter")) fifths += alterOf(alter).semitones;
        fifths = std::clamp(fifths, -7, 7);
        m_remarks.addOnce(m_places.of(node), "the key signature is not a usual one",
                          "read as the usual one with the same number of sharps or flats");
    }
    auto const mode = modeFrom(trimmed(node.child("mode").text().get()));
    m_key = music::keyOf(fifths, mode.value_or(music::Mode::Ionian));
    if (!mode)
        m_remarks.addOnce(m_places.of(node), "the key does not say major or minor",
                          "read as major");
    m_key.tonic = music::transposed(m_key.tonic, m_transposition);
    if (!m_anyNote)
        m_bar.key = m_key;
    else
        m_remarks.addOnce(m_places.of(node), "the key changes inside a bar",
                          "counted from the next bar on");
    return std::nullopt;
}

Outcome MeasureReader::meter(xml_node node)
{
    constexpr int mostBeats = 64;
    constexpr int smallestUnit = 64;
    if (node.child("senza-misura")) return std::nullopt;
    Rational whole;
    int largestUnit = 1;
    for (xml_node beats : node.children("beats")) {
        xml_node const type = beats.next_sibling("beat-type");
        auto const unit = wholeFrom(type);
        if (!unit || !isPowerOfTwo(*unit) || *unit > smallestUnit) return wrongValue(type);
        // "3+2" over one unit.
        std::string_view sum = beats.text().get();
        while (true) {
            std::size_t const plus = std::min(sum.find('+'), sum.size());
            auto const part = decimalFrom(sum.substr(0, plus));
            if (!part || part->denominator() != 1 || *part <= Rational(0) ||
                *part > Rational(mostBeats))
                return wrongValue(beats);
            whole += *part * Rational(1, *unit);
            if (plus == sum.size()) break;
            sum.remove_prefix(plus + 1);
        }
        largestUnit = std::max(largestUnit, *unit);
    }
    if (whole == Rational(0)) return std::nullopt;
    auto const beats = (whole * Rational(largestUnit)).numerator();
    if (beats > mostBeats) return wrongValue(node.child("beats"));
    std::string_view const symbol = node.attribute("symbol").value();
    m_meter = {static_cast<int>(beats), largestUnit, symbol == "common" || symbol == "cut"};
    metered = true;
    if (!m_anyNote)
        m_bar.meter = m_meter;
    else
        m_remarks.addOnce(m_places.of(node), "the time signature changes inside a bar",
                          "counted from the next bar on");
    return std::nullopt;
}

void MeasureReader::transposition(xml_node node)
{
    constexpr int farthest = 48;
    auto const number = [node](char const* name) {
        double const value = node.child(name).text().as_double();
        return std::isfinite(value) && std::abs(value) <= farthest
                   ? static_cast<int>(std::lround(value))
                   : 0;
    };
    int const octaves = number("octave-change");
    int const semitones = number("chromatic");
    int const steps = node.child("diatonic") ? number("diatonic") : usualSteps(semitones);
    m_transposition = {steps + 7 * octaves, semitones + 12 * octaves};
    if (m_transposition == music::Interval{}) return;
    m_remarks.addOnce(m_places.of(node), "the part is written for a transposing instrument",
                      "read as it sounds");
    // The key of the same attributes stands before and was read as written.
    m_key.tonic = music::transposed(m_key.tonic, m_transposition);
    if (!m_anyNote) m_bar.key = m_key;
}

bool MeasureReader::isOurs(xml_node note) const
{
    if (voiceOf(note) != m_voice.voice) return false;
    return m_voice.mayCrossStaves || staffOf(note) == m_voice.staff;
}

Outcome MeasureReader::fits(Length length, xml_node at)
{
    std::int64_t const denominator = length.wholes.denominator();
    if (length.wholes > longestNote || denominator > largestCommonDenominator)
        return wrongValue(at);
    std::int64_t const common = std::lcm(m_commonDenominator, denominator);
    if (common > largestCommonDenominator) return wrongValue(at);
    m_commonDenominator = common;
    return std::nullopt;
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
        m_remarks.addOnce(m_places.of(ratio), "a tuplet of impossible numbers",
                          "its notes last as long as they are counted");
    if (tuplet && shown) shown = *shown * Rational(normal, actual);

    xml_node const duration = note.child("duration");
    if (!duration) {
        if (!shown) return Problem{FaultCode::BadScoreValue, "a note without length", note};
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
        m_remarks.addOnce(m_places.of(pitch), "accidentals of less than a semitone",
                          "read as whole semitones");
    if (alter.tooFar)
        m_remarks.addOnce(m_places.of(pitch), "accidentals beyond a double sharp or flat",
                          "read as double ones");
    out = music::transposed(Pitch{*letter, alter.semitones, *octave}, m_transposition);
    int const key = midi(out);
    if (key < 0 || key > highestKey) return wrongValue(pitch.child("octave"));
    return std::nullopt;
}

Outcome MeasureReader::grace(xml_node node)
{
    if (!isOurs(node) || !node.child("pitch") || m_graces.size() >= mostGraces)
        return std::nullopt;
    Pitch pitch;
    if (auto problem = pitchOf(node, pitch)) return problem;
    m_graces.push_back(pitch);
    return std::nullopt;
}

Outcome MeasureReader::note(xml_node node)
{
    if (node.child("grace")) return grace(node);
    bool const chord = node.child("chord") && m_anyNote;
    if (node.child("chord") && !m_anyNote)
        m_remarks.addOnce(m_places.of(node), "a chord has no first note",
                          "read as a note of its own");
    Length length;
    if (auto problem = lengthOf(node, length)) return problem;
    m_anyNote = true;
    if (chord) {
        if (!m_noteBefore || !node.child("pitch") || node.child("cue")) return std::nullopt;
        Gathered& before = m_notes[*m_noteBefore];
        Pitch pitch;
        if (auto problem = pitchOf(node, pitch)) return problem;
        if (before.note.pitches.size() < mostPitchesAtOnce)
            before.note.pitches.push_back(pitch);
        notations(node, before);
        return std::nullopt;
    }
    m_noteBegan = m_at;
    m_at = m_at + length;
    m_end = std::max(m_end, m_at);
    m_noteBefore.reset();
    if (!isOurs(node) || node.child("cue")) return std::nullopt;
    if (length == Length{}) {
        m_remarks.add(m_places.of(node), "a note has no length", "left out");
        return std::nullopt;
    }
    if (++m_noteCount > mostNotes) return Problem{FaultCode::TuneTooLong, "", node};

    Gathered gathered;
    gathered.note.at = m_noteBegan;
    gathered.note.length = length;
    gathered.note.place = m_places.of(node);
    if (node.child("pitch")) {
        Pitch pitch;
        if (auto problem = pitchOf(node, pitch)) return problem;
        gathered.note.pitches.push_back(pitch);
        gathered.note.graces = std::exchange(m_graces, {});
    } else if (node.child("unpitched")) {
        m_remarks.addOnce(m_places.of(node), "notes without pitch", "read as rests");
    } else {
        gathered.note.hidden = std::string_view(node.attribute("print-object").value()) == "no";
        gathered.note.graces = std::exchange(m_graces, {});
    }
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
    for (std::string& sign : std::exchange(m_signs, {})) mark(gathered, std::move(sign));
    notations(node, gathered);
    if (!gathered.note.pitches.empty()) verses(node, gathered.note);
    m_noteBefore = m_notes.size();
    m_notes.push_back(std::move(gathered));
    return std::nullopt;
}

Outcome MeasureReader::moved(xml_node node, int direction)
{
    auto const counted = decimalFrom(node.child("duration").text().get());
    if (!counted || *counted < Rational(0)) return wrongValue(node.child("duration"));
    Length const by{*counted / (m_divisions * Rational(4))};
    if (auto problem = fits(by, node.child("duration"))) return problem;
    m_at = direction > 0 ? m_at + by : m_at - by;
    if (m_at < Length{}) {
        m_remarks.add(m_places.of(node), "the file goes back beyond the start of the bar",
                      "read from the start of the bar");
        m_at = {};
    }
    m_end = std::max(m_end, m_at);
    return std::nullopt;
}

void MeasureReader::mark(Gathered& gathered, std::string text)
{
    bool const sayable = !text.empty() && text.find_first_of(" !|\"") == std::string::npos;
    auto& marks = gathered.note.marks;
    bool const there = std::find(marks.begin(), marks.end(), text) != marks.end();
    if (sayable && !there && marks.size() < mostMarks) marks.push_back(std::move(text));
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
            } else if (name == "slur") {
                constexpr int mostSlurs = 16;
                int& count =
                    type == "start" ? gathered.note.slursOpen : gathered.note.slursClose;
                if ((type == "start" || type == "stop") && count < mostSlurs) ++count;
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
                for (xml_node inner : sign.children()) {
                    if (std::string_view(inner.name()) == "fingering")
                        m_remarks.addOnce(m_places.of(inner), "the music has fingering",
                                          "left out, as new fingering is worked out");
                    if (MarkElement const* row = markOf(name, inner.name()))
                        mark(gathered, std::string(row->mark));
                }
            }
        }
}

// What is sung to the note, by the number of the verse. A line that holds a syllable says so on
// the note where it goes on.
void MeasureReader::verses(xml_node note, tune::Note& into)
{
    constexpr int mostVerses = 20;
    constexpr std::size_t longest = 60; // bytes
    for (xml_node lyric : note.children("lyric")) {
        int const verse = lyric.attribute("number").as_int(1);
        if (verse < 1 || verse > mostVerses) continue;
        tune::Syllable syllable;
        for (xml_node text : lyric.children("text"))
            syllable.text += plainText(std::string_view(text.text().get()).substr(0, longest));
        std::string_view const place = trimmed(lyric.child("syllabic").text().get());
        syllable.hyphen = !syllable.text.empty() && (place == "begin" || place == "middle");
        syllable.held = syllable.text.empty() && lyric.child("extend");
        if (into.verses.size() < static_cast<std::size_t>(verse))
            into.verses.resize(static_cast<std::size_t>(verse));
        into.verses[static_cast<std::size_t>(verse) - 1] = std::move(syllable);
    }
}

// Chord symbols of another part's measure, which has a clock of its own.
Outcome MeasureReader::harmonies(xml_node music)
{
    Length const kept = m_at;
    Rational const divisions = m_divisions;
    m_at = {};
    for (xml_node child : music.children()) {
        std::string_view const name = child.name();
        if (name == "attributes" && child.child("divisions")) {
            auto const value = decimalFrom(child.child("divisions").text().get());
            if (value && *value > Rational(0)) m_divisions = *value;
        }
        if (name == "harmony") harmony(child);
        if (name == "backup")
            if (auto problem = moved(child, -1)) return problem;
        if (name == "forward")
            if (auto problem = moved(child, 1)) return problem;
        Length length;
        if (name == "note" && !child.child("chord") && !child.child("grace")) {
            if (auto problem = lengthOf(child, length)) return problem;
            m_at = m_at + length;
        }
    }
    m_at = kept;
    m_divisions = divisions;
    return std::nullopt;
}

// Where an element with an offset stands; none where the offset is no number.
std::optional<Length> MeasureReader::offsetOf(xml_node node) const
{
    xml_node const offset = node.child("offset");
    if (!offset) return m_at;
    auto const value = decimalFrom(offset.text().get());
    if (!value) return std::nullopt;
    Length const at = m_at + Length{*value / (m_divisions * Rational(4))};
    return std::max(at, Length{});
}

void MeasureReader::harmony(xml_node node)
{
    tune::Place const place = m_places.of(node);
    auto const at = offsetOf(node);
    xml_node const root = node.child("root");
    auto const letter = letterFrom(root.child("root-step").text().get());
    xml_node const kind = node.child("kind");
    std::string const kindName(trimmed(kind.text().get()));
    if (kindName == "none" && at) {
        if (++m_textCount <= mostTexts)
            m_bar.chords.push_back({*at, music::noChord(), "N.C.", std::nullopt});
        return;
    }
    if (!at || !letter) {
        m_remarks.addOnce(place, "a chord symbol has no root", "left out");
        return;
    }
    if (++m_textCount > mostTexts) return;
    std::vector<Degree> degrees;
    for (xml_node degree : node.children("degree"))
        degrees.push_back({degree.child("degree-value").text().as_int(),
                           std::clamp(degree.child("degree-alter").text().as_int(), -2, 2),
                           std::string(trimmed(degree.child("degree-type").text().get()))});
    auto suffix = suffixOf(kindName, degrees);
    if (!suffix) {
        suffix = suffixOf(kindName, {});
        std::string const what = "the chord kind " + shortened(kindName) +
                                 (degrees.empty() ? "" : " with its degrees");
        m_remarks.add(place, what + " is not known", suffix ? "read without them" : "left out");
        if (!suffix) return;
    }
    music::PitchName const name{*letter, alterOf(root.child("root-alter")).semitones};
    auto chord = music::chordFrom(music::plain(name) + *suffix);
    if (!chord) return m_remarks.add(place, "a chord symbol cannot be read", "left out");
    xml_node const bass = node.child("bass");
    if (auto const low = letterFrom(bass.child("bass-step").text().get())) {
        chord->bass = {*low, alterOf(bass.child("bass-alter")).semitones};
    } else if (int const inversion = node.child("inversion").text().as_int(); inversion > 0) {
        auto const tones = music::toneNames(*chord);
        if (static_cast<std::size_t>(inversion) < tones.size())
            chord->bass = tones[static_cast<std::size_t>(inversion)];
    }
    if (chord->bass == chord->root) chord->bass.reset();
    tune::ChordMark mark{*at, music::transposed(*chord, m_transposition), {}, std::nullopt};
    mark.written = music::plain(mark.chord);
    if (std::string_view(node.attribute("type").value()) == "alternate") mark.pass = 2;
    m_bar.chords.push_back(std::move(mark));
}

void MeasureReader::annotate(xml_node node, std::string words)
{
    auto const at = offsetOf(node);
    words = std::string(trimmed(words));
    if (words.empty() || !at || ++m_textCount > mostTexts) return;
    m_bar.annotations.push_back({*at, std::move(words)});
}

void MeasureReader::metronome(xml_node node)
{
    auto const halvings = halvingsOf(trimmed(node.child("beat-unit").text().get()));
    std::string_view text = node.child("per-minute").text().get();
    std::size_t const digit = text.find_first_of("0123456789");
    if (!halvings || digit == std::string_view::npos) return; // a relation of two values
    bool const negative = digit > 0 && text[digit - 1] == '-';
    text = text.substr(digit);
    std::size_t const end = std::min(text.find_first_not_of("0123456789."), text.size());
    bool const exponent = end < text.size() && (text[end] == 'e' || text[end] == 'E');
    auto const beats =
        negative || exponent ? std::nullopt : decimalFrom(text.substr(0, end));
    constexpr Rational slowest{1};
    constexpr Rational fastest{1000};
    if (!beats || *beats < slowest || *beats > fastest || *halvings < 0) {
        m_remarks.add(m_places.of(node), "the metronome mark is not a tempo",
                      "the usual tempo is used");
        return;
    }
    if (tempo) {
        m_remarks.addOnce(m_places.of(node), "the tempo changes inside the tune",
                          "only the first is used");
        return;
    }
    Length const plain{Rational(1, std::int64_t{1} << *halvings)};
    bool const dotted = node.child("beat-unit-dot");
    tempo = tune::Tempo{dotted ? plain * Rational(3, 2) : plain, beats->toDouble()};
}

void MeasureReader::markLast(std::string text)
{
    if (!m_notes.empty())
        mark(m_notes.back(), std::move(text));
    else if (!bars.empty() && !bars.back().notes.empty() &&
             bars.back().notes.back().marks.size() < mostMarks)
        bars.back().notes.back().marks.push_back(std::move(text));
}

// Dynamics and hairpins become marks of the notes by which they stand.
void MeasureReader::loudness(xml_node type)
{
    for (xml_node part : type.children("dynamics"))
        for (xml_node sign : part.children())
            if (markOf("dynamics", sign.name())) m_signs.emplace_back(sign.name());
    for (xml_node wedge : type.children("wedge")) {
        std::string const kind = wedge.attribute("type").value();
        if (kind == "crescendo" || kind == "diminuendo") {
            m_hairpin = kind;
            m_signs.push_back(kind + '(');
        } else if (kind == "stop" && !m_hairpin.empty()) {
            markLast(std::exchange(m_hairpin, {}) + ')');
        }
    }
}

void MeasureReader::direction(xml_node node)
{
    bool hasTempo = false;
    for (xml_node type : node.children("direction-type"))
        if (xml_node const mark = type.child("metronome")) {
            hasTempo = true;
            metronome(mark);
        }
    sound(node.child("sound"));
    // What stands below or at another staff is of the performance, not of the tune.
    bool const below = std::string_view(node.attribute("placement").value()) == "below";
    if (staffOf(node) == m_voice.staff)
        for (xml_node type : node.children("direction-type")) loudness(type);
    if (staffOf(node) != m_voice.staff) return;
    if (auto const way = wayOf(node.child("sound"))) sendPlayer(node, *way);
    if (below) return;
    for (xml_node type : node.children("direction-type")) {
        std::string words;
        for (xml_node part : type.children()) {
            std::string_view const name = part.name();
            std::string text =
                plainText(std::string_view(part.text().get()).substr(0, longestWords));
            if (name == "rehearsal" && abcPartName(trimmed(text)) && !m_anyNote)
                m_bar.part = std::string(trimmed(text));
            else if (name == "words" || name == "rehearsal")
                words += text;
            else if (name == "coda" && m_anyNote)
                markLast(std::string(name));
            else if (name == "segno" || name == "coda")
                m_signs.emplace_back(name);
        }
        bool const told = wayOf(node.child("sound")) && tune::wayMark(words);
        if (told) continue;
        if (hasTempo && !words.empty())
            tempoWords.push_back(std::move(words));
        else
            annotate(node, std::move(words));
    }
}

// What the words say is fuller than what is heard: "D.C. al Fine" for dacapo. Behind the notes
// it belongs to the last of them.
void MeasureReader::sendPlayer(xml_node direction, std::string_view heard)
{
    std::string_view mark = heard;
    for (xml_node type : direction.children("direction-type")) {
        std::string words;
        for (xml_node part : type.children("words")) words += plainText(part.text().get());
        if (auto const told = tune::wayMark(words)) mark = told->mark;
    }
    if (m_anyNote)
        markLast(std::string(mark));
    else
        m_signs.emplace_back(mark);
}

void MeasureReader::sound(xml_node node)
{
    if (!node) return;
    pugi::xml_attribute const rate = node.attribute("tempo");
    double const quarters = rate.as_double();
    constexpr double fastest = 1000;
    bool const possible = quarters >= 1 && quarters <= fastest;
    if (rate && !possible)
        m_remarks.addOnce(m_places.of(node), "the tempo of the sound is none",
                          "it is passed over");
    if (!tempo && possible)
        tempo = tune::Tempo{{Rational(1, 4)}, quarters};
}

void MeasureReader::barline(xml_node node)
{
    std::string_view const location = node.attribute("location").as_string("right");
    xml_node const repeat = node.child("repeat");
    xml_node const ending = node.child("ending");
    std::string_view const direction = repeat.attribute("direction").value();
    std::string_view const type = ending.attribute("type").value();
    if (location == "middle") {
        if (repeat || ending)
            m_remarks.add(m_places.of(node), "a repeat inside a bar", "left out");
        return;
    }
    if (type == "start") {
        m_bar.endings = endingsFrom(ending.attribute("number").value());
        if (m_bar.endings.empty()) m_bar.endings = endingsFrom(ending.text().get());
        if (m_bar.endings.empty())
            m_remarks.add(m_places.of(node), "a time bar has no number", "left out");
    }
    if (direction == "forward") {
        if (location == "left")
            m_bar.repeatOpens = true;
        else
            m_remarks.add(m_places.of(node), "a repeat opens at the end of a bar", "left out");
    }
    if (location == "left") {
        if (direction == "backward" && !bars.empty()) bars.back().repeatCloses = true;
        return;
    }
    if (type == "stop" || type == "discontinue") m_bar.endingCloses = true;
    if (direction == "backward") {
        constexpr int mostTimes = 50;
        m_bar.repeatCloses = true;
        m_bar.timesPlayed = std::clamp(repeat.attribute("times").as_int(2), 2, mostTimes);
    }
    std::string_view const style = trimmed(node.child("bar-style").text().get());
    if (repeat) return;
    if (style == "light-light" || style == "heavy" || style == "heavy-light" ||
        style == "heavy-heavy")
        m_bar.closes = BarLine::Double;
    if (style == "light-heavy") m_bar.closes = BarLine::Final;
    if (style == "none") m_bar.closes = BarLine::None;
}

// Notes in order without gaps and overlaps.
void MeasureReader::layOut(std::vector<Gathered>& notes)
{
    std::stable_sort(notes.begin(), notes.end(), [](Gathered const& a, Gathered const& b) {
        return a.note.at < b.note.at;
    });
    Length const smallest{Rational(1) / (m_divisions * Rational(4))};
    std::vector<Gathered> laid;
    Length at;
    auto const rest = [&](Length to) {
        Gathered gap;
        gap.note.at = at;
        gap.note.length = to - at;
        gap.note.hidden = true;
        gap.note.place = m_bar.place;
        laid.push_back(std::move(gap));
        at = to;
    };
    for (Gathered& one : notes) {
        tune::Note& note = one.note;
        Length const end = note.at + note.length;
        if (note.at < at + smallest && at < note.at + smallest) {
            note.at = at; // rounded by the file
        } else if (note.at < at) {
            m_remarks.addOnce(note.place, "notes of one voice overlap",
                              "the later ones are cut or left out");
            if (end <= at) continue;
            note.at = at;
            note.length = end - at;
        } else if (note.at > at) {
            rest(note.at);
        }
        at = note.at + note.length;
        laid.push_back(std::move(one));
    }
    if (at + smallest <= m_end) rest(m_end);
    if (laid.empty()) {
        rest(music::barLength(m_bar.meter));
        laid.back().note.hidden = false;
    }
    m_bar.length = at;
    notes = std::move(laid);
}

// The notes that stand in one tuplet: as the file marks them, else until they fill what the
// smallest of them fills as often as the ratio asks.
void MeasureReader::groupTuplets(std::vector<Gathered> const& notes)
{
    struct Open {
        int first = 0;
        int actual = 3;
        int normal = 2;
        Length sum;
        Length smallest{Rational(4)};
        bool marked = false;
    };
    std::optional<Open> open;
    auto const close = [&](int last) {
        if (open && last >= open->first)
            m_bar.tuplets.push_back({open->first, last, open->actual, open->normal});
        open.reset();
    };
    constexpr int largest = 64;
    for (int i = 0; i < static_cast<int>(notes.size()); ++i) {
        Gathered const& one = notes[static_cast<std::size_t>(i)];
        bool const inTuplet = one.actual != one.normal && one.actual > 1 &&
                              one.actual <= largest && one.normal > 0 && one.normal <= largest;
        bool const same =
            open && inTuplet && one.actual == open->actual && one.normal == open->normal;
        if (open && (!same || one.tupletStarts)) close(i - 1);
        if (!inTuplet) continue;
        if (!open) open = Open{i, one.actual, one.normal, {}, {Rational(4)}, one.tupletStarts};
        open->sum = open->sum + one.note.length;
        if (one.written > Length{}) open->smallest = std::min(open->smallest, one.written);
        bool const full = open->sum >= open->smallest * Rational(open->normal);
        if (one.tupletStops || (!open->marked && full)) close(i);
    }
    close(static_cast<int>(notes.size()) - 1);
}

// Chord symbols in order, one or two a place; words at the notes over which they stand.
void MeasureReader::settleMarks()
{
    auto& chords = m_bar.chords;
    for (tune::ChordMark& mark : chords) mark.at = std::min(mark.at, m_bar.length);
    std::stable_sort(chords.begin(), chords.end(),
                     [](auto const& a, auto const& b) { return a.at < b.at; });
    std::vector<tune::ChordMark> kept;
    for (tune::ChordMark& mark : chords) {
        bool const stacked = !kept.empty() && kept.back().at == mark.at;
        if (stacked && kept.back().chord == mark.chord && mark.pass != 2) continue;
        if (stacked && (mark.pass != 2 || kept.back().pass)) {
            m_remarks.addOnce(m_bar.place, "there are two chord symbols in one place",
                              "only the first is used");
            continue;
        }
        if (stacked) kept.back().pass = 1;
        kept.push_back(std::move(mark));
    }
    chords = std::move(kept);
    for (tune::Annotation& words : m_bar.annotations) {
        if (words.at >= m_bar.length) {
            words.at = m_bar.length;
            continue;
        }
        auto const after =
            std::find_if(m_bar.notes.rbegin(), m_bar.notes.rend(),
                         [&words](tune::Note const& note) { return note.at <= words.at; });
        words.at = after == m_bar.notes.rend() ? Length{} : after->at;
    }
    std::stable_sort(m_bar.annotations.begin(), m_bar.annotations.end(),
                     [](auto const& a, auto const& b) { return a.at < b.at; });
}

Outcome MeasureReader::finish(xml_node measure)
{
    layOut(m_notes);
    groupTuplets(m_notes);
    for (Gathered& one : m_notes) {
        tune::Note& note = one.note;
        std::sort(note.pitches.begin(), note.pitches.end(), [](Pitch a, Pitch b) {
            return std::pair(midi(a), diatonicStep(a)) < std::pair(midi(b), diatonicStep(b));
        });
        note.pitches.erase(std::unique(note.pitches.begin(), note.pitches.end()),
                           note.pitches.end());
        note.beamBroken = &one == &m_notes.front() || (m_voice.beamed && !one.beamGoesOn);
        m_bar.notes.push_back(std::move(note));
    }
    settleMarks();
    m_total += m_bar.length.wholes;
    if (m_total > longestTune) return Problem{FaultCode::TuneTooLong, "", measure};
    if (auto problem = fits(m_bar.length, measure)) return problem;
    bars.push_back(std::move(m_bar));
    return std::nullopt;
}

} // namespace files::musicxml
