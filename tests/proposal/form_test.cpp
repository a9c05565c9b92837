// Introduction, ending and times through, arranged as one: nothing that is joined breaks a
// rule.
#include "core/proposal/edited.h"
#include "core/proposal/formed.h"
#include "core/proposal/rules.h"
#include "tests/proposal/nottingham.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

#include <array>
#include <iostream>
#include <numeric>

using namespace proposal;

namespace {

Form formOfIds(int introduction, int ending, std::vector<std::string> const& times = {})
{
    Form form{introduction, ending, {}};
    for (std::string const& id : times)
        form.times.push_back(*files::timeMannerFrom(scenario::tables(), id));
    return form;
}

// Notes of the left hand in the bars of one time through.
std::size_t leftNotes(Proposal const& p, int time)
{
    std::size_t count = 0;
    for (auto const& position : p.arrangement.positions) {
        tune::Bar const& bar = p.arrangement.tune.bars[position.position.bar];
        if (bar.time == time && bar.role == tune::Role::Tune)
            count += position.voicing.notes.size() * position.position.played.size();
    }
    return count;
}

} // namespace

TEST_CASE("Each time through is fuller than the one before where the form says so", "[form]")
{
    Brief brief = scenario::briefFor(scenario::eightBars);
    brief.form = formOfIds(2, 2, {"bare", "plain", "fuller"});
    Proposal const p = scenario::proposed(brief);
    CHECK(leftNotes(p, 1) < leftNotes(p, 2));
    CHECK(leftNotes(p, 2) < leftNotes(p, 3));
    CHECK(brokenRules(p.arrangement, p.brief.book) == std::vector<std::string>{});
    // What the right hand adds it adds in the full time alone, and in the ending that follows.
    for (arrange::AddedBelow const& added : p.arrangement.added)
        CHECK(p.arrangement.tune.bars[added.bar].time == 3);
}

TEST_CASE("At level 1 the fuller time has pairs of strings where the plain one has one",
          "[form]")
{
    // A waltz with a chord a bar and a jig with two, invented.
    auto const abc = GENERATE(
        std::string("X:1\nT:Three\nR:waltz\nM:3/4\nL:1/4\nQ:1/4=84\nK:G\n\"G\"GAB|\"C\"cBA|"
                    "\"D\"AGF|\"G\"G3|\"C\"cde|\"G\"dBG|\"D\"AcF|\"G\"G3|]\n"),
        std::string("X:1\nT:Six\nR:jig\nM:6/8\nL:1/8\nQ:3/8=60\nK:G\n\"G\"GAB \"D\"AGF|"
                    "\"G\"GBd \"C\"e2c|\"G\"dBG \"D\"AFD|\"G\"G3G3|]\n"));
    Brief brief = scenario::briefFor(abc, 1);
    brief.form = formOfIds(0, 0, {"bare", "plain", "fuller"});
    Proposal const p = scenario::proposed(brief);
    std::array<int, 4> strings{}; // plucked at once, by time
    std::array<int, 4> chords{};
    for (auto const& [position, voicing, locked] : p.arrangement.positions) {
        auto const time = static_cast<std::size_t>(p.arrangement.tune.bars[position.bar].time);
        ++chords[time];
        for (arrange::VoicedNote const& note : voicing.notes)
            strings[time] += note.at == voicing.notes.front().at ? 1 : 0;
    }
    REQUIRE(chords[3] > 0);
    CHECK(strings[1] == chords[1]);
    CHECK(strings[3] >= 2 * chords[3]);
    CHECK(strings[3] > strings[2]);
    CHECK(brokenRules(p.arrangement, p.brief.book) == std::vector<std::string>{});
}

TEST_CASE("An octave higher is played there, or told where the harp has no room", "[form]")
{
    Brief brief = scenario::briefFor(scenario::eightBars);
    tune::Tune const asRead = brief.tune;
    brief.tune = tune::transposed(asRead, {-7, -12}); // so that the harp has it both ways
    brief.form = formOfIds(0, 0, {"plain", "high"});
    Proposal const high = scenario::proposed(brief);
    auto const& bars = high.arrangement.tune.bars;
    auto const second = bars.indexOf(std::ranges::find(bars, 2, &tune::Bar::time));
    auto const& low = bars.front().notes.front().pitches.front();
    auto const& up = bars[second].notes.front().pitches.front();
    CHECK(music::midi(up) - music::midi(low) == 12);
    CHECK(high.octavesLeft.empty());
    brief.form = formOfIds(0, 0, {"plain", "high", "high"});
    brief.tune = tune::transposed(asRead, {7, 12}); // at the upper end already
    Proposal const beyond = scenario::proposed(brief);
    CHECK(beyond.octavesLeft == std::vector<int>{2, 3});
    CHECK(brokenRules(beyond.arrangement, beyond.brief.book) == std::vector<std::string>{});
}

TEST_CASE("A kept shape stays with its bar when the form changes", "[form]")
{
    Brief brief = scenario::briefFor(scenario::eightBars);
    Lock lock;
    lock.bar = 2;
    brief.locks = {lock};
    Brief const longer = withForm(brief, formOfIds(4, 2, {"plain", "fuller"}));
    REQUIRE(longer.locks.size() == 1);
    tune::BarIndex const bar = longer.locks.front().bar;
    CHECK(bar > 2);
    CHECK(writtenBar(longer, bar) == 2);
    CHECK(withForm(longer, {}).locks == brief.locks);
    // A bar put in before it moves it in whatever form.
    tune::Tune more = longer.tune;
    more.bars.insert(more.bars.begin() + 1, more.bars[1]);
    Brief const moved = withEditedTune(longer, more, {1, 1});
    REQUIRE(moved.locks.size() == 1);
    CHECK(writtenBar(moved, moved.locks.front().bar) == 3);
}

TEST_CASE("The same music without a form is arranged as ever", "[form]")
{
    Brief const brief = scenario::briefFor(scenario::eightBars);
    Brief once = brief;
    once.form = formOfIds(0, 0, {"plain"});
    Proposal const a = scenario::proposed(brief);
    Proposal const b = scenario::proposed(once);
    CHECK(a.arrangement.tune.bars.size() == b.arrangement.tune.bars.size());
    CHECK(a.arrangement.positions.size() == b.arrangement.positions.size());
}

TEST_CASE("No rule is broken in any form over sampled folk tunes", "[form]")
{
    auto const tunes = nottingham::tunesWithChords();
    if (!tunes) {
        WARN("SKIPPED: the folk tunes are absent: no form tried on them");
        return;
    }
    std::vector<Form> const forms{formOfIds(2, 0), formOfIds(4, 4), formOfIds(0, 2),
                                  formOfIds(2, 2, {"bare", "fuller"}),
                                  formOfIds(4, 2, {"plain", "high", "low"})};
    constexpr std::size_t every = 17;
    int tried = 0;
    for (std::size_t i = 0; i < tunes->size(); i += every) {
        Brief brief = scenario::briefFor((*tunes)[i].tune, 1 + tried % 5);
        brief.form = forms[static_cast<std::size_t>(tried) % forms.size()];
        CAPTURE((*tunes)[i].name, brief.level.number, tried % forms.size());
        auto const p = propose(brief);
        REQUIRE(p);
        CHECK(brokenRules(p->arrangement, p->brief.book) == std::vector<std::string>{});
        ++tried;
    }
    std::cout << tried << " folk tunes arranged with a form\n";
    CHECK(tried > 20);
}
