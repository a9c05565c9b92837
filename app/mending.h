#pragma once

#include "app/options.h"
#include "core/base/result.h"
#include "core/files/tables.h"
#include "core/proposal/proposal.h"

namespace app {

// Proposes. Where the brief is refused, the options say what is done: the
// remedy is named on stderr, or else all that would help are.
base::Result<proposal::Proposal> proposeOrMend(proposal::Brief const& brief,
                                               ArrangeOptions const& options,
                                               files::Tables const& tables);

} // namespace app
