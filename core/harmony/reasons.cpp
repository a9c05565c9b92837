#include "core/harmony/reasons.h"

#include "core/base/words.h"

#include <algorithm>

namespace harmony {

namespace {

using music::Length;

// Names of the tune's notes in a unit that the chord holds, longest first.
struct Fit {
    std::vector<music::PitchName> held;
    Length inside;
    Length all;
};

Fit fitOf(tune::Tune const& tune, Unit const& unit, music::Chord const& chord)
{
    struct Part {
        music::PitchName name;
        Length length;
    };
    std::vector<Part> parts;
    Fit fit;
    tune::Bar const& bar = tune.bars[unit.bar];
    for (tune::Note const& note : bar.notes) {
        Length const from = std::max(note.at, unit.at);
        Length const to = std::min(note.at + note.length, unit.at + unit.length);
        if (note.pitches.empty() || to <= from) continue;
        fit.all = fit.all + (to - from);
        music::PitchName const name = nameOf(note.pitches.back());
        if (!contains(chord, pitchClass(name))) continue;
        fit.inside = fit.inside + (to - from);
        auto const at = std::find_if(parts.begin(), parts.end(),
                                     [&name](Part const& p) { return p.name == name; });
        if (at == parts.end())
            parts.push_back({name, to - from});
        else
            at->length = at->length + (to - from);
    }
    std::stable_sort(parts.begin(), parts.end(),
                     [](Part const& a, Part const& b) { return a.length > b.length; });
    for (Part const& part : parts) fit.held.push_back(part.name);
    return fit;
}

std::string names(std::vector<music::PitchName> const& held)
{
    std::string out;
    for (std::size_t i = 0; i < held.size(); ++i)
        out += (i == 0                 ? ""
                : i + 1 == held.size() ? base::said(" and ")
                                       : ", ") +
               shown(held[i]);
    return out;
}

int above(music::PitchName root, music::PitchName tonic)
{
    return ((pitchClass(root) - pitchClass(tonic)) % 12 + 12) % 12;
}

} // namespace

std::string chordReason(tune::Tune const& tune, Unit const& unit, music::Chord const& chord,
                        music::Chord const* before, music::Chord const* after, music::Key key)
{
    Fit const fit = fitOf(tune, unit, chord);
    std::string out;
    if (fit.all == Length{})
        out = base::said("the tune rests here");
    else if (fit.held.empty())
        out = base::said("holds no note of the tune here");
    else if (fit.inside == fit.all)
        out = base::said("holds every note of the tune here");
    else
        out = base::say("holds {} of the tune", names(fit.held));

    int const degree = above(chord.root, key.tonic);
    constexpr int fifth = 7;
    constexpr int fourth = 5;
    constexpr int lowSeventh = 10;
    if (unit.barsToEnd == 0 && degree == 0)
        out += base::said("; the strain comes home");
    else if (unit.barOfPhrase == 3 && (degree == fifth || degree == lowSeventh))
        out += base::said("; the phrase stays open half-way");
    else if (after && above(chord.root, after->root) == fifth && *after != chord)
        out += base::say("; leads to {}", shown(*after));
    else if (before && before->root == chord.root)
        out += base::said("; stays with the chord before");
    else if (degree == lowSeventh && key.mode != music::Mode::Ionian)
        out += base::said("; a tone below home");
    else if (degree == fourth)
        out += base::said("; the fourth above home");
    return out;
}

} // namespace harmony
