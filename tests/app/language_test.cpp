// Another language through the real program: only where it is asked for, and not in what other
// programs read.

#include "tests/app/program.h"

#include <catch2/catch.hpp>

using namespace program;

namespace {

std::string spoken(Folder const& folder, std::string const& in, std::string const& words,
                   std::string const& before = {})
{
    std::string const out = folder.at("spoken.txt");
    Outcome const outcome =
        sallow("arrange " + in + " --key G -o " + out + ' ' + words, before);
    CHECK(outcome.status == 0);
    return contents(out);
}

} // namespace

TEST_CASE("A call is answered in German where it asks for that, else in English in any locale",
          "[language]")
{
    Folder folder;
    std::string const in = folder.file("a.abc", good);
    std::string const english = spoken(folder, in, "");
    std::string const german = spoken(folder, in, "--language de");
    CHECK(english.find("Left hand") != std::string::npos);
    CHECK(german.find("Linke Hand") != std::string::npos);
    CHECK(german.find("Left hand") == std::string::npos);
    CHECK(spoken(folder, in, "--language=de") == german);
    CHECK(spoken(folder, in, "--language en") == english);
    CHECK(spoken(folder, in, "", "LANG=de_DE.UTF-8 LC_ALL=de_DE.UTF-8 LANGUAGE=de ") ==
          english);

    CHECK(sallow("arrange none.abc -o a.mid --language de")
              .said.find("diese Datei gibt es nicht") != std::string::npos);
    CHECK(sallow("--help --language de").out.find("Befehle:") != std::string::npos);
    CHECK(sallow("arrange --help --language de").out.find("Schläge pro Minute") !=
          std::string::npos);
}

TEST_CASE("A language that is not spoken is refused and those that are are named", "[language]")
{
    for (char const* words :
         {"patterns --language xx", "patterns --language", "--language=xx"}) {
        CAPTURE(words);
        Outcome const outcome = sallow(words);
        CHECK(outcome.status == 2);
        CHECK(outcome.said.find("--language") != std::string::npos);
        CHECK(outcome.said.find("de") != std::string::npos);
    }
}

TEST_CASE("Members and names in data are English whatever is spoken", "[language]")
{
    Folder folder;
    std::string const in = folder.file("a.abc", good);
    std::string const words = "arrange " + in + " --key G -o ";
    CHECK(sallow(words + folder.at("e.plan.json")).status == 0);
    CHECK(sallow(words + folder.at("d.plan.json") + " --language de").status == 0);
    std::string const english = contents(folder.at("e.plan.json"));
    std::string const german = contents(folder.at("d.plan.json"));
    for (char const* name : {"\"positions\"", "\"pattern\"", "\"rhythm\"",
                             "\"mode\": \"major\"", "\"hand\": \"left\""}) {
        CAPTURE(name);
        CHECK((german.find(name) == std::string::npos) ==
              (english.find(name) == std::string::npos));
    }
    CHECK(sallow(words + folder.at("e.mid")).status == 0);
    CHECK(sallow(words + folder.at("d.mid") + " --language de").status == 0);
    CHECK(contents(folder.at("e.mid")) == contents(folder.at("d.mid")));
}
