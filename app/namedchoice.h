#pragma once

#include <CLI/CLI.hpp>

#include <map>
#include <string>
#include <vector>

namespace app {

// An option that takes one of several names, in any case. A name that is none of them is
// answered with those there are.
template<typename Value>
CLI::Option* takesName(CLI::Option* option, std::map<std::string, Value> const& values)
{
    std::vector<std::string> names;
    for (auto const& [name, value] : values) names.push_back(name);
    // What is added last looks at the word first.
    return option->transform(CLI::CheckedTransformer(values))
        ->transform(CLI::IsMember(names, CLI::ignore_case))
        ->option_text("NAME");
}

} // namespace app
