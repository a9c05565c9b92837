#include "core/explain/names.h"

#include "core/base/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace explain {

using namespace arrange;

namespace {

music::Moment momentOf(Told const& told, VoicedNote const& note)
{
    return told.position.played.front().at + note.at;
}

} // namespace

std::string pitchName(Told const& told, harp::StringIndex string, music::Moment at)
{
    return music::shown(harp::pitchAt(told.scene.harp, told.scene.levers, string, at));
}

std::string nameOf(Told const& told, std::size_t note)
{
    VoicedNote const& n = told.laid.voicing.notes[note];
    return pitchName(told, n.string, momentOf(told, n));
}

std::string nameOf(Told const& told, TuneNote const& note)
{
    return pitchName(told, note.string, told.position.played.front().at + note.at);
}

std::string chordName(Position const& position) { return music::shown(position.chord); }

std::string fingerName(int finger)
{
    constexpr auto names =
        base::markedList("thumb", "second finger", "third finger", "fourth finger");
    return base::said(names[static_cast<std::size_t>(std::clamp(finger, 1, 4) - 1)]);
}

// "a tenth" for two strings with eight between them.
std::string intervalName(int strings)
{
    constexpr auto names = base::markedList("a unison", "a second", "a third", "a fourth",
                                            "a fifth", "a sixth", "a seventh", "an octave",
                                            "a ninth", "a tenth", "an eleventh", "a twelfth");
    auto const place = static_cast<std::size_t>(strings - 1);
    return place < names.size() ? base::said(names[place])
                                : base::say("a reach of {} strings", strings);
}

std::string degreeName(int degree)
{
    constexpr auto names =
        base::markedList("degree|root", "degree|second", "degree|third", "degree|fourth",
                         "degree|fifth", "degree|sixth", "degree|seventh");
    constexpr auto above = base::markedList("degree|octave", "degree|ninth", "degree|tenth",
                                            "degree|eleventh", "degree|twelfth");
    if (degree >= 8 && degree <= 12)
        return base::said(above[static_cast<std::size_t>(degree - 8)]);
    return base::said(names[static_cast<std::size_t>(((degree - 1) % 7 + 7) % 7)]);
}

std::string capital(std::string text)
{
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

// "on beat 2", "after beat 2".
std::string beatName(View const& view, music::Length at)
{
    music::Rational const beats = (view.fromBar + at) / music::beatLength(view.meter);
    auto const whole = music::floorOf(beats);
    bool const onIt = beats == music::Rational(whole);
    return onIt ? base::say("on beat {}", whole + 1) : base::say("after beat {}", whole + 1);
}

std::size_t lowestNote(Laid const& laid)
{
    auto const lowest = std::ranges::min_element(laid.plucks, {}, &Pluck::string);
    return static_cast<std::size_t>(lowest - laid.plucks.begin());
}

std::size_t highestNote(Laid const& laid)
{
    auto const highest = std::ranges::max_element(laid.plucks, {}, &Pluck::string);
    return static_cast<std::size_t>(highest - laid.plucks.begin());
}

std::set<int> degreesOf(Laid const& laid)
{
    std::set<int> degrees;
    for (Pluck const& p : laid.plucks) degrees.insert(p.degree);
    return degrees;
}

bool isTone(View const& view, int midi)
{
    return view.chord.tone[static_cast<std::size_t>(midi % 12)];
}

bool isThird(View const& view, int midi)
{
    return view.chord.third && midi % 12 == *view.chord.third;
}

} // namespace explain
