// Where the tests find what they read and run. Only places.cpp is compiled with the paths, so that every
// other file of the tests is the same for the compiler in whatever folder the project lies.
#pragma once

#include <string>

namespace places {

// Folders without a slash at their end.
std::string shared();      // the program's own tables and demo tunes
std::string outside();     // material beside the project; may be absent
std::string tests();       // the sources of the tests
std::string nodeModules(); // music font and referees
std::string musicFont();   // the folder of the font and its metadata.json
std::string program();     // the program that was built, or nothing without it

} // namespace places

#define SALLOW_SHARED_DIR places::shared()
#define SALLOW_TEST_DATA places::outside()
