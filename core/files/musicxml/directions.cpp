#include "core/files/musicxml/measure.h"

#include "core/base/words.h"
#include "core/files/abc/fields.h"
#include "core/files/abc/text.h"
#include "core/files/limits.h"
#include "core/files/musicxml/values.h"
#include "core/files/musicxml/words.h"
#include "core/tune/jumps.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace files::musicxml {

using music::Length;
using music::Rational;
using pugi::xml_node;

void MeasureReader::annotate(xml_node node, std::string words)
{
    auto const at = offsetOf(node);
    words = std::string(trimmed(words));
    if (words.empty() || !at || ++m_textCount > limits::mostTexts) return;
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
    auto const beats = negative || exponent ? std::nullopt : decimalFrom(text.substr(0, end));
    constexpr Rational slowest{1};
    constexpr Rational fastest{1000};
    if (!beats || *beats < slowest || *beats > fastest || *halvings < 0) {
        m_remarks.add(m_places.of(node), base::said("the metronome mark is not a tempo"),
                      base::said("the usual tempo is used"));
        return;
    }
    if (tempo) {
        m_remarks.addOnce(m_places.of(node), base::said("the tempo changes inside the tune"),
                          base::said("only the first is used"));
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
             bars.back().notes.back().marks.size() < limits::mostMarks)
        bars.back().notes.back().marks.push_back(std::move(text));
}

// Dynamics, hairpins and the harp's damping signs become marks of the notes by which they
// stand.
void MeasureReader::loudness(xml_node type)
{
    for (xml_node part : type.children())
        if (MarkElement const* row = markOfDirection(part.name());
            row && row->mark.starts_with("muffle"))
            m_signs.emplace_back(row->mark);
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

// Whether the tune has a note between here and the end of the bar, before the file goes back
// for another voice.
bool MeasureReader::noteFollows(xml_node node) const
{
    for (xml_node next = node.next_sibling(); next; next = next.next_sibling()) {
        std::string_view const name = next.name();
        if (name == "backup") return false;
        if (name == "note" && isOurs(next)) return true;
    }
    return false;
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
    // What stands below or at another staff is of the performance, not of the tune, but for
    // where it sends the player.
    bool const below = std::string_view(node.attribute("placement").value()) == "below";
    if (staffOf(node) == m_voice.staff)
        for (xml_node type : node.children("direction-type")) loudness(type);
    if (staffOf(node) != m_voice.staff) return;
    auto const way = wayOf(node.child("sound"));
    if (way) sendPlayer(node, *way);
    remarkOnDirection(node);
    if (below) {
        std::string words;
        for (xml_node type : node.children("direction-type"))
            for (xml_node part : type.children("words")) words += plainText(part.text().get());
        auto const told = tune::wayMark(words);
        if (told && !way)
            sendPlayer(node, told->mark);
        else if (!told && !trimmed(words).empty() && !hasTempo)
            leaveOut(node, base::said("words below the staff"));
        return;
    }
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
            else if (name == "coda" && m_anyNote && !noteFollows(node))
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

// Directions that no sign of ours stands for.
void MeasureReader::remarkOnDirection(xml_node node)
{
    constexpr std::array known{"words", "rehearsal", "segno", "coda",    "dynamics",
                               "wedge", "metronome", "damp",  "damp-all"};
    for (xml_node type : node.children("direction-type"))
        for (xml_node part : type.children()) {
            std::string_view const name = part.name();
            if (part.type() != pugi::node_element ||
                std::ranges::find(known, name) != known.end())
                continue;
            bool const ends = std::string_view(part.attribute("type").value()) == "stop";
            if (name == "octave-shift" && !ends)
                m_remarks.addOnce(
                    m_places.of(part),
                    base::said("notes are printed an octave from where they sound"),
                    base::said("read as they sound"));
            else if (!ends)
                leaveOut(part,
                         base::say("the sign {} over or under the staff", shortened(name)));
        }
}

// Tempo, parts and jumps that another part alone has, before the measure's own notes are read.
void MeasureReader::guides(xml_node music)
{
    bool begun = false;
    auto const send = [&](std::string_view mark) {
        if (begun)
            m_behind.emplace_back(mark);
        else
            m_signs.emplace_back(mark);
    };
    for (xml_node child : music.children()) {
        std::string_view const name = child.name();
        begun = begun || name == "note";
        if (name == "sound") {
            sound(child);
            if (auto const way = wayOf(child)) send(*way);
        }
        if (name != "direction") continue;
        bool hasTempo = false;
        std::string words;
        for (xml_node type : child.children("direction-type"))
            for (xml_node part : type.children()) {
                std::string_view const kind = part.name();
                std::string const text(trimmed(
                    plainText(std::string_view(part.text().get()).substr(0, longestWords))));
                if (kind == "metronome") {
                    hasTempo = true;
                    metronome(part);
                } else if (kind == "rehearsal" && !begun && abcPartName(text)) {
                    m_bar.part = text;
                } else if (kind == "segno" || kind == "coda") {
                    send(kind);
                } else if (kind == "words") {
                    words += text;
                }
            }
        sound(child.child("sound"));
        auto const told = tune::wayMark(words);
        auto const way = wayOf(child.child("sound"));
        if (told || way)
            send(told ? told->mark : *way);
        else if (hasTempo && !words.empty())
            tempoWords.push_back(std::move(words));
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
        m_remarks.addOnce(m_places.of(node), base::said("the tempo of the sound is none"),
                          base::said("it is passed over"));
    if (!tempo && possible) tempo = tune::Tempo{{Rational(1, 4)}, quarters};
    constexpr double alike = 0.5; // crotchets a minute: the same tempo, rounded
    if (possible && std::abs(quartersPerMinute(*tempo) - quarters) > alike)
        m_remarks.addOnce(m_places.of(node), base::said("the tempo changes inside the tune"),
                          base::said("only the first is used"));
}

} // namespace files::musicxml
