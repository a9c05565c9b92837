#pragma once

#include "core/learning/learn.h"

#include <random>

// Arrangers made up for tests: their own weights are known, so that what is learned of them can
// be compared.
namespace users {

struct User {
    std::array<double, arrange::termCount> own{}; // factors of the shipped weights
    double careless = 0;                          // the share of choices made at random
};

// Own factors lognormal round 1 with a spread of 0.7.
User user(std::mt19937& random, double careless = 0);

// A chord with so many shapes on offer, some terms a cost of up to 2 points, and what the
// user takes.
learning::Choice choice(std::mt19937& random, User const& user);

} // namespace users
