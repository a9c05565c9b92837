#include "core/files/draft.h"

#include "core/base/words.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdio>
#include <optional>
#include <random>
#include <system_error>
#include <utility>

namespace files {

namespace {

using base::Done;
using base::Fault;
using base::FaultCode;
using base::Result;
namespace fs = std::filesystem;

constexpr std::string_view draftBegins = ".sallow-";
constexpr std::string_view draftEnds = ".part";
constexpr mode_t usualMode = 0666; // less what the user's mask takes away
constexpr int mostLinks = 40;      // in a chain, as Linux has it

struct Words {
    int error;
    std::string_view said;
};
constexpr std::array systemTable{
    Words{ENOSPC, base::marked("the disk is full")},
    Words{EDQUOT, base::marked("your share of the disk is full")},
    Words{EFBIG, base::marked("the file would be larger than is allowed here")},
    Words{EACCES, base::marked("you may not write there")},
    Words{EPERM, base::marked("you may not write there")},
    Words{EROFS, base::marked("the disk can only be read")},
    Words{ENOENT, base::marked("there is no such folder")},
    Words{ENOTDIR, base::marked("a part of its path is not a folder")},
    Words{EISDIR, base::marked("there is a folder of that name")},
    Words{ENAMETOOLONG, base::marked("the name is too long")},
    Words{ELOOP, base::marked("its links lead round in a circle")},
    Words{EIO, base::marked("the disk does not answer as it should")},
    Words{EMFILE, base::marked("too many files are open")},
    Words{ENFILE, base::marked("too many files are open")},
    Words{ETXTBSY, base::marked("another program is running it")},
};

std::string hexWord()
{
    std::random_device random;
    std::array<char, 17> text{};
    std::snprintf(text.data(), text.size(), "%08x%08x", random(), random());
    return text.data();
}

fs::path draftName(fs::path const& folder)
{
    return folder / (std::string(draftBegins) + hexWord() + std::string(draftEnds));
}

fs::path folderOf(fs::path const& path)
{
    return path.has_parent_path() ? path.parent_path() : fs::path(".");
}

// The file that a chain of links leads to, whether it is there or not; errno where it leads
// nowhere.
std::optional<fs::path> followed(fs::path path)
{
    for (int link = 0; link < mostLinks; ++link) {
        std::error_code failed;
        if (fs::symlink_status(path, failed).type() != fs::file_type::symlink) return path;
        fs::path const to = fs::read_symlink(path, failed);
        if (failed) {
            errno = failed.value();
            return std::nullopt;
        }
        path = to.is_absolute() ? to : folderOf(path) / to;
    }
    errno = ELOOP;
    return std::nullopt;
}

bool all(int file, std::string_view bytes)
{
    while (!bytes.empty()) {
        ssize_t const written = ::write(file, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        if (written <= 0) return false;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

bool onDisk(int file) { return ::fsync(file) == 0 || errno == EINVAL || errno == EROFS; }

} // namespace

std::string systemWords(int error)
{
    if (error == 0) return {};
    for (Words const& words : systemTable)
        if (words.error == error) return base::said(words.said);
    return base::say("the system refuses it, number {}", error);
}

Fault Draft::fault() const
{
    return {FaultCode::CannotWrite, m_said.string(), systemWords(errno)};
}

Result<Draft> Draft::open(fs::path const& wanted)
{
    Draft draft;
    draft.m_said = wanted;
    auto const target = followed(wanted);
    if (!target) return draft.fault();
    draft.m_target = *target;
    struct stat there{};
    bool const replaces = ::stat(target->c_str(), &there) == 0;
    if (!replaces && errno != ENOENT) return draft.fault();
    if (replaces && S_ISDIR(there.st_mode)) {
        errno = EISDIR;
        return draft.fault();
    }
    // Whoever may write everywhere (root) is stopped by the mark all the same.
    bool const marked = replaces && (there.st_mode & (S_IWUSR | S_IWGRP | S_IWOTH)) == 0;
    if (marked || (replaces && ::access(target->c_str(), W_OK) != 0))
        return Fault{FaultCode::CannotWrite, wanted.string(), base::said(writeProtectedWords)};

    fs::path const folder = folderOf(*target);
#ifdef O_TMPFILE
    draft.m_file = ::open(folder.c_str(), O_TMPFILE | O_RDWR | O_CLOEXEC, usualMode);
#endif
    if (draft.m_file < 0) {
        draft.m_name = draftName(folder);
        draft.m_file = ::open(draft.m_name.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC,
                              usualMode);
        if (draft.m_file < 0) draft.m_name.clear();
    }
    if (draft.m_file < 0) return draft.fault();
    ::flock(draft.m_file, LOCK_EX | LOCK_NB); // only ever tried by those who sweep
    if (replaces) {
        // Owner and group where that is allowed, then the permissions, which a change of owner
        // may have reset.
        [[maybe_unused]] int const kept = ::fchown(draft.m_file, there.st_uid, there.st_gid);
        ::fchmod(draft.m_file, there.st_mode & 07777);
    }
    return draft;
}

Draft::Draft(Draft&& other) noexcept
    : m_file(std::exchange(other.m_file, -1)), m_said(std::move(other.m_said)),
      m_target(std::move(other.m_target)), m_name(std::exchange(other.m_name, {}))
{}

Draft::~Draft()
{
    if (m_file >= 0) ::close(m_file);
    if (!m_name.empty()) ::unlink(m_name.c_str());
}

fs::path Draft::path() const
{
    return m_name.empty() ? fs::path("/proc/self/fd/" + std::to_string(m_file)) : m_name;
}

bool Draft::write(std::string_view bytes) { return all(m_file, bytes); }

Result<Done> Draft::intoItsNames()
{
    int const file = ::open(m_target.c_str(), O_WRONLY | O_CLOEXEC);
    if (file < 0) return fault();
    off_t const size = ::lseek(m_file, 0, SEEK_END);
    // With the room made sure of beforehand, writing over the old content cannot run out of it.
    bool done = size == 0 || ::posix_fallocate(file, 0, size) == 0;
    std::array<char, 1 << 16> chunk{};
    for (off_t at = 0; done && at < size;) {
        ssize_t const read = ::pread(m_file, chunk.data(), chunk.size(), at);
        done = read > 0 && all(file, {chunk.data(), static_cast<std::size_t>(read)});
        at += read;
    }
    done = done && ::ftruncate(file, size) == 0 && onDisk(file);
    Fault const why = fault();
    ::close(file);
    if (!done) return why;
    return Done{};
}

Result<Done> Draft::keep()
{
    if (!onDisk(m_file)) return fault();
    struct stat there{};
    if (::stat(m_target.c_str(), &there) == 0 && there.st_nlink > 1) return intoItsNames();
    if (m_name.empty()) {
        fs::path const self = path();
        m_name = draftName(folderOf(m_target));
        if (::linkat(AT_FDCWD, self.c_str(), AT_FDCWD, m_name.c_str(), AT_SYMLINK_FOLLOW) != 0) {
            m_name.clear();
            return fault();
        }
    }
    if (::rename(m_name.c_str(), m_target.c_str()) != 0) return fault();
    m_name.clear();
    // The new name itself down to the disk, where the system can do that.
    int const folder = ::open(folderOf(m_target).c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder >= 0) {
        ::fsync(folder);
        ::close(folder);
    }
    return Done{};
}

void sweepDrafts(fs::path const& folder)
{
    std::error_code failed;
    for (fs::directory_iterator entry(folder.empty() ? fs::path(".") : folder, failed), end;
         !failed && entry != end; entry.increment(failed)) {
        std::string const name = entry->path().filename().string();
        bool const draft = name.size() == draftBegins.size() + 16 + draftEnds.size() &&
                           name.starts_with(draftBegins) && name.ends_with(draftEnds);
        if (!draft) continue;
        int const file = ::open(entry->path().c_str(), O_RDWR | O_CLOEXEC | O_NOFOLLOW);
        if (file < 0) continue;
        if (::flock(file, LOCK_EX | LOCK_NB) == 0) ::unlink(entry->path().c_str());
        ::close(file);
    }
}

} // namespace files
