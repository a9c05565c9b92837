#pragma once

#include "core/arrange/telling.h"

#include <set>
#include <string>

// Names that sentences are made of.
namespace arrange::telling {

// The pitch of a string at a moment, "F♯3".
std::string pitchName(Told const& told, int string, music::Moment at);
// The same for a note of the left hand, by its place in the voicing, and for one of the tune.
std::string nameOf(Told const& told, std::size_t note);
std::string nameOf(Told const& told, TuneNote const& note);

std::string chordName(Position const& position);
std::string fingerName(int finger);
std::string intervalName(int strings); // "a tenth" for ten strings counted inclusively
std::string degreeName(int degree);
std::string capital(std::string text);
std::string beatName(View const& view, music::Length at); // "on beat 2", "after beat 2"

std::size_t lowestNote(Laid const& laid);
std::size_t highestNote(Laid const& laid);
std::set<int> degreesOf(Laid const& laid);
bool isTone(View const& view, int midi);
bool isThird(View const& view, int midi);

} // namespace arrange::telling
