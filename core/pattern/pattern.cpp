#include "core/pattern/pattern.h"

#include "core/base/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <map>
#include <optional>
#include <set>
#include <utility>

namespace pattern {

namespace {

constexpr int mostNotes = 16;
constexpr int lowestAllowed = -13;
constexpr int highestAllowed = 22;
constexpr int stringsOfOctave = 7;
// How names tell that a degree is counted within an octave below the root.
constexpr std::array<std::pair<std::string_view, int>, 2> octavesBelow{
    {{"low", 1}, {"deep", 2}}};
constexpr int thumb = 1;
constexpr int lastFinger = 4;

base::Fault badPattern(std::string place, std::string_view detail)
{
    return {base::FaultCode::BadPattern, std::move(place), std::string(detail)};
}

// A text read from left to right.
struct Cursor {
    std::string_view text;
    std::size_t at = 0;

    bool atEnd() const { return at == text.size(); }
    char peek() const { return atEnd() ? '\0' : text[at]; }
    bool digit() const { return std::isdigit(static_cast<unsigned char>(peek())) != 0; }
    bool skipSpaces()
    {
        std::size_t const from = at;
        while (peek() == ' ' || peek() == '\t') ++at;
        return at > from;
    }
    bool take(char c)
    {
        if (peek() != c) return false;
        ++at;
        return true;
    }
    // A number of at most three digits.
    std::optional<int> number()
    {
        if (!digit()) return std::nullopt;
        int value = 0;
        for (int digits = 0; digit(); ++digits) {
            if (digits == 3) return std::nullopt;
            value = 10 * value + (text[at++] - '0');
        }
        return value;
    }
    bool takeWord(std::string_view word)
    {
        if (rest().substr(0, word.size()) != word) return false;
        at += word.size();
        return true;
    }
    std::string_view rest() const { return text.substr(at); }
};

enum class Joint { Dash, Plus, Roll };

// What stands between two numbers: "-", "+", "~" or a space. "1 -2" and "1--2" both go on with
// minus two.
std::optional<Joint> joint(Cursor& in, bool signsAllowed)
{
    bool const spaced = in.skipSpaces();
    if (in.take('+')) {
        in.skipSpaces();
        return Joint::Plus;
    }
    if (in.take('~')) {
        in.skipSpaces();
        return Joint::Roll;
    }
    if (in.peek() == '-') {
        bool const isSign =
            signsAllowed && spaced && in.at + 1 < in.text.size() && in.text[in.at + 1] != ' ';
        if (!isSign) {
            in.take('-');
            in.skipSpaces();
        }
        return Joint::Dash;
    }
    if (spaced) return Joint::Dash;
    return std::nullopt;
}

// "5", "-2", "low5" or "deep 5".
std::optional<int> degreeFrom(Cursor& in)
{
    for (auto const& [word, octaves] : octavesBelow) {
        if (!in.takeWord(word)) continue;
        in.skipSpaces();
        std::optional<int> const within = in.number();
        if (!within || *within < 1 || *within > stringsOfOctave) return std::nullopt;
        return *within - octaves * stringsOfOctave;
    }
    bool const below = in.take('-');
    std::optional<int> const number = in.number();
    if (!number) return std::nullopt;
    int const degree = below ? -*number : *number;
    if (degree < lowestAllowed || degree > highestAllowed) return std::nullopt;
    return degree;
}

std::string notePlace(std::size_t count) { return base::say("note {}", count + 1); }

struct Degrees {
    std::vector<PatternNote> notes;
    bool spread = false; // all joined by "~"
};

base::Result<Degrees> degreesFrom(Cursor& in)
{
    std::vector<PatternNote> notes;
    bool spread = false;
    in.skipSpaces();
    Joint before = Joint::Dash;
    while (true) {
        std::string_view const rest = in.rest();
        std::optional<int> const degree = degreeFrom(in);
        if (!degree || notes.size() == mostNotes)
            return badPattern(notePlace(notes.size()), rest);
        notes.push_back({*degree, lastFinger, before != Joint::Dash, Placing::Plain});
        Cursor ahead = in;
        ahead.skipSpaces();
        if (ahead.atEnd() || ahead.peek() == '(') {
            in = ahead;
            return Degrees{std::move(notes), spread};
        }
        std::string_view const gap = in.rest();
        std::optional<Joint> const next = joint(in, true);
        // A roll takes all notes of a shape, so its sign stands between all or none.
        bool const mixed = next && notes.size() > 1 && (*next == Joint::Roll) != spread;
        if (!next || mixed) return badPattern(notePlace(notes.size()), next ? gap : in.rest());
        spread = *next == Joint::Roll;
        before = *next;
    }
}

Placing placingFrom(Cursor& in)
{
    if (in.take('u')) return Placing::Under;
    if (in.take('o')) return Placing::Over;
    if (in.take('s')) return Placing::Slide;
    return Placing::Plain;
}

// "(4-2-1)" onto the notes, one finger for each.
std::optional<base::Fault> takeFingers(Cursor& in, std::vector<PatternNote>& notes)
{
    in.take('(');
    in.skipSpaces();
    for (std::size_t i = 0; i < notes.size(); ++i) {
        if (i > 0 && !joint(in, false)) return badPattern(notePlace(i), in.rest());
        std::string_view const rest = in.rest();
        std::optional<int> const finger = in.number();
        if (!finger || *finger < thumb || *finger > lastFinger)
            return badPattern(notePlace(i), rest);
        notes[i].finger = *finger;
        notes[i].placing = placingFrom(in);
    }
    in.skipSpaces();
    if (!in.take(')')) return badPattern("fingers", in.rest());
    in.skipSpaces();
    if (!in.atEnd()) return badPattern(base::said("after the fingers"), in.rest());
    return std::nullopt;
}

// The finger below a thumb that lies so many steps higher: 2 up to a fourth, 3 up to a sixth,
// 4 beyond.
int fingerByWidth(int steps) { return steps <= 3 ? 2 : steps <= 5 ? 3 : 4; }

// Fingers of up to four strings placed at once, thumb on the highest.
std::map<int, int> placedFingers(std::set<int> const& degrees)
{
    std::map<int, int> fingers;
    int const top = *degrees.rbegin();
    int finger = thumb;
    int below = static_cast<int>(degrees.size()) - 1; // strings still to be given a finger
    for (auto degree = degrees.rbegin(); degree != degrees.rend(); ++degree, --below) {
        if (*degree != top) {
            int const highestLeft = lastFinger - below;
            finger = std::min(std::max(finger + 1, fingerByWidth(top - *degree)), highestLeft);
        }
        fingers[*degree] = finger;
    }
    if (degrees.size() == 1) fingers[top] = lastFinger;
    return fingers;
}

std::set<int> distinctDegrees(std::vector<PatternNote> const& notes)
{
    std::set<int> degrees;
    for (PatternNote const& n : notes) degrees.insert(n.degree);
    return degrees;
}

// One more note after the last: the next finger in the same direction, crossing where the hand
// is used up.
void finger(PatternNote& note, PatternNote const& before)
{
    bool const rising = note.degree > before.degree;
    if (rising && before.finger == thumb) {
        note.finger = 2;
        note.placing = Placing::Under;
    } else if (!rising && before.finger == lastFinger) {
        note.finger = thumb;
        note.placing = Placing::Over;
    } else {
        note.finger = before.finger + (rising ? -1 : 1);
    }
}

// Usual fingers. Up to four strings are placed at once; of more, the first three are, and the
// hand walks on from there.
void giveUsualFingers(std::vector<PatternNote>& notes)
{
    constexpr std::size_t placedOfMany = 3;
    std::set<int> degrees = distinctDegrees(notes);
    if (degrees.size() > lastFinger) {
        degrees.clear();
        for (PatternNote const& n : notes)
            if (degrees.size() < placedOfMany) degrees.insert(n.degree);
    }
    std::map<int, int> standing = placedFingers(degrees);
    for (std::size_t i = 0; i < notes.size(); ++i) {
        auto const known = standing.find(notes[i].degree);
        if (known != standing.end())
            notes[i].finger = known->second;
        else
            finger(notes[i], notes[i - 1]);
        standing[notes[i].degree] = notes[i].finger;
    }
}

// No string twice and no more than four in what is plucked together.
std::optional<base::Fault> faultOfBlocks(std::vector<PatternNote> const& notes)
{
    std::set<int> block;
    for (std::size_t i = 0; i < notes.size(); ++i) {
        if (!notes[i].withPrevious) block.clear();
        bool const isNew = block.insert(notes[i].degree).second;
        if (!isNew || block.size() > lastFinger)
            return badPattern(notePlace(i), fmt::format("+{}", notes[i].degree));
    }
    return std::nullopt;
}

// Whether a finger can come to its string as the player's marks say: the thumb slides down and
// finger 4 up to the neighbouring string, crossing under goes up and crossing over goes down.
bool canCome(PatternNote const& note, PatternNote const& before)
{
    int const steps = note.degree - before.degree;
    switch (note.placing) {
    case Placing::Plain:
        return true;
    case Placing::Under:
        return steps > 0;
    case Placing::Over:
        return steps < 0;
    case Placing::Slide:
        return note.finger == before.finger && ((note.finger == thumb && steps == -1) ||
                                                (note.finger == lastFinger && steps == 1));
    }
    return false;
}

std::optional<base::Fault> faultOfPlacing(std::vector<PatternNote> const& notes)
{
    for (std::size_t i = 0; i < notes.size(); ++i) {
        bool const can =
            i == 0 ? notes[i].placing == Placing::Plain : canCome(notes[i], notes[i - 1]);
        if (!can) return badPattern(notePlace(i), fingersText({notes[i]}));
    }
    return std::nullopt;
}

bool crosses(PatternNote const& note)
{
    return note.placing == Placing::Under || note.placing == Placing::Over;
}

// From which level a shape can be asked for, by its width and crossings [trade-3.5].
int levelOf(Pattern const& pattern)
{
    int const strings = stringsSpanned(pattern);
    if (strings > 10) return 5;
    if (strings > 8) return 3;
    if (std::any_of(pattern.notes.begin(), pattern.notes.end(), crosses)) return 3;
    return pattern.notes.size() <= 2 ? 1 : 2;
}

} // namespace

std::string degreeText(int degree)
{
    for (auto const& [word, octaves] : octavesBelow) {
        int const within = degree + octaves * stringsOfOctave;
        if (degree < 1 && within >= 1) return fmt::format("{}{}", word, within);
    }
    return std::to_string(degree);
}

std::string nameOf(std::vector<PatternNote> const& notes, bool spread)
{
    std::string name;
    for (PatternNote const& n : notes) {
        if (!name.empty()) name += !n.withPrevious ? '-' : spread ? '~' : '+';
        name += degreeText(n.degree);
    }
    return name;
}

std::string fingersText(std::vector<PatternNote> const& notes)
{
    std::string text;
    for (PatternNote const& n : notes) {
        if (!text.empty()) text += n.withPrevious ? '+' : '-';
        text += std::to_string(n.finger);
        if (n.placing == Placing::Under) text += 'u';
        if (n.placing == Placing::Over) text += 'o';
        if (n.placing == Placing::Slide) text += 's';
    }
    return text;
}

base::Result<Pattern> patternFrom(std::string_view text)
{
    Cursor in{text};
    base::Result<Degrees> degrees = degreesFrom(in);
    if (!degrees) return degrees.error();
    std::vector<PatternNote>& notes = degrees->notes;
    if (auto const fault = faultOfBlocks(notes)) return *fault;
    giveUsualFingers(notes);
    if (!in.atEnd())
        if (auto const fault = takeFingers(in, notes)) return *fault;
    if (auto const fault = faultOfPlacing(notes)) return *fault;

    Pattern pattern;
    pattern.spread = degrees->spread;
    pattern.notes = std::move(notes);
    pattern.name = nameOf(pattern.notes, pattern.spread);
    pattern.together = pattern.notes.size() > 1 &&
                       std::all_of(pattern.notes.begin() + 1, pattern.notes.end(),
                                   [](PatternNote const& n) { return n.withPrevious; });
    pattern.rolls = pattern.together;
    pattern.level = levelOf(pattern);
    return pattern;
}

bool suits(Pattern const& pattern, music::Meter meter)
{
    return pattern.meters.empty() || std::find(pattern.meters.begin(), pattern.meters.end(),
                                               text(meter)) != pattern.meters.end();
}

int lowestDegree(Pattern const& pattern)
{
    int lowest = pattern.notes.front().degree;
    for (PatternNote const& n : pattern.notes) lowest = std::min(lowest, n.degree);
    return lowest;
}

int highestDegree(Pattern const& pattern)
{
    int highest = pattern.notes.front().degree;
    for (PatternNote const& n : pattern.notes) highest = std::max(highest, n.degree);
    return highest;
}

} // namespace pattern
