#include "app/commands/levels.h"
#include "app/commands/verbs.h"
#include "app/exitstatus.h"
#include "app/input.h"
#include "app/mending.h"
#include "app/namedchoice.h"
#include "app/options.h"
#include "app/outputs.h"
#include "app/shelf.h"
#include "core/proposal/tuneset.h"

#include <CLI/CLI.hpp>

#include <iostream>
#include <map>

namespace app {

namespace {

struct ArrangeCall {
    std::string input;
    std::vector<std::string> outputs;
    SheetKind sheet = SheetKind::Arrangement;
    std::vector<std::string> set; // tunes of a set, instead of one tune
    bool anyOrder = false;
    sheet::SheetStyle style;
    std::string levels; // "1-5"; empty: the one level of the options
    ArrangeOptions options;
};

ExitStatus arrangeBrief(proposal::Brief const& asked, Book const& book,
                        files::AbcEntry const& entry, files::Tables const& tables,
                        ArrangeCall const& call, std::vector<Output> const& outputs)
{
    proposal::Brief const* const brief = &asked;
    if (!call.levels.empty()) {
        auto levels = levelsFrom(call.levels);
        if (!levels) return refuse(levels.error());
        auto written = writeLevels(*brief, files::ownText(book.text, entry), *levels, tables,
                                   outputs, call.sheet, call.style);
        return written ? Fine : refuse(written.error());
    }
    auto proposal = madeFor(book, *brief, call.options, tables);
    if (!proposal) {
        base::Fault fault = proposal.error();
        fault.place = book.name + ", \"" + brief->tune.title + "\"" +
                      (fault.place.empty() ? "" : ", " + fault.place);
        ExitStatus const status = refuse(fault);
        sayWhatHelps(*brief, fault, tables);
        return status;
    }
    if (proposal->take)
        std::cerr << "sallow: note: " << proposal::takeWords(*proposal->take) << '\n';
    if (call.options.wishes.take && *call.options.wishes.take > proposal->brief.take)
        std::cerr << "sallow: note: there are no more clearly different takes than "
                  << proposal->brief.take << '\n';
    for (std::string const& warning : proposal->warnings)
        std::cerr << "sallow: note: " << warning << '\n';
    auto written = writeOutputs({*proposal, files::ownText(book.text, entry), tables}, outputs,
                                call.sheet, call.style);
    return written ? Fine : refuse(written.error());
}

ExitStatus arrangeOne(Book const& book, files::AbcEntry const& entry,
                      files::Tables const& tables, ArrangeCall const& call,
                      std::vector<Output> const& outputs)
{
    auto brief = readBrief(book, entry, call.options, tables);
    if (!brief) return refuse(brief.error());
    return arrangeBrief(*brief, book, entry, tables, call, outputs);
}

// A set: each tune in the key that the set takes it in, written with its place in the set before
// the ending; what is turned between them is told.
ExitStatus arrangeSet(Book const& book, files::Tables const& tables, ArrangeCall const& call,
                      std::vector<Output> const& outputs)
{
    std::vector<proposal::Brief> briefs;
    std::vector<files::AbcEntry> entries;
    for (std::string const& number : call.set) {
        auto entry = chosenTunes(book, number);
        if (!entry) return refuse(entry.error());
        auto brief = readBrief(book, entry->front(), call.options, tables);
        if (!brief) return refuse(brief.error());
        briefs.push_back(*std::move(brief));
        entries.push_back(entry->front());
    }
    auto const steps = proposal::setOf(
        briefs, call.anyOrder ? levers::SetOrder::Free : levers::SetOrder::AsGiven);
    if (!steps) return refuse(steps.error());
    ExitStatus status = Fine;
    int place = 0;
    for (levers::SetStep const& step : *steps) {
        auto const index = static_cast<std::size_t>(step.tune);
        proposal::Brief brief = briefs[index];
        brief.key = step.fit.key;
        std::vector<Output> own = outputs;
        for (Output& output : own) output.path = numbered(output.path, place + 1);
        if (place++ > 0)
            std::cerr << "sallow: note: before \"" << brief.tune.title
                      << "\": " << levers::changesInWords(brief.harp, step) << '\n';
        ExitStatus const one =
            arrangeBrief(brief, book, entries[index], tables, call, own);
        if (status == Fine) status = one;
    }
    return status;
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
    if (!call.set.empty()) return arrangeSet(*book, *tables, call, outputs);
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
                     "an ABC, MusicXML, MIDI or .sallow file, or - for ABC on standard input")
        ->required();
    verb->add_option("-o,--output", call->outputs,
                     "what to write: .pdf .svg .png .musicxml .mxl .abc .mid .wav .flac .ogg "
                     ".txt .html .plan.json .sallow")
        ->required();
    takesName<SheetKind>(verb->add_option("--sheet", call->sheet,
                                          "what is drawn: arrangement, pattern or lead"),
                         {{"arrangement", SheetKind::Arrangement},
                          {"pattern", SheetKind::Pattern},
                          {"lead", SheetKind::Lead}});
    verb->add_option("--set", call->set,
                     "tunes of a set, such as 1,3,2: in keys that turn the fewest levers "
                     "between them")
        ->delimiter(',');
    verb->add_flag("--any-order", call->anyOrder,
                   "with --set: also in the order that turns the fewest");
    declare(*verb, call->style);
    verb->add_option("--levels", call->levels,
                     "several levels of the same bars, such as 1-5: pages in one file, other "
                     "kinds in a file each");
    declare(*verb, call->options);
    verb->callback([call, &status] { status = arrange(*call); });
}

} // namespace app
