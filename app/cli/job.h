#pragma once

#include "app/cli/call.h"
#include "app/exitstatus.h"
#include "app/input.h"
#include "app/outputnames.h"
#include "core/base/result.h"
#include "core/files/tables/tables.h"
#include "core/proposal/proposal.h"

#include <vector>

namespace app {

// What every verb that begins with a tune goes through, step by step: input, wishes, proposal,
// outputs. A verb takes as many of the steps as it needs and does one thing with the result.

// The input: tables, the file that was opened, and the tunes of it that were asked for.
struct Job {
    Call const& call;
    files::Tables tables;
    Book book;
    std::vector<files::AbcEntry> entries; // of a set, in the order of the call
};
// Faults: those of the tables, of reading, NoSuchTune.
base::Result<Job> jobOf(Call const& call);
// The same for a verb that takes one tune: "all" is a fault, BadCall.
base::Result<Job> jobOfOneTune(Call const& call);

// The wishes: one tune with all that the call asks for. Faults: those of readBrief.
base::Result<proposal::Brief> wished(Job const& job, files::AbcEntry const& entry);
// Those of every tune of a set.
base::Result<std::vector<proposal::Brief>> wishedOfAll(Job const& job);

// The proposal; what is to be known about it is said on stderr. Faults: those of propose, with
// file and tune in front of the place.
base::Result<proposal::Proposal> proposed(Job const& job, proposal::Brief const& brief);
// Says a proposal's refusal and what would help.
ExitStatus refuseProposal(Job const& job, proposal::Brief const& brief,
                          base::Fault const& fault);

// Where a tune is to be found: book.abc, "The Narrow Bridge".
std::string placeOf(Book const& book, tune::Tune const& tune);

// The outputs: kinds and names of the files asked for, none of which is an input or named twice.
// Faults: UnknownFileKind, BadCall.
base::Result<std::vector<Output>> outputsOf(Call const& call);
// The same for a verb that makes pages alone.
base::Result<std::vector<Output>> pageOutputsOf(Call const& call);
// How its sound files are to be made. Fault: BadCall for words that are off, or where no output is a
// sound file.
base::Result<SoundWish> soundOf(Call const& call, files::Tables const& tables,
                                std::vector<Output> const& outputs);
// The names that no output of this call may take: its inputs.
OutputNames namesFor(Call const& call);

} // namespace app
