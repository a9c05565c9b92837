#include "app/commands/commands.h"

#include "app/commands/verbs.h"
#include "app/exitstatus.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <array>
#include <iostream>
#include <string_view>

namespace app {

namespace {

constexpr std::array<std::string_view, 12> verbs{"arrange",  "batch",     "weigh",  "keys",
                                                 "patterns", "handout",   "drill",  "picture",
                                                 "check",    "--version", "--help", "-h"};

bool contains(auto const& words, std::string_view word)
{
    return std::find(words.begin(), words.end(), word) != words.end();
}

} // namespace

bool isVerb(char const* word) { return contains(verbs, word); }

int runVerb(int argc, char** argv)
{
    CLI::App program(
        "Sallow arranges lead sheets for the lever harp. Without a verb it opens the "
        "workbench: sallow [FILE...]",
        "sallow");
    program.set_version_flag("--version", "sallow " SALLOW_VERSION);
    program.require_subcommand(1);
    int status = Fine;
    declareArrange(program, status);
    declareBatch(program, status);
    declareWeigh(program, status);
    declareKeys(program, status);
    declarePatterns(program, status);
    declareHandout(program, status);
    declareDrill(program, status);
    declarePicture(program, status);
    declareCheck(program, status);
    try {
        program.parse(argc, argv);
    } catch (CLI::ParseError const& error) {
        if (error.get_exit_code() == 0) return program.exit(error); // --help, --version
        std::cerr << "sallow: " << error.what() << "; see sallow --help\n";
        return CallOff;
    }
    return status;
}

} // namespace app
