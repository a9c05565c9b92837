#include "core/files/spoken.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>
#include <pugixml.hpp>

// What a reader of braille or a listener needs of a sheet: every bar with its number, every note
// of both hands with value and finger (common practice of verbal descriptions, no source).
TEST_CASE("A sheet is said bar by bar with notes, values and fingers", "[spoken]")
{
    auto const arrangement = example::arrangementOf(example::jig());
    std::string const text = files::spokenText(arrangement, notation::Kind::Arrangement);
    CAPTURE(text);
    CHECK(text.starts_with("The Lantern on the Weir\n"));
    CHECK(text.find("Pick-up. ") != std::string::npos);
    CHECK(text.find("Part A.\nBar 1, G. A repeat begins. Right hand: G4, quaver; B4, quaver; D5, "
                    "quaver; G5, crotchet; E5, quaver. Left hand 1-5-8: G2 fourth, quaver; D3 "
                    "second, quaver; G3 thumb, quaver; G3 held on, dotted crotchet.") !=
          std::string::npos);
    CHECK(text.find("F sharp 5") != std::string::npos);
    CHECK(text.find("The first time only.") != std::string::npos);
    CHECK(text.find("♯") == std::string::npos);
    std::string const lead = files::spokenText(arrangement, notation::Kind::Lead);
    CHECK(lead.find("Left hand") == std::string::npos);
}

TEST_CASE("A triplet says where it begins and ends", "[spoken]")
{
    auto tune = example::jig();
    tune::Bar& bar = tune.bars[1];
    // The first two quavers' time for three: semiquaver triplets of the written quavers.
    tune::Notes const rest(bar.notes.begin() + 2, bar.notes.end());
    bar.notes.resize(2);
    bar.notes.push_back(bar.notes.back());
    for (tune::NoteIndex i = 0; i < 3; ++i) {
        bar.notes[i].length = music::Length{music::Rational(1, 12)};
        bar.notes[i].at = music::Length{music::Rational(i.value(), 12)};
    }
    bar.notes.insert(bar.notes.end(), rest.begin(), rest.end());
    bar.tuplets = {{0, 2, 3, 2}};
    std::string const text =
        files::spokenText(example::arrangementOf(tune), notation::Kind::Lead);
    CAPTURE(text);
    CHECK(text.find("triplet, G4, quaver; B4, quaver; B4, quaver, the triplet ends; D5, "
                    "quaver;") != std::string::npos);
    std::vector<tune::Tuplet> const odd{{0, 2, 5, 4}};
    tune.bars[1].tuplets = odd;
    CHECK(files::spokenText(example::arrangementOf(tune), notation::Kind::Lead)
              .find("5 in the time of 4, G4") != std::string::npos);
}

TEST_CASE("No gap is left before a mark where a sign is said as a word", "[spoken]")
{
    auto tune = example::jig();
    tune.bars[1].annotations.push_back({{}, "(A♯), or B♭/D."});
    std::string const text =
        files::spokenText(example::arrangementOf(tune), notation::Kind::Lead);
    CAPTURE(text);
    CHECK(text.find("(A sharp), or B flat/D.") != std::string::npos);
}

TEST_CASE("The spoken sheet as HTML is well formed and says the same", "[spoken]")
{
    auto tune = example::jig();
    tune.title = "Salt & <Sallow>";
    auto const arrangement = example::arrangementOf(tune);
    std::string const page = files::spokenHtml(arrangement, notation::Kind::Arrangement);
    // HTML, a living standard: a doctype, then elements that close; as XML but for <meta>.
    REQUIRE(page.starts_with("<!DOCTYPE html>\n"));
    std::string body = page.substr(page.find("<body>"));
    body = body.substr(0, body.find("</html>"));
    pugi::xml_document document;
    REQUIRE(document.load_string(body.c_str()));
    pugi::xml_node const root = document.child("body");
    CHECK(std::string(root.child("h1").text().get()) == "Salt & <Sallow>");
    int bars = 0;
    std::string all;
    for (pugi::xml_node list : root.children("ul"))
        for (pugi::xml_node item : list.children("li")) {
            ++bars;
            all += std::string(item.child("strong").text().get()) + item.text().get() + '\n';
        }
    CHECK(bars == tune.bars.size());
    CHECK(root.select_node("ul/li[@id='bar-3']"));
}
