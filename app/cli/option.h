#pragma once

#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace cli {

// What may be written for an option.
struct Rule {
    std::vector<std::string> oneOf; // in any case; none: any word
    std::optional<std::pair<double, double>> range; // of a number
    bool required = false;
    bool commas = false; // several words in one, such as 1,3,2
};

// One option of a verb, or a word without dashes such as IN, and where what is written goes.
// Every option is declared once, in the table of its group (groups.cpp).
struct Option {
    using Target =
        std::variant<bool*, std::string*, std::optional<std::string>*, int*,
                     std::optional<int>*, double*, std::optional<double>*,
                     std::vector<std::string>*, // may be repeated
                     std::function<void(std::string const&)>>;

    std::string name; // "--harp", "-o,--output", "IN"
    Target target;
    std::string help; // one phrase, for --help
    Rule rule{};
};

using Options = std::vector<Option>;

// An option that takes one of several names, each for a value.
template<typename Value>
Option choice(std::string name, Value& target,
              std::vector<std::pair<std::string, Value>> const& values, std::string help)
{
    Rule rule;
    for (auto const& [word, value] : values) rule.oneOf.push_back(word);
    auto const put = [&target, values](std::string const& word) {
        for (auto const& [known, value] : values)
            if (known == word) target = value;
    };
    return {std::move(name), Option::Target{put}, std::move(help), std::move(rule)};
}

} // namespace cli
