#include "app/commands/verbs.h"
#include "app/exitstatus.h"
#include "app/sharedfolder.h"
#include "core/files/patternsjson.h"
#include "core/files/tables.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <iostream>

namespace app {

namespace {

std::string fingers(pattern::Pattern const& pattern)
{
    std::string out;
    for (pattern::PatternNote const& note : pattern.notes)
        out += (out.empty() ? "" : "-") + std::to_string(note.finger);
    return out;
}

ExitStatus patterns(bool json)
{
    auto tables = files::readTables(sharedFolder());
    if (!tables) return refuse(tables.error());
    if (json) {
        std::cout << files::patternsJson(tables->book) << '\n';
        return Fine;
    }
    std::cout << fmt::format("{:<16}{:<14}{:>6}  {}\n", "pattern", "fingers", "level", "feel");
    for (pattern::Pattern const& pattern : tables->book.patterns)
        std::cout << fmt::format("{:<16}{:<14}{:>6}  {}\n", pattern.name, fingers(pattern),
                                 pattern.level, pattern.feel);
    return Fine;
}

} // namespace

void declarePatterns(CLI::App& program, int& status)
{
    auto json = std::make_shared<bool>(false);
    CLI::App* verb = program.add_subcommand("patterns", "list the pattern book");
    verb->add_flag("--json", *json, "as JSON");
    verb->callback([json, &status] { status = patterns(*json); });
}

} // namespace app
