#pragma once

#include "core/perform/schedule.h"

#include <set>
#include <vector>

namespace perform {

// A string that the player plucked herself.
struct Heard {
    Seconds at = 0; // in the time of the schedule
    int midi = 60;
};

// What became of a note that was hers to play.
enum class Verdict { Right, Early, Late, WrongString, Missed };

struct JudgedNote {
    Event wanted;
    tune::PlayedBarIndex playedBar = 0;
    Verdict verdict = Verdict::Missed;
    Seconds off = 0; // after its time; below 0: before it. Of a note that was played
    int heard = 0;   // the key that was played instead; of a wrong string
};

// One that nobody asked for.
struct ExtraNote {
    Heard heard;
    tune::PlayedBarIndex playedBar = 0;
};

struct Judgement {
    std::vector<JudgedNote> notes; // in order of time
    std::vector<ExtraNote> extra;
};

// Whose notes are judged.
struct Mine {
    bool left = true;
    bool right = true;
};

// How far off a note still is the one that was meant, and how far it is in time.
struct Latitude {
    Seconds meant = 0.3;
    Seconds inTime = 0.09; // three times the scatter of a practised player, 30 ms (our judgement)
};

// Each note that was hers is joined with the one she played for it: of the same key, so that all
// together are off as little as can be; what is left over at the same moment was a wrong string.
Judgement judged(Schedule const& schedule, Mine mine, std::vector<Heard> const& heard,
                 Latitude latitude = {});

// Notes that sound together, rolled or not: to be played before the music goes on.
struct Together {
    Seconds at = 0;
    tune::PlayedBarIndex playedBar = 0;
    std::vector<Event> notes;
};
std::vector<Together> togethers(Schedule const& schedule, Mine mine);

// Goes on only when every string of the moment has been played, in any order.
class Waiting {
public:
    explicit Waiting(std::vector<Together> moments);

    bool over() const { return m_now >= m_moments.size(); }
    Together const& now() const { return m_moments[m_now]; } // not when it is over
    std::set<int> const& missing() const { return m_missing; } // keys of this moment

    enum class Answer { Right, GoesOn, Wrong };
    Answer play(int midi);

private:
    void await();

    std::vector<Together> m_moments;
    std::size_t m_now = 0;
    std::set<int> m_missing;
};

} // namespace perform
