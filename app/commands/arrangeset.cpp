#include "app/commands/arrangeset.h"

#include "app/commands/arrange.h"
#include "core/base/words.h"
#include "core/perform/tuneset.h"
#include "core/proposal/tuneset.h"

#include <iostream>
#include <utility>

namespace app {

namespace {

// A tune of the set in its key, with the lines that it was read from.
struct Chosen {
    proposal::Brief brief;
    files::AbcEntry entry;
};

base::Result<std::vector<Chosen>> chosenFor(Job const& job)
{
    auto const briefs = wishedOfAll(job);
    if (!briefs) return briefs.error();
    auto const steps =
        proposal::setOf(*briefs, job.call.several.anyOrder ? levers::SetOrder::Free
                                                           : levers::SetOrder::AsGiven);
    if (!steps) return steps.error();
    std::vector<Chosen> out;
    for (levers::SetStep const& step : *steps) {
        auto const index = static_cast<std::size_t>(step.tune);
        out.push_back({(*briefs)[index], job.entries[index]});
        out.back().brief.key = step.fit.key;
    }
    return out;
}

// What the levers need is told before anything is saved.
void tell(perform::PlayedSet const& set)
{
    for (std::size_t i = 1; i < set.tunes.size(); ++i)
        std::cerr << "sallow: "
                  << base::say("note: before \"{}\": {}", set.tunes[i].arrangement.tune.title,
                               perform::changeLine(set.tunes[i]))
                  << '\n';
}

ExitStatus tuneByTune(Job const& job, std::vector<Chosen> const& tunes,
                      std::vector<Output> const& outputs, SoundWish const& sound,
                      OutputNames& names)
{
    ExitStatus status = Fine;
    int place = 0;
    for (Chosen const& tune : tunes) {
        ExitStatus const one = arrangeBrief(job, tune.brief, tune.entry,
                                            numberedAll(outputs, ++place), sound, names);
        if (status == Fine) status = one;
    }
    return status;
}

} // namespace

namespace {

// The whole set in its files of one kind each, and the files a tune.
base::Result<base::Done> writeWholeSet(Job const& job, perform::PlayedSet const& set,
                                       std::vector<Output> const& outputs,
                                       SoundWish const& sound, OutputNames& names)
{
    auto const own = claimed(outputs, names);
    if (!own) return own.error();
    return writeSet(set, job.tables.ways, *own, job.call.sheet, job.call.style, sound, &names);
}

base::Result<base::Done> writeEachTune(Job const& job, std::vector<Chosen> const& tunes,
                                       std::vector<proposal::Proposal> const& proposals,
                                       std::vector<Output> const& outputs, OutputNames& names)
{
    for (std::size_t i = 0; i < proposals.size(); ++i) {
        auto const own = claimed(numberedAll(outputs, static_cast<int>(i) + 1), names);
        if (!own) return own.error();
        std::string const abc = files::ownText(job.book.text, tunes[i].entry);
        auto const written = writeOutputs({proposals[i], abc, job.tables}, *own, job.call.sheet,
                                          job.call.style, {}, &names);
        if (!written) return written.error();
    }
    return base::Done{};
}

} // namespace

ExitStatus arrangeSet(Call const& call, std::vector<Output> const& outputs, OutputNames& names)
{
    Call ofTunes = call;
    ofTunes.options.words.title.reset();
    ofTunes.options.words.notes.clear();
    auto const job = jobOf(ofTunes);
    if (!job) return refuse(job.error());
    auto const sound = soundOf(call, job->tables, outputs);
    if (!sound) return refuse(sound.error());
    auto const tunes = chosenFor(*job);
    if (!tunes) return refuse(tunes.error());
    if (!call.several.levels.empty()) return tuneByTune(*job, *tunes, outputs, *sound, names);

    std::vector<proposal::Proposal> proposals;
    std::vector<arrange::Arrangement> arrangements;
    for (Chosen const& tune : *tunes) {
        auto proposal = proposed(*job, tune.brief);
        if (!proposal) return refuseProposal(*job, tune.brief, proposal.error());
        arrangements.push_back(proposal->arrangement);
        proposals.push_back(*std::move(proposal));
    }
    perform::PlayedSet set =
        perform::setOf(call.options.words.title.value_or(""), std::move(arrangements));
    set.notes = call.options.words.notes;
    tell(set);
    std::vector<Output> whole;
    std::vector<Output> single;
    for (Output const& output : outputs)
        (isOneForASet(output.kind) ? whole : single).push_back(output);
    if (auto const done = writeWholeSet(*job, set, whole, *sound, names); !done)
        return refuse(done.error());
    if (auto const done = writeEachTune(*job, *tunes, proposals, single, names); !done)
        return refuse(done.error());
    return Fine;
}

} // namespace app
