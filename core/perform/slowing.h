#pragma once

#include "core/arrange/arrangement.h"
#include "core/tune/kind.h"

#include <optional>
#include <vector>

namespace perform {

// How the end of a tune is played slower.
struct Slowing {
    double to = 1; // share of the tempo that is left where the last note is plucked, over 0 to 1
    int beats = 0; // before the last note, over which the tempo falls; 0: it does not
    friend bool operator==(Slowing const&, Slowing const&) = default;
};

// What a kind of tune does at 100 %, and how much of it is usual; a table in shared/.
struct KindOfSlowing {
    tune::Kind kind = tune::Kind::Air;
    Slowing most;
    int usual = 0; // per cent, where nobody says otherwise
};

// The row of the tune's kind; none: that kind goes on to its end in time.
std::optional<KindOfSlowing> slowingOf(std::vector<KindOfSlowing> const& slowings,
                                       tune::Tune const& tune);

// So much of it: 0 none, 1 the most.
Slowing partOf(Slowing most, double amount);

// How the tune's end is played: so much per cent of the most of its kind, else what is usual.
Slowing slowingFor(std::vector<KindOfSlowing> const& slowings, tune::Tune const& tune,
                   std::optional<int> percent);

// How long beats last once the tempo falls at the end. A runner coming to a stop slows so, and
// players were measured to do likewise: with x from 0 to 1 on the way to the last note and w the
// share left there, the tempo is (1 + (w^3 - 1) x)^(1/3) (Friberg and Sundberg 1999; from memory).
// From the last note on it stays as it is there.
class SlowedTime {
public:
    SlowedTime() = default; // in time to the end
    SlowedTime(arrange::Arrangement const& arrangement, Slowing slowing);

    bool slows() const { return m_over > 0; }
    music::Moment begins() const { return m_begins; } // where the tempo begins to fall
    double endTempo() const { return m_to; } // from the last note on, as a share of the tempo

    // By how much later than in time a moment comes, in whole notes of the tempo before; `wholes`
    // from the start of the performance.
    double later(double wholes) const;

private:
    music::Moment m_begins;
    double m_from = 0; // the same in whole notes
    double m_over = 0; // and how long until the last note
    double m_to = 1;
};

} // namespace perform
