#pragma once

namespace cli {

// From here on a request to stop ends the program as ever, but not without a word.
void sayWhenStopped();

// From here on a request to stop (an interrupt from the keyboard, or the system's own) is kept for
// long work to look at, instead of ending the program at once. Asked a second time, it ends.
void listenForStop();

// The signal that asked for it; 0: none did.
int stopAsked();

} // namespace cli
