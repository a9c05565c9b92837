#include "core/sheet/ties.h"

#include "core/notation/beams.h"
#include "core/sheet/pen.h"

#include <algorithm>
#include <optional>

namespace sheet {

namespace {

// A sign of the line in its order.
struct Standing {
    SetNote const* note = nullptr;
    BarPlace const* place = nullptr;
    double x = 0;
    tune::BarIndex bar = 0;
    Voice voice = Voice::Alone;
};

std::vector<Standing> inOrder(StaffLine const& line, MusicFont const& font)
{
    std::vector<Standing> out;
    for (std::size_t b = 0; b < line.bars.size(); ++b)
        for (StaffNoteIndex const i : line.bars[b].notes.indices()) {
            SetNote const& note = line.bars[b].notes[i];
            out.push_back({&note, &line.places[b], signX(note, line.places[b], i, font),
                           line.indices[b], line.bars[b].voice});
        }
    return out;
}

bool curvesUp(SetNote const& note, std::size_t head, Voice voice)
{
    if (voice != Voice::Alone) return voice == Voice::Above;
    if (note.heads.size() == 1) return note.stem == Stem::Down;
    return 2 * head >= note.heads.size();
}

std::optional<std::size_t> headOf(SetNote const& note, music::Pitch pitch)
{
    for (std::size_t i = 0; i < note.heads.size(); ++i)
        if (note.heads[i].pitch == pitch) return i;
    return std::nullopt;
}

bool flagged(SetNote const& note)
{
    return !note.beam && !note.what.isRest() && beamCount(note.what.value) > 0;
}

// Away from the stems of grace notes that stand under it, and off the flag of the note it
// leaves where the chord is wide enough for a tie between its heads.
bool curvesUpTo(Standing const& here, std::size_t head, SetNote const& next)
{
    SetNote const& note = *here.note;
    bool const up = curvesUp(note, head, here.voice);
    if (here.voice != Voice::Alone) return up;
    bool const hangs = flagged(note) && note.stem == Stem::Down;
    if (up) return hangs || next.graces.empty() || note.heads.size() > 1;
    bool const room =
        head + 1 < note.heads.size() && note.heads[head + 1].step - note.heads[head].step >= 3;
    return hangs && room;
}

constexpr double clear = 0.12;   // between notehead and tie
constexpr double shortTie = 2.2; // out of the line before
constexpr double leastTie = 1.0;
constexpr double fromHead = 0.55; // its ends' distance from the middle of the head

double heightOf(double width) { return std::clamp(0.35 + 0.06 * width, 0.4, 1.0); }

// Where a tie begins that would begin at `from`: beside the flag that it would run through,
// where enough of it is left before `to`.
double besideFlag(Standing const& here, SetHead const& head, double from, double to, bool up,
                  MusicFont const& font)
{
    SetNote const& note = *here.note;
    if (!flagged(note) || (note.stem == Stem::Up) != up) return from;
    GlyphBox const flag = boxOf(font, flagFor(note.what.value, note.stem));
    double const end = loneStemEnd(note);
    double const away = up ? -1.0 : 1.0;
    double const near = yOfStep(head.step) + away * fromHead;
    double const far = near + away * heightOf(to - from);
    bool const meets =
        std::max(near, far) > end - flag.top && std::min(near, far) < end - flag.bottom;
    double const beside = stemX(note, here.x, font) + flag.right + clear;
    return meets && to - beside >= leastTie ? std::max(from, beside) : from;
}

void drawTie(Pen& pen, double left, double right, int step, bool up)
{
    double const away = up ? -1.0 : 1.0;
    double const y = yOfStep(step) + away * fromHead;
    pen.bow({left, y}, {right, y}, away * heightOf(right - left));
}

} // namespace

void drawTies(Pen& pen, StaffLine const& line, std::vector<music::Pitch> const& tiedOver)
{
    MusicFont const& font = pen.font();
    std::vector<Standing> const signs = inOrder(line, font);
    for (std::size_t i = 0; i < signs.size(); ++i) {
        Standing const& here = signs[i];
        double const middle = boxOf(font, here.note->head).right / 2;
        pen.belongTo(here.bar, here.note->what.position);
        if (i == 0)
            for (music::Pitch pitch : tiedOver)
                if (auto const head = headOf(*here.note, pitch)) {
                    double const to = here.x + middle;
                    double const from =
                        std::max(to - shortTie, std::min(here.place->left, to - leastTie));
                    drawTie(pen, from, to, here.note->heads[*head].step,
                            curvesUp(*here.note, *head, here.voice));
                }
        if (!here.note->what.tied) continue;
        for (std::size_t h = 0; h < here.note->heads.size(); ++h) {
            SetHead const& head = here.note->heads[h];
            double const from = here.x + head.dx + middle + clear;
            if (i + 1 == signs.size()) {
                bool const up = curvesUp(*here.note, h, here.voice);
                double const to = std::max(here.place->right - clear, from + 1.2);
                drawTie(pen, besideFlag(here, head, from, to, up, font), to, head.step, up);
            } else if (headOf(*signs[i + 1].note, head.pitch)) {
                bool const up = curvesUpTo(here, h, *signs[i + 1].note);
                double const to = signs[i + 1].x + middle - clear;
                drawTie(pen, besideFlag(here, head, from, to, up, font), to, head.step, up);
            }
        }
    }
}

} // namespace sheet
