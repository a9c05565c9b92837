#pragma once

#include "app/cli/call.h"
#include "app/cli/option.h"

// The options of the command line, each declared once. A verb's row names the groups it takes.
namespace app {

// What is read, and what is written.
cli::Options tuneInput(Call& call);
cli::Options batchInput(Call& call);
cli::Options checkInput(Call& call);
cli::Options tunesInput(Call& call);
cli::Options findOptions(Call& call);
cli::Options anyOutputs(Call& call);
cli::Options pageOutputs(Call& call);
cli::Options latticeOutput(Call& call);
cli::Options pictureOutput(Call& call);
cli::Options folderOutput(Call& call);
cli::Options asJson(Call& call);

// Which tune of a book.
cli::Options tuneOptions(Call& call);
// The harp, and who plays it.
cli::Options harpOptions(Call& call);
cli::Options ownHarpOptions(Call& call); // a file of harps
cli::Options namingOptions(Call& call);  // how strings are named
cli::Options playerOptions(Call& call);
// What the tune is made of: tempo, chords, repeats, and what is done about snags.
cli::Options tuneWishes(Call& call);
cli::Options keyOptions(Call& call);
cli::Options mendOptions(Call& call);
cli::Options rightHandOptions(Call& call);
// The left hand: its manner and sliders, the arranger's own patterns, kept shapes.
cli::Options mannerOptions(Call& call);
cli::Options ownPatternOptions(Call& call);
cli::Options keptShapeOptions(Call& call);
cli::Options settingOptions(Call& call);
cli::Options formOptions(Call& call);
// The page: its words, its paper, and what is drawn on it.
cli::Options titleOptions(Call& call);
cli::Options creditOptions(Call& call);
cli::Options sourceOptions(Call& call);
cli::Options noteOptions(Call& call);
cli::Options paperOptions(Call& call);
cli::Options printSizeOptions(Call& call);
cli::Options resolutionOptions(Call& call);
cli::Options sheetOptions(Call& call);
// What is heard in sound files, and how.
cli::Options soundOptions(Call& call);
// Several in one call.
cli::Options setOptions(Call& call);
cli::Options levelsOptions(Call& call);
// Of one verb alone.
cli::Options keyOrderOptions(Call& call);
cli::Options batchOptions(Call& call);
cli::Options pictureOptions(Call& call);
cli::Options handoutOptions(Call& call);

} // namespace app
