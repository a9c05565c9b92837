#include "core/files/musicxml/measure.h"

#include <algorithm>

namespace files::musicxml {

using music::Length;
using music::Rational;

// Notes in order without gaps and overlaps.
void MeasureReader::layOut(std::vector<Gathered>& notes)
{
    std::stable_sort(notes.begin(), notes.end(), [](Gathered const& a, Gathered const& b) {
        return a.note.at < b.note.at;
    });
    Length const smallest{Rational(1) / (m_divisions * Rational(4))};
    std::vector<Gathered> laid;
    Length at;
    auto const rest = [&](Length to) {
        Gathered gap;
        gap.note.at = at;
        gap.note.length = to - at;
        gap.note.hidden = true;
        gap.note.place = m_bar.place;
        laid.push_back(std::move(gap));
        at = to;
    };
    for (Gathered& one : notes) {
        tune::Note& note = one.note;
        Length const end = note.at + note.length;
        if (note.at < at + smallest && at < note.at + smallest) {
            note.at = at; // rounded by the file
        } else if (note.at < at) {
            m_remarks.addOnce(note.place, base::said("notes of one voice overlap"),
                              base::said("the later ones are cut or left out"));
            if (end <= at) continue;
            note.at = at;
            note.length = end - at;
        } else if (note.at > at) {
            rest(note.at);
        }
        at = note.at + note.length;
        laid.push_back(std::move(one));
    }
    if (at + smallest <= m_end) rest(m_end);
    if (laid.empty()) {
        rest(music::barLength(m_bar.meter));
        laid.back().note.hidden = false;
    }
    m_bar.length = at;
    notes = std::move(laid);
}

// The notes that stand in one tuplet: as the file marks them, else until they fill what the
// smallest of them fills as often as the ratio asks.
void MeasureReader::groupTuplets(std::vector<Gathered> const& notes)
{
    struct Open {
        tune::NoteIndex first = 0;
        int actual = 3;
        int normal = 2;
        Length sum;
        Length smallest{Rational(4)};
        bool marked = false;
    };
    std::optional<Open> open;
    auto const close = [&](tune::NoteIndex last) {
        if (open && last >= open->first)
            m_bar.tuplets.push_back({open->first, last, open->actual, open->normal});
        open.reset();
    };
    constexpr int largest = 64;
    for (std::size_t n = 0; n < notes.size(); ++n) {
        Gathered const& one = notes[n];
        tune::NoteIndex const i(static_cast<int>(n)); // the bar has a note for each
        bool const inTuplet = one.actual != one.normal && one.actual > 1 &&
                              one.actual <= largest && one.normal > 0 && one.normal <= largest;
        bool const same =
            open && inTuplet && one.actual == open->actual && one.normal == open->normal;
        if (open && (!same || one.tupletStarts)) close(i - 1);
        if (!inTuplet) continue;
        if (!open) open = Open{i, one.actual, one.normal, {}, {Rational(4)}, one.tupletStarts};
        open->sum = open->sum + one.note.length;
        if (one.written > Length{}) open->smallest = std::min(open->smallest, one.written);
        bool const full = open->sum >= open->smallest * Rational(open->normal);
        if (one.tupletStops || (!open->marked && full)) close(i);
    }
    close(tune::NoteIndex(static_cast<int>(notes.size()) - 1));
}

// Chord symbols in order, one or two a place; words at the notes over which they stand.
void MeasureReader::settleMarks()
{
    auto& chords = m_bar.chords;
    for (tune::ChordMark& mark : chords) mark.at = std::min(mark.at, m_bar.length);
    std::stable_sort(chords.begin(), chords.end(),
                     [](auto const& a, auto const& b) { return a.at < b.at; });
    std::vector<tune::ChordMark> kept;
    for (tune::ChordMark& mark : chords) {
        bool const stacked = !kept.empty() && kept.back().at == mark.at;
        if (stacked && kept.back().chord == mark.chord && mark.pass != 2) continue;
        if (stacked && (mark.pass != 2 || kept.back().pass)) {
            m_remarks.addOnce(m_bar.place, base::said("there are two chord symbols in one place"),
                              base::said("only the first is used"));
            continue;
        }
        if (stacked) kept.back().pass = 1;
        kept.push_back(std::move(mark));
    }
    chords = std::move(kept);
    for (tune::Annotation& words : m_bar.annotations) {
        if (words.at >= m_bar.length) {
            words.at = m_bar.length;
            continue;
        }
        auto const after =
            std::find_if(m_bar.notes.rbegin(), m_bar.notes.rend(),
                         [&words](tune::Note const& note) { return note.at <= words.at; });
        words.at = after == m_bar.notes.rend() ? Length{} : after->at;
    }
    std::stable_sort(m_bar.annotations.begin(), m_bar.annotations.end(),
                     [](auto const& a, auto const& b) { return a.at < b.at; });
}

} // namespace files::musicxml
