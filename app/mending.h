#pragma once

#include "app/options.h"
#include "core/base/result.h"
#include "core/files/tables/tables.h"
#include "core/proposal/proposal.h"

namespace app {

// Proposes. Where the brief is refused, `options.mend` says what is done: the remedy
// is named on stderr.
base::Result<proposal::Proposal> proposeOrMend(proposal::Brief const& brief,
                                               ArrangeOptions const& options,
                                               files::Tables const& tables);

// What would help a brief that was refused so, on stderr, a line for each remedy.
void sayWhatHelps(proposal::Brief const& brief, base::Fault const& fault,
                  files::Tables const& tables);

} // namespace app
