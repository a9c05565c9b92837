#pragma once

namespace app {

// Whether a first word names work that needs no window.
bool isVerb(char const* word);

// Does the work of a verb; answers the exit status.
int runVerb(int argc, char** argv);

} // namespace app
