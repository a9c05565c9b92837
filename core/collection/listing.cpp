#include "core/collection/listing.h"

#include "core/music/key.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <set>
#include <utility>

namespace collection {

namespace {

// The letters U+00C0 to U+00FF and U+0100 to U+017F (Unicode, Latin-1 Supplement and Latin
// Extended-A) without their accents; two-letter ones by their first, signs as blanks.
constexpr std::string_view latin1 =
    "aaaaaaaceeeeiiiidnooooo ouuuuytsaaaaaaaceeeeiiiidnooooo ouuuuyty";
constexpr std::string_view latinA =
    "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiiiiijjkkklllllllll"
    "lnnnnnnnnnoooooooorrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs";
static_assert(latin1.size() == 64 && latinA.size() == 128);

bool hasWord(std::string_view text, std::string_view word)
{
    if (word.size() > 1) return text.find(word) != std::string_view::npos;
    // A letter alone is in nearly every title: it is the beginning of a word.
    for (std::size_t at = text.find(word); at != std::string_view::npos;
         at = text.find(word, at + 1))
        if (at == 0 || text[at - 1] == ' ') return true;
    return false;
}

std::vector<std::string> wordsOf(std::string const& text)
{
    std::vector<std::string> out;
    for (std::size_t at = 0; at < text.size();) {
        std::size_t const end = std::min(text.find(' ', at), text.size());
        if (end > at) out.push_back(text.substr(at, end - at));
        at = end + 1;
    }
    return out;
}

std::string stemOf(std::string const& path)
{
    std::size_t const dot = path.rfind('.');
    return dot == std::string::npos || path.find('/', dot) != std::string::npos
               ? path
               : path.substr(0, dot);
}

std::string fileNameOf(std::string const& path)
{
    std::size_t const slash = path.rfind('/');
    return slash == std::string::npos ? path : path.substr(slash + 1);
}

// The same tune in whatever key: its title, and how its first notes go.
std::string likenessOf(TuneEntry const& tune)
{
    std::string out = folded(tune.title);
    for (FirstNote const& note : tune.opening)
        out += ',' + std::to_string(note.step - tune.opening.front().step);
    return out;
}

std::string searchedIn(Row const& row)
{
    TuneEntry const& tune = row.tune;
    return folded(tune.title + ' ' + tune.otherTitles + ' ' + kindWords(tune) + ' ' +
                  tune.kind + ' ' + music::plain(tune.key) + ' ' + music::shown(tune.key) +
                  ' ' + music::text(tune.meter) + ' ' + fileNameOf(row.name.file));
}

// The arrangements of the files: by the tune they are of, and by their names without ending.
struct Arrangements {
    std::map<std::string, std::string> byLikeness;
    std::set<std::string> stems;

    explicit Arrangements(std::vector<FileEntry> const& files)
    {
        for (FileEntry const& file : files) {
            if (!file.arrangement || file.tunes.empty()) continue;
            byLikeness.emplace(likenessOf(file.tunes.front()), file.path);
            stems.insert(stemOf(file.path));
        }
    }
    std::string of(FileEntry const& file, TuneEntry const& tune, Uses const& uses) const
    {
        auto const made = uses.made.find({file.path, tune.number, tune.title});
        if (made != uses.made.end()) return made->second;
        if (auto const like = byLikeness.find(likenessOf(tune)); like != byLikeness.end())
            return like->second;
        std::string const stem = stemOf(file.path);
        return file.tunes.size() == 1 && stems.contains(stem) ? stem + ".sallow"
                                                              : std::string();
    }
};

bool fits(Row const& row, Wish const& wish, std::vector<std::string> const& words)
{
    if (!wish.kind.empty() && kindWords(row.tune) != wish.kind) return false;
    if (!wish.key.empty() && music::shown(row.tune.key) != wish.key) return false;
    if (!wish.meter.empty() && music::text(row.tune.meter) != wish.meter) return false;
    if (wish.arranged && *wish.arranged != (row.arrangement || !row.arranged.empty()))
        return false;
    return std::ranges::all_of(
        words, [&row](std::string const& word) { return hasWord(row.folded, word); });
}

} // namespace

std::string folded(std::string_view words)
{
    std::string out;
    out.reserve(words.size());
    for (std::size_t i = 0; i < words.size(); ++i) {
        auto const byte = static_cast<unsigned char>(words[i]);
        auto const next = i + 1 < words.size() ? static_cast<unsigned char>(words[i + 1]) : 0U;
        bool const two = byte >= 0xC3 && byte <= 0xC5 && (next & 0xC0U) == 0x80;
        if (!two) {
            out += static_cast<char>(byte < 0x80 ? std::tolower(byte) : byte);
            continue;
        }
        std::size_t const low = next & 0x3FU;
        out += byte == 0xC3 ? latin1[low] : latinA[std::size_t{64} * (byte - 0xC4U) + low];
        ++i;
    }
    return out;
}

std::vector<Row> rowsOf(std::vector<FileEntry> const& files, Uses const& uses)
{
    Arrangements const arrangements(files);
    std::vector<Row> rows;
    std::size_t count = 0;
    for (FileEntry const& file : files) count += file.tunes.size();
    rows.reserve(count);
    for (FileEntry const& file : files)
        for (TuneEntry const& tune : file.tunes) {
            int const place = static_cast<int>(&tune - file.tunes.data());
            Row row{{file.path, tune.number, tune.title},
                    place,
                    tune,
                    file.arrangement,
                    {},
                    {},
                    {}};
            if (!file.arrangement) row.arranged = arrangements.of(file, tune, uses);
            if (auto const at = uses.opened.find(row.name); at != uses.opened.end())
                row.opened = at->second;
            row.folded = searchedIn(row);
            rows.push_back(std::move(row));
        }
    return rows;
}

std::vector<std::size_t> found(std::vector<Row> const& rows, Wish const& wish)
{
    std::vector<std::string> const words = wordsOf(folded(wish.words));
    bool const byNotes = wish.notes && !wish.notes->notes.empty();
    std::vector<std::pair<int, std::size_t>> hits;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (!fits(rows[i], wish, words)) continue;
        std::optional<int> const unlike =
            byNotes ? unlikeness(*wish.notes, rows[i].tune) : std::optional<int>(0);
        if (unlike) hits.emplace_back(*unlike, i);
    }
    if (byNotes) std::ranges::stable_sort(hits, {}, [](auto const& hit) { return hit.first; });
    std::vector<std::size_t> out;
    out.reserve(hits.size());
    for (auto const& [unlike, row] : hits) out.push_back(row);
    return out;
}

} // namespace collection
