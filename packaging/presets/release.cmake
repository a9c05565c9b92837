# cmake -C packaging/presets/release.cmake -S . -B build/release -G Ninja
# What is shipped, tested and measured.
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
