#pragma once

#include "core/files/work/document.h"

#include <filesystem>
#include <string>

namespace keeping {

// A user's folder of its own for one test (SALLOW_USER), taken away afterwards.
class UserFolder {
public:
    UserFolder();
    UserFolder(UserFolder const&) = delete;
    UserFolder& operator=(UserFolder const&) = delete;
    ~UserFolder();
    std::filesystem::path const& path() const { return m_path; }
    std::filesystem::path at(std::string const& name) const { return m_path / name; }
    std::filesystem::path write(std::string const& name, std::string const& text) const;

private:
    std::filesystem::path m_path;
};

files::Tables const& shelf();

// An invented tune in ABC, and its arrangement with a tempo that tells one edit from another.
std::string const& tuneText();
files::SavedWork workOf(double quartersPerMinute);

} // namespace keeping
