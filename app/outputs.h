#pragma once

#include "app/outputnames.h"
#include "app/soundwish.h"
#include "core/base/result.h"
#include "core/files/tables/tables.h"
#include "core/perform/tuneset.h"
#include "core/proposal/proposal.h"
#include "core/sheet/drawing.h"
#include "core/sheet/sheet.h"

#include <optional>
#include <string>
#include <vector>

namespace app {

enum class OutputKind { Pdf, Svg, Png, MusicXml, Mxl, Abc, Midi, Wav, Flac, Ogg, Plan, Saved, Text, Html };
enum class SheetKind { Arrangement, Pattern, Lead };

struct Output {
    std::string path;
    OutputKind kind;
    // PNG: a file a page in this resolution; none: all pages in one.
    std::optional<int> dotsPerInch{};
};

// The files that an output makes: that of its name, but for a practice pack.
std::vector<std::string> filesOf(Output const& output, SoundWish const& sound);

// What a path's ending asks for. Fault: UnknownFileKind listing the endings there are.
base::Result<Output> outputFor(std::string const& path);

// The outputs under the names that the call leaves them (OutputNames::claim). Fault: BadCall.
base::Result<std::vector<Output>> claimed(std::vector<Output> outputs, OutputNames& names);
base::Result<std::vector<std::string>> claimed(std::vector<std::string> paths,
                                               OutputNames& names);
// Fault, BadCall: one of them would replace an input. So that it is told before any work is done.
base::Result<base::Done> spared(std::vector<Output> const& outputs, OutputNames const& names);

bool isPages(OutputKind kind); // pictures of pages: .pdf .svg .png
bool isSound(OutputKind kind); // .wav .flac .ogg

// The path with a word before its ending: "a.plan.json" gives "a-level3.plan.json".
std::string named(std::string const& path, std::string const& word);
// The path with "-3" before its ending, for the third tune of a book: "a.plan.json" gives
// "a-3.plan.json".
std::string numbered(std::string const& path, int number);

// The pages of a kind of sheet.
base::Result<sheet::Document> drawn(arrange::Arrangement const& arrangement, SheetKind kind,
                                    sheet::SheetStyle const& style = {});

// Writes pages. A file a page is numbered (numbered()) where there are several, under a name
// that `names`, if they are given, leave it. Faults: UnknownFileKind for an output that is none
// of pages, BadCall, CannotWrite.
base::Result<base::Done> writePages(sheet::Document const& document,
                                    std::vector<Output> const& outputs,
                                    OutputNames* names = nullptr);

// The pages of a set, of a kind of sheet.
base::Result<sheet::Document> drawn(perform::PlayedSet const& set, SheetKind kind,
                                    sheet::SheetStyle const& style = {});
// Whether a set makes one file of that kind, not one a tune: pages, sound, MIDI and words.
bool isOneForASet(OutputKind kind);
// Makes the files of a set that are one for all its tunes, `ways` as soundwish.h has it.
// Faults as those of writeOutputs.
base::Result<base::Done> writeSet(perform::PlayedSet const& set, perform::DanceWays const& ways,
                                  std::vector<Output> const& outputs, SheetKind sheet,
                                  sheet::SheetStyle const& style, SoundWish const& sound,
                                  OutputNames* names = nullptr);

// What outputs are made from.
struct Finished {
    proposal::Proposal const& proposal;
    std::string abc; // the tune's own lines
    files::Tables const& tables;
};

// Makes every output first and then writes them, each whole or not at all; `names` as for
// writePages. Faults: those of drawing and sound, BadCall, CannotWrite.
base::Result<base::Done> writeOutputs(Finished const& finished,
                                      std::vector<Output> const& outputs, SheetKind sheet,
                                      sheet::SheetStyle const& style = {},
                                      SoundWish const& sound = {},
                                      OutputNames* names = nullptr);

} // namespace app
