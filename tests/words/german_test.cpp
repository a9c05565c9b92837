// Everything a reader sees is said in German too: each text of the sources and tables has an entry
// in the Qt Linguist file, finished, with the same values; and no entry is left over.
#include "core/base/words.h"
#include "core/files/catalogue.h"
#include "core/tune/kindwords.h"
#include "tests/places.h"
#include "tests/words/usertexts.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>
#include <string>

namespace fs = std::filesystem;
using namespace usertexts;

namespace {

fs::path top() { return fs::path(places::tests()).parent_path(); }

std::string germanFile()
{
    std::ifstream in(top() / "shared/translations/sallow_de.ts", std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

base::Catalogue german()
{
    auto catalogue = files::catalogueFrom(germanFile());
    REQUIRE(catalogue);
    return *std::move(catalogue);
}

// The file without what Qt itself says, which no source of ours has: its last context.
std::string ours(std::string const& file)
{
    std::size_t const name = file.find("<name>Qt</name>");
    return name == std::string::npos ? file : file.substr(0, file.rfind("<context>", name)) + "</TS>";
}

// Places of Qt's: %1, %n.
std::multiset<std::string> placesOf(std::string const& text)
{
    static std::regex const place(R"(%L?\d|%n)");
    std::multiset<std::string> out;
    for (auto at = std::sregex_iterator(text.begin(), text.end(), place);
         at != std::sregex_iterator(); ++at)
        out.insert(at->str());
    return out;
}

// Letters after which one may type Alt.
std::ptrdiff_t mnemonics(std::string const& text)
{
    static std::regex const mnemonic(R"(&[A-Za-zÄÖÜäöü\d])");
    return std::distance(std::sregex_iterator(text.begin(), text.end(), mnemonic),
                         std::sregex_iterator());
}

struct English {
    English() = default;
    English(English const&) = delete;
    English& operator=(English const&) = delete;
    ~English() { base::speakBy({}); }
};

} // namespace

TEST_CASE("Texts for the reader are found where the sources say them", "[words][german]")
{
    UserTexts texts;
    addTextsOf("auto a = base::say(\"it has {} \"\n   \"notes\", \"not this\"); // base::said(\"nor this\")\n"
               "auto b = base::said(kind == \"other\" ? \"one way\" : \"another\");\n"
               "constexpr auto c = base::markedList(\"thumb\", \"finger|second\");\n"
               "auto d = base::sayCount(n, \"{} snag\", \"{} snags\", '\"');\n"
               "auto e = tr(\"Open\", \"menu\"); say(\"not ours\"); f(tr(\"%n bar(s)\", nullptr, 3));",
               "x.cpp", texts);
    std::set<std::string> names;
    for (auto const& [name, text] : texts) names.insert(name);
    CHECK(names == std::set<std::string>{"it has {} notes", "one way", "another", "thumb",
                                         "finger|second", "{} snags", "menu|Open", "%n bar(s)"});
    CHECK(texts["{} snags"].counted);
    CHECK(texts["%n bar(s)"].counted);
    CHECK(texts["it has {} notes"].at == "x.cpp:1");
}

TEST_CASE("Every text of the program has finished German with the same values", "[words][german]")
{
    UserTexts const texts = textsOfTheProgram(top());
    CHECK(texts.size() > 1900);
    CHECK(germanFile().find("type=\"unfinished\"") == std::string::npos);
    base::Catalogue const catalogue = german();
    for (auto const& [english, use] : texts) {
        CAPTURE(use.at, english);
        auto const found = catalogue.sayings.find(english);
        if (found == catalogue.sayings.end()) {
            FAIL_CHECK("there is no German for this");
            continue;
        }
        CHECK(found->second.size() == (use.counted ? 2U : 1U));
        for (std::string const& form : found->second) {
            CAPTURE(form);
            CHECK(form.find_first_not_of(" \n") != std::string::npos);
            bool const mayLeaveCountOut = use.counted && &form == &found->second.front();
            CHECK((mayLeaveCountOut || base::haveSameValues(english, form)));
            CHECK((mayLeaveCountOut || placesOf(english) == placesOf(form)));
            CHECK(mnemonics(english) == mnemonics(form));
            CHECK(english.ends_with('\n') == form.ends_with('\n'));
            CHECK((english.ends_with("…") || english.ends_with("...")) ==
                  (form.ends_with("…") || form.ends_with("...")));
        }
    }
}

TEST_CASE("No German is left over from a text that is no longer said", "[words][german]")
{
    UserTexts const texts = textsOfTheProgram(top());
    auto const catalogue = files::catalogueFrom(ours(germanFile()));
    REQUIRE(catalogue);
    for (auto const& [english, forms] : catalogue->sayings) {
        CAPTURE(english);
        CHECK(texts.contains(english));
    }
}

TEST_CASE("Sentences of core are said, not handed out as they are", "[words][german]")
{
    // Where texts are not for a reader of tunes: markup, data, and what is told of broken rules
    // and damaged tables of our own, for those who mend them.
    std::set<std::string> const others{"core/proposal/rules.cpp",
                                       "core/proposal/handrules.cpp",
                                       "core/files/tables/tables.cpp",
                                       "core/files/tables/formtable.cpp",
                                       "core/files/tables/harmonytable.cpp",
                                       "core/files/tables/tastetable.cpp",
                                       "core/files/tables/musicfont.cpp",
                                       "core/files/catalogue.cpp",
                                       "core/files/musicxml/write.cpp",
                                       "core/files/abc/write.cpp",
                                       "core/collection/listing.cpp",
                                       "core/music/chord.cpp",
                                       "core/files/musicxml/words.cpp",
                                       "core/files/json.h",
                                       "core/tune/jumps.cpp"};
    std::set<std::string> const lookedFor{", after a flip", "type must be "};
    UserTexts const texts = textsOfTheProgram(top());
    std::regex const sentence("[A-Za-z']+ [A-Za-z']+.* [A-Za-z']+");
    for (auto const& entry : fs::recursive_directory_iterator(top() / "core")) {
        std::string const name = fs::relative(entry.path(), top()).string();
        if (!name.ends_with(".cpp") && !name.ends_with(".h")) continue;
        if (others.contains(name)) continue;
        std::ifstream in(entry.path(), std::ios::binary);
        std::string const source{std::istreambuf_iterator<char>(in), {}};
        for (Literal const& literal : literalsIn(source)) {
            if (!std::regex_search(literal.text, sentence)) continue;
            CAPTURE(name, literal.line, literal.text);
            bool const isForOne = literal.text.find("{}") != std::string::npos ||
                                  literal.text.starts_with("one ");
            bool const known =
                texts.contains(literal.text) || lookedFor.contains(literal.text) ||
                (isForOne && source.rfind("sayCount(", literal.from) + 200 > literal.from);
            CHECK(known);
        }
    }
}

TEST_CASE("A language puts values in its own order, counts and decimal point", "[words][german]")
{
    English const afterwards;
    CHECK(base::say("{} of {}", 1, 2) == "1 of 2");
    CHECK(base::said("finger|second") == "second");
    CHECK(base::sayCount(1, "{} snag", "{} snags") == "1 snag");
    CHECK(base::sayCount(2, "{} snag", "{} snags") == "2 snags");
    base::Catalogue made;
    made.decimalPoint = ',';
    made.sayings["{} of {}"] = {"von {1} {0}"};
    made.sayings["finger|second"] = {"zweiter"};
    made.sayings["{} snags"] = {"eine Hürde", "{} Hürden"};
    made.sayings["difficulty {:.1f}"] = {"Schwierigkeit {:.1Lf}"};
    made.sayings["{} and {}"] = {"{} und"};
    base::speakBy(made);
    CHECK(base::say("{} of {}", 1, 2) == "von 2 1");
    CHECK(base::said("finger|second") == "zweiter");
    CHECK(base::said("degree|second") == "second");
    CHECK(base::sayCount(1, "{} snag", "{} snags") == "eine Hürde");
    CHECK(base::sayCount(0, "{} snag", "{} snags") == "0 Hürden");
    CHECK(base::say("difficulty {:.1f}", 2.94) == "Schwierigkeit 2,9");
    CHECK(base::say("{} and {}", 1, 2) == "1 and 2"); // a value is missing: stays English
}

TEST_CASE("In German a bar, a key and a tempo are what a German harper says", "[words][german]")
{
    English const afterwards;
    base::speakBy(german());
    // Common practice, no source: "Takt", "G-Dur", "Viertel", "Daumen".
    CHECK(base::say("bar {}", 3) == "Takt 3");
    CHECK(base::say("{} major", "G") == "G-Dur");
    CHECK(base::said("crotchets") == "Viertel");
    CHECK(base::said("thumb") == "Daumen");
    CHECK(base::sayCount(1, "{} snag is left", "{} snags are left") == "1 Hürde bleibt");
    CHECK(base::sayCount(3, "{} snag is left", "{} snags are left") == "3 Hürden bleiben");
}

TEST_CASE("Kinds of tune are said in the reader's language and written as they were",
          "[words][german]")
{
    English const afterwards;
    CHECK(tune::rhythmShown("Slip jig") == "Slip jig"); // as the file has it
    CHECK(tune::kindShown(tune::Kind::Waltz) == "waltz");
    base::speakBy(german());
    CHECK(tune::rhythmShown("waltz") == "Walzer");
    CHECK(tune::rhythmShown("March") == "Marsch");
    CHECK(tune::rhythmShown("slip_jig") == "Slip Jig");
    CHECK(tune::rhythmShown("bourree of the weavers") == "bourree of the weavers");
    for (tune::Kind const kind : tune::allKinds) {
        CAPTURE(tune::kindText(kind));
        CHECK(tune::kindShown(kind) != tune::kindText(kind)); // every one is in the catalogue
    }
    CHECK(tune::kindText(tune::Kind::Waltz) == "waltz"); // what is kept in files
}
