#!/usr/bin/env bash
# Installs what is missing, builds Sallow and runs every test; with --fast all but the slow ones. Ends
# with "N passed, N failed", and ", N skipped" where tests lacked what they need here.
. "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

which=()
case "${1:-}" in
    "") ;;
    --fast) which=(--label-exclude slow) ;;
    *) fail "'$1' is not known here: only --fast is" ;;
esac

begin_log
install_packages debian-packages.txt debian-packages-tests.txt
install_npm all
configure_and_build -DSALLOW_TESTS=ON

say "running the tests"
report="$build/ctest.txt"
status=0
QT_QPA_PLATFORM=offscreen ctest --test-dir "$build" --parallel "$(nproc)" "${which[@]}" \
    --test-output-size-passed 20000 --output-on-failure 2>&1 | tee "$report" || status=$?

# CTest's own summary: "97% tests passed, 3 tests failed out of 120". Tests that passed only because they
# lacked what they need say SKIPPED in their output.
summary="$(grep -E '^[0-9]+% tests passed, [0-9]+ tests? failed out of [0-9]+$' "$report" | tail -n 1)"
[ -n "$summary" ] || fail "the tests did not run to their end"
failed="$(sed -E 's/.*passed, ([0-9]+) tests?.*/\1/' <<<"$summary")"
all="$(sed -E 's/.*out of ([0-9]+)$/\1/' <<<"$summary")"
[ "$all" -gt 0 ] || fail "no test was found"
awk '/^[0-9]+\/[0-9]+ Testing: / { sub(/^[^:]*: /, ""); name = $0; why = "" }
     /SKIPPED: / { sub(/.*SKIPPED: /, ""); if (why == "") why = $0 }
     /^Test Passed\.$/ { if (why != "") print "skipped: " name " (" why ")" }' \
    "$build/Testing/Temporary/LastTest.log" >"$build/skipped.txt"
cat "$build/skipped.txt"
skipped="$(wc -l <"$build/skipped.txt")"
if [ "$skipped" -gt 0 ]; then
    echo "$((all - failed - skipped)) passed, $failed failed, $skipped skipped"
else
    echo "$((all - failed)) passed, $failed failed"
fi
[ "$failed" -eq 0 ] && [ "$status" -eq 0 ]
