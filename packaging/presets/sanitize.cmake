# cmake -C packaging/presets/sanitize.cmake -S . -B build/sanitize -G Ninja
# Address and undefined-behaviour sanitizers over our own code.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(SALLOW_SANITIZE ON CACHE BOOL "")
