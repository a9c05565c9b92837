#include "ui/melodylayout.h"

#include "core/tune/edit/barsums.h"

#include <algorithm>

namespace ui {

namespace {

constexpr double gutter = 34; // for the names of the strings
constexpr double head = 24;   // for the names of the bars
constexpr double foot = 8;
constexpr double neighbourShare = 0.22; // of the width
constexpr int fewestSteps = 9;
constexpr int middleStep = 34; // B4

double xIn(MelodyBar const& bar, double share)
{
    constexpr double inset = 14;
    return bar.box.x + inset + share * (bar.box.width - inset - 4);
}

} // namespace

double yOf(MelodyLayout const& layout, int step)
{
    int const steps = std::max(layout.highestStep - layout.lowestStep, 1);
    return layout.strings.y +
           layout.strings.height * (layout.highestStep - step) / static_cast<double>(steps);
}

MelodyLayout layOutMelody(tune::Tune const& tune, tune::NoteAt caret, double width,
                          double height)
{
    MelodyLayout out;
    int const last = tune.bars.size() - 1;
    bool const before = caret.bar > 0;
    bool const after = caret.bar < last;
    double const room = width - gutter - 6;
    double x = gutter;
    auto const add = [&](tune::BarIndex bar, double wide) {
        out.bars.push_back({bar, {x, head, wide, height - head - foot}});
        x += wide;
    };
    if (before) add(caret.bar - 1, room * neighbourShare);
    add(caret.bar, room * (1 - (before ? neighbourShare : 0) - (after ? neighbourShare : 0)));
    if (after) add(caret.bar + 1, room * neighbourShare);
    out.strings = {gutter, head + 6, room, height - head - foot - 12};

    int low = middleStep;
    int high = middleStep;
    bool any = false;
    for (MelodyBar const& shown : out.bars) {
        tune::Bar const& bar = tune.bars[shown.bar];
        music::Length const whole = std::max(bar.length, dueLength(tune.bars, shown.bar));
        auto const share = [&whole](music::Length at) { return (at / whole).toDouble(); };
        for (tune::NoteIndex const i : bar.notes.indices()) {
            tune::Note const& note = bar.notes[i];
            MelodyNote at{{shown.bar, i},
                          note.pitches.empty(),
                          xIn(shown, share(note.at)),
                          xIn(shown, share(note.at + note.length)),
                          {}};
            for (music::Pitch const& pitch : note.pitches) {
                int const step = diatonicStep(pitch);
                at.steps.push_back(step);
                low = any ? std::min(low, step) : step;
                high = any ? std::max(high, step) : step;
                any = true;
            }
            if (at.at == caret) out.caret = at.from;
            out.notes.push_back(std::move(at));
        }
        if (shown.bar == caret.bar && caret.note == bar.notes.beyond())
            out.caret = xIn(shown, share(bar.length));
    }
    --low;
    ++high;
    while (high - low + 1 < fewestSteps) {
        --low;
        if (high - low + 1 < fewestSteps) ++high;
    }
    out.lowestStep = low;
    out.highestStep = high;
    return out;
}

std::optional<tune::NoteAt> melodyPlaceAt(MelodyLayout const& layout, double x)
{
    for (MelodyBar const& bar : layout.bars) {
        if (x < bar.box.x || x >= bar.box.right()) continue;
        MelodyNote const* found = nullptr;
        for (MelodyNote const& note : layout.notes)
            if (note.at.bar == bar.bar && (found == nullptr || note.from <= x + 5))
                found = &note;
        if (found != nullptr) return found->at;
    }
    return std::nullopt;
}

} // namespace ui
