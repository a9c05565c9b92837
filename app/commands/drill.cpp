#include "app/cli/job.h"
#include "app/commands/verbs.h"
#include "core/sheet/papers/drill.h"
#include "ui/paint/sheetfonts.h"

namespace app {

ExitStatus drill(Call const& call)
{
    OutputNames names = namesFor(call);
    auto const asked = pageOutputsOf(call);
    if (!asked) return refuse(asked.error());
    auto const outputs = claimed(*asked, names);
    if (!outputs) return refuse(outputs.error());
    auto const job = jobOfOneTune(call);
    if (!job) return refuse(job.error());
    auto const font = ui::musicFont();
    if (!font) return refuse(font.error());
    auto const brief = wished(*job, job->entries.front());
    if (!brief) return refuse(brief.error());
    auto const proposal = proposed(*job, *brief);
    if (!proposal) return refuseProposal(*job, *brief, proposal.error());
    auto const written = writePages(sheet::drillSheet(proposal->arrangement, *font, call.style),
                                    *outputs, &names);
    return written ? Fine : refuse(written.error());
}

} // namespace app
