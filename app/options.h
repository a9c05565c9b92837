#pragma once

#include "app/wishes.h"
#include "core/base/result.h"
#include "core/files/tables/tables.h"
#include "core/proposal/brief.h"
#include "core/tune/pagewords.h"

#include <optional>
#include <string>
#include <vector>

namespace app {

// Words of the page as the user wrote them; none: as the tune has them.
struct WordOptions {
    std::optional<std::string> title;
    std::optional<std::string> composer;
    std::optional<std::string> source;
    std::optional<std::string> arranger;
    std::optional<std::string> copyright;
    std::vector<std::string> notes; // none: the tune's own
    friend bool operator==(WordOptions const&, WordOptions const&) = default;
};
tune::PageWords worded(tune::PageWords words, WordOptions const& options);

// The wishes shared by every verb that arranges, as the user wrote them; declared for the command
// line in cli/groups.cpp.
struct ArrangeOptions {
    std::string tune = "first"; // X: number, place in the book, "first" or "all"
    std::string harp;     // empty: the only one of harpFile, else floor34
    std::string harpFile; // a book of harps of the user's own
    std::string tuning;   // empty: E flat, or as the own harp is tuned
    std::string levers;   // empty: on every string, or as the own harp has them
    std::string names = "usual"; // how strings are named
    std::string hand = "medium";
    std::optional<int> level; // none: 3, or that of a saved arrangement
    std::string key = "best";
    std::string manner;          // of the left hand; empty: the first of the tables
    std::optional<double> tempo; // beats a minute, of the beat that the meter has
    std::string chords = "auto";
    std::string passes = "written";
    std::string right = "bare";
    Wishes wishes;
    std::string mend = "any"; // what is done about snags: any, no, or the id of a way
    WordOptions words;
    friend bool operator==(ArrangeOptions const&, ArrangeOptions const&) = default;
};

// The brief for one tune. Faults: BadCall, NoSuchHarp, NoSuchTuning, NoSuchHand, NoSuchStyle.
base::Result<proposal::Brief> briefFor(tune::Tune tune, ArrangeOptions const& options,
                                       files::Tables const& tables);

} // namespace app
