#include "core/files/work/tuneindex.h"

#include "core/base/words.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>

namespace files {

namespace {

using base::Fault;
using base::FaultCode;
using collection::FileEntry;
using collection::FirstNote;
using collection::TuneEntry;

constexpr std::string_view indexForm = "sallow tunes 1";

// Fields of a line stand between tabs.
void addField(std::string& line, std::string_view text)
{
    for (char const c : text) {
        if (c == '\\')
            line += "\\\\";
        else if (c == '\t')
            line += "\\t";
        else if (c == '\n')
            line += "\\n";
        else
            line += c;
    }
    line += '\t';
}
void addField(std::string& line, std::integral auto number)
{
    line += std::to_string(number);
    line += '\t';
}

std::string unescaped(std::string_view text)
{
    std::string out;
    out.reserve(text.size());
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] != '\\' || i + 1 == text.size()) {
            out += text[i];
            continue;
        }
        char const c = text[++i];
        out += c == 't' ? '\t' : c == 'n' ? '\n' : c;
    }
    return out;
}

// The fields of one line, one after the other; a line that has other ones is no good.
class Fields {
public:
    explicit Fields(std::string_view line) : m_rest(line) {}

    bool text(std::string& into)
    {
        auto const field = next();
        if (field) into = unescaped(*field);
        return field.has_value();
    }
    template<std::integral Number>
    bool number(Number& into)
    {
        auto const field = next();
        if (!field) return false;
        auto const [stop, error] =
            std::from_chars(field->data(), field->data() + field->size(), into);
        return error == std::errc{} && stop == field->data() + field->size();
    }
    bool yes(bool& into)
    {
        int value = 0;
        bool const good = number(value) && (value == 0 || value == 1);
        into = value == 1;
        return good;
    }
    bool over() const { return m_rest.empty(); }

private:
    std::optional<std::string_view> next()
    {
        std::size_t const end = m_rest.find('\t');
        if (end == std::string_view::npos) return std::nullopt;
        std::string_view const field = m_rest.substr(0, end);
        m_rest.remove_prefix(end + 1);
        return field;
    }

    std::string_view m_rest;
};

std::string openingText(std::vector<FirstNote> const& opening)
{
    std::string out;
    for (FirstNote const& note : opening) {
        if (!out.empty()) out += ' ';
        out += std::to_string(note.step) + '/' + std::to_string(note.midi);
    }
    return out;
}

bool readOpening(std::string_view text, std::vector<FirstNote>& into)
{
    char const* at = text.data();
    char const* const end = at + text.size();
    while (at != end) {
        FirstNote note;
        auto const step = std::from_chars(at, end, note.step);
        if (step.ec != std::errc{} || step.ptr == end || *step.ptr != '/') return false;
        auto const midi = std::from_chars(step.ptr + 1, end, note.midi);
        if (midi.ec != std::errc{}) return false;
        into.push_back(note);
        at = midi.ptr;
        if (at != end && *at != ' ') return false;
        if (at != end) ++at;
    }
    return into.size() <= collection::openingLength;
}

void addTune(std::string& out, TuneEntry const& tune)
{
    out += "T\t";
    addField(out, tune.number);
    addField(out, tune.title);
    addField(out, tune.otherTitles);
    addField(out, tune.kind);
    addField(out, static_cast<int>(tune.likelyKind));
    addField(out, static_cast<int>(tune.key.tonic.letter));
    addField(out, tune.key.tonic.alter);
    addField(out, static_cast<int>(tune.key.mode));
    addField(out, tune.meter.beats);
    addField(out, tune.meter.unit);
    addField(out, tune.meter.common ? 1 : 0);
    addField(out, tune.bars);
    addField(out, tune.chords ? 1 : 0);
    addField(out, tune.pickUp);
    addField(out, openingText(tune.opening));
    addField(out, tune.unreadable);
    out += '\n';
}

bool readTune(Fields fields, TuneEntry& tune)
{
    int kind = 0;
    int letter = 0;
    int mode = 0;
    std::string opening;
    bool const all = fields.number(tune.number) && fields.text(tune.title) &&
                     fields.text(tune.otherTitles) && fields.text(tune.kind) &&
                     fields.number(kind) && fields.number(letter) &&
                     fields.number(tune.key.tonic.alter) && fields.number(mode) &&
                     fields.number(tune.meter.beats) && fields.number(tune.meter.unit) &&
                     fields.yes(tune.meter.common) && fields.number(tune.bars) &&
                     fields.yes(tune.chords) && fields.number(tune.pickUp) &&
                     fields.text(opening) && fields.text(tune.unreadable) && fields.over();
    bool const known = kind >= 0 && kind < static_cast<int>(tune::allKinds.size()) &&
                       letter >= 0 && letter < static_cast<int>(music::allLetters.size()) &&
                       mode >= 0 && mode < static_cast<int>(music::allModes.size()) &&
                       std::abs(tune.key.tonic.alter) <= 2;
    if (!all || !known || !readOpening(opening, tune.opening)) return false;
    tune.likelyKind = static_cast<tune::Kind>(kind);
    tune.key.tonic.letter = static_cast<music::Letter>(letter);
    tune.key.mode = static_cast<music::Mode>(mode);
    return true;
}

bool readFile(Fields fields, FileEntry& file)
{
    return fields.text(file.path) && fields.number(file.time) && fields.number(file.size) &&
           fields.yes(file.arrangement) && fields.yes(file.passedOver) &&
           fields.text(file.unreadable) && fields.over();
}

} // namespace

std::string tuneIndexText(std::vector<FileEntry> const& files)
{
    std::string out(indexForm);
    out += '\n';
    std::size_t lines = 0;
    for (FileEntry const& file : files) {
        out += "F\t";
        addField(out, file.path);
        addField(out, file.time);
        addField(out, file.size);
        addField(out, file.arrangement ? 1 : 0);
        addField(out, file.passedOver ? 1 : 0);
        addField(out, file.unreadable);
        out += '\n';
        for (TuneEntry const& tune : file.tunes) addTune(out, tune);
        lines += 1 + file.tunes.size();
    }
    return out + "end " + std::to_string(lines) + '\n';
}

base::Result<std::vector<FileEntry>> readTuneIndex(std::string_view text,
                                                   std::string const& file)
{
    std::vector<FileEntry> files;
    std::size_t lines = 0; // behind the first
    auto const malformed = [&] {
        return Fault{FaultCode::Malformed, base::say("{}, line {}", file, lines + 1),
                     base::said("it is not as it was written")};
    };
    std::string_view rest = text;
    auto const next = [&rest]() -> std::optional<std::string_view> {
        std::size_t const end = rest.find('\n');
        if (end == std::string_view::npos) return std::nullopt;
        std::string_view const line = rest.substr(0, end);
        rest.remove_prefix(end + 1);
        return line;
    };
    auto const first = next();
    if (first != indexForm) return malformed();
    while (auto const line = next()) {
        if (line->starts_with("end ")) {
            bool const whole = *line == "end " + std::to_string(lines) && rest.empty();
            return whole ? base::Result(std::move(files)) : malformed();
        }
        ++lines;
        if (line->starts_with("F\t")) {
            if (!readFile(Fields(line->substr(2)), files.emplace_back())) return malformed();
        } else if (line->starts_with("T\t") && !files.empty()) {
            if (!readTune(Fields(line->substr(2)), files.back().tunes.emplace_back()))
                return malformed();
        } else {
            return malformed();
        }
    }
    return malformed(); // cut off
}

} // namespace files
