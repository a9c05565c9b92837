// A property of the files under random work: whatever is edited and saved, and whenever the
// program is killed, no document is lost or unreadable.
#include "app/keeping/keeper.h"
#include "app/keeping/leftbehind.h"
#include "core/files/textfile.h"
#include "core/files/work/document.h"
#include "core/files/work/versions.h"
#include "userfolder.h"

#include <catch2/catch.hpp>

#include <chrono>
#include <csignal>
#include <random>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

using keeping::UserFolder;
namespace fs = std::filesystem;

namespace {

// What the program that is killed says of itself, through a pipe.
struct Word {
    enum Kind : int { Kept, Saved } kind; // the disk has it
    int edit;
};

constexpr int steps = 20;
constexpr int lives = 50; // so 1,000 edits, saves and kills in all

double tempoOf(int edit) { return 40 + edit / 100.0; }

int editOf(std::string const& document)
{
    auto const work = files::readDocument(document, keeping::shelf(), "test");
    REQUIRE(work);
    REQUIRE(work->abc == keeping::tuneText());
    REQUIRE(work->brief.quartersPerMinute);
    return static_cast<int>(std::lround((*work->brief.quartersPerMinute - 40) * 100));
}

// Edits, keeps, waits for the disk or not, saves or forgets, until it is killed or done.
[[noreturn]] void live(UserFolder const& user, int firstEdit, unsigned seed, int pipe)
{
    std::mt19937 random(seed);
    app::Keeper keeper(user.at("unsaved"));
    auto const say = [pipe](Word word) { (void)!::write(pipe, &word, sizeof word); };
    for (int edit = firstEdit; edit < firstEdit + steps; ++edit) {
        std::string const document =
            files::documentText(keeping::workOf(tempoOf(edit)), keeping::shelf());
        keeper.keep([document] {
            return files::Unsaved{"The Sluice Lantern", "", "", "", {}, document};
        });
        unsigned const what = random() % 4;
        if (what == 0) {
            keeper.finish();
            say({Word::Kept, edit});
        }
        if (what == 1) {
            if (!files::writeWhole(user.at("work.sallow"), document)) ::_exit(3);
            say({Word::Saved, edit});
            if (!files::keepVersion(user.at("versions"), "time " + std::to_string(edit + 100000),
                                    true, document))
                ::_exit(4);
            keeper.forget();
        }
        if (what == 2) std::this_thread::sleep_for(std::chrono::milliseconds(random() % 5));
    }
    keeper.finish();
    ::_exit(0);
}

} // namespace

TEST_CASE("After 1,000 random edits, saves and kills no document is lost or unreadable",
          "[keeping]")
{
    UserFolder const user;
    std::mt19937 random(20260301);
    int saved = -1;
    int kills = 0;
    keeping::shelf(); // read before the first fork
    for (int life = 0; life < lives; ++life) {
        int ends[2];
        REQUIRE(::pipe(ends) == 0);
        int const first = life * steps;
        auto const seed = static_cast<unsigned>(random());
        pid_t const child = ::fork();
        REQUIRE(child >= 0);
        if (child == 0) {
            ::close(ends[0]);
            live(user, first, seed, ends[1]);
        }
        ::close(ends[1]);
        // Every tenth lives to its end; the others are killed a moment after they have said so much.
        int wordsToHear = life % 10 == 9 ? -1 : static_cast<int>(random() % 6);
        int keptBefore = -1;
        for (bool speaks = true; speaks;) {
            if (wordsToHear-- == 0) {
                std::this_thread::sleep_for(std::chrono::microseconds(random() % 3000));
                ::kill(child, SIGKILL);
            }
            Word word{};
            speaks = ::read(ends[0], &word, sizeof word) == sizeof word;
            if (!speaks) break;
            if (word.kind == Word::Saved) saved = word.edit;
            keptBefore = word.edit;
        }
        ::close(ends[0]);
        int status = 0;
        ::waitpid(child, &status, 0);
        REQUIRE((WIFSIGNALED(status) || WEXITSTATUS(status) == 0));
        if (WIFSIGNALED(status)) ++kills;

        // The saved file is whole and as new as was said, or newer by the save that was cut off.
        int newest = -1;
        if (saved >= 0) {
            auto const text = files::readTextFile(user.at("work.sallow"));
            REQUIRE(text);
            newest = editOf(*text);
            CHECK(newest >= saved);
            saved = newest;
        }
        // So is what was kept aside; together they hold all that was said to be on the disk.
        std::vector<std::string> unreadable;
        for (app::LeftBehind const& left : app::leftBehind(user.at("unsaved"), &unreadable)) {
            newest = std::max(newest, editOf(left.unsaved.document));
            app::dropLeftBehind(left);
        }
        CHECK(unreadable.empty());
        CHECK(newest >= keptBefore);
        for (files::Version const& version : files::versionsIn(user.at("versions")))
            editOf(*files::readTextFile(version.file));
        CHECK(files::versionsIn(user.at("versions")).size() <= files::versionsKept + 1);
    }
    CHECK(kills > lives / 2);
    CHECK(saved > 0);
}
