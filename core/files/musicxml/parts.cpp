#include "core/files/musicxml/parts.h"

#include "core/base/words.h"
#include "core/files/abc/text.h"
#include "core/files/musicxml/values.h"

#include <algorithm>

namespace files::musicxml {

using pugi::xml_node;

Places::Places(std::string_view text)
{
    m_lineStarts.push_back(0);
    for (std::size_t at = text.find('\n'); at != std::string_view::npos;
         at = text.find('\n', at + 1))
        m_lineStarts.push_back(at + 1);
}

tune::Place Places::of(xml_node node) const
{
    std::ptrdiff_t const offset = node.offset_debug();
    return offset < 0 ? tune::Place{} : ofByte(static_cast<std::size_t>(offset));
}

tune::Place Places::ofByte(std::size_t byte) const
{
    auto const line = std::upper_bound(m_lineStarts.begin(), m_lineStarts.end(), byte) - 1;
    return {static_cast<int>(line - m_lineStarts.begin()) + 1,
            static_cast<int>(byte - *line) + 1};
}

namespace {

std::string nameOfPart(xml_node score, std::string const& id)
{
    for (xml_node part : score.child("part-list").children("score-part"))
        if (id == part.attribute("id").value())
            return plainText(part.child("part-name").text().get());
    return {};
}

Part* partNamed(std::vector<Part>& parts, std::string const& id)
{
    auto const found = std::find_if(parts.begin(), parts.end(),
                                    [&id](Part const& part) { return part.id == id; });
    return found == parts.end() ? nullptr : &*found;
}

bool hasPitch(xml_node note)
{
    bool const slash = std::string_view(note.child("notehead").text().get()) == "slash";
    return note.child("pitch") && !note.child("cue") && !slash;
}

bool guides(xml_node direction)
{
    for (xml_node type : direction.children("direction-type"))
        for (char const* const sign : {"rehearsal", "segno", "coda", "metronome"})
            if (type.child(sign)) return true;
    return wayOf(direction.child("sound")) || direction.child("sound").attribute("tempo");
}

bool begins(xml_node note) { return !note.child("chord") && !note.child("grace"); }

// What one voice on one staff of a part holds.
struct VoiceCount {
    int notes = 0;
    int order = 0; // in which the voices appear
};
struct PartSurvey {
    std::map<int, std::map<std::string, VoiceCount>> staves; // voices by staff
    int harmonies = 0;
    int pitched = 0;
    int inChords = 0; // of these, the further notes of chords
    int sung = 0;
    int guides = 0;             // directions of tempo, parts and jumps
    bool crossesStaves = false; // one voice at two places at once: its staves are apart
    bool beamed = false;
};

// How far each voice has come on which staff, to see whether a voice name stands for two.
class VoiceClock {
public:
    // Whether the voice is at once on this staff and on another.
    bool clashes(xml_node note)
    {
        double const length = note.child("duration").text().as_double();
        double const from = m_at;
        m_at += length;
        Reach& reach = m_reaches[voiceOf(note)];
        bool const clash = reach.staff != 0 && reach.staff != staffOf(note) && from < reach.to;
        reach = {staffOf(note), m_at};
        return clash;
    }
    void move(double by) { m_at += by; }

private:
    struct Reach {
        int staff = 0;
        double to = 0;
    };
    double m_at = 0;
    std::map<std::string, Reach> m_reaches;
};

PartSurvey surveyOf(Part const& part)
{
    PartSurvey survey;
    int order = 0;
    for (Measure const& measure : part.measures) {
        VoiceClock clock;
        for (xml_node child : measure.music.children()) {
            std::string_view const name = child.name();
            if (name == "harmony") ++survey.harmonies;
            if (name == "direction" && guides(child)) ++survey.guides;
            if (name == "backup") clock.move(-child.child("duration").text().as_double());
            if (name == "forward") clock.move(child.child("duration").text().as_double());
            if (name != "note") continue;
            if (child.child("beam")) survey.beamed = true;
            if (begins(child))
                survey.crossesStaves = clock.clashes(child) || survey.crossesStaves;
            if (!hasPitch(child) || child.child("grace")) continue;
            VoiceCount& count = survey.staves[staffOf(child)][voiceOf(child)];
            if (count.notes++ == 0) count.order = ++order;
            ++survey.pitched;
            if (child.child("chord")) ++survey.inChords;
            if (child.child("lyric").child("text")) ++survey.sung;
        }
    }
    return survey;
}

bool accompanies(PartSurvey const& part)
{
    return part.staves.size() > 1 || 3 * part.inChords > part.pitched;
}

std::optional<std::size_t> tunePart(std::vector<PartSurvey> const& parts)
{
    auto const first = [&parts](auto const& fits) -> std::optional<std::size_t> {
        auto const found = std::ranges::find_if(
            parts, [&](PartSurvey const& s) { return s.pitched > 0 && fits(s); });
        if (found == parts.end()) return std::nullopt;
        return static_cast<std::size_t>(found - parts.begin());
    };
    auto const sung = [](PartSurvey const& s) { return s.sung > 0; };
    auto const leads = [](PartSurvey const& s) { return !accompanies(s); };
    auto const any = [](PartSurvey const&) { return true; };
    auto const of = [&first](auto const& kind) {
        auto const withChords =
            first([&kind](PartSurvey const& s) { return kind(s) && s.harmonies > 0; });
        return withChords ? withChords : first(kind);
    };
    if (auto const part = of(sung)) return part;
    if (auto const part = of(leads)) return part;
    return of(any);
}

std::string partLabel(Part const& part)
{
    return part.name.empty() ? base::say("file|part {}", part.id)
                             : base::say("the part \"{}\"", part.name);
}

} // namespace

std::vector<Part> partsOf(xml_node score)
{
    std::vector<Part> parts;
    if (std::string_view(score.name()) == "score-partwise") {
        for (xml_node node : score.children("part")) {
            std::string const id = plainText(node.attribute("id").value());
            Part part{id, nameOfPart(score, id), {}};
            for (xml_node measure : node.children("measure"))
                part.measures.push_back(
                    {measure, plainText(measure.attribute("number").value())});
            parts.push_back(std::move(part));
        }
        return parts;
    }
    for (xml_node measure : score.children("measure"))
        for (xml_node node : measure.children("part")) {
            std::string const id = plainText(node.attribute("id").value());
            if (partNamed(parts, id) == nullptr)
                parts.push_back({id, nameOfPart(score, id), {}});
            partNamed(parts, id)->measures.push_back(
                {node, plainText(measure.attribute("number").value())});
        }
    return parts;
}

int staffOf(xml_node note) { return std::clamp(note.child("staff").text().as_int(1), 1, 99); }

std::string voiceOf(xml_node note)
{
    constexpr std::size_t longest = 40;
    std::string voice = note.child("voice").text().get();
    voice.resize(std::min(voice.size(), longest));
    return voice.empty() ? "1" : voice;
}

std::optional<TuneVoice> tuneVoiceOf(std::vector<Part> const& parts, Places const& places,
                                     Remarks& remarks)
{
    std::vector<PartSurvey> surveys;
    for (Part const& part : parts) surveys.push_back(surveyOf(part));
    auto const chosen = [&surveys](auto const& fits) {
        return static_cast<std::size_t>(std::find_if(surveys.begin(), surveys.end(), fits) -
                                        surveys.begin());
    };
    TuneVoice tune;
    auto const found = tunePart(surveys);
    if (!found) return std::nullopt;
    tune.part = *found;
    PartSurvey const& survey = surveys[tune.part];
    tune.harmonyPart = tune.part;
    if (survey.harmonies == 0)
        tune.harmonyPart = chosen([](PartSurvey const& s) { return s.harmonies > 0; });
    if (tune.harmonyPart == parts.size()) tune.harmonyPart = tune.part;
    tune.guidePart = survey.guides == 0 && surveys.front().guides > 0 ? 0 : tune.part;

    tune.staff = survey.staves.begin()->first;
    auto const& voices = survey.staves.begin()->second;
    auto const best =
        std::max_element(voices.begin(), voices.end(), [](auto const& a, auto const& b) {
            return std::pair(a.second.notes, -a.second.order) <
                   std::pair(b.second.notes, -b.second.order);
        });
    tune.voice = best->first;
    tune.mayCrossStaves = !survey.crossesStaves;
    tune.beamed = survey.beamed;
    tune.staves = survey.staves.rbegin()->first;

    xml_node const first = parts[tune.part].measures.front().music;
    auto const sounding = std::count_if(surveys.begin(), surveys.end(),
                                        [](PartSurvey const& s) { return s.pitched > 0; });
    if (sounding > 1)
        remarks.add(places.of(first), base::say("the music has {} parts", sounding),
                    base::say("{} is read as the tune", partLabel(parts[tune.part])));
    if (survey.staves.size() > 1)
        remarks.add(places.of(first), base::say("the part has {} staves", survey.staves.size()),
                    base::say("the tune is read from staff {}", tune.staff));
    if (voices.size() > 1)
        remarks.add(places.of(first), base::say("the staff has {} voices", voices.size()),
                    base::say("voice {} is read as the tune", plainText(tune.voice)));
    return tune;
}

} // namespace files::musicxml
