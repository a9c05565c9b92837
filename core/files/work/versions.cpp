#include "core/files/work/versions.h"

#include "core/files/textfile.h"

#include <algorithm>
#include <cctype>
#include <cstdint>
#include <system_error>

namespace files {

namespace fs = std::filesystem;

namespace {

constexpr std::string_view savedEnding = ".saved.sallow";
constexpr std::string_view givenUpEnding = ".unsaved.sallow";

// A colon cannot stand in a file's name everywhere.
std::string fileTime(std::string when)
{
    std::ranges::replace(when, ':', '_');
    return when;
}

std::string timeOf(std::string name)
{
    std::ranges::replace(name, '_', ':');
    return name;
}

// FNV-1a with 64 bits: the folder's name need only be the same every time and seldom that of
// another; which work it is stands in the folder.
std::uint64_t hashOf(std::string_view text)
{
    std::uint64_t hash = 14695981039346656037U;
    for (unsigned char const c : text) hash = (hash ^ c) * 1099511628211U;
    return hash;
}

} // namespace

std::vector<Version> versionsIn(fs::path const& folder)
{
    std::vector<Version> out;
    std::error_code failed;
    for (fs::directory_iterator it(folder, failed), end; !failed && it != end;
         it.increment(failed)) {
        std::string const name = it->path().filename().string();
        for (std::string_view const ending : {savedEnding, givenUpEnding})
            if (name.ends_with(ending))
                out.push_back({it->path(),
                               timeOf(name.substr(0, name.size() - ending.size())),
                               ending == savedEnding});
    }
    std::ranges::sort(out, [](Version const& a, Version const& b) { return a.when > b.when; });
    return out;
}

base::Result<base::Done> keepVersion(fs::path const& folder, std::string when, bool saved,
                                     std::string_view document)
{
    std::vector<Version> const before = versionsIn(folder);
    if (!before.empty()) {
        auto const newest = readTextFile(before.front().file);
        if (newest && *newest == document && (before.front().saved || !saved))
            return base::Done{};
        // A clock that was set back must not put the newest among the old.
        if (when <= before.front().when) when = before.front().when + "+";
    }
    std::error_code failed;
    fs::create_directories(folder, failed);
    std::string const name =
        fileTime(std::move(when)) + std::string(saved ? savedEnding : givenUpEnding);
    // Those of a program that was ended before it came to clear away go first.
    for (std::size_t i = versionsKept; i < before.size(); ++i)
        fs::remove(before[i].file, failed);
    auto written = writeWhole(folder / name, document);
    if (!written) return written;
    std::vector<Version> const now = versionsIn(folder);
    for (std::size_t i = versionsKept; i < now.size(); ++i) fs::remove(now[i].file, failed);
    return written;
}

fs::path versionsFolder(fs::path const& all, std::string_view name)
{
    std::string readable;
    for (unsigned char const c : fs::path(name).stem().string()) {
        if (std::isalnum(c)) readable += static_cast<char>(c);
        if (readable.size() == 24) break;
    }
    constexpr char const* digits = "0123456789abcdef";
    std::string hex;
    for (std::uint64_t hash = hashOf(name), i = 0; i < 16; ++i, hash >>= 4)
        hex += digits[hash & 15];
    return all / (readable + "-" + hex);
}

} // namespace files
