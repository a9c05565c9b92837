#pragma once

#include <vector>

namespace sheet {

// Where the beam runs: its outer edge, y of the first and the last stem end.
struct BeamLine {
    double first = 0;
    double last = 0;
};

// One stem of a beam: where it stands and where its nearest notehead lies, in spaces, y down.
struct BeamStem {
    double x = 0;
    double headY = 0; // of the notehead nearest to the beam
    int beams = 1;
};

// Slant and height of a beam. Flat where the group turns back on itself; else the slant grows
// with the interval of the outer notes and never beyond the house limits; stems no shorter than
// the rule; ledger-line notes reach the middle line [gould11, ross70].
BeamLine beamLine(std::vector<BeamStem> const& stems, bool up, double beamThickness,
                  double beamSpacing);

} // namespace sheet
