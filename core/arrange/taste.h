#pragma once

#include "core/arrange/points.h"

#include <array>
#include <cstddef>

// The figures that the terms of the score go by. None stands in code: all are read from
// shared/taste.json, and a style may have some of its own (shared/weights.json). Their list is
// tastefigures.def; what each is for stands beside the term that uses it (core/arrange/terms).
namespace arrange {

inline constexpr std::size_t levelCount = 5;

template<typename T>
using ByLevel = std::array<T, levelCount>;
template<typename T>
using ByStrength = std::array<T, 4>; // of the beat, as music::beatStrength
using ByDegree = std::array<Points, 7>;
template<typename T>
using BySeam = std::array<T, 4>; // inside a pair of bars, between pairs, phrases, parts
template<typename T>
using ByClose = std::array<T, 3>; // of a phrase, a part, the tune

// clang-format off
#define GROUP(Type, member) struct Type {
#define FIGURE(name, ...) __VA_ARGS__ name{};
#define END };
// clang-format on
struct Taste {
#include "core/arrange/tastefigures.def"

#define GROUP(Type, member) Type member;
#define FIGURE(name, ...)
#define END
#include "core/arrange/tastefigures.def"
};

} // namespace arrange
