#include "core/arrange/candidates.h"

#include "core/arrange/handmove.h"
#include "core/pattern/layout.h"

#include <algorithm>
#include <array>
#include <set>
#include <string>
#include <utility>

namespace arrange {

namespace {

using music::Length;
using pattern::Pattern;
using pattern::PatternNote;
using pattern::Rhythm;

// Seconds by which a time may fall short of a limit that is met exactly.
constexpr double shortOfLimit = 1e-9;

// Degrees 1, 8, 15, -6 ...: the root in any octave.
bool isRootDegree(int degree) { return (degree - 1) % 7 == 0; }

// A figure at its times in this position, with strings counted from the root string.
Laid atRootZero(Figure const& figure, View const& view)
{
    Laid laid;
    Rhythm const& rhythm = figure.rhythm;
    for (std::size_t i = 0; i < rhythm.onsets.size(); ++i) {
        Length const at = rhythm.onsets[i];
        Length const until =
            i + 1 < rhythm.onsets.size() ? rhythm.onsets[i + 1] : view.spanLength;
        std::vector<VoicedNote> together;
        for (int index : rhythm.plays[i]) {
            PatternNote const& note = figure.pattern.notes[static_cast<std::size_t>(index)];
            together.push_back({at, until - at, pattern::stringOf(0, note.degree), note.finger,
                                note.degree, 0});
        }
        std::ranges::sort(together, {}, &VoicedNote::string);
        int const strength = strengthAt(view, at);
        for (VoicedNote const& note : together) {
            laid.voicing.notes.push_back(note);
            laid.plucks.push_back({at.wholes.toDouble(), note.held.wholes.toDouble(),
                                   note.string, 0, note.finger, note.degree, strength, 0});
        }
    }
    return laid;
}

// Moves the strings of a figure up to a root string and asks what they sound there.
std::optional<Hindrance> raise(std::vector<Pluck>& plucks, harp::StringIndex rootString,
                               View const& view)
{
    for (Pluck& p : plucks) {
        p.string += rootString;
        if (p.string < 0 || p.string >= view.harp->count())
            return Hindrance{Obstacle::OffHarp, p.string, std::nullopt, p.at};
        p.midi = midiAt(view.passes.front(), p.string, p.at);
        if (isRootDegree(p.degree) && p.midi % 12 != view.chord.lowest)
            return Hindrance{Obstacle::RootSilent, p.string, std::nullopt, p.at};
        for (PassView const& pass : view.passes)
            if (midiAt(pass, p.string, p.at) != p.midi)
                return Hindrance{Obstacle::SoundsVary, p.string, std::nullopt, p.at};
    }
    return std::nullopt;
}

std::optional<Hindrance> tuneInTheWay(std::vector<Pluck> const& plucks, PassView const& pass)
{
    for (Pluck const& p : plucks) {
        for (TuneNote const& n : pass.tune) {
            if (n.from > p.at) break;
            if (n.to <= p.at) continue;
            if (n.string == p.string)
                return Hindrance{Obstacle::OnTunesString, p.string, n.string, p.at};
            if (n.string < p.string)
                return Hindrance{Obstacle::HandsCross, p.string, n.string, p.at};
        }
    }
    return std::nullopt;
}

std::optional<Hindrance> tooFast(std::vector<Pluck> const& plucks, View const& view)
{
    double const gap = 1.0 / view.level->leftNotesPerSecond - shortOfLimit;
    double const sameGap = 1.0 / view.level->sameStringPerSecond - shortOfLimit;
    for (std::size_t i = 0; i < plucks.size(); ++i) {
        for (std::size_t j = i + 1; j < plucks.size(); ++j) {
            double const apart = view.seconds(plucks[j].at - plucks[i].at);
            if (plucks[i].at != plucks[j].at && apart < gap)
                return Hindrance{Obstacle::TooFast, plucks[j].string, plucks[i].string,
                                 plucks[j].at};
            if (plucks[i].string == plucks[j].string && apart < sameGap)
                return Hindrance{Obstacle::StringTooSoon, plucks[j].string, std::nullopt,
                                 plucks[j].at};
        }
    }
    // The next position may begin at once. One stroke may be shorter: the next position rests
    // then, or begins later.
    bool const oneStroke = plucks.front().at == 0 && plucks.back().at == 0;
    if (!oneStroke && view.seconds(view.span - plucks.back().at) < gap)
        return Hindrance{Obstacle::TooFast, plucks.back().string, std::nullopt,
                         plucks.back().at};
    return std::nullopt;
}

harp::PlacedFinger fingerOf(Pluck const& p) { return {p.string, p.finger}; }

bool beyondReach(Pluck const& a, Pluck const& b, View const& view)
{
    auto const [low, high] = a.string <= b.string ? std::pair{a, b} : std::pair{b, a};
    return harp::easeOf(*view.harp, *view.hand, fingerOf(low), fingerOf(high)) ==
           harp::Ease::Beyond;
}

// Where fingers cannot be down on both strings, the hand must have time to move.
std::optional<Hindrance> movesTooFar(std::vector<Pluck> const& plucks, View const& view)
{
    for (std::size_t i = 0; i + 1 < plucks.size(); ++i) {
        Pluck const& a = plucks[i];
        Pluck const& b = plucks[i + 1];
        if (a.at == b.at || a.string == b.string || !beyondReach(a, b, view)) continue;
        double const needed =
            secondsForMove(*view.level, harp::distanceMm(*view.harp, a.string, b.string));
        if (view.seconds(b.at - a.at) < needed - shortOfLimit)
            return Hindrance{Obstacle::BeyondReach, b.string, a.string, b.at};
    }
    return std::nullopt;
}

// Plucked together, no two fingers are further apart than they reach at most: the half gap
// that a hand may give is for those that come one after the other.
bool inPairReach(std::span<Pluck const> block, View const& view)
{
    for (std::size_t i = 0; i < block.size(); ++i)
        for (std::size_t j = i + 1; j < block.size(); ++j)
            if (harp::distanceMm(*view.harp, block[i].string, block[j].string) >
                widestMm(*view.hand, block[i].finger, block[j].finger))
                return false;
    return true;
}

bool inBlockReach(std::span<Pluck const> block, View const& view)
{
    std::array<harp::PlacedFinger, harp::fingers> placed;
    if (block.size() > placed.size()) return false;
    std::ranges::transform(block, placed.begin(), fingerOf);
    auto const used = std::span<harp::PlacedFinger const>(placed).first(block.size());
    return inPairReach(block, view) &&
           harp::easeOf(*view.harp, *view.hand, used) != harp::Ease::Beyond &&
           harp::spanMm(*view.harp, used) <= view.hand->limitMm;
}

// Rolled, each finger only reaches from the one before it, which may leave.
bool inRollReach(std::span<Pluck const> block, View const& view)
{
    std::vector<harp::PlacedFinger> placed;
    for (Pluck const& p : block) placed.push_back(fingerOf(p));
    for (std::size_t i = 0; i + 1 < block.size(); ++i)
        if (beyondReach(block[i], block[i + 1], view)) return false;
    return harp::rollable(*view.harp, *view.hand, placed);
}

// Rolls the notes of one time where they are too wide to be plucked together.
std::optional<Hindrance> rollWhereWide(std::vector<Pluck>& plucks, Pattern const& pattern,
                                       View const& view)
{
    for (auto first = plucks.begin(); first != plucks.end();) {
        auto const last = std::find_if(first, plucks.end(),
                                       [&](Pluck const& p) { return p.at != first->at; });
        std::span<Pluck> const block(first, last);
        bool const spread = pattern.spread && block.size() > 1;
        if (spread || !inBlockReach(block, view)) {
            if (!pattern.rolls || !inRollReach(block, view))
                return Hindrance{Obstacle::BeyondReach, block.back().string,
                                 block.front().string, block.front().at};
            for (std::size_t i = 0; i < block.size(); ++i)
                block[i].rollOrder = static_cast<int>(i) + 1;
        }
        first = last;
    }
    return std::nullopt;
}

// Ends the count of each note where the tune comes down to its string or below it.
void letGoForTheTune(Laid& laid, View const& view)
{
    for (std::size_t i = 0; i < laid.plucks.size(); ++i) {
        Pluck& p = laid.plucks[i];
        for (PassView const& pass : view.passes) {
            for (TuneNote const& n : pass.tune) {
                if (n.from >= p.at + p.held) break;
                if (n.from <= p.at || n.string > p.string) continue;
                p.held = n.from - p.at;
                laid.voicing.notes[i].held = n.at - laid.voicing.notes[i].at;
                break;
            }
        }
    }
}

std::optional<Hindrance> flipInTheWay(std::vector<Pluck> const& plucks, PassView const& pass)
{
    for (NearFlip const& f : pass.flips) {
        for (Pluck const& p : plucks) {
            bool const busy =
                f.hand == harp::Side::Left && p.at > f.freeFrom && p.at < f.freeTo;
            if (busy) return Hindrance{Obstacle::HandBusy, p.string, f.string, p.at};
            if (f.string == p.string && p.at < f.at && f.at < p.at + p.held)
                return Hindrance{Obstacle::LeverTurned, p.string, std::nullopt, f.at};
        }
    }
    return std::nullopt;
}

template<typename Rule>
std::optional<Hindrance> onAnyPass(View const& view, std::vector<Pluck> const& plucks,
                                   Rule rule)
{
    for (PassView const& pass : view.passes)
        if (std::optional<Hindrance> const found = rule(plucks, pass)) return found;
    return std::nullopt;
}

// What does not depend on how long notes are counted. Gives the plucks strings and pitches.
std::optional<Hindrance> obstacleTo(std::vector<Pluck>& plucks, Pattern const& pattern,
                                    harp::StringIndex rootString, View const& view)
{
    int const rootMidi = view.passes.front().midi[rootString];
    if (rootMidi < pattern.lowestRoot)
        return Hindrance{Obstacle::RootTooLow, rootString, std::nullopt, 0};
    if (auto const found = raise(plucks, rootString, view)) return found;
    if (auto const found = onAnyPass(view, plucks, tuneInTheWay)) return found;
    if (auto const found = tooFast(plucks, view)) return found;
    if (auto const found = movesTooFar(plucks, view)) return found;
    return rollWhereWide(plucks, pattern, view);
}

std::variant<Laid, Hindrance> raised(Laid laid, Figure const& figure,
                                     harp::StringIndex rootString, View const& view)
{
    if (auto const found = obstacleTo(laid.plucks, figure.pattern, rootString, view))
        return *found;
    laid.voicing.pattern = figure.pattern.name;
    laid.voicing.rhythm = figure.rhythm.name;
    laid.voicing.rootString = rootString;
    laid.level = figure.pattern.level;
    laid.penalty =
        figure.pattern.penalty + pattern::penaltyFor(figure.rhythm, tune::kindName(view.kind));
    for (std::size_t i = 0; i < laid.plucks.size(); ++i) {
        Pluck const& p = laid.plucks[i];
        laid.voicing.notes[i].string = p.string;
        laid.voicing.notes[i].rollOrder = p.rollOrder;
        laid.voicing.rolled = laid.voicing.rolled || p.rollOrder > 0;
    }
    sumUp(laid);
    letGoForTheTune(laid, view);
    if (auto const found = onAnyPass(view, laid.plucks, flipInTheWay)) return *found;
    return laid;
}

bool sameNotes(Laid const& a, Laid const& b)
{
    auto const same = [](Pluck const& p, Pluck const& q) {
        return p.at == q.at && p.string == q.string && p.finger == q.finger &&
               p.rollOrder == q.rollOrder;
    };
    return a.strings == b.strings && std::ranges::equal(a.plucks, b.plucks, same);
}

// Collects what can be played, each set of notes and fingers once.
class Collection {
public:
    explicit Collection(View const& view) : m_view(view) {}

    void addOn(Figure const& figure, std::vector<harp::StringIndex> const& rootStrings)
    {
        Laid const atZero = atRootZero(figure, m_view);
        for (harp::StringIndex const root : rootStrings) {
            auto attempt = raised(atZero, figure, root, m_view);
            if (Laid* const laid = std::get_if<Laid>(&attempt)) add(std::move(*laid));
        }
    }
    std::vector<Laid> take() { return std::exchange(m_laid, {}); }

private:
    void add(Laid laid)
    {
        bool const known = std::ranges::any_of(
            m_laid, [&](Laid const& other) { return sameNotes(other, laid); });
        if (!known) m_laid.push_back(std::move(laid));
    }

    View const& m_view;
    std::vector<Laid> m_laid;
};

std::vector<harp::StringIndex> stringsOf(music::Letter letter, harp::Harp const& harp)
{
    std::vector<harp::StringIndex> out;
    for (harp::StringIndex const s : harp.indices())
        if (harp.string(s).open.letter == letter) out.push_back(s);
    return out;
}

bool soundsRoot(View const& view, harp::StringIndex string)
{
    return view.passes.front().midi[string] % 12 == view.chord.lowest;
}

// Degrees above one root string, up to an octave and a tenth, whose strings sound tones of the
// chord.
std::vector<int> soundingDegrees(View const& view, harp::StringIndex rootString)
{
    constexpr int highest = 12;
    std::vector<int> out;
    for (int degree = 1; degree <= highest; ++degree) {
        harp::StringIndex const string = pattern::stringOf(rootString, degree);
        if (string >= view.harp->count()) break;
        int const midi = view.passes.front().midi[string];
        if (view.chord.tone[static_cast<std::size_t>(midi % 12)]) out.push_back(degree);
    }
    return out;
}

std::string joined(std::initializer_list<int> degrees, char between = '-')
{
    std::string name;
    for (int d : degrees) {
        if (!name.empty()) name += between;
        name += std::to_string(d);
    }
    return name;
}

// Shapes of the degrees that sound: each alone, each two from a third to a tenth apart.
std::vector<std::string> shapesWithoutRoot(std::vector<int> const& degrees)
{
    std::vector<std::string> names;
    for (int d : degrees) names.push_back(joined({d}));
    for (int low : degrees)
        for (int high : degrees)
            if (high - low >= 2 && high - low <= 9) names.push_back(joined({low, high}));
    return names;
}

// Over the bass of a slash chord, from the chord's own notes: one above the bass, or two, one
// by one, to and fro, and plucked together: 1-6-8, 1-6-10, 1-4-8, 1-4-6, 1-3-6 [music-3].
std::vector<std::string> shapesOverBass(std::vector<int> const& degrees)
{
    std::vector<std::string> names;
    for (int inner : degrees) {
        if (inner <= 2 || inner > 8) continue; // a second above the bass growls
        names.push_back(joined({1, inner}));
        names.push_back(joined({1, inner}, '+'));
        for (int top : degrees) {
            if (top <= inner) continue;
            names.push_back(joined({1, inner, top}));
            names.push_back(joined({1, inner, top}, '+'));
            names.push_back(joined({1, inner, top, inner}));
            names.push_back(joined({1, inner}) + "+" + std::to_string(top));
        }
    }
    return names;
}

void addShapes(Collection& all, View const& view, std::vector<std::string> const& names,
               harp::StringIndex rootString, pattern::PatternBook const& book)
{
    for (std::string const& name : names) {
        auto const shape = pattern::patternFrom(name);
        if (!shape || !suitsLevel(*shape, *view.level)) continue;
        for (Rhythm& rhythm : pattern::rhythmsFor(book, *shape, view.meter, view.spanLength))
            if (rhythm.level <= view.level->number && playsAllNotes(rhythm, *shape))
                all.addOn({*shape, std::move(rhythm)}, {rootString});
    }
}

// How far into the position the left hand is still busy with a lever that it was already
// turning as the position began, to the next beat; none: it is free from the start.
Length busyAtStart(View const& view)
{
    double until = 0;
    for (PassView const& pass : view.passes)
        for (NearFlip const& f : pass.flips)
            if (f.hand == harp::Side::Left && f.freeFrom < 0 && f.freeTo > 0)
                until = std::max(until, f.freeTo);
    Length const beat = music::beatLength(view.meter);
    Length late;
    while (late.wholes.toDouble() < until) late = late + beat;
    return late;
}

// The flip first, then the shape in what is left of the position.
std::vector<Figure> figuresAfterFlip(View const& view, pattern::PatternBook const& book)
{
    Length const late = busyAtStart(view);
    if (late == Length{} || late >= view.spanLength) return {};
    std::vector<Figure> figures =
        figuresFor(book, *view.level, view.meter, view.spanLength - late);
    for (Figure& figure : figures) {
        figure.rhythm.name += ", after a flip";
        figure.rhythm.span = view.spanLength;
        for (Length& onset : figure.rhythm.onsets) onset = onset + late;
    }
    return figures;
}

// Where the tune comes down to the root, or the harp ends above it: the fifth below, alone.
std::vector<Figure> fifthBelow(View const& view, pattern::PatternBook const& book)
{
    std::vector<Figure> figures;
    auto const fifth = pattern::patternFrom("low5");
    if (!fifth || !view.chord.fifth || view.chord.slash) return figures;
    for (Rhythm& rhythm : pattern::rhythmsFor(book, *fifth, view.meter, view.spanLength))
        if (rhythm.level <= view.level->number) figures.push_back({*fifth, std::move(rhythm)});
    return figures;
}

} // namespace

bool playsAllNotes(Rhythm const& rhythm, Pattern const& pattern)
{
    std::set<int> played;
    for (std::vector<int> const& at : rhythm.plays) played.insert(at.begin(), at.end());
    return played.size() == pattern.notes.size();
}

bool suitsLevel(Pattern const& pattern, harp::Level const& level)
{
    return pattern.level <= level.number &&
           pattern::stringsSpanned(pattern) <= level.leftStrings;
}

std::vector<harp::StringIndex> rootStrings(View const& view)
{
    return stringsOf(view.chord.lowestLetter, *view.harp);
}

std::vector<Figure> figuresFor(pattern::PatternBook const& book, harp::Level const& level,
                               music::Meter meter, music::Length span)
{
    std::vector<Figure> figures;
    for (Pattern const& p : book.patterns) {
        if (!suitsLevel(p, level) || !pattern::suits(p, meter)) continue;
        for (Rhythm& rhythm : pattern::rhythmsFor(book, p, meter, span))
            if (rhythm.level <= level.number && playsAllNotes(rhythm, p))
                figures.push_back({p, std::move(rhythm)});
    }
    return figures;
}

std::variant<Laid, Hindrance> laidOn(Figure const& figure, harp::StringIndex rootString,
                                     View const& view)
{
    return raised(atRootZero(figure, view), figure, rootString, view);
}

Laid resting(View const& view)
{
    Laid laid;
    laid.voicing.pattern = "rest";
    std::vector<harp::StringIndex> const roots = stringsOf(view.chord.lowestLetter, *view.harp);
    laid.voicing.rootString = roots.empty() ? harp::StringIndex(0) : roots.front();
    return laid;
}

std::vector<Laid> playableVoicings(View const& view, std::vector<Figure> const& figures,
                                   pattern::PatternBook const& book)
{
    Collection all(view);
    std::vector<harp::StringIndex> const roots = rootStrings(view);
    for (Figure const& figure : figures) all.addOn(figure, roots);
    for (harp::StringIndex const root : roots) {
        std::vector<int> const degrees = soundingDegrees(view, root);
        if (!soundsRoot(view, root))
            addShapes(all, view, shapesWithoutRoot(degrees), root, book);
        else if (view.chord.slash)
            addShapes(all, view, shapesOverBass(degrees), root, book);
    }
    for (Figure const& figure : figuresAfterFlip(view, book)) all.addOn(figure, roots);
    std::vector<Laid> voicings = all.take();
    if (voicings.empty() && !view.upbeat && view.close == Close::None) {
        for (Figure const& figure : fifthBelow(view, book)) all.addOn(figure, roots);
        voicings = all.take();
    }
    voicings.push_back(resting(view));
    return voicings;
}

} // namespace arrange
