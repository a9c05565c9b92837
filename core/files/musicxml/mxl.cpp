#include "core/files/musicxml/mxl.h"

#include "core/base/words.h"
#include "core/files/musicxml/xmltext.h"

#include <archive.h>
#include <archive_entry.h>
#include <pugixml.hpp>

#include <clocale>
#include <memory>
#include <optional>

#if __has_include(<xlocale.h>)
#include <xlocale.h>
#endif

namespace files {

namespace {

using base::Fault;
using base::FaultCode;
using base::Result;

constexpr std::size_t longestScore = std::size_t{48} << 20; // bytes, unpacked
constexpr std::size_t longestContainer = std::size_t{1} << 20;
constexpr int mostEntries = 2000;
constexpr char const* containerName = "META-INF/container.xml";
constexpr char const* mediaType = "application/vnd.recordare.musicxml";
constexpr char const* scoreMediaType = "application/vnd.recordare.musicxml+xml";

struct FreeReader {
    void operator()(archive* a) const { archive_read_free(a); }
};
struct FreeWriter {
    void operator()(archive* a) const { archive_write_free(a); }
};
struct FreeEntry {
    void operator()(archive_entry* e) const { archive_entry_free(e); }
};

// While it lives, names beyond ASCII are UTF-8 for this thread, whatever the user's language:
// the archive library asks the locale.
class Utf8Names {
public:
#if defined(LC_CTYPE_MASK)
    Utf8Names() : m_utf8(newlocale(LC_CTYPE_MASK, "C.UTF-8", nullptr))
    {
        if (m_utf8 != nullptr) m_before = uselocale(m_utf8);
    }
    ~Utf8Names()
    {
        if (m_utf8 == nullptr) return;
        uselocale(m_before);
        freelocale(m_utf8);
    }
#else
    Utf8Names() = default;
    ~Utf8Names() = default;
#endif
    Utf8Names(Utf8Names const&) = delete;
    Utf8Names& operator=(Utf8Names const&) = delete;

private:
#if defined(LC_CTYPE_MASK)
    locale_t m_utf8 = nullptr;
    locale_t m_before = nullptr;
#endif
};

Fault damaged(std::string const& file, std::string const& detail)
{
    return {FaultCode::Malformed, file, detail};
}

// One walk through the archive in memory.
class Zip {
public:
    explicit Zip(std::string_view bytes) : m_archive(archive_read_new())
    {
        archive_read_support_format_zip_seekable(m_archive.get());
        m_open =
            archive_read_open_memory(m_archive.get(), bytes.data(), bytes.size()) == ARCHIVE_OK;
    }

    // The next file's name; none at the end.
    std::optional<std::string> next()
    {
        while (m_open && ++m_count <= mostEntries) {
            int const status = archive_read_next_header(m_archive.get(), &m_entry);
            if (status != ARCHIVE_OK && status != ARCHIVE_WARN) return std::nullopt;
            char const* name = archive_entry_pathname_utf8(m_entry);
            if (name == nullptr) name = archive_entry_pathname(m_entry);
            bool const ordinary = archive_entry_filetype(m_entry) == AE_IFREG;
            if (name != nullptr && ordinary) return std::string(name);
        }
        return std::nullopt;
    }
    bool isEncrypted() const { return archive_entry_is_encrypted(m_entry) != 0; }

    struct Contents {
        std::string bytes;
        bool whole = false;
        bool tooLong = false;
    };
    Contents contents(std::size_t most)
    {
        Contents out;
        std::string chunk(std::size_t{64} << 10, '\0');
        for (;;) {
            la_ssize_t const got =
                archive_read_data(m_archive.get(), chunk.data(), chunk.size());
            if (got < 0) return out;
            if (got == 0) break;
            out.bytes.append(chunk, 0, static_cast<std::size_t>(got));
            if (out.bytes.size() > most) {
                out.tooLong = true;
                return out;
            }
        }
        out.whole = true;
        return out;
    }

private:
    Utf8Names m_names;
    std::unique_ptr<archive, FreeReader> m_archive;
    archive_entry* m_entry = nullptr; // belongs to the archive
    bool m_open = false;
    int m_count = 0;
};

Result<std::string> entryNamed(std::string_view bytes, std::string const& name,
                               std::size_t most, std::string const& file)
{
    Zip zip(bytes);
    while (auto const found = zip.next()) {
        if (*found != name) continue;
        if (zip.isEncrypted()) return damaged(file, base::say("{} is encrypted", name));
        Zip::Contents contents = zip.contents(most);
        if (contents.tooLong) return Fault{FaultCode::FileTooLarge, file, name};
        if (!contents.whole) return damaged(file, base::say("{} cannot be unpacked", name));
        return std::move(contents.bytes);
    }
    return damaged(file, base::say("there is no {} in it", name));
}

bool isScoreName(std::string const& name)
{
    return !name.starts_with("META-INF/") && !name.starts_with("__MACOSX/") &&
           (name.ends_with(".xml") || name.ends_with(".musicxml"));
}

// A name that stays inside the archive.
bool staysInside(std::string const& name)
{
    return !name.empty() && name[0] != '/' && name.find('\\') == std::string::npos &&
           name.find("..") == std::string::npos && name.find('\0') == std::string::npos;
}

// The score that the container names: the first rootfile without another media type.
std::optional<std::string> rootFileIn(std::string const& container)
{
    pugi::xml_document document;
    if (!document.load_buffer(container.data(), container.size())) return std::nullopt;
    for (pugi::xml_node root :
         document.child("container").child("rootfiles").children("rootfile")) {
        std::string const type = root.attribute("media-type").value();
        if (type.empty() || type == scoreMediaType) return root.attribute("full-path").value();
    }
    return std::nullopt;
}

// Where the container is missing or says nothing, the one file that can be a score.
std::optional<std::string> onlyScoreIn(std::string_view bytes)
{
    std::optional<std::string> only;
    Zip zip(bytes);
    while (auto const name = zip.next()) {
        if (!isScoreName(*name)) continue;
        if (only) return std::nullopt;
        only = name;
    }
    return only;
}

la_ssize_t append(archive*, void* out, void const* bytes, std::size_t count)
{
    static_cast<std::string*>(out)->append(static_cast<char const*>(bytes), count);
    return static_cast<la_ssize_t>(count);
}

void addEntry(archive* zip, char const* name, std::string_view bytes)
{
    std::unique_ptr<archive_entry, FreeEntry> const entry(archive_entry_new());
    archive_entry_set_pathname(entry.get(), name);
    archive_entry_set_size(entry.get(), static_cast<la_int64_t>(bytes.size()));
    archive_entry_set_filetype(entry.get(), AE_IFREG);
    archive_entry_set_perm(entry.get(), 0644);
    archive_write_header(zip, entry.get());
    archive_write_data(zip, bytes.data(), bytes.size());
}

} // namespace

bool looksZipped(std::string_view bytes) { return bytes.starts_with("PK\x03\x04"); }

std::string mxlFile(std::string_view musicXml, std::string const& name)
{
    std::string const score = name + ".musicxml";
    pugi::xml_document container = xml::declared();
    pugi::xml_node root =
        container.append_child("container").append_child("rootfiles").append_child("rootfile");
    root.append_attribute("full-path") = score.c_str();
    root.append_attribute("media-type") = scoreMediaType;

    std::string out;
    std::unique_ptr<archive, FreeWriter> const zip(archive_write_new());
    archive_write_set_format_zip(zip.get());
    archive_write_open2(zip.get(), &out, nullptr, append, nullptr, nullptr);
    archive_write_set_bytes_in_last_block(zip.get(), 1);
    // The type of the whole stands first and unpacked, so that it can be read off the bytes.
    archive_write_zip_set_compression_store(zip.get());
    addEntry(zip.get(), "mimetype", mediaType);
    archive_write_zip_set_compression_deflate(zip.get());
    addEntry(zip.get(), containerName, xml::textOf(container));
    addEntry(zip.get(), score.c_str(), musicXml);
    archive_write_close(zip.get());
    return out;
}

Result<std::string> scoreInMxl(std::string_view bytes, std::string const& file)
{
    auto const container = entryNamed(bytes, containerName, longestContainer, file);
    std::optional<std::string> name;
    if (container) name = rootFileIn(*container);
    if (!name || name->empty()) name = onlyScoreIn(bytes);
    if (!name) return damaged(file, base::said("its list of contents names no music"));
    if (!staysInside(*name))
        return damaged(file,
                       base::say("its list of contents points outside the file: {}", *name));
    return entryNamed(bytes, *name, longestScore, file);
}

} // namespace files
