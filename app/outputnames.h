#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace app {

// The names of the files that one call reads and writes, so that no output replaces an input or
// another output, by whatever name it is reached: links are followed.
class OutputNames {
public:
    // A file that is read: no output may take its name. An empty name and "-" are passed over.
    void keep(std::filesystem::path const& input);

    // The name under which an output goes: its own, or where another output of the call has that,
    // the next with a number before the ending, which is said on stderr. Fault: BadCall where it
    // would replace an input.
    base::Result<std::string> claim(std::string const& output);

    // Fault, BadCall: the output would replace an input.
    base::Result<base::Done> spares(std::string const& output) const;

private:
    // One file: where it is, as device and number of its entry, or while it is not there yet, its
    // whole path.
    struct File {
        std::string path;
        std::optional<std::pair<std::uintmax_t, std::uintmax_t>> entry;
        friend bool operator==(File const& a, File const& b)
        {
            return a.path == b.path || (a.entry && a.entry == b.entry);
        }
    };
    static File fileAt(std::filesystem::path const& path);

    std::vector<File> m_inputs;
    std::set<std::string> m_paths;                                     // of outputs
    std::set<std::pair<std::uintmax_t, std::uintmax_t>> m_entries;      // of outputs
};

} // namespace app
