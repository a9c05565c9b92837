#include "app/commands/verbs.h"
#include "app/exitstatus.h"
#include "app/input.h"
#include "app/mending.h"
#include "app/options.h"
#include "app/shelf.h"
#include "core/files/latticebinary.h"
#include "core/files/plan.h"
#include "core/files/textfile.h"

#include <CLI/CLI.hpp>

#include <filesystem>
#include <iostream>

namespace app {

namespace {

struct WeighCall {
    std::string input;
    std::string output;
    ArrangeOptions options;
};

ExitStatus weigh(WeighCall const& call)
{
    if (call.options.tune == "all")
        return refuse({base::FaultCode::BadCall, "--tune", "weigh takes one tune at a time"});
    auto tables = openShelf(call.options);
    if (!tables) return refuse(tables.error());
    auto book = openBook(call.input, *tables);
    if (!book) return refuse(book.error());
    auto entries = chosenTunes(*book, call.options.tune);
    if (!entries) return refuse(entries.error());
    auto brief = readBrief(*book, entries->front(), call.options, *tables);
    if (!brief) return refuse(brief.error());
    auto proposal = proposeOrMend(*brief, call.options, *tables);
    if (!proposal) {
        base::Fault fault = proposal.error();
        fault.place = book->name + (fault.place.empty() ? "" : ", " + fault.place);
        return refuse(fault);
    }
    for (std::string const& snag : proposal::snagSentences(*proposal))
        std::cerr << "sallow: note: " << snag << '\n';
    bool const binary = std::filesystem::path(call.output).extension() == ".bin";
    auto written = files::writeWhole(call.output, binary ? files::latticeBinary(*proposal)
                                                         : files::latticeJson(*proposal));
    return written ? Fine : refuse(written.error());
}

} // namespace

void declareWeigh(CLI::App& program, int& status)
{
    auto call = std::make_shared<WeighCall>();
    CLI::App* verb = program.add_subcommand(
        "weigh", "write every position, candidate and cost that the solver sees");
    verb->add_option("IN", call->input,
                     "an ABC, MusicXML, MIDI or .sallow file, or - for ABC on standard input")
        ->required();
    verb->add_option("-o,--output", call->output,
                     "the lattice, as JSON, or as bare numbers where the name ends in .bin")
        ->required();
    declare(*verb, call->options);
    verb->callback([call, &status] { status = weigh(*call); });
}

} // namespace app
