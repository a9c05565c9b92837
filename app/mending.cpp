#include "app/mending.h"

#include "app/wishes.h"
#include "core/base/words.h"
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

// The ways that change the whole tune.
std::optional<proposal::Help> wholeTune(std::string const& mend)
{
    for (proposal::Help const help :
         {proposal::Help::OtherKey, proposal::Help::Slower, proposal::Help::Level})
        if (mend == proposal::helpId(help)) return help;
    return std::nullopt;
}

} // namespace

base::Result<proposal::Proposal> proposeOrMend(proposal::Brief const& asked,
                                               ArrangeOptions const& options,
                                               files::Tables const& tables)
{
    proposal::Brief brief = asked;
    auto const whole = wholeTune(options.mend);
    brief.mending.refuse = options.mend == "no" || whole;
    brief.mending.only = tune::wayFrom(options.mend);
    auto proposal = proposalFor(brief, options.wishes);
    if (proposal || !whole || !mayHelp(proposal.error().code)) return proposal;
    for (proposal::Remedy const& remedy : proposal::remediesFor(brief, tables.levels))
        if (remedy.help == *whole) {
            std::cerr << "sallow: " << base::said("note: to get round a snag: ")
                      << remedy.sentence << '\n';
            return proposalFor(remedy.brief, options.wishes);
        }
    return proposal;
}

void sayWhatHelps(proposal::Brief const& brief, base::Fault const& fault,
                  files::Tables const& tables)
{
    if (!mayHelp(fault.code)) return;
    proposal::Brief refused = brief;
    refused.mending.refuse = true;
    for (proposal::Remedy const& remedy : proposal::remediesFor(refused, tables.levels))
        std::cerr << "sallow: " << base::said("this would help (--mend ")
                  << proposal::helpId(remedy.help) << "): " << remedy.sentence << '\n';
}

} // namespace app
