#include "core/files/abc/read.h"
#include "core/files/abc/fields.h"
#include "core/files/abc/text.h"
#include "core/files/check.h"
#include "core/tune/playing.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace files;
using music::Length;
using music::Rational;

namespace {

tune::Tune read(std::string const& text)
{
    auto const entries = abcTunes(text);
    REQUIRE(entries);
    auto const tune = readAbc(text, entries->front(), "test.abc");
    if (!tune) FAIL(base::sentence(tune.error()));
    return *tune;
}

// A tune in 4/4 and quavers from its music alone.
tune::Tune notes(std::string const& line, std::string const& key = "C")
{
    return read("X:1\nM:4/4\nL:1/8\nK:" + key + "\n" + line + "\n");
}

// "C4:1/8 E4+G4:1/4 z:1/8": pitches and lengths of all bars, "|" between them.
std::string told(tune::Tune const& tune)
{
    std::string out;
    for (tune::Bar const& bar : tune.bars) {
        if (!out.empty()) out += " | ";
        for (tune::Note const& note : bar.notes) {
            if (note.at.wholes > Rational(0)) out += ' ';
            std::string name = note.pitches.empty() ? "z" : "";
            for (music::Pitch const& pitch : note.pitches)
                name += (name.empty() ? "" : "+") + plain(pitch);
            out += name + ':' + text(note.length.wholes);
        }
    }
    return out;
}

bool isSaid(tune::Tune const& tune, std::string_view part)
{
    for (tune::Remark const& remark : tune.said)
        if (remark.what.find(part) != std::string::npos) return true;
    return false;
}

} // namespace

TEST_CASE("The fields of a tune's head are kept", "[abc]")
{
    tune::Tune const tune = read("X:7\nT:First\nT:Second\nC:somebody\nO:nowhere\nS:a book\n"
                                 "R:jig\nN:a remark\nM:6/8\nQ:3/8=90\nK:Ador\nABc d3|\n");
    CHECK(tune.number == 7);
    CHECK(tune.title == "First");
    CHECK(tune.otherTitles == std::vector<std::string>{"Second"});
    CHECK(tune.composer == "somebody");
    CHECK(tune.origin == "nowhere");
    CHECK(tune.source == "a book");
    CHECK(tune.rhythm == "jig");
    CHECK(tune.notes == std::vector<std::string>{"a remark"});
    CHECK(tune.meter == music::Meter{6, 8, false});
    CHECK(tune.key == *music::keyFrom("Ador"));
    CHECK(tune.tempo == tune::Tempo{{Rational(3, 8)}, 90});
}

TEST_CASE("Fields at the head of the file hold for every tune of it", "[abc]")
{
    // ABC 2.1, section 2.2.2 (from memory).
    std::string const text =
        "%abc-2.1\nM:3/4\nL:1/4\n\nX:1\nK:G\nGAB|\n\nX:2\nM:2/4\nK:D\nde|\n";
    auto const entries = abcTunes(text);
    REQUIRE(entries);
    REQUIRE(entries->size() == 2);
    tune::Tune const first = *readAbc(text, entries->at(0), "");
    tune::Tune const second = *readAbc(text, entries->at(1), "");
    CHECK(first.meter == music::Meter{3, 4, false});
    CHECK(second.meter == music::Meter{2, 4, false});
    CHECK(told(second) == "D5:1/4 E5:1/4");
}

TEST_CASE("The tunes of a book are found with number, title and line", "[abc]")
{
    std::string const text =
        "free text\n\nX:12\nT:One\nK:C\nC|\n\nmore text\nX: 3\nK:G\nG|\nX:4\n"
        "T:Three\n\nK:D\nD|\n";
    auto const entries = abcTunes(text);
    REQUIRE(entries);
    REQUIRE(entries->size() == 3);
    CHECK(entries->at(0).number == 12);
    CHECK(entries->at(0).title == "One");
    CHECK(entries->at(0).line == 3);
    CHECK(entries->at(1).number == 3);
    CHECK(entries->at(1).title.empty());
    CHECK(entries->at(2).title == "Three");
    // An empty line before K: does not end a tune.
    CHECK(told(*readAbc(text, entries->at(2), "")) == "D4:1/8");
}

TEST_CASE("A text without X: is one tune when it has a key", "[abc]")
{
    CHECK(told(read("T:Loose\nK:G\nGAB|\n")) == "G4:1/8 A4:1/8 B4:1/8");
}

TEST_CASE("Opening a book of 7,000 tunes reads only their heads", "[abc]")
{
    std::string book;
    for (int i = 1; i <= 7000; ++i)
        book += "X:" + std::to_string(i) + "\nT:Tune\nK:G\n[broken on purpose\n\n";
    auto const entries = abcTunes(book);
    REQUIRE(entries);
    CHECK(entries->size() == 7000);
    CHECK(entries->back().number == 7000);
}

TEST_CASE("Key words of old tune books are understood", "[abc]")
{
    // Signature by letter; ABC 2.1, section 3.1.14.
    auto const [word, sharps] = GENERATE(table<std::string, int>({
        {"G", 1},
        {"Glyd", 2},
        {"AMixolydian", 2},
        {"A Mixolydian", 2},
        {"EDorian", 2},
        {"E Minor", 1},
        {"F# Minor", 3},
        {"Dmixm", 1},
        {"GM", 1},
        {"Bb", -2},
        {"G clef=bass", 1},
        {"Am treble", 0},
        {"Hp", 2},
        {"HP", 0},
        {"none", 0},
        {"", 0},
    }));
    CAPTURE(word);
    auto const key = abcKey(word);
    REQUIRE(key);
    int sum = 0;
    for (int alter : key->alter) sum += alter;
    CHECK(sum == sharps);
}

TEST_CASE("A listed signature takes the mode that comes nearest as its name", "[abc]")
{
    CHECK(abcKey("D exp _b _e ^f")->key == *music::keyFrom("Dphr"));
    CHECK(abcKey("A exp ^f ^c")->key == *music::keyFrom("Amix"));
    CHECK_FALSE(abcKey("D exp ^h"));
    CHECK_FALSE(abcKey("Bn"));
    CHECK_FALSE(abcKey("Q"));
}

TEST_CASE("Meters are read as numbers, sums and signs", "[abc]")
{
    CHECK(abcMeter("6/8")->meter == music::Meter{6, 8, false});
    CHECK(abcMeter("(2+2+3)/8")->meter == music::Meter{7, 8, false});
    CHECK(abcMeter("C|")->meter == music::Meter{2, 2, true});
    CHECK_FALSE(abcMeter("none")->meter);
    for (std::string const bad :
         {"", "4", "0/4", "4/0", "4/3", "99/4", "4/128", "((2+3)/8", "x/8"})
        CHECK_FALSE(abcMeter(bad));
}

TEST_CASE("Tempos are read in new and old forms", "[abc]")
{
    // ABC 2.1, section 3.1.8; a bare number counts unit lengths.
    Rational const quaver(1, 8);
    CHECK(abcTempo("1/4=96", quaver)->tempo == tune::Tempo{{Rational(1, 4)}, 96});
    CHECK(abcTempo("1/4 3/8 = 40", quaver)->tempo == tune::Tempo{{Rational(5, 8)}, 40});
    CHECK(abcTempo("180", quaver)->tempo == tune::Tempo{{quaver}, 180});
    CHECK(abcTempo("C3=60", quaver)->tempo == tune::Tempo{{Rational(3, 8)}, 60});
    CHECK(abcTempo("1/4=92.5", quaver)->tempo == tune::Tempo{{Rational(1, 4)}, 92.5});
    CHECK(abcTempo("1/4=100 \"Slow\"", quaver)->words == "Slow");
    CHECK_FALSE(abcTempo("\"Slow\"", quaver)->tempo);
    for (std::string const bad : {"", "0/0=0", "1/4=0", "-5", "1/4=", "=90", "1/4=9999"})
        CHECK_FALSE(abcTempo(bad, quaver));
}

TEST_CASE("Part orders unfold brackets and counts", "[abc]")
{
    // ABC 2.1, section 3.1.9.
    using Names = std::vector<std::string>;
    CHECK(abcPartOrder("AABA") == Names{"A", "A", "B", "A"});
    CHECK(abcPartOrder("A2.(BC)2") == Names{"A", "A", "B", "C", "B", "C"});
    CHECK_FALSE(abcPartOrder("AZQ((B"));
    CHECK_FALSE(abcPartOrder("((((A9)9)9)9)9"));
    CHECK_FALSE(abcPartOrder("A99999999999"));
}

TEST_CASE("An accidental reaches as far as the file asks", "[abc]")
{
    // ABC 2.1, section 11.3: every octave unless the file says otherwise.
    CHECK(told(notes("^cCc|c|")) == "C#5:1/8 C#4:1/8 C#5:1/8 | C5:1/8");
    CHECK(told(notes("%%propagate-accidentals octave\n^cCc|")) == "C#5:1/8 C4:1/8 C#5:1/8");
    CHECK(told(notes("%%propagate-accidentals not\n^cc|")) == "C#5:1/8 C5:1/8");
}

TEST_CASE("A tie carries its accidental over the bar line, to the tied note alone", "[abc]")
{
    CHECK(told(notes("^f4-|ff|")) == "F#5:1/2 | F#5:1/8 F5:1/8");
}

TEST_CASE("A key may raise the octave of its notes", "[abc]")
{
    CHECK(told(notes("C|", "C octave=-1")) == "C3:1/8");
}

TEST_CASE("Tuplets are kept with their notes", "[abc]")
{
    tune::Tune const tune = notes("A2(3Bcd e2|");
    REQUIRE(tune.bars[0].tuplets.size() == 1);
    CHECK(tune.bars[0].tuplets[0] == tune::Tuplet{1, 3, 3, 2});
}

TEST_CASE("Bars of rest fill so many bars", "[abc]")
{
    CHECK(told(notes("C8|Z2|D8|")) == "C4:1 | z:1 | z:1 | D4:1");
}

TEST_CASE("Marks are kept by their long names, and the file may name its own", "[abc]")
{
    tune::Tune const tune = notes("U: W = !arpeggio!\n.A ~B !fermata!c W[dfa] +trill+e|");
    std::vector<std::string> marks;
    for (tune::Note const& note : tune.bars[0].notes)
        for (std::string const& mark : note.marks) marks.push_back(mark);
    CHECK(marks ==
          std::vector<std::string>{"staccato", "roll", "fermata", "arpeggio", "trill"});
}

TEST_CASE("Beams break at spaces and go on without them", "[abc]")
{
    tune::Tune const tune = notes("AB cd`e|");
    std::vector<bool> broken;
    for (tune::Note const& note : tune.bars[0].notes) broken.push_back(note.beamBroken);
    CHECK(broken == std::vector<bool>{true, false, true, false, false});
}

TEST_CASE("Chord symbols stand at their notes and other texts beside them", "[abc]")
{
    tune::Tune const tune = notes("\"Em\"E2\"D.C.\"G2 \"D/f+\"F2\"4\"A2|\"tr\"\"C\"c8|");
    REQUIRE(tune.bars[0].chords.size() == 2);
    CHECK(tune.bars[0].chords[0].written == "Em");
    CHECK(tune.bars[0].chords[1].at == Length{Rational(1, 2)});
    CHECK(plain(tune.bars[0].chords[1].chord) == "D/F#");
    REQUIRE(tune.bars[0].annotations.size() == 2);
    CHECK(tune.bars[0].annotations[0] == tune::Annotation{{Rational(1, 4)}, "D.C."});
    CHECK(plain(tune.bars[1].chords[0].chord) == "C");
}

TEST_CASE("Ordinary words over a tune are no chords and refuse nothing", "[abc]")
{
    // Texts as tune books hold them.
    for (std::string const word :
         {"4",     "0",         "SEGUE",       "tr",      "D.C.",
          "D.S.",  "Fine",      "Coda",        "Da Capo", "Chorus",
          "Bis",   "Break",     "End",         "BREAK",   "DC",
          "Gaily", "Cheerful.", "A1",          "B2",      "p",
          "ff",    "cresc.",    "1st Setting", "G minor", "Collected by a friend",
          "~",     "#",         "8va",         "No. 2",   "By",
          "Fly"}) {
        CAPTURE(word);
        tune::Tune const tune = notes("\"" + word + "\"C8|");
        CHECK(tune.bars[0].chords.empty());
        CHECK(tune.bars[0].annotations.size() == 1);
    }
}

TEST_CASE("Two chords over one note stand for the first and the second time", "[abc]")
{
    tune::Tune const tune = notes("\"C\"\"Em\"C4 \" \"\"G\"D4|");
    REQUIRE(tune.bars[0].chords.size() == 3);
    CHECK(tune.bars[0].chords[0].pass == 1);
    CHECK(tune.bars[0].chords[1].pass == 2);
    CHECK(tune.bars[0].chords[2].pass == 2);
}

TEST_CASE("Bar lines and repeats of every kind", "[abc]")
{
    // ABC 2.1, section 4.8.
    struct Expected {
        std::string between;
        tune::BarLine line;
        bool closes;
        bool opens;
    };
    using tune::BarLine;
    auto const row = GENERATE(Expected{"|", BarLine::Single, false, false},
                              Expected{"||", BarLine::Double, false, false},
                              Expected{"|]", BarLine::Final, false, false},
                              Expected{"[|", BarLine::Double, false, false},
                              Expected{"[|]", BarLine::None, false, false},
                              Expected{".|", BarLine::Single, false, false},
                              Expected{":|", BarLine::Single, true, false},
                              Expected{"|:", BarLine::Single, false, true},
                              Expected{"::", BarLine::Single, true, true},
                              Expected{":|:", BarLine::Single, true, true},
                              Expected{":||:", BarLine::Double, true, true},
                              Expected{":|]", BarLine::Final, true, false},
                              Expected{"|\n|:", BarLine::Single, false, true},
                              Expected{"|\n:|", BarLine::Single, true, false});
    CAPTURE(row.between);
    tune::Tune const tune = notes("C8" + row.between + "D8|");
    REQUIRE(tune.bars.size() == 2);
    CHECK(tune.bars[0].closes == row.line);
    CHECK(tune.bars[0].repeatCloses == row.closes);
    CHECK(tune.bars[1].repeatOpens == row.opens);
}

TEST_CASE("More colons play a section more often", "[abc]")
{
    CHECK(notes("|::C8::|").bars[0].timesPlayed == 3);
}

TEST_CASE("Endings are lists and ranges, and end at the next double line", "[abc]")
{
    tune::Tune const tune = notes("|:C8|1,3 D8:|2 E8:|4-5 F8||G8|]");
    CHECK(tune.bars[1].endings == std::vector<int>{1, 3});
    CHECK(tune.bars[2].endings == std::vector<int>{2});
    CHECK(tune.bars[3].endings == std::vector<int>{4, 5});
    CHECK(tune.bars[3].endingCloses);
    CHECK(tune::played(tune).bars.size() == 11);
}

TEST_CASE("A last ending without a line at its end is as long as the one before", "[abc]")
{
    // |: C |1 D :|2 E | F |1 G :|2 A | : the second strain repeats from F, not from C.
    tune::Tune const tune = notes("C8|1 D8:|2 E8|F8|1 G8:|2 A8|");
    std::vector<int> order;
    for (tune::PlayedBar const& bar : tune::played(tune).bars) order.push_back(bar.bar);
    CHECK(order == std::vector<int>{0, 1, 0, 2, 3, 4, 3, 5});
}

TEST_CASE("Pick-ups are bar 0, and short last bars make room for them", "[abc]")
{
    tune::Tune const tune = notes("C2|D8|E6:|F2|G8|A6|]");
    std::vector<int> numbers;
    for (tune::Bar const& bar : tune.bars) numbers.push_back(bar.number);
    CHECK(numbers == std::vector<int>{0, 1, 2, 2, 3, 4});
    CHECK(tune.said.empty());
}

TEST_CASE("Bars that do not add up are kept and said", "[abc]")
{
    tune::Tune const tune = notes("C8|D6|E9|F8|");
    CHECK(tune.bars.size() == 4);
    CHECK(isSaid(tune, "bar 2 has notes for 3/4, where the time signature asks for 1"));
    CHECK(isSaid(tune, "bar 3 has notes for 9/8, where the time signature asks for 1"));
}

TEST_CASE("A tune without a meter is counted in its commonest bar", "[abc]")
{
    tune::Tune const tune = read("X:1\nL:1/4\nK:C\nCDE|FGA|B3|c|\n");
    CHECK(tune.meter == music::Meter{3, 4, false});
    CHECK(isSaid(tune, "no time signature"));
}

TEST_CASE("A meter may change at a bar line or after a full bar", "[abc]")
{
    CHECK(notes("C8|[M:3/4]D6|").bars[1].meter == music::Meter{3, 4, false});
    tune::Tune const tune = notes("C8\nM:3/4\nD6|");
    CHECK(tune.bars.size() == 2);
    CHECK(isSaid(tune, "no bar line"));
}

TEST_CASE("An order of parts is kept where the tune marks its parts", "[abc]")
{
    using Names = std::vector<std::string>;
    std::string const parts = "K:C\nP:A\nC8|\nP:B\nD8|\n";
    CHECK(read("X:1\nL:1/8\nP:AAB\n" + parts).partOrder == Names{"A", "A", "B"});
    // Y: and an order between the notes are habits of an old folk tune collection.
    CHECK(read("X:1\nL:1/8\nY:A AB\n" + parts).partOrder == Names{"A", "A", "B"});
    CHECK(read("X:1\nL:1/8\n" + parts + "P:BA\n").partOrder == Names{"B", "A"});
    tune::Tune const partly = read("X:1\nL:1/8\nP:AXB\n" + parts);
    CHECK(partly.partOrder == Names{"A", "B"});
    CHECK(isSaid(partly, "nowhere marked"));
    CHECK(read("X:1\nL:1/8\nP:AAB\nK:C\nC8|\n").partOrder.empty());
}

TEST_CASE("A word that sends the player back is kept, and where it leads nowhere that is said",
          "[abc]")
{
    tune::Tune const tune = notes("C8|\"D.C.\"D8|");
    CHECK(tune.bars[1].annotations.size() == 1);
    CHECK_FALSE(isSaid(tune, "D.C."));
    CHECK(isSaid(notes("C8|!D.S.!D8|"), "where to go on after the D.C. or D.S. of bar 2"));
    CHECK_FALSE(isSaid(notes("!segno!C8|!D.S.!D8|"), "where to go on"));
}

TEST_CASE("The first voice is the tune, and that is said", "[abc]")
{
    CHECK(told(notes("[V:1]C8|[V:2]E8|[V:1]D8|")) == "C4:1 | D4:1");
    CHECK(isSaid(notes("[V:1]C8|[V:2]E8|"), "2 voices"));
    CHECK(isSaid(notes("C8&E8|D8|"), "second line"));
}

TEST_CASE("Accents of every kind become letters, and hidden signs go", "[abc]")
{
    // ABC 2.1, section 8.2.
    CHECK(textString("S\\'e \\\"Uber Ni\\~no gar\\c{c}on") == "Sé Über Niño gar\\c{c}on");
    CHECK(textString("\\cCa va &eacute;t&eacute; \\u00e9 \\aa \\ss 100\\%") ==
          "Ça va été é å ß 100%");
    CHECK(textString("a\xE2\x80\xAE"
                     "b\x01") == "ab");
    CHECK(textString("\\u0000\\ud800 & &x; \\") == "\\u0000\\ud800 & &x; \\");
}

TEST_CASE("UTF-16 with a byte order mark reads like UTF-8", "[abc]")
{
    std::string const plainText = "X:1\nT:x\nK:G\nGAB|\n";
    for (bool bigEndian : {true, false}) {
        std::string wide = bigEndian ? "\xFE\xFF" : "\xFF\xFE";
        for (char c : plainText)
            wide += bigEndian ? std::string{'\0', c} : std::string{c, '\0'};
        CHECK(told(read(wide)) == told(read(plainText)));
    }
    CHECK(utf8FromUtf16(std::string("\xFE\xFF\xD8\x34\xDD\x1E", 6)) ==
          "\xF0\x9D\x84\x9E"); // G clef
}

TEST_CASE("The line of what was read has the agreed form", "[check]")
{
    // The contract of the program's machine-readable results.
    tune::Tune const tune =
        read("X:3\nT:Form\nM:6/8\nL:1/8\nR:jig\nK:Em\n\"Em\"E2-E [EG]3|z3 \"D\"d6|\n");
    auto const line = nlohmann::json::parse(checkLine(tune));
    CHECK(line["tune"] == 3);
    CHECK(line["title"] == "Form");
    CHECK(line["key"] == "E");
    CHECK(line["mode"] == "minor");
    CHECK(line["meter"] == "6/8");
    CHECK(line["tempo_qpm"] == 90.0);
    CHECK(line["bars"] == 2);
    CHECK(line["notes"] == nlohmann::json::parse("[[64,3,8],[[64,67],3,8],[-1,3,8],[74,3,4]]"));
    CHECK(line["chords"] == nlohmann::json::parse("[[0,\"Em\"],[3,\"D\"]]"));
    REQUIRE(line["said"].size() == 1);
    CHECK(line["said"][0]["place"] == "line 7, column 16");
    CHECK(checkLine(tune).find('\n') == std::string::npos);
}

TEST_CASE("Slurs begin and end on their notes, nest, and break no beam", "[abc]")
{
    // ABC 2.1, section 4.11: (c (d) e f), and (c d (e) f g a) where one slur ends as another
    // begins.
    auto const tune = notes("(c (d e f) g) (3abc z |");
    auto const& n = tune.bars[0].notes;
    CHECK(n[0].slursOpen == 1);
    CHECK(n[1].slursOpen == 1);
    CHECK(n[3].slursClose == 1);
    CHECK(n[4].slursClose == 1);
    CHECK(n[5].slursOpen == 0); // a triplet is no slur
    CHECK(tune.bars[0].tuplets.size() == 1);
    auto const beamed = notes("ab(cd) .(ef).g2|").bars[0].notes;
    CHECK_FALSE(beamed[2].beamBroken);
    CHECK(beamed[3].slursClose == 1);
    CHECK(beamed[4].slursOpen == 1); // dotted: read as any other
    CHECK(beamed[5].marks.empty());
}

TEST_CASE("Words to sing stand under the notes of the line before them", "[abc]")
{
    // The signs and their meaning: ABC 2.1, section 5.1.
    auto const tune = read("X:1\nM:4/4\nL:1/4\nK:C\nC D E z|F G A B|\n"
                           "w:syl-la-ble|gold~en * tide _\nw: two three\\-four|five\n"
                           "c d e f|\nw:a--b\nW:And so it ends.\n");
    std::vector<tune::Syllable> sung[2];
    for (tune::Bar const& bar : tune.bars)
        for (tune::Note const& note : bar.notes)
            for (std::size_t verse : {0, 1})
                sung[verse].push_back(verse < note.verses.size() ? note.verses[verse]
                                                                 : tune::Syllable{});
    using Sung = std::vector<tune::Syllable>;
    CHECK(sung[0] == Sung{{"syl", true},
                          {"la", true},
                          {"ble"},
                          {}, // a rest
                          {"gold en"},
                          {},
                          {"tide"},
                          {"", false, true}, // held
                          {"a", true},
                          {"", true, true},
                          {"b"},
                          {}}); // in parts
    CHECK(sung[1] ==
          Sung{{"two"}, {"three-four"}, {}, {}, {"five"}, {}, {}, {}, {}, {}, {}, {}});
    CHECK(tune.words == std::vector<std::string>{"And so it ends."});
}

TEST_CASE("Accidentals behind a key change its signature, parted by a blank or not", "[abc]")
{
    // ABC 2.1, section 3.1.14: "K:D =c" is D major with C natural.
    for (char const* key : {"D =c", "D=c", "Dmaj =c"}) {
        CAPTURE(key);
        tune::Tune const tune = notes("cf|", key);
        CHECK(tune.key == music::Key{{music::Letter::D, 0}, music::Mode::Ionian});
        CHECK(told(tune) == "C5:1/8 F#5:1/8");
    }
    CHECK(told(notes("cf|", "D^g_b")) == "C#5:1/8 F#5:1/8");
    CHECK(told(notes("gb|", "D^g_b")) == "G#5:1/8 Bb5:1/8");
    CHECK(told(notes("c|", "D clef=treble")) == "C#5:1/8");
}

TEST_CASE("The first voice may be named inside its line only", "[abc]")
{
    tune::Tune const tune = notes("[V:RH] cdef|g4|]\n[V:LH] C,8|C,8|]");
    CHECK(told(tune) == "C5:1/8 D5:1/8 E5:1/8 F5:1/8 | G5:1/2");
    CHECK(isSaid(tune, "2 voices"));
}

TEST_CASE("A line +: goes on with the text before it", "[abc]")
{
    // ABC 2.1, section 3.3
    tune::Tune const tune =
        read("X:1\nT:A long\n+:title\n+:of it\nC:one\n+:and two\nM:4/4\n+:4\nK:C\nc|\n");
    CHECK(tune.title == "A long title of it");
    CHECK(tune.composer == "one and two");
    CHECK(isSaid(tune, "fields that are not of text"));
}

TEST_CASE("A bar line inside a tuplet is said", "[abc]")
{
    CHECK(isSaid(notes("cdef (3ga|bc'4|"), "inside a tuplet"));
    CHECK_FALSE(isSaid(notes("cdef (3gab|c'4|"), "inside a tuplet"));
}

namespace {

std::string chordsOf(tune::Tune const& tune)
{
    std::string out;
    for (tune::BarIndex const b : tune.bars.indices())
        for (tune::ChordMark const& mark : tune.bars[b].chords)
            out += std::to_string(b + 1) + '@' + text(mark.at.wholes) + '=' +
                   music::plain(mark.chord) + ' ';
    return out;
}

std::string did(tune::Tune const& tune, std::string_view what)
{
    for (tune::Remark const& remark : tune.said)
        if (remark.what.find(what) != std::string::npos) return remark.did;
    return "(not said)";
}

} // namespace

TEST_CASE("Chord symbols over another voice alone stand over the tune", "[abc]")
{
    tune::Tune const tune = notes("[V:T]C8|D4 E4|\n[V:B]\"C\"C,8|\"G7\"G,4 \"C/E\"E,4|");
    CHECK(chordsOf(tune) == "1@0=C 2@0=G7 2@1/2=C/E ");
    CHECK(isSaid(tune, "3 chord symbols stand over voice B alone"));
    CHECK(did(tune, "voice B alone") == "put over the tune");
    // Bars of other lengths: by the time from the start. Rests carry chords, too.
    CHECK(chordsOf(notes("[V:1]C8|D8|\n[V:2]\"C\"x8 \"G\"x4 \"D\"x4|")) ==
          "1@0=C 2@0=G 2@1/2=D ");
    // A tune that has its own keeps them.
    tune::Tune const own = notes("[V:1]\"C\"C8|D8|\n[V:2]E8|\"G\"F8|");
    CHECK(chordsOf(own) == "1@0=C ");
    CHECK(did(own, "1 chord symbol stands over voice 2 alone") == "left out");
}

TEST_CASE("What other voices hold is counted", "[abc]")
{
    tune::Tune const tune = notes("V:1\nC8|D8|\nV:2\n[CE]8|z4 D4|\nV:3\nC,8|D,8|\nV:1\nE8|");
    CHECK(told(tune) == "C4:1 | D4:1 | E4:1");
    CHECK(did(tune, "the tune has 3 voices") ==
          "4 notes of the others are left out; voice 1 is read");
    REQUIRE_FALSE(tune.said.empty());
    CHECK(tune.said.front().place.line == 7);
    tune::Tune const second = notes("C8&E8|D8|F8&\"G\"G8|");
    CHECK(isSaid(second, "a second line of notes (&) (2 times)"));
    CHECK(isSaid(second, "a chord symbol stands over the second line"));
}

TEST_CASE("What stands behind the last bar line belongs to the last bar", "[abc]")
{
    auto const order = [](tune::Tune const& tune) {
        std::string out;
        for (tune::PlayedBar const& b : tune::played(tune).bars)
            out += std::to_string(b.bar + 1);
        return out;
    };
    CHECK(order(notes("C8|D8!fine!|E8|F8|]!D.C.!")) == "123412");
    CHECK(order(notes("C8|D8!fine!|E8|F8|] \"^D.C. al Fine\"")) == "123412");
    CHECK(notes("C8|D8|]!fermata!").bars.back().notes.back().marks ==
          std::vector<std::string>{"fermata"});
    CHECK(isSaid(notes("C8|D8|] \"G\""), "behind the last note"));
}

TEST_CASE("A line of words goes on with +: and under a line of music that goes on", "[abc]")
{
    // ABC 2.1, sections 3.3, 5.1 and 6.1.1 (from memory)
    auto const sung = [](std::string const& music) {
        std::string out;
        for (tune::Bar const& bar : notes(music).bars)
            for (tune::Note const& note : bar.notes)
                for (tune::Syllable const& one : note.verses)
                    out += one.text + (one.hyphen ? "-" : " ");
        return out;
    };
    CHECK(sung("C2 D2 E2 F2|G2\nw:one two-three\n+:four\\-five~six") ==
          "one two-three four-five six ");
    CHECK(sung("C4 D4|\\\nE4 F4|\nw:one two three four") == "one two three four ");
    CHECK(sung("C4 D4|\nE4 F4|\nw:one two three four") == "one two ");
}

TEST_CASE("A line of symbols has chords, words and marks for the notes above it", "[abc]")
{
    // ABC 2.1, section 4.15 (from memory)
    tune::Tune const tune =
        notes("C4 z2 D2|E4 F4|\ns:\"Am\" !f!|\"^slow\" \"G7\"\nw:one two three four");
    CHECK(chordsOf(tune) == "1@0=Am 2@1/2=G7 ");
    CHECK(tune.bars[0].notes[2].marks == std::vector<std::string>{"f"});
    REQUIRE(tune.bars[1].annotations.size() == 1);
    CHECK(tune.bars[1].annotations[0].text == "slow");
    CHECK(tune.bars[1].notes[1].verses.at(0).text == "four");
    CHECK(isSaid(notes("C8|\ns:* \"G\""), "more symbols than notes"));
    CHECK(isSaid(notes("C8|\ns:C D"), "a line s:"));
}

TEST_CASE("A repeat may close before an invisible bar line", "[abc]")
{
    CHECK(notes("C8|D8:[|]|]E8|").bars.at(1).repeatCloses);
}

TEST_CASE("A slur that begins and ends on one note, or never began, is no slur of the tune",
          "[abc]")
{
    auto const slurs = [](tune::Tune const& tune) {
        std::string out;
        for (tune::Note const& n : tune.bars[0].notes)
            out += std::to_string(n.slursOpen) + std::to_string(n.slursClose) + ' ';
        return out;
    };
    CHECK(slurs(notes("({d}c)d e2 f4|")) == "00 00 00 00 ");
    CHECK(slurs(notes("(c(d)e2) f4|")) == "10 00 01 00 ");
    CHECK(slurs(notes("cd) (e2 f4)|")) == "00 00 10 01 ");
    CHECK(isSaid(notes("cd) e2 f4)|"), "a slur ends that has not begun (2 times)"));
}

TEST_CASE("A dotted tie is a tie and no staccato", "[abc]")
{
    tune::Tune const tune = notes("C4.-C4|D8|");
    CHECK(tune.bars[0].notes[0].tied);
    CHECK(tune.bars[0].notes[1].marks.empty());
}

TEST_CASE("A voice or a clef may move the octave of its notes", "[abc]")
{
    // ABC 2.1, section 4.6 (from memory)
    CHECK(told(read("X:1\nM:4/4\nL:1/1\nV:1 clef=treble-8\nK:C\n[V:1]c|\n")) == "C4:1");
    CHECK(told(read("X:1\nM:4/4\nL:1/1\nK:C\n[V:1 octave=1]C|\n")) == "C5:1");
    CHECK(told(read("X:1\nM:4/4\nL:1/1\nK:C clef=treble+8\nC|\n")) == "C5:1");
    CHECK(told(read("X:1\nM:4/4\nL:1/1\nK:C treble\nC|\n")) == "C4:1");
}

TEST_CASE("Words of the page between the lines are remarks and no music", "[abc]")
{
    tune::Tune const tune = read("X:1\nT:t\n%%begintext\nA bad cage\n%%endtext\n%%text Twice\n"
                                 "M:4/4\nL:1/1\nK:C\nC|\n%%begintext\nGABc dedB|\n%%endtext\n"
                                 "%%textfont Serif\nD|\n");
    CHECK(told(tune) == "C4:1 | D4:1");
    CHECK(tune.notes == std::vector<std::string>{"A bad cage", "Twice", "GABc dedB|"});
}
