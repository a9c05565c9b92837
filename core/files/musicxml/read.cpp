#include "core/files/musicxml/read.h"

#include "core/base/words.h"
#include "core/files/abc/text.h"
#include "core/files/musicxml/measure.h"
#include "core/files/musicxml/mxl.h"
#include "core/files/musicxml/parts.h"
#include "core/files/musicxml/xmlwords.h"
#include "core/files/tidy.h"

#include <algorithm>
#include <cctype>

namespace files {

namespace {

using base::Fault;
using base::FaultCode;
using base::Result;
using musicxml::Part;
using pugi::xml_node;

constexpr std::size_t longestText = 500; // of a title or remark, bytes
constexpr std::size_t mostTexts = 200;

std::string wholeTextOf(xml_node node)
{
    return plainText(std::string_view(node.text().get()).substr(0, longestText));
}

std::string textOf(xml_node node) { return std::string(trimmed(wholeTextOf(node))); }

// The root of a score; none when the document is something else.
xml_node scoreIn(pugi::xml_document const& document)
{
    if (xml_node const partwise = document.child("score-partwise")) return partwise;
    return document.child("score-timewise");
}

std::string titleOnPage(xml_node score)
{
    for (xml_node credit : score.children("credit"))
        if (textOf(credit.child("credit-type")) == "title")
            return textOf(credit.child("credit-words"));
    return {};
}

void join(std::string& kept, std::string const& text)
{
    if (!text.empty() && kept.size() < longestText) kept += (kept.empty() ? "" : ", ") + text;
}

std::vector<std::string> wordsOf(std::string_view text)
{
    std::vector<std::string> out;
    for (text = trimmed(text); !text.empty(); text = trimmed(text)) {
        std::size_t const end = std::min(text.find(' '), text.size());
        out.emplace_back(text.substr(0, end));
        text.remove_prefix(end);
    }
    return out;
}

void readTitles(xml_node score, tune::Tune& tune)
{
    std::string const work = textOf(score.child("work").child("work-title"));
    std::string const movement = textOf(score.child("movement-title"));
    tune.title = work.empty() ? movement : work;
    if (tune.title.empty()) tune.title = titleOnPage(score);
    if (!work.empty() && !movement.empty() && movement != work)
        tune.otherTitles.push_back(movement);
}

// Fields that our own scores keep what MusicXML has no element for in.
void readFields(xml_node fields, tune::Tune& tune)
{
    for (xml_node field : fields.children("miscellaneous-field")) {
        std::string_view const name = field.attribute("name").value();
        std::string const text = wholeTextOf(field);
        if (trimmed(text).empty()) continue;
        if (name == "other-title" && tune.otherTitles.size() < mostTexts)
            tune.otherTitles.push_back(text);
        if (name == "note" && tune.notes.size() < mostTexts) tune.notes.push_back(text);
        if (name == "words" && tune.words.size() < mostTexts) tune.words.push_back(text);
        if (name == "origin") tune.origin = text;
        if (name == "rhythm") tune.rhythm = text;
        if (name == "order-of-parts") tune.partOrder = wordsOf(text);
    }
}

void readIdentification(xml_node score, tune::Tune& tune)
{
    xml_node const identification = score.child("identification");
    for (xml_node creator : identification.children("creator")) {
        std::string_view const type = creator.attribute("type").as_string("composer");
        if (type == "composer") join(tune.composer, textOf(creator));
        if (type == "arranger") join(tune.arranger, textOf(creator));
        if (type == "lyricist" || type == "poet" || type == "translator")
            tune.notes.push_back(base::say("Words: {}", textOf(creator)));
    }
    if (xml_node const source = identification.child("source"))
        tune.source = wholeTextOf(source);
    for (xml_node rights : identification.children("rights"))
        join(tune.copyright, textOf(rights));
    readFields(identification.child("miscellaneous"), tune);
}

// An order of parts is kept where all its parts are marked.
void settleOrder(tune::Tune& tune)
{
    auto const marked = [&tune](std::string const& name) {
        return std::any_of(tune.bars.begin(), tune.bars.end(),
                           [&name](tune::Bar const& bar) { return bar.part == name; });
    };
    constexpr std::size_t mostParts = 500;
    if (tune.partOrder.size() > mostParts ||
        !std::all_of(tune.partOrder.begin(), tune.partOrder.end(), marked))
        tune.partOrder.clear();
}

bool sameWord(std::string const& a, std::string const& b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char x, char y) {
        return std::tolower(static_cast<unsigned char>(x)) ==
               std::tolower(static_cast<unsigned char>(y));
    });
}

std::string placeName(std::string const& file, tune::Place place)
{
    std::string name = file;
    if (place.line > 0) name += (name.empty() ? "" : ", ") + base::say("line {}", place.line);
    return name;
}

// The text as UTF-8 where its bytes say that it is UTF-16, so that lines can be counted.
std::string inUtf8(std::string_view bytes)
{
    return isUtf16(bytes) ? utf8FromUtf16(bytes) : std::string(bytes);
}

class ScoreReader {
public:
    ScoreReader(std::string const& file, std::string_view text)
        : m_file(file), m_text(text), m_places(text)
    {}

    Result<tune::Tune> read(bool converted)
    {
        pugi::xml_document document;
        auto const parsed =
            document.load_buffer(m_text.data(), m_text.size(), pugi::parse_default,
                                 converted ? pugi::encoding_utf8 : pugi::encoding_auto);
        if (!parsed) {
            auto const at =
                static_cast<std::size_t>(std::max<std::ptrdiff_t>(parsed.offset, 0));
            return Fault{FaultCode::Malformed, placeName(m_file, m_places.ofByte(at)),
                         base::said(xmlWords(parsed.status))};
        }
        xml_node const score = scoreIn(document);
        if (!score) return Fault{FaultCode::NoScore, m_file, rootName(document)};
        return tuneFrom(score);
    }

private:
    static std::string rootName(pugi::xml_document const& document)
    {
        constexpr std::size_t longest = 40;
        std::string_view const name = document.document_element().name();
        return name.empty() ? "" : plainText(name.substr(0, longest));
    }

    Result<tune::Tune> tuneFrom(xml_node score)
    {
        std::vector<Part> const parts = musicxml::partsOf(score);
        auto const voice = tuneVoiceOf(parts, m_places, m_remarks);
        if (!voice) return Fault{FaultCode::NoNotes, placeName(m_file, m_places.of(score)), ""};
        readTitles(score, m_tune);
        readIdentification(score, m_tune);

        musicxml::MeasureReader reader(*voice, m_places, m_remarks);
        Part const& part = parts[voice->part];
        Part const& harmony = parts[voice->harmonyPart];
        Part const& guide = parts[voice->guidePart];
        for (std::size_t i = 0; i < part.measures.size(); ++i) {
            bool const other = voice->harmonyPart != voice->part && i < harmony.measures.size();
            bool const guided = voice->guidePart != voice->part && i < guide.measures.size();
            auto const problem =
                reader.read(part.measures[i], other ? harmony.measures[i].music : xml_node(),
                            guided ? guide.measures[i].music : xml_node());
            if (problem) return fault(*problem, part, i);
        }
        return finished(reader, score);
    }

    Result<tune::Tune> finished(musicxml::MeasureReader& reader, xml_node score)
    {
        m_tune.tempo = reader.tempo;
        for (std::string const& words : reader.tempoWords)
            if (!sameWord(words, m_tune.rhythm) && !reader.bars.empty())
                reader.bars.front().annotations.insert(reader.bars.front().annotations.begin(),
                                                       {{}, words});
        m_tune.bars = tidied(std::move(reader.bars), !reader.metered, m_remarks);
        if (!hasNotes(m_tune))
            return Fault{FaultCode::NoNotes, placeName(m_file, m_places.of(score)),
                         m_tune.title};
        m_tune.key = m_tune.bars.front().key;
        m_tune.meter = m_tune.bars.front().meter;
        settleOrder(m_tune);
        remarkOnJump(m_tune, m_remarks);
        m_remarks.count();
        return std::move(m_tune);
    }

    Fault fault(musicxml::Problem const& problem, Part const& part, std::size_t measure) const
    {
        std::string place = m_file;
        place += (place.empty() ? "" : ", ") + base::say("file|part {}", part.id);
        std::string const& number = part.measures[measure].number;
        place += ", " +
                 base::say("measure {}", number.empty() ? std::to_string(measure + 1) : number);
        if (int const line = m_places.of(problem.at).line; line > 0)
            place += ", " + base::say("line {}", line);
        return {problem.code, place, problem.detail};
    }

    std::string const& m_file;
    std::string_view m_text;
    musicxml::Places m_places;
    tune::Tune m_tune;
    Remarks m_remarks{m_tune.said};
};

} // namespace

Result<tune::Tune> readMusicXml(std::string_view bytes, std::string const& file)
{
    std::string unpacked;
    if (looksZipped(bytes)) {
        auto score = scoreInMxl(bytes, file);
        if (!score) return score.error();
        unpacked = *std::move(score);
        bytes = unpacked;
    }
    if (withoutByteOrderMark(bytes).find_first_not_of(" \t\r\n") == std::string_view::npos)
        return Fault{FaultCode::FileEmpty, file, ""};
    std::string const text = inUtf8(bytes);
    return ScoreReader(file, text).read(isUtf16(bytes));
}

} // namespace files
