#pragma once

#include "core/base/marked.h"
#include "core/base/result.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace files {

// A file that is being written. It takes the wanted name only when it is whole; until then what
// stood there stays, and where the disk's own kind allows (Linux) the draft has no name at all, so
// that nothing is left however the program ends. Elsewhere it has a name that nobody can guess,
// and a lock while it is being written.
//
// Links are followed: the file that a link leads to is written. A file keeps its permissions; one
// that nobody may write is left alone; one that has several names (hard links) keeps them all.
class Draft {
public:
    // Fault: CannotWrite, with the reason in plain words.
    static base::Result<Draft> open(std::filesystem::path const& wanted);

    Draft(Draft&& other) noexcept;
    Draft& operator=(Draft&&) = delete;
    ~Draft(); // a draft that was not kept is gone

    int descriptor() const { return m_file; } // for libraries that write by themselves
    // A name under which the draft can be opened until it is kept.
    std::filesystem::path path() const;
    bool write(std::string_view bytes);       // false: errno says why
    // Down to the disk and under its name. Fault: CannotWrite.
    base::Result<base::Done> keep();
    // What stopped the writing, from errno.
    base::Fault fault() const;

private:
    Draft() = default;
    base::Result<base::Done> intoItsNames(); // of a file with hard links

    int m_file = -1;
    std::filesystem::path m_said;   // as the user wrote it
    std::filesystem::path m_target; // where it goes, links followed
    std::filesystem::path m_name;   // of the draft; empty while it has none
};

// Takes away drafts in a folder that were left by a program that was ended from outside: those
// that no one holds a lock on.
void sweepDrafts(std::filesystem::path const& folder);

// What a failed call of the system means, in plain words: "the disk is full".
std::string systemWords(int error);
// Of a file that is marked so.
inline constexpr std::string_view writeProtectedWords = base::marked("it is write-protected");

} // namespace files
