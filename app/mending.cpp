#include "app/mending.h"

#include "app/wishes.h"
#include "core/proposal/remedies.h"

#include <iostream>

namespace app {

namespace {

bool mayHelp(base::FaultCode code)
{
    using base::FaultCode;
    return code == FaultCode::NoMomentForFlip || code == FaultCode::NoteOffHarp ||
           code == FaultCode::KeyBeyondTuning || code == FaultCode::NothingPlayable;
}

} // namespace

base::Result<proposal::Proposal> proposeOrMend(proposal::Brief const& brief,
                                               ArrangeOptions const& options,
                                               files::Tables const& tables)
{
    auto proposal = proposalFor(brief, options.wishes);
    if (proposal || options.mend == "no" || !mayHelp(proposal.error().code)) return proposal;
    for (proposal::Remedy const& remedy : proposal::remediesFor(brief, tables.levels))
        if (options.mend == "any" || options.mend == proposal::helpId(remedy.help)) {
            std::cerr << "sallow: note: mended: " << remedy.sentence << '\n';
            return proposalFor(remedy.brief, options.wishes);
        }
    return proposal;
}

void sayWhatHelps(proposal::Brief const& brief, base::Fault const& fault,
                  files::Tables const& tables)
{
    if (!mayHelp(fault.code)) return;
    for (proposal::Remedy const& remedy : proposal::remediesFor(brief, tables.levels))
        std::cerr << "sallow: would help (--mend " << proposal::helpId(remedy.help)
                  << "): " << remedy.sentence << '\n';
}

} // namespace app
