#include "core/proposal/keywish.h"

#include "core/base/words.h"
#include "core/levers/keyfit.h"
#include "core/proposal/formed.h"

#include <fmt/format.h>

#include <algorithm>

namespace proposal {

namespace {

using Moves = std::vector<music::Interval>;
using levers::KeyFit;

base::Fault beyondTuning(Brief const& brief, music::Key key)
{
    auto const setting = harp::settingFor(brief.harp, key);
    if (!setting) return setting.error();
    return {base::FaultCode::KeyBeyondTuning, music::shown(key), {}};
}

// Why nothing in the list will do: said of the move that leaves the tune where it is, or else
// of the one that would have been best.
base::Fault whyNone(std::vector<KeyFit> const& fits, Brief const& brief, music::Key key)
{
    auto const unmoved = std::find_if(fits.begin(), fits.end(), [](KeyFit const& fit) {
        return fit.moved == music::Interval{} && fit.why;
    });
    if (unmoved != fits.end()) return *unmoved->why;
    auto const said = std::find_if(fits.begin(), fits.end(),
                                   [](KeyFit const& fit) { return fit.why.has_value(); });
    return said != fits.end() ? *said->why : beyondTuning(brief, key);
}

base::Result<Moves> possible(std::vector<KeyFit> const& fits, Brief const& brief,
                             music::Key key)
{
    Moves moves;
    for (KeyFit const& fit : fits)
        if (fit.possible && moves.size() < keysTried) moves.push_back(fit.moved);
    if (moves.empty()) return whyNone(fits, brief, key);
    return moves;
}

std::vector<KeyFit> fitsOf(Brief const& brief, levers::KeysAsked asked)
{
    return levers::keyFits(tune::changed(brief.tune, brief.changes), brief.harp,
                           tempoWished(brief), brief.level, pricesOf(brief), asked);
}

base::Result<Moves> movesFor(BestKey, Brief const& brief)
{
    return possible(fitsOf(brief, levers::KeysAsked::TheBest), brief, brief.tune.key);
}

base::Result<Moves> movesFor(AsWritten, Brief const&) { return Moves{music::Interval{}}; }

base::Result<Moves> movesFor(music::Key wished, Brief const& brief)
{
    music::Key const key{wished.tonic, brief.tune.key.mode};
    std::vector<KeyFit> fits = fitsOf(brief, levers::KeysAsked::All);
    std::erase_if(fits, [key](KeyFit const& fit) { return !(fit.key == key); });
    if (fits.empty() && !brief.mending.refuse)
        return Moves{music::between({brief.tune.key.tonic.letter, brief.tune.key.tonic.alter, 4},
                                    {key.tonic.letter, key.tonic.alter, 4})};
    return possible(fits, brief, key);
}

} // namespace

std::optional<base::Fault> tooLong(tune::Tune const& tune)
{
    std::size_t notes = 0;
    std::size_t chords = 0;
    int inBar = 0;
    for (tune::Bar const& bar : tune.bars) {
        notes += static_cast<std::size_t>(bar.notes.size());
        inBar = std::max(inBar, bar.notes.size());
        chords += bar.chords.size();
    }
    std::string over;
    auto const limited = [&over](bool within, std::string const& words) {
        if (!within) over += (over.empty() ? "" : "; ") + words;
    };
    limited(tune.bars.size() <= mostBars,
            base::say("{} bars, at most {}", tune.bars.size(), mostBars));
    limited(notes <= mostNotes, base::say("{} notes, at most {}", notes, mostNotes));
    limited(inBar <= mostInBar,
            base::say("{} notes in one bar, at most {}", inBar, mostInBar));
    limited(chords <= mostChords, base::say("{} chords, at most {}", chords, mostChords));
    if (over.empty()) return std::nullopt;
    return base::Fault{base::FaultCode::TuneTooLong, {}, over};
}

base::Result<std::vector<music::Interval>> movesWished(Brief const& brief)
{
    if (auto const fault = tooLong(brief.form.isPlain() ? brief.tune : formOf(brief).tune))
        return *fault;
    return std::visit([&brief](auto const& wish) { return movesFor(wish, brief); }, brief.key);
}

std::optional<tune::WayPrices> pricesOf(Brief const& brief)
{
    if (brief.mending.refuse) return std::nullopt;
    return brief.weights.ways;
}

tune::Tempo tempoWished(Brief const& brief)
{
    if (!brief.quartersPerMinute) return tune::tempoOf(brief.tune, brief.level.number);
    return {music::Length{music::Rational(1, 4)}, *brief.quartersPerMinute};
}

} // namespace proposal
