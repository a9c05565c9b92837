#pragma once

#include "core/files/abc/read.h"
#include "core/files/textfile.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <map>
#include <string>
#include <utility>
#include <vector>

// What the programs that learn share: the tunes of a folder, and which of them are one tune.
namespace training {

// Every tune that reads, file by file in order of name: take(file, tune).
template<typename Take>
void eachTune(std::filesystem::path const& folder, Take take)
{
    std::vector<std::filesystem::path> files;
    for (auto const& entry : std::filesystem::directory_iterator(folder))
        if (entry.path().extension() == ".abc") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    for (auto const& file : files) {
        auto const text = files::readTextFile(file);
        if (!text) continue;
        auto const entries = files::abcTunes(*text);
        if (!entries) continue;
        for (files::AbcEntry const& entry : *entries)
            if (auto tune = files::readAbc(*text, entry, file.string()))
                take(file, *std::move(tune));
    }
}

// The first twelve degrees of the melody above a tonic, with or without its pick-up.
inline std::string opening(tune::Tune const& tune, int tonic, bool pickUp)
{
    std::string out;
    int count = 0;
    for (tune::Bar const& bar : tune.bars) {
        if (!pickUp && bar.upbeat.wholes > music::Rational(0)) continue;
        for (tune::Note const& note : bar.notes) {
            if (note.pitches.empty()) continue;
            out += std::to_string(((midi(note.pitches.back()) - tonic) % 12 + 12) % 12) + ' ';
            if (++count == 12) return out;
        }
    }
    return out;
}

using Openings = std::map<std::string, std::size_t>; // to the example that has it

// Variants of a tune begin alike: they are one group.
template<typename Example>
void add(std::vector<Example>& examples, Openings& openings, Example example, int tonic)
{
    std::array const keys{opening(example.tune, tonic, true),
                          opening(example.tune, tonic, false)};
    example.group = std::to_string(examples.size());
    for (auto const& key : keys)
        if (auto const found = openings.find(key); found != openings.end())
            example.group = examples[found->second].group;
    for (auto const& key : keys) openings.emplace(key, examples.size());
    examples.push_back(std::move(example));
}

} // namespace training
