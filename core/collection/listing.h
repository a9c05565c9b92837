#pragma once

#include "core/collection/firstnotes.h"

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace collection {

// One tune of a file. Numbers come twice in some tunebooks, and places change when a tune is
// put in before it.
struct TuneName {
    std::string file;
    int number = 1; // X:
    std::string title;
    friend auto operator<=>(TuneName const&, TuneName const&) = default;
};

// What she has done with her tunes.
struct Uses {
    std::map<TuneName, std::string> opened; // when last, ISO 8601
    std::map<TuneName, std::string> made;   // the saved arrangement that it became, a file
    friend bool operator==(Uses const&, Uses const&) = default;
};

// A row of the list.
struct Row {
    TuneName name;
    int place = 0; // in its file, from 0
    TuneEntry tune;
    bool arrangement = false; // is a saved arrangement itself
    std::string arranged;     // the file of one that was made of it; empty: none is known
    std::string opened;       // when last, ISO 8601; empty: not yet
    std::string folded;       // what words are looked for in
};

// "Séanóg's Réel" as "seanog's reel": without accents and capitals.
std::string folded(std::string_view words);

// All tunes of the files, in their order; those that cannot be read, too. A tune counts as
// arranged where an arrangement was saved of it in the window, lies beside it under the name of
// its file, or has its title and first notes.
std::vector<Row> rowsOf(std::vector<FileEntry> const& files, Uses const& uses);

// What is looked for; what is empty or none narrows nothing.
struct Wish {
    std::string words; // each must be in title, kind, key, time signature or file
    std::string kind;  // as kindWords has it
    std::string key;   // as music::shown has it
    std::string meter; // "6/8"
    std::optional<bool> arranged;
    std::optional<FirstNotes> notes;
};

// The rows that fit, as indices: those whose first notes are most alike first, else in their
// order.
std::vector<std::size_t> found(std::vector<Row> const& rows, Wish const& wish);

} // namespace collection
