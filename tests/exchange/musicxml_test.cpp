#include "core/files/musicxml/mxl.h"
#include "core/files/musicxml/write.h"
#include "tests/exchange/outside.h"
#include "tests/exchange/samples.h"
#include "tests/proposal/scenario.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>
#include <pugixml.hpp>

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
    std::size_t bar = 0;
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
    // Two symbols over one note: the second is for the second time.
    CHECK(count(score, "//harmony[@type='alternate' and root/root-step='F']") == 1);
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
