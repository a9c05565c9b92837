// Every tune of a folder of tunebooks at three harps and three levels: how many are arranged,
// how many refused and why, flips, rules broken. A measurement for the whole collection; the
// tests look at samples of it.
//
//   sallow_collection FOLDER... [mend]      mend: refused tunes take the first remedy

#include "core/files/abc/read.h"
#include "core/files/tables/tables.h"
#include "core/files/textfile.h"
#include "core/proposal/remedies.h"
#include "core/proposal/rules.h"
#include "tests/places.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <map>

namespace {

namespace fs = std::filesystem;

template<typename T>
T orQuit(base::Result<T> result)
{
    if (result) return *std::move(result);
    std::cerr << base::sentence(result.error()) << '\n';
    std::exit(EXIT_FAILURE);
}

// A drone of root and fifth where the tune names no chords.
tune::Tune withChords(tune::Tune tune)
{
    if (tune::hasChords(tune)) return tune;
    for (tune::Bar& bar : tune.bars) {
        std::string const name = music::plain(bar.key.tonic) + "5";
        if (auto const chord = music::chordFrom(name))
            bar.chords.push_back({{}, *chord, name, std::nullopt});
    }
    return tune;
}

std::vector<tune::Tune> tunesIn(fs::path const& folder, int& unread)
{
    std::vector<fs::path> books;
    for (auto const& entry : fs::directory_iterator(folder))
        if (entry.path().extension() == ".abc") books.push_back(entry.path());
    std::sort(books.begin(), books.end());
    std::vector<tune::Tune> tunes;
    for (fs::path const& book : books) {
        auto const text = files::readTextFile(book);
        auto const entries =
            text ? files::abcTunes(*text) : base::Result<std::vector<files::AbcEntry>>(text.error());
        if (!entries) {
            ++unread;
            continue;
        }
        for (files::AbcEntry const& entry : *entries) {
            auto tune = files::readAbc(*text, entry, book.filename().string());
            if (tune && tune::hasNotes(*tune))
                tunes.push_back(withChords(*std::move(tune)));
            else
                ++unread;
        }
    }
    return tunes;
}

struct Tally {
    int arranged = 0;
    int moved = 0; // to another key or octave
    int flips = 0;
    int mended = 0;
    std::map<std::string, int> remedies;
    std::map<std::string, int> refused;
    int broken = 0;
};

void count(proposal::Proposal const& proposal, Tally& tally)
{
    ++tally.arranged;
    tally.moved += proposal.moved.semitones != 0 ? 1 : 0;
    tally.flips += static_cast<int>(proposal.arrangement.levers.flips.size());
    for (std::string const& sentence :
         proposal::brokenRules(proposal.arrangement, proposal.brief.book)) {
        ++tally.broken;
        std::cerr << "tune " << proposal.brief.tune.number << ": " << sentence << '\n';
    }
}

} // namespace

int main(int argc, char** argv)
{
    files::Tables const tables = orQuit(files::readTables(places::shared()));
    bool mend = false;
    std::vector<tune::Tune> tunes;
    int unread = 0;
    for (int word = 1; word < argc; ++word) {
        if (std::string_view(argv[word]) == "mend") {
            mend = true;
            continue;
        }
        auto more = tunesIn(argv[word], unread);
        std::move(more.begin(), more.end(), std::back_inserter(tunes));
    }
    std::cout << tunes.size() << " tunes, " << unread << " without notes or unread\n";
    for (char const* harp : {"lap22", "floor34", "floor38"})
        for (int level : {1, 3, 5}) {
            Tally tally;
            for (tune::Tune const& tune : tunes) {
                proposal::Brief const brief{
                    tune,
                    orQuit(files::harpFrom(tables, harp)),
                    orQuit(files::handFrom(tables, "medium")),
                    orQuit(files::levelFrom(tables, level)),
                    tables.book,
                    tables.styles.front()};
                auto const proposal = proposal::propose(brief);
                if (proposal) {
                    count(*proposal, tally);
                    continue;
                }
                ++tally.refused[std::string(base::wording(proposal.error().code).wrong)];
                if (!mend) continue;
                auto const remedies = proposal::remediesFor(brief, tables.levels);
                for (auto const& remedy : remedies)
                    ++tally.remedies[std::string(proposal::helpId(remedy.help))];
                if (remedies.empty()) continue;
                ++tally.mended;
                count(orQuit(proposal::propose(remedies.front().brief)), tally);
            }
            std::cout << harp << " level " << level << ": " << tally.arranged << " arranged ("
                      << tally.moved << " moved), " << tally.flips << " flips, "
                      << tally.broken << " rules broken";
            for (auto const& [why, times] : tally.refused)
                std::cout << "; " << times << " refused: " << why;
            if (mend) {
                std::cout << "; " << tally.mended << " of these mended; offered:";
                for (auto const& [help, times] : tally.remedies)
                    std::cout << ' ' << help << ' ' << times;
            }
            std::cout << std::endl;
        }
    return EXIT_SUCCESS;
}
