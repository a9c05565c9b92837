#include "app/commands/verbs.h"

#include "app/cli/groups.h"

namespace app {

namespace {

std::vector<Group> operator+(std::vector<Group> a, std::vector<Group> const& b)
{
    a.insert(a.end(), b.begin(), b.end());
    return a;
}

// What decides the left hand, but for the key.
std::vector<Group> const wishes{harpOptions, ownHarpOptions, playerOptions,
                                tuneWishes,  mannerOptions,  ownPatternOptions};
std::vector<Group> const leftHand = wishes + std::vector<Group>{keyOptions, mendOptions, keptShapeOptions};
std::vector<Group> const arranging =
    leftHand + std::vector<Group>{rightHandOptions, settingOptions, formOptions};
std::vector<Group> const words{titleOptions, creditOptions, sourceOptions, noteOptions};
std::vector<Group> const page = words + std::vector<Group>{paperOptions};

} // namespace

std::span<Verb const> verbs()
{
    static std::vector<Verb> const table{
        {"arrange", "arrange a tune and save it as sheet, sound or data",
         std::vector<Group>{tuneInput, tuneOptions, anyOutputs, sheetOptions, setOptions,
                            levelsOptions, printSizeOptions, resolutionOptions, soundOptions,
                            namingOptions} +
             page + arranging,
         arrange, true},
        {"batch", "arrange every tune of a tunebook, or of all the tunebooks in a folder",
         std::vector<Group>{batchInput, folderOutput, batchOptions, printSizeOptions,
                            soundOptions, namingOptions} +
             page + arranging,
         batch, true},
        {"weigh", "save every chord, shape and score that was compared",
         std::vector<Group>{tuneInput, tuneOptions, latticeOutput} + leftHand, weigh},
        {"keys", "list the keys for a tune on a harp, best first, with the levers to set",
         std::vector<Group>{tuneInput, tuneOptions, asJson, setOptions, keyOrderOptions,
                            namingOptions} +
             wishes,
         keys},
        {"patterns",
         "list the pattern book, with your own patterns",
         {asJson, ownPatternOptions},
         patterns},
        {"handout",
         "make a pattern handout: a page for each pattern, with strings, music and bars to "
         "practise",
         {pageOutputs, handoutOptions, harpOptions, titleOptions, noteOptions, paperOptions,
          resolutionOptions},
         handout,
         true},
        {"drill",
         "make a placing drill: the tune's left-hand shapes in order, to place, roll and come "
         "off",
         std::vector<Group>{tuneInput, tuneOptions, pageOutputs, titleOptions, creditOptions,
                            paperOptions, resolutionOptions, settingOptions} +
             leftHand,
         drill, true},
        {"picture", "save a picture of the workbench as PNG",
         std::vector<Group>{tuneInput, tuneOptions, pictureOutput, pictureOptions} + words +
             arranging,
         picture, true},
        {"check",
         "read a file and report every problem in it; save nothing",
         {checkInput, asJson},
         check},
        {"tunes",
         "list the tunes of a tunebook or a folder, or find some of them: title, kind, key, "
         "time "
         "signature, bars, and whether they have chords and are arranged",
         {tunesInput, findOptions, asJson},
         tunes},
    };
    return table;
}

} // namespace app
