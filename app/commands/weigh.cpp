#include "app/cli/job.h"
#include "app/commands/verbs.h"
#include "core/files/latticebinary.h"
#include "core/files/plan.h"
#include "core/files/textfile.h"

#include <filesystem>
#include <iostream>

namespace app {

ExitStatus weigh(Call const& call)
{
    OutputNames names = namesFor(call);
    auto const paths = claimed(call.outputs, names);
    if (!paths) return refuse(paths.error());
    auto const job = jobOfOneTune(call);
    if (!job) return refuse(job.error());
    auto const brief = wished(*job, job->entries.front());
    if (!brief) return refuse(brief.error());
    auto const proposal = proposed(*job, *brief);
    if (!proposal) return refuseProposal(*job, *brief, proposal.error());
    for (std::string const& path : *paths) {
        bool const binary = std::filesystem::path(path).extension() == ".bin";
        auto const written = files::writeWhole(path, binary ? files::latticeBinary(*proposal)
                                                            : files::latticeJson(*proposal));
        if (!written) return refuse(written.error());
    }
    return Fine;
}

} // namespace app
