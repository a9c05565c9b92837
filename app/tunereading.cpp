#include "app/tunereading.h"

#include "app/input.h"
#include "core/files/abc/headings.h"

#include <algorithm>
#include <filesystem>
#include <map>
#include <optional>

namespace app {

namespace fs = std::filesystem;

namespace {

using collection::FileEntry;
using collection::TuneEntry;

bool hasEnding(std::string const& file, std::string_view ending)
{
    return file.ends_with(ending);
}

// Texts and data of other kinds have these endings as well.
bool mayBeOther(std::string const& file, base::FaultCode code)
{
    using enum base::FaultCode;
    bool const other =
        code == NoTune || code == NoScore || code == FileEmpty || code == FileBinary;
    return other && (hasEnding(file, ".txt") || hasEnding(file, ".xml"));
}

// What the head of a tune says, where its notes cannot be read.
TuneEntry ofHeadAlone(files::AbcEntry const& entry, files::TuneHeading const& heading,
                      std::string why)
{
    TuneEntry out;
    out.number = entry.number;
    out.title = entry.title;
    out.kind = heading.kind;
    if (auto const key = music::keyFrom(heading.key)) out.key = *key;
    out.unreadable = std::move(why);
    return out;
}

std::vector<TuneEntry> entriesOf(Book const& book)
{
    std::vector<TuneEntry> out;
    if (book.saved) {
        out.push_back(collection::entryOf(book.saved->tune));
        out.front().number = book.entries.front().number;
        return out;
    }
    auto const headings = files::tuneHeadings(book.text, book.entries);
    for (std::size_t i = 0; i < book.entries.size(); ++i) {
        auto const tune = readTune(book, book.entries[i]);
        if (!tune) {
            out.push_back(
                ofHeadAlone(book.entries[i], headings[i], base::sentence(tune.error())));
            continue;
        }
        out.push_back(collection::entryOf(*tune));
        out.back().number = book.entries[i].number;
        out.back().title = book.entries[i].title;
    }
    return out;
}

// A file that was found, as the system tells of it.
FileEntry stampOfFile(fs::directory_entry const& found)
{
    std::error_code failed;
    FileEntry file;
    file.path = found.path().string();
    auto const time = found.last_write_time(failed);
    if (!failed) file.time = static_cast<std::int64_t>(time.time_since_epoch().count());
    auto const size = found.file_size(failed);
    if (!failed) file.size = static_cast<std::uint64_t>(size);
    file.arrangement = hasEnding(file.path, ".sallow");
    return file;
}

FileEntry readNow(FileEntry file, files::Tables const& tables)
{
    auto const book = openBook(file.path, tables);
    if (book)
        file.tunes = entriesOf(*book);
    else if (mayBeOther(file.path, book.error().code))
        file.passedOver = true;
    else
        file.unreadable = base::sentence(book.error());
    return file;
}

std::string couldNotLook(fs::path const& folder, std::error_code why)
{
    return folder.string() + ": this folder cannot be looked into (" + why.message() +
           "); look whether you may read it";
}

// The files of a folder and of those below it, each as it is on the disk now.
void walk(fs::path const& folder, std::vector<FileEntry>& into,
          std::vector<std::string>& troubles)
{
    std::error_code failed;
    fs::directory_iterator at(folder, failed);
    if (failed) return troubles.push_back(couldNotLook(folder, failed));
    for (; at != fs::directory_iterator(); at.increment(failed)) {
        fs::directory_entry const& found = *at;
        if (found.path().filename().string().starts_with('.')) continue;
        std::error_code unknown;
        if (found.is_directory(unknown)) {
            if (!found.is_symlink(unknown)) walk(found.path(), into, troubles);
        } else if (found.is_regular_file(unknown) && canOpen(found.path().string())) {
            into.push_back(stampOfFile(found));
        }
        if (failed) break;
    }
    if (failed) troubles.push_back(couldNotLook(folder, failed));
}

bool liesIn(std::string const& file, std::string const& folder)
{
    return file.starts_with(folder) && (folder.ends_with('/') || file[folder.size()] == '/');
}

} // namespace

collection::FileEntry entryOfBook(std::string const& path, Book const& book)
{
    FileEntry file;
    file.path = path;
    file.arrangement = hasEnding(path, ".sallow");
    file.tunes = entriesOf(book);
    return file;
}

std::vector<std::string> troublesOf(std::vector<FileEntry> const& files)
{
    std::vector<std::string> out;
    for (FileEntry const& file : files) {
        if (!file.unreadable.empty()) out.push_back(file.unreadable);
        for (TuneEntry const& tune : file.tunes)
            if (!tune.unreadable.empty()) out.push_back(tune.unreadable);
    }
    return out;
}

Gathered gathered(std::vector<std::string> const& folders, std::vector<FileEntry> const& known,
                  files::Tables const& tables,
                  std::function<bool(Gathered const&, int done, int all)> const& goesOn)
{
    Gathered out;
    std::vector<FileEntry> there;
    for (std::string const& folder : folders) {
        std::error_code failed;
        if (fs::is_directory(folder, failed)) {
            walk(folder, there, out.troubles);
            continue;
        }
        out.troubles.push_back(
            folder + ": this folder is not there now; connect the disk that has it, or "
                     "take it out of the list");
        std::ranges::copy_if(known, std::back_inserter(out.away),
                             [&](FileEntry const& file) { return liesIn(file.path, folder); });
    }
    // A folder inside another one is walked twice.
    std::ranges::sort(there, {}, &FileEntry::path);
    auto const [twice, end] = std::ranges::unique(there, {}, &FileEntry::path);
    there.erase(twice, end);

    std::map<std::string_view, FileEntry const*> byPath;
    for (FileEntry const& file : known) byPath.emplace(file.path, &file);
    auto const asKnown = [&byPath](FileEntry const& file) -> FileEntry const* {
        auto const was = byPath.find(file.path);
        bool const same = was != byPath.end() && was->second->time == file.time &&
                          was->second->size == file.size;
        return same ? was->second : nullptr;
    };
    int const all = static_cast<int>(std::ranges::count_if(
        there, [&asKnown](FileEntry const& file) { return asKnown(file) == nullptr; }));
    out.files.reserve(there.size());
    for (FileEntry& file : there) {
        if (FileEntry const* const was = asKnown(file)) {
            out.files.push_back(*was);
        } else {
            if (!goesOn(out, out.fresh, all)) {
                out.stopped = true;
                return out;
            }
            out.files.push_back(readNow(std::move(file), tables));
            ++out.fresh;
        }
    }
    out.passedOver = static_cast<int>(std::ranges::count_if(
        out.files, [](FileEntry const& file) { return file.passedOver; }));
    std::ranges::copy(troublesOf(out.files), std::back_inserter(out.troubles));
    return out;
}

} // namespace app
