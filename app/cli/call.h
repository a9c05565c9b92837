#pragma once

#include "app/options.h"
#include "app/outputs.h"
#include "core/proposal/keyranking.h"
#include "core/sheet/sheet.h"

#include <optional>
#include <string>
#include <vector>

namespace app {

// Several tunes, or several levels, in one call.
struct SeveralOptions {
    std::vector<std::string> set; // tunes of a set, instead of one tune
    bool anyOrder = false;
    std::string levels; // "1-5"; empty: the one level of the options
};

// How sound files are made; what is played stays the same.
struct SoundOptions {
    std::string at = "100%";     // of the tempo
    std::string passage;         // bars FIRST-LAST; empty: all
    std::string hands = "both";
    bool countIn = false;
    bool click = false;
    int times = 1;
    double pitch = 440; // Hz of A4
    int lilt = 0;       // per cent
    std::optional<int> slowing; // per cent; none: as is usual for the kind of tune
    bool pack = false;
    std::string steps; // "60-100/5x2"; empty: one tempo
    bool barBefore = false;
    int balance = 0; // per cent
    int roll = 45;   // ms between two strings
    std::string temperament = "equal";
    std::string font; // empty: the usual one
    int halo = 0;     // per cent
};

struct BatchOptions {
    std::vector<std::string> kinds{"pdf"};
    int jobs = 1;
    std::string part; // "2/4": every fourth tune, from the second on
    bool resume = false;
    bool tell = false;
};

struct PictureOptions {
    std::string view = "workbench";
    std::string size = "1440x900";
    double scale = 1;
    std::string theme = "light";
};

struct HandoutOptions {
    std::vector<std::string> patterns{"1-5-8"};
    std::vector<std::string> meters;
    std::string key = "G";
};

// What tunes are looked for; what is empty narrows nothing.
struct FindOptions {
    std::string words;
    std::string kind;
    std::string key;
    std::string meter;
    std::string notes;
    std::string arranged; // yes or no
};

// One call of the program as its words say it. A verb reads what its groups of options fill; the
// rest is as it is without a word about it.
struct Call {
    std::vector<std::string> words; // after the verb, as written
    std::string input;
    std::vector<std::string> outputs;
    ArrangeOptions options;
    SheetKind sheet = SheetKind::Arrangement;
    sheet::SheetStyle style;
    std::optional<int> resolution; // of PNG, in dots an inch; none: all pages in one picture
    SoundOptions sound;
    SeveralOptions several;
    bool json = false;
    proposal::KeyOrder keyOrder = proposal::KeyOrder::AsTaken;
    BatchOptions batch;
    PictureOptions picture;
    HandoutOptions handout;
    FindOptions find;
};

} // namespace app
