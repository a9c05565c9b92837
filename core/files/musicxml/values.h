#pragma once

#include "core/files/musicxml/measure.h"
#include "core/music/pitch.h"
#include "core/music/time.h"

#include <optional>
#include <string>
#include <string_view>

// Values as elements of a score write them. For the .cpp files of this folder.
namespace files::musicxml {

inline constexpr std::size_t longestWords = 300; // bytes of words or numbers that are looked at

// The beginning of a text, to be shown where something is wrong with it.
std::string shortened(std::string_view text);

Problem wrongValue(pugi::xml_node node);

// "12", "0.5": at most nine digits before the point and four behind; none for anything else.
std::optional<music::Rational> decimalFrom(std::string_view text);
std::optional<int> wholeFrom(pugi::xml_node node);

// The alteration in whole semitones, and whether it had to be rounded.
struct Alter {
    int semitones = 0;
    bool rounded = false;
    bool tooFar = false; // beyond a double sharp or flat
};
Alter alterOf(pugi::xml_node node);

std::optional<music::Letter> letterFrom(std::string_view step);

// The mark that an element `sound` stands for: where it sends the player.
std::optional<std::string_view> wayOf(pugi::xml_node sound);

} // namespace files::musicxml
