#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <string>
#include <vector>

namespace app {

// The languages that the program speaks: "en" always, and those with a file in the folder
// translations of the shared folder, such as "de".
std::vector<std::string> languages();

// From now on everything for the reader is said in this language; before anything is said. Data
// for other programs keep their English names.
// Faults: BadCall, if there is no such language.
base::Result<base::Done> speak(std::string const& language);
std::string const& languageSpoken();

// Takes "--language XX", which any call may have, out of its words and speaks it; whether it
// was there. Faults: BadCall, if it has no value or the language is not spoken.
base::Result<bool> takeLanguage(std::vector<std::string>& words);

// For what Qt shows: its own words too. Once there is an application.
void translateQt();

// The pages of the handbook: in the language spoken, else in English.
std::filesystem::path handbookFolder();

// What the system asks for, where it is spoken, else "en".
std::string languageOfSystem();

} // namespace app
