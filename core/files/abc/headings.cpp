#include "core/files/abc/headings.h"

#include "core/files/abc/text.h"

#include <algorithm>

namespace files {

namespace {

std::string fieldOf(std::string_view line)
{
    return textString(trimmed(withoutComment(asUtf8(line.substr(2)))));
}

// "Ador" of "Ador clef=treble"; "D mix" stays whole.
std::string keyOf(std::string_view line)
{
    std::string const text = fieldOf(line);
    std::string out;
    std::size_t at = 0;
    while (at < text.size()) {
        std::size_t const end = std::min(text.find(' ', at), text.size());
        std::string const word = text.substr(at, end - at);
        if (word.find('=') != std::string::npos || word == "treble" || word == "bass") break;
        if (!word.empty()) out += (out.empty() ? "" : " ") + word;
        at = end + 1;
    }
    return out;
}

// Fields up to the first K:, which ends the head of a tune.
void readHead(Lines lines, TuneHeading& into, bool stopsAtTune)
{
    while (auto const raw = lines.next()) {
        std::string_view const line = lineText(*raw, lines.number());
        if (line.size() < 2 || line[1] != ':') continue;
        if (stopsAtTune && line[0] == 'X') return;
        if (line[0] == 'R') into.kind = fieldOf(line);
        if (line[0] == 'M') into.meter = fieldOf(line);
        if (line[0] == 'K') {
            into.key = keyOf(line);
            return;
        }
    }
}

} // namespace

std::vector<TuneHeading> tuneHeadings(std::string_view bytes,
                                      std::vector<AbcEntry> const& entries)
{
    AbcText const text(bytes);
    TuneHeading ofFile;
    if (!entries.empty() && entries.front().from > 0)
        readHead(Lines(text.view().substr(0, entries.front().from)), ofFile, true);
    ofFile.key.clear();
    std::vector<TuneHeading> out;
    out.reserve(entries.size());
    for (AbcEntry const& entry : entries) {
        TuneHeading heading = ofFile;
        readHead(Lines(text.view().substr(entry.from, entry.to - entry.from), entry.line),
                 heading, false);
        out.push_back(std::move(heading));
    }
    return out;
}

int barsCounted(tune::Tune const& tune)
{
    return static_cast<int>(std::ranges::count_if(
        tune.bars, [](tune::Bar const& bar) { return bar.upbeat == music::Length{}; }));
}

TuneGlance glanceAt(std::string_view bytes, AbcEntry const& entry, std::string const& file)
{
    auto tune = readAbc(bytes, entry, file);
    if (!tune) return {std::nullopt, 0, false, base::sentence(tune.error())};
    TuneGlance out;
    out.bars = barsCounted(*tune);
    out.chords = tune::hasChords(*tune);
    out.tune = *std::move(tune);
    return out;
}

} // namespace files
