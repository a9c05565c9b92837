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

enum class Take { All, WithChords };

void addTunesOf(fs::path const& path, Take take, std::vector<NamedTune>& tunes)
{
    std::string const text = contents(path);
    auto const entries = files::abcTunes(text);
    if (!entries) return;
    for (files::AbcEntry const& entry : entries.value()) {
        auto read = files::readAbc(text, entry, path.filename().string());
        if (read && tune::hasNotes(*read) && (take == Take::All || tune::hasChords(*read)))
            tunes.push_back(
                {path.stem().string() + " " + std::to_string(entry.number), *std::move(read)});
    }
}

std::optional<std::vector<NamedTune>> tunesOf(char const* folderName, Take take)
{
    fs::path const folder = fs::path(places::outside()) / "data" / folderName;
    if (!fs::is_directory(folder)) return std::nullopt;
    std::vector<fs::path> paths;
    for (fs::directory_entry const& entry : fs::directory_iterator(folder))
        if (entry.path().extension() == ".abc") paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    std::vector<NamedTune> tunes;
    for (fs::path const& path : paths) addTunesOf(path, take, tunes);
    return tunes;
}

} // namespace

std::optional<std::vector<NamedTune>> tunesWithChords()
{
    return tunesOf("nottingham-dev", Take::WithChords);
}

std::optional<std::vector<NamedTune>> everyTune()
{
    auto tunes = tunesOf("nottingham-dev", Take::All);
    auto books = tunesOf("tunebooks-dev", Take::All);
    if (!tunes || !books) return std::nullopt;
    std::ranges::move(*books, std::back_inserter(*tunes));
    return tunes;
}

} // namespace nottingham
