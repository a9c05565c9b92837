#include "tests/proposal/nottingham.h"

#include "core/files/abc/read.h"
#include "tests/places.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace nottingham {

namespace {

namespace fs = std::filesystem;

std::string contents(fs::path const& path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

void addTunesOf(fs::path const& path, std::vector<NamedTune>& tunes)
{
    std::string const text = contents(path);
    auto const entries = files::abcTunes(text);
    if (!entries) return;
    for (files::AbcEntry const& entry : entries.value()) {
        auto read = files::readAbc(text, entry, path.filename().string());
        if (read && tune::hasChords(*read) && tune::hasNotes(*read))
            tunes.push_back(
                {path.stem().string() + " " + std::to_string(entry.number), *std::move(read)});
    }
}

} // namespace

std::optional<std::vector<NamedTune>> tunesWithChords()
{
    fs::path const folder = fs::path(places::outside()) / "data" / "nottingham-dev";
    if (!fs::is_directory(folder)) return std::nullopt;
    std::vector<fs::path> paths;
    for (fs::directory_entry const& entry : fs::directory_iterator(folder))
        if (entry.path().extension() == ".abc") paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    std::vector<NamedTune> tunes;
    for (fs::path const& path : paths) addTunesOf(path, tunes);
    return tunes;
}

} // namespace nottingham
