#include "app/outputs.h"

#include "app/soundfiles.h"
#include "core/base/named.h"
#include "core/base/words.h"
#include "core/files/abc/write.h"
#include "core/files/midi/write.h"
#include "core/files/musicxml/mxl.h"
#include "core/files/musicxml/write.h"
#include "core/files/plan.h"
#include "core/files/spoken.h"
#include "core/files/textfile.h"
#include "core/files/work/document.h"
#include "core/perform/schedule.h"
#include "core/sheet/papers/setpaper.h"
#include "core/sheet/sheet.h"
#include "ui/paint/sheetfiles.h"
#include "ui/paint/sheetfonts.h"

#include <QByteArray>

#include <array>
#include <filesystem>
#include <utility>

namespace app {

namespace {

using Ending = base::Named<OutputKind>;
// Longer endings first, so that ".plan.json" is found before any other.
constexpr auto endings = std::to_array<Ending>({
    {".plan.json", OutputKind::Plan},
    {".musicxml", OutputKind::MusicXml},
    {".sallow", OutputKind::Saved},
    {".flac", OutputKind::Flac},
    {".pdf", OutputKind::Pdf},
    {".svg", OutputKind::Svg},
    {".png", OutputKind::Png},
    {".mxl", OutputKind::Mxl},
    {".abc", OutputKind::Abc},
    {".mid", OutputKind::Midi},
    {".txt", OutputKind::Text},
    {".html", OutputKind::Html},
    {".wav", OutputKind::Wav},
    {".ogg", OutputKind::Ogg},
});

Ending const* endingOf(std::string_view path)
{
    for (Ending const& ending : endings)
        if (path.size() > ending.name.size() && path.ends_with(ending.name)) return &ending;
    return nullptr;
}

notation::Kind notationKind(SheetKind kind)
{
    switch (kind) {
    case SheetKind::Pattern:
        return notation::Kind::Patterns;
    case SheetKind::Lead:
        return notation::Kind::Lead;
    case SheetKind::Arrangement:
        break;
    }
    return notation::Kind::Arrangement;
}

// Both hands, or for the sheets that show the tune alone, the tune; the lead sheet has it as it
// is written, also where the harp cannot give a note so.
std::string abcOf(arrange::Arrangement const& arrangement, SheetKind kind,
                  perform::Slowing told)
{
    if (kind == SheetKind::Arrangement) return files::abcOfArrangement(arrangement, told);
    tune::Tune tune =
        kind == SheetKind::Lead ? arrange::writtenTune(arrangement) : arrangement.tune;
    tune.tempo = arrangement.tempo;
    return "%abc-2.1\n" + files::abcOfTune(tune);
}

// How a tune's end is played, and what of it a page tells.
struct EndOfTune {
    perform::Slowing heard;
    perform::Slowing told;
};

EndOfTune endOf(tune::Tune const& tune, perform::DanceWays const& ways, SoundWish const& sound)
{
    perform::Slowing const heard = perform::slowingFor(ways.slowings, tune, sound.slowing);
    return {heard, perform::told(ways, heard)};
}

using Made = std::vector<std::pair<std::string, std::string>>; // path and bytes

// A file a page, the last first: where the first is there, all are.
base::Result<Made> pageByPage(sheet::Document const& document, Output const& output,
                              OutputNames* names)
{
    Made made;
    std::size_t const count = document.pages.size();
    for (std::size_t page = count; page-- > 0;) {
        std::string path = output.path;
        if (count > 1) {
            path = numbered(path, static_cast<int>(page) + 1);
            if (names) {
                auto free = names->claim(path);
                if (!free) return free.error();
                path = *std::move(free);
            }
        }
        made.emplace_back(path,
                          ui::pngFileOfPage(document, page, *output.dotsPerInch).toStdString());
    }
    return made;
}

base::Result<Made> pagesOf(sheet::Document const& document, Output const& output,
                           OutputNames* names)
{
    if (output.dotsPerInch) return pageByPage(document, output, names);
    QByteArray const bytes = output.kind == OutputKind::Pdf   ? ui::pdfFile(document)
                             : output.kind == OutputKind::Svg ? ui::svgFile(document)
                                                              : ui::pngFile(document);
    return Made{{output.path, bytes.toStdString()}};
}

base::Result<base::Done> writeAll(Made const& made)
{
    for (auto const& [path, bytes] : made)
        if (auto written = files::writeWhole(path, bytes); !written) return written.error();
    return base::Done{};
}

// Of all that is no picture of pages.
std::string bytesOf(Finished const& finished, OutputKind kind, SheetKind sheetKind,
                    EndOfTune const& end)
{
    proposal::Proposal const& proposal = finished.proposal;
    if (kind == OutputKind::Plan)
        return files::planJson(
            proposal, hands::difficultyOf(proposal.arrangement, finished.tables.levels,
                                          proposal.brief.book, finished.tables.difficulty));
    if (kind == OutputKind::Saved)
        return files::documentText({finished.abc, proposal.brief}, finished.tables);
    if (kind == OutputKind::Midi) return files::midiFile(proposal.arrangement, end.heard);
    if (kind == OutputKind::Abc) return abcOf(proposal.arrangement, sheetKind, end.told);
    if (kind == OutputKind::Text)
        return files::spokenText(proposal.arrangement, notationKind(sheetKind), end.told);
    if (kind == OutputKind::Html)
        return files::spokenHtml(proposal.arrangement, notationKind(sheetKind), end.told);
    std::string score =
        files::musicXml(proposal.arrangement, notationKind(sheetKind), end.told);
    return kind == OutputKind::Mxl ? files::mxlFile(score, "score") : score;
}

std::string bytesOf(perform::PlayedSet const& set, OutputKind kind, SheetKind sheetKind,
                    EndOfTune const& end)
{
    if (kind == OutputKind::Midi) return files::midiFile(set, end.heard);
    if (kind == OutputKind::Text)
        return files::spokenText(set, notationKind(sheetKind), end.told);
    return files::spokenHtml(set, notationKind(sheetKind), end.told);
}

// What an output other than sound holds. `What` is what is finished, `toDraw` what is drawn of
// it.
template<typename What, typename Drawn>
base::Result<Made> madeOf(What const& what, Drawn const& toDraw, Output const& output,
                          SheetKind sheetKind, sheet::SheetStyle style, EndOfTune const& end,
                          OutputNames* names)
{
    if (!isPages(output.kind))
        return Made{{output.path, bytesOf(what, output.kind, sheetKind, end)}};
    style.slowing = end.told;
    auto const document = drawn(toDraw, sheetKind, style);
    if (!document) return document.error();
    return pagesOf(*document, output, names);
}

// Writes what `make` makes of each output but sound, and by `render` the sound files. Sound
// goes to its file as it is rendered (whole or not at all, like the others), so it comes first:
// it is the one most likely to be refused.
template<typename Make, typename Render>
base::Result<base::Done> writeEach(std::vector<Output> const& outputs, Make make, Render render,
                                   SoundWish const& sound)
{
    Made made;
    for (Output const& output : outputs) {
        if (isSound(output.kind)) continue;
        auto files = make(output);
        if (!files) return files.error();
        made.insert(made.end(), files->begin(), files->end());
    }
    for (Output const& output : outputs) {
        if (!isSound(output.kind)) continue;
        auto const written = render(soundFiles(output.path, sound));
        if (!written) return written.error();
    }
    return writeAll(made);
}

} // namespace

base::Result<sheet::Document> drawn(arrange::Arrangement const& arrangement, SheetKind kind,
                                    sheet::SheetStyle const& style)
{
    auto font = ui::musicFont();
    if (!font) return font.error();
    switch (kind) {
    case SheetKind::Pattern:
        return sheet::patternSheet(arrangement, *font, style);
    case SheetKind::Lead:
        return sheet::leadSheet(writtenTune(arrangement), *font, style);
    case SheetKind::Arrangement:
        break;
    }
    return sheet::arrangementSheet(arrangement, *font, style);
}

base::Result<sheet::Document> drawn(perform::PlayedSet const& set, SheetKind kind,
                                    sheet::SheetStyle const& style)
{
    auto font = ui::musicFont();
    if (!font) return font.error();
    return sheet::setPaper(set, notationKind(kind), *font, style);
}

bool isOneForASet(OutputKind kind)
{
    return isPages(kind) || isSound(kind) || kind == OutputKind::Midi ||
           kind == OutputKind::Text || kind == OutputKind::Html;
}

base::Result<base::Done> writeSet(perform::PlayedSet const& set, perform::DanceWays const& ways,
                                  std::vector<Output> const& outputs, SheetKind sheetKind,
                                  sheet::SheetStyle const& style, SoundWish const& sound,
                                  OutputNames* names)
{
    EndOfTune const end = endOf(set.tunes.back().arrangement.tune, ways, sound);
    return writeEach(
        outputs,
        [&](Output const& output) {
            return madeOf(set, set, output, sheetKind, style, end, names);
        },
        [&](std::vector<SoundFile> const& files) { return writeSoundFiles(set, ways, files); },
        sound);
}

std::vector<std::string> filesOf(Output const& output, SoundWish const& sound)
{
    if (!isSound(output.kind)) return {output.path};
    std::vector<std::string> paths;
    for (SoundFile const& file : soundFiles(output.path, sound)) paths.push_back(file.path);
    return paths;
}

base::Result<Output> outputFor(std::string const& path)
{
    if (Ending const* ending = endingOf(path)) return Output{path, ending->value};
    return base::Fault{
        base::FaultCode::UnknownFileKind, path,
        base::said("it writes .pdf .svg .png .musicxml .mxl .abc .mid .wav .flac .ogg .txt "
                   ".html .plan.json .sallow")};
}

base::Result<std::vector<std::string>> claimed(std::vector<std::string> paths,
                                               OutputNames& names)
{
    for (std::string& path : paths) {
        auto name = names.claim(path);
        if (!name) return name.error();
        path = *std::move(name);
    }
    return paths;
}

base::Result<std::vector<Output>> claimed(std::vector<Output> outputs, OutputNames& names)
{
    for (Output& output : outputs) {
        auto name = names.claim(output.path);
        if (!name) return name.error();
        output.path = *std::move(name);
    }
    return outputs;
}

base::Result<base::Done> spared(std::vector<Output> const& outputs, OutputNames const& names)
{
    for (Output const& output : outputs)
        if (auto const free = names.spares(output.path); !free) return free.error();
    return base::Done{};
}

bool isPages(OutputKind kind)
{
    return kind == OutputKind::Pdf || kind == OutputKind::Svg || kind == OutputKind::Png;
}

bool isSound(OutputKind kind)
{
    return kind == OutputKind::Wav || kind == OutputKind::Flac || kind == OutputKind::Ogg;
}

std::string named(std::string const& path, std::string const& word)
{
    Ending const* ending = endingOf(path);
    std::size_t const cut = path.size() - (ending ? ending->name.size() : 0);
    return path.substr(0, cut) + '-' + word + path.substr(cut);
}

std::string numbered(std::string const& path, int number)
{
    return named(path, std::to_string(number));
}

base::Result<base::Done> writeOutputs(Finished const& finished,
                                      std::vector<Output> const& outputs, SheetKind sheetKind,
                                      sheet::SheetStyle const& style, SoundWish const& sound,
                                      OutputNames* names)
{
    arrange::Arrangement const& arrangement = finished.proposal.arrangement;
    EndOfTune const end = endOf(arrangement.tune, finished.tables.ways, sound);
    return writeEach(
        outputs,
        [&](Output const& output) {
            return madeOf(finished, arrangement, output, sheetKind, style, end, names);
        },
        [&](std::vector<SoundFile> const& files) {
            return writeSoundFiles(arrangement, finished.tables.ways, files);
        },
        sound);
}

base::Result<base::Done> writePages(sheet::Document const& document,
                                    std::vector<Output> const& outputs, OutputNames* names)
{
    Made made;
    for (Output const& output : outputs) {
        if (!isPages(output.kind))
            return base::Fault{base::FaultCode::UnknownFileKind, output.path,
                               base::said("pages are written as .pdf, .svg or .png")};
        auto files = pagesOf(document, output, names);
        if (!files) return files.error();
        made.insert(made.end(), files->begin(), files->end());
    }
    return writeAll(made);
}

} // namespace app
