#pragma once

#include "core/base/fault.h"
#include "core/base/result.h"

#include <cstdlib>
#include <iostream>
#include <utility>

// A value, or the end of the measurement with the reason.
template<typename T>
T orQuit(base::Result<T> result)
{
    if (result) return *std::move(result);
    std::cerr << base::sentence(result.error()) << '\n';
    std::exit(EXIT_FAILURE);
}
