#include "userfolder.h"

#include "core/files/abc/read.h"
#include "core/files/textfile.h"
#include "tests/places.h"

#include <cassert>
#include <cstdlib>
#include <random>

namespace keeping {

namespace fs = std::filesystem;

UserFolder::UserFolder()
    : m_path(fs::temp_directory_path() /
             ("sallow-keeping-" + std::to_string(std::random_device{}())))
{
    fs::create_directories(m_path);
    ::setenv("SALLOW_USER", m_path.c_str(), 1);
}

UserFolder::~UserFolder()
{
    std::error_code failed;
    fs::remove_all(m_path, failed);
}

fs::path UserFolder::write(std::string const& name, std::string const& text) const
{
    fs::create_directories(at(name).parent_path());
    auto const done = files::writeWhole(at(name), text);
    assert(done);
    (void)done;
    return at(name);
}

files::Tables const& shelf()
{
    static files::Tables const tables = *files::readTables(places::shared());
    return tables;
}

std::string const& tuneText()
{
    static std::string const text = "X:4\nT:The Sluice Lantern\nR:waltz\nM:3/4\nL:1/4\nQ:1/4=80\n"
                                    "K:G\n\"G\"GBd|\"C\"ceg|\"D\"fed|\"G\"g3|]\n";
    return text;
}

files::SavedWork workOf(double quartersPerMinute)
{
    auto const entry = files::abcTunes(tuneText())->front();
    files::SavedWork work{tuneText(),
                          {*files::readAbc(tuneText(), entry, "test"),
                           *files::harpFrom(shelf(), "lap26", "C", "CF"),
                           *files::handFrom(shelf(), "small"), *files::levelFrom(shelf(), 2),
                           shelf().book, *files::styleFrom(shelf(), "open")}};
    work.brief.quartersPerMinute = quartersPerMinute;
    return work;
}

} // namespace keeping
