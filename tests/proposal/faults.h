#pragma once

#include "core/proposal/proposal.h"

#include <map>
#include <ostream>
#include <string>

// What a harp teacher would mark in a left hand, counted over many tunes, and the measures that
// the taste is set by. Each test looks at the finished arrangement alone; thresholds are common
// practice, no source, unless said.
namespace faults {

// How often something was so, of the places where it could have been.
struct Count {
    int found = 0;
    int of = 0;
    double perCent() const { return of == 0 ? 0 : 100.0 * found / of; }
};

// By what is counted.
using Report = std::map<std::string, Count>;

void add(Report& report, proposal::Proposal const& proposal);
void print(std::ostream& out, Report const& report);

} // namespace faults
