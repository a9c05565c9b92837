#include "core/files/abc/read.h"
#include "core/files/abc/write.h"
#include "core/files/midi/write.h"
#include "core/files/musicxml/read.h"
#include "core/files/musicxml/write.h"
#include "core/files/plan.h"
#include "core/files/spoken.h"
#include "core/files/work/document.h"
#include "core/harmony/findchords.h"
#include "core/perform/schedule.h"
#include "core/proposal/relevel.h"
#include "core/proposal/repeats.h"
#include "core/proposal/rules.h"
#include "core/sheet/sheet.h"
#include "tests/fuzz/outside.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

// The whole way from a tune to its page: the bytes choose a tune that is valid ABC, a harp, a hand,
// a level and wishes. It is arranged, no rule is broken, shapes are locked and given back, and
// every kind of output is made and, where we read it, read again.

namespace {

// Choices out of bytes; 0 when they are used up.
class Choices {
public:
    Choices(std::uint8_t const* bytes, std::size_t size) : m_bytes(bytes), m_left(size) {}
    std::size_t of(std::size_t count)
    {
        if (m_left == 0 || count == 0) return 0;
        --m_left;
        return *m_bytes++ % count;
    }
    template<typename List>
    auto const& from(List const& list)
    {
        return list[of(list.size())];
    }
    bool left() const { return m_left > 0; }

private:
    std::uint8_t const* m_bytes;
    std::size_t m_left;
};

struct Meter {
    char const* words;
    int quavers;
};
constexpr std::array meters{Meter{"4/4", 8}, Meter{"6/8", 6},  Meter{"3/4", 6},
                            Meter{"2/4", 4}, Meter{"9/8", 9},  Meter{"2/2", 8},
                            Meter{"5/4", 10}, Meter{"12/8", 12}};
constexpr std::array keys{"G",    "D",    "C",  "F",    "Bb",    "A",    "Em",  "Ador",
                          "Dmix", "Am",   "E",  "Eb",   "Bm",    "Cm",   "F#m", "Gdor",
                          "Amix", "Ephr", "B",  "Ab",   "Flyd",  "F#",   "Gb",  "C#m"};
constexpr std::array chords{"G",   "D",    "C",   "Em",   "Am",   "Bm",   "D7", "A7",   "F",
                            "Bb",  "E7",   "Dm",  "Gm",   "G/B",  "D/F#", "F#m7b5", "Bdim", "Caug",
                            "Asus4", "C#m", "Eb", "Ebmaj7", "N.C.", "A5", "Abm6", "B9"};
constexpr std::array letters{"C,", "D,", "E,", "F,", "G,", "A,", "B,", "C", "D", "E", "F", "G",
                             "A",  "B",  "c",  "d",  "e",  "f",  "g",  "a", "b", "c'", "d'", "e'"};
constexpr std::array signs{"", "", "", "", "", "", "^", "_", "=", "", ""};

std::string noteOf(Choices& choose)
{
    return std::string(choose.from(signs)) + choose.from(letters);
}

// Notes that fill so many quavers.
std::string barOf(Choices& choose, int quavers)
{
    std::string out;
    while (quavers > 0) {
        std::size_t const kind = choose.of(24);
        if (choose.of(3) == 0) out += std::string("\"") + choose.from(chords) + '"';
        if (kind == 0 && quavers >= 2) {
            out += "(3" + noteOf(choose) + noteOf(choose) + noteOf(choose);
            quavers -= 2;
            continue;
        }
        int const length =
            std::min(quavers, std::array{1, 2, 1, 3, 4, 2, 6, 8}[choose.of(8)]);
        std::string const counted = std::to_string(length);
        if (kind == 1)
            out += 'z' + counted;
        else if (kind == 2)
            out += '[' + noteOf(choose) + noteOf(choose) + ']' + counted;
        else if (kind == 3)
            out += '{' + noteOf(choose) + '}' + noteOf(choose) + counted;
        else if (kind == 4)
            out += noteOf(choose) + counted + '-';
        else if (kind == 5 && length > 1)
            out += noteOf(choose) + std::to_string(2 * length - 1) + "/2" + noteOf(choose) + "/2";
        else
            out += noteOf(choose) + counted;
        quavers -= length;
        out += ' ';
    }
    return out;
}

std::string tuneOf(Choices& choose)
{
    Meter const meter = choose.from(meters);
    std::string out = "X:1\nT:Made\nM:" + std::string(meter.words) +
                      "\nL:1/8\nQ:1/4=" + std::to_string(40 + 2 * choose.of(100)) +
                      "\nK:" + choose.from(keys) + '\n';
    if (choose.of(3) == 0) out += barOf(choose, 1) + '|';
    std::size_t const bars = 1 + choose.of(24);
    bool open = false;
    for (std::size_t bar = 0; bar < bars && (bar == 0 || choose.left()); ++bar) {
        std::size_t const sign = choose.of(12);
        if (sign == 0 && !open) {
            out += "|:";
            open = true;
        }
        out += barOf(choose, meter.quavers);
        if (sign == 1)
            out += ":|";
        else if (sign == 2 && open) {
            out += "|1" + barOf(choose, meter.quavers) + ":|2";
            out += barOf(choose, meter.quavers) + "||";
            open = false;
        } else if (sign == 3)
            out += "||[K:" + std::string(choose.from(keys)) + ']';
        else
            out += '|';
        if (sign == 1) open = false;
    }
    return out + (open ? ":|\n" : "|]\n");
}

proposal::Brief briefOf(Choices& choose, tune::Tune tune)
{
    files::Tables const& t = fuzz::tables();
    auto const harp = files::harpFrom(t, choose.from(t.harps).id, choose.from(t.tunings).id,
                                      t.leverFits[choose.of(8) % t.leverFits.size()].id);
    fuzz::demand(static_cast<bool>(harp), "every harp of the tables can be strung");
    proposal::Brief brief{std::move(tune), *harp,  choose.from(t.hands), choose.from(t.levels),
                          t.book,          choose.from(t.styles)};
    switch (choose.of(3)) {
    case 0:
        brief.key = proposal::AsWritten{};
        break;
    case 1:
        brief.key = *music::keyFrom(choose.from(keys));
        break;
    default:
        break;
    }
    brief.passes = choose.of(4) == 0 ? proposal::Passes::Varied : proposal::Passes::Written;
    brief.right = std::array{proposal::RightHand::Bare, proposal::RightHand::Closes,
                             proposal::RightHand::Full}[choose.of(3)];
    brief.take = choose.of(6) == 0 ? 1 : 0;
    if (choose.of(3) == 0)
        brief.sliders = {{choose.from(t.sliders), static_cast<int>(choose.of(201))}};
    return brief;
}

// What was made of the bytes, to be tried again by hand.
std::string told(proposal::Brief const& brief)
{
    return "\nharp " + brief.harp.id() + ", tuning " +
           music::shown(music::Key{brief.harp.tuning()}) + ", hand " + brief.hand.id +
           ", level " + std::to_string(brief.level.number) + ", manner " + brief.weights.style +
           ", repeats " + (brief.passes == proposal::Passes::Varied ? "varied" : "as written") +
           ", right hand " + std::to_string(static_cast<int>(brief.right)) + ", take " +
           std::to_string(brief.take);
}

// A lock that no hand can play over a repeat is kept, and told.
bool toldOfConflict(proposal::Proposal const& proposal)
{
    return !proposal::conflicts(proposal, proposal.solution.best).empty() &&
           std::ranges::any_of(proposal.warnings, [](std::string const& warning) {
               return warning.find("no time to move") != std::string::npos;
           });
}

void checkRules(proposal::Proposal const& proposal, std::string const& abc, char const* when)
{
    if (toldOfConflict(proposal)) return;
    for (std::string const& broken :
         proposal::brokenRules(proposal.arrangement, proposal.brief.book))
        fuzz::demand(false,
                     std::string(when) + ": " + broken + told(proposal.brief) + "\n" + abc);
}

void writeAll(std::string const& abc, proposal::Proposal const& proposal)
{
    arrange::Arrangement const& arrangement = proposal.arrangement;
    files::Tables const& t = fuzz::tables();
    (void)files::planJson(proposal, hands::difficultyOf(arrangement, t.levels,
                                                        proposal.brief.book, t.difficulty));
    (void)files::midiFile(arrangement);
    (void)files::spokenText(arrangement, notation::Kind::Arrangement);
    (void)perform::scheduled(arrangement, {});
    std::string const both = files::abcOfArrangement(arrangement);
    auto const entries = files::abcTunes(both);
    fuzz::demand(entries && files::readAbc(both, entries->front(), "both"),
                 "the arrangement's ABC can be read");
    fuzz::demand(static_cast<bool>(files::readMusicXml(
                     files::musicXml(arrangement, notation::Kind::Arrangement), "both")),
                 "the arrangement's MusicXML can be read");
    std::string const saved = files::documentText({abc, proposal.brief}, t);
    auto const again = files::readDocument(saved, t, "saved");
    fuzz::demand(again && files::documentText(*again, t) == saved, "the work is kept");
    if (fuzz::font() != nullptr) {
        (void)sheet::arrangementSheet(arrangement, *fuzz::font(), {});
        (void)sheet::patternSheet(arrangement, *fuzz::font(), {});
        (void)sheet::leadSheet(arrangement.tune, *fuzz::font(), {});
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size)
{
    Choices choose(bytes, size);
    std::string const abc = tuneOf(choose);
    auto const entries = files::abcTunes(abc);
    fuzz::demand(static_cast<bool>(entries), "a valid tune is found");
    auto tune = files::readAbc(abc, entries->front(), "made");
    fuzz::demand(static_cast<bool>(tune), "a valid tune is read");
    if (!tune::hasChords(*tune) && choose.of(3) != 0)
        *tune = harmony::withFoundChords(fuzz::tables().harmony, *std::move(tune));

    proposal::Brief const brief = briefOf(choose, *std::move(tune));
    auto proposal = proposal::propose(brief);
    // A key that is asked for by name may be one that the harp does not have.
    if (!proposal && std::holds_alternative<music::Key>(brief.key) &&
        proposal.error().code == base::FaultCode::KeyBeyondTuning)
        return 0;
    fuzz::demand(static_cast<bool>(proposal), proposal ? "" : base::sentence(proposal.error()) + told(brief) + "\n" + abc);
    checkRules(*proposal, abc, "as proposed");

    auto const positions = static_cast<std::size_t>(proposal->lattice.positions.size());
    if (positions > 0) {
        arrange::PositionIndex const position(static_cast<int>(choose.of(positions)));
        arrange::CandidateIndex const candidate(static_cast<int>(choose.of(
            static_cast<std::size_t>(proposal->lattice.candidates[position].size()))));
        auto locked = proposal::withChoice(*proposal, position, candidate, true);
        if (locked) {
            checkRules(*locked, abc, "with a shape locked");
            proposal = std::move(locked);
        }
    }
    if (choose.of(4) == 0) {
        auto const other = proposal::atLevel(*proposal, choose.from(fuzz::tables().levels));
        if (other) checkRules(other->proposal, abc, "at another level");
    }
    writeAll(abc, *proposal);
    return 0;
}
