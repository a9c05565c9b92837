#include "app/commands/verbs.h"
#include "app/exitstatus.h"
#include "app/input.h"
#include "app/mending.h"
#include "app/options.h"
#include "app/outputs.h"
#include "app/shelf.h"

#include <CLI/CLI.hpp>

#include <iostream>
#include <map>

namespace app {

namespace {

struct ArrangeCall {
    std::string input;
    std::vector<std::string> outputs;
    SheetKind sheet = SheetKind::Arrangement;
    ArrangeOptions options;
};

ExitStatus arrangeOne(Book const& book, files::AbcEntry const& entry,
                      files::Tables const& tables, ArrangeCall const& call,
                      std::vector<Output> const& outputs)
{
    auto brief = readBrief(book, entry, call.options, tables);
    if (!brief) return refuse(brief.error());
    auto proposal = proposeOrMend(*brief, call.options, tables);
    if (!proposal) {
        base::Fault fault = proposal.error();
        fault.place = book.name + ", \"" + brief->tune.title + "\"" +
                      (fault.place.empty() ? "" : ", " + fault.place);
        return refuse(fault);
    }
    if (proposal->take)
        std::cerr << "sallow: note: " << proposal::takeWords(*proposal->take) << '\n';
    if (call.options.wishes.take && *call.options.wishes.take > proposal->brief.take)
        std::cerr << "sallow: note: there are no more clearly different takes than "
                  << proposal->brief.take << '\n';
    for (std::string const& warning : proposal->warnings)
        std::cerr << "sallow: note: " << warning << '\n';
    auto written = writeOutputs({*proposal, files::ownText(book.text, entry), tables}, outputs,
                                call.sheet);
    return written ? Fine : refuse(written.error());
}

ExitStatus arrange(ArrangeCall const& call)
{
    std::vector<Output> outputs;
    for (std::string const& path : call.outputs) {
        auto output = outputFor(path);
        if (!output) return refuse(output.error());
        outputs.push_back(*std::move(output));
    }
    auto tables = openShelf(call.options);
    if (!tables) return refuse(tables.error());
    auto book = openBook(call.input, *tables);
    if (!book) return refuse(book.error());
    auto entries = chosenTunes(*book, call.options.tune);
    if (!entries) return refuse(entries.error());

    bool const many = call.options.tune == "all";
    ExitStatus status = Fine;
    for (files::AbcEntry const& entry : *entries) {
        std::vector<Output> own = outputs;
        if (many)
            for (Output& output : own) output.path = numbered(output.path, entry.number);
        ExitStatus const one = arrangeOne(*book, entry, *tables, call, own);
        if (status == Fine) status = one; // the first refusal is what the shell is told
    }
    return status;
}

} // namespace

void declareArrange(CLI::App& program, int& status)
{
    auto call = std::make_shared<ArrangeCall>();
    CLI::App* verb = program.add_subcommand("arrange", "arrange a tune and write it out");
    verb->add_option("IN", call->input,
                     "an ABC or .sallow file, or - for ABC on standard input")
        ->required();
    verb->add_option("-o,--output", call->outputs,
                     "what to write: .pdf .svg .png .musicxml .mxl .mid .wav .flac .ogg "
                     ".plan.json .sallow")
        ->required();
    verb->add_option("--sheet", call->sheet, "what is drawn: arrangement, pattern or lead")
        ->transform(CLI::CheckedTransformer(
            std::map<std::string, SheetKind>{{"arrangement", SheetKind::Arrangement},
                                             {"pattern", SheetKind::Pattern},
                                             {"lead", SheetKind::Lead}}));
    declare(*verb, call->options);
    verb->callback([call, &status] { status = arrange(*call); });
}

} // namespace app
