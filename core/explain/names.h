#pragma once

#include "core/explain/judgement.h"

#include <set>
#include <string>

// Names that sentences are made of.
namespace explain {

// The pitch of a string at a moment, "F♯3".
std::string pitchName(Told const& told, harp::StringIndex string, music::Moment at);
// The same for a note of the left hand, by its place in the voicing, and for one of the tune.
std::string nameOf(Told const& told, std::size_t note);
std::string nameOf(Told const& told, arrange::TuneNote const& note);

std::string chordName(arrange::Position const& position);
std::string fingerName(int finger);
std::string intervalName(int strings); // "a tenth" for ten strings counted inclusively
std::string degreeName(int degree);
std::string capital(std::string text);
std::string beatName(arrange::View const& view,
                     music::Length at); // "on beat 2", "after beat 2"

std::size_t lowestNote(arrange::Laid const& laid);
std::size_t highestNote(arrange::Laid const& laid);
std::set<int> degreesOf(arrange::Laid const& laid);
bool isTone(arrange::View const& view, int midi);
bool isThird(arrange::View const& view, int midi);

} // namespace explain
