#pragma once

#include "core/base/fault.h"
#include "core/base/words.h"

#include <string>

namespace files {

// The file has a form that is newer than this program.
inline base::Fault newerForm(std::string const& file)
{
    return {
        base::FaultCode::FileUnreadable, file,
        base::said(
            "a newer Sallow saved it: open it with that one, or install the newer one here")};
}

} // namespace files
