#pragma once

#include "core/arrange/lattice.h"
#include "core/proposal/brief.h"
#include "core/tune/form.h"

#include <optional>
#include <string>
#include <vector>

namespace proposal {

// The tune of a brief as it is arranged, in its written key: with what the arranger has
// changed, over a drone where it has no chords, with introduction, ending and all times
// through. Times that are played in another octave stand here as they are written: what fits
// the harp is known only with the key (inOctaves).
tune::Formed formOf(Brief const& brief);

// The bar of the tune as read that a bar of the arrangement is made from.
tune::BarIndex writtenBar(Brief const& brief, tune::BarIndex bar);

// The brief with another form. What was decided about a bar stays with it, where the same time
// through, introduction or ending still has it.
Brief withForm(Brief brief, Form form);

// Moves the times that are played in another octave, where the harp has all of their strings
// and the left hand keeps its room below; answers the times (from 1) that stay as written.
std::vector<int> inOctaves(tune::Tune& tune, Form const& form, harp::Harp const& harp);

// How the left hand is weighed in each bar of a formed tune: bars of one time and one kind of
// strain go together.
struct WeightsByBar {
    std::vector<arrange::Weights> all; // at least one: what the brief itself asks for
    base::List<tune::BarIndex, int> ofBar; // an index into `all` for each bar; empty: the first
    arrange::Weights const& at(tune::BarIndex bar) const
    {
        return ofBar.empty() ? all.front() : all[static_cast<std::size_t>(ofBar[bar])];
    }
};
WeightsByBar weightsByBar(Brief const& brief, tune::Tune const& formed);

// Where a time through is to have few notes in a bar, or chords that begin with two strings at
// once, each shape of its lattice that is otherwise pays for it (under the term of passes).
void keepToManners(arrange::Lattice& lattice, Brief const& brief, tune::Tune const& formed);

// What the right hand adds in each bar of a formed tune; empty: everywhere as the brief has it.
base::List<tune::BarIndex, RightHand> rightByBar(Brief const& brief, tune::Tune const& formed);

} // namespace proposal
