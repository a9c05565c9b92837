#include "tests/exchange/outside.h"
#include "tests/places.h"

#include <catch2/catch.hpp>

#include <array>
#include <cstdio>
#include <fstream>
#include <unistd.h>

namespace outside {

namespace fs = std::filesystem;

namespace {

fs::path const schemas = fs::path(places::outside()) / "data" / "musicxml-4.0";

} // namespace

TemporaryFile::TemporaryFile(std::string const& bytes, std::string const& ending)
{
    static int count = 0;
    m_path = fs::temp_directory_path() / ("sallow-exchange-" + std::to_string(::getpid()) +
                                          '-' + std::to_string(++count) + ending);
    std::ofstream(m_path, std::ios::binary) << bytes;
}

TemporaryFile::~TemporaryFile()
{
    std::error_code ignored;
    fs::remove(m_path, ignored);
}

Answer run(std::string const& command)
{
    Answer answer;
    std::FILE* const pipe = popen((command + " 2>&1").c_str(), "r");
    REQUIRE(pipe);
    std::array<char, 4096> part{};
    while (std::size_t const got = std::fread(part.data(), 1, part.size(), pipe))
        answer.text.append(part.data(), got);
    answer.status = pclose(pipe);
    return answer;
}

bool hasProgram(std::string const& name) { return run("command -v " + name).status == 0; }

std::optional<Answer> validated(std::string const& path, std::string const& schema)
{
    static bool const there = fs::exists(schemas / "musicxml.xsd") && hasProgram("xmllint");
    if (!there) {
        static bool said = false;
        if (!said) WARN("xmllint or the schema of MusicXML 4.0 is absent: not validated");
        said = true;
        return std::nullopt;
    }
    return run("xmllint --nonet --noout --schema " + (schemas / schema).string() + ' ' + path);
}

} // namespace outside
