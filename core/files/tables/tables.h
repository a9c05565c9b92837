#pragma once

#include "core/arrange/score.h"
#include "core/arrange/slider.h"
#include "core/base/result.h"
#include "core/hands/difficulty.h"
#include "core/harmony/findchords.h"
#include "core/harp/hand.h"
#include "core/harp/harp.h"
#include "core/harp/model.h"
#include "core/pattern/pattern.h"
#include "core/perform/danceways.h"
#include "core/perform/temperament.h"
#include "core/proposal/form.h"
#include "core/sheet/musicfont.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace files {

// A size of harp as the makers build it, before it is tuned.
struct HarpSize {
    std::string id;
    std::string name;
    music::Pitch lowest; // letters and octaves only
    music::Pitch highest;
};

// How far apart the strings lie at one pitch; between two of these the gap changes evenly from
// string to string, and below the last it goes on as between the last two [trade-2.1].
struct SpacingPoint {
    music::Pitch pitch; // letter and octave only
    double gapMm = 15;
};

struct NamedTuning {
    std::string id; // "Eb"
    music::PitchName key;
    std::string name; // "E flat"
};

// Which strings carry levers: all, or those of some letters.
struct LeverFit {
    std::string id; // "full", "CF", "F", "none"
    std::string name;
    std::vector<music::Letter> letters;
};

// All that the program reads from shared/ at its start.
struct Tables {
    std::vector<HarpSize> harps;
    std::vector<SpacingPoint> spacing; // from the highest, at least two
    music::Pitch lowestPlain;          // strings below this letter and octave are wound
    std::vector<NamedTuning> tunings;
    std::vector<LeverFit> leverFits;
    std::vector<harp::HandModel> hands;
    std::vector<harp::Level> levels; // 1 to 5
    pattern::PatternBook book;
    std::vector<arrange::Weights> styles;
    std::vector<arrange::Slider> sliders;
    std::vector<proposal::TimeManner> timeManners; // how a time through may be played
    std::vector<proposal::NamedForm> forms;
    hands::DifficultyScale difficulty;
    perform::DanceWays ways{};
    std::vector<perform::Temperament> temperaments{}; // the first is equal
    harmony::Learned harmony{}; // of chords and keys
    std::vector<harp::HarpModel> ownHarps{}; // described by the user; not in shared/
};

// Reads harps, tunings, hands, levels, patterns, rhythms, weights, sliders, forms, difficulty,
// lilts, temperaments and what was learned of chords and keys (each a .json file there).
// Faults: TableMissing, TableMalformed with file and line; keys that nobody reads are damage,
// too.
base::Result<Tables> readTables(std::filesystem::path const& sharedFolder);

// A harp from the tables, or the user's own, which go before. No tuning: the first of the
// tables, or that of the own harp; no lever fit: levers on every string, or those it has.
// Faults: NoSuchHarp, NoSuchTuning for tuning and lever fit, NoSuchHand
// for hand and level, NoSuchStyle; the place is what was asked for and the detail lists what
// there is.
base::Result<harp::Harp> harpFrom(Tables const& tables, std::string_view size,
                                  std::string_view tuning = {},
                                  std::string_view leverFit = {});
base::Result<harp::HandModel> handFrom(Tables const& tables, std::string_view id);
base::Result<harp::Level> levelFrom(Tables const& tables, int number);
base::Result<arrange::Weights> styleFrom(Tables const& tables, std::string_view id);
// Fault: NoSuchSlider.
base::Result<arrange::Slider> sliderFrom(Tables const& tables, std::string_view id);
// Fault: NoSuchForm.
base::Result<proposal::TimeManner> timeMannerFrom(Tables const& tables, std::string_view id);

// SMuFL metadata of a music font (JSON): boxes, advances and anchors of the glyphs that our
// sheets use (core/sheet/glyphs.h), and the font's engraving defaults. What else it holds is
// passed over. Fault: TableMalformed with the line or the glyph.
base::Result<sheet::MusicFont> musicFontFrom(std::string_view json);

} // namespace files
