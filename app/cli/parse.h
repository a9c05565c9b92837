#pragma once

#include "app/cli/verb.h"

#include <span>
#include <string>
#include <vector>

namespace cli {

// What the words of a call come to: a verb to run, or something to say instead.
struct Parsed {
    app::Verb const* verb = nullptr;
    std::string says;  // without a verb: help or version, or what is off in the words
    bool off = false;  // the words are off
};

// Reads the words after the program's name; what they ask for is put into `call`.
Parsed parse(std::vector<std::string> const& words, std::span<app::Verb const> verbs,
             app::Call& call);

} // namespace cli
