#pragma once

// The program as a script runs it, for tests.

#include "tests/places.h"

#include <sys/wait.h>

#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

namespace program {

// A folder of one test's own, gone with it.
struct Folder {
    std::filesystem::path path = std::filesystem::temp_directory_path() / ("sallow-cli-" + std::to_string(::getpid()));
    Folder() { std::filesystem::create_directories(path); }
    ~Folder() { std::filesystem::remove_all(path); }

    std::string file(std::string const& name, std::string const& text) const
    {
        std::ofstream(path / name, std::ios::binary) << text;
        return (path / name).string();
    }
    std::string at(std::string const& name) const { return (path / name).string(); }
    int count() const
    {
        return static_cast<int>(std::distance(std::filesystem::directory_iterator(path), {}));
    }
};

struct Outcome {
    int status = -1;
    std::string said; // on stderr
    std::string out;
};

inline std::string contents(std::filesystem::path const& path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

// `before` stands before the program in the shell, and what it prints goes to `to`, if that is given.
inline Outcome sallow(std::string const& words, std::string const& before = {},
                      std::string const& to = {})
{
    std::filesystem::path const said =
        std::filesystem::temp_directory_path() / ("sallow-said-" + std::to_string(::getpid()));
    std::filesystem::path const out =
        std::filesystem::temp_directory_path() / ("sallow-out-" + std::to_string(::getpid()));
    std::string const command = before + places::program() + ' ' + words + " >" +
                                (to.empty() ? out.string() : to) + " 2>" + said.string();
    int const raw = std::system(command.c_str());
    Outcome outcome{WIFEXITED(raw) ? WEXITSTATUS(raw) : -1, contents(said), contents(out)};
    std::filesystem::remove(said);
    std::filesystem::remove(out);
    return outcome;
}

inline std::string const head = "X:1\nT:Test\nM:4/4\nL:1/4\nQ:1/4=80\nK:G\n";
inline std::string const good = head + "\"G\"GABc|\"D\"d4|\n";

inline int lines(std::string const& text)
{
    return static_cast<int>(std::count(text.begin(), text.end(), '\n'));
}

} // namespace program
