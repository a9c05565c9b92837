// No file is lost by a call, whatever names it uses: through the real program, on a real disk. The
// rules are common practice of programs that save files (no source).

#include "tests/app/program.h"

#include <catch2/catch.hpp>

#include <fcntl.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>

using namespace program;
namespace fs = std::filesystem;

namespace {

std::string second()
{
    std::string text = good;
    text.replace(text.find("T:Test"), 6, "T:Tock");
    return text; // numbered X:1 like the first
}

} // namespace

TEST_CASE("An output never replaces the file that is read, by whatever name it is called",
          "[trust]")
{
    Folder folder;
    std::string const in = folder.file("t.abc", good + '\n' + second());
    std::string const before = contents(in);
    fs::create_symlink("t.abc", folder.path / "link.abc");
    fs::create_hard_link(in, folder.path / "twin.abc");
    for (std::string const& out :
         {in, folder.at("./t.abc"), folder.at("link.abc"), folder.at("twin.abc")}) {
        CAPTURE(out);
        Outcome const outcome = sallow("arrange " + in + " -o " + out);
        CHECK(outcome.status == 2);
        CHECK(outcome.said.find("replace") != std::string::npos);
        CHECK(contents(in) == before);
    }
    // A whole book, whose second tune would be written over another book that is read.
    fs::create_directories(folder.path / "in");
    folder.file("in/a.abc", good);
    std::string const other = folder.file("in/a-1.abc", second());
    std::string const kept = contents(other);
    CHECK(sallow("batch " + folder.at("in") + " --to abc -o " + folder.at("in")).status == 2);
    CHECK(contents(other) == kept);
}

TEST_CASE("Outputs of one name are made different, and that is said", "[trust]")
{
    Folder folder;
    std::string const in = folder.file("t.abc", good + '\n' + second());
    Outcome const book = sallow("arrange " + in + " --tune all -o " + folder.at("o.abc"));
    CHECK(book.status == 0);
    CHECK(contents(folder.at("o-1.abc")).find("T:Test") != std::string::npos);
    CHECK(contents(folder.at("o-1-2.abc")).find("T:Tock") != std::string::npos);
    CHECK(book.said.find("o-1-2.abc") != std::string::npos);
    Outcome const twice =
        sallow("arrange " + in + " -o " + folder.at("x.mid") + " -o " + folder.at("./x.mid"));
    CHECK(twice.status == 0);
    CHECK(fs::exists(folder.at("x.mid")));
    CHECK(fs::exists(folder.at("x-2.mid")));
}

TEST_CASE("A file that is saved again keeps its links, its permissions and its protection",
          "[trust]")
{
    Folder folder;
    std::string const in = folder.file("t.abc", good);
    for (std::string const kind : {"mid", "wav"}) {
        CAPTURE(kind);
        std::string const out = folder.file("o." + kind, "old");
        fs::permissions(out, fs::perms::owner_read | fs::perms::owner_write);
        fs::create_symlink("o." + kind, folder.path / ("link." + kind));
        REQUIRE(sallow("arrange " + in + " -o " + folder.at("link." + kind)).status == 0);
        CHECK(fs::is_symlink(folder.at("link." + kind)));
        CHECK(contents(out) != "old");
        CHECK(fs::status(out).permissions() ==
              (fs::perms::owner_read | fs::perms::owner_write));

        std::string const one = folder.file("one." + kind, "old");
        fs::create_hard_link(one, folder.path / ("two." + kind));
        REQUIRE(sallow("arrange " + in + " -o " + one).status == 0);
        CHECK(contents(folder.at("two." + kind)) == contents(one));
        CHECK(fs::hard_link_count(one) == 2);

        std::string const shut = folder.file("shut." + kind, "old");
        fs::permissions(shut, fs::perms::owner_read);
        Outcome const refused = sallow("arrange " + in + " -o " + shut);
        CHECK(refused.status == 5);
        CHECK(refused.said.find("write-protected") != std::string::npos);
        CHECK(contents(shut) == "old");
    }
    // A user's own file of the name that drafts once had stays.
    std::string const mine = folder.file("z.wav.part", "mine");
    CHECK(sallow("arrange " + in + " -o " + folder.at("z.wav")).status == 0);
    CHECK(contents(mine) == "mine");
}

TEST_CASE("What cannot be written is said in plain words, and nothing is left", "[trust]")
{
    Folder folder;
    std::string const in = folder.file("t.abc", good);
    fs::create_symlink("round.mid", folder.path / "round.mid");
    fs::create_directories(folder.path / "folder.mid");
    struct Row {
        std::string out;
        char const* said;
    };
    for (Row const& row : {Row{folder.at("none/a.wav"), "there is no such folder"},
                           Row{folder.at("none/a.pdf"), "there is no such folder"},
                           Row{folder.at(std::string(260, 'a') + ".mid"), "too long"},
                           Row{folder.at(std::string(260, 'a') + ".wav"), "too long"},
                           Row{folder.at("round.mid"), "circle"},
                           Row{folder.at("folder.mid"), "a folder of that name"}}) {
        CAPTURE(row.out);
        Outcome const outcome = sallow("arrange " + in + " -o " + row.out);
        CHECK(outcome.status == 5);
        CHECK(outcome.said.find(row.said) != std::string::npos);
        CHECK(lines(outcome.said) == 1);
    }
    CHECK(folder.count() == 3);
    // A name as long as the disk allows is written.
    CHECK(sallow("arrange " + in + " -o " + folder.at(std::string(251, 'a') + ".mid")).status ==
          0);
}

TEST_CASE("A full disk leaves the old file as it was, for every command and kind of file",
          "[trust]")
{
    // The shell's limit on the size of a file stands for a disk that is full: every kind is
    // longer.
    Folder folder;
    std::string tune = head;
    for (int i = 0; i < 32; ++i) tune += i % 2 ? "\"Am7\"A2c2e2a2|\n" : "\"G\"GABc d2B2|\n";
    std::string const in = folder.file("t.abc", tune);
    std::vector<std::pair<std::string, std::string>> calls;
    for (char const* kind : {"pdf", "png", "svg", "musicxml", "mxl", "abc", "mid", "wav",
                             "flac", "ogg", "txt", "html", "plan.json", "sallow"})
        calls.emplace_back("arrange " + in, kind);
    for (char const* kind : {"json", "bin"}) calls.emplace_back("weigh " + in, kind);
    for (char const* kind : {"pdf", "png", "svg"}) {
        calls.emplace_back("handout --key G --patterns 1-5-8", kind);
        calls.emplace_back("drill " + in, kind);
    }
    calls.emplace_back("picture " + in, "png");
    for (auto const& [words, kind] : calls) {
        CAPTURE(words.substr(0, 8), kind);
        std::string const out = folder.file("o." + kind, "old");
        int const there = folder.count();
        Outcome const outcome = sallow(words + " -o " + out, "trap '' XFSZ; ulimit -f 1; ");
        CHECK(outcome.status == 5);
        CHECK(contents(out) == "old");
        CHECK(folder.count() == there);
        CHECK(outcome.said.find("larger than is allowed") != std::string::npos);
    }
    Outcome const batch = sallow("batch " + in + " --to mid -o " + folder.at("out"),
                                 "trap '' XFSZ; ulimit -f 1; ");
    CHECK(batch.status == 5);
    for (auto const& entry : fs::directory_iterator(folder.path / "out"))
        CHECK(entry.path().filename() == ".sallow-batch"); // what --resume goes by
}

TEST_CASE("What is printed to a full disk ends with 5", "[trust]")
{
    if (!fs::exists("/dev/full")) {
        WARN("SKIPPED: this system has no /dev/full");
        return;
    }
    Folder folder;
    std::string const in = folder.file("t.abc", good);
    for (std::string const& words :
         {"check " + in, "keys " + in, std::string("patterns"), std::string("--help"),
          std::string("arrange --help"), "check --json " + in})
        CHECK(sallow(words, "", "/dev/full").status == 5);
}

TEST_CASE(
    "What is made for a named moment has the same bytes from call to call, in any language",
    "[trust]")
{
    Folder folder;
    std::string const in = folder.file("t.abc", good);
    for (char const* kind : {"pdf", "svg", "png", "wav", "ogg", "flac", "mid", "musicxml",
                             "mxl", "abc", "txt", "html", "plan.json", "sallow"}) {
        CAPTURE(kind);
        std::string const out = folder.at(std::string("o.") + kind);
        std::string first;
        // Several times: the fonts of a PDF are two, and one order in two is met by chance.
        for (char const* language : {"C", "C", "de_DE.UTF-8", "tr_TR.UTF-8", "ar_EG.UTF-8"}) {
            CAPTURE(language);
            std::string const before = std::string("SOURCE_DATE_EPOCH=1700000000 LC_ALL=") +
                                       language + " LANG=" + language + ' ';
            CHECK(sallow("arrange " + in + " -o " + out, before).status == 0);
            if (first.empty()) first = contents(out);
            CHECK(contents(out) == first);
        }
    }
}

TEST_CASE("Two calls to one name at once leave one whole file and nothing else", "[trust]")
{
    Folder folder;
    std::string const in = folder.file("t.abc", good);
    std::string const one = "arrange " + in + " -o " + folder.at("o.wav");
    std::string const both = places::program() + " arrange " + in +
                             " --tempo 200 -o " + folder.at("o.wav") + " & ";
    CHECK(sallow(one, both).status == 0);
    [[maybe_unused]] int const waited = std::system("sleep 0.1");
    for (int i = 0; i < 100 && folder.count() != 2; ++i)
        [[maybe_unused]] int const again = std::system("sleep 0.1");
    CHECK(folder.count() == 2);
    CHECK(contents(folder.at("o.wav")).starts_with("RIFF"));
}

TEST_CASE("A call that is killed while it writes leaves nothing", "[trust]")
{
    Folder folder;
    std::string const in = folder.file("t.abc", good);
    for (char const* after : {"0.02", "0.1", "0.2", "0.3", "0.5"}) {
        std::string const words = std::string("timeout -s KILL ") + after + ' ' +
                                  places::program() + " arrange " + in + " --times 20 -o " +
                                  folder.at("o.wav") + " 2>/dev/null";
        [[maybe_unused]] int const killed = std::system(words.c_str());
        CHECK(folder.count() <= 2); // the tune, and the sound if it was quick enough
        if (folder.count() == 2) CHECK(contents(folder.at("o.wav")).starts_with("RIFF"));
    }
}

TEST_CASE("Folders and names that cannot be used are told, not crashed over", "[trust]")
{
    Folder folder;
    std::string const in = folder.file("t.abc", good);
    fs::create_symlink("loop", folder.path / "loop");
    std::string const endless(5000, 'x');
    for (std::string const& before :
         {"SALLOW_USER=" + folder.at("loop") + ' ', "SALLOW_USER=/" + endless + ' ',
          "SALLOW_PATTERNS=/" + endless + ' ', "SALLOW_SHARED=/" + endless + ' ',
          "SALLOW_SHARED=" + folder.at("loop") + ' ',
          "SALLOW_SHARED=" + in + ' ', "XDG_DATA_HOME=/" + endless + ' '}) {
        CAPTURE(before.substr(0, 60));
        for (std::string const& words : {"check " + in, std::string("patterns")}) {
            Outcome const outcome = sallow(words, "export " + before + "; ");
            CHECK(outcome.status <= 5); // 70 or a signal would be a fault of the program
        }
    }
    for (std::string const& words :
         {"arrange " + folder.at("loop") + " -o " + folder.at("o.mid"),
          "check /" + endless + ".abc", "check " + folder.at("loop/x.abc"),
          "batch " + folder.at("loop") + " -o " + folder.at("out")}) {
        Outcome const outcome = sallow(words);
        CHECK(outcome.status == 3);
        CHECK(lines(outcome.said) == 1);
    }
}

TEST_CASE("A word that is neither a command nor a file is answered with the nearest command",
          "[trust]")
{
    Folder folder;
    std::string const in = folder.file("t.abc", good);
    Outcome const near = sallow("aranged " + in);
    CHECK(near.status == 2);
    CHECK(near.said.find("did you mean arrange?") != std::string::npos);
    CHECK(sallow("xyzzy").status == 2);
    CHECK(sallow("--nonsense").status == 2);
    Outcome const option = sallow("arrange " + in + " --tempi 90 -o " + folder.at("o.mid"));
    CHECK(option.status == 2);
    CHECK(option.said.find("did you mean --tempo?") != std::string::npos);
    // The window's wishes are not options: the file does not open without them.
    Outcome const window = sallow(in + " --harp lap26");
    CHECK(window.status == 2);
    CHECK(window.said.find("--harp") != std::string::npos);
    // Names that were before are gone.
    for (char const* old : {"--style plain", "--take 1", "--weight ease=150"}) {
        CAPTURE(old);
        CHECK(sallow("arrange " + in + ' ' + old + " -o " + folder.at("o.mid")).status == 2);
        CHECK_FALSE(fs::exists(folder.at("o.mid")));
    }
}

TEST_CASE("A call that is stopped says so and ends as the signal ends it", "[trust]")
{
    Folder folder;
    std::string const pipe = folder.at("slow.abc");
    REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
    for (int const signal : {SIGINT, SIGTERM}) {
        CAPTURE(signal);
        pid_t const call = ::fork();
        if (call == 0) {
            std::signal(signal, SIG_DFL);
            int const said =
                ::open(folder.at("said").c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
            ::dup2(said, STDERR_FILENO);
            ::execl(places::program().c_str(), "sallow", "check", pipe.c_str(), nullptr);
            ::_exit(127);
        }
        REQUIRE(call > 0);
        // The call waits for its tune; once this side of the pipe is open, it has begun to
        // read.
        int const tune = ::open(pipe.c_str(), O_WRONLY);
        ::kill(call, signal);
        int ended = 0;
        ::waitpid(call, &ended, 0);
        ::close(tune);
        CHECK(WIFSIGNALED(ended));
        CHECK(WTERMSIG(ended) == signal);
        CHECK(contents(folder.at("said")).find("stopped; what is saved is whole") !=
              std::string::npos);
    }
}
