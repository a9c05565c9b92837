#include "core/arrange/terms.h"

#include <algorithm>
#include <cstdlib>

namespace arrange {

namespace {

// The chord stands on its fifth although no bass is named.
bool isSixFour(View const& view, Laid const& laid)
{
    if (view.chord.slash || !view.chord.fifth) return false;
    int const lowest = std::ranges::min_element(laid.plucks, {}, &Pluck::midi)->midi % 12;
    return lowest == *view.chord.fifth && lowest != view.chord.lowest;
}

// A note that wants to lead on in the bass: the last of a broken shape, close above the root, as
// in 1-5-3 before the chord a fourth up [music-4].
Pluck const* approach(View const& view, Laid const& laid)
{
    if (view.chord.slash || laid.plucks.size() < 2) return nullptr;
    Pluck const& last = laid.plucks.back();
    Pluck const& previous = laid.plucks[laid.plucks.size() - 2];
    constexpr int highest = 4; // degree
    bool const close = last.degree > 1 && last.degree <= highest && laid.bass < last.string;
    return close && previous.at < last.at ? &last : nullptr;
}

// On a light beat it goes where it leads, or it hangs, as a seventh does. Inside a pair of bars
// it is not liked for itself: too often, it says nothing.
Points leading(Neighbours const& n, Pluck const& leads, int bass)
{
    Taste::ThumbLine const& taste = n.before->taste->thumbLine;
    constexpr int lightest = 1; // strength of a beat that does not bear a bar or half of it
    if (bass - leads.string != 1 || leads.strength > lightest) return taste.seventhHangs;
    return n.seam == Seam::InPair ? 0 : taste.seventhLeads;
}

} // namespace

Points bassLine(Neighbours const& n, Laid const& before, Laid const& after)
{
    if (!n.adjacent || before.rests() || after.rests()) return 0;
    auto const& byStrings = n.before->taste->bassLine.byStrings;
    auto const strings = static_cast<std::size_t>(std::abs(after.bass - before.bass));
    Points way = byStrings[std::min(strings, byStrings.size() - 1)];
    if (Pluck const* const leads = approach(*n.before, before)) {
        auto const left = static_cast<std::size_t>(std::abs(after.bass - leads->string));
        way = byStrings[std::min(left, byStrings.size() - 1)] +
              leading(n, *leads, after.bass);
    }
    int const letters = (music::index(n.after->chord.lowestLetter) -
                         music::index(n.before->chord.lowestLetter) + 7) %
                        7;
    bool const byStep = letters == 1 || letters == 6;
    constexpr std::size_t fifth = 4;
    bool const walks = strings <= 1 || strings == fifth;
    bool const sixFour = isSixFour(*n.before, before) || isSixFour(*n.after, after);
    Taste::BassLine const& taste = n.before->taste->bassLine;
    return way + (byStep && !walks ? taste.stepLeaps : 0) +
           (sixFour && strings > 1 ? taste.sixFourLeaps : 0);
}

} // namespace arrange
