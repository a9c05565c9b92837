#include "tests/words/usertexts.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cctype>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>

namespace usertexts {

namespace {

namespace fs = std::filesystem;

std::string contents(fs::path const& file)
{
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

// What the compiler makes of the escapes in a literal.
std::string unescaped(std::string_view text)
{
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] != '\\') {
            out += text[i];
            continue;
        }
        char const sign = text[++i];
        if (sign == 'x') {
            out += static_cast<char>(std::stoi(std::string(text.substr(i + 1, 2)), nullptr, 16));
            i += 2;
        } else if (sign == 'u') { // as UTF-8, two bytes or three
            int const code = std::stoi(std::string(text.substr(i + 1, 4)), nullptr, 16);
            auto const byte = [&out](int value) { out += static_cast<char>(value); };
            if (code >= 0x800) byte(0xE0 | code >> 12);
            byte(code >= 0x800 ? 0x80 | (code >> 6 & 0x3F) : 0xC0 | code >> 6);
            byte(0x80 | (code & 0x3F));
            i += 4;
        } else if (sign == 'n') {
            out += '\n';
        } else if (sign == 't') {
            out += '\t';
        } else {
            out += sign;
        }
    }
    return out;
}

// The source with comments and the insides of literals blank, so that calls can be found.
std::string masked(std::string const& source, std::vector<Literal> const& literals)
{
    std::string out = source;
    for (Literal const& literal : literals)
        for (std::size_t i = literal.from; i < literal.to; ++i)
            if (out[i] != '\n') out[i] = ' ';
    for (std::size_t i = out.find("//"); i != std::string::npos; i = out.find("//", i))
        for (; i < out.size() && out[i] != '\n'; ++i) out[i] = ' ';
    return out;
}

// The literals of a call's arguments, from the place of its bracket.
std::vector<std::vector<Literal>> arguments(std::string const& code,
                                            std::vector<Literal> const& literals,
                                            std::size_t bracket)
{
    std::vector<std::vector<Literal>> out(1);
    auto literal = std::ranges::lower_bound(literals, bracket, {}, &Literal::from);
    int depth = 1;
    for (std::size_t i = bracket + 1; i < code.size() && depth > 0; ++i) {
        if (literal != literals.end() && literal->from == i) {
            out.back().push_back(*literal);
            i = literal->to - 1;
            ++literal;
            continue;
        }
        char const c = code[i];
        if (c == '\'') { // a character
            i += code[i + 1] == '\\' ? 3 : 2;
            continue;
        }
        if (c == '(' || c == '[' || c == '{') ++depth;
        if (c == ')' || c == ']' || c == '}') --depth;
        if (c == ',' && depth == 1) out.emplace_back();
    }
    return out;
}

// Not one that is compared with or looked for.
bool isText(std::string const& code, Literal const& literal)
{
    static std::regex const before(R"((==|!=|(starts_with|ends_with|find|contains)\()\s*$)");
    std::size_t const from = literal.from > 40 ? literal.from - 40 : 0;
    return !std::regex_search(code.substr(from, literal.from - from), before);
}

bool hasLetters(std::string const& text)
{
    static std::regex const places(R"(\{[^}]*\}|%L?\d|%n)");
    std::string const bare = std::regex_replace(text, places, "");
    return std::ranges::any_of(bare,
                               [](char c) { return std::isalpha(static_cast<unsigned char>(c)); });
}

void add(UserTexts& texts, std::string const& text, std::string const& at, bool counted)
{
    if (!hasLetters(text)) return;
    auto const [entry, isNew] = texts.try_emplace(text, UserText{counted, at});
    if (!isNew && counted) entry->second.counted = true;
}

void addWordsOf(fs::path const& table, std::string const& list,
                std::vector<std::string> const& members, UserTexts& texts)
{
    auto const json = nlohmann::json::parse(contents(table));
    for (auto const& row : json.at(list))
        for (std::string const& member : members)
            if (row.contains(member))
                add(texts, row.at(member).get<std::string>(), table.filename().string(), false);
}

} // namespace

std::vector<Literal> literalsIn(std::string const& source)
{
    std::vector<Literal> out;
    bool joins = false;
    int line = 1;
    for (std::size_t i = 0; i < source.size(); ++i) {
        char const c = source[i];
        if (c == '\n') ++line;
        if (c == '/' && i + 1 < source.size() && source[i + 1] == '/') {
            i = std::min(source.find('\n', i), source.size()) - 1;
            continue;
        }
        if (c == '\'' && i + 2 < source.size() && source[i + 1] != '\'') {
            std::size_t const end = source[i + 1] == '\\' ? i + 3 : i + 2;
            if (end < source.size() && source[end] == '\'') i = end;
            joins = false;
            continue;
        }
        if (c != '"') {
            if (std::isspace(static_cast<unsigned char>(c)) == 0) joins = false;
            continue;
        }
        std::size_t const from = i;
        std::string text;
        if (i > 0 && source[i - 1] == 'R') {
            std::size_t const open = source.find('(', i);
            std::string const close = ')' + source.substr(i + 1, open - i - 1) + '"';
            std::size_t const end = source.find(close, open);
            text = source.substr(open + 1, end - open - 1);
            line += static_cast<int>(std::ranges::count(text, '\n'));
            i = end + close.size() - 1;
        } else {
            std::size_t end = i + 1;
            while (source[end] != '"') end += source[end] == '\\' ? 2 : 1;
            text = unescaped(std::string_view(source).substr(i + 1, end - i - 1));
            i = end;
        }
        if (joins) {
            out.back().text += text;
            out.back().to = i + 1;
        } else {
            out.push_back({from, i + 1, line, text});
        }
        joins = true;
    }
    return out;
}

void addTextsOf(std::string const& source, std::string const& name, UserTexts& texts)
{
    static std::regex const call(
        R"((base::)?\b(sayCount|say|said|wordsFor|markedList|marked|tr|translate|QT_TR_NOOP|QT_TRANSLATE_NOOP)\()");
    static std::set<std::string> const ofQt{"tr", "translate", "QT_TR_NOOP", "QT_TRANSLATE_NOOP"};
    std::vector<Literal> const literals = literalsIn(source);
    std::string const code = masked(source, literals);
    bool const isBase = name.find("core/base/") != std::string::npos;
    for (auto found = std::sregex_iterator(code.begin(), code.end(), call);
         found != std::sregex_iterator(); ++found) {
        std::string const what = (*found)[2];
        if (!ofQt.contains(what) && !isBase && !(*found)[1].matched) continue;
        auto const given =
            arguments(code, literals,
                      static_cast<std::size_t>(found->position() + found->length()) - 1);
        auto const take = [&](std::vector<Literal> const& all, bool counted,
                              std::string const& note) {
            for (Literal const& literal : all)
                if (isText(code, literal))
                    add(texts, note + literal.text, name + ':' + std::to_string(literal.line),
                        counted || literal.text.find("%n") != std::string::npos);
        };
        if (what == "say") {
            if (!given[0].empty()) take({given[0].front()}, false, "");
        } else if (what == "sayCount") {
            if (given.size() > 2) take(given[2], true, "");
        } else if (what == "translate" || what == "QT_TRANSLATE_NOOP") {
            if (given.size() > 1) take(given[1], false, "");
        } else if (what == "tr") {
            std::string const note =
                given.size() > 1 && given[1].size() == 1 && !given[1].front().text.empty()
                    ? given[1].front().text + '|'
                    : std::string();
            take(given[0], false, note);
        } else {
            for (auto const& all : given) take(all, false, "");
        }
    }
}

UserTexts textsOfTheProgram(fs::path const& top)
{
    UserTexts texts;
    for (char const* room : {"core", "ui", "app"})
        for (auto const& entry : fs::recursive_directory_iterator(top / room)) {
            std::string const ending = entry.path().extension().string();
            if (ending != ".cpp" && ending != ".h") continue;
            std::string const name = fs::relative(entry.path(), top).string();
            if (name == "core/base/words.h" || name == "core/base/words.cpp") continue;
            std::string const source = contents(entry.path());
            addTextsOf(source, name, texts);
            // Tables of what a call may say; their help is said where it is printed.
            if (name != "app/cli/groups.cpp" && name != "app/commands/verbs.cpp") continue;
            for (Literal const& literal : literalsIn(source))
                if (literal.text.find(' ') != std::string::npos)
                    add(texts, literal.text, name + ':' + std::to_string(literal.line), false);
        }
    fs::path const shared = top / "shared";
    addWordsOf(shared / "hands.json", "hands", {"name"}, texts);
    addWordsOf(shared / "harps.json", "harps", {"name"}, texts);
    addWordsOf(shared / "levels.json", "levels", {"name"}, texts);
    addWordsOf(shared / "patterns.json", "patterns", {"feel"}, texts);
    addWordsOf(shared / "rhythms.json", "rhythms", {"name"}, texts);
    addWordsOf(shared / "forms.json", "manners", {"name"}, texts);
    addWordsOf(shared / "forms.json", "forms", {"name"}, texts);
    addWordsOf(shared / "sliders.json", "sliders", {"name", "less", "more"}, texts);
    addWordsOf(shared / "temperaments.json", "temperaments", {"name"}, texts);
    addWordsOf(shared / "tunings.json", "tunings", {"name"}, texts);
    addWordsOf(shared / "tunings.json", "lever_fits", {"name"}, texts);
    addWordsOf(shared / "weights.json", "styles", {"name"}, texts);
    return texts;
}

} // namespace usertexts
