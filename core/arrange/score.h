#pragma once

#include "core/arrange/points.h"
#include "core/arrange/taste.h"
#include "core/tune/ways.h"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace arrange {

// What a pair of neighbours costs that no hand can play one after the other: more than any sum
// of judgements, so that it is chosen only where locks leave nothing else.
inline constexpr Points unplayablePair = 1'000'000;

// The terms of the score; terms.def says what each is about.
enum class Term {
#define TERM(Name, judge) Name,
#define PAIR_TERM(Name) Name,
#include "core/arrange/terms.def"
};
inline constexpr std::size_t termCount = 0
#define TERM(Name, judge) +1
#define PAIR_TERM(Name) +1
#include "core/arrange/terms.def"
    ;
inline constexpr Term firstOfNeighbours = Term::Travel;

// The name in lattice.json and shared/weights.json: "reach", "chord_fit" ...
std::string_view termName(Term term);

// Points by term, weights already applied.
using Account = std::array<Points, termCount>;

Points total(Account const& account);

// Weights of one style, by term: a term's raw judgement, in thousandths, times its weight /
// 1000; and the figures by which the terms judge in this style.
struct Weights {
    std::string style;
    std::string name; // in plain words, for the arranger
    std::array<int, termCount> byTerm{};
    Taste taste{};
    tune::WayPrices ways{}; // what each way round a snag costs
};

} // namespace arrange
