// The program as a script sees it: exit status, what is said, what is written. The statuses are
// those of the command line's contract in DEVELOPERS.md.

#include "tests/app/program.h"

#include <catch2/catch.hpp>

using namespace program;
namespace fs = std::filesystem;

TEST_CASE("A tune is arranged into every kind of file the program writes", "[commandline]")
{
    Folder folder;
    std::string const in = folder.file("a.abc", good);
    std::string words = "arrange " + in;
    for (char const* ending : {".pdf", ".svg", ".png", ".mid", ".wav", ".plan.json"})
        words += " -o " + folder.at(std::string("a") + ending);
    Outcome const outcome = sallow(words);
    CHECK(outcome.said == "");
    CHECK(outcome.status == 0);
    CHECK(contents(folder.at("a.pdf")).starts_with("%PDF"));
    CHECK(contents(folder.at("a.svg")).find("<svg") != std::string::npos);
    CHECK(contents(folder.at("a.png")).starts_with("\x89PNG"));
    CHECK(contents(folder.at("a.mid")).starts_with("MThd"));
    CHECK(contents(folder.at("a.wav")).starts_with("RIFF"));
    CHECK(contents(folder.at("a.plan.json")).find("\"plan\"") != std::string::npos);
}

TEST_CASE("With a resolution a PNG is a file a page, of as many dots as the paper has inches",
          "[commandline]")
{
    Folder folder;
    // A PNG states its width in the bytes 16 to 19, highest first (PNG 1.2, 11.2.2).
    auto const width = [](std::string const& png) {
        int dots = 0;
        for (std::size_t i = 16; i < 20 && i < png.size(); ++i)
            dots = dots * 256 + static_cast<unsigned char>(png[i]);
        return dots;
    };
    std::string const in = folder.file("a.abc", good);
    CHECK(sallow("arrange " + in + " --resolution 100 -o " + folder.at("a.png")).status == 0);
    CHECK(width(contents(folder.at("a.png"))) == 827); // 210 mm are 8.27 inches

    std::string bars;
    for (int i = 0; i < 60; ++i) bars += "\"G\"GABc dcBA|";
    std::string const longer = folder.file("b.abc", head + bars + "]\n");
    CHECK(sallow("arrange " + longer + " --resolution 50 -o " + folder.at("b.png")).status ==
          0);
    CHECK(width(contents(folder.at("b-1.png"))) == 413);
    CHECK(width(contents(folder.at("b-2.png"))) == 413);
    CHECK_FALSE(fs::exists(folder.at("b.png")));
    CHECK(sallow("arrange " + in + " --resolution 100 -o " + folder.at("a.pdf")).status == 2);
}

TEST_CASE("Standard input is read for a dash", "[commandline]")
{
    Folder folder;
    std::string const in = folder.file("a.abc", good);
    CHECK(sallow("arrange - -o " + folder.at("a.mid") + " <" + in).status == 0);
    CHECK(contents(folder.at("a.mid")).starts_with("MThd"));
}

TEST_CASE("A call whose words are off is answered with 2 and one line", "[commandline]")
{
    Folder folder;
    std::string const in = folder.file("a.abc", good);
    for (std::string const& words :
         {"arrange " + in, "arrange " + in + " -o a.docx",
          "arrange " + in + " --level 9 -o a.mid", "arrange " + in + " --harp none -o a.mid",
          "arrange " + in + " --key H -o a.mid", std::string("arrange --nonsense")}) {
        CAPTURE(words);
        Outcome const outcome = sallow(words);
        CHECK(outcome.status == 2);
        CHECK(lines(outcome.said) == 1);
    }
}

TEST_CASE("Input that cannot be read is answered with 3, its place and nothing written",
          "[commandline]")
{
    struct Row {
        char const* what;
        std::string text;
        char const* place; // what the line must name
    };
    for (Row const& row : {Row{"empty", "", "bad.abc"},
                           Row{"binary",
                               std::string("\x7f"
                                           "ELF\0\1\2\0\0",
                                           9),
                               "bad.abc"},
                           Row{"no notes", head, "bad.abc"},
                           Row{"a chord that no spelling explains", head + "\"Gxyz7\"GABc|\n",
                               "line 7, column 1"},
                           Row{"the time signature changes inside a bar",
                               head + "\"G\"GA[M:3/4]Bc|\n", "line 7, column"}}) {
        CAPTURE(row.what);
        Folder folder;
        std::string const in = folder.file("bad.abc", row.text);
        Outcome const outcome =
            sallow("arrange " + in + " -o " + folder.at("a.pdf") + " -o " + folder.at("a.mid"));
        CHECK(outcome.status == 3);
        CHECK(lines(outcome.said) == 1);
        CHECK(outcome.said.find(row.place) != std::string::npos);
        CHECK(folder.count() == 1); // the input alone
    }
    CHECK(sallow("arrange no-such-file.abc -o a.mid").status == 3);
}

TEST_CASE("A good tune that cannot be arranged as asked is answered with 4 and its bar",
          "[commandline]")
{
    Folder folder;
    auto const refused = [&folder](std::string const& text, std::string const& options) {
        std::string const in = folder.file("a.abc", text);
        Outcome const outcome =
            sallow("arrange " + in + ' ' + options + " --mend no -o " + folder.at("a.mid"));
        CHECK(outcome.status == 4);
        // One line says why; each line after it what would help.
        std::string const help = "\nsallow: this would help (--mend ";
        int helps = 0;
        for (auto at = outcome.said.find(help); at != std::string::npos;
             at = outcome.said.find(help, at + 1))
            ++helps;
        CHECK(lines(outcome.said) == 1 + helps);
        CHECK(folder.count() == 1);
        return outcome.said;
    };
    // Five octaves above the tune's place: no harp has it.
    CHECK(refused(head + "\"G\"GABc|\"G\"d''''4|\n", "").find("bar 2") != std::string::npos);
    // E flat tuning with full levers has eight major keys, F sharp is none of them (trade check
    // 13).
    CHECK(refused(good, "--key F#").find("key") != std::string::npos);
    // Without chords there is a drone.
    std::string const bare = folder.file("bare.abc", head + "GABc|d4|\n");
    CHECK(sallow("arrange " + bare + " --mend no -o " + folder.at("bare.mid")).status == 0);
}

TEST_CASE("An output that cannot be written is answered with 5", "[commandline]")
{
    Folder folder;
    std::string const in = folder.file("a.abc", good);
    CHECK(sallow("arrange " + in + " -o " + folder.at("none/a.mid")).status == 5);
    CHECK(sallow("arrange " + in + " -o " + folder.at("none/a.wav")).status == 5);
}

TEST_CASE("A whole book is arranged with the number of each tune before the ending",
          "[commandline]")
{
    Folder folder;
    std::string second = good;
    second.replace(second.find("X:1"), 3, "X:7");
    std::string const in = folder.file("book.abc", good + '\n' + second);
    CHECK(sallow("arrange " + in + " --tune all -o " + folder.at("a.plan.json")).status == 0);
    CHECK(fs::exists(folder.at("a-1.plan.json")));
    CHECK(fs::exists(folder.at("a-7.plan.json")));
}

TEST_CASE("Weighing writes the lattice, checking writes nothing", "[commandline]")
{
    Folder folder;
    std::string const in = folder.file("a.abc", good);
    CHECK(sallow("weigh " + in + " -o " + folder.at("l.json")).status == 0);
    CHECK(contents(folder.at("l.json")).find("\"lattice\"") != std::string::npos);
    Outcome const checked = sallow("check " + in + " --json");
    CHECK(checked.status == 0);
    CHECK(checked.out.starts_with("{"));
    CHECK(folder.count() == 2);
}

TEST_CASE("An arrangement is saved, and arranged again from what was saved", "[commandline]")
{
    Folder folder;
    std::string const in = folder.file("a.abc", good);
    CHECK(sallow("arrange " + in + " --level 2 --harp lap26 -o " + folder.at("a.sallow") +
                 " -o " + folder.at("a.plan.json"))
              .status == 0);
    Outcome const again =
        sallow("arrange " + folder.at("a.sallow") + " -o " + folder.at("b.plan.json"));
    CHECK(again.said == "");
    CHECK(again.status == 0);
    CHECK(contents(folder.at("a.plan.json")) == contents(folder.at("b.plan.json")));
    // A saved arrangement has its own harp and hand, and may be made to fit another level.
    CHECK(sallow("arrange " + folder.at("a.sallow") + " --hand small -o " + folder.at("c.mid"))
              .status == 2);
    CHECK(sallow("arrange " + folder.at("a.sallow") + " --level 1 -o " + folder.at("c.mid"))
              .status == 0);
}

TEST_CASE("A folder of books is arranged in one call, in parts, and resumed", "[commandline]")
{
    Folder folder;
    fs::create_directories(folder.path / "in");
    std::string second = good;
    second.replace(second.find("X:1"), 3, "X:2");
    folder.file("in/a.abc", good + '\n' + second);
    folder.file("in/b.abc", good);
    std::string const words = "batch " + folder.at("in") + " -o " + folder.at("out");
    CHECK(sallow(words + " --to mid --part 1/2").status == 0);
    CHECK(fs::exists(folder.at("out/a-1.mid")));
    CHECK_FALSE(fs::exists(folder.at("out/a-2.mid")));
    CHECK(fs::exists(folder.at("out/b-1.mid")));
    auto const written = fs::last_write_time(folder.at("out/a-1.mid"));
    CHECK(sallow(words + " --to mid --resume --jobs 2").status == 0);
    CHECK(fs::exists(folder.at("out/a-2.mid")));
    CHECK(fs::last_write_time(folder.at("out/a-1.mid")) == written);
    CHECK(sallow(words + " --part 3/2").status == 2);
    // One tune that cannot be arranged does not keep the others from being written.
    folder.file("in/c.abc", head + "\"G\"GABc|\"C\"c/^c/d3|\n");
    folder.file("in/d.abc", good);
    CHECK(sallow(words + " --to mid --key asis --mend no").status == 4);
    CHECK_FALSE(fs::exists(folder.at("out/c-1.mid")));
    CHECK(fs::exists(folder.at("out/d-1.mid")));
}

TEST_CASE("An option that takes a name takes it in any case and lists the names otherwise",
          "[commandline]")
{
    Folder folder;
    std::string const in = folder.file("a.abc", good);
    std::string const words = "arrange " + in + " -o " + folder.at("a.svg");
    CHECK(sallow(words + " --paper Letter --print-size LARGE --sheet Lead").status == 0);
    Outcome const odd = sallow(words + " --paper a5");
    CHECK(odd.status == 2);
    CHECK(odd.said.find("{a4,letter}") != std::string::npos);
}

TEST_CASE("One job or two, the same tunes give the same plans byte for byte", "[commandline]")
{
    Folder folder;
    fs::create_directories(folder.path / "in");
    for (char const* name : {"in/a.abc", "in/b.abc", "in/c.abc"}) folder.file(name, good);
    std::string const words = "batch " + folder.at("in") + " --to plan.json";
    CHECK(sallow(words + " --jobs 1 -o " + folder.at("one")).status == 0);
    CHECK(sallow(words + " --jobs 2 -o " + folder.at("two")).status == 0);
    for (char const* name : {"a-1", "b-1", "c-1"}) {
        std::string const plan = std::string("/") + name + ".plan.json";
        CHECK(contents(folder.at("one") + plan) == contents(folder.at("two") + plan));
        CHECK(!contents(folder.at("one") + plan).empty());
    }
}

TEST_CASE("Own patterns, locks, sliders and takes are asked for in the call", "[commandline]")
{
    Folder folder;
    std::string const in = folder.file("a.abc", good);
    std::string const plan = folder.at("a.plan.json");
    CHECK(sallow("arrange " + in + " --lock 1=1-5-8-5-1 --lock 2.1=rest --slider ease=150 -o " +
                 plan)
              .status == 0);
    std::string const first = contents(plan);
    CHECK(first.find("\"pattern\":\"1-5-8-5-1\"") != std::string::npos);
    CHECK(first.find("\"pattern\":\"rest\"") != std::string::npos);

    std::string const mine = folder.file(
        "mine.json", R"~({"sallow_patterns": 1, "patterns": [{"pattern": "1 5 8 (4 3 1)"}]})~");
    CHECK(
        sallow("arrange " + in + " --patterns " + mine + " --lock '1=1-5-8 (4-3-1)' -o " + plan)
            .status == 0);
    CHECK(contents(plan).find("1-5-8 (4-3-1)") != std::string::npos);

    Outcome const take = sallow("arrange " + in + " --setting 1 -o " + plan);
    CHECK(take.status == 0);
    CHECK(take.said.find("Setting 1: another shape on ") != std::string::npos);
}

TEST_CASE("Wishes that cannot be met are told apart: words that are off, and hands",
          "[commandline]")
{
    Folder folder;
    std::string const in = folder.file("a.abc", good);
    struct Row {
        std::string words;
        int status;
        std::string said;
    };
    Row const row =
        GENERATE(Row{"--lock 1", 2, "write BAR=PATTERN"}, Row{"--lock 1.x=1-5", 2, "--lock"},
                 Row{"--lock 9=1-5", 2, "no chord at that bar"},
                 Row{"--lock 1=1-x", 2, "this is not a pattern"},
                 Row{"--pattern '1-5-8 (1-2-4)'", 2, "the thumb (1) goes on the highest"},
                 Row{"--slider ease", 2, "SLIDER=PERCENT"}, Row{"--slider luck=100", 2, "luck"},
                 Row{"--level 2 --lock 1=1-5-10", 4, "level 2 allows"});
    CAPTURE(row.words);
    Outcome const outcome =
        sallow("arrange " + in + " " + row.words + " -o " + folder.at("a.pdf"));
    CHECK(outcome.status == row.status);
    CHECK(outcome.said.find(row.said) != std::string::npos);
    CHECK(lines(outcome.said) == 1);
    CHECK(!fs::exists(folder.at("a.pdf")));
}

TEST_CASE("The list of patterns checks and shows those of the call", "[commandline]")
{
    Outcome const listed = sallow("patterns --pattern '1 5 8 10 8'");
    CHECK(listed.status == 0);
    CHECK(listed.out.find("1-5-8-10-8") != std::string::npos);
    CHECK(listed.out.find("4-3-2-1-2") != std::string::npos);
    CHECK(listed.out.find("1-low5") != std::string::npos);
    CHECK(sallow("patterns --pattern '1-99'").status == 2);
}

TEST_CASE("What would help is said where levers stand in the way, and done when asked for",
          "[commandline]")
{
    Folder folder;
    std::string const tune =
        folder.file("narrow.abc", "X:1\nT:The Narrow Bridge\nM:4/4\nL:1/8\nQ:1/4=100\nK:G\n"
                                  "\"G\"G2B2 d2B2|\"C\"c^cd2 \"G\"B4|\"G\"G8|]\n");
    std::string const asWritten = "arrange " + tune + " --key asis";
    Outcome const refused = sallow(asWritten + " --mend no -o " + folder.at("o.mid"));
    CHECK(refused.status == 4);
    CHECK(refused.said.find("--mend octave") != std::string::npos);
    CHECK(refused.said.find("Leave out the C\u266f5 in bar 2.") != std::string::npos);
    CHECK_FALSE(fs::exists(folder.at("o.mid")));
    Outcome const leftOut =
        sallow(asWritten + " --mend leave-out -o " + folder.at("o.plan.json"));
    CHECK(leftOut.status == 0);
    CHECK(leftOut.said.find("C\u266f5 left out") != std::string::npos);
    CHECK(contents(folder.at("o.plan.json")).find("\"way\":\"leave-out\"") !=
          std::string::npos);
    // A passing note between C and D: by itself the note before rings on through it.
    Outcome const held = sallow(asWritten + " -o " + folder.at("h.plan.json"));
    CHECK(held.status == 0);
    CHECK(held.said.find("note before rings on") != std::string::npos);
    CHECK(contents(folder.at("h.plan.json")).find("\"way\":\"held\"") != std::string::npos);
}

TEST_CASE("Keys as JSON carry cost, levers raised and notes lost beside what they always had",
          "[commandline]")
{
    Folder folder;
    std::string const tune = folder.file(
        "weir.abc", "X:1\nT:The Weir\nM:4/4\nL:1/4\nK:Dmix\n\"D\"d2 A2|\"C\"c2 G2|\"D\"d4|]\n");
    Outcome const keys = sallow("keys " + tune + " --json");
    REQUIRE(keys.status == 0);
    for (char const* field :
         {"\"key\"", "\"mode\": \"mixolydian\"", "\"moved_semitones\"", "\"possible\"",
          "\"setup\"", "\"setup_line\"", "\"flips\"", "\"room_below\"", "\"rank\"",
          "\"reason\"", "\"levers_raised\"", "\"notes_lost\"", "\"cost\"", "\"chords\""}) {
        CAPTURE(field);
        CHECK(keys.out.find(field) != std::string::npos);
    }
}

TEST_CASE("A set is told and written with what is turned between its tunes", "[commandline]")
{
    Folder folder;
    std::string const book =
        folder.file("set.abc", "X:1\nT:One\nM:4/4\nL:1/4\nK:G\n\"G\"GBdb|\"G\"g4|]\n\n"
                               "X:2\nT:Two\nM:4/4\nL:1/4\nK:D\n\"D\"dfad'|\"D\"d4|]\n");
    Outcome const told = sallow("keys " + book + " --set 1,2");
    REQUIRE(told.status == 0);
    CHECK(told.out.find("1. One") != std::string::npos);
    CHECK(told.out.find("2. Two") != std::string::npos);
    Outcome const written =
        sallow("arrange " + book + " --set 2,1 --title Both -o " + folder.at("s.mid") + " -o " +
               folder.at("s.pdf") + " -o " + folder.at("s.txt") + " -o " + folder.at("s.abc"));
    CHECK(written.status == 0);
    CHECK(written.said.find("before \"One\": Flip 6C 5C 4C 3C down (about 3 s)") !=
          std::string::npos);
    CHECK(fs::exists(folder.at("s.mid"))); // one of the whole set
    CHECK(fs::exists(folder.at("s.pdf")));
    CHECK_FALSE(fs::exists(folder.at("s-1.mid")));
    std::string const words = contents(folder.at("s.txt"));
    CHECK(words.find("Both\n") == 0);
    CHECK(words.find("Next: One. Flip 6C 5C 4C 3C down (about 3 s).") != std::string::npos);
    CHECK(words.find("Before this tune: Flip 6C 5C 4C 3C down (about 3 s).") !=
          std::string::npos);
    CHECK(fs::exists(folder.at("s-1.abc"))); // of a kind that holds one tune
    CHECK(fs::exists(folder.at("s-2.abc")));
    CHECK(sallow("keys " + book + " --set 1,9").status != 0);
}

TEST_CASE("A harp of one's own is taken from its file, and its strings are named as asked",
          "[commandline]")
{
    Folder folder;
    std::string harps =
        "{\"sallow_harps\":1,\"harps\":[{\"id\":\"willow\",\"name\":\"Willow\","
        "\"lowest\":\"C2\",\"strings\":29,\"tuning\":\"C\",\"without_lever\":[],"
        "\"wound\":[1,2],\"gaps_mm\":[";
    for (int i = 0; i < 29; ++i) harps += i == 0 ? "15" : ",15";
    std::string const file = folder.file("harps.json", harps + "]}]}");
    std::string const tune =
        folder.file("weir.abc", "X:1\nT:The Weir\nM:4/4\nL:1/4\nK:G\n\"G\"G2 B2|\"G\"d4|]\n");
    Outcome const own = sallow("arrange " + tune + " --harp-file " + file +
                               " --names harp -o " + folder.at("o.plan.json"));
    REQUIRE(own.status == 0);
    CHECK(contents(folder.at("o.plan.json")).find("\"willow\"") != std::string::npos);
    std::string const damaged = folder.file("bad.json", "{\"sallow_harps\":1");
    CHECK(sallow("arrange " + tune + " --harp-file " + damaged + " -o " + folder.at("p.mid"))
              .status == 3);
    // Saved, it needs the file no more.
    REQUIRE(sallow("arrange " + tune + " --harp-file " + file + " -o " + folder.at("o.sallow"))
                .status == 0);
    CHECK(sallow("arrange " + folder.at("o.sallow") + " -o " + folder.at("q.mid")).status == 0);
}

TEST_CASE("Handouts, drills and packs of levels are written, and refused with a reason",
          "[commandline]")
{
    Folder const folder;
    std::string const tune = folder.file(
        "tune.abc", "X:1\nT:The Weir\nM:4/4\nL:1/4\nK:G\n\"G\"GBdg|\"C\"edcB|\"D\"A2F2|"
                    "\"G\"G4|]\n");
    CHECK(sallow("handout --key D --patterns 1-5-8,1-5-10 -o " + folder.at("h.pdf")).status ==
          0);
    CHECK(contents(folder.at("h.pdf")).substr(0, 5) == "%PDF-");
    CHECK(sallow("drill " + tune + " -o " + folder.at("d.svg") + " --paper letter").status ==
          0);
    CHECK(contents(folder.at("d.svg")).find("<svg") != std::string::npos);
    CHECK(sallow("arrange " + tune + " --levels 1-3 -o " + folder.at("l.pdf") + " -o " +
                 folder.at("l.plan.json"))
              .status == 0);
    CHECK(fs::exists(folder.at("l.pdf")));
    for (char const* name : {"l-level1.plan.json", "l-level2.plan.json", "l-level3.plan.json"})
        CHECK(fs::exists(folder.at(name)));

    CHECK(sallow("arrange " + tune + " --title \"Her own\" --arranger \"A. W.\" -o " +
                 folder.at("t.sallow"))
              .status == 0);
    CHECK(contents(folder.at("t.sallow")).find("A. W.") != std::string::npos);

    CHECK(sallow("handout --key H -o " + folder.at("x.pdf")).status == 2);
    CHECK(sallow("handout -o " + folder.at("x.mid")).status == 2);
    CHECK(sallow("arrange " + tune + " --levels 0-9 -o " + folder.at("x.pdf")).status == 2);
    CHECK_FALSE(fs::exists(folder.at("x.pdf")));
}

TEST_CASE("A strain without chords gets them, and a last bar that says none closes, unless "
          "they are kept",
          "[cli]")
{
    Folder folder;
    std::string tune = head;
    for (int bar = 0; bar < 8; ++bar) tune += bar % 2 ? "\"D\"A2d2|" : "\"G\"GABd|";
    tune += "\n";
    for (int bar = 0; bar < 8; ++bar) tune += bar % 2 ? "E2e2|" : "cBAG|";
    std::string const half = folder.file("half.abc", tune + "\n");
    Outcome const filled = sallow("arrange " + half + " -o " + folder.at("a.abc"));
    CHECK(filled.status == 0);
    CHECK(filled.said.find("bar 9 to bar 16 have no chords; chords for them are found") !=
          std::string::npos);
    Outcome const kept = sallow("arrange " + half + " --chords keep -o " + folder.at("b.abc"));
    CHECK(kept.status == 0);
    CHECK(kept.said.find("chords for them") == std::string::npos);
    std::string const open = folder.file("open.abc", head + "\"G\"GABd|\"D7\"d2A2|G4|]\n");
    CHECK(sallow("arrange " + open + " -o " + folder.at("c.txt")).said.find("G is put there") !=
          std::string::npos);
    CHECK(contents(folder.at("c.txt")).find("Bar 3, G.") != std::string::npos);
    CHECK(sallow("arrange " + open + " --chords keep -o " + folder.at("d.txt"))
              .said.find("is put there") == std::string::npos);
}

TEST_CASE(
    "One call's sheets and files slow alike at the end, as is usual for the kind or as it says",
    "[cli][slowing]")
{
    Folder folder;
    auto const tune = [&folder](std::string const& kind) {
        std::string const name = kind + ".abc";
        return folder.file(name,
                           "X:1\nT:Test\nR:" + kind +
                               "\nM:4/4\nL:1/4\nQ:1/4=80\nK:G\n\"G\"GABc|\"D\"AGFA|\"G\"G4|\n");
    };
    // Whether words, ABC, MusicXML and MIDI (meta events FF 51, of which one is the tune's)
    // slow.
    auto const slows = [&folder](std::string const& words) {
        Outcome const outcome = sallow("arrange " + words + " -o " + folder.at("a.txt") +
                                       " -o " + folder.at("a.abc") + " -o " +
                                       folder.at("a.musicxml") + " -o " + folder.at("a.mid"));
        CHECK(outcome.status == 0);
        auto const has = [&folder](char const* name, std::string_view part) {
            return contents(folder.at(name)).find(part) != std::string::npos;
        };
        std::string const midi = contents(folder.at("a.mid"));
        int tempos = 0;
        for (auto at = midi.find("\xFF\x51\x03"); at != std::string::npos;
             at = midi.find("\xFF\x51\x03", at + 1))
            ++tempos;
        bool const told = has("a.txt", "low down");
        CHECK(has("a.abc", "rit.") == told);
        CHECK(has("a.musicxml", "rit.") == told);
        return std::pair{told, tempos > 1};
    };
    CHECK(slows(tune("air")) == std::pair{true, true});
    CHECK(slows(tune("air") + " --slowing 0") == std::pair{false, false});
    CHECK(slows(tune("air") + " --slowing 10") ==
          std::pair{false, true}); // too little to tell of
    CHECK(slows(tune("reel")) == std::pair{false, false});
    CHECK(slows(tune("reel") + " --slowing 100") == std::pair{true, true});
    CHECK(slows(tune("air") + " --sheet lead") == std::pair{false, true});
    Outcome const nowhere =
        sallow("arrange " + tune("air") + " --slowing 50 -o " + folder.at("b.plan.json"));
    CHECK(nowhere.status == 2);
    CHECK_FALSE(fs::exists(folder.at("b.plan.json")));
}
