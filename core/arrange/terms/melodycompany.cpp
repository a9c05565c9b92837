#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace arrange {

namespace {

// The tune's lowest note that sounds at a time.
std::optional<TuneNote> soundingAt(PassView const& pass, double at)
{
    std::optional<TuneNote> lowest;
    for (TuneNote const& n : pass.tune) {
        if (n.from > at) break;
        if (n.to > at && (!lowest || n.midi < lowest->midi)) lowest = n;
    }
    return lowest;
}

int intervalClass(int semitones)
{
    int const within = std::abs(semitones) % 12;
    return std::min(within, 12 - within);
}

int way(int from, int to) { return to > from ? 1 : to < from ? -1 : 0; }

// What each onset of the left hand says beside the tune, summed, and how many did.
struct Heard {
    Points sum = 0;
    int onsets = 0;
};

Heard heardOn(Taste::MelodyCompany const& taste, PassView const& pass, Laid const& laid)
{
    Heard heard;
    std::optional<TuneNote> tuneBefore;
    Pluck const* before = nullptr;
    for (Pluck const& p : laid.plucks) {
        if (before && p.at == before->at) continue; // a block is judged by its lowest note
        std::optional<TuneNote> const tune = soundingAt(pass, p.at);
        if (tune) {
            ++heard.onsets;
            heard.sum += taste.byIntervalClass[static_cast<std::size_t>(
                intervalClass(tune->midi - p.midi))];
        }
        if (tune && tuneBefore && before && tune->from > before->at) {
            int const tunesWay = way(tuneBefore->midi, tune->midi);
            int const handsWay = way(before->midi, p.midi);
            if (tunesWay == handsWay && handsWay != 0) heard.sum += taste.sameWay;
            if (tunesWay == 0 || handsWay == 0) heard.sum += taste.holdsStill;
        }
        tuneBefore = tune;
        before = &p;
    }
    return heard;
}

} // namespace

Points melodyCompany(View const& view, Laid const& laid)
{
    if (laid.rests()) return 0;
    double worst = 0;
    for (PassView const& pass : view.passes) {
        Heard const heard = heardOn(view.taste->melodyCompany, pass, laid);
        if (heard.onsets > 0)
            worst = std::max(worst, static_cast<double>(heard.sum) / heard.onsets);
    }
    return std::lround(worst);
}

} // namespace arrange
