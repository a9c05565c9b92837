#include "core/files/musicxml/measure.h"

#include "core/base/words.h"
#include "core/files/abc/text.h"
#include "core/files/limits.h"
#include "core/files/musicxml/values.h"
#include "core/files/musicxml/words.h"
#include "core/music/typedchord.h"

#include <algorithm>

namespace files::musicxml {

using music::Length;
using music::Rational;
using pugi::xml_node;

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

namespace {

// What the file prints behind the root, where that is a chord's spelling.
std::optional<std::string> suffixAsShown(xml_node kind, music::PitchName root)
{
    std::string shown = shortened(trimmed(kind.attribute("text").value()));
    if (shown.empty() || !music::chordFrom(music::plain(root) + shown)) return std::nullopt;
    return shown;
}

} // namespace

void MeasureReader::harmony(xml_node node)
{
    tune::Place const place = m_places.of(node);
    auto const at = offsetOf(node);
    xml_node const root = node.child("root");
    auto const letter = letterFrom(root.child("root-step").text().get());
    xml_node const kind = node.child("kind");
    std::string kindName(trimmed(kind.text().get()));
    if (kindName.empty()) kindName = kind.attribute("text").empty() ? "major" : "other";
    if (kindName == "none" && at) {
        if (++m_textCount <= limits::mostTexts)
            m_bar.chords.push_back({*at, music::noChord(), "N.C.", std::nullopt});
        return;
    }
    if (!at || !letter) {
        m_remarks.addOnce(place, base::said("a chord symbol has no root"), base::said("left out"));
        return;
    }
    if (++m_textCount > limits::mostTexts) return;
    if (node.child("frame")) leaveOut(node, base::said("fret diagrams at chord symbols"));
    if (root.next_sibling("root"))
        m_remarks.addOnce(place, base::said("a chord symbol has a second chord"),
                          base::said("only the first is used"));
    std::vector<Degree> degrees;
    for (xml_node degree : node.children("degree"))
        degrees.push_back({degree.child("degree-value").text().as_int(),
                           std::clamp(degree.child("degree-alter").text().as_int(), -2, 2),
                           std::string(trimmed(degree.child("degree-type").text().get()))});
    music::PitchName const name{*letter, alterOf(root.child("root-alter")).semitones};
    auto suffix = suffixOf(kindName, degrees);
    if (!suffix) suffix = suffixAsShown(kind, name);
    if (!suffix) {
        suffix = suffixOf(kindName, {});
        std::string const named = shortened(kindName);
        m_remarks.add(place,
                      degrees.empty()
                          ? base::say("the chord kind {} is not known", named)
                          : base::say("the chord kind {} with its degrees is not known", named),
                      suffix ? base::said("read without them") : base::said("left out"));
        if (!suffix) return;
    }
    auto chord = music::chordFrom(music::plain(name) + *suffix);
    if (!chord) return m_remarks.add(place, base::said("a chord symbol cannot be read"), base::said("left out"));
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

} // namespace files::musicxml
