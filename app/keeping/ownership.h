#pragma once

#include <QString>

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>

class QLockFile;

namespace app {

// One window's hold on a saved file: two windows that save under one name would each undo what
// the other did. The mark lies in the user's folder, so folders that cannot be written to need
// none.
class Ownership {
public:
    Ownership();
    Ownership(Ownership const&) = delete;
    Ownership& operator=(Ownership const&) = delete;
    ~Ownership();

    // Holds this file and lets go of the one before. False: another window holds it. A mark that
    // cannot be made, on a full disk, does not stand in the way.
    bool take(std::filesystem::path const& folder, QString const& file);
    void letGo();

private:
    std::unique_ptr<QLockFile> m_mark;
    QString m_file;
};

// How a file stood on the disk: its bytes, as far as a number can tell. None: it is not there or
// cannot be read.
std::optional<std::uint64_t> stampOf(QString const& file);

} // namespace app
