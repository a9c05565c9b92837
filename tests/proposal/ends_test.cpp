// Where a tune begins and ends: pick-ups, chords that lead back, and the last chord of all.
// Tunes invented for these tests.

#include "core/arrange/unfold.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace proposal;

namespace {

std::string const waltz = "X:1\nT:A waltz of no place\nM:3/4\nL:1/8\nQ:1/4=96\nK:G\n"
                          "|:d2|\"G\"g4 b2|\"C\"g4 e2|\"D\"f4 a2|\"G\"g4 d2|\n"
                          "\"Em\"e4 g2|\"Am\"a4 c'2|\"D7\"a4 f2|\"G\"g2 \"D7\"z2:|\n";

arrange::ArrangedPosition const& lastOf(Proposal const& p)
{
    return *std::ranges::max_element(
        p.arrangement.positions, {},
        [](arrange::ArrangedPosition const& one) { return one.position.played.back().at; });
}

} // namespace

TEST_CASE("The tune's last chord is a position of its own, and what leads back is dropped there",
          "[ends]")
{
    Proposal const p = scenario::proposed(scenario::briefFor(waltz));
    arrange::ArrangedPosition const& last = lastOf(p);
    CHECK(last.position.played.size() == 1);
    CHECK(music::plain(last.position.chord) == "G");
    arrange::Occurrence const when = last.position.played.front();
    CHECK(when.at + last.position.span == music::Moment{p.arrangement.playing.total.wholes});
}

TEST_CASE("A last chord on which the tune comes to rest is no chord that leads back", "[ends]")
{
    // Common practice, no source: what leads back stands under a rest or notes that go on.
    auto const endsOn = [](std::string const& lastBar) {
        std::string const jig = "X:1\nT:A jig of no place\nM:6/8\nL:1/8\nK:Em\n"
                                "|:\"Em\"E2G BGE|\"C\"c2G \"D\"A2F|\"Em\"E2G BAG|" +
                                lastBar + ":|\n";
        return music::plain(lastOf(scenario::proposed(scenario::briefFor(jig))).position.chord);
    };
    CHECK(endsOn("\"Em\"G2E \"G\"G3") == "G");
    CHECK(endsOn("\"Em\"E3 \"D\"zDF") == "Em");
    CHECK(endsOn("\"Em\"E3 \"D\"A2z") == "Em");
    CHECK(endsOn("\"Em\"E3 \"D\"AFD") == "D"); // a beat of notes that rub E minor
}

TEST_CASE("A waltz in a sure mode ends on a chord that is rolled or has its third", "[ends]")
{
    // Common practice, no source.
    Proposal const p = scenario::proposed(scenario::briefFor(waltz));
    arrange::Voicing const& last = lastOf(p).voicing;
    REQUIRE_FALSE(last.notes.empty());
    bool const third = std::ranges::any_of(last.notes, [](arrange::VoicedNote const& n) {
        return n.degree == 10 || n.degree == 3;
    });
    CHECK((last.rolled || third));
    CHECK(last.notes.front().at == last.notes.back().at); // one stroke
}

TEST_CASE("An air in four beats ends on one stroke that rings through the bar", "[ends]")
{
    // Common practice, no source.
    std::string const air = "X:1\nT:An air of no place\nR:air\nM:4/4\nL:1/4\nQ:1/4=60\nK:G\n"
                            "\"G\"G2 B2|\"C\"c2 e2|\"D\"d A F D|\"G\"G4|]\n";
    arrange::Voicing const& last = lastOf(scenario::proposed(scenario::briefFor(air))).voicing;
    REQUIRE_FALSE(last.notes.empty());
    CHECK(last.rolled);
    CHECK(last.notes.front().at == last.notes.back().at);
}

TEST_CASE("An end of its own is printed as a second ending, not as a strain written out",
          "[ends]")
{
    Proposal const p = scenario::proposed(scenario::briefFor(waltz));
    if (!arrange::passesDiffer(p.arrangement)) return;
    arrange::Unfolded const out = arrange::unfolded(p.arrangement);
    CHECK(out.arrangement.tune.bars.size() == p.arrangement.tune.bars.size() + 1);
    CHECK(out.arrangement.playing.bars.size() == p.arrangement.playing.bars.size());
    CHECK(tune::played(out.arrangement.tune).notes.size() == p.arrangement.playing.notes.size());
}

TEST_CASE("The left hand rests in a pick-up of its own chord between strains", "[ends]")
{
    // Common practice; in a collection of dance tunes 96 of 100 pick-ups carry no chord.
    std::string const jig = "X:1\nT:A jig of no place\nM:6/8\nL:1/8\nK:D\n"
                            "A|\"D\"d2f afd|\"G\"bgb \"A\"a2A|\"D\"d2f \"A7\"ege|\"D\"d3 d2||\n"
                            "f|\"D\"a2f \"G\"bgb|\"D\"afd \"A\"e2A|\"D\"d2f \"A7\"ege|\"D\"d3 d2|]\n";
    Proposal const p = scenario::proposed(scenario::briefFor(jig));
    int upbeats = 0;
    for (arrange::ArrangedPosition const& one : p.arrangement.positions) {
        tune::Bar const& bar = p.arrangement.tune.bars[one.position.bar];
        if (bar.upbeat == music::Length{}) continue;
        ++upbeats;
        CHECK(one.voicing.notes.empty());
    }
    CHECK(upbeats >= 1);
}

TEST_CASE("The chord that closes a strain of a tune with a pick-up is played, however short",
          "[ends]")
{
    // The last bar of each strain is short by the pick-up and ends on the home chord, a beat
    // long. Common practice, no source.
    std::string const reel =
        "X:1\nT:A reel of no place\nM:4/4\nL:1/8\nQ:1/4=100\nK:G\n"
        "GA|:\"G\"B2dB \"D\"A2FA|\"G\"G2BG \"C\"E2ce|\"G\"d2BG \"D\"A2FA|"
        "\"D7\"AGFD \"G\"G2:|\n"
        "Bc|\"G\"d2Bd \"C\"e2ce|\"G\"d2BG \"D\"A2FA|\"G\"B2dB \"C\"c2ec|\"D7\"AGFA \"G\"G2|]\n";
    for (int level = 1; level <= 5; ++level) {
        auto brief = scenario::briefFor(reel, level);
        brief.key = AsWritten{};
        Proposal const p = scenario::proposed(brief);
        int closes = 0;
        for (arrange::ArrangedPosition const& one : p.arrangement.positions) {
            tune::Bar const& bar = p.arrangement.tune.bars[one.position.bar];
            bool const home = music::plain(one.position.chord) == "G";
            if (!home || one.position.at + one.position.span != bar.length ||
                bar.length == music::barLength(bar.meter) || bar.upbeat != music::Length{})
                continue;
            CAPTURE(level, one.position.bar);
            ++closes;
            CHECK_FALSE(one.voicing.notes.empty());
        }
        CHECK(closes >= 2);
    }
}

TEST_CASE("The left hand waits for bar 1 in a pick-up of two crotchets, over a drone too",
          "[ends]")
{
    // Common practice, no source.
    for (char const* chord : {"\"G\"", ""}) {
        std::string const march =
            std::string("X:1\nT:A march of no place\nM:4/4\nL:1/4\nK:G\n") + chord +
            "D E|GABG|A2 A2|Bdcd|B2 A2|GABG|A2 F2|GABA|G2|]\n";
        auto brief = scenario::briefFor(march);
        brief.key = AsWritten{};
        Proposal const p = scenario::proposed(brief);
        CAPTURE(chord);
        for (arrange::ArrangedPosition const& one : p.arrangement.positions)
            CHECK((one.position.bar != 0 || one.voicing.notes.empty()));
    }
}

TEST_CASE("Over a named bass no note is foreign to the chord", "[ends]")
{
    // A slash chord names the lowest note: C under A minor makes no C major.
    std::string const slashes = "X:1\nM:4/4\nL:1/8\nQ:1/4=80\nK:C\n"
                                "\"Am/C\"a4 e4|\"G/B\"g4 d4|\"C/G\"e4 g4|\"F/A\"a4 c'4|"
                                "\"C/E\"g4 e4|\"C\"c'8|]\n";
    for (int level = 1; level <= 5; ++level) {
        Proposal const p = scenario::proposed(scenario::briefFor(slashes, level));
        for (arrange::ArrangedPosition const& one : p.arrangement.positions) {
            if (!one.position.chord.bass) continue;
            CAPTURE(level, music::plain(one.position.chord), one.voicing.pattern);
            CHECK_FALSE(one.voicing.notes.empty());
            music::Moment const at = one.position.played.front().at;
            for (arrange::VoicedNote const& n : one.voicing.notes)
                CHECK(music::contains(one.position.chord,
                                      music::midi(harp::pitchAt(p.arrangement.harp,
                                                                p.arrangement.levers, n.string,
                                                                at + n.at)) %
                                          12));
        }
    }
}

TEST_CASE("A last chord that is written twice is struck once and rings on", "[ends]")
{
    // Common practice, no source.
    std::string const reel = "X:1\nT:A reel of no place\nM:4/4\nL:1/8\nK:D\n"
                             "A2|:\"D\"d2fd Adfd|\"G\"gfge \"A\"c2ec|\"D\"d2fd \"A7\"eceg|"
                             "\"D\"f2d2 d2\"D\"A2:|\n";
    Proposal const p = scenario::proposed(scenario::briefFor(reel));
    arrange::ArrangedPosition const& last = lastOf(p);
    CHECK_FALSE(last.voicing.notes.empty());
    CHECK(last.position.span == music::Length{music::Rational(1)});
}
