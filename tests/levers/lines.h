#pragma once

#include "core/harp/hand.h"
#include "core/harp/levers.h"
#include "core/tune/playing.h"
#include "core/tune/tune.h"

#include <sstream>
#include <string>
#include <string_view>
#include <vector>

// Small tunes for tests, written as words: "G4:1/4 F#4:1/8 z:1/8 | A4:1/2 C5+E5:1/2 |".
namespace lines {

inline music::Rational fraction(std::string const& text)
{
    auto const slash = text.find('/');
    if (slash == std::string::npos) return {std::stoi(text)};
    return {std::stoi(text.substr(0, slash)), std::stoi(text.substr(slash + 1))};
}

inline std::vector<music::Pitch> pitches(std::string const& text)
{
    std::vector<music::Pitch> out;
    if (text == "z") return out;
    std::istringstream words(text);
    for (std::string word; std::getline(words, word, '+');)
        out.push_back(music::pitchFrom(word).value());
    return out;
}

inline tune::Tune tune(std::string_view text, music::Key key, music::Meter meter = {4, 4})
{
    tune::Tune out;
    out.key = key;
    out.meter = meter;
    tune::Bar bar;
    bar.meter = meter;
    bar.key = key;
    bar.number = 1;
    std::istringstream words{std::string(text)};
    for (std::string word; words >> word;) {
        if (word == "|" || word == ":|") {
            bar.repeatCloses = word == ":|";
            out.bars.push_back(bar);
            bar.notes.clear();
            bar.length = {};
            ++bar.number;
            continue;
        }
        auto const colon = word.find(':');
        bool const tied = word.back() == '-';
        tune::Note note;
        note.at = bar.length;
        note.length = {fraction(word.substr(colon + 1))};
        note.pitches = pitches(word.substr(0, colon));
        note.tied = tied;
        bar.length = bar.length + note.length;
        bar.notes.push_back(note);
    }
    return out;
}

inline music::Key major(std::string_view name) { return music::keyFrom(name).value(); }

inline harp::Level level(double freeBeats, double freeSeconds = 0.4)
{
    harp::Level out;
    out.flipFreeBeats = freeBeats;
    out.flipFreeSeconds = freeSeconds;
    return out;
}

inline music::Moment moment(int numerator, int denominator = 1)
{
    return {music::Rational(numerator, denominator)};
}

} // namespace lines
