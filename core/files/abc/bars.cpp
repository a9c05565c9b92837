#include "core/files/abc/bars.h"

#include "core/base/words.h"
#include "core/files/abc/quoted.h"
#include "core/files/abc/text.h"
#include "core/files/abc/verse.h"
#include "core/files/limits.h"
#include "core/files/tidy.h"
#include "core/tune/jumps.h"

#include <algorithm>
#include <array>
#include <numeric>

namespace files {

namespace {

using base::FaultCode;
using music::Length;
using music::Rational;
using tune::BarLine;
using tune::Place;

// What `actual` notes take the time of, where the sign does not say (ABC 2.1, section 4.13).
int usualNormal(int actual, AbcMeter const& meter)
{
    bool const compound = meter.meter && isCompound(*meter.meter);
    switch (actual) {
    case 2:
        return 3;
    case 3:
        return 2;
    case 4:
        return 3;
    case 6:
        return 2;
    case 8:
        return 3;
    default:
        return compound ? 3 : 2;
    }
}

tune::Note noteAt(Place place)
{
    tune::Note note;
    note.place = place;
    return note;
}

void sortPitches(std::vector<music::Pitch>& pitches)
{
    auto const before = [](music::Pitch const& a, music::Pitch const& b) {
        return std::pair(midi(a), diatonicStep(a)) < std::pair(midi(b), diatonicStep(b));
    };
    std::sort(pitches.begin(), pitches.end(), before);
    pitches.erase(std::unique(pitches.begin(), pitches.end()), pitches.end());
}

} // namespace

void AbcBars::setKey(AbcKey const& key)
{
    m_key = key;
    m_pitches.setKey(key);
}

AbcOutcome AbcBars::setMeter(AbcMeter const& meter, Place place)
{
    if (meter.meter == m_meter.meter) return std::nullopt;
    if (!barIsEmpty()) {
        if (!barIsFull()) return AbcProblem{FaultCode::MeterMidBar, ""};
        m_remarks.add(place, base::said("there is no bar line before the new time signature"),
                      base::said("one is added"));
        closeBar(BarLine::Single, 0);
    }
    m_meter = meter;
    m_everMetered = m_everMetered || meter.meter;
    return std::nullopt;
}

void AbcBars::setPart(std::string const& name, Place place)
{
    if (!barIsEmpty()) {
        m_remarks.add(place, base::said("there is no bar line before the new part"),
                      base::said("the bar is split here"));
        closeBar(barIsFull() ? BarLine::Single : BarLine::None, 0);
    }
    m_bar.part = name;
}

void AbcBars::addWords(std::string_view words) { addAnnotation(words); }

AbcOutcome AbcBars::take(sign::Any const& sign, Place place)
{
    return std::visit(
        [this, place](auto const& one) -> AbcOutcome {
            using Sign = std::decay_t<decltype(one)>;
            constexpr bool endsOverlay =
                std::is_same_v<Sign, sign::Bar> || std::is_same_v<Sign, sign::Ending>;
            if (!m_listening) return std::nullopt;
            if (m_overlaid && !endsOverlay) {
                if constexpr (std::is_same_v<Sign, sign::Quoted>) overlaidText(one, place);
                return std::nullopt;
            }
            return on(one, place);
        },
        sign);
}

AbcOutcome AbcBars::on(sign::Note const& sign, Place place)
{
    return on(sign::Chord{{sign}, 1, {}}, place);
}

AbcOutcome AbcBars::on(sign::Chord const& sign, Place place)
{
    for (std::string const& mark : sign.marks)
        if (m_marks.size() < limits::mostMarks) m_marks.push_back(textString(mark));
    tune::Note note = noteAt(place);
    if (auto problem = pitches(sign.notes, place, note.pitches)) return problem;
    sortPitches(note.pitches);
    if (note.pitches.size() > limits::mostPitchesAtOnce) {
        note.pitches.resize(limits::mostPitchesAtOnce);
        m_remarks.add(place, base::said("more notes together than one hand can play"),
                      base::said("only the lowest are used"));
    }
    note.tied = std::any_of(sign.notes.begin(), sign.notes.end(),
                            [](sign::Note const& one) { return one.tied; });
    // A chord is as long as its first note (ABC 2.1, section 4.17).
    return put(std::move(note), sign.factor * sign.notes.front().factor, place);
}

AbcOutcome AbcBars::on(sign::Rest const& sign, Place place)
{
    tune::Note rest = noteAt(place);
    rest.hidden = sign.hidden;
    return put(std::move(rest), sign.factor, place);
}

AbcOutcome AbcBars::on(sign::BarRest const& sign, Place place)
{
    Length const bar = barLength(m_meter.meter.value_or(music::Meter{}));
    for (int i = 0; i < sign.bars; ++i) {
        if (i > 0) closeBar(BarLine::Single, 0);
        tune::Note rest = noteAt(place);
        rest.hidden = sign.hidden;
        if (auto problem = put(std::move(rest), bar.wholes / m_unit, place)) return problem;
    }
    return std::nullopt;
}

AbcOutcome AbcBars::on(sign::Grace const& sign, Place place)
{
    std::vector<music::Pitch> graces;
    if (auto problem = pitches(sign.notes, place, graces)) return problem;
    m_graces = std::move(graces);
    return std::nullopt;
}

AbcOutcome AbcBars::on(sign::Tuplet const& sign, Place place)
{
    if (m_tuplet) {
        m_remarks.add(
            place,
            base::said("a triplet or other tuplet begins before the last one is complete"),
            base::said("the last is cut short"));
        closeTuplet();
    }
    m_tuplet = OpenTuplet{m_bar.notes.beyond(), sign.actual,
                          sign.normal.value_or(usualNormal(sign.actual, m_meter)),
                          sign.count.value_or(sign.actual), place};
    return std::nullopt;
}

// One sign gives three quarters and one quarter of the pair, two seven eighths and one eighth
// (ABC 2.1, section 4.4).
AbcOutcome AbcBars::on(sign::Broken const& sign, Place place)
{
    constexpr int mostSigns = 3;
    if (barIsEmpty()) {
        m_remarks.add(place, base::said("there is no note before > or <"),
                      base::said("left out"));
        return std::nullopt;
    }
    if (sign.signs > mostSigns)
        m_remarks.add(place, base::said("more than three > or < together"),
                      base::said("read as three"));
    Rational const small(1, std::int64_t{1} << std::min(sign.signs, mostSigns));
    Rational const large = Rational(2) - small;
    tune::Note& note = m_bar.notes.back();
    Length const longer = note.length * (sign.firstGrows ? large : small);
    m_bar.length = m_bar.length - note.length + longer;
    note.length = longer;
    m_brokenFactor = sign.firstGrows ? small : large;
    return fits(longer.wholes);
}

AbcOutcome AbcBars::on(sign::Tie const&, Place place)
{
    tune::Note* note = lastNote();
    if (note != nullptr && !note->pitches.empty())
        note->tied = true;
    else
        m_remarks.add(place, base::said("there is no note before the tie"),
                      base::said("left out"));
    return std::nullopt;
}

// A slur round a note and its grace notes begins and ends on the note: no slur of the tune.
AbcOutcome AbcBars::on(sign::Slur const& sign, Place place)
{
    constexpr int most = 8; // at one note
    if (sign.opens) {
        m_slursOpened = std::min(m_slursOpened + 1, most);
        return std::nullopt;
    }
    tune::Note* const note = lastNote();
    if (note != nullptr && note->slursOpen > 0) {
        --note->slursOpen;
        --m_slursNow;
    } else if (note == nullptr || m_slursNow == 0) {
        m_remarks.addOnce(place, base::said("a slur ends that has not begun"),
                          base::said("left out"));
    } else if (note->slursClose < most) {
        ++note->slursClose;
        --m_slursNow;
    }
    return std::nullopt;
}

AbcOutcome AbcBars::on(sign::Quoted const& sign, Place place)
{
    constexpr std::string_view placed = "^_<>@";
    std::string_view text = sign.text;
    if (!text.empty() && placed.find(text[0]) != std::string_view::npos) {
        bool const free = text[0] == '@';
        text.remove_prefix(
            free ? std::min(text.find_first_not_of("@-0123456789., "), text.size()) : 1);
        return addAnnotation(text);
    }
    if (trimmed(text).empty()) {
        m_blankFirst = true;
        return std::nullopt;
    }
    auto const meaning = quotedMeaning(text);
    if (auto const* chord = std::get_if<music::Chord>(&meaning))
        return addChord(*chord, textString(trimmed(text)), place);
    if (std::holds_alternative<Unexplained>(meaning))
        return AbcProblem{FaultCode::BadChord, textString(trimmed(text))};
    return addAnnotation(text);
}

AbcOutcome AbcBars::on(sign::Mark const& sign, Place)
{
    if (tune::wayMark(sign.name)) return addAnnotation(sign.name);
    if (m_marks.size() < limits::mostMarks) m_marks.push_back(textString(sign.name));
    return std::nullopt;
}

AbcOutcome AbcBars::on(sign::Bar const& sign, Place place)
{
    m_overlaid = false;
    if (barIsEmpty())
        strengthenLast(sign, place);
    else
        closeBar(sign.line, sign.closes);
    bool const plain = sign.line == BarLine::Single || sign.line == BarLine::None;
    endEnding(sign.closes > 0 || sign.opens || !plain);
    if (sign.opens) m_bar.repeatOpens = true;
    if (!sign.endings.empty()) return on(sign::Ending{sign.endings}, place);
    return std::nullopt;
}

AbcOutcome AbcBars::on(sign::Ending const& sign, Place place)
{
    m_overlaid = false;
    if (!barIsEmpty()) closeBar(BarLine::None, 0);
    // A new first ending says nothing of where the last one stopped.
    endEnding(sign.endings.front() != 1);
    if (m_bars.empty() && sign.endings.front() > 1)
        m_remarks.add(place, base::said("the tune begins with a later time bar"),
                      base::said("left as written"));
    m_bar.endings = sign.endings;
    m_inEnding = true;
    return std::nullopt;
}

// Those that have a meaning the reader has dealt with.
AbcOutcome AbcBars::on(sign::Field const& sign, Place place)
{
    return on(sign::Stray{std::string(1, sign.letter) + ':' + sign.text}, place);
}

AbcOutcome AbcBars::on(sign::Overlay const&, Place place)
{
    m_remarks.addOnce(place, base::said("a bar has a second line of notes (&)"),
                      base::said("only the first is used"));
    m_overlaid = true;
    return std::nullopt;
}

// A chord symbol over a second line of notes alone.
void AbcBars::overlaidText(sign::Quoted const& sign, Place place)
{
    if (std::holds_alternative<music::Chord>(quotedMeaning(sign.text)))
        m_remarks.addOnce(place,
                          base::said("a chord symbol stands over the second line of notes (&)"),
                          base::said("left out"));
}

AbcOutcome AbcBars::on(sign::Space const&, Place)
{
    m_gap = true;
    return std::nullopt;
}

AbcOutcome AbcBars::on(sign::Stray const& sign, Place place)
{
    constexpr std::size_t mostShown = 30;
    std::string const shown = textString(sign.text.substr(0, mostShown));
    m_remarks.add(place, base::say("\"{}\" means nothing here", shown), base::said("left out"));
    return std::nullopt;
}

AbcOutcome AbcBars::on(sign::Refused const& sign, Place)
{
    constexpr std::size_t mostShown = 40;
    return AbcProblem{sign.code, textString(sign.text.substr(0, mostShown))};
}

AbcOutcome AbcBars::pitches(std::vector<sign::Note> const& notes, Place place,
                            std::vector<music::Pitch>& out)
{
    tune::Note const* before = lastNote();
    std::vector<music::Pitch> const tiedOver =
        before != nullptr && before->tied ? before->pitches : std::vector<music::Pitch>{};
    for (sign::Note const& note : notes) {
        auto const pitch = m_pitches.pitchOf(note, tiedOver);
        if (!pitch)
            return AbcProblem{FaultCode::BadNote,
                              base::said("a note beyond the highest or lowest octave")};
        if (note.quarter)
            m_remarks.addOnce(place, base::said("accidentals of less than a semitone"),
                              base::said("read as whole semitones"));
        out.push_back(*pitch);
    }
    return std::nullopt;
}

// Puts a note or rest at the end of the bar; `factor` counts unit lengths.
AbcOutcome AbcBars::put(tune::Note note, Rational factor, Place place)
{
    if (factor == Rational(0)) {
        m_remarks.add(place, base::said("a note has no length"), base::said("left out"));
        return std::nullopt;
    }
    if (++m_noteCount > limits::mostNotes) return AbcProblem{FaultCode::TuneTooLong, ""};
    Rational length = factor * m_unit * m_brokenFactor;
    if (m_tuplet) length = length * Rational(m_tuplet->normal, m_tuplet->actual);
    if (auto problem = fits(length)) return problem;

    if (barIsEmpty()) {
        m_bar.key = m_key.key;
        m_bar.meter = m_meter.meter.value_or(music::Meter{});
        m_bar.place = place;
    }
    note.at = m_bar.length;
    note.length = {length};
    note.beamBroken = std::exchange(m_gap, false);
    note.graces = std::exchange(m_graces, {});
    note.marks = std::exchange(m_marks, {});
    note.slursOpen = std::exchange(m_slursOpened, 0);
    m_slursNow += note.slursOpen;
    if (!note.pitches.empty()) m_sung.push_back({m_bars.beyond(), m_bar.notes.beyond()});
    m_bar.length = m_bar.length + note.length;
    m_bar.notes.push_back(std::move(note));
    m_brokenFactor = 1;
    m_blankFirst = false;
    countTuplet();
    return std::nullopt;
}

// Whether sums with this length stay exact.
AbcOutcome AbcBars::fits(Rational length)
{
    AbcProblem problem{FaultCode::BadLength, text(length)};
    if (length > limits::longestNote || length.denominator() > limits::largestCommonDenominator)
        return problem;
    std::int64_t const common = std::lcm(m_commonDenominator, length.denominator());
    if (common > limits::largestCommonDenominator) return problem;
    m_commonDenominator = common;
    m_total += length;
    if (m_total > limits::longestTune) return AbcProblem{FaultCode::TuneTooLong, ""};
    return std::nullopt;
}

void AbcBars::countTuplet()
{
    if (m_tuplet && --m_tuplet->left == 0) closeTuplet();
}

void AbcBars::closeTuplet()
{
    tune::NoteIndex const last = m_bar.notes.beyond() - 1;
    if (m_tuplet->first <= last)
        m_bar.tuplets.push_back({m_tuplet->first, last, m_tuplet->actual, m_tuplet->normal});
    m_tuplet.reset();
}

AbcOutcome AbcBars::countText()
{
    if (++m_textCount > limits::mostTexts) return AbcProblem{FaultCode::TuneTooLong, ""};
    return std::nullopt;
}

AbcOutcome AbcBars::addChord(music::Chord const& chord, std::string const& written, Place place)
{
    m_chordPlace = place;
    addStacked({m_bar.length, chord, written, std::nullopt}, place);
    return countText();
}

// Two symbols over one note stand for the first and the second time; a blank in the place of
// the first leaves the first time as it was.
void AbcBars::addStacked(tune::ChordMark mark, Place place)
{
    bool const stacked = !m_bar.chords.empty() && m_bar.chords.back().at == mark.at;
    if (stacked && m_bar.chords.back().pass.value_or(1) != 1) {
        m_remarks.add(place, base::said("there are more than two chord symbols over one note"),
                      base::said("only two are used"));
        return;
    }
    if (stacked) m_bar.chords.back().pass = 1;
    if (stacked || std::exchange(m_blankFirst, false)) mark.pass = 2;
    m_bar.chords.push_back(std::move(mark));
}

AbcOutcome AbcBars::addAnnotation(std::string_view text)
{
    std::string words = textString(trimmed(text));
    if (words.empty()) return std::nullopt;
    m_bar.annotations.push_back({m_bar.length, std::move(words)});
    return countText();
}

bool AbcBars::barIsFull() const
{
    return !m_meter.meter || m_bar.length == barLength(*m_meter.meter);
}

void AbcBars::closeBar(BarLine line, int closes)
{
    std::optional<OpenTuplet> goesOn;
    if (m_tuplet) {
        m_remarks.addOnce(m_tuplet->place, base::said("a bar line stands inside a tuplet"),
                          base::said("the tuplet goes on behind it"));
        goesOn = *m_tuplet;
        goesOn->first = 0;
        closeTuplet();
    }
    m_bar.closes = line;
    m_bar.repeatCloses = closes > 0;
    if (closes > 0) m_bar.timesPlayed = closes;
    m_bars.push_back(std::exchange(m_bar, {}));
    m_tuplet = goesOn;
    m_gap = true;
    m_blankFirst = false;
    m_pitches.beginBar();
}

// A bar line with no note before it adds to the line that closed the last bar.
void AbcBars::strengthenLast(sign::Bar const& sign, Place place)
{
    if (m_bars.empty()) {
        if (sign.closes > 0)
            m_remarks.add(place, base::said("a repeat ends before the first note"),
                          base::said("left out"));
        return;
    }
    tune::Bar& last = m_bars.back();
    if (sign.closes > 0) {
        last.repeatCloses = true;
        last.timesPlayed = sign.closes;
    }
    if (sign.line == BarLine::Final ||
        (sign.line == BarLine::Double && last.closes != BarLine::Final))
        last.closes = sign.line;
}

void AbcBars::endEnding(bool bracketStops)
{
    if (!m_inEnding || !bracketStops || m_bars.empty()) return;
    m_bars.back().endingCloses = true;
    m_inEnding = false;
}

tune::Note* AbcBars::lastNote()
{
    if (!m_bar.notes.empty()) return &m_bar.notes.back();
    return m_bars.empty() ? nullptr : &m_bars.back().notes.back();
}

tune::Bar& AbcBars::barAt(NotePlace place)
{
    return place.bar < m_bars.size() ? m_bars[place.bar] : m_bar;
}

tune::Note& AbcBars::sungNote(NotePlace place) { return barAt(place).notes[place.note]; }

// Where the notes of the bar behind the one at hand begin.
std::size_t AbcBars::firstOfNextBar(std::size_t next) const
{
    tune::BarIndex const bar = next > 0 ? m_sung[next - 1].bar : tune::BarIndex(0);
    while (next > 0 && next < m_sung.size() && m_sung[next].bar == bar) ++next;
    return next;
}

void AbcBars::beginLine()
{
    if (!m_listening) return;
    m_sung.clear();
    m_verse = 0;
}

AbcOutcome AbcBars::addVerse(std::string_view text, Place place)
{
    if (!m_listening || m_verse == limits::mostVerses) return std::nullopt;
    std::size_t next = 0;
    bool tooMany = false;
    for (VerseStep const& step : verseSteps(text)) {
        if (step.toNextBar) {
            next = firstOfNextBar(next);
            continue;
        }
        tooMany = next == m_sung.size();
        if (tooMany) break;
        tune::Note& note = sungNote(m_sung[next++]);
        if (step.syllable == tune::Syllable{}) continue;
        note.verses.resize(std::max(note.verses.size(), m_verse + 1));
        note.verses[m_verse] = step.syllable;
    }
    if (tooMany)
        m_remarks.add(place, base::said("more syllables than notes"),
                      base::said("the last are left out"));
    ++m_verse;
    return countText();
}

AbcOutcome AbcBars::addSymbols(std::string_view text, Place place)
{
    if (!m_listening) return std::nullopt;
    auto const steps = symbolSteps(text);
    if (!steps) {
        m_remarks.addOnce(
            place,
            base::said("a line s: has something else than chord symbols, words and "
                       "marks in their signs"),
            base::said("left out"));
        return std::nullopt;
    }
    std::size_t next = 0;
    int left = 0;
    for (SymbolStep const& step : *steps) {
        if (step.toNextBar) {
            next = firstOfNextBar(next);
        } else if (next == m_sung.size()) {
            left += step.symbol.empty() ? 0 : 1;
        } else {
            NotePlace const at = m_sung[next++];
            if (step.symbol.empty()) continue;
            m_chordPlace = place;
            if (auto problem = symbolAt(barAt(at), sungNote(at), step.symbol)) return problem;
        }
    }
    if (left > 0)
        m_remarks.add(place, base::said("more symbols than notes"),
                      base::said("the last are left out"));
    return std::nullopt;
}

// One symbol of a line s:, with its signs.
AbcOutcome AbcBars::symbolAt(tune::Bar& bar, tune::Note& note, std::string_view symbol)
{
    std::string_view const text = symbol.substr(1, symbol.size() - 2);
    std::string_view words = trimmed(text);
    if (symbol.front() == '"') {
        bool const placed = !words.empty() &&
                            std::string_view("^_<>@").find(words[0]) != std::string_view::npos;
        auto const meaning = placed ? std::variant<music::Chord, Words, Unexplained>{Words{}}
                                    : quotedMeaning(words);
        if (auto const* chord = std::get_if<music::Chord>(&meaning)) {
            auto const behind = std::ranges::find_if(
                bar.chords, [&](tune::ChordMark const& mark) { return mark.at > note.at; });
            bar.chords.insert(behind, {note.at, *chord, textString(words), std::nullopt});
            return countText();
        }
        if (std::holds_alternative<Unexplained>(meaning))
            return AbcProblem{FaultCode::BadChord, textString(words)};
        if (placed) words = trimmed(words.substr(1));
    } else if (!tune::wayMark(words)) {
        if (!words.empty() && note.marks.size() < limits::mostMarks)
            note.marks.push_back(textString(words));
        return std::nullopt;
    }
    if (words.empty()) return std::nullopt;
    auto const behind = std::ranges::find_if(
        bar.annotations, [&](tune::Annotation const& a) { return a.at > note.at; });
    bar.annotations.insert(behind, {note.at, textString(words)});
    return countText();
}

// What stands behind the last note of the tune belongs to its last bar: a "D.C." or a hold
// behind the bar line.
void AbcBars::keepBehindLast()
{
    tune::Bar& last = m_bars.back();
    for (tune::Annotation const& words : m_bar.annotations)
        last.annotations.push_back({last.length, words.text});
    if (!m_bar.chords.empty())
        m_remarks.add(m_chordPlace, base::said("a chord symbol stands behind the last note"),
                      base::said("left out"));
    if (last.notes.empty()) return;
    auto& marks = last.notes.back().marks;
    for (std::string& mark : m_marks)
        if (marks.size() < limits::mostMarks) marks.push_back(std::move(mark));
}

tune::Bars AbcBars::finish()
{
    if (!barIsEmpty())
        closeBar(BarLine::None, 0);
    else if (!m_bars.empty())
        keepBehindLast();
    endEnding(true);
    return tidied(std::move(m_bars), !m_everMetered, m_remarks);
}

} // namespace files
