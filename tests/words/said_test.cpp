// What a harper reads is plain English as a harp teacher would say it. Words that were said once
// and found stilted or unclear must not come back: they are looked for in every text of the
// sources and of the tables.
#include "tests/places.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <string>
#include <vector>

namespace fs = std::filesystem;

namespace {

struct Unsaid {
    char const* word;    // a regular expression
    char const* instead; // what is said
};

// By the reader's ear; common practice, no source.
constexpr Unsaid unsaid[] = {
    {R"(\bgrowl)", "sound muddy"},
    {R"(\brubs?\b)", "clashes with"},
    {R"(\banew\b)", "again"},
    {R"(\b(this|it|that|\}) is no [a-z])", "is not a"},
    {R"(\bas things stand\b)", "now"},
    {R"(asks? for level)", "difficulty"},
    {R"(\bcosts? [^(]*points?\b)", "score, lower is better"},
    {R"(\b[Uu]nlock)", "let change"},
    {R"(\blocked\b)", "kept"},
    {R"(\b[Vv]ariants?\b)", "shape"},
    {R"(\b[Vv]oicings?\b)", "shape"},
    {R"(\b[Cc]andidates?\b)", "shape"},
    {R"(\b[Pp]roposals?\b|\b[Pp]roposed\b)", "suggestion, suggested"},
    {R"(\bclinician)", "doctor or physiotherapist"},
    {R"(\b(another|best|further|[Nn]ext) take\b)", "setting"},
    {R"(\bturn(s|ed|ing)? (the|a|its|one|no|\d+) levers?\b|\blevers? (is|are) turned\b)", "flip"},
    {R"(\bverbs?\b)", "command"},
    {R"(\bmeters?\b)", "time signature, metre"},
    {R"(\bpass(es)? (of|\d|\{))", "time through"},
    {R"(\bgovern)", "there is a chord symbol for"},
    {R"(\bhaunting\b)", "sad"},
    {R"(\bwants? the\b)", "needs"},
    {R"(\bnought\b)", "no"},
    {R"(\bstyle of\b|\b[Ss]tyle \()", "manner"},
    {R"(\bdearer\b)", "less good"},
    {R"(\bset-ups?\b)", "levers to set"},
    {R"(\bmuffle)", "damp"},
    {R"(\bstruck\b)", "plucked"},
    {R"(\bchord letters?\b)", "chord symbol"},
    {R"(\bplayer of level\b)", "level"},
};

std::string contents(fs::path const& file)
{
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

// The texts between quotation marks that hold a space; neighbours that the compiler joins are
// one text. Lines of comment are passed over.
std::vector<std::string> textsIn(std::string const& source)
{
    std::vector<std::string> texts;
    std::string text;
    bool joins = false;
    for (std::size_t i = 0; i < source.size(); ++i) {
        char const c = source[i];
        if (c == '/' && i + 1 < source.size() && source[i + 1] == '/') {
            i = std::min(source.find('\n', i), source.size());
            continue;
        }
        if (c == '\'' && i + 2 < source.size()) { // a character, perhaps a quotation mark
            if (source[i + 1] == '\\' && source[i + 3] == '\'') i += 3;
            else if (source[i + 2] == '\'') i += 2;
            continue;
        }
        if (c != '"') {
            if (std::isspace(static_cast<unsigned char>(c)) == 0) joins = false;
            continue;
        }
        if (!joins) {
            if (text.find(' ') != std::string::npos) texts.push_back(text);
            text.clear();
        }
        for (++i; i < source.size() && source[i] != '"' && source[i] != '\n'; ++i) {
            if (source[i] == '\\') text += source[i++];
            text += source[i];
        }
        joins = true;
    }
    if (text.find(' ') != std::string::npos) texts.push_back(text);
    return texts;
}

std::vector<std::pair<std::string, std::string>> textsOfTheProgram()
{
    fs::path const top = fs::path(places::tests()).parent_path();
    std::vector<std::pair<std::string, std::string>> out;
    for (char const* folder : {"core", "ui", "app", "shared"})
        for (auto const& entry : fs::recursive_directory_iterator(top / folder)) {
            auto const ending = entry.path().extension();
            if (ending != ".cpp" && ending != ".json") continue;
            for (std::string& text : textsIn(contents(entry.path())))
                out.emplace_back(entry.path().filename().string(), std::move(text));
        }
    return out;
}

} // namespace

TEST_CASE("Words that are no longer said are found in a text, not in a comment", "[words]")
{
    auto const texts = textsIn("say(\"it would \"\n  \"rub against\"); // \"it growls here\"\nchar c = '\"';\n"
                               "f(\"one\", \"two words\");");
    REQUIRE(texts.size() == 2);
    CHECK(texts[0] == "it would rub against");
    CHECK(texts[1] == "two words");
    CHECK(std::regex_search(texts[0], std::regex(unsaid[1].word)));
}

TEST_CASE("No text of the program says a word that was found stilted or unclear", "[words]")
{
    auto const texts = textsOfTheProgram();
    CHECK(texts.size() > 1000);
    for (Unsaid const& row : unsaid) {
        std::regex const word(row.word);
        for (auto const& [file, text] : texts) {
            CAPTURE(file, text, row.instead);
            CHECK_FALSE(std::regex_search(text, word));
        }
    }
}
