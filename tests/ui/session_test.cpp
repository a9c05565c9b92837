#include "ui/session.h"

#include "core/pattern/own.h"

#include "scenario.h"

#include <QSignalSpy>
#include <catch2/catch.hpp>

using namespace ui;

namespace {

struct Opened {
    Session session{coreEngine(), scenario::brief()};
    Opened() { REQUIRE(session.open(scenario::jig())); }
    arrange::Voicing const& voicing(arrange::PositionIndex position) const
    {
        return session.arrangement().positions[position].voicing;
    }
    bool locked(arrange::PositionIndex position) const
    {
        return session.arrangement().positions[position].locked;
    }
};

} // namespace

TEST_CASE("Opening a tune selects its first chord and ranks the variants", "[ui]")
{
    Opened opened;
    CHECK(opened.session.selected() == 0);
    auto const& variants = opened.session.variants();
    REQUIRE(variants.size() > 5);
    CHECK(variants.front().regret == 0);
    for (std::size_t i = 1; i < variants.size(); ++i)
        CHECK(variants[i].regret >= variants[i - 1].regret);
    CHECK(opened.session.undoStack().count() == 0);
}

TEST_CASE("Choosing a variant locks it, undo frees it and redo locks it again", "[ui]")
{
    Opened opened;
    Session& session = opened.session;
    session.select(3);
    arrange::Voicing const before = opened.voicing(3);
    auto const best = session.proposal().solution.best;
    arrange::CandidateIndex const candidate = session.variants()[4].candidate;
    REQUIRE(session.choose(candidate));
    arrange::Voicing const after = opened.voicing(3);
    CHECK(after == session.proposal().lattice.candidates[3][candidate].voicing);
    CHECK(opened.locked(3));
    session.select(0);
    session.undoStack().undo();
    CHECK(opened.voicing(3) == before);
    CHECK_FALSE(opened.locked(3));
    CHECK(session.proposal().solution.best == best);
    CHECK(session.selected() == 3); // where the step was taken
    session.undoStack().redo();
    CHECK(opened.voicing(3) == after);
    CHECK(opened.locked(3));
}

TEST_CASE("Unlocking gives the chord back to the solver", "[ui]")
{
    Opened opened;
    Session& session = opened.session;
    auto const best = session.proposal().solution.best;
    session.select(2);
    REQUIRE(session.chooseRanked(6));
    CHECK_FALSE(session.proposal().solution.best == best);
    REQUIRE(session.unlock());
    CHECK(session.proposal().solution.best == best);
    CHECK(session.brief().locks.empty());
    CHECK_FALSE(session.unlock());
}

TEST_CASE("A chosen variant keeps its place through a change of level and back", "[ui]")
{
    Opened opened;
    Session& session = opened.session;
    session.select(4);
    REQUIRE(session.chooseRanked(3));
    arrange::Voicing const chosen = opened.voicing(4);
    REQUIRE(session.setLevel(*files::levelFrom(scenario::tables(), 4)));
    CHECK(session.arrangement().level.number == 4);
    CHECK(opened.locked(4));
    CHECK(opened.voicing(4).pattern == chosen.pattern);
    session.undoStack().undo();
    CHECK(session.arrangement().level.number == 3);
    CHECK(opened.voicing(4) == chosen);
}

TEST_CASE("A lock that a smaller hand cannot keep waits and is told of", "[ui]")
{
    Opened opened;
    Session& session = opened.session;
    std::optional<arrange::PositionIndex> wide;
    for (arrange::PositionIndex position = 0; position < 6 && !wide; ++position) {
        session.select(position);
        for (auto const& variant : session.variants()) {
            auto const& voicing =
                session.proposal().lattice.candidates[position][variant.candidate].voicing;
            if (voicing.pattern != "1-5-10") continue;
            REQUIRE(session.choose(variant.candidate));
            wide = position;
            break;
        }
    }
    REQUIRE(wide);
    QSignalSpy noticed(&session, &Session::noticed);
    REQUIRE(session.setLevel(*files::levelFrom(scenario::tables(), 1)));
    CHECK(noticed.size() == 1);
    CHECK(opened.voicing(*wide).pattern != "1-5-10");
    REQUIRE(session.setLevel(*files::levelFrom(scenario::tables(), 3)));
    CHECK(opened.voicing(*wide).pattern == "1-5-10");
    CHECK(opened.locked(*wide));
}

TEST_CASE("Leaving a chord empty rests the left hand there", "[ui]")
{
    Opened opened;
    opened.session.select(5);
    REQUIRE(opened.session.leaveEmpty());
    CHECK(opened.voicing(5).notes.empty());
    CHECK(opened.locked(5));
}

TEST_CASE("Showing a variant changes neither document nor undo", "[ui]")
{
    Opened opened;
    Session& session = opened.session;
    QSignalSpy changed(&session, &Session::changed);
    arrange::CandidateIndex const other = session.variants()[5].candidate;
    arrange::Voicing const before = opened.voicing(0);
    session.show(other);
    CHECK(session.shown() == other);
    CHECK(changed.isEmpty());
    CHECK(session.undoStack().count() == 0);
    CHECK(opened.voicing(0) == before);
    CHECK_FALSE(session.shownArrangement().positions[0].voicing == before);
    session.select(1);
    CHECK(session.shownArrangement().positions[0].voicing == before);
}

TEST_CASE("What is refused leaves the document as it was", "[ui]")
{
    bool refuse = false;
    Engine engine = coreEngine();
    engine.propose = [&refuse](proposal::Brief const& brief) {
        if (refuse)
            return base::Result<proposal::Proposal>(
                base::Fault{base::FaultCode::NoteOffHarp, "bar 9", "G5"});
        return proposal::propose(brief);
    };
    Session session(engine, scenario::brief());
    REQUIRE(session.open(scenario::jig()));
    QSignalSpy refused(&session, &Session::refused);
    refuse = true;
    CHECK_FALSE(session.setKey(music::Key{{music::Letter::D, 0}, music::Mode::Ionian}));
    CHECK_FALSE(session.open(scenario::jig()));
    CHECK(refused.size() == 2);
    CHECK(session.isOpen());
    CHECK(session.undoStack().count() == 0);
    CHECK(session.brief().key == proposal::KeyWish(proposal::BestKey{}));
}

TEST_CASE("A harp chosen before any tune is open is the one the tune meets", "[ui]")
{
    Session session(coreEngine(), scenario::brief());
    CHECK_FALSE(session.isOpen());
    REQUIRE(session.setHarp(*files::harpFrom(scenario::tables(), "floor36", "C")));
    REQUIRE(session.open(scenario::jig()));
    CHECK(session.arrangement().harp.count() == 36);
}

TEST_CASE("A lever wish is an edit that is arranged anew and undone", "[ui]")
{
    Session session(coreEngine(), scenario::brief());
    REQUIRE(session.open(scenario::jig()));
    auto const before = session.arrangement().levers.setup;
    harp::Lever const other =
        before[0] == harp::Lever::Up ? harp::Lever::Down : harp::Lever::Up;
    REQUIRE(session.wishLever(0, other));
    CHECK(session.arrangement().levers.setup[0] == other);
    REQUIRE(session.wishLever(0, before[0]));
    CHECK(session.brief().leverWishes.size() == 1); // one wish a string
    session.undoStack().undo();
    session.undoStack().undo();
    CHECK(session.arrangement().levers.setup == before);
    CHECK(session.brief().leverWishes.empty());
}

TEST_CASE("What would help a refused edit is offered, and taken as an edit", "[ui]")
{
    bool refuse = false;
    Engine engine = coreEngine();
    engine.propose = [&refuse](proposal::Brief const& brief) {
        if (refuse && brief.changes.empty())
            return base::Result<proposal::Proposal>(
                base::Fault{base::FaultCode::NoMomentForFlip, "bar 1", "G4"});
        return proposal::propose(brief);
    };
    engine.remedies = [](proposal::Brief brief) {
        brief.changes = {{{0, 0, 0, false}, tune::Change::LeftOut}};
        return std::vector{
            proposal::Remedy{proposal::Help::LeaveOut, "Leave out the G4 in bar 1.", brief}};
    };
    Session session(engine, scenario::brief());
    REQUIRE(session.open(scenario::jig()));
    std::vector<proposal::Remedy> offered;
    QObject::connect(&session, &Session::offered, &session,
                     [&offered](auto const& remedies) { offered = remedies; });
    refuse = true;
    CHECK_FALSE(session.setTempo(200));
    REQUIRE(offered.size() == 1);
    REQUIRE(session.take(offered.front()));
    CHECK(session.brief().quartersPerMinute == 200); // the edit and the remedy together
    CHECK(session.arrangement().tune.bars[0].notes[0].pitches.empty());
    refuse = false;
    session.undoStack().undo();
    CHECK_FALSE(session.brief().quartersPerMinute);
    CHECK(session.brief().changes.empty());
    // A tune that was refused is opened with the remedy.
    refuse = true;
    CHECK_FALSE(session.open(scenario::jig()));
    REQUIRE(session.take(offered.front()));
    CHECK(session.undoStack().count() == 0);
    CHECK(session.arrangement().tune.bars[0].notes[0].pitches.empty());
}

TEST_CASE("An own pattern is used in one step that undo takes back, book and all", "[ui]")
{
    Opened opened;
    Session& session = opened.session;
    session.select(4);
    auto const before = session.proposal().solution;
    auto const book = session.brief().book.patterns;
    REQUIRE(session.usePattern(*pattern::ownPatternFrom("1 5 4")));
    CHECK(opened.voicing(4).pattern == "1-5-4");
    CHECK(opened.locked(4));
    CHECK(session.brief().book.patterns.size() == book.size() + 1);
    session.undoStack().undo();
    CHECK(session.proposal().solution == before);
    CHECK(session.brief().book.patterns == book);
    session.undoStack().redo();
    CHECK(opened.voicing(4).pattern == "1-5-4");
}

TEST_CASE("An own pattern that no hand can play is refused and changes nothing", "[ui]")
{
    Opened opened;
    Session& session = opened.session;
    QSignalSpy refused(&session, &Session::refused);
    auto const before = session.brief().book.patterns;
    CHECK_FALSE(session.usePattern(*pattern::ownPatternFrom("1-15-22")));
    CHECK(refused.count() == 1);
    CHECK(session.brief().book.patterns == before);
    CHECK(session.undoStack().count() == 0);
}

TEST_CASE("A slider that is drawn is one step back, two sliders are two", "[ui]")
{
    Opened opened;
    Session& session = opened.session;
    auto const best = session.proposal().solution;
    auto const& sliders = scenario::tables().sliders;
    for (int percent : {110, 130, 160}) REQUIRE(session.setSlider(sliders[0], percent));
    REQUIRE(session.setSlider(sliders[3], 150));
    CHECK(session.undoStack().count() == 2);
    CHECK(session.proposal().weights.byTerm != session.brief().weights.byTerm);
    session.undoStack().undo();
    CHECK(arrange::percentOf(session.brief().sliders, sliders[0].id) == 160);
    session.undoStack().undo();
    CHECK(session.brief().sliders.empty());
    CHECK(session.proposal().solution == best);
    session.undoStack().redo();
    REQUIRE(session.resetSliders());
    CHECK(session.proposal().solution == best);
}

TEST_CASE("Another take goes on to the next and says how far it is, and undo comes back",
          "[ui]")
{
    Opened opened;
    Session& session = opened.session;
    QSignalSpy noticed(&session, &Session::noticed);
    auto const best = session.proposal().solution;
    REQUIRE(session.anotherTake());
    CHECK(session.brief().take == 1);
    REQUIRE(noticed.count() == 1);
    CHECK(
        noticed.at(0).at(0).toString().startsWith(QStringLiteral("Setting 1: another shape")));
    REQUIRE(session.anotherTake());
    CHECK(session.brief().take == 2);
    session.undoStack().undo();
    session.undoStack().undo();
    CHECK(session.proposal().solution == best);
    session.undoStack().redo();
    REQUIRE(session.bestTake());
    CHECK(session.proposal().solution == best);
}
