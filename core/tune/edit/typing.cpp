#include "core/tune/edit/typing.h"

#include "core/base/words.h"
#include "core/tune/edit/bars.h"
#include "core/tune/edit/barsums.h"
#include "core/tune/edit/pitches.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace tune {

using music::Length;
using music::Pitch;
using music::Rational;

namespace {

constexpr Length shortest{Rational(1, 64)};
constexpr Length longest{Rational(2)};

BarIndex lastBarOf(Tune const& tune) { return tune.bars.beyond() - 1; }
// The place behind the last note of a bar.
NoteIndex endOfBar(Tune const& tune, BarIndex bar) { return tune.bars[bar].notes.beyond(); }

// The end of a bar is a place of its own where the bar is too short, and behind the last bar.
bool hasEndPlace(Tune const& tune, BarIndex bar)
{
    if (bar == lastBarOf(tune)) return true;
    auto const odd = oddBar(tune.bars, bar);
    return odd && odd->off < Length{};
}

NoteAt after(Tune const& tune, NoteAt at)
{
    NoteIndex const notes = endOfBar(tune, at.bar);
    if (at.note + 1 < notes) return {at.bar, at.note + 1};
    if (at.note < notes && hasEndPlace(tune, at.bar)) return {at.bar, notes};
    return at.bar < lastBarOf(tune) ? NoteAt{at.bar + 1, 0} : NoteAt{at.bar, notes};
}

NoteAt before(Tune const& tune, NoteAt at)
{
    if (at.note > 0) return {at.bar, at.note - 1};
    return at.bar > 0 ? NoteAt{at.bar - 1, endOfBar(tune, at.bar - 1) - 1} : at;
}

std::string inBar(Tune const& tune, BarIndex bar)
{
    return base::say(" in {}", barName(tune, bar));
}

void moveTo(Typing& typing, NoteAt at)
{
    typing.at = at;
    typing.written.reset();
    typing.tie.reset();
}

// The note that signs behind a note are about.
NoteAt meant(Typing const& typing) { return typing.written.value_or(typing.at); }

bool isNote(Tune const& tune, NoteAt at)
{
    Note const* const note = noteAt(tune, at);
    return note != nullptr && !note->pitches.empty();
}

Typed edited(Typing typing, Tune tune, std::string what)
{
    if (tune == typing.tune) return {std::move(typing), {}};
    NoteAt const at = typing.at;
    typing.tune = std::move(tune);
    return {withCaret(std::move(typing), at), std::move(what)};
}

Typed put(Typing typing, std::vector<Pitch> pitches)
{
    std::string what = (pitches.empty() ? base::said("edit|rest") : shown(pitches.front()));
    Tune tune = typing.tune;
    // Behind a full last bar a new one begins.
    if (typing.at.note == endOfBar(tune, typing.at.bar) && typing.at.bar == lastBarOf(tune) &&
        tune.bars.back().length >= barLength(tune.bars.back().meter)) {
        BarIndex const beyond = tune.bars.beyond();
        tune = withBars(std::move(tune), beyond);
        typing.at = {lastBarOf(tune), 0};
    }
    NoteAt const at = typing.at;
    tune = typing.triplet ? withTriplet(std::move(tune), at, pitches, typing.length)
                          : withNote(std::move(tune), at, pitches, typing.length);
    if (!pitches.empty()) {
        if (typing.graces) tune = withGraces(std::move(tune), at, *typing.graces);
        if (typing.tie && !noteAt(tune, *typing.tie)->tied)
            tune = withTie(std::move(tune), *typing.tie);
        typing.graces.reset();
        typing.accidental.reset();
    }
    typing.triplet = false;
    typing.graceOpen = false;
    what += inBar(tune, at.bar);
    typing.tune = std::move(tune);
    moveTo(typing, after(typing.tune, at));
    typing.written = at;
    return {std::move(typing), std::move(what)};
}

Typed letter(Typing typing, char sign)
{
    constexpr std::string_view names = "CDEFGAB";
    auto const place = names.find(static_cast<char>(std::toupper(sign)));
    Pitch pitch =
        typedPitch(typing.tune, typing.at, static_cast<music::Letter>(static_cast<int>(place)));
    if (typing.accidental) pitch.alter = *typing.accidental;
    if (!typing.graceOpen || !typing.graces) return put(std::move(typing), {pitch});
    typing.graces->push_back(pitch);
    typing.accidental.reset();
    return {std::move(typing), {}};
}

// The length of what comes, and of the note that the caret was moved to.
Typed lengthened(Typing typing, Length length)
{
    if (length < shortest || length > longest) return {std::move(typing), {}};
    typing.length = length;
    if (typing.written || !isNote(typing.tune, typing.at)) return {std::move(typing), {}};
    Tune tune = withLength(typing.tune, typing.at, length);
    std::string what = lengthWords(length) + inBar(tune, typing.at.bar);
    return edited(std::move(typing), std::move(tune), std::move(what));
}

// From the note at the caret on, where lengths are meant for it.
Length lengthNow(Typing const& typing)
{
    if (typing.written || !isNote(typing.tune, typing.at)) return typing.length;
    return writtenLength(typing.tune.bars[typing.at.bar], typing.at.note);
}

Length dotted(Length length)
{
    return length.wholes.numerator() % 3 == 0 ? length * Rational(2, 3)
                                              : length * Rational(3, 2);
}

Typed tied(Typing typing)
{
    NoteAt const at = meant(typing);
    if (!isNote(typing.tune, at)) return {std::move(typing), {}};
    Tune tune = withTie(typing.tune, at);
    if (tune == typing.tune && typing.written) typing.tie = at; // to what is typed next
    auto keep = typing.tie;
    auto written = typing.written;
    std::string what = base::said("edit|tie") + inBar(tune, at.bar);
    Typed out = edited(std::move(typing), std::move(tune), std::move(what));
    out.typing.tie = keep;
    out.typing.written = written;
    return out;
}

Typed graced(Typing typing)
{
    typing.graceOpen = false;
    if (!typing.graces || !isNote(typing.tune, typing.at) || typing.written)
        return {std::move(typing), {}}; // for the next note
    Tune tune = withGraces(typing.tune, typing.at, *typing.graces);
    typing.graces.reset();
    std::string what = base::said("grace notes") + inBar(tune, typing.at.bar);
    return edited(std::move(typing), std::move(tune), std::move(what));
}

Typed repitched(Typing typing, Tune tune)
{
    NoteAt const at = meant(typing);
    auto const written = typing.written;
    std::string what = isNote(tune, at)
                           ? shown(noteAt(tune, at)->pitches.front()) + inBar(tune, at.bar)
                           : std::string();
    Typed out = edited(std::move(typing), std::move(tune), std::move(what));
    out.typing.written = written;
    return out;
}

Typed deleted(Typing typing, NoteAt at)
{
    moveTo(typing, at);
    bool const note = isNote(typing.tune, at);
    Tune tune = note ? silenced(typing.tune, at) : withoutNote(typing.tune, at);
    std::string what = (note ? base::said("note taken out") : base::said("rest taken out")) +
                       inBar(tune, at.bar);
    return edited(std::move(typing), std::move(tune), std::move(what));
}

} // namespace

Typing withCaret(Typing typing, NoteAt at)
{
    at.bar = std::clamp(at.bar, BarIndex(0), lastBarOf(typing.tune));
    NoteIndex const last =
        endOfBar(typing.tune, at.bar) - (hasEndPlace(typing.tune, at.bar) ? 0 : 1);
    at.note = std::clamp(at.note, NoteIndex(0), last);
    moveTo(typing, at);
    return typing;
}

Typed typed(Typing typing, char sign)
{
    if (std::isdigit(static_cast<unsigned char>(sign)) && sign != '0') {
        if (typing.triplet && sign == '3') return {std::move(typing), {}}; // "(3"
        return lengthened(std::move(typing), Length{Rational(sign - '0', 8)});
    }
    Length const length = lengthNow(typing);
    switch (sign) {
    case '/':
        return lengthened(std::move(typing), length * Rational(1, 2));
    case '*':
        return lengthened(std::move(typing), length * Rational(2));
    case '.':
        return lengthened(std::move(typing), dotted(length));
    case '\'':
        return repitched(typing, withOctave(typing.tune, meant(typing), +1));
    case ',':
        return repitched(typing, withOctave(typing.tune, meant(typing), -1));
    case '-':
        return tied(std::move(typing));
    case '^':
        typing.accidental = +1;
        break;
    case '_':
        typing.accidental = -1;
        break;
    case '=':
        typing.accidental = 0;
        break;
    case '(':
        typing.triplet = !typing.triplet;
        break;
    case '{':
        typing.graces.emplace();
        typing.graceOpen = true;
        break;
    case '}':
        return graced(std::move(typing));
    case '|':
        return stroked(std::move(typing), Stroke::BarAfter);
    case 'z':
    case 'Z':
        return put(std::move(typing), {});
    default:
        if (std::string_view("abcdefgABCDEFG").find(sign) != std::string_view::npos)
            return letter(std::move(typing), sign);
        break;
    }
    return {std::move(typing), {}};
}

Typed played(Typing typing, Pitch pitch)
{
    if (!typing.graceOpen || !typing.graces) return put(std::move(typing), {pitch});
    typing.graces->push_back(pitch);
    return {std::move(typing), {}};
}

Typed stroked(Typing typing, Stroke stroke)
{
    Tune const& tune = typing.tune;
    BarIndex const bar = typing.at.bar;
    switch (stroke) {
    case Stroke::Left:
        moveTo(typing, before(tune, typing.at));
        break;
    case Stroke::Right:
        moveTo(typing, after(tune, typing.at));
        break;
    case Stroke::BarAfter:
        if (typing.written && typing.written->bar < bar && typing.at.note == 0) {
            moveTo(typing, typing.at); // the note just typed filled its bar
            break;
        }
        if (bar < lastBarOf(tune)) moveTo(typing, {bar + 1, 0});
        break;
    case Stroke::BarBefore:
        moveTo(typing, {typing.at.note > 0 ? bar : std::max(bar - 1, BarIndex(0)), 0});
        break;
    case Stroke::Up:
        return repitched(typing, withStep(tune, meant(typing), +1));
    case Stroke::Down:
        return repitched(typing, withStep(tune, meant(typing), -1));
    case Stroke::SemitoneUp:
        return repitched(typing, withSemitone(tune, meant(typing), +1));
    case Stroke::SemitoneDown:
        return repitched(typing, withSemitone(tune, meant(typing), -1));
    case Stroke::OctaveUp:
        return repitched(typing, withOctave(tune, meant(typing), +1));
    case Stroke::OctaveDown:
        return repitched(typing, withOctave(tune, meant(typing), -1));
    case Stroke::Delete:
        return deleted(typing, typing.at);
    case Stroke::BackSpace:
        if (before(tune, typing.at) == typing.at) break;
        return deleted(typing, before(tune, typing.at));
    }
    return {std::move(typing), {}};
}

std::string lengthWords(Length length)
{
    struct Named {
        Rational wholes;
        std::string_view name;
    };
    constexpr std::array names{Named{{2, 1}, base::marked("breve")},
                               Named{{1, 1}, base::marked("semibreve")},
                               Named{{1, 2}, base::marked("minim")},
                               Named{{1, 4}, base::marked("crotchet")},
                               Named{{1, 8}, base::marked("quaver")},
                               Named{{1, 16}, base::marked("semiquaver")},
                               Named{{1, 32}, base::marked("demisemiquaver")}};
    for (Named const& each : names) {
        if (each.wholes == length.wholes) return base::said(each.name);
        if (each.wholes * Rational(3, 2) == length.wholes)
            return base::say("dotted {}", base::said(each.name));
    }
    return base::say("{} of a whole note", text(length.wholes));
}

} // namespace tune
