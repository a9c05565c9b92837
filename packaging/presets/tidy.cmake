# cmake -C packaging/presets/tidy.cmake -S . -B build/tidy -G Ninja
# clang-tidy over our own code while compiling.
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(SALLOW_TIDY ON CACHE BOOL "")
set(SALLOW_TESTS OFF CACHE BOOL "")
