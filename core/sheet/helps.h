#pragma once

namespace sheet {

// What helps players who do not read music yet; all of it off by default.
struct Helps {
    bool coloured = false;   // notes on C strings red and on F strings blue, with their letters
    bool noteNames = false;  // every note with the letter of its string in its head
    bool stringPath = false; // under the staff, the left hand string by string
    friend bool operator==(Helps const&, Helps const&) = default;
};

} // namespace sheet
