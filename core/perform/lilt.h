#pragma once

#include "core/arrange/arrangement.h"
#include "core/tune/kind.h"

#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace perform {

// How the parts of a beat that the page shows as even are played uneven in a dance.
struct LiltWay {
    enum class Of {
        Pairs, // the first of two is the longer: swing
        Threes // the first of three takes from the second, the third stays
    };
    Of of = Of::Pairs;
    double most = 2.0 / 3; // the first one's share of the beat at 100 %
    int usual = 0;         // per cent, where nobody says otherwise
};

// Of the kinds of dance that have one; a table in shared/.
struct KindOfLilt {
    tune::Kind kind = tune::Kind::Hornpipe;
    LiltWay way;
};

// The lilt that a tune can have; none: its kind is played as written.
std::optional<LiltWay> liltOf(std::vector<KindOfLilt> const& lilts, tune::Tune const& tune);

struct Lilt {
    LiltWay way;
    double amount = 0; // 0: as written, 1: the most
};

// Where each moment of an arrangement sounds when its beats are played uneven. Beats themselves
// stay where they are, and so does a beat that is divided otherwise: triplets among pairs,
// dotted figures among threes. Dotted pairs come nearer to two against one by the same amount.
class LiltedTime {
public:
    LiltedTime() = default; // as written
    LiltedTime(arrange::Arrangement const& arrangement, Lilt const& lilt);

    // In whole notes from the start of the performance.
    double at(music::Moment moment) const;

private:
    struct Beat {
        music::Length length;
        std::vector<std::pair<double, double>> knots; // share of the beat: written, played
    };
    std::map<music::Moment, Beat> m_beats; // only the uneven ones
};

} // namespace perform
