#include "core/notation/notation.h"

#include "core/notation/lefthand.h"
#include "core/notation/levercues.h"
#include "core/notation/melody.h"
#include "core/notation/placings.h"
#include "core/notation/words.h"

#include <utility>

namespace notation {

namespace {

// Tune, chords and words over the staff: what every sheet has.
Notation lead(tune::Tune tune, std::vector<arrange::NoteFingers> const& fingers,
              std::vector<arrange::AddedBelow> const& added)
{
    Notation out;
    out.grand = false;
    for (int i = 0; i < static_cast<int>(tune.bars.size()); ++i) {
        tune::Bar const& written = tune.bars[static_cast<std::size_t>(i)];
        PrintedBar bar;
        bar.upper = melodyBar(tune, i, fingers, added);
        bar.chords = chordLabels(written);
        bar.annotations = annotationLabels(written);
        out.bars.push_back(std::move(bar));
    }
    out.tune = std::move(tune);
    return out;
}

} // namespace

Notation of(tune::Tune tune) { return lead(std::move(tune), {}, {}); }

Notation of(arrange::Arrangement const& arrangement, Kind kind)
{
    tune::Tune tune = arrangement.tune;
    tune.tempo = arrangement.tempo;
    if (kind == Kind::Lead) return of(std::move(tune));
    bool const grand = kind == Kind::Arrangement;
    Notation out = grand
                       ? lead(std::move(tune), arrangement.rightFingers, arrangement.added)
                       : of(std::move(tune));
    out.grand = grand;
    out.setupLine = harp::setupLine(arrangement.harp, arrangement.levers.setup);
    for (int i = 0; i < static_cast<int>(out.bars.size()); ++i) {
        PrintedBar& bar = out.bars[static_cast<std::size_t>(i)];
        bar.labels = patternLabels(arrangement, i);
        if (!grand) continue;
        bar.lower = leftBar(arrangement, i);
        bar.leverCues = leverCues(arrangement, i);
    }
    if (grand) out.placings = placingBrackets(arrangement);
    return out;
}

} // namespace notation
