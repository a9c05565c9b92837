#include "app/keeping/keeper.h"

#include "app/keeping/leftbehind.h"
#include "app/keeping/ownership.h"
#include "core/files/textfile.h"
#include "userfolder.h"

#include <QSignalSpy>
#include <catch2/catch.hpp>

#include <cerrno>
#include <chrono>
#include <cstring>
#include <thread>

using keeping::UserFolder;
namespace fs = std::filesystem;

namespace {

files::Unsaved unsaved(std::string const& title)
{
    return {title, "", "/tunes/book.abc", "2026-03-01T10:00:00.000", {"level 4"}, "document"};
}

std::string keptIn(fs::path const& file)
{
    auto const text = files::readTextFile(file);
    if (!text) return {};
    auto const read = files::readUnsaved(*text, "test");
    return read ? read->title : std::string();
}

} // namespace

TEST_CASE("Unsaved work reads back with every word", "[keeping]")
{
    files::Unsaved const work{"The “Weir”\n", "/a/b.sallow", "/a/b.abc",
                              "2026-03-01T10:00:00.000", {"level 4", "“1-5-9” in bar 3"},
                              "{\"sallow\": 2}\n"};
    auto const again = files::readUnsaved(files::unsavedText(work), "test");
    REQUIRE(again);
    CHECK(*again == work);
    CHECK(files::readUnsaved("{\"sallow_unsaved\": 2}", "test").error().code ==
          base::FaultCode::FileUnreadable);
    std::string const whole = files::unsavedText(work);
    for (std::size_t cut = 0; cut + 2 < whole.size(); cut += 7)
        CHECK_FALSE(files::readUnsaved(whole.substr(0, cut), "test"));
}

TEST_CASE("What is kept last is in the file, and what is forgotten leaves none", "[keeping]")
{
    UserFolder const user;
    app::Keeper keeper(user.at("unsaved"));
    for (char const* title : {"one", "two", "three"})
        keeper.keep([title] { return unsaved(title); });
    keeper.finish();
    CHECK(keptIn(keeper.file()) == "three");
    keeper.forget();
    keeper.finish();
    CHECK_FALSE(fs::exists(keeper.file()));
    keeper.keep([] { return unsaved("four"); });
    keeper.finish();
    CHECK(keptIn(keeper.file()) == "four");
}

TEST_CASE("Work is written without being waited for", "[keeping]")
{
    UserFolder const user;
    app::Keeper keeper(user.at("unsaved"));
    QSignalSpy kept(&keeper, &app::Keeper::kept);
    keeper.keep([] { return unsaved("alone"); });
    for (int i = 0; i < 2000 && keptIn(keeper.file()).empty(); ++i)
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
    CHECK(keptIn(keeper.file()) == "alone");
}

TEST_CASE("Only work of programs that stopped is offered, the latest first", "[keeping]")
{
    UserFolder const user;
    app::Keeper living(user.at("unsaved"));
    living.keep([] { return unsaved("living"); });
    living.finish();
    auto dead = unsaved("dead");
    user.write("unsaved/a.unsaved", files::unsavedText(dead));
    dead.title = "dead later";
    dead.changed = "2026-03-02T10:00:00.000";
    user.write("unsaved/b.unsaved", files::unsavedText(dead));
    user.write("unsaved/c.unsaved", "{ \"sallow_unsaved\": 1, \"tit");
    std::vector<std::string> unreadable;
    {
        auto const left = app::leftBehind(user.at("unsaved"), &unreadable);
        REQUIRE(left.size() == 2);
        CHECK(left[0].unsaved.title == "dead later");
        CHECK(left[1].unsaved.title == "dead");
        CHECK(unreadable.size() == 1);
        // While it is on offer here it is not offered elsewhere.
        CHECK(app::leftBehind(user.at("unsaved")).empty());
        app::dropLeftBehind(left[0]);
    }
    auto const left = app::leftBehind(user.at("unsaved"));
    REQUIRE(left.size() == 1);
    CHECK(left[0].unsaved.title == "dead");
}

TEST_CASE("A folder that cannot be made is told, and work goes on when it can", "[keeping]")
{
    UserFolder const user;
    user.write("blocked", "a file where the folder should be");
    app::Keeper keeper(user.at("blocked") / "unsaved");
    QSignalSpy failed(&keeper, &app::Keeper::failed);
    keeper.keep([] { return unsaved("one"); });
    keeper.finish();
    CHECK(failed.count() == 1);
    fs::remove(user.at("blocked"));
    keeper.keep([] { return unsaved("two"); });
    keeper.finish();
    CHECK(keptIn(keeper.file()) == "two");
}

TEST_CASE("Two windows cannot hold one file, by whatever name", "[keeping]")
{
    UserFolder const user;
    QString const file = QString::fromStdString(user.write("tunes/a.sallow", "x").string());
    fs::create_symlink(user.at("tunes/a.sallow"), user.at("link.sallow"));
    app::Ownership first;
    app::Ownership second;
    CHECK(first.take(user.at("open"), file));
    CHECK(first.take(user.at("open"), file));
    CHECK_FALSE(second.take(user.at("open"), file));
    CHECK_FALSE(
        second.take(user.at("open"), QString::fromStdString(user.at("link.sallow").string())));
    first.letGo();
    CHECK(second.take(user.at("open"), file));
}

TEST_CASE("A read-only file is refused, a link stays a link, a full disk is told", "[keeping]")
{
    UserFolder const user;
    user.write("a", "old");
    fs::permissions(user.at("a"), fs::perms::owner_read);
    auto const refused = files::writeWhole(user.at("a"), "new");
    REQUIRE_FALSE(refused);
    CHECK(refused.error().detail == "it is write-protected");
    CHECK(*files::readTextFile(user.at("a")) == "old");
    fs::permissions(user.at("a"), fs::perms::owner_all);
    fs::create_symlink(user.at("a"), user.at("b"));
    REQUIRE(files::writeWhole(user.at("b"), "new"));
    CHECK(fs::is_symlink(user.at("b")));
    CHECK(*files::readTextFile(user.at("a")) == "new");
    // Linux: whatever is written to this device finds no room (full(4)).
    if (!fs::exists("/dev/full")) return;
    auto const full = files::writeWhole("/dev/full", "a few bytes");
    REQUIRE_FALSE(full);
    CHECK(full.error().detail == "the disk is full");
}
