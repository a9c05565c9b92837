#include "core/files/musicxml/measure.h"

#include "core/base/words.h"
#include "core/files/limits.h"
#include "core/files/musicxml/values.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace files::musicxml {

using base::FaultCode;
using music::Length;
using music::Pitch;
using music::Rational;
using pugi::xml_node;

Outcome MeasureReader::read(Measure const& measure, xml_node harmonyMusic, xml_node guideMusic)
{
    m_bar = {};
    m_bar.repeatOpens = std::exchange(m_opensNext, false);
    m_behind.clear();
    m_bar.place = m_places.of(measure.music);
    m_notes.clear();
    m_at = m_end = m_noteBegan = {};
    m_noteBefore.reset();
    m_anyNote = false;
    m_bar.key = m_key;
    m_bar.meter = m_meter;
    if (guideMusic) guides(guideMusic);
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
        else if (name == "figured-bass")
            leaveOut(child, base::said("figures of a bass (figured bass)"));
        if (outcome) return outcome;
    }
    if (harmonyMusic)
        if (auto outcome = harmonies(harmonyMusic)) return outcome;
    return finish(measure.music);
}

Outcome MeasureReader::fits(Length length, xml_node at)
{
    std::int64_t const denominator = length.wholes.denominator();
    if (length.wholes > limits::longestNote || denominator > limits::largestCommonDenominator)
        return wrongValue(at);
    std::int64_t const common = std::lcm(m_commonDenominator, denominator);
    if (common > limits::largestCommonDenominator) return wrongValue(at);
    m_commonDenominator = common;
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
        m_remarks.add(m_places.of(node),
                      base::said("the file goes back beyond the start of the bar"),
                      base::said("read from the start of the bar"));
        m_at = {};
    }
    m_end = std::max(m_end, m_at);
    return std::nullopt;
}

// A bar that is only the sign to play the ones before it again has their notes.
void MeasureReader::playAgain()
{
    bool const sounds = std::ranges::any_of(
        m_bar.notes, [](tune::Note const& note) { return !note.pitches.empty(); });
    if (sounds || bars.size() < m_barsAgain) return;
    tune::Bar const& before = bars[bars.beyond() - m_barsAgain];
    m_bar.notes = before.notes;
    m_bar.tuplets = before.tuplets;
    m_bar.length = before.length;
    m_remarks.addOnce(m_bar.place,
                      base::said("a bar is only the sign to repeat the bar before"),
                      base::said("its notes are written out"));
}

Outcome MeasureReader::finish(xml_node measure)
{
    for (std::string& mark : m_behind) markLast(std::move(mark));
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
    if (m_barsAgain > 0) playAgain();
    settleMarks();
    m_total += m_bar.length.wholes;
    if (m_total > limits::longestTune) return Problem{FaultCode::TuneTooLong, "", measure};
    if (auto problem = fits(m_bar.length, measure)) return problem;
    bars.push_back(std::move(m_bar));
    return std::nullopt;
}

} // namespace files::musicxml
