# cmake -C packaging/presets/core-only.cmake -S . -B build/core-only -G Ninja
# Core and its tests; needs neither Qt nor a sound library.
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(SALLOW_UI OFF CACHE BOOL "")
