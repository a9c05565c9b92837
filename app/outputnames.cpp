#include "app/outputnames.h"

#include "app/outputs.h"
#include "core/base/words.h"

#include <sys/stat.h>

#include <algorithm>
#include <iostream>

namespace app {

namespace fs = std::filesystem;

OutputNames::File OutputNames::fileAt(fs::path const& path)
{
    std::error_code failed;
    fs::path whole = fs::weakly_canonical(path, failed);
    if (failed) whole = fs::absolute(path, failed).lexically_normal();
    File file{whole.string(), {}};
    struct stat found{};
    if (::stat(path.c_str(), &found) == 0 && S_ISREG(found.st_mode))
        file.entry.emplace(found.st_dev, found.st_ino);
    return file;
}

void OutputNames::keep(fs::path const& input)
{
    if (!input.empty() && input != "-") m_inputs.push_back(fileAt(input));
}

base::Result<base::Done> OutputNames::spares(std::string const& output) const
{
    if (std::ranges::find(m_inputs, fileAt(output)) == m_inputs.end()) return base::Done{};
    return base::Fault{
        base::FaultCode::BadCall, output,
        base::said("this would replace a file that is being read: give the output another "
                   "name")};
}

base::Result<std::string> OutputNames::claim(std::string const& output)
{
    std::string name = output;
    for (int number = 2;; ++number) {
        File const file = fileAt(name);
        if (auto const free = spares(name); !free) return free.error();
        bool const taken =
            m_paths.contains(file.path) || (file.entry && m_entries.contains(*file.entry));
        if (!taken) {
            m_paths.insert(file.path);
            if (file.entry) m_entries.insert(*file.entry);
            break;
        }
        name = numbered(output, number);
    }
    if (name != output)
        std::cerr << "sallow: " << base::said("note: ") << output << base::said(" is saved as ")
                  << name << base::said(", because another file of this call has that name\n");
    return name;
}

} // namespace app
