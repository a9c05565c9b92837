#include "core/files/textfile.h"

#include "core/files/draft.h"

#include <cerrno>
#include <fstream>
#include <system_error>

namespace files {

using base::Fault;
using base::FaultCode;
namespace fs = std::filesystem;

base::Result<std::string> readTextFile(fs::path const& path)
{
    std::error_code error;
    fs::file_status const status = fs::status(path, error);
    if (status.type() == fs::file_type::not_found)
        return Fault{FaultCode::FileMissing, path.string(), ""};
    if (error || status.type() == fs::file_type::directory)
        return Fault{FaultCode::FileUnreadable, path.string(), ""};

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

base::Result<base::Done> writeWhole(fs::path const& path, std::string_view bytes)
{
    std::error_code failed;
    fs::file_status const there = fs::status(path, failed);
    // What is no ordinary file (a pipe, a device) cannot be replaced; it is written to directly.
    if (fs::is_other(there)) {
        errno = 0;
        std::ofstream direct(path, std::ios::binary);
        direct.write(bytes.data(), static_cast<std::streamsize>(bytes.size())).flush();
        if (!direct) return Fault{FaultCode::CannotWrite, path.string(), systemWords(errno)};
        return base::Done{};
    }
    auto draft = Draft::open(path);
    if (!draft) return draft.error();
    if (!draft->write(bytes)) return draft->fault();
    return draft->keep();
}

} // namespace files
