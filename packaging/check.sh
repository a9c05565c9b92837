#!/usr/bin/env bash
# Installs what is missing, builds Sallow and runs every test. Ends with "N passed, N failed".
. "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

set_up -DSALLOW_TESTS=ON

say "running the tests"
report="$build/ctest.txt"
status=0
QT_QPA_PLATFORM=offscreen ctest --test-dir "$build" --parallel "$(nproc)" --output-on-failure \
    2>&1 | tee "$report" || status=$?

# CTest's own summary: "97% tests passed, 3 tests failed out of 120".
summary="$(grep -E '^[0-9]+% tests passed, [0-9]+ tests? failed out of [0-9]+$' "$report" | tail -n 1)"
[ -n "$summary" ] || fail "the tests did not run to their end"
failed="$(sed -E 's/.*passed, ([0-9]+) tests?.*/\1/' <<<"$summary")"
all="$(sed -E 's/.*out of ([0-9]+)$/\1/' <<<"$summary")"
[ "$all" -gt 0 ] || fail "no test was found"
echo "$((all - failed)) passed, $failed failed"
[ "$failed" -eq 0 ] && [ "$status" -eq 0 ]
