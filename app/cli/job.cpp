#include "app/cli/job.h"

#include "app/mending.h"
#include "app/progress.h"
#include "app/shelf.h"
#include "core/base/words.h"

#include <algorithm>
#include <iostream>

namespace app {

base::Result<Job> jobOf(Call const& call)
{
    auto tables = openShelf(call.options);
    if (!tables) return tables.error();
    auto book = openBook(call.input, *tables);
    if (!book) return book.error();
    Job job{call, *std::move(tables), *std::move(book), {}};
    if (call.several.set.empty()) {
        auto entries = chosenTunes(job.book, call.options.tune);
        if (!entries) return entries.error();
        job.entries = *std::move(entries);
    }
    for (std::string const& number : call.several.set) {
        auto entry = chosenTunes(job.book, number);
        if (!entry) return entry.error();
        job.entries.push_back(entry->front());
    }
    return job;
}

base::Result<Job> jobOfOneTune(Call const& call)
{
    if (call.options.tune == "all")
        return base::Fault{base::FaultCode::BadCall, "--tune",
                           base::said("this takes one tune at a time")};
    return jobOf(call);
}

base::Result<proposal::Brief> wished(Job const& job, files::AbcEntry const& entry)
{
    return readBrief(job.book, entry, job.call.options, job.tables);
}

base::Result<std::vector<proposal::Brief>> wishedOfAll(Job const& job)
{
    std::vector<proposal::Brief> briefs;
    for (files::AbcEntry const& entry : job.entries) {
        auto brief = wished(job, entry);
        if (!brief) return brief.error();
        briefs.push_back(*std::move(brief));
    }
    return briefs;
}

std::string placeOf(Book const& book, tune::Tune const& tune)
{
    return book.name + ", \"" + tune.title + "\"";
}

base::Result<proposal::Proposal> proposed(Job const& job, proposal::Brief const& brief)
{
    ArrangeOptions const& options = job.call.options;
    Waiting waiting("arranging");
    auto proposal = madeFor(job.book, brief, options, job.tables);
    waiting.end();
    if (!proposal) {
        base::Fault fault = proposal.error();
        fault.place = placeOf(job.book, brief.tune) +
                      (fault.place.empty() ? "" : ", " + fault.place);
        return fault;
    }
    if (proposal->take)
        std::cerr << "sallow: " << base::said("note: ") << proposal::takeWords(*proposal->take)
                  << '\n';
    if (options.wishes.setting && *options.wishes.setting > proposal->brief.take)
        std::cerr << "sallow: "
                  << base::said("note: the last clearly different setting is number ")
                  << proposal->brief.take << '\n';
    std::string const whose = job.entries.size() > 1 ? '"' + brief.tune.title + "\": " : "";
    for (std::string const& warning : proposal->warnings)
        std::cerr << "sallow: " << base::said("note: ") << whose << warning << '\n';
    return proposal;
}

ExitStatus refuseProposal(Job const& job, proposal::Brief const& brief,
                          base::Fault const& fault)
{
    ExitStatus const status = refuse(fault);
    sayWhatHelps(brief, fault, job.tables);
    return status;
}

OutputNames namesFor(Call const& call)
{
    OutputNames names;
    names.keep(call.input);
    names.keep(call.options.harpFile);
    for (std::string const& file : call.options.wishes.patternFiles) names.keep(file);
    return names;
}

base::Result<SoundWish> soundOf(Call const& call, files::Tables const& tables,
                                std::vector<Output> const& outputs)
{
    SoundOptions const& said = call.sound;
    auto const at = tempoShareFrom(said.at);
    if (!at) return at.error();
    auto const temperament = perform::temperamentFrom(tables.temperaments, said.temperament);
    if (!temperament) return temperament.error();
    SoundWish wish;
    wish.at = *at;
    wish.left = said.hands != "right" && said.hands != "tune";
    wish.right = said.hands != "left";
    wish.tuneAlone = said.hands == "tune";
    wish.countIn = said.countIn;
    wish.click = said.click;
    wish.times = said.times;
    wish.voice = {said.font, said.pitch, temperament->cents, said.halo / 100.0};
    wish.pack = said.pack;
    wish.lilt = said.lilt;
    wish.slowing = said.slowing;
    wish.barBefore = said.barBefore;
    wish.balance = said.balance;
    wish.rollGapMs = said.roll;
    if (!said.steps.empty()) {
        auto const steps = stepsFrom(said.steps);
        if (!steps) return steps.error();
        if (wish.at != 1 || wish.times != 1 || wish.pack)
            return base::Fault{
                base::FaultCode::BadCall, "--steps",
                base::said("it says itself how fast and how often; leave out --at, --times "
                           "and --practice")};
        wish.steps = *steps;
    }
    if (!said.passage.empty()) {
        auto const passage = passageFrom(said.passage);
        if (!passage) return passage.error();
        wish.passage = *passage;
    }
    bool const any = std::ranges::any_of(outputs, [](Output const& o) { return isSound(o.kind); });
    auto const showsTheEnd = [&call](Output const& o) {
        bool const heard = isSound(o.kind) || o.kind == OutputKind::Midi;
        bool const data = o.kind == OutputKind::Plan || o.kind == OutputKind::Saved;
        bool const told = call.sheet == SheetKind::Arrangement ||
                          (call.sheet == SheetKind::Pattern && o.kind != OutputKind::Abc);
        return heard || (!data && told);
    };
    if (wish.slowing && std::ranges::none_of(outputs, showsTheEnd))
        return base::Fault{base::FaultCode::BadCall, "--slowing",
                           base::said("it is for sound, MIDI files and sheets with both hands "
                                      "or patterns, and none is asked for")};
    SoundWish ofSound = wish;
    ofSound.slowing.reset();
    if (!any && ofSound != SoundWish{})
        return base::Fault{
            base::FaultCode::BadCall, "-o",
            base::said("--at, --passage, --hands, --balance, --bar-before, --count-in, "
                       "--click, --times, "
                       "--steps, --roll, --lilt, --pitch, --temperament, --halo, --font and "
                       "--practice are for .wav, .flac and .ogg, and none is asked for")};
    return wish;
}

base::Result<std::vector<Output>> outputsOf(Call const& call)
{
    std::vector<Output> outputs;
    for (std::string const& path : call.outputs) {
        auto output = outputFor(path);
        if (!output) return output.error();
        if (output->kind == OutputKind::Png) output->dotsPerInch = call.resolution;
        outputs.push_back(*std::move(output));
    }
    if (call.resolution && std::ranges::none_of(outputs, [](Output const& o) {
            return o.dotsPerInch.has_value();
        }))
        return base::Fault{base::FaultCode::BadCall, "--resolution",
                           base::said("it is for .png, and none is asked for")};
    return outputs;
}

base::Result<std::vector<Output>> pageOutputsOf(Call const& call)
{
    for (std::string const& path : call.outputs) {
        auto const output = outputFor(path);
        if (!output || !isPages(output->kind))
            return base::Fault{base::FaultCode::UnknownFileKind, path,
                               base::said("pages are written as .pdf, .svg or .png")};
    }
    return outputsOf(call);
}

} // namespace app
