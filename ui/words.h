#pragma once

#include "core/arrange/arrangement.h"
#include "core/arrange/score.h"
#include "core/base/fault.h"
#include "core/perform/schedule.h"
#include "ui/passage.h"

#include <QString>

namespace ui {

// What the screen says, in the trade's words.

// "a tenth · 10 strings"
QString reachWords(int strings);

// What a regret means: "as good as the best", "a little less" ...
QString regretWords(arrange::Points regret);
// The same as a length, 1 for no regret, falling towards 0: half at three points.
double regretShare(arrange::Points regret);

// What a way round a snag is worth beside the best of its ways, in their points: "best", "nearly
// as good" ...
QString wayPlaceWords(int dearer);

// "Bar 3", "Pick-up bar"
QString barTitle(tune::Tune const& tune, tune::BarIndex bar);
// "Bars 5–6"
QString passageWords(tune::Tune const& tune, Passage passage);
// "Bar 3 · Em · first time"; the time only where the position is not played every time.
QString positionTitle(arrange::Arrangement const& arrangement, arrange::PositionIndex position);
// "introduction", "time 2", "ending" where it begins with a bar; else empty.
QString formWords(tune::Tune const& tune, tune::BarIndex bar);
// "first time", "second time", "time 3"; empty for a position played every time.
QString passWords(arrange::Arrangement const& arrangement, arrange::PositionIndex position);

// "34 strings · E♭"
QString harpWords(harp::Harp const& harp);
// "medium", from "medium hand"; "Plain", from "Plain: few notes, well apart".
QString handWords(harp::HandModel const& hand);
QString styleWords(arrange::Weights const& weights);
// "A♮ B♮ F♯": letters whose levers are up, in the order in which keys raise them; "all down"
// for none. A letter of which only some strings are up stands in brackets.
QString setupWords(harp::Harp const& harp, harp::LeverSetting const& setup);
// "F♯3 · string 18 from the low end, 17 from the high · harp octave 4"
QString stringWords(harp::Harp const& harp, harp::StringIndex string, music::Pitch sounding);

// What is wrong and what to do, as two sentences.
QString faultWords(base::Fault const& fault);

// "rest" and pattern names as the screen shows them.
QString patternWords(arrange::Voicing const& voicing);

} // namespace ui
