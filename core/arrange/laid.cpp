#include "core/arrange/laid.h"

#include <algorithm>

namespace arrange {

namespace {

// Level and penalty of the voicing's pattern and rhythm in the book; of a shape that is in no
// book the level that follows from its width.
void lookUp(Laid& laid, View const& view)
{
    auto const& patterns = view.book->patterns;
    std::size_t notes = 0;
    auto const known =
        std::ranges::find(patterns, laid.voicing.pattern, &pattern::Pattern::name);
    if (known != patterns.end()) {
        laid.level = known->level;
        laid.penalty = known->penalty;
        notes = known->notes.size();
    } else if (auto const shape = pattern::patternFrom(laid.voicing.pattern)) {
        laid.level = (*shape).level;
        notes = (*shape).notes.size();
    }
    for (pattern::Rhythm const& r : view.book->rhythms)
        if (r.name == laid.voicing.rhythm && r.meter == view.meter &&
            r.span == view.spanLength &&
            (notes == 0 || r.notes == static_cast<int>(notes))) {
            laid.penalty += pattern::penaltyFor(r, tune::kindName(view.kind));
            break;
        }
}

} // namespace

void sumUp(Laid& laid)
{
    laid.strings = 0;
    laid.shortestStep = 0;
    if (laid.rests()) return;
    laid.bass = laid.top = laid.plucks.front().string;
    for (std::size_t i = 0; i < laid.plucks.size(); ++i) {
        Pluck const& p = laid.plucks[i];
        laid.strings |= std::uint64_t{1} << (p.string % 64);
        laid.bass = std::min(laid.bass, p.string);
        laid.top = std::max(laid.top, p.string);
        double const step = i == 0 ? 0 : p.at - laid.plucks[i - 1].at;
        if (step > 0 && (laid.shortestStep == 0 || step < laid.shortestStep))
            laid.shortestStep = step;
    }
}

Laid laidAs(Voicing const& voicing, View const& view)
{
    Laid laid;
    laid.voicing = voicing;
    for (VoicedNote const& note : voicing.notes) {
        double const at = note.at.wholes.toDouble();
        laid.plucks.push_back({at, note.held.wholes.toDouble(), note.string,
                               midiAt(view.passes.front(), note.string, at), note.finger,
                               note.degree, strengthAt(view, note.at), note.rollOrder});
    }
    sumUp(laid);
    if (!laid.rests()) lookUp(laid, view);
    return laid;
}

} // namespace arrange
