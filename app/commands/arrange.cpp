#include "app/cli/job.h"
#include "app/commands/levels.h"
#include "app/commands/verbs.h"
#include "core/base/words.h"
#include "core/proposal/tuneset.h"

#include <iostream>

namespace app {

namespace {

ExitStatus arrangeBrief(Job const& job, proposal::Brief const& brief,
                        files::AbcEntry const& entry, std::vector<Output> const& outputs,
                        SoundWish const& sound, OutputNames& names)
{
    Call const& call = job.call;
    std::string const abc = files::ownText(job.book.text, entry);
    if (!call.several.levels.empty()) {
        auto levels = levelsFrom(call.several.levels);
        if (!levels) return refuse(levels.error());
        auto written = writeLevels(brief, abc, *levels, job.tables, outputs, call.sheet,
                                   call.style, names, sound);
        return written ? Fine : refuse(written.error());
    }
    auto proposal = proposed(job, brief);
    if (!proposal) return refuseProposal(job, brief, proposal.error());
    auto own = claimed(outputs, names);
    if (!own) return refuse(own.error());
    auto written =
        writeOutputs({*proposal, abc, job.tables}, *own, call.sheet, call.style, sound);
    return written ? Fine : refuse(written.error());
}

std::vector<Output> numberedAll(std::vector<Output> outputs, int number)
{
    for (Output& output : outputs) output.path = numbered(output.path, number);
    return outputs;
}

// A set: each tune in the key that the set takes it in, written with its place in the set before
// the ending; what is turned between them is told.
ExitStatus arrangeSet(Job const& job, std::vector<Output> const& outputs,
                      SoundWish const& sound, OutputNames& names)
{
    auto const briefs = wishedOfAll(job);
    if (!briefs) return refuse(briefs.error());
    auto const steps = proposal::setOf(*briefs, job.call.several.anyOrder
                                                    ? levers::SetOrder::Free
                                                    : levers::SetOrder::AsGiven);
    if (!steps) return refuse(steps.error());
    ExitStatus status = Fine;
    int place = 0;
    for (levers::SetStep const& step : *steps) {
        auto const index = static_cast<std::size_t>(step.tune);
        proposal::Brief brief = (*briefs)[index];
        brief.key = step.fit.key;
        if (place++ > 0)
            std::cerr << "sallow: " << base::said("note: before \"") << brief.tune.title
                      << "\": " << levers::changesInWords(brief.harp, step) << '\n';
        ExitStatus const one = arrangeBrief(job, brief, job.entries[index],
                                            numberedAll(outputs, place), sound, names);
        if (status == Fine) status = one;
    }
    return status;
}

} // namespace

ExitStatus arrange(Call const& call)
{
    auto const outputs = outputsOf(call);
    if (!outputs) return refuse(outputs.error());
    OutputNames names = namesFor(call);
    if (auto const free = spared(*outputs, names); !free) return refuse(free.error());
    auto const job = jobOf(call);
    if (!job) return refuse(job.error());
    auto const sound = soundOf(call, job->tables, *outputs);
    if (!sound) return refuse(sound.error());
    if (!call.several.set.empty()) return arrangeSet(*job, *outputs, *sound, names);

    bool const many = call.options.tune == "all";
    ExitStatus status = Fine;
    for (files::AbcEntry const& entry : job->entries) {
        auto const brief = wished(*job, entry);
        ExitStatus const one =
            brief ? arrangeBrief(*job, *brief, entry,
                                 many ? numberedAll(*outputs, entry.number) : *outputs, *sound,
                                 names)
                  : refuse(brief.error());
        if (status == Fine) status = one; // the first refusal is what the shell is told
    }
    return status;
}

} // namespace app
