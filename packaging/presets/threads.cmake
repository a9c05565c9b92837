# cmake -C packaging/presets/threads.cmake -S . -B build/threads -G Ninja && ninja -C build/threads test_sound
# The thread sanitizer over our own code; what it watches is where sound is played.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(SALLOW_SANITIZE_THREADS ON CACHE BOOL "")
