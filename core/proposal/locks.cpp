#include "core/proposal/locks.h"

#include <algorithm>

namespace proposal {

namespace {

bool isPlayedOn(arrange::Position const& position, int pass)
{
    return std::any_of(position.played.begin(), position.played.end(),
                       [pass](arrange::Occurrence const& o) { return o.pass == pass; });
}

// Letter and octave of a string as they would stand in the tune's written key.
music::Pitch writtenRoot(harp::Harp const& harp, harp::StringIndex string,
                         music::Interval moved)
{
    return music::naturalAt(music::diatonicStep(harp.string(string).open) - moved.steps);
}

bool sameShape(arrange::Voicing const& a, arrange::Voicing const& b)
{
    return a.pattern == b.pattern && a.rhythm == b.rhythm && a.rolled == b.rolled;
}

bool sameRoot(arrange::Voicing const& voicing, Lock const& lock, harp::Harp const& harp,
              music::Interval moved)
{
    if (!lock.root) return voicing.rootString == lock.voicing.rootString;
    return writtenRoot(harp, voicing.rootString, moved) ==
           music::naturalAt(music::diatonicStep(*lock.root));
}

} // namespace

Lock lockFor(arrange::Lattice const& lattice, arrange::PositionIndex position,
             arrange::CandidateIndex candidate, harp::Harp const& harp, music::Interval moved)
{
    arrange::Position const& place = lattice.positions[position];
    arrange::Voicing const& voicing = lattice.candidates[position][candidate].voicing;
    Lock lock{place.bar, place.at, place.played.front().pass, voicing, std::nullopt};
    if (!voicing.notes.empty()) lock.root = writtenRoot(harp, voicing.rootString, moved);
    return lock;
}

std::optional<arrange::PositionIndex> positionOf(Lock const& lock,
                                                 arrange::Lattice const& lattice)
{
    auto const found = std::find_if(
        lattice.positions.begin(), lattice.positions.end(), [&](arrange::Position const& p) {
            return p.bar == lock.bar && p.at == lock.at && isPlayedOn(p, lock.pass);
        });
    if (found == lattice.positions.end()) return std::nullopt;
    return lattice.positions.indexOf(found);
}

std::optional<arrange::CandidateIndex>
candidateOf(Lock const& lock, arrange::Lattice const& lattice, arrange::PositionIndex position,
            harp::Harp const& harp, music::Interval moved)
{
    auto const& candidates = lattice.candidates[position];
    auto const found =
        std::find_if(candidates.begin(), candidates.end(), [&](arrange::Candidate const& c) {
            return sameShape(c.voicing, lock.voicing) &&
                   (c.voicing.notes.empty() || sameRoot(c.voicing, lock, harp, moved));
        });
    if (found == candidates.end()) return std::nullopt;
    return candidates.indexOf(found);
}

PlacedLocks placed(std::vector<Lock> const& locks, arrange::Lattice const& lattice,
                   harp::Harp const& harp, music::Interval moved)
{
    PlacedLocks out;
    out.byPosition.resize(lattice.positions.size());
    for (std::size_t l = 0; l < locks.size(); ++l) {
        std::optional<arrange::PositionIndex> const position = positionOf(locks[l], lattice);
        std::optional<arrange::CandidateIndex> const candidate =
            position ? candidateOf(locks[l], lattice, *position, harp, moved) : std::nullopt;
        if (!candidate) {
            out.dropped.push_back(l);
            continue;
        }
        std::optional<arrange::CandidateIndex>& kept = out.byPosition[*position];
        if (kept && kept != candidate)
            out.dropped.push_back(l);
        else
            kept = candidate;
    }
    return out;
}

} // namespace proposal
