#include "app/commands/arrange.h"

#include "app/commands/arrangeset.h"
#include "app/commands/levels.h"
#include "app/commands/verbs.h"

namespace app {

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
        writeOutputs({*proposal, abc, job.tables}, *own, call.sheet, call.style, sound, &names);
    return written ? Fine : refuse(written.error());
}

std::vector<Output> numberedAll(std::vector<Output> outputs, int number)
{
    for (Output& output : outputs) output.path = numbered(output.path, number);
    return outputs;
}


ExitStatus arrange(Call const& call)
{
    auto const outputs = outputsOf(call);
    if (!outputs) return refuse(outputs.error());
    OutputNames names = namesFor(call);
    if (auto const free = spared(*outputs, names); !free) return refuse(free.error());
    if (!call.several.set.empty()) return arrangeSet(call, *outputs, names);
    auto const job = jobOf(call);
    if (!job) return refuse(job.error());
    auto const sound = soundOf(call, job->tables, *outputs);
    if (!sound) return refuse(sound.error());

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
