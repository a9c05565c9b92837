#include "core/files/musicxml/measure.h"

#include "core/base/words.h"
#include "core/files/abc/text.h"
#include "core/files/limits.h"
#include "core/files/musicxml/values.h"
#include "core/files/musicxml/words.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

namespace files::musicxml {

using music::Rational;
using pugi::xml_node;

namespace {

// Steps along the white notes for a transposition that gives semitones alone.
int usualSteps(int semitones)
{
    constexpr std::array steps{0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6};
    int const size = std::abs(semitones);
    int const up = 7 * (size / 12) + steps[static_cast<std::size_t>(size % 12)];
    return semitones < 0 ? -up : up;
}

bool isPowerOfTwo(std::int64_t value) { return value > 0 && (value & (value - 1)) == 0; }

} // namespace

Outcome MeasureReader::attributes(xml_node node)
{
    if (xml_node const divisions = node.child("divisions")) {
        auto const value = decimalFrom(divisions.text().get());
        if (!value || *value <= Rational(0) ||
            *value > Rational(limits::largestCommonDenominator))
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
        for (xml_node again : child.children("measure-repeat"))
            m_barsAgain = std::string_view(again.attribute("type").value()) == "start"
                              ? std::clamp(again.text().as_int(1), 1, 8)
                              : 0;
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
        m_remarks.addOnce(m_places.of(node), base::said("the key signature is not a usual one"),
                          base::said("read as the usual one with the same number of sharps or flats"));
    }
    auto const mode = modeFrom(trimmed(node.child("mode").text().get()));
    m_key = music::keyOf(fifths, mode.value_or(music::Mode::Ionian));
    if (!mode)
        m_remarks.addOnce(m_places.of(node), base::said("the key does not say major or minor"),
                          base::said("read as major"));
    m_key.tonic = music::transposed(m_key.tonic, m_transposition);
    if (!m_anyNote)
        m_bar.key = m_key;
    else
        m_remarks.addOnce(m_places.of(node), base::said("the key changes inside a bar"),
                          base::said("counted from the next bar on"));
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
        m_remarks.addOnce(m_places.of(node), base::said("the time signature changes inside a bar"),
                          base::said("counted from the next bar on"));
    return std::nullopt;
}

void MeasureReader::countFromNextBar(xml_node node, std::string const& what)
{
    if (m_anyNote)
        m_remarks.addOnce(m_places.of(node), what, base::said("counted from the next bar on"));
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
    m_remarks.addOnce(m_places.of(node), base::said("the part is written for a transposing instrument"),
                      base::said("read as it sounds"));
    // The key of the same attributes stands before and was read as written.
    m_key.tonic = music::transposed(m_key.tonic, m_transposition);
    if (!m_anyNote) m_bar.key = m_key;
}

} // namespace files::musicxml
