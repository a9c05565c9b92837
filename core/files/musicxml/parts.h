#pragma once

#include "core/files/remarks.h"
#include "core/tune/tune.h"

#include <pugixml.hpp>

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

// The parts of a score and which of them is the tune. For the .cpp files of this folder.
namespace files::musicxml {

// Where in the text an element stands.
class Places {
public:
    explicit Places(std::string_view text);
    tune::Place of(pugi::xml_node node) const;
    tune::Place ofByte(std::size_t byte) const;

private:
    std::vector<std::size_t> m_lineStarts;
};

struct Measure {
    pugi::xml_node music; // whose children are notes and signs
    std::string number;   // as printed; may be empty
};

struct Part {
    std::string id;
    std::string name;
    std::vector<Measure> measures;
};

// Of score-partwise as well as of score-timewise, in written order.
std::vector<Part> partsOf(pugi::xml_node score);

int staffOf(pugi::xml_node note);         // 1 where the note does not say
std::string voiceOf(pugi::xml_node note); // "1" where the note does not say

// Which notes are the tune: a voice of a staff of a part, and whose chord symbols stand over
// it.
struct TuneVoice {
    std::size_t part = 0;
    std::size_t harmonyPart = 0;
    std::size_t guidePart = 0; // which tempo, parts and jumps are read from
    int staff = 1;
    std::string voice = "1";
    bool mayCrossStaves = true; // its notes on other staves belong to it
    bool beamed = false;        // the writer set beams somewhere
    int staves = 1;             // of the part
};

// Of the parts with words to sing, else of those that are not an accompaniment (on two staves,
// or mostly chords), the first with chord symbols, else the first with notes; of that its first
// staff with notes, and there the voice with most of them. Chord symbols are those of another
// part where it has none. What else there was is said. None when no part has a pitched note.
std::optional<TuneVoice> tuneVoiceOf(std::vector<Part> const& parts, Places const& places,
                                     Remarks& remarks);

} // namespace files::musicxml
