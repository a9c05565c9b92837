#include "core/files/abc/onebar.h"

#include "core/base/words.h"
#include "core/files/abc/read.h"
#include "core/files/abc/voice.h"

#include <algorithm>

namespace files {

namespace {

using base::Fault;
using base::FaultCode;

std::string columnName(int column) { return base::say("column {}", column); }

} // namespace

std::string abcOfBar(tune::Bar const& bar)
{
    AbcVoice voice;
    voice.setKey(bar.key);
    return voice.notes(signsOf(bar), {});
}

base::Result<BarNotes> barFromAbc(std::string_view line, tune::Bar const& bar)
{
    if (std::size_t const bad = line.find_first_of("\n\r%"); bad != std::string_view::npos)
        line = line.substr(0, bad);
    std::string const text = "X:1\nM:" + abcMeterText(bar.meter) +
                             "\nL:1/8\nK:" + music::plain(bar.key) + '\n' + std::string(line) +
                             '\n';
    auto const entries = abcTunes(text);
    if (!entries) return entries.error();
    auto read = readAbc(text, entries->front(), "", Rests::Allowed);
    if (!read) {
        Fault fault = read.error();
        std::size_t const column = fault.place.find(base::said("line|, column "));
        fault.place = fault.code == FaultCode::NoNotes || column == std::string::npos
                          ? columnName(1)
                          : fault.place.substr(column + 2);
        return fault;
    }
    if (read->bars.size() > 1)
        return Fault{FaultCode::BadNote, columnName(read->bars[1].place.column),
                     base::said("a second bar")};
    BarNotes out{read->bars.front().notes, read->bars.front().tuplets, {}};
    for (tune::Note& note : out.notes) note.place = {};
    for (tune::Remark const& remark : read->said)
        if (remark.place.column > 0 && out.said.empty() && remark.did == base::said("left out"))
            out.said = columnName(remark.place.column) + ": " + remark.what;
    return out;
}

} // namespace files
