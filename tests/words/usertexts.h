#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace usertexts {

// A text for the reader as the sources have it: its name in a catalogue (see core/base/words.h;
// where Qt's note tells meanings apart, "note|text") and how it is used.
struct UserText {
    bool counted = false; // has a form for one and a form for others
    std::string at;       // file and line of its first use
};
using UserTexts = std::map<std::string, UserText>;

// A text between quotation marks; neighbours that the compiler joins are one.
struct Literal {
    std::size_t from = 0; // of its first quotation mark
    std::size_t to = 0;   // behind its last
    int line = 1;
    std::string text;
};
std::vector<Literal> literalsIn(std::string const& source);

// Adds the texts of one source file: arguments of base::say, sayCount, said, marked, markedList,
// wordsFor, and of Qt's tr, translate and their marks.
void addTextsOf(std::string const& source, std::string const& name, UserTexts& texts);

// All of the program: core, ui, app, and the words in the tables of shared.
UserTexts textsOfTheProgram(std::filesystem::path const& top);

} // namespace usertexts
