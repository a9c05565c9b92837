#include "core/files/textfile.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <random>

using namespace files;
using base::FaultCode;
namespace fs = std::filesystem;

namespace {

// A folder of its own for one test, taken away afterwards.
class Folder {
public:
    Folder()
        : m_path(fs::temp_directory_path() /
                 ("sallow-test-" + std::to_string(std::random_device{}())))
    {
        fs::create_directories(m_path);
    }
    Folder(Folder const&) = delete;
    Folder& operator=(Folder const&) = delete;
    ~Folder() { fs::remove_all(m_path); }

    fs::path at(std::string const& name) const { return m_path / name; }
    std::size_t count() const
    {
        return static_cast<std::size_t>(
            std::distance(fs::directory_iterator(m_path), fs::directory_iterator{}));
    }

private:
    fs::path m_path;
};

} // namespace

TEST_CASE("What is written whole is read back byte for byte", "[textfile]")
{
    Folder folder;
    std::string const bytes("X:1\r\n\0\xff last", 13);
    REQUIRE(writeWhole(folder.at("a"), bytes));
    CHECK(*readTextFile(folder.at("a")) == bytes);
    REQUIRE(writeWhole(folder.at("a"), "shorter"));
    CHECK(*readTextFile(folder.at("a")) == "shorter");
    CHECK(folder.count() == 1);
}

TEST_CASE("Files that cannot be read are refused by reason and path", "[textfile]")
{
    Folder folder;
    CHECK(readTextFile(folder.at("none")).error().code == FaultCode::FileMissing);
    CHECK(readTextFile(folder.at("none")).error().place == folder.at("none").string());
    CHECK(readTextFile(folder.at("")).error().code == FaultCode::FileUnreadable);
    std::ofstream(folder.at("empty"));
    CHECK(readTextFile(folder.at("empty")).error().code == FaultCode::FileEmpty);
    fs::resize_file(folder.at("empty"), largestTextFile + 1);
    CHECK(readTextFile(folder.at("empty")).error().code == FaultCode::FileTooLarge);
}

TEST_CASE("A write that fails leaves nothing behind", "[textfile]")
{
    Folder folder;
    auto const missing = writeWhole(folder.at("no-such-folder") / "a", "bytes");
    REQUIRE_FALSE(missing);
    CHECK(missing.error().code == FaultCode::CannotWrite);
    CHECK_FALSE(writeWhole(folder.at(""), "bytes"));
    CHECK(folder.count() == 0);
}
