# cmake -C packaging/presets/fuzz.cmake -S . -B build/fuzz -G Ninja && ninja -C build/fuzz fuzz
# Every reader, and the way from a tune to its page, under libFuzzer, ten minutes each, two at once,
# with the address and undefined-behaviour sanitizers and all assertions. Needs clang-19 and
# libclang-rt-19-dev.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_COMPILER clang++-19 CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -gline-tables-only" CACHE STRING "")
set(SALLOW_FUZZ ON CACHE BOOL "")
set(SALLOW_SANITIZE ON CACHE BOOL "")
set(SALLOW_UI OFF CACHE BOOL "")
