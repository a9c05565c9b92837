#pragma once

#include <filesystem>
#include <optional>
#include <string>

// Outside programs that the tests of exchange files ask: xmllint, and node with the packages
// pinned in packaging/package-lock.json.
namespace outside {

// A file of these bytes that is gone with its owner.
class TemporaryFile {
public:
    TemporaryFile(std::string const& bytes, std::string const& ending);
    TemporaryFile(TemporaryFile const&) = delete;
    TemporaryFile& operator=(TemporaryFile const&) = delete;
    ~TemporaryFile();
    std::string path() const { return m_path.string(); }

private:
    std::filesystem::path m_path;
};

// What a command prints (both streams), and how it ended.
struct Answer {
    int status = 0;
    std::string text;
};
Answer run(std::string const& command);

bool hasProgram(std::string const& name);

// Whether the file is valid against a schema of shared/data/musicxml-4.0; none where xmllint or
// the schema is absent, which is said once.
std::optional<Answer> validated(std::string const& path, std::string const& schema);

} // namespace outside
