#include "core/pattern/own.h"

#include "core/base/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <optional>

namespace pattern {

namespace {

constexpr std::size_t mostNotes = 8;

std::string place(std::size_t note) { return base::say("note {}", note + 1); }

// How two notes that the hand plays together or one after the other stand to each other.
bool placedWell(PatternNote const& before, PatternNote const& note)
{
    if (note.placing != Placing::Plain || note.degree == before.degree) return true;
    // One finger cannot be on two strings at once, but it can be moved.
    if (note.finger == before.finger) return !note.withPrevious;
    return (note.degree > before.degree) == (note.finger < before.finger);
}

std::optional<base::Fault> faultOfFingers(std::vector<PatternNote> const& notes)
{
    for (std::size_t i = 1; i < notes.size(); ++i) {
        // What is plucked together is placed together, so each note is seen beside all of
        // these.
        for (std::size_t before = i; before-- > 0;) {
            if (!placedWell(notes[before], notes[i]))
                return base::Fault{base::FaultCode::PatternFingers, place(i),
                                   base::say("finger {} on degree {} after finger {} on "
                                             "degree {}",
                                             notes[i].finger, degreeText(notes[i].degree),
                                             notes[before].finger,
                                             degreeText(notes[before].degree))};
            if (!notes[before + 1].withPrevious) break;
        }
    }
    return std::nullopt;
}

bool sameShape(Pattern const& a, Pattern const& b)
{
    return a.notes == b.notes && a.spread == b.spread;
}

} // namespace

base::Result<Pattern> ownPatternFrom(std::string_view text)
{
    auto read = patternFrom(text);
    if (!read) return read;
    if (read->notes.size() > mostNotes)
        return base::Fault{base::FaultCode::PatternTooLong, place(mostNotes),
                           base::say("{} notes", read->notes.size())};
    if (text.find('(') != std::string_view::npos) {
        if (auto const fault = faultOfFingers(read->notes)) return *fault;
        read->name += fmt::format(" ({})", fingersText(read->notes));
    }
    read->own = true;
    read->feel = base::said("Your own.");
    return read;
}

Pattern const* named(PatternBook const& book, std::string_view name)
{
    auto const found = std::find_if(book.patterns.begin(), book.patterns.end(),
                                    [&](Pattern const& p) { return p.name == name; });
    return found == book.patterns.end() ? nullptr : &*found;
}

WithOwn withOwn(PatternBook book, Pattern own)
{
    for (Pattern& known : book.patterns)
        if (known.name == own.name || sameShape(known, own)) {
            std::string name = known.name;
            if (!known.meters.empty()) { // hers may be used in any time
                known.meters.clear();
                known.own = true;
            }
            return {std::move(book), std::move(name)};
        }
    std::string name = own.name;
    book.patterns.push_back(std::move(own));
    return {std::move(book), std::move(name)};
}

std::vector<Pattern> ownPatterns(PatternBook const& book)
{
    std::vector<Pattern> own;
    std::copy_if(book.patterns.begin(), book.patterns.end(), std::back_inserter(own),
                 [](Pattern const& p) { return p.own; });
    return own;
}

} // namespace pattern
