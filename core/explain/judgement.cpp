#include "core/explain/judgement.h"

#include "core/arrange/roughness.h"
#include "core/arrange/terms.h"
#include "core/base/words.h"
#include "core/explain/chordtones.h"
#include "core/explain/eitherside.h"
#include "core/explain/names.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>
#include <set>

namespace explain {

using namespace arrange;

namespace {

int stringsSpanned(Laid const& laid)
{
    return laid.plucks[highestNote(laid)].string - laid.plucks[lowestNote(laid)].string + 1;
}

bool onlyRootsAndFifths(Laid const& laid)
{
    return std::ranges::all_of(laid.plucks, [](Pluck const& p) {
        int const within = ((p.degree - 1) % 7 + 7) % 7;
        return within == 0 || within == 4;
    });
}

// --- reach, rate ---

std::string tooWide(Told const& told)
{
    std::string const width = capital(intervalName(stringsSpanned(told.laid)));
    std::string const lowest = nameOf(told, lowestNote(told.laid));
    if (told.laid.voicing.rolled)
        return base::say("{} up from {} is wider than your hand holds comfortably, so it has "
                         "to be rolled.",
                         width, lowest);
    return base::say("{} from {} stretches the hand.", width, lowest);
}

// --- the two hands ---

struct Meeting {
    std::size_t note = 0; // of the left hand
    TuneNote tune;
    music::Length at;
};

// Harsher before milder: seconds and sevenths by semitone, tritones, by whole tone.
int harshness(int semitones)
{
    constexpr std::array harsh{0, 3, 1, 0, 0, 0, 2, 0, 0, 0, 1, 3};
    return harsh[static_cast<std::size_t>(semitones % 12)];
}

std::optional<Meeting> harshestMeeting(Told const& told)
{
    std::optional<Meeting> worst;
    int most = 0;
    for (std::size_t i = 0; i < told.laid.plucks.size(); ++i) {
        Pluck const& p = told.laid.plucks[i];
        for (PassView const& pass : told.view.passes) {
            for (TuneNote const& n : pass.tune) {
                if (n.from >= p.at + p.held || n.to <= p.at) continue;
                bool const entersLater = n.from > p.at;
                int const strength = entersLater ? n.strength : p.strength;
                int const weight = 4 * harshness(std::abs(n.midi - p.midi)) + strength;
                if (harshness(std::abs(n.midi - p.midi)) == 0 || weight <= most) continue;
                most = weight;
                worst = {i, n, entersLater ? n.at : told.laid.voicing.notes[i].at};
            }
        }
    }
    return worst;
}

std::string rubs(Told const& told)
{
    std::optional<Meeting> const worst = harshestMeeting(told);
    if (!worst) return {};
    return base::say("The {}'s {} clashes with the tune's {} {}.",
                     fingerName(told.laid.plucks[worst->note].finger),
                     nameOf(told, worst->note), nameOf(told, worst->tune),
                     beatName(told.view, worst->at));
}

std::string crowds(Told const& told)
{
    for (std::size_t i = 0; i < told.laid.plucks.size(); ++i) {
        Pluck const& p = told.laid.plucks[i];
        for (PassView const& pass : told.view.passes) {
            for (TuneNote const& n : pass.tune) {
                int const apart = n.string - p.string;
                bool const together = n.from <= p.at && n.to > p.at && apart >= 0;
                if (together && apart <= 2)
                    return base::say("The {} is only {} from the tune {}, so the hands are "
                                     "crowded.",
                                     fingerName(p.finger),
                                     base::said(apart == 2 ? "two strings" : "one string"),
                                     beatName(told.view, told.laid.voicing.notes[i].at));
                if (n.from > p.at && n.from == p.at + p.held && apart <= 0)
                    return base::say("The tune comes down to the left hand's {} {}.",
                                     nameOf(told, i), beatName(told.view, n.at));
            }
        }
    }
    return {};
}

// --- ring ---

std::string growls(Told const& told)
{
    double most = 0;
    std::optional<std::pair<std::size_t, std::size_t>> worst;
    for (std::size_t i = 0; i < told.laid.plucks.size(); ++i) {
        for (std::size_t j = i + 1; j < told.laid.plucks.size(); ++j) {
            Pluck const& a = told.laid.plucks[i];
            Pluck const& b = told.laid.plucks[j];
            if (a.midi == b.midi || toneRoughness(a.midi, b.midi) <= most) continue;
            most = toneRoughness(a.midi, b.midi);
            worst = a.midi < b.midi ? std::pair{i, j} : std::pair{j, i};
        }
    }
    if (!worst) return {};
    return base::say("{} and {} ring together so low that they sound muddy.",
                     nameOf(told, worst->first), nameOf(told, worst->second));
}

// --- meter and form ---

int onsetsOf(Laid const& laid)
{
    std::set<double> times;
    for (Pluck const& p : laid.plucks) times.insert(p.at);
    return static_cast<int>(times.size());
}

double notesABeat(Told const& told)
{
    return tuneNotesABeat(told.view, told.view.passes.front());
}
bool isBusy(Told const& told)
{
    return notesABeat(told) > told.view.taste->activity.busyNotesABeat;
}

std::string meterFault(Told const& told)
{
    return base::said(onsetsOf(told.laid) == 0 ? "The left hand has nothing on beat 1."
                                               : "It leaves a beat empty in both hands.");
}

std::string activityFault(Told const& told)
{
    return base::said(isBusy(told)
                          ? "The tune is already busy here, and this adds more notes."
                          : "The tune holds a long note here, and this does little under it.");
}

// --- company ---

struct Company {
    std::string words; // a sentence without its end
    bool isOctave = false;
};

// What the left hand's first note makes with the tune's note that sounds then, without octaves.
std::optional<Company> companyOf(Told const& told)
{
    for (std::size_t i = 0; i < told.laid.plucks.size(); ++i) {
        Pluck const& p = told.laid.plucks[i];
        for (TuneNote const& n : told.view.passes.front().tune) {
            if (n.from > p.at || n.to <= p.at) continue;
            constexpr std::array<char const*, 12> names{base::marked("an octave"),
                                                        nullptr,
                                                        nullptr,
                                                        base::marked("a third"),
                                                        base::marked("a third"),
                                                        nullptr,
                                                        nullptr,
                                                        nullptr,
                                                        base::marked("a sixth"),
                                                        base::marked("a sixth"),
                                                        nullptr,
                                                        nullptr};
            int const apart = std::abs(n.midi - p.midi) % 12;
            if (char const* const name = names[static_cast<std::size_t>(apart)])
                return Company{base::say("The {}'s {} makes {} with the tune's {} {}",
                                         fingerName(p.finger), nameOf(told, i),
                                         base::said(name), nameOf(told, n),
                                         beatName(told.view, told.laid.voicing.notes[i].at)),
                               apart == 0};
        }
    }
    return std::nullopt;
}

std::string poorCompany(Told const& told)
{
    if (auto const made = companyOf(told); made && made->isOctave)
        return base::say("{}, which sounds empty.", made->words);
    return base::said(
        "It moves in the same direction as the tune, which sounds thinner than moving the "
        "other way.");
}

std::string goodCompany(Told const& told)
{
    if (auto const made = companyOf(told); made && !made->isOctave) return made->words + ".";
    return base::said(
        "It moves in the opposite direction to the tune, so both hands are heard.");
}

// --- form ---

std::string closeName(View const& view)
{
    return base::said(view.close == Close::Tune ? "end|tune" : "end|part");
}

std::string opensTheEnd(Told const& told)
{
    if (told.laid.rests())
        return base::say("The {} ends here, and there is no bass note.", closeName(told.view));
    for (Pluck const& p : told.laid.plucks) {
        int const within = ((p.degree - 1) % 7 + 7) % 7;
        if (within != 0 && within != 4)
            return base::say("The {} ends here, and the {} makes it sound unfinished.",
                             closeName(told.view), degreeName(p.degree));
    }
    return base::say("The {} ends here, and this goes on moving instead of coming to rest on "
                     "the root.",
                     closeName(told.view));
}

// --- passes ---

std::string againstPass(Told const& told)
{
    Turn const& turn = told.view.turn;
    return turn.number == 1
               ? base::said("It already has many notes the first time, so later times have "
                            "little to add.")
               : base::say("It has few notes for time {} of {}.", turn.number, turn.of);
}

std::string forPass(Told const& told)
{
    Turn const& turn = told.view.turn;
    return turn.number == 1
               ? base::said("It has few notes the first time, so later times can have more.")
               : base::say("It has more notes than the time before, which suits time {} of "
                           "{}.",
                           turn.number, turn.of);
}

// --- how the shape fits ---

bool together(Laid const& laid)
{
    return laid.plucks.size() > 1 && laid.plucks.front().at == laid.plucks.back().at;
}

std::string unusual(Told const& told)
{
    if (told.laid.rests()) return base::said("The left hand plays nothing here.");
    auto const& [lowestBest, highestBest] =
        std::pair{told.view.taste->shapeFit.lowestBest, told.view.taste->shapeFit.highestBest};
    std::size_t const lowest = lowestNote(told.laid);
    int const midi = told.laid.plucks[lowest].midi;
    if (midi > highestBest)
        return base::say("It starts as high as {}, so there is little bass.",
                         nameOf(told, lowest));
    if (midi < lowestBest)
        return base::say("Its lowest note, {}, is very low.", nameOf(told, lowest));
    if (degreesOf(told.laid).size() < 3)
        return base::said("It has only one or two different notes, and "
                          "there is time for more.");
    if (together(told.laid))
        return base::said("Plucked together, it sounds heavier than the same notes "
                          "one after another.");
    return base::said("It is less simple than a plain 1-5-8.");
}

// --- character ---

// The lever that the left hand turns during the position, by the pitch it makes.
std::optional<std::string> turnedMeanwhile(Told const& told)
{
    for (PassView const& pass : told.view.passes) {
        for (NearFlip const& f : pass.flips) {
            if (f.hand != harp::Side::Left) continue;
            music::Pitch pitch = told.scene.harp.string(f.string).open;
            pitch.alter += f.midi - music::midi(pitch);
            return music::shown(pitch);
        }
    }
    return std::nullopt;
}

std::string whyRests(Told const& told)
{
    if (std::optional<std::string> const pitch = turnedMeanwhile(told))
        return base::say("The left hand rests so that it can flip a lever to {}.", *pitch);
    return base::said("The left hand rests and leaves the tune alone.");
}

// What stands lowest when it is neither the chord's bass nor its root.
std::optional<std::string> inversion(Told const& told, std::string const& lowest)
{
    int const degree = told.laid.plucks[lowestNote(told.laid)].degree;
    if ((degree - 1) % 7 == 0 || degree < 1) return std::nullopt;
    return base::say("The lowest note is the {} of the chord, {}.", degreeName(degree), lowest);
}

// A degree that no chord tone explains.
std::optional<std::string> colour(Told const& told, std::string const& lowest)
{
    for (std::size_t i = 0; i < told.laid.plucks.size(); ++i) {
        Pluck const& p = told.laid.plucks[i];
        if (isTone(told.view, p.midi)) continue;
        if (told.view.chord.slash)
            return base::say("{} is not a note of {}: it adds colour.", nameOf(told, i),
                             chordName(told.position));
        return base::say("{} adds the {} above {}.", nameOf(told, i), degreeName(p.degree),
                         lowest);
    }
    return std::nullopt;
}

// Shapes of roots and fifths alone.
std::string openShape(std::set<int> const& degrees, std::string const& lowest)
{
    if (degrees.size() == 1) return base::say("One low note, {}: simple and safe.", lowest);
    if (degrees == std::set{1, 8}) return base::say("{} and its octave: a firm bass.", lowest);
    if (degrees == std::set{1, 5})
        return base::say("An open fifth on {}: simple, with no "
                         "third.",
                         lowest);
    if (degrees == std::set{1, 5, 8})
        return base::say("An open fifth and octave on {}: no third, so it fits major and "
                         "minor.",
                         lowest);
    return base::say("Only roots and fifths, from {} up: no third.", lowest);
}

} // namespace

std::string against(Term term, Told const& told)
{
    bool const rests = told.laid.rests();
    switch (term) {
    case Term::Reach:
        return rests ? std::string() : tooWide(told);
    case Term::Rate:
        return base::said("The left hand has to hurry at this tempo.");
    case Term::ChordFit:
        return rests ? std::string() : foreignNote(told);
    case Term::Quality:
        return rests ? std::string() : wrongQuality(told);
    case Term::MelodyClash:
        return rubs(told);
    case Term::MelodyCompany:
        return rests ? std::string() : poorCompany(told);
    case Term::Collision:
        return crowds(told);
    case Term::Mud:
        return growls(told);
    case Term::MeterFit:
        return meterFault(told);
    case Term::Activity:
        return activityFault(told);
    case Term::Levers:
        return wantsLevers(told);
    case Term::Cadence:
        return opensTheEnd(told);
    case Term::ShapeFit:
        return unusual(told);
    case Term::Passes:
        return againstPass(told);
    case Term::Travel:
        return farToGo(told);
    case Term::Link:
        return unlinked(told);
    case Term::RingClash:
        return blurs(told);
    case Term::ThumbLine:
        return thumbLeaps(told);
    case Term::BassLine:
        return bassLeaps(told);
    case Term::Variety:
        return dullOrRestless(told);
    }
    return {};
}

std::string inFavour(Term term, Told const& told)
{
    if (told.laid.rests())
        return base::said("The tune is heard alone, so nothing can get in its way.");
    switch (term) {
    case Term::Reach:
        return base::said("It is within easy reach of your hand.");
    case Term::Rate:
        return base::said("The left hand has time for it.");
    case Term::ChordFit:
        return fitsChord(told);
    case Term::Quality:
        return statesQuality(told);
    case Term::MelodyClash:
        return base::said("None of its notes clashes with the tune.");
    case Term::MelodyCompany:
        return goodCompany(told);
    case Term::Collision:
        return base::said("It keeps clear of the right hand.");
    case Term::Mud:
        return base::say("From {} it rings clear.", nameOf(told, lowestNote(told.laid)));
    case Term::MeterFit:
        return base::said("It fills the beats on which the tune has no note.");
    case Term::Activity:
        return isBusy(told)
                   ? base::said("The tune is busy here, and this stays simple.")
                   : base::said(
                         "The tune holds a long note here, and this keeps the beat going.");
    case Term::Levers:
        return base::said(
            "It needs no lever flip, and leaves time for the flips that the tune needs.");
    case Term::Cadence:
        return base::say("It brings the {} to a clear end.", closeName(told.view));
    case Term::ShapeFit:
        return base::said("It is a familiar pattern at a good height on the harp.");
    case Term::Passes:
        return forPass(told);
    case Term::Travel:
        return base::said("The left hand has only a short way to move.");
    case Term::Link:
        return linked(told);
    case Term::RingClash:
        return base::said("The strings still ringing go well with it.");
    case Term::ThumbLine:
        return thumbLeads(told);
    case Term::BassLine:
        return bassWalks(told);
    case Term::Variety:
        return varied(told);
    }
    return {};
}

std::string character(Told const& told)
{
    Laid const& laid = told.laid;
    if (laid.rests()) return whyRests(told);
    std::string const lowest = nameOf(told, lowestNote(laid));
    if (auto const sentence = inversion(told, lowest)) return *sentence;
    if (auto const sentence = wrongNote(told)) return *sentence;
    if (auto const sentence = colour(told, lowest)) return *sentence;
    if (onlyRootsAndFifths(laid)) return openShape(degreesOf(laid), lowest);
    for (std::size_t i = 0; i < laid.plucks.size(); ++i)
        if (isThird(told.view, laid.plucks[i].midi) && laid.plucks[i].degree > 8)
            return base::say("The third, {}, is high above {}, so it sounds clear.",
                             nameOf(told, i), lowest);
    return base::say("Only notes of {}, from {} up.", chordName(told.position), lowest);
}

} // namespace explain
