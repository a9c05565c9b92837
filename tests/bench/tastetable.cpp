// What the shipped taste proposes for many folk tunes, as a table, and the plans of some of
// them to read: sallow_taste [level] [every how manieth tune] [plans to print] [style] [varied]
// [hand]; and what a teacher would mark in them.

#include "core/files/tables/tables.h"
#include "tests/bench/orquit.h"
#include "tests/places.h"
#include "tests/proposal/faults.h"
#include "tests/proposal/nottingham.h"
#include "tests/proposal/tasting.h"

#include <cstdlib>
#include <iostream>
#include <string>
#include <vector>

namespace {

} // namespace

int main(int argc, char** argv)
{
    std::vector<std::string> const words(argv + 1, argv + argc);
    auto const word = [&](std::size_t i, char const* usual) {
        return i < words.size() ? words[i] : std::string(usual);
    };
    auto const tables = orQuit(files::readTables(places::shared()));
    auto const tunes = nottingham::tunesWithChords();
    if (!tunes) {
        std::cerr << "the folk tunes are absent: nothing to taste\n";
        return EXIT_FAILURE;
    }
    proposal::Brief brief{{},
                          orQuit(files::harpFrom(tables, "floor34", "Eb")),
                          orQuit(files::handFrom(tables, word(5, "medium"))),
                          orQuit(files::levelFrom(tables, std::stoi(word(0, "3")))),
                          tables.book,
                          orQuit(files::styleFrom(tables, word(3, "plain")))};
    if (word(4, "") == "varied") brief.passes = proposal::Passes::Varied;
    auto const step = static_cast<std::size_t>(std::stoi(word(1, "6")));
    int plans = std::stoi(word(2, "0"));
    tasting::Tasting tasting;
    faults::Report report;
    for (std::size_t i = 0; i < tunes->size(); i += step) {
        brief.tune = (*tunes)[i].tune;
        auto const proposal = proposal::propose(brief);
        if (!proposal) {
            ++tasting.refused;
            continue;
        }
        tasting::add(tasting, *proposal);
        faults::add(report, *proposal);
        if (plans-- > 0) tasting::printPlan(std::cout, (*tunes)[i].name, *proposal);
    }
    tasting::print(std::cout, tasting);
    faults::print(std::cout, report);
    return EXIT_SUCCESS;
}
