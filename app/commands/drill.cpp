#include "core/sheet/papers/drill.h"
#include "app/commands/verbs.h"
#include "app/exitstatus.h"
#include "app/input.h"
#include "app/options.h"
#include "app/outputs.h"
#include "app/sharedfolder.h"
#include "ui/paint/sheetfonts.h"

#include <CLI/CLI.hpp>

namespace app {

namespace {

struct DrillCall {
    std::string input;
    std::vector<std::string> outputs;
    sheet::SheetStyle style;
    ArrangeOptions options;
};

ExitStatus drill(DrillCall const& call)
{
    if (call.options.tune == "all")
        return refuse({base::FaultCode::BadCall, "--tune", "a drill is for one tune"});
    auto tables = files::readTables(sharedFolder());
    if (!tables) return refuse(tables.error());
    auto font = ui::musicFont();
    if (!font) return refuse(font.error());
    auto book = openBook(call.input, *tables);
    if (!book) return refuse(book.error());
    auto entries = chosenTunes(*book, call.options.tune);
    if (!entries) return refuse(entries.error());
    auto brief = readBrief(*book, entries->front(), call.options, *tables);
    if (!brief) return refuse(brief.error());
    auto proposal = proposalFor(*brief, call.options.wishes);
    if (!proposal) {
        base::Fault fault = proposal.error();
        fault.place = book->name + (fault.place.empty() ? "" : ", " + fault.place);
        return refuse(fault);
    }
    auto written =
        writePages(sheet::drillSheet(proposal->arrangement, *font, call.style), call.outputs);
    return written ? Fine : refuse(written.error());
}

} // namespace

void declareDrill(CLI::App& program, int& status)
{
    auto call = std::make_shared<DrillCall>();
    CLI::App* verb = program.add_subcommand(
        "drill", "the shapes of a tune's left hand in order, to be placed, rolled and left");
    verb->add_option("IN", call->input,
                     "an ABC, MusicXML, MIDI or .sallow file, or - for ABC on standard input")
        ->required();
    verb->add_option("-o,--output", call->outputs, "what to write: .pdf .svg .png")->required();
    declarePaper(*verb, call->style.paper);
    declare(*verb, call->options);
    verb->callback([call, &status] { status = drill(*call); });
}

} // namespace app
