#pragma once

#include "core/arrange/laid.h"
#include "core/arrange/positions.h"
#include "core/arrange/scene.h"
#include "core/arrange/view.h"
#include "core/files/tables/tables.h"
#include "tests/harp/harps.h"
#include "tests/levers/lines.h"
#include "tests/places.h"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

// Small lead sheets for tests, written as words with chords in brackets:
// "[G] G4:1/4 B4:1/4 [D7] A4:1/2 | [G] G4:1 |".
namespace scenes {

// The figures that the program ships.
inline arrange::Taste const& shippedTaste()
{
    static arrange::Taste const taste =
        files::readTables(places::shared()).value().styles.front().taste;
    return taste;
}

// A scene and all it refers to: 34 strings C2 to A6, levers set for the key, medium hand, level
// 3, 100 crotchets a minute, every weight 1.
struct Example {
    tune::Tune tune;
    tune::Playing playing;
    harp::Harp harp = example::floor34();
    harp::HandModel hand = example::mediumHand();
    harp::Level level{};
    harp::LeverTimeline levers;
    tune::Tempo tempo{};
    pattern::PatternBook book;
    arrange::Weights weights;

    arrange::Scene scene() const
    {
        return {tune, playing, harp, hand, level, levers, tempo, book, weights};
    }
    arrange::Positions positions() const { return arrange::positionsAsWritten(tune, playing); }
    arrange::View view(arrange::PositionIndex position) const
    {
        return arrange::viewOf(scene(), positions().at(position),
                               arrange::longestNote(playing));
    }
    harp::StringIndex string(std::string_view pitch) const
    {
        return harp::stringFor(harp, music::pitchFrom(pitch).value()).value();
    }
};

// Takes the bracketed chords out of the words and puts them where they stood.
inline tune::Tune tuneWithChords(std::string_view text, music::Key key, music::Meter meter)
{
    std::string notes;
    std::vector<std::vector<std::pair<music::Length, std::string>>> chords(1);
    music::Length at;
    std::istringstream words{std::string(text)};
    for (std::string word; words >> word;) {
        if (word.front() == '[') {
            chords.back().emplace_back(at, word.substr(1, word.size() - 2));
            continue;
        }
        notes += word + ' ';
        if (word == "|" || word == ":|") {
            chords.emplace_back();
            at = {};
        } else {
            at = at + music::Length{lines::fraction(word.substr(word.find(':') + 1))};
        }
    }
    tune::Tune tune = lines::tune(notes, key, meter);
    for (tune::BarIndex const b : tune.bars.indices())
        for (auto const& [place, name] : chords[b])
            tune.bars[b].chords.push_back({place, *music::chordFrom(name), name, std::nullopt});
    return tune;
}

inline Example example(std::string_view text, std::string_view key = "G",
                       music::Meter meter = {4, 4})
{
    Example out;
    out.tune = tuneWithChords(text, music::keyFrom(key).value(), meter);
    out.playing = tune::played(out.tune);
    out.levers.setup = *harp::settingFor(out.harp, out.tune.key);
    out.weights.byTerm.fill(1000);
    out.weights.taste = shippedTaste();
    for (char const* name : {"1", "1-5", "1-8", "1-5-8", "1-5-10", "1+3+5"})
        out.book.patterns.push_back(*pattern::patternFrom(name));
    return out;
}

// A voicing of single notes, "G2 0, D3 1/4, G3 1/2": each counted until the next.
inline arrange::Laid laid(arrange::View const& view, std::vector<int> const& degrees,
                          harp::StringIndex rootString, std::vector<music::Rational> const& at)
{
    constexpr int fingersUp[] = {4, 2, 1, 2, 1};
    arrange::Voicing voicing;
    voicing.rootString = rootString;
    for (std::size_t i = 0; i < degrees.size(); ++i) {
        std::size_t next = i + 1;
        while (next < at.size() && at[next] == at[i]) ++next;
        music::Rational const until = next < at.size() ? at[next] : view.spanLength.wholes;
        voicing.notes.push_back({{at[i]},
                                 {until - at[i]},
                                 pattern::stringOf(rootString, degrees[i]),
                                 fingersUp[i],
                                 degrees[i],
                                 0});
        voicing.pattern += (i > 0 ? "-" : "") + std::to_string(degrees[i]);
    }
    return arrange::laidAs(voicing, view);
}

} // namespace scenes
