#include "core/arrange/unfold.h"
#include "core/files/musicxml/mxl.h"
#include "core/files/musicxml/read.h"
#include "core/files/musicxml/write.h"
#include "core/notation/handcrossing.h"
#include "core/notation/placings.h"
#include "tests/exchange/outside.h"
#include "tests/exchange/samples.h"
#include "tests/proposal/scenario.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>
#include <pugixml.hpp>

#include <algorithm>
#include <map>

using notation::Kind;

namespace {

pugi::xml_document parsed(std::string const& text)
{
    pugi::xml_document document;
    REQUIRE(document.load_buffer(text.data(), text.size()));
    return document;
}

pugi::xml_document written(tune::Tune const& tune, Kind kind = Kind::Arrangement)
{
    return parsed(files::musicXml(example::arrangementOf(tune), kind));
}

std::string textAt(pugi::xml_document const& document, char const* path)
{
    return document.select_node(path).node().text().get();
}

std::size_t count(pugi::xml_document const& document, char const* path)
{
    return document.select_nodes(path).size();
}

void checkValid(std::string const& score)
{
    outside::TemporaryFile const file(score, ".musicxml");
    auto const answer = outside::validated(file.path(), "musicxml.xsd");
    if (!answer) return;
    INFO(answer->text);
    CHECK(answer->status == 0);
}

// A tune with everything the writer has an element for.
tune::Tune fullTune()
{
    return scenario::tuneOf(
        "X:1\nT:Everything & more\nT:Also <this>\nC:made up\nO:nowhere\nS:a note book\n"
        "R:reel\nN:with care\nM:C\nL:1/8\nQ:1/2=66.5\nP:AB\nK:Ador\nP:A\n"
        "|: AB | !trill!\"Am\"{e}A2 (3Bcd .e2 !fermata!d2 | \"G\"G>A !2!B2-B4 | "
        "[M:3/4] \"Am7\"^c3 =c [Ace]2 | \"D7/F#\"{de}f/g/a/b/ z4 |1 \"E7b9\"e4 :|\n"
        "[2 \"Am\"\"F\"a4 ||\nP:B\nK:Bb\nM:9/8\n"
        "\"^slowly\"\"Bb\"B3 !unheard!d3 f3 | \"Cm\"c9 | \"F7\"f5 e/d/ c2 |]\n");
}

} // namespace

TEST_CASE("A score has two staves, a voice for each hand and the words of the sheet",
          "[musicxml]")
{
    auto const score = written(example::jig());
    CHECK(textAt(score, "//work-title") == "The Lantern on the Weir");
    CHECK(textAt(score, "//creator[@type='composer']") == "Composed for this program");
    CHECK(textAt(score, "//staves") == "2");
    CHECK(textAt(score, "//clef[@number='2']/sign") == "F");
    CHECK(textAt(score, "//fifths") == "1");
    CHECK(textAt(score, "//mode") == "major");
    CHECK(count(score, "//note[voice='1' and staff!='1']") == 0);
    CHECK(count(score, "//note[voice='2' and staff!='2']") == 0);
    CHECK(count(score, "//note[voice='2']/pitch") > 30);
    // Dotted crotchet 72 is 108 crotchets a minute.
    CHECK(textAt(score, "//per-minute") == "72");
    CHECK(count(score, "//beat-unit-dot") == 1);
    CHECK(score.select_node("//sound/@tempo").attribute().as_double() == 108);
    CHECK(count(score, "//direction[@placement='below']//words[.='1-5-8']") > 10);
    CHECK(count(score, "//words[starts-with(., 'Set levers')]") == 1);
    CHECK(count(score, "//rehearsal") == 2);
    CHECK(count(score, "//note[grace]") == 3);
    CHECK(count(score, "//staccato") == 1);
    CHECK(count(score, "//fermata") == 1);
}

TEST_CASE("Repeats, endings and pick-ups are written as the standard has them", "[musicxml]")
{
    auto const score = written(example::jig());
    CHECK(score.select_node("//measure[1]/@implicit").attribute().value() ==
          std::string("yes"));
    CHECK(score.select_node("//measure[1]/@number").attribute().value() == std::string("0"));
    CHECK(count(score, "//repeat[@direction='forward']") == 2);
    CHECK(count(score, "//repeat[@direction='backward']") == 2);
    CHECK(count(score, "//ending[@number='1' and @type='start']") == 1);
    CHECK(count(score, "//ending[@number='1' and @type='stop']") == 1);
    CHECK(count(score, "//ending[@number='2' and @type='start']") == 1);
    CHECK(count(score, "//ending[@number='2' and @type='stop']") == 1);
}

TEST_CASE("Every measure of a score lasts as long as its bar in both hands", "[musicxml]")
{
    tune::Tune const tune = fullTune();
    auto const score = written(tune);
    int const divisions = std::stoi(textAt(score, "//divisions"));
    tune::BarIndex bar = 0;
    for (auto const& found : score.select_nodes("//measure")) {
        for (int voice : {1, 2}) {
            int sum = 0;
            for (pugi::xml_node note : found.node().children("note"))
                if (!note.child("chord") && note.child("voice").text().as_int() == voice)
                    sum += note.child("duration").text().as_int();
            CAPTURE(bar, voice);
            CHECK(music::Rational(sum, 4 * divisions) == tune.bars.at(bar).length.wholes);
        }
        ++bar;
    }
    CHECK(bar == tune.bars.size());
}

TEST_CASE("Chord symbols are harmonies with kind, degrees and bass", "[musicxml]")
{
    auto const score = written(fullTune());
    CHECK(count(score, "//harmony[root/root-step='D' and kind='dominant' and "
                       "bass/bass-step='F' and bass/bass-alter='1']") == 1);
    CHECK(count(score, "//harmony[root/root-step='E' and degree/degree-value='9' and "
                       "degree/degree-alter='-1']") == 1);
    // Two symbols over one note: the second is for the second time, where that is not written
    // out.
    CHECK(count(written(fullTune(), Kind::Lead),
                "//harmony[@type='alternate' and root/root-step='F']") == 1);
}

TEST_CASE("Tuplets, ties, beams and accidentals of a score agree with the sheet", "[musicxml]")
{
    auto const score = written(fullTune());
    CHECK(count(score, "//note[time-modification[actual-notes='3' and normal-notes='2']]") ==
          3);
    CHECK(count(score, "//tuplet[@type='start']") == 1);
    CHECK(count(score, "//note[voice='1']/tie[@type='start']") ==
          count(score, "//note[voice='1']/tie[@type='stop']"));
    CHECK(count(score, "//beam[.='begin']") == count(score, "//beam[.='end']"));
    CHECK(count(score, "//note[pitch[step='C' and alter='1']]/accidental[.='sharp']") == 1);
    CHECK(count(score, "//note[pitch[step='C' and not(alter)]]/accidental[.='natural']") == 1);
}

TEST_CASE("A pattern score has one staff with labels and a lead score none", "[musicxml]")
{
    auto const pattern = written(example::jig(), Kind::Patterns);
    CHECK(count(pattern, "//staves") == 0);
    CHECK(count(pattern, "//note[voice='2']") == 0);
    CHECK(count(pattern, "//words[.='1-5-8']") > 10);
    auto const lead = written(example::jig(), Kind::Lead);
    CHECK(count(lead, "//words[.='1-5-8']") == 0);
    CHECK(count(lead, "//harmony") == count(pattern, "//harmony"));
    CHECK(count(lead, "//fingering") == 0);
}

TEST_CASE("Written scores are valid MusicXML 4.0", "[musicxml]")
{
    // Referee: the W3C schema, by xmllint.
    for (Kind kind : {Kind::Arrangement, Kind::Patterns, Kind::Lead}) {
        checkValid(files::musicXml(example::arrangementOf(example::jig()), kind));
        checkValid(files::musicXml(example::arrangementOf(fullTune()), kind));
    }
    auto const brief = scenario::briefFor(scenario::eightBars);
    checkValid(files::musicXml(scenario::proposed(brief).arrangement, Kind::Arrangement));
}

namespace {

// A tune with one mark, and what MusicXML 4.0 has for it.
struct SignRow {
    char const* mark;
    char const* path;
    int count;
};

} // namespace

TEST_CASE("Each sign is the standard's own element, valid, and reads back", "[musicxml]")
{
    // W3C MusicXML 4.0, elements of direction-type, notations, technical and dynamics.
    auto const row =
        GENERATE(SignRow{"fermata", "//notations/fermata", 1},
                 SignRow{"segno", "//direction-type/segno", 1},
                 SignRow{"coda", "//direction-type/coda", 1},
                 SignRow{"harmonic", "//technical/harmonic", 1},
                 SignRow{"muffle", "//direction-type/damp", 1},
                 SignRow{"muffleall", "//direction-type/damp-all", 1},
                 SignRow{"lv", "//notations/tied[@type='let-ring']", 3}, // at each note
                 SignRow{"arpeggio", "//notations/arpeggiate", 3},       // at each note
                 SignRow{"mf", "//direction-type/dynamics/mf", 1},
                 SignRow{"rfz", "//direction-type/dynamics/rfz", 1});
    CAPTURE(row.mark);
    std::string const abc = std::string("X:1\nT:One sign\nM:4/4\nL:1/4\nK:C\n\"C\"c2 !") +
                            row.mark + "![CEG]2|\"G\"d4|]\n";
    tune::Tune const tune = scenario::tuneOf(abc);
    for (Kind kind : {Kind::Lead, Kind::Arrangement}) {
        std::string const score = files::musicXml(example::arrangementOf(tune), kind);
        checkValid(score);
        pugi::xml_document const document = parsed(score);
        CHECK(count(document,
                    (std::string(row.path) + "[not(ancestor::note/staff='2')]").c_str()) ==
              static_cast<std::size_t>(row.count));
        auto const back = files::readMusicXml(score, "score");
        REQUIRE(back);
        auto const& marks = back->bars[0].notes[1].marks;
        CHECK(std::count(marks.begin(), marks.end(), row.mark) == 1);
        CHECK_FALSE(back->bars[0].notes[1].tied);
    }
}

TEST_CASE("Hairpins are wedges and read back", "[musicxml]")
{
    tune::Tune const tune = scenario::tuneOf(
        "X:1\nT:Louder\nM:4/4\nL:1/4\nK:C\n\"C\"!crescendo(!cde!crescendo)!f|\"G\"d4|]\n");
    std::string const score = files::musicXml(example::arrangementOf(tune), Kind::Lead);
    checkValid(score);
    pugi::xml_document const document = parsed(score);
    CHECK(count(document, "//wedge[@type='crescendo']") == 1);
    CHECK(count(document, "//wedge[@type='stop']") == 1);
    auto const back = files::readMusicXml(score, "score");
    REQUIRE(back);
    CHECK(back->bars[0].notes[0].marks == std::vector<std::string>{"crescendo("});
    CHECK(back->bars[0].notes[3].marks == std::vector<std::string>{"crescendo)"});
}

TEST_CASE("What is placed together is a bracket that begins and ends once", "[musicxml]")
{
    auto const arrangement =
        scenario::proposed(scenario::briefFor(scenario::eightBars)).arrangement;
    auto const brackets = notation::placingBrackets(arrangement);
    REQUIRE_FALSE(brackets.empty());
    pugi::xml_document const document = parsed(files::musicXml(arrangement, Kind::Arrangement));
    CHECK(count(document, "//bracket[@type='start']") == brackets.size());
    CHECK(count(document, "//bracket[@type='stop']") == brackets.size());
    // A number is free again before it begins anew.
    std::map<std::string, int> open;
    for (auto const& node : document.select_nodes("//bracket")) {
        bool const begins = std::string(node.node().attribute("type").value()) == "start";
        int& now = open[node.node().attribute("number").value()];
        now += begins ? 1 : -1;
        CHECK((now == 0 || now == 1));
    }
}

TEST_CASE("Left-hand notes printed on the upper staff say so, and stay in their voice",
          "[musicxml]")
{
    // A tune high above; folk tunes with such notes are read by another library in
    // referee_test.cpp.
    proposal::Brief brief = scenario::briefFor(scenario::tuneOf(
        "X:1\nT:High\nM:4/4\nL:1/4\nQ:1/4=60\nK:C\n\"C\"c'4|\"F\"a4|\"G\"b4|\"C\"c'4|]\n"));
    auto const arrangement = scenario::proposed(brief).arrangement;
    pugi::xml_document const document = parsed(files::musicXml(arrangement, Kind::Arrangement));
    auto const printed = notation::of(arrangement, Kind::Arrangement);
    for (tune::BarIndex const i : printed.bars.indices()) {
        notation::PrintedBar bar = printed.bars[i];
        notation::moveHighNotes(bar, arrangement.tune.bars[i]);
        std::string const path = "(//measure)[" + std::to_string(i + 1) +
                                 "]/note[voice='2'][staff='1'][pitch][not(chord)]";
        CHECK(count(document, path.c_str()) == bar.upperBelow.notes.values().size());
    }
    CHECK(count(document, "//note[voice='2'][staff='1'][rest]") == 0);
    CHECK(count(document, "//note[voice='1'][staff='2']") == 0);
}

TEST_CASE("Times through that differ are written out, as on the sheet", "[musicxml]")
{
    proposal::Brief brief = scenario::briefFor(
        scenario::tuneOf("X:1\nT:Twice\nM:4/4\nL:1/4\nQ:1/"
                         "4=70\nK:G\n|:\"G\"GABd|\"C\"e2c2|\"D\"dcBA|\"G\"G4:|\n"));
    brief.passes = proposal::Passes::Varied;
    auto const arrangement = scenario::proposed(brief).arrangement;
    bool const differs = arrange::passesDiffer(arrangement);
    CHECK(differs);
    std::string const score = files::musicXml(arrangement, Kind::Arrangement);
    checkValid(score);
    pugi::xml_document const document = parsed(score);
    CHECK(count(document, "//measure") == (differs ? 8 : 4));
    CHECK(count(document, "//repeat") == (differs ? 0 : 1));
}

TEST_CASE("Fingers of a score read back as those of the tune, and stand on its lead sheet",
          "[musicxml]")
{
    tune::Tune const tune = scenario::tuneOf(
        "X:1\nT:Fingers\nM:4/4\nL:1/4\nK:C\n\"C\"!3!c!2!d[!3!C!1!E]2|\"G\"d4|]\n");
    std::string const score = files::musicXml(example::arrangementOf(tune), Kind::Lead);
    checkValid(score);
    CHECK(count(parsed(score), "//fingering") == 4);
    auto const back = files::readMusicXml(score, "score");
    REQUIRE(back);
    CHECK(back->bars[0].notes[0].marks == std::vector<std::string>{"3"});
    CHECK(back->bars[0].notes[1].marks == std::vector<std::string>{"2"});
    CHECK(back->bars[0].notes[2].marks == std::vector<std::string>{"3", "1"});
    CHECK(notation::of(*back).bars[0].upper.notes[2].fingers == std::vector<int>{3, 1});
}

TEST_CASE("Scores of folk tunes are valid MusicXML 4.0", "[musicxml][data][slow]")
{
    samples::someFolkTunes(50, [](tune::Tune const& tune) {
        auto const proposal = proposal::propose(scenario::briefFor(tune));
        if (proposal)
            checkValid(files::musicXml(proposal->arrangement, Kind::Arrangement));
    });
}

TEST_CASE("A compressed score is a zip with its type first and a valid container",
          "[musicxml][mxl]")
{
    std::string const score =
        files::musicXml(example::arrangementOf(example::jig()), Kind::Arrangement);
    std::string const bytes = files::mxlFile(score, "score");
    CHECK(files::looksZipped(bytes));
    // The media type comes first and is not packed (MusicXML 4.0, compressed files); a zip
    // entry's header is 30 bytes long.
    CHECK(bytes.substr(30, 8) == "mimetype");
    CHECK(bytes.find("application/vnd.recordare.musicxml") < 100);
    auto const back = files::scoreInMxl(bytes, "file");
    REQUIRE(back);
    CHECK(*back == score);
    CHECK(files::mxlFile(score, "score") == bytes);

    outside::TemporaryFile const file(bytes, ".mxl");
    if (!outside::hasProgram("unzip")) return;
    auto const container = outside::run("unzip -p " + file.path() + " META-INF/container.xml");
    outside::TemporaryFile const inside(container.text, ".xml");
    auto const answer = outside::validated(inside.path(), "container.xsd");
    if (!answer) return;
    INFO(answer->text);
    CHECK(answer->status == 0);
}
