#include "scenario.h"
#include "tests/places.h"

#include <QApplication>

#include <cassert>

namespace scenario {

namespace {

using music::Length;
using music::Rational;

Length eighths(int count) { return {Rational(count, 8)}; }

// One bar of the jig: pitches of quavers "G4 B4 D5 ...", a number after them lengthens.
tune::Bar bar(int number, char const* melody, std::initializer_list<char const*> chords)
{
    tune::Bar out;
    out.meter = {6, 8, false};
    out.key = {{music::Letter::G, 0}, music::Mode::Ionian};
    out.number = number;
    std::string word;
    Length at;
    auto const take = [&] {
        if (word.empty()) return;
        auto const colon = word.find(':');
        int const length = colon == std::string::npos ? 1 : word[colon + 1] - '0';
        auto const pitch = music::pitchFrom(word.substr(0, colon));
        assert(pitch);
        tune::Note note;
        note.at = at;
        note.length = eighths(length);
        note.pitches = {*pitch};
        out.notes.push_back(note);
        at = at + note.length;
        word.clear();
    };
    for (char const* c = melody; *c; ++c) {
        if (*c == ' ')
            take();
        else
            word += *c;
    }
    take();
    out.length = at;
    int place = 0;
    for (char const* symbol : chords) {
        auto const chord = music::chordFrom(symbol);
        assert(chord);
        out.chords.push_back({eighths(place), *chord, symbol, std::nullopt});
        place += 6 / static_cast<int>(chords.size());
    }
    return out;
}

} // namespace

tune::Tune jig()
{
    tune::Tune out;
    out.title = "The Basket by the Weir";
    out.rhythm = "jig";
    out.key = {{music::Letter::G, 0}, music::Mode::Ionian};
    out.meter = {6, 8, false};
    out.bars = {
        bar(1, "G4 B4 D5 G5:2 D5", {"G"}),          bar(2, "E5 C5 E5 D5 B4 G4", {"C", "G"}),
        bar(3, "E4 G4 B4 E5 D5 B4", {"Em"}),        bar(4, "A4 B4 G4 F#4 E4 D4", {"D"}),
        bar(5, "G4 B4 D5 G5 F#5 G5", {"G"}),        bar(6, "E5 D5 C5 B4 C5 A4", {"C"}),
        bar(7, "F#4 A4 D5 C5 A4 F#4", {"D7"}),      bar(8, "G4:3 G4:3", {"G"}),
        bar(9, "E5:2 B4 E5 F#5 G5", {"Em"}),        bar(10, "E5 C5 G4 C5:2 E5", {"C"}),
        bar(11, "D5 B4 G4 B4 D5 G5", {"G"}),        bar(12, "F#5 E5 D5 A4 F#4 D4", {"D"}),
        bar(13, "E4 G4 B4 E5:3", {"Em"}),           bar(14, "C5 E5 G5 E5 D5 C5", {"C", "Am"}),
        bar(15, "B4 D5 G5 F#5 A5 F#5", {"G", "D"}), bar(16, "G5:3 G4:3", {"G"})};
    out.bars[0].part = "A";
    out.bars[0].repeatOpens = true;
    out.bars[7].repeatCloses = true;
    out.bars[8].part = "B";
    out.bars[8].repeatOpens = true;
    out.bars[15].repeatCloses = true;
    out.tempo = tune::Tempo{{Rational(3, 8)}, 76};
    return out;
}

files::Tables const& tables()
{
    static files::Tables const read = [] {
        auto tables = files::readTables(places::shared());
        assert(tables);
        return *std::move(tables);
    }();
    return read;
}

proposal::Brief brief()
{
    return {jig(),
            *files::harpFrom(tables(), "floor34", "Eb"),
            *files::handFrom(tables(), "medium"),
            *files::levelFrom(tables(), 3),
            tables().book,
            *files::styleFrom(tables(), "plain"),
            proposal::BestKey{},
            std::nullopt,
            proposal::Passes::Written,
            {}};
}

QApplication& application()
{
    static char name[] = "test_ui";
    static char* words[] = {name, nullptr};
    static int count = 1;
    // Never destroyed: the pointing device of QTest is a static that must go before it.
    static auto* const instance = new QApplication(count, words);
    return *instance;
}

} // namespace scenario
