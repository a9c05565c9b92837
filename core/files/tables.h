#pragma once

#include "core/arrange/score.h"
#include "core/base/result.h"
#include "core/harp/hand.h"
#include "core/harp/harp.h"
#include "core/pattern/pattern.h"
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
    std::vector<NamedTuning> tunings;
    std::vector<LeverFit> leverFits;
    std::vector<std::pair<std::string, double>> spacing; // note name and gap in mm, high to low
    std::vector<harp::HandModel> hands;
    std::vector<harp::Level> levels;
    pattern::PatternBook book;
    std::vector<arrange::Weights> styles;
};

// Faults: TableMissing, TableMalformed with file and line.
base::Result<Tables> readTables(std::filesystem::path const& sharedFolder);

// A harp from the tables. Faults: NoSuchHarp, NoSuchTuning (the detail lists what there is).
base::Result<harp::Harp> harpFrom(Tables const& tables, std::string_view size,
                                  std::string_view tuning, std::string_view leverFit = "full");
base::Result<harp::HandModel> handFrom(Tables const& tables, std::string_view id);
base::Result<harp::Level> levelFrom(Tables const& tables, int number);
base::Result<arrange::Weights> styleFrom(Tables const& tables, std::string_view id);

// SMuFL metadata of a music font (JSON).
base::Result<sheet::MusicFont> musicFontFrom(std::string_view json);

} // namespace files
