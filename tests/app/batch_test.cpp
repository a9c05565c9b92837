// Many tunes in one call: what is saved, what is said, and what goes on after a stop.

#include "tests/app/program.h"

#include <catch2/catch.hpp>

#include <chrono>
#include <cstdlib>

using namespace program;
namespace fs = std::filesystem;

namespace {

std::string numbered(int number)
{
    std::string text = good;
    return text.replace(text.find("X:1"), 3, "X:" + std::to_string(number));
}

// For pgrep: a pattern that finds the folder's name in other processes, not in the one that asks.
std::string pattern(std::string const& path) { return "[/]" + path.substr(1); }

} // namespace

TEST_CASE("A batch walks subfolders, keeps their names, and ends with one line of counts",
          "[batch]")
{
    Folder folder;
    fs::create_directories(folder.path / "in/old/very");
    folder.file("in/a.abc", good);
    folder.file("in/old/very/a.abc", good);
    folder.file("in/bad.abc", "X:1\nT:None\nK:G\n");
    folder.file("in/worse.mid", "no midi");
    Outcome const outcome =
        sallow("batch " + folder.at("in") + " --to mid -o " + folder.at("out"));
    CHECK(outcome.status == 4);
    CHECK(fs::exists(folder.at("out/a-1.mid")));
    CHECK(fs::exists(folder.at("out/old/very/a-1.mid")));
    CHECK(outcome.said.find("3 tunes: 2 saved, 1 missing for their own sake; 1 file could not "
                            "be read\n") != std::string::npos);
}

TEST_CASE("Files that differ by their ending alone are both saved by a batch", "[batch]")
{
    Folder folder;
    fs::create_directories(folder.path / "in");
    std::string const in = folder.file("in/a.abc", good);
    REQUIRE(sallow("arrange " + in + " --sheet lead -o " + folder.at("in/a.musicxml")).status ==
            0);
    Outcome const outcome =
        sallow("batch " + folder.at("in") + " --to mid -o " + folder.at("out"));
    CHECK(outcome.status == 0);
    CHECK(fs::exists(folder.at("out/a-1.mid")));
    CHECK(fs::exists(folder.at("out/a-1-2.mid")));
    CHECK(outcome.said.find("a-1-2.mid") != std::string::npos);
}

TEST_CASE("A batch of nothing is refused with its reason", "[batch]")
{
    Folder folder;
    fs::create_directories(folder.path / "in");
    Outcome const empty = sallow("batch " + folder.at("in") + " -o " + folder.at("out"));
    CHECK(empty.status == 3);
    CHECK(empty.said.find("holds no") != std::string::npos);
    CHECK(sallow("batch " + folder.at("none") + " -o " + folder.at("out")).status == 3);
    CHECK_FALSE(fs::exists(folder.at("out")));
    std::string const in = folder.file("in/a.abc", good);
    CHECK(sallow("batch " + in + " --tune 2 -o " + folder.at("out")).status == 2);
    std::string const file = folder.file("shut", "no folder");
    CHECK(sallow("batch " + in + " -o " + file + "/out").status == 5);
}

TEST_CASE("A batch is resumed only over what the same options saved whole", "[batch]")
{
    Folder folder;
    std::string const in = folder.file("b.abc", numbered(1) + '\n' + numbered(2));
    std::string const words = "batch " + in + " --to plan.json -o " + folder.at("out");
    REQUIRE(sallow(words).status == 0);
    auto const kept = [](Outcome const& outcome) { return outcome.said; };
    CHECK(kept(sallow(words + " --resume")).find("0 saved, 2 kept") != std::string::npos);
    // An empty file is no plan.
    std::ofstream(folder.at("out/b-1.plan.json")).close();
    CHECK(kept(sallow(words + " --resume")).find("1 saved, 1 kept") != std::string::npos);
    // Other options: all is made again.
    CHECK(kept(sallow(words + " --resume --level 1")).find("2 saved") != std::string::npos);
    CHECK(contents(folder.at("out/b-1.plan.json")).find("\"level\":1") != std::string::npos);
    // A changed tune is made again.
    fs::last_write_time(in, fs::file_time_type::clock::now() + std::chrono::hours(1));
    CHECK(kept(sallow(words + " --resume --level 1")).find("2 saved") != std::string::npos);
}

TEST_CASE(
    "A practice pack is kept when the batch is resumed, and made again where a file is gone",
    "[batch]")
{
    Folder folder;
    std::string const in = folder.file("b.abc", numbered(1));
    std::string const words = "batch " + in + " --to ogg --practice -o " + folder.at("out");
    REQUIRE(sallow(words).status == 0);
    std::string const left = folder.at("out/b-1-left-slow.ogg");
    REQUIRE(fs::exists(left));
    CHECK(sallow(words + " --resume").said.find("1 kept") != std::string::npos);
    fs::remove(left);
    CHECK(sallow(words + " --resume").said.find("1 saved") != std::string::npos);
    CHECK(fs::exists(left));
}

TEST_CASE("A worker that is killed leaves its tunes named as missing, and 5", "[batch]")
{
    Folder folder;
    std::string text;
    for (int i = 1; i <= 40; ++i) text += numbered(i) + '\n';
    std::string const in = folder.file("b.abc", text);
    // The first worker that is seen is killed.
    std::string const killer =
        "(for i in $(seq 200); do p=$(pgrep -f -- '" + pattern(folder.at("out")) +
        " --tell --part 1/2' | head -1); [ -n \"$p\" ] && kill -9 $p && break; "
        "sleep 0.02; done) & ";
    Outcome const outcome = sallow(
        "batch " + in + " --jobs 2 --to wav -o " + folder.at("out"), killer);
    CHECK(outcome.status == 5);
    CHECK(outcome.said.find("X:39, \"Test\": this was not saved") != std::string::npos);
    CHECK(outcome.said.find("40 tunes: ") != std::string::npos);
}

TEST_CASE("A batch that is stopped ends its workers and leaves whole files alone", "[batch]")
{
    Folder folder;
    std::string text;
    for (int i = 1; i <= 60; ++i) text += numbered(i) + '\n';
    std::string const in = folder.file("b.abc", text);
    std::string const words = std::string("timeout -s TERM 1.5 ") + places::program() + " batch " +
                              in + " --jobs 2 --to wav -o " + folder.at("out") +
                              " 2>/dev/null";
    [[maybe_unused]] int const raw = std::system(words.c_str());
    std::string const alive = "pgrep -f -- '" + pattern(folder.at("out")) + "' >/dev/null";
    [[maybe_unused]] int const waited = std::system("sleep 1");
    CHECK(std::system(("! " + alive).c_str()) == 0);
    if (!fs::exists(folder.at("out"))) return; // it was stopped before it began
    for (auto const& entry : fs::directory_iterator(folder.at("out"))) {
        std::string const name = entry.path().filename().string();
        CAPTURE(name);
        CHECK((name == ".sallow-batch" || contents(entry.path()).starts_with("RIFF")));
    }
}

TEST_CASE("A tunebook is listed with what can be read and what cannot", "[tunes]")
{
    Folder folder;
    std::string const in = folder.file(
        "b.abc", "X:3\nT:The Weir\nR:jig\nM:6/8\nL:1/8\nK:Ador\nE|\"Am\"ABc cBA|\"G\"G3 G3|]\n\n"
                 "X:4\nT:Torn\nK:G\n\"Gxyz7\"GABc|\n\n"
                 "X:9\nT:Bare\nM:3/4\nL:1/4\nK:D\nd2A|]\n");
    Outcome const list = sallow("tunes " + in);
    CHECK(list.status == 0);
    CHECK(lines(list.out) == 3);
    for (char const* word : {"X:3", "The Weir", "jig", "6/8", "2 bars", "chords", "X:4", "Torn",
                             "X:9", "1 bar", "no chords"}) {
        CAPTURE(word);
        CHECK(list.out.find(word) != std::string::npos);
    }
}

TEST_CASE("A folder's tunes are found by words, kind, key, meter, first notes and arrangement",
          "[tunes]")
{
    Folder folder;
    folder.file("a.abc", "X:1\nT:The Weir\nR:jig\nM:6/8\nL:1/8\nK:Ador\nE|ABc cBA|G3 G3|]\n\n"
                         "X:2\nT:The Ford\nM:3/4\nL:1/4\nK:D\ndfa|gbg|\"A7\"ece|d3|]\n");
    folder.file("b.abc", "X:1\nT:The Mill\nR:Jig\nM:6/8\nL:1/8\nK:G\nGBd gdB|cea c'ae|]\n");
    auto const titles = [&](std::string const& options) {
        Outcome const list = sallow("tunes " + folder.at("") + ' ' + options);
        CHECK(list.status == 0);
        std::string out;
        for (char const* title : {"Weir", "Ford", "Mill"})
            if (list.out.find(title) != std::string::npos) out += std::string(title) + ' ';
        return out;
    };
    CHECK(titles("") == "Weir Ford Mill ");
    CHECK(titles("--words 'the we'") == "Weir ");
    CHECK(titles("--kind JIG") == "Weir Mill ");
    CHECK(titles("--key Ador") == "Weir ");
    CHECK(titles("--meter 3/4") == "Ford ");
    CHECK(titles("--kind jig --key G") == "Mill ");
    // C E G c in any key: the waltz in D and the jig in G begin so; the octave does not count.
    CHECK(titles("--notes 'f a c f'") == "Mill ");
    CHECK(titles("--notes '1 3 5 4'") == "Ford ");
    CHECK(titles("--arranged yes").empty());
    REQUIRE(sallow("arrange " + folder.at("b.abc") + " -o " + folder.at("b.sallow")).status ==
            0);
    CHECK(titles("--arranged yes") == "Mill ");
    CHECK(titles("--arranged no") == "Weir Ford ");
    Outcome const json = sallow("tunes " + folder.at("") + " --words ford --json");
    CHECK(json.out.find("\"title\":\"The Ford\"") != std::string::npos);
    CHECK(json.out.find("\"meter\":\"3/4\"") != std::string::npos);
    CHECK(json.out.find("\"arranged\":null") != std::string::npos);
    CHECK(lines(json.out) == 1);
    Outcome const off = sallow("tunes " + folder.at("") + " --notes '!!'");
    CHECK(off.status == 2);
    CHECK(off.said.find("these are not notes") != std::string::npos);
}

TEST_CASE("A lead sheet as ABC keeps notes that the harp plays otherwise", "[tunes]")
{
    Folder folder;
    std::string const in = folder.file(
        "a.abc",
        "X:1\nT:The Sill\nM:4/4\nL:1/8\nQ:1/4=120\nK:G\n\"G\"G2B2 c2^c2|\"D\"d2c2 ^c2d2|"
        "\"G\"=c2^c2 d2B2|\"G\"G8|]\n");
    Outcome const made = sallow("arrange " + in + " --level 1 --key asis --sheet lead -o " +
                                folder.at("lead.abc"));
    REQUIRE(made.status == 0);
    CHECK(made.said.find("played plain") != std::string::npos);
    std::string const lead = contents(folder.at("lead.abc"));
    CAPTURE(lead);
    CHECK(lead.find("c2^c2") != std::string::npos);
    CHECK(lead.find("d2c2") != std::string::npos);
}
