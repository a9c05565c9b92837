#pragma once

#include "core/arrange/arrangement.h"
#include "tests/harp/harps.h"

#include <utility>
#include <vector>

// Small arrangements for tests, made by hand on the 34-string harp in E flat with the levers of
// C major set: every string sounds its natural note.
namespace pieces {

using music::Length;
using music::Rational;

inline Length wholes(std::int64_t numerator, std::int64_t denominator)
{
    return {Rational(numerator, denominator)};
}

// The string of a natural note: octave 4 begins at middle C.
inline harp::StringIndex stringOf(music::Letter letter, int octave)
{
    return harp::StringIndex(music::diatonicStep({letter, 0, octave}) -
                             music::diatonicStep(example::c2));
}

// A bar of notes of one length, one after another.
inline tune::Bar barOf(music::Meter meter, Length each,
                       std::vector<music::Pitch> const& pitches)
{
    tune::Bar bar;
    bar.meter = meter;
    for (music::Pitch const pitch : pitches) {
        tune::Note note;
        note.at = bar.length;
        note.length = each;
        note.pitches = {pitch};
        bar.notes.push_back(note);
        bar.length = bar.length + each;
    }
    return bar;
}

inline arrange::VoicedNote voiced(Length at, Length held, harp::StringIndex string,
                                  int rollOrder = 0)
{
    return {at, held, string, 4, 1, rollOrder};
}

// Arranged with one voicing for each written bar; empty voicings are rests.
inline arrange::Arrangement arranged(tune::Tune tune, tune::Tempo tempo,
                                     std::vector<std::vector<arrange::VoicedNote>> left)
{
    auto const harp = example::floor34();
    auto const setup = harp::settingFor(harp, music::Key{});
    arrange::Arrangement out{.tune = std::move(tune),
                             .transposedSemitones = 0,
                             .harp = harp,
                             .hand = example::mediumHand(),
                             .level = {},
                             .levers = {*setup, {}},
                             .tempo = tempo,
                             .playing = {},
                             .positions = {},
                             .rightFingers = {}};
    out.playing = tune::played(out.tune);
    for (std::size_t i = 0; i < left.size(); ++i) {
        arrange::ArrangedPosition position;
        position.position.bar = tune::BarIndex(static_cast<int>(i));
        position.position.span = out.tune.bars[position.position.bar].length;
        for (tune::PlayedBarIndex const p : out.playing.bars.indices()) {
            tune::PlayedBar const& bar = out.playing.bars[p];
            if (bar.bar == static_cast<int>(i))
                position.position.played.push_back({p, bar.pass, bar.at});
        }
        position.voicing.notes = std::move(left[i]);
        out.positions.push_back(position);
    }
    return out;
}

inline constexpr music::Pitch c5{music::Letter::C, 0, 5};
inline constexpr music::Pitch d5{music::Letter::D, 0, 5};
inline constexpr music::Pitch e5{music::Letter::E, 0, 5};
inline constexpr music::Pitch g5{music::Letter::G, 0, 5};

// Two bars of four crotchets; below them C3 G3 C4 rolled, then C3 and G3 one after the other.
inline arrange::Arrangement twoBars(tune::Tempo tempo = {wholes(1, 4), 60})
{
    tune::Tune tune;
    tune.title = "Two bars";
    tune.bars = {barOf({4, 4}, wholes(1, 4), {c5, d5, e5, c5}),
                 barOf({4, 4}, wholes(1, 4), {d5, e5, g5, d5})};
    using music::Letter;
    harp::StringIndex const c3 = stringOf(Letter::C, 3);
    harp::StringIndex const g3 = stringOf(Letter::G, 3);
    harp::StringIndex const c4 = stringOf(Letter::C, 4);
    Length const whole = wholes(1, 1);
    Length const half = wholes(1, 2);
    return arranged(
        tune, tempo,
        {{voiced({}, whole, c3, 1), voiced({}, whole, g3, 2), voiced({}, whole, c4, 3)},
         {voiced({}, half, c3), voiced(half, half, g3)}});
}

} // namespace pieces
