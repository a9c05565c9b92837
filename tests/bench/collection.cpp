// Every tune of a folder of tunebooks at three harps and three levels: how many are arranged,
// how many with snags and which ways were taken, flips, keys moved, bars in which the left hand
// is silent for a flip, rules broken. A measurement for the whole collection; the tests look at
// samples of it.
//
//   sallow_collection FOLDER... [every N] [print N] [harp ID] [level N] [drone]
//
// every: each N-th tune alone; print: N snags spread over the collection, with what was taken;
// harp and level: that one alone. A tune without chords gets those that are found from its
// notes, or with drone the drone of its key. A tune whose arrangement breaks a rule is named.

#include "core/arrange/view.h"
#include "core/files/tables/tables.h"
#include "core/harmony/findchords.h"
#include "core/proposal/proposal.h"
#include "core/proposal/rules.h"
#include "tests/bench/orquit.h"
#include "tests/bench/tunebooks.h"
#include "tests/places.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <map>

namespace {

namespace fs = std::filesystem;

struct Tally {
    int arranged = 0;
    int refused = 0;
    int moved = 0; // to another key or octave
    int flips = 0;
    int snagged = 0; // tunes
    int silenced = 0; // chords at which the left hand rests while it flips
    int broken = 0;
    std::map<std::string, int> ways; // of written notes and chords
};

// Chords for which the left hand rests while it flips a lever; in a pick-up it is free anyway.
int silencedBy(proposal::Proposal const& proposal)
{
    arrange::Arrangement const& a = proposal.arrangement;
    music::Length const longest = arrange::longestNote(a.playing);
    int silenced = 0;
    for (arrange::ArrangedPosition const& p : a.positions) {
        if (!p.voicing.notes.empty() ||
            arrange::viewOf(proposal::sceneOf(proposal), p.position, longest).upbeat)
            continue;
        for (arrange::Occurrence const& when : p.position.played)
            if (std::ranges::any_of(a.levers.flips, [&](harp::Flip const& flip) {
                    return flip.hand == harp::Side::Left && flip.freeFrom <= when.at &&
                           when.at < flip.freeTo;
                })) {
                ++silenced;
                break;
            }
    }
    return silenced;
}

void count(proposal::Proposal const& proposal, Tally& tally)
{
    ++tally.arranged;
    tally.moved += proposal.moved.semitones != 0 ? 1 : 0;
    tally.flips += static_cast<int>(proposal.arrangement.levers.flips.size());
    tally.snagged += proposal.snags.empty() ? 0 : 1;
    tally.silenced += silencedBy(proposal);
    for (proposal::Snag const& snag : proposal.snags)
        ++tally.ways[std::string(snag.hand == harp::Side::Left ? "left hand " : "") +
                     std::string(tune::wayId(snag.way))];
    for (std::string const& sentence :
         proposal::brokenRules(proposal.arrangement, proposal.brief.book)) {
        ++tally.broken;
        std::cerr << "tune " << proposal.brief.tune.number << " \""
                  << proposal.brief.tune.title << "\": " << sentence << '\n';
    }
}

// The bar of a snag as note names, the note in question in brackets.
std::string barInWords(proposal::Proposal const& proposal, proposal::Snag const& snag)
{
    tune::Tune const was =
        tune::transposed(proposal.brief.tune, proposal.moved);
    std::string out;
    tune::BarIndex const last = was.bars.beyond() - 1;
    for (tune::BarIndex b = std::max(tune::BarIndex(0), snag.place.bar - 1);
         b <= std::min(last, snag.place.bar + 1); ++b) {
        tune::Bar const& bar = was.bars[b];
        out += " |";
        for (tune::NoteIndex const n : bar.notes.indices()) {
            for (tune::ChordMark const& mark : bar.chords)
                if (mark.at == bar.notes[n].at) out += " '" + mark.written + "'";
            bool const here = b == snag.place.bar && n == snag.place.note;
            out += here ? " [" : " ";
            for (music::Pitch const& pitch : bar.notes[n].pitches) out += music::plain(pitch);
            if (bar.notes[n].pitches.empty()) out += 'z';
            out += ':' + music::text(bar.notes[n].length.wholes);
            if (here) out += ']';
        }
    }
    return out;
}

void print(proposal::Proposal const& proposal, proposal::Snag const& snag)
{
    std::cout << proposal.brief.harp.id() << " level " << proposal.brief.level.number << ", "
              << proposal.brief.tune.title << ", " << music::plain(proposal.arrangement.tune.key)
              << ", " << music::text(proposal.arrangement.tune.meter) << ", "
              << proposal::snagLine(
                     snag, tune::barName(proposal.arrangement.tune, snag.place.bar))
              << " (" << snag.what << ")\n   ";
    for (proposal::SnagWay const& way : snag.ways)
        std::cout << ' ' << tune::wayId(way.way) << ' ' << way.cost;
    std::cout << "\n   " << barInWords(proposal, snag) << '\n';
}

} // namespace

int main(int argc, char** argv)
{
    files::Tables const tables = orQuit(files::readTables(places::shared()));
    std::size_t every = 1;
    int wanted = 0;
    std::vector<std::string> harps{"lap26", "floor34", "floor38"};
    std::vector<int> levels{1, 3, 5};
    std::vector<tune::Tune> tunes;
    int unread = 0;
    bool drone = false;
    for (int word = 1; word < argc; ++word) {
        std::string_view const text = argv[word];
        if ((text == "every" || text == "print") && word + 1 < argc) {
            int const number = std::max(1, std::atoi(argv[++word]));
            if (text == "every")
                every = static_cast<std::size_t>(number);
            else
                wanted = number;
            continue;
        }
        if (text == "drone") {
            drone = true;
            continue;
        }
        if ((text == "harp" || text == "level") && word + 1 < argc) {
            ++word;
            if (text == "harp")
                harps = {argv[word]};
            else
                levels = {std::atoi(argv[word])};
            continue;
        }
        auto more = tunesIn(argv[word], unread);
        std::move(more.begin(), more.end(), std::back_inserter(tunes));
    }
    std::cout << tunes.size() << " tunes, " << unread << " without notes or unread, every "
              << every << " looked at\n";
    if (!drone)
        for (tune::Tune& tune : tunes)
            if (!tune::hasChords(tune))
                tune = harmony::withFoundChords(tables.harmony, std::move(tune));
    int printed = 0;
    int seen = 0;
    for (std::string const& harp : harps)
        for (int const level : levels) {
            Tally tally;
            for (std::size_t i = 0; i < tunes.size(); i += every) {
                proposal::Brief const brief{
                    tunes[i],
                    orQuit(files::harpFrom(tables, harp)),
                    orQuit(files::handFrom(tables, "medium")),
                    orQuit(files::levelFrom(tables, level)),
                    tables.book,
                    tables.styles.front()};
                auto const proposal = proposal::propose(brief);
                if (!proposal) {
                    ++tally.refused;
                    std::cerr << tunes[i].title << ": " << base::sentence(proposal.error())
                              << '\n';
                    continue;
                }
                count(*proposal, tally);
                for (proposal::Snag const& snag : proposal->snags)
                    if (snag.hand == harp::Side::Right && printed < wanted && seen++ % 7 == 0) {
                        print(*proposal, snag);
                        ++printed;
                    }
            }
            std::cout << harp << " level " << level << ": " << tally.arranged << " arranged ("
                      << tally.moved << " moved), " << tally.refused << " refused, "
                      << tally.flips << " flips, " << tally.snagged << " tunes with snags, "
                      << tally.silenced << " chords silent for a flip, " << tally.broken
                      << " rules broken;";
            for (auto const& [way, times] : tally.ways) std::cout << ' ' << way << ' ' << times;
            std::cout << std::endl;
        }
    return EXIT_SUCCESS;
}
