#include "core/files/check.h"

#include "core/base/words.h"
#include "core/files/json.h"

#include <cmath>

namespace files {

namespace {


struct Entry {
    std::vector<music::Pitch> pitches;
    music::Length length;
};

struct Written {
    std::vector<Entry> entries;
    Json chords = Json::array();
};

// The chords of the bar that stand before the place, as [index, text]: the index of the entry
// at or after which each stands.
class ChordList {
public:
    explicit ChordList(tune::Bar const& bar) : m_marks(bar.chords) {}

    void takeBefore(music::Length end, std::size_t entry, Json& chords)
    {
        for (; m_next < m_marks.size() && m_marks[m_next].at < end; ++m_next)
            chords.push_back({entry, m_marks[m_next].written});
    }
    void takeRest(std::size_t entry, Json& chords)
    {
        for (; m_next < m_marks.size(); ++m_next)
            chords.push_back({entry, m_marks[m_next].written});
    }

private:
    std::vector<tune::ChordMark> const& m_marks;
    std::size_t m_next = 0;
};

Written written(tune::Tune const& tune)
{
    Written out;
    bool tied = false;
    for (tune::Bar const& bar : tune.bars) {
        ChordList chords(bar);
        for (tune::Note const& note : bar.notes) {
            if (tied && out.entries.back().pitches == note.pitches)
                out.entries.back().length = out.entries.back().length + note.length;
            else
                out.entries.push_back({note.pitches, note.length});
            tied = note.tied;
            chords.takeBefore(note.at + note.length, out.entries.size() - 1, out.chords);
        }
        chords.takeRest(out.entries.size() - 1, out.chords);
    }
    return out;
}

Json pitchJson(std::vector<music::Pitch> const& pitches)
{
    if (pitches.empty()) return -1;
    if (pitches.size() == 1) return midi(pitches[0]);
    Json list = Json::array();
    for (music::Pitch const& pitch : pitches) list.push_back(midi(pitch));
    return list;
}

Json notesJson(std::vector<Entry> const& entries)
{
    Json list = Json::array();
    for (Entry const& entry : entries)
        list.push_back({pitchJson(entry.pitches), entry.length.wholes.numerator(),
                        entry.length.wholes.denominator()});
    return list;
}

Json saidJson(std::vector<tune::Remark> const& said)
{
    Json list = Json::array();
    for (tune::Remark const& remark : said) {
        std::string place =
            remark.place.line > 0 ? base::say("line {}", remark.place.line) : "";
        if (remark.place.column > 0)
            place += base::said("line|, column ") + std::to_string(remark.place.column);
        list.push_back({{"place", place}, {"what", remark.what}, {"did", remark.did}});
    }
    return list;
}

// Rounded to thousandths: more is not meant.
double thousandths(double probability) { return std::round(probability * 1000) / 1000; }

Json foundJson(std::optional<harmony::FoundKey> const& found)
{
    if (!found) return nullptr;
    Json others = Json::array();
    for (harmony::LikelyKey const& other : found->likely)
        others.push_back({{"key", plain(other.key.tonic)},
                          {"mode", modeName(other.key.mode)},
                          {"confidence", thousandths(other.probability)}});
    harmony::LikelyKey const& best = found->likely.front();
    return {{"key", plain(best.key.tonic)},
            {"mode", modeName(best.key.mode)},
            {"confidence", thousandths(best.probability)},
            {"tones", found->tones},
            {"reason", found->reason},
            {"likely", std::move(others)}};
}

} // namespace

std::string checkLine(tune::Tune const& tune, std::optional<harmony::FoundKey> const& found)
{
    Written read = written(tune);
    Json const line{
        {"tune", tune.number},
        {"title", tune.title},
        {"key", plain(tune.key.tonic)},
        {"mode", modeName(tune.key.mode)},
        {"meter", text(tune.meter)},
        {"tempo_qpm", quartersPerMinute(tempoOf(tune))},
        {"bars", tune.bars.empty() ? 0 : tune.bars.back().number},
        {"notes", notesJson(read.entries)},
        {"chords", std::move(read.chords)},
        {"found", foundJson(found)},
        {"said", saidJson(tune.said)},
    };
    // Titles are UTF-8 by then; a stray byte would be replaced rather than thrown over.
    return line.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace files
