#include "core/files/textfile.h"

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fstream>
#include <system_error>

#if __has_include(<unistd.h>)
#include <fcntl.h>
#include <unistd.h>
#endif

namespace files {

namespace {

using base::Done;
using base::Fault;
using base::FaultCode;
using base::Result;
namespace fs = std::filesystem;

// A file open for writing, closed when it goes out of scope.
class OutFile {
public:
    // "wbx" makes a new file, "wb" writes over what is there.
    OutFile(fs::path const& path, char const* mode)
        : m_file(std::fopen(path.string().c_str(), mode))
    {}
    OutFile(OutFile const&) = delete;
    OutFile& operator=(OutFile const&) = delete;
    ~OutFile()
    {
        if (m_file != nullptr) std::fclose(m_file);
    }

    bool isOpen() const { return m_file != nullptr; }
    bool write(std::string_view bytes)
    {
        return std::fwrite(bytes.data(), 1, bytes.size(), m_file) == bytes.size();
    }
    // Down to the disk, so that a name never stands over half a file.
    bool finish()
    {
        bool done = std::fflush(m_file) == 0;
#if __has_include(<unistd.h>)
        // Devices and some network folders cannot do this; that is no failure to write.
        done = done && (::fsync(::fileno(m_file)) == 0 || errno == EINVAL || errno == EROFS);
#endif
        done = std::fclose(m_file) == 0 && done;
        m_file = nullptr;
        return done;
    }

private:
    std::FILE* m_file;
};

Fault cannotWrite(fs::path const& path)
{
    return {FaultCode::CannotWrite, path.string(), std::strerror(errno)};
}

// A name in the same folder that nothing bears yet.
fs::path nameBeside(fs::path const& path)
{
    fs::path beside = path;
    beside += ".part";
    std::error_code ignored;
    for (int i = 1; fs::exists(beside, ignored); ++i) {
        beside = path;
        beside += ".part" + std::to_string(i);
    }
    return beside;
}

// Nobody may write to it: to replace it would be against what its owner said.
bool isReadOnly(fs::path const& path)
{
    std::error_code error;
    fs::file_status const status = fs::status(path, error);
    if (error || status.type() != fs::file_type::regular) return false;
    constexpr fs::perms anyone =
        fs::perms::owner_write | fs::perms::group_write | fs::perms::others_write;
    return (status.permissions() & anyone) == fs::perms::none;
}

// The new name itself down to the disk, where the system can do that.
void syncFolder([[maybe_unused]] fs::path const& folder)
{
#if __has_include(<unistd.h>)
    int const opened = ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY);
    if (opened < 0) return;
    ::fsync(opened);
    ::close(opened);
#endif
}

} // namespace

Result<std::string> readTextFile(fs::path const& path)
{
    std::error_code error;
    fs::file_status const status = fs::status(path, error);
    if (status.type() == fs::file_type::not_found)
        return Fault{FaultCode::FileMissing, path.string(), ""};
    if (error || status.type() == fs::file_type::directory)
        return Fault{FaultCode::FileUnreadable, path.string(), error ? error.message() : ""};

    std::ifstream file(path, std::ios::binary);
    std::string bytes;
    std::string chunk(std::size_t{64} << 10, '\0');
    while (file.read(chunk.data(), static_cast<std::streamsize>(chunk.size())) ||
           file.gcount() > 0) {
        bytes.append(chunk, 0, static_cast<std::size_t>(file.gcount()));
        if (bytes.size() > largestTextFile)
            return Fault{FaultCode::FileTooLarge, path.string(), ""};
    }
    if (!file.eof()) return Fault{FaultCode::FileUnreadable, path.string(), ""};
    if (bytes.empty()) return Fault{FaultCode::FileEmpty, path.string(), ""};
    return bytes;
}

Result<Done> writeWhole(fs::path const& path, std::string_view bytes)
{
    std::error_code error;
    // What is not an ordinary file (a pipe, a device) cannot be replaced; it is written to
    // directly.
    if (fs::exists(path, error) && !fs::is_regular_file(path, error)) {
        errno = fs::is_directory(path, error) ? EISDIR : 0;
        OutFile direct(path, "wb");
        if (!direct.isOpen() || !direct.write(bytes) || !direct.finish())
            return cannotWrite(path);
        return Done{};
    }
    if (isReadOnly(path)) {
        errno = EACCES;
        return cannotWrite(path);
    }
    // A link stays a link: what it leads to is replaced.
    fs::path target = path;
    if (fs::is_symlink(path, error))
        if (fs::path const led = fs::canonical(path, error); !error) target = led;
    fs::path const beside = nameBeside(target);
    OutFile file(beside, "wbx");
    if (!file.isOpen()) return cannotWrite(path);
    bool const written = file.write(bytes) && file.finish();
    Fault const fault = cannotWrite(path);
    if (written) {
        fs::rename(beside, target, error);
        if (!error) {
            syncFolder(target.parent_path());
            return Done{};
        }
    }
    std::error_code ignored;
    fs::remove(beside, ignored);
    return written ? Fault{FaultCode::CannotWrite, path.string(), error.message()} : fault;
}

} // namespace files
