#include "core/collection/firstnotes.h"

#include "core/music/key.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <span>

namespace collection {

namespace {

// What each difference makes, in steps of likeness (our judgement: what is heard as the same
// beginning sooner comes first).
constexpr int otherKey = 1;
constexpr int withoutPickUp = 1;
constexpr int laterNote = 2;   // for each note of the tune that is passed over
constexpr int earlierNote = 3; // for each note looked for that the tune does not have
constexpr int repeatsDiffer = 2;
constexpr int otherNote = 5;

using Line = std::vector<int>;

// A beginning that the comparison works on, on the stack.
struct Notes {
    std::array<int, openingLength> at{};
    std::size_t count = 0;
    void push(int note)
    {
        if (count < at.size()) at[count++] = note;
    }
    std::span<int const> line() const { return {at.data(), count}; }
};

Notes collapsed(std::span<int const> line)
{
    Notes out;
    for (int const note : line)
        if (out.count == 0 || out.at[out.count - 1] != note) out.push(note);
    return out;
}

// Within the octave, of twelve semitones or seven strings; division by a number that the
// compiler knows is much quicker.
int circled(int difference, int round)
{
    return round == 12 ? ((difference % 12) + 12) % 12 : ((difference % 7) + 7) % 7;
}

bool begins(std::span<int const> wanted, std::span<int const> tune, int round)
{
    if (tune.size() < wanted.size()) return false;
    for (std::size_t i = 1; i < wanted.size(); ++i)
        if (circled(wanted[i] - wanted[0], round) != circled(tune[i] - tune[0], round))
            return false;
    return true;
}

// The same where a note that is repeated counts once; three notes at least.
bool beginsCollapsed(std::span<int const> wanted, std::span<int const> tune, int round)
{
    std::size_t t = 0;
    int compared = 0;
    for (std::size_t w = 0; w < wanted.size();) {
        if (t >= tune.size()) return false;
        if (circled(wanted[w] - wanted[0], round) != circled(tune[t] - tune[0], round))
            return false;
        int const here = wanted[w];
        int const there = tune[t];
        while (w < wanted.size() && wanted[w] == here) ++w;
        while (t < tune.size() && tune[t] == there) ++t;
        ++compared;
    }
    return compared >= 3;
}

// Up from the first note of a line, round the octave.
Notes risen(std::span<int const> line, int round)
{
    Notes out;
    for (int const note : line) out.push(circled(note - line.front(), round));
    return out;
}

// Notes that are others, too many or missing, until what is wanted is used up; both lines from
// a first note that is the same. More than `most` count as most + 1.
int differing(Notes const& wantedNotes, Notes const& tuneNotes, int most)
{
    std::span<int const> const wanted = wantedNotes.line();
    std::span<int const> const tune = tuneNotes.line();
    int const far = most + 1;
    auto const band = static_cast<std::size_t>(most); // further off the diagonal is too far
    std::size_t const width = std::min(tune.size(), wanted.size() + band);
    std::array<int, openingLength + 2> row{};
    std::array<int, openingLength + 2> next{};
    row.fill(far);
    for (std::size_t t = 0; t <= std::min(width, band); ++t) row[t] = static_cast<int>(t);
    for (std::size_t w = 1; w <= wanted.size(); ++w) {
        std::size_t const first = w > band ? w - band : 1;
        std::size_t const last = std::min(width, w + band);
        next[first - 1] = w <= band ? static_cast<int>(w) : far;
        int best = next[first - 1];
        int const note = wanted[w - 1];
        for (std::size_t t = first; t <= last; ++t) {
            int const above = t < w + band ? row[t] : far;
            int const changed = row[t - 1] + (note == tune[t - 1] ? 0 : 1);
            next[t] = std::min(changed, std::min(above, next[t - 1]) + 1);
            best = std::min(best, next[t]);
        }
        if (best > most || first > last) return far;
        std::swap(row, next);
    }
    std::size_t const end = wanted.size();
    int best = far;
    for (std::size_t t = end > band ? end - band : 0; t <= width; ++t)
        best = std::min(best, row[t]);
    return best;
}

// From one place of each on; 0 where they go alike. Other notes only where both are at their
// beginnings: from anywhere on, too much would be alike.
std::optional<int> unlike(std::span<int const> wanted, std::span<int const> tune, int round,
                          bool atBeginning)
{
    if (begins(wanted, tune, round)) return 0;
    if (beginsCollapsed(wanted, tune, round)) return repeatsDiffer;
    int const most = !atBeginning ? 0 : wanted.size() >= 10 ? 2 : wanted.size() >= 6 ? 1 : 0;
    if (most == 0) return std::nullopt;
    tune = tune.first(std::min(tune.size(), wanted.size() + static_cast<std::size_t>(most)));
    Notes const shortWanted = collapsed(wanted);
    Notes const shortTune = collapsed(tune);
    Notes const up = risen(wanted, round);
    int other = differing(up, risen(tune, round), most);
    bool const repeats = shortWanted.count != wanted.size() || shortTune.count != tune.size();
    if (repeats && other > 1)
        other = std::min(other, differing(risen(shortWanted.line(), round),
                                          risen(shortTune.line(), round), most));
    if (other > most) return std::nullopt;
    return otherNote * other;
}

// Of the entry, in the manner of what is looked for.
Notes openingAs(FirstNotes::As as, TuneEntry const& entry)
{
    Notes out;
    int const tonic = music::index(entry.key.tonic.letter);
    for (FirstNote const& note : entry.opening)
        out.push(as == FirstNotes::As::Keys      ? note.midi
                 : as == FirstNotes::As::Letters ? note.step
                                                 : note.step - tonic);
    return out;
}

bool inItsKey(FirstNotes const& wanted, std::size_t from, int tuneNote, int round)
{
    return circled(wanted.notes[from] - tuneNote, round) == 0;
}

} // namespace

std::optional<FirstNotes> firstNotesFrom(std::string_view typed)
{
    FirstNotes letters{FirstNotes::As::Letters, {}};
    FirstNotes degrees{FirstNotes::As::Degrees, {}};
    constexpr std::string_view names = "CDEFGAB";
    for (std::size_t i = 0; i < typed.size(); ++i) {
        char const c = typed[i];
        auto const letter =
            names.find(static_cast<char>(std::toupper(static_cast<unsigned char>(c))));
        if (letter != std::string_view::npos) {
            letters.notes.push_back(static_cast<int>(letter));
            // "Bb" alone between blanks is one note.
            bool const first = i == 0 || typed[i - 1] == ' ';
            bool const flat = first && std::isupper(static_cast<unsigned char>(c)) != 0 &&
                              typed.substr(i + 1).starts_with('b') &&
                              (i + 2 == typed.size() || typed[i + 2] == ' ');
            if (flat) ++i;
        } else if (c >= '1' && c <= '9') {
            degrees.notes.push_back((c - '1') % 7);
        } else if (std::string_view(" ,.;:|-/'^_=#~()[]zZ").find(c) == std::string_view::npos &&
                   static_cast<unsigned char>(c) < 0x80) {
            return std::nullopt; // signs beyond ASCII are sharps, flats and dashes
        }
    }
    FirstNotes& out = letters.notes.empty() ? degrees : letters;
    out.notes.resize(std::min(out.notes.size(), mostFirstNotes));
    return out;
}

FirstNotes firstNotesPlayed(std::vector<int> const& midi)
{
    FirstNotes out{FirstNotes::As::Keys, midi};
    out.notes.resize(std::min(out.notes.size(), mostFirstNotes));
    return out;
}

std::optional<int> unlikeness(FirstNotes const& wanted, TuneEntry const& entry)
{
    std::size_t const count = wanted.notes.size();
    if (count == 0 || entry.opening.empty()) return std::nullopt;
    int const round = wanted.as == FirstNotes::As::Keys ? 12 : 7;
    Notes const opening = openingAs(wanted.as, entry);
    std::span<int const> const all(wanted.notes);
    // A few notes begin any tune somewhere: only more of them may begin later.
    std::size_t const latest = count < 4 ? 0 : count < 6 ? 2 : 6;
    std::size_t const mostMissing = count < 6 ? 0 : 2;
    auto const pickUp = static_cast<std::size_t>(entry.pickUp);
    std::optional<int> least;
    for (std::size_t from = 0; from < opening.count; ++from) {
        if (from > latest && from != pickUp) continue;
        int const late = from == 0        ? 0
                         : from == pickUp ? withoutPickUp
                                          : laterNote * static_cast<int>(from);
        for (std::size_t missing = 0; missing <= (from == 0 ? mostMissing : 0); ++missing) {
            bool const atBeginning = missing == 0 && (from == 0 || from == pickUp);
            auto const off =
                unlike(all.subspan(missing), opening.line().subspan(from), round, atBeginning);
            if (!off) continue;
            bool const same = inItsKey(wanted, missing, opening.at[from], round);
            // One note alone, or two, are looked for as they are.
            if (count < 3 && !same) continue;
            int const sum =
                *off + late + earlierNote * static_cast<int>(missing) + (same ? 0 : otherKey);
            if (!least || sum < *least) least = sum;
        }
    }
    return least;
}

} // namespace collection
