#include "core/files/check.h"
#include "core/files/musicxml/mxl.h"
#include "core/files/musicxml/read.h"
#include "core/files/musicxml/write.h"
#include "core/files/textfile.h"
#include "core/tune/playing.h"
#include "tests/exchange/roundtrip.h"
#include "tests/exchange/same.h"
#include "tests/exchange/samples.h"
#include "tests/places.h"
#include "tests/proposal/scenario.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>

using base::FaultCode;
using music::Rational;
namespace fs = std::filesystem;

namespace {

fs::path const data = fs::path(places::outside()) / "data";

// A score of one part around some measures.
std::string score(std::string const& measures)
{
    return "<?xml version=\"1.0\"?>\n<score-partwise><part-list><score-part id=\"P1\">"
           "<part-name>Air</part-name></score-part></part-list>\n<part id=\"P1\">\n" +
           measures + "\n</part></score-partwise>";
}

std::string note(std::string const& step, int octave, std::string const& duration,
                 std::string const& more = "")
{
    return "<note><pitch><step>" + step + "</step><octave>" + std::to_string(octave) +
           "</octave></pitch><duration>" + duration + "</duration>" + more + "</note>";
}

std::string const common = "<attributes><divisions>2</divisions><key><fifths>0</fifths>"
                           "<mode>major</mode></key><time><beats>4</beats>"
                           "<beat-type>4</beat-type></time></attributes>\n";

std::string bar(std::string const& inside)
{
    return "<measure number=\"1\">" + common + inside + "</measure>";
}

tune::Tune tuneIn(std::string const& text)
{
    auto tune = files::readMusicXml(text, "score");
    if (!tune) FAIL(base::sentence(tune.error()));
    return *std::move(tune);
}

bool said(tune::Tune const& tune, std::string const& what)
{
    return std::any_of(tune.said.begin(), tune.said.end(), [&what](tune::Remark const& r) {
        return r.what.find(what) != std::string::npos;
    });
}

std::string notesOf(tune::Tune const& tune)
{
    std::string out;
    for (tune::Bar const& b : tune.bars)
        for (tune::Note const& n : b.notes) {
            for (music::Pitch const& p : n.pitches) out += music::plain(p);
            if (n.pitches.empty()) out += n.hidden ? 'x' : 'z';
            out += ':' + music::text(n.length.wholes) + ' ';
        }
    return out;
}

// The invariants of tune.h, and what follows the reader.
void checkPromises(tune::Tune const& tune)
{
    REQUIRE(!tune.bars.empty());
    bool good = true;
    for (tune::Bar const& b : tune.bars) {
        music::Length at;
        for (tune::Note const& n : b.notes) {
            good = good && n.at == at && n.length > music::Length{};
            at = at + n.length;
        }
        good = good && at == b.length && !b.notes.empty();
        for (tune::Tuplet const& t : b.tuplets)
            good = good && t.first >= 0 && t.first <= t.last &&
                   t.last < static_cast<int>(b.notes.size());
        for (tune::ChordMark const& mark : b.chords)
            good = good && mark.at >= music::Length{} && mark.at <= b.length;
    }
    CHECK(good);
    CHECK_FALSE(tune::played(tune).notes.empty());
    tune::chordSpans(tune);
    CHECK(!files::checkLine(tune).empty());
}

} // namespace

TEST_CASE("A tune written as MusicXML reads back as the same tune", "[musicxml][read]")
{
    tune::Tune jig = example::jig();
    tune::markPickUps(jig.bars);
    tune::numberBars(jig.bars);
    roundtrip::checkMusicXml(example::arrangementOf(jig));
    roundtrip::checkMusicXml(
        scenario::proposed(scenario::briefFor(scenario::eightBars)).arrangement);
    for (char const* abc : {
             "M:4/4\nK:D\n^C_B=F f|F2 f2|^G4-|G2 g2|[^CE^c]2 c2|__B2 ^^F2|",
             "M:6/8\nK:C\n(2ab c3|(3abc (5:4:5c/d/e/f/g/ a|z3/2x/2c2 (3:2:2c2e|",
             "M:4/4\nK:C\nC2|:CDEFGAB|1,3 c8:|2 A8:|4 F8||",
             "M:4/4\nK:C\n|::CDEF::|GABc||cBAG|]",
             "M:C|\nP:AAB\nK:Ador\nP:A\nA2|:c4d4|e6A2|[M:3/4]c2d2e2:|\nP:B\n[K:Bb]B6|c4d2|]",
             "M:4/4\nK:C\n\"C\"\"Am\"CDEF\" \"\"G7/B\"G4|\"^with care\"\"F#m7b5\"C8|",
             "M:4/4\nK:C\n{^cd}C2 D2 x4|z4{g}c4|",
         }) {
        CAPTURE(abc);
        roundtrip::checkMusicXml(example::arrangementOf(scenario::tuneOf(
            "X:1\nT:A & B <c>\nT:other\nC:me\nO:here\nS:book\nN:one\nR:reel\n" +
            std::string(abc) + '\n')));
    }
}

TEST_CASE("Folk tunes written as MusicXML read back the same", "[musicxml][read][data][slow]")
{
    samples::someFolkTunes(25, [](tune::Tune const& tune) {
        auto const proposal = proposal::propose(scenario::briefFor(tune));
        if (proposal) roundtrip::checkMusicXml(proposal->arrangement);
    });
}

TEST_CASE("Timewise scores read as partwise ones", "[musicxml][read]")
{
    std::string const measures = common + note("C", 5, "4") + note("D", 5, "4");
    tune::Tune const timewise =
        tuneIn("<score-timewise><part-list/><measure number=\"1\"><part id=\"P1\">" + measures +
               "</part></measure></score-timewise>");
    CHECK(notesOf(timewise) == "C5:1/2 D5:1/2 ");
}

TEST_CASE("Of several voices and staves the first staff's fullest voice is the tune",
          "[musicxml][read]")
{
    std::string const on = "<voice>1</voice><staff>1</staff>";
    std::string const second = "<voice>2</voice><staff>1</staff>";
    std::string const bass = "<voice>5</voice><staff>2</staff>";
    tune::Tune const tune =
        tuneIn(score(bar(note("C", 4, "8", second) + "<backup><duration>8</duration></backup>" +
                         note("G", 4, "2", on) + "<forward><duration>2</duration></forward>" +
                         note("B", 4, "4", on) + "<backup><duration>8</duration></backup>" +
                         note("C", 3, "8", bass))));
    CHECK(notesOf(tune) == "G4:1/4 x:1/4 B4:1/2 ");
    CHECK(said(tune, "2 staves"));
    CHECK(said(tune, "2 voices"));
}

TEST_CASE("A part for a transposing instrument is read as it sounds", "[musicxml][read]")
{
    // A clarinet in B flat sounds a major second lower than written.
    std::string const attributes =
        "<attributes><divisions>2</divisions><key><fifths>2</fifths><mode>major</mode></key>"
        "<transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose></attributes>";
    std::string const harmony =
        "<harmony><root><root-step>D</root-step></root><kind>major</kind></harmony>";
    tune::Tune const tune = tuneIn(score("<measure>" + attributes + harmony +
                                         note("D", 5, "4") + note("E", 5, "4") + "</measure>"));
    CHECK(notesOf(tune) == "C5:1/2 D5:1/2 ");
    CHECK(music::plain(tune.key) == "C");
    REQUIRE(tune.bars[0].chords.size() == 1);
    CHECK(music::plain(tune.bars[0].chords[0].chord) == "C");
}

TEST_CASE("Chord symbols stand where the file counts them", "[musicxml][read]")
{
    auto const harmony = [](std::string const& step, std::string const& more,
                            std::string const& behind = "") {
        return "<harmony><root><root-step>" + step + "</root-step></root>" + more + behind +
               "</harmony>";
    };
    tune::Tune const tune = tuneIn(score(
        bar(harmony("G", "<kind>dominant</kind><bass><bass-step>B</bass-step></bass>") +
            harmony("C", "<kind>major</kind>", "<offset>4</offset>") + note("G", 4, "8"))));
    auto const& chords = tune.bars[0].chords;
    REQUIRE(chords.size() == 2);
    CHECK(music::plain(chords[0].chord) == "G7/B");
    CHECK(chords[0].at == music::Length{});
    CHECK(music::plain(chords[1].chord) == "C");
    CHECK(chords[1].at == music::Length{Rational(1, 2)});

    tune::Tune const inverted = tuneIn(score(
        bar(harmony("C", "<kind>major</kind><inversion>1</inversion>") + note("G", 4, "8"))));
    CHECK(music::plain(inverted.bars[0].chords.at(0).chord) == "C/E");
}

TEST_CASE("Chord symbols of another part stand over the tune", "[musicxml][read]")
{
    std::string const text =
        "<score-partwise><part-list/><part id=\"P1\"><measure>" + common + note("C", 5, "8") +
        "</measure></part><part id=\"P2\"><measure><attributes><divisions>1</divisions>"
        "</attributes><harmony><root><root-step>C</root-step></root><kind>major</kind>"
        "</harmony><note><rest/><duration>2</duration></note><harmony><root>"
        "<root-step>F</root-step></root><kind>major</kind></harmony><note><rest/>"
        "<duration>2</duration></note></measure></part></score-partwise>";
    auto const chords = tuneIn(text).bars[0].chords;
    REQUIRE(chords.size() == 2);
    CHECK(music::plain(chords[1].chord) == "F");
    CHECK(chords[1].at == music::Length{Rational(1, 2)});
}

TEST_CASE("Tuplets that a file rounds to its divisions are exact", "[musicxml][read]")
{
    // Three quavers in the time of two with four divisions of a crotchet: 4/3 each is counted
    // as 1, 2, 1.
    std::string const ratio =
        "<type>eighth</type><time-modification><actual-notes>3</actual-notes>"
        "<normal-notes>2</normal-notes></time-modification>";
    std::string const attributes =
        "<attributes><divisions>4</divisions><time><beats>1</beats><beat-type>4</beat-type>"
        "</time></attributes>";
    tune::Tune const tune =
        tuneIn(score("<measure>" + attributes + note("C", 5, "1", ratio) +
                     note("D", 5, "2", ratio) + note("E", 5, "1", ratio) + "</measure>"));
    CHECK(notesOf(tune) == "C5:1/12 D5:1/12 E5:1/12 ");
    CHECK(tune.bars[0].tuplets == std::vector<tune::Tuplet>{{0, 2, 3, 2}});
    CHECK(tune.bars[0].length == music::Length{Rational(1, 4)});
}

TEST_CASE("Damaged values are refused with part, measure and line", "[musicxml][read]")
{
    auto const [inside, code, place] = GENERATE(table<std::string, FaultCode, std::string>({
        {note("C", 5, "1/2"), FaultCode::BadScoreValue, "score, part P1, measure 1, line"},
        {note("C", 5, "inf"), FaultCode::BadScoreValue, "score, part P1, measure 1, line"},
        {note("C", 5, "99999999999999999999"), FaultCode::BadScoreValue, "score, part P1"},
        {note("H", 5, "1"), FaultCode::BadScoreValue, "score, part P1, measure 1"},
        {note("C", 77, "1"), FaultCode::BadScoreValue, "score, part P1, measure 1"},
        {"<attributes><divisions>0</divisions></attributes>" + note("C", 5, "1"),
         FaultCode::BadScoreValue, "score, part P1, measure 1"},
        {"<attributes><time><beats>4</beats><beat-type>5</beat-type></time></attributes>" +
             note("C", 5, "1"),
         FaultCode::BadScoreValue, "score, part P1, measure 1"},
        {"<attributes><key><fifths>99</fifths></key></attributes>" + note("C", 5, "1"),
         FaultCode::BadScoreValue, "score, part P1, measure 1"},
        {"<note><rest/><duration>8</duration></note>", FaultCode::NoNotes, "score, line 2"},
        {note("C", 5, "1") + "<note>", FaultCode::Malformed, "score, line"},
    }));
    CAPTURE(inside);
    auto const read = files::readMusicXml(score(bar(inside)), "score");
    REQUIRE_FALSE(read);
    CHECK(read.error().code == code);
    CHECK(read.error().place.starts_with(place));
}

TEST_CASE("Damaged XML is refused in our own words, at its line", "[musicxml][read]")
{
    std::string const whole = score(bar(note("C", 5, "8")));
    auto const [from, to, words] = GENERATE(table<std::string, std::string, std::string>({
        {"</note>", "", "before all is closed"},
        {"<note>", "<note a=1>", "no quotation marks"},
        {"<note>", "<no<te>", "in the middle of a word"},
        {"<note>", "<![CDATA[ <note>", "a text in it is cut off"},
        {"<note>", "<!-- <note>", "a remark are cut off"},
    }));
    std::string text = whole;
    text.replace(text.find(from), from.size(), to);
    auto const read = files::readMusicXml(text, "score");
    REQUIRE_FALSE(read);
    CHECK(read.error().code == FaultCode::Malformed);
    CHECK(read.error().place.starts_with("score, line"));
    CAPTURE(read.error().detail);
    CHECK(read.error().detail.find(words) != std::string::npos);
}

TEST_CASE("What is no score is refused as such", "[musicxml][read]")
{
    auto const code = [](std::string const& text) {
        auto const read = files::readMusicXml(text, "file");
        REQUIRE_FALSE(read);
        return read.error().code;
    };
    CHECK(code("") == FaultCode::FileEmpty);
    CHECK(code("  \n ") == FaultCode::FileEmpty);
    CHECK(code("<html><body/></html>") == FaultCode::NoScore);
    CHECK(code("X:1\nT:no\nK:C\nCDE|\n") == FaultCode::Malformed);
    CHECK(code("<score-partwise/>") == FaultCode::NoNotes);
}

TEST_CASE("Entities are not expanded and no other file is read", "[musicxml][read]")
{
    std::string const text =
        "<?xml version=\"1.0\"?><!DOCTYPE score-partwise [<!ENTITY a \"aaaaaaaaaa\">"
        "<!ENTITY b SYSTEM \"file:///etc/hostname\">]>" +
        score(bar(note("C", 5, "8"))).substr(22);
    std::string titled = text;
    titled.insert(titled.find("<part-list>"), "<movement-title>x&a;&b;</movement-title>");
    CHECK(tuneIn(titled).title == "x&a;&b;");
}

TEST_CASE("A score in an archive is read as one that is not", "[musicxml][mxl]")
{
    std::string const text = score(bar(note("C", 5, "8")));
    std::string const archive = files::mxlFile(text, "score");
    CHECK(same::difference(tuneIn(archive), tuneIn(text)) == "");
    for (std::size_t cut : {10U, 60U, 200U, 400U}) {
        auto const read = files::readMusicXml(archive.substr(0, cut), "file");
        REQUIRE_FALSE(read);
        CHECK(read.error().place.starts_with("file"));
    }
}

TEST_CASE("An archive does not unpack more than a score can hold", "[musicxml][mxl]")
{
    // 60 million blanks pack into some 60 kB.
    std::string const bomb = files::mxlFile(std::string(60'000'000, ' '), "score");
    REQUIRE(bomb.size() < 100'000);
    auto const read = files::readMusicXml(bomb, "file");
    REQUIRE_FALSE(read);
    CHECK(read.error().code == FaultCode::FileTooLarge);
}

TEST_CASE("Every case of the outside MusicXML suite is read or refused with a reason",
          "[musicxml][read][data]")
{
    // shared/data/musicxml-cases: the unofficial test suite and examples of the standard.
    fs::path const folder = data / "musicxml-cases";
    if (!fs::exists(folder)) {
        WARN("SKIPPED: absent: musicxml-cases");
        return;
    }
    int read = 0;
    int refused = 0;
    for (auto const& entry : fs::directory_iterator(folder)) {
        std::string const ending = entry.path().extension().string();
        if (ending != ".xml" && ending != ".musicxml" && ending != ".mxl") continue;
        CAPTURE(entry.path().filename().string());
        auto const tune = files::readMusicXml(*files::readTextFile(entry.path()), "file");
        if (tune) {
            ++read;
            checkPromises(*tune);
        } else {
            // Nothing is wrong with these but that they hold rests or drums alone.
            ++refused;
            CHECK(tune.error().code == FaultCode::NoNotes);
        }
    }
    CHECK(read + refused == 82);
    CHECK(read >= 74);
}

TEST_CASE("Facts of the outside MusicXML suite come out as its authors describe them",
          "[musicxml][read][data]")
{
    fs::path const folder = data / "musicxml-cases";
    if (!fs::exists(folder)) {
        WARN("SKIPPED: absent: musicxml-cases");
        return;
    }
    auto const tune = [&folder](char const* file) {
        return tuneIn(*files::readTextFile(folder / file));
    };
    // 03b: two voices with backup; 11c: 5/8 of 3+2; 46d: an implicit pick-up measure; 72a: a
    // scale that sounds as C major in every part; 43b: keys that differ by staff.
    CHECK(said(tune("03b-Rhythm-Backup.xml"), "2 voices"));
    CHECK(music::text(tune("11c-TimeSignatures-CompoundSimple.xml").meter) == "5/8");
    CHECK(tune("46d-PickupMeasure-ImplicitMeasures.xml").bars[0].number == 0);
    CHECK(notesOf(tune("72a-TransposingInstruments.xml"))
              .starts_with("C4:1/4 D4:1/4 E4:1/4 F4:1/4 G4"));
    CHECK(tune("71f-AllChordTypes.xml").bars.size() == 10);
}

TEST_CASE("Damaged and hostile scores are read with remarks or refused with a reason",
          "[musicxml][read][data]")
{
    // shared/data/broken/manifest.json: no crash, no hang, no great appetite for memory.
    samples::eachBroken({".musicxml", ".mxl"}, 43, [](fs::path const& path) {
        auto const bytes = files::readTextFile(path);
        REQUIRE(bytes);
        auto const tune = files::readMusicXml(*bytes, "file");
        if (tune)
            checkPromises(*tune);
        else
            CHECK(tune.error().place.starts_with("file"));
    });
}

TEST_CASE("Where a score sends the player is followed, from words and from sound alike",
          "[musicxml][read]")
{
    // MusicXML 4.0, the attributes of the element sound (from memory).
    auto const way = [](std::string const& words, std::string const& sound) {
        std::string const type =
            words.empty() ? "<rehearsal/>" : "<words>" + words + "</words>";
        return "<direction><direction-type>" + type + "</direction-type><sound " + sound +
               "/></direction>";
    };
    auto const order = [](tune::Tune const& tune) {
        std::string out;
        for (tune::PlayedBar const& b : tune::played(tune).bars)
            out += music::plain(tune.bars[b.bar].notes[0].pitches[0])[0];
        return out;
    };
    for (auto const& [fine, back] :
         {std::pair{way("Fine", "fine=\"yes\""), way("D.C. al Fine", "dacapo=\"yes\"")},
          std::pair{way("", "fine=\"yes\""), way("", "dacapo=\"yes\"")},
          std::pair{std::string("<sound fine=\"yes\"/>"),
                    std::string("<sound dacapo=\"yes\"/>")}}) {
        tune::Tune const tune =
            tuneIn(score(bar(note("C", 4, "8")) + bar(note("D", 4, "8") + fine) +
                         bar(note("E", 4, "8")) + bar(note("F", 4, "8") + back)));
        CHECK(order(tune) == "CDEFCD");
        CHECK_FALSE(said(tune, "where to go on"));
    }
    std::string const segno =
        "<direction><direction-type><segno/></direction-type></direction>";
    std::string const coda = "<direction><direction-type><coda/></direction-type></direction>";
    tune::Tune const tune =
        tuneIn(score(bar(note("C", 4, "8")) +
                     bar(segno + note("D", 4, "8") + way("To Coda", "tocoda=\"coda\"")) +
                     bar(note("E", 4, "8") + way("D.S. al Coda", "dalsegno=\"segno\"")) +
                     bar(coda + note("F", 4, "8"))));
    CHECK(order(tune) == "CDEDF");
}

TEST_CASE("Impossible accidentals, tuplets and tempos are said, and the notes kept", "[musicxml]")
{
    auto const altered = [](std::string const& alter) {
        return tuneIn(score(bar("<note><pitch><step>C</step><alter>" + alter +
                                "</alter><octave>4</octave></pitch><duration>8</duration></note>")));
    };
    CHECK(notesOf(altered("1")) == "C#4:1 ");
    CHECK_FALSE(said(altered("1"), "double sharp"));
    for (char const* far : {"1e9", "-3", "4"}) {
        CAPTURE(far);
        CHECK(said(altered(far), "beyond a double sharp or flat"));
    }
    CHECK(said(altered("0.5"), "less than a semitone"));

    auto const tuplet = [](std::string const& actual) {
        return tuneIn(score(bar(note("C", 4, "8",
                                     "<time-modification><actual-notes>" + actual +
                                         "</actual-notes><normal-notes>2</normal-notes>"
                                         "</time-modification>"))));
    };
    CHECK_FALSE(said(tuplet("3"), "impossible numbers"));
    for (char const* wrong : {"0", "-3", "999999999", "99999999999999"}) {
        CAPTURE(wrong);
        CHECK(said(tuplet(wrong), "impossible numbers"));
        CHECK(notesOf(tuplet(wrong)) == "C4:1 ");
    }

    auto const timed = [](std::string const& tempo) {
        return tuneIn(score(
            bar("<direction><direction-type><metronome><beat-unit>quarter</beat-unit><per-minute>" +
                tempo + "</per-minute></metronome></direction-type><sound tempo=\"" + tempo +
                "\"/></direction>" + note("C", 4, "8"))));
    };
    CHECK(timed("96").tempo);
    CHECK_FALSE(said(timed("96"), "tempo"));
    for (char const* wrong : {"0", "-5", "1e300", "100000"}) {
        CAPTURE(wrong);
        CHECK_FALSE(timed(wrong).tempo);
        CHECK(said(timed(wrong), "the metronome mark is not a tempo"));
        CHECK(said(timed(wrong), "the tempo of the sound is none"));
    }
}

namespace {

std::string chordsOf(tune::Tune const& tune)
{
    std::string out;
    for (tune::Bar const& b : tune.bars)
        for (tune::ChordMark const& mark : b.chords)
            out += music::plain(mark.chord) + '@' + music::text(mark.at.wholes) + ' ';
    return out;
}

std::string symbol(std::string const& kind, std::string const& more = "")
{
    return "<harmony><root><root-step>C</root-step></root>" + kind + more + "</harmony>";
}

// Two parts with the measures given.
std::string parts(std::string const& first, std::string const& second)
{
    return "<score-partwise><part-list><score-part id=\"P1\"><part-name>One</part-name>"
           "</score-part><score-part id=\"P2\"><part-name>Two</part-name></score-part>"
           "</part-list><part id=\"P1\">" +
           first + "</part><part id=\"P2\">" + second + "</part></score-partwise>";
}

std::string versesOf(tune::Tune const& tune)
{
    std::string out;
    for (tune::Bar const& b : tune.bars)
        for (tune::Note const& n : b.notes) {
            for (tune::Syllable const& s : n.verses) out += s.text + '/';
            out += ' ';
        }
    return out;
}

} // namespace

TEST_CASE("A chord of a kind that is not known is read as it is printed", "[musicxml][read]")
{
    // MusicXML 4.0, the element kind and its attribute text (from memory).
    auto const chord = [](std::string const& kind, std::string const& more = "") {
        return chordsOf(tuneIn(score(bar(symbol(kind, more) + note("C", 4, "8")))));
    };
    CHECK(chord("<kind text=\"7sus4\">other</kind>") == "C7sus4@0 ");
    CHECK(chord("<kind text=\"m7b5\"></kind>") == "Cm7b5@0 ");
    CHECK(chord("<kind/>") == "C@0 ");
    CHECK(chord("<kind text=\"maj7\">minor</kind>") == "Cm@0 ");
    CHECK(chord("<kind text=\"??\">other</kind>").empty());
    auto const degree = [](char const* value) {
        return std::string("<degree><degree-value>") + value +
               "</degree-value><degree-alter>0</degree-alter><degree-type>add</degree-type>"
               "</degree>";
    };
    CHECK(chord("<kind>major</kind>", degree("2")) == "Cadd9@0 ");
    CHECK(chord("<kind>major</kind>", degree("4")) == "Cadd11@0 ");
    CHECK(chord("<kind>major-11th</kind>") == "Cmaj9@0 ");
    CHECK(said(tuneIn(score(bar(symbol("<kind text=\"??\">other</kind>") + note("C", 4, "8")))),
               "the chord kind other is not known"));
    CHECK(said(
        tuneIn(score(bar("<harmony><root><root-step>C</root-step></root><kind>major</kind>"
                         "<root><root-step>G</root-step></root><kind>major</kind></harmony>" +
                         note("C", 4, "8")))),
        "a second chord"));
}

TEST_CASE("The tune is the part that sings or leads, its chords from where they stand",
          "[musicxml][read]")
{
    std::string const sung = "<lyric><text>la</text></lyric>";
    std::string const low = note("C", 3, "8");
    std::string const third = "<note><chord/><pitch><step>E</step><octave>3</octave></pitch>"
                              "<duration>8</duration></note>";
    std::string const major = symbol("<kind>major</kind>");
    // Chords written at the accompaniment.
    tune::Tune const led = tuneIn(parts(bar(note("G", 4, "8")), bar(major + low + third)));
    CHECK(notesOf(led) == "G4:1 ");
    CHECK(chordsOf(led) == "C@0 ");
    // A part with words, below another.
    tune::Tune const song = tuneIn(parts(bar(note("A", 5, "8")), bar(note("G", 4, "8", sung))));
    CHECK(notesOf(song) == "G4:1 ");
    // Two lines alike: the one with chords.
    tune::Tune const alike =
        tuneIn(parts(bar(note("A", 5, "8")), bar(major + note("G", 4, "8"))));
    CHECK(notesOf(alike) == "G4:1 ");
}

TEST_CASE("Tempo, parts and jumps that the first part alone has hold for the tune",
          "[musicxml][read]")
{
    std::string const sung = "<lyric><text>la</text></lyric>";
    auto const direction = [](std::string const& type, std::string const& sound = "") {
        return "<direction><direction-type>" + type + "</direction-type>" + sound +
               "</direction>";
    };
    std::string const first =
        bar(direction("<metronome><beat-unit>quarter</beat-unit><per-minute>72</per-minute>"
                      "</metronome>") +
            direction("<rehearsal>A</rehearsal>") + note("A", 5, "8")) +
        bar(note("A", 5, "8") + direction("<words>Fine</words>")) +
        bar(direction("<rehearsal>B</rehearsal>") + note("A", 5, "8")) +
        bar(note("A", 5, "8") +
            direction("<words>D.C. al Fine</words>", "<sound dacapo=\"yes\"/>"));
    tune::Tune const tune =
        tuneIn(parts(first, bar(note("C", 4, "8", sung)) + bar(note("D", 4, "8", sung)) +
                                bar(note("E", 4, "8", sung)) + bar(note("F", 4, "8", sung))));
    REQUIRE(tune.tempo);
    CHECK(tune.tempo->beatsPerMinute == 72);
    CHECK(tune.bars.at(0).part == "A");
    CHECK(tune.bars.at(2).part == "B");
    std::string order;
    for (tune::PlayedBar const& b : tune::played(tune).bars) order += std::to_string(b.bar + 1);
    CHECK(order == "123412");
}

TEST_CASE("Words are sung by the number at the end of their name, joined ones with a gap",
          "[musicxml][read]")
{
    auto const lyric = [](std::string const& number, std::string const& text) {
        return "<lyric number=\"" + number + "\">" + text + "</lyric>";
    };
    CHECK(
        versesOf(tuneIn(score(bar(
            note("C", 4, "4",
                 lyric("part1verse1", "<text>a</text>") +
                     lyric("part1verse2", "<text>b</text>")) +
            note("D", 4, "4", lyric("chorus", "<text>d</text><elision/><text>e</text>")))))) ==
        "a/b/ d e/ ");
}

TEST_CASE("A slur from grace notes to their note leaves no slur open", "[musicxml][read]")
{
    auto const slur = [](std::string const& type, std::string const& number = "1") {
        return "<notations><slur type=\"" + type + "\" number=\"" + number + "\"/></notations>";
    };
    std::string const grace = "<note><grace/><pitch><step>D</step><octave>5</octave></pitch>";
    auto const slurs = [](tune::Tune const& tune) {
        std::string out;
        for (tune::Note const& n : tune.bars[0].notes)
            out += std::to_string(n.slursOpen) + std::to_string(n.slursClose) + ' ';
        return out;
    };
    CHECK(slurs(tuneIn(score(bar(grace + slur("start") + "</note>" +
                                 note("C", 4, "4", slur("stop")) + note("D", 4, "4"))))) ==
          "00 00 ");
    CHECK(slurs(tuneIn(score(bar(grace + slur("start") + "</note>" + note("C", 4, "4") +
                                 note("D", 4, "4", slur("stop")))))) == "10 01 ");
}

TEST_CASE("What a lead sheet has no place for is said and counted", "[musicxml][read]")
{
    auto const direction = [](std::string const& type) {
        return "<direction><direction-type>" + type + "</direction-type></direction>";
    };
    std::string const pedal = direction("<pedal type=\"start\"/>");
    tune::Tune const tune = tuneIn(score(
        bar(pedal + note("C", 4, "4", "<notations><glissando type=\"start\"/></notations>") +
            pedal +
            note("D", 4, "4",
                 "<notations><ornaments><tremolo>3</tremolo></ornaments></notations>")) +
        bar("<figured-bass><figure><figure-number>6</figure-number></figure></figured-bass>" +
            note("E", 4, "4", "<notehead>slash</notehead>") + note("F", 4, "4", "<cue/>"))));
    CHECK(said(tune, "the sign pedal over or under the staff (2 times)"));
    CHECK(said(tune, "the sign glissando at a note"));
    CHECK(said(tune, "the sign tremolo at a note"));
    CHECK(said(tune, "figured bass"));
    CHECK(said(tune, "strokes for a rhythm"));
    CHECK(notesOf(tune) == "C4:1/2 D4:1/2 z:1/2 x:1/2 ");
    CHECK(tuneIn(score(bar(note("C", 4, "8",
                                "<notations><articulations><strong-accent/>"
                                "</articulations></notations>"))))
              .bars[0]
              .notes[0]
              .marks == std::vector<std::string>{"marcato"});
}

TEST_CASE("Bars that only repeat those before are written out, and late repeats open",
          "[musicxml][read]")
{
    auto const style = [](std::string const& type) {
        return "<attributes><measure-style><measure-repeat type=\"" + type +
               "\">1</measure-repeat></measure-style></attributes>";
    };
    std::string const rest = "<note><rest/><duration>8</duration></note>";
    tune::Tune const tune = tuneIn(
        score(bar(note("C", 4, "4") + note("D", 4, "4")) + bar(style("start") + rest) +
              bar(style("stop") + note("E", 4, "8") +
                  "<barline location=\"right\"><repeat direction=\"forward\"/></barline>") +
              bar(note("F", 4, "8"))));
    CHECK(notesOf(tune) == "C4:1/2 D4:1/2 C4:1/2 D4:1/2 E4:1 F4:1 ");
    CHECK(said(tune, "the sign to repeat the bar before"));
    CHECK(tune.bars.at(3).repeatOpens);
}
