#pragma once

#include "core/tune/tune.h"

#include <string>
#include <vector>

namespace tune {

// The words on a page that are the arranger's to edit. Empty: the page says nothing there.
struct PageWords {
    std::string title;
    std::string composer;
    std::string origin;
    std::string source;
    std::string arranger;
    std::string copyright;
    std::vector<std::string> notes; // for the player, a paragraph each
    friend bool operator==(PageWords const&, PageWords const&) = default;
};

PageWords pageWords(Tune const& tune);
Tune withWords(Tune tune, PageWords words);

} // namespace tune
