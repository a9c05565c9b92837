// Edits at random through the session: every step back leads to the beginning, every step
// forward to the end.
#include "ui/session.h"

#include "core/pattern/own.h"
#include "tests/tune/randomtunes.h"

#include "scenario.h"

#include <catch2/catch.hpp>

#include <array>
#include <random>

using namespace ui;

namespace {

// The same decisions and the same music.
void checkSame(Session const& session, proposal::Brief const& brief,
               arrange::Arrangement const& music)
{
    proposal::Brief const& now = session.brief();
    CHECK(now.tune == brief.tune);
    auto const player = [](proposal::Brief const& b) {
        return std::tie(b.harp, b.hand, b.level);
    };
    CHECK(bool(player(now) == player(brief)));
    auto const taste = [](proposal::Brief const& b) {
        return std::tie(b.book.patterns, b.weights.style, b.weights.byTerm, b.sliders,
                        b.leaning);
    };
    CHECK(bool(taste(now) == taste(brief)));
    auto const wishes = [](proposal::Brief const& b) {
        return std::tie(b.key, b.quartersPerMinute, b.passes, b.take, b.right);
    };
    CHECK(bool(wishes(now) == wishes(brief)));
    auto const decided = [](proposal::Brief const& b) {
        return std::tie(b.locks, b.fingers, b.changes, b.leverWishes, b.snagChoices);
    };
    CHECK(bool(decided(now) == decided(brief)));
    arrange::Arrangement const& sounds = session.arrangement();
    CHECK(sounds.tune == music.tune);
    CHECK(sounds.levers == music.levers);
    CHECK(sounds.rightFingers == music.rightFingers);
    REQUIRE(sounds.positions.size() == music.positions.size());
    for (arrange::PositionIndex const i : music.positions.indices()) {
        INFO("position " << i);
        CHECK(sounds.positions[i].voicing == music.positions[i].voicing);
        CHECK(sounds.positions[i].locked == music.positions[i].locked);
    }
}

class Arranger {
public:
    explicit Arranger(unsigned seed) : m_random(seed) {}

    template<typename List>
    auto oneOf(List const& list)
    {
        return list[static_cast<std::size_t>(upTo(static_cast<int>(list.size()) - 1))];
    }

    // Whether something was done; what cannot be is refused, and changes nothing.
    bool edit(Session& session)
    {
        int const positions = session.arrangement().positions.size();
        if (positions > 0) session.select(arrange::PositionIndex(upTo(positions - 1)));
        switch (upTo(22)) {
        case 0:
            return session.lockShown();
        case 1:
            return session.unlock();
        case 2:
            return session.unlockAll();
        case 3:
            return session.leaveEmpty();
        case 4:
            return session.setLevel(oneOf(scenario::tables().levels));
        case 5:
            return session.setHarp(*files::harpFrom(
                scenario::tables(), oneOf(std::array{"floor34", "lap26", "floor38"}), "Eb"));
        case 6:
            return session.setHand(oneOf(scenario::tables().hands));
        case 7:
            return session.setStyle(oneOf(scenario::tables().styles));
        case 8:
            return session.setKey(oneOf(std::array<proposal::KeyWish, 3>{
                proposal::BestKey{}, proposal::AsWritten{}, *music::keyFrom("D")}));
        case 9:
            return session.setTempo(
                oneOf(std::array<std::optional<double>, 3>{std::nullopt, 66.0, 120.0}));
        case 10:
            return session.setPasses(
                oneOf(std::array{proposal::Passes::Written, proposal::Passes::Varied}));
        case 11:
            return session.setRightHand(
                oneOf(std::array{proposal::RightHand::Bare, proposal::RightHand::Closes,
                                 proposal::RightHand::Full}));
        case 12: {
            int const percent = 10 * upTo(20);
            return session.setSlider(oneOf(scenario::tables().sliders), percent);
        }
        case 13:
            return session.resetSliders();
        case 14:
            return session.anotherTake();
        case 15: {
            tune::PageWords words = tune::pageWords(session.brief().tune);
            words.composer = oneOf(std::array{"", "the miller", "a ferryman"});
            return session.setWords(words);
        }
        case 16:
            return session.wishLever(harp::StringIndex(upTo(10)),
                                     oneOf(std::array{harp::Lever::Down, harp::Lever::Up}));
        case 17: {
            arrange::SetFinger finger;
            finger.bar = tune::BarIndex(upTo(7));
            finger.finger = 1 + upTo(3);
            return session.setFinger(finger);
        }
        case 18:
            return session.usePattern(
                *pattern::ownPatternFrom(oneOf(std::array{"1 5 3", "1 3 5 8", "1+5"})));
        case 19: {
            proposal::Brief next = session.brief();
            next.tune = randomtunes::edited(next.tune, m_random);
            if (next.tune == session.brief().tune) return false;
            return session.goBackTo(next, "notes");
        }
        default:
            return session.chooseRanked(upTo(6));
        }
    }
    int upTo(int most)
    {
        return static_cast<int>(m_random() % static_cast<unsigned>(most + 1));
    }

private:
    std::mt19937 m_random;
};

} // namespace

TEST_CASE("Whatever is edited, undoing all leads to the beginning and redoing all to the end",
          "[ui][random]")
{
    int done = 0;
    for (unsigned seed = 1; seed <= 12; ++seed) { // fixed, so that a failure can be seen again
        CAPTURE(seed);
        Session session{coreEngine(scenario::tables().levels), scenario::brief()};
        REQUIRE(session.open(scenario::jig()));
        proposal::Brief const first = session.brief();
        arrange::Arrangement const firstMusic = session.arrangement();
        Arranger arranger(seed);
        for (int i = 0; i < 20; ++i) {
            if (arranger.edit(session)) ++done;
            // Now and then some of it is taken back, and other things are done from there.
            if (arranger.upTo(9) == 0)
                for (int back = arranger.upTo(2); back >= 0; --back) session.undoStack().undo();
        }
        proposal::Brief const last = session.brief();
        arrange::Arrangement const lastMusic = session.arrangement();
        int const steps =
            session.undoStack().index(); // what was taken back last may lie beyond
        while (session.undoStack().canUndo()) session.undoStack().undo();
        {
            INFO("all undone");
            checkSame(session, first, firstMusic);
        }
        while (session.undoStack().index() < steps) session.undoStack().redo();
        {
            INFO("all done again");
            checkSame(session, last, lastMusic);
        }
        // The same brief gives the same proposal.
        auto const afresh = coreEngine().propose(last);
        REQUIRE(afresh);
        {
            INFO("proposed afresh");
            checkSame(session, last, afresh->arrangement);
        }
    }
    CHECK(done > 120);
}

TEST_CASE("An earlier version's harp is its own: back and forth, new tunes keep theirs", "[ui]")
{
    Session session{coreEngine(), scenario::brief()};
    REQUIRE(session.open(scenario::jig()));
    auto const usual = session.standing().harp;
    proposal::Brief earlier = session.brief();
    earlier.harp = *files::harpFrom(scenario::tables(), "lap26", "C");
    REQUIRE(earlier.harp != usual);
    REQUIRE(session.goBackTo(earlier, "going back"));
    CHECK(session.standing().harp == usual);
    session.undoStack().undo();
    CHECK(session.standing().harp == usual);
    session.undoStack().redo();
    CHECK(session.brief().harp == earlier.harp);
    CHECK(session.standing().harp == usual);
}
