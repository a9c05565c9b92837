#pragma once

#include "core/base/result.h"
#include "core/files/tables/tables.h"
#include "core/proposal/proposal.h"

#include <optional>
#include <string>
#include <vector>

namespace app {

// What an arranger decides beyond harp, hand and key, as it was written in the call. A saved
// arrangement takes them on top of its own.
struct Wishes {
    std::vector<std::string> patterns;     // her own, as typed: "1 5 8 10 8"
    std::vector<std::string> patternFiles; // files of them
    std::vector<std::string> locks;        // BAR[.BEAT]=PATTERN
    std::vector<std::string> sliders;      // SLIDER=PERCENT
    std::optional<int> setting;            // 0 the best, 1 a clearly different one ...
    std::string introduction;              // "none" or so many bars; empty: as it is
    std::string ending;
    std::vector<std::string> form; // manners of the times through, or the id of a form; empty:
                                   // as it is
    friend bool operator==(Wishes const&, Wishes const&) = default;
};

// The brief with own patterns, sliders, setting and form. A pattern that a lock names and the
// book has not is taken for one of the arranger's own. Faults: BadCall; those of reading a file
// of patterns and of pattern::ownPatternFrom, NoSuchSlider, NoSuchForm.
base::Result<proposal::Brief> withWishes(proposal::Brief brief, Wishes const& wishes,
                                         files::Tables const& tables);

// A book with the own patterns alone.
base::Result<pattern::PatternBook> withWishes(pattern::PatternBook book, Wishes const& wishes);

// The proposal with the locks that were asked for. Faults: those of propose; BadCall where a
// bar or beat is not there; CannotPlayHere with what is in the way.
base::Result<proposal::Proposal> proposalFor(proposal::Brief const& brief,
                                             Wishes const& wishes);

} // namespace app
