// Every option of every verb, through the real program: it changes what is made, and words that are
// off are refused. The list of options is the one that the program itself prints, so that an option
// without a row here fails.

#include "tests/app/program.h"

#include <catch2/catch.hpp>

#include <map>
#include <regex>
#include <set>
#include <vector>

using namespace program;
namespace fs = std::filesystem;

namespace {

std::string const book = R"(X:1
T:The Weir
C:nobody
R:reel
M:4/4
L:1/8
Q:1/4=90
K:G
|:"G"G2B2 d2B2|"C"c2e2 "D"d2A2|"Em"B2G2 "Am"A2E2|"D7"F2A2 "G"G4:|
|:"G/B"d2g2 b2g2|"C"e2c2 "G"d2B2|"Am"c2A2 "D"B2F2|"D7"A2F2 "G"G4:|

X:2
T:The Ford
M:3/4
L:1/4
K:D
"D"dfa|"G"gbg|"A7"ece|"D"d3|]

X:3
T:The Mill
M:6/8
L:1/8
K:C
"C"ceg gec|"F"fac' "G"bgd|"C"c3 c3|]
)";

struct Row {
    std::string option;
    std::string with; // words that must change what is made
    std::string off;  // words that must be refused; empty: any word is right
    std::string beside = {}; // goes into both calls
};

// Of all verbs that list them.
std::vector<Row> const rows{
    {"--tune", "--tune 2", "--tune 99"},
    {"--harp", "--harp lap26", "--harp none"},
    {"--harp-file", "--harp-file HARPS", "--harp-file none.json"},
    {"--tuning", "--tuning C", "--tuning Q"},
    {"--levers", "--levers CFB", "--levers Q"},
    {"--names", "--names number", "--names odd"},
    {"--hand", "--hand child7", "--hand huge"},
    {"--level", "--level 1", "--level 6"},
    {"--tempo", "--tempo 280", "--tempo 5"},
    {"--passes", "--passes varied", "--passes odd", "--slider sameness=0"},
    {"--key", "--key D", "--key H"},
    {"--right", "--right full", "--right odd"},
    {"--lock", "--lock 1=rest", "--lock 99=rest"},
    {"--setting", "--setting 1", "--setting 99"},
    {"--introduction", "--introduction 2", "--introduction 3"},
    {"--ending", "--ending 4", "--ending 3"},
    {"--form", "--form bare,fuller", "--form odd"},
    {"--manner", "--manner full", "--manner odd"},
    {"--slider", "--slider fullness=200", "--slider luck=100"},
    {"--pattern", "--pattern '1 10 8'", "--pattern 1-99"},
    {"--patterns", "--patterns PATTERNS", "--patterns none.json"},
    {"--title", "--title Her", ""},
    {"--composer", "--composer Her", ""},
    {"--source", "--source Her", ""},
    {"--arranger", "--arranger Her", ""},
    {"--copyright", "--copyright Her", ""},
    {"--note", "--note Her", ""},
    {"--paper", "--paper letter", "--paper a5"},
    {"--print-size", "--print-size large", "--print-size odd"},
    {"--resolution", "--resolution 60", "--resolution 7", "-o OUT/r.png"},
    {"--coloured", "--coloured", ""},
    {"--note-names", "--note-names", ""},
    {"--string-path", "--string-path", ""},
    {"--brackets", "--brackets all", "--brackets odd"},
    {"--sheet", "--sheet lead", "--sheet odd"},
    {"--set", "--set 2,1", "--set 1,99"},
    {"--any-order", "--any-order", "", "--set 1,3,2"},
    {"--levels", "--levels 1-2", "--levels 0-9"},
    {"--at", "--at 60%", "--at 5%"},
    {"--passage", "--passage 2-3", "--passage 90-99"},
    {"--hands", "--hands left", "--hands none"},
    {"--count-in", "--count-in", ""},
    {"--click", "--click", ""},
    {"--times", "--times 2", "--times 0"},
    {"--lilt", "--lilt 60", "--lilt 101"},
    {"--slowing", "--slowing 100", "--slowing 101"},
    {"--practice", "--practice", ""},
    {"--pitch", "--pitch 432", "--pitch 9"},
    {"--steps", "--steps 60-100/20x1", "--steps 60-100"},
    {"--roll", "--roll 120", "--roll 9", "--lock 1=1~5~8"},
    {"--balance", "--balance 60", "--balance 101"},
    {"--bar-before", "--bar-before", "", "--passage 2-3"},
    {"--temperament", "--temperament meantone", "--temperament E=99"},
    {"--halo", "--halo 80", "--halo 101"},
    {"--json", "--json", ""},
    {"--by", "--by cost", "--by odd"},
    {"--to", "--to mid", "--to docx"},
    {"--part", "--part 2/2", "--part 3/2"},
    {"--tell", "--tell", ""},
    {"--view", "--view bank", "--view odd"},
    {"--size", "--size 600x400", "--size 1x1"},
    {"--scale", "--scale 2", "--scale 9"},
    {"--theme", "--theme dark", "--theme odd"},
    {"--meters", "--meters 3/4", "--meters 3/5"},
};
// Those that have tests of their own: chords and snags need tunes of another kind, jobs and
// resume change only who does the work, and which fonts a machine has is not known here.
std::set<std::string> const elsewhere{"--help", "--output", "--chords", "--mend", "--jobs",
                                      "--resume", "--font"};

class Trial {
public:
    explicit Trial(std::string verb, std::string words)
        : m_verb(std::move(verb)), m_words(std::move(words))
    {
        m_folder.file("book.abc", book);
        std::string harps =
            "{\"sallow_harps\":1,\"harps\":[{\"id\":\"willow\",\"name\":\"Willow\","
            "\"lowest\":\"C2\",\"strings\":29,\"tuning\":\"C\",\"without_lever\":[],"
            "\"wound\":[1,2],\"gaps_mm\":[";
        for (int i = 0; i < 29; ++i) harps += i == 0 ? "15" : ",15";
        m_folder.file("harps.json", harps + "]}]}");
        m_folder.file("patterns.json",
                      R"~({"sallow_patterns":1,"patterns":[{"pattern":"1 10 8"},{"pattern":"5 1 5"}]})~");
    }

    // Status, and all that the call printed and saved.
    std::pair<int, std::string> made(std::string const& options)
    {
        std::string words = m_verb + ' ' + m_words + ' ' + options;
        auto const put = [&words](std::string const& word, std::string const& value) {
            for (auto at = words.find(word); at != std::string::npos; at = words.find(word))
                words.replace(at, word.size(), value);
        };
        put("BOOK", m_folder.at("book.abc"));
        put("HARPS", m_folder.at("harps.json"));
        put("PATTERNS", m_folder.at("patterns.json"));
        put("OUT", m_folder.at("out"));
        fs::remove_all(m_folder.at("out"));
        fs::create_directories(m_folder.at("out"));
        Outcome const outcome = sallow(words);
        std::map<std::string, std::string> files; // by name
        for (auto const& entry : fs::recursive_directory_iterator(m_folder.at("out")))
            if (entry.is_regular_file() && entry.path().filename() != ".sallow-batch")
                files[entry.path().string()] = contents(entry.path());
        std::string all = outcome.out;
        for (auto const& [name, text] : files) all += '\n' + name + '\n' + text;
        return {outcome.status, all};
    }

    std::set<std::string> options() const
    {
        std::string const help = sallow(m_verb + " --help").out;
        std::regex const option("(^|\\n) +(-[a-z],)?(--[a-z-]+)");
        std::set<std::string> names;
        for (std::sregex_iterator it(help.begin(), help.end(), option), end; it != end; ++it)
            names.insert((*it)[3].str());
        return names;
    }

private:
    std::string m_verb;
    std::string m_words;
    Folder m_folder;
};

Row const* rowOf(std::string const& option, std::vector<Row> const& own)
{
    for (std::vector<Row> const* const table : {&own, &rows})
        for (Row const& row : *table)
            if (row.option == option) return &row;
    return nullptr;
}

// `own`: rows that this verb has instead.
void tryAll(std::string const& verb, std::string const& words, std::vector<Row> const& own = {})
{
    Trial trial(verb, words);
    std::map<std::string, std::pair<int, std::string>> plain; // by words beside
    for (std::string const& option : trial.options()) {
        if (elsewhere.contains(option)) continue;
        CAPTURE(verb, option);
        Row const* const found = rowOf(option, own);
        CHECK(found != nullptr);
        if (found == nullptr) continue;
        if (!plain.contains(found->beside)) plain[found->beside] = trial.made(found->beside);
        auto const& [status, without] = plain[found->beside];
        REQUIRE(status == 0);
        auto const [changed, with] = trial.made(found->beside + ' ' + found->with);
        CHECK(changed == 0);
        bool const same = with == without;
        CHECK_FALSE(same);
        if (found->off.empty()) continue;
        int const refused = trial.made(found->beside + ' ' + found->off).first;
        CHECK((refused == 2 || refused == 3));
    }
}

} // namespace

TEST_CASE("Each option of arrange changes what it should and refuses what it should", "[options]")
{
    tryAll("arrange", "BOOK -o OUT/a.plan.json -o OUT/a.svg -o OUT/a.sallow -o OUT/a.ogg",
           {{"--lilt", "--lilt 60", "--lilt 101", "--tune 3"}}); // a jig in quavers
}

TEST_CASE("Each option of batch changes what it should and refuses what it should", "[options]")
{
    tryAll("batch", "BOOK -o OUT --to plan.json,svg,sallow,ogg",
           {{"--lock", "--lock 1=rest", "--lock 1.x=rest"},
            {"--passage", "--passage 2-3", "--passage 3-2"}});
}

TEST_CASE("Each option of weigh changes what it should and refuses what it should", "[options]")
{
    tryAll("weigh", "BOOK -o OUT/l.json");
}

TEST_CASE("Each option of keys changes what it should and refuses what it should", "[options]")
{
    tryAll("keys", "BOOK --tuning C", {{"--tuning", "--names number", "--tuning Q"},
            {"--pattern", "--pattern '5 1 5'", "--pattern 1-99"}});
}

TEST_CASE("Each option of patterns changes what it should and refuses what it should",
          "[options]")
{
    tryAll("patterns", "");
}

TEST_CASE("Each option of handout changes what it should and refuses what it should",
          "[options]")
{
    tryAll("handout", "-o OUT/h.svg",
           {{"--patterns", "--patterns 1-5-10", "--patterns 1-99"},
            {"--levers", "--levers none", "--levers Q", "--key Eb"}});
}

TEST_CASE("Each option of drill changes what it should and refuses what it should", "[options]")
{
    // A pattern of her own is drilled where she keeps it.
    tryAll("drill", "BOOK -o OUT/d.svg",
           {{"--pattern", "--pattern '1 10 8' --lock '1=1 10 8'", "--pattern 1-99"},
            {"--patterns", "--patterns PATTERNS --lock '1=1 10 8'", "--patterns none.json"}});
}

TEST_CASE("Each option of picture changes what it should and refuses what it should",
          "[options]")
{
    std::string const sheet = "--view sheet --size 1000x1400";
    tryAll("picture", "BOOK -o OUT/p.png",
           {{"--title", "--title Her", "", sheet},
            {"--composer", "--composer Her", "", sheet},
            {"--source", "--source Her", "", sheet},
            {"--arranger", "--arranger Her", "", sheet},
            {"--copyright", "--copyright Her", "", sheet},
            {"--note", "--note Her", "", sheet},
            {"--right", "--right full", "--right odd", sheet}});
}

TEST_CASE("Each option of check changes what it should", "[options]")
{
    tryAll("check", "BOOK");
}

TEST_CASE("Each option of tunes changes what it should and refuses what it should", "[options]")
{
    tryAll("tunes", "BOOK",
           {{"--words", "--words mill", ""},
            {"--kind", "--kind reel", ""},
            {"--key", "--key D", "--key H"},
            {"--meter", "--meter 6/8", "--meter odd"},
            {"--notes", "--notes '5 1 3 5'", "--notes x!"},
            {"--arranged", "--arranged yes", "--arranged odd"}});
}
