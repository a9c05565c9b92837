#!/usr/bin/env bash
# run.sh FOLDER SECONDS ENTRY:LENGTH:CORPUS,CORPUS... : runs the fuzzers of FOLDER, two at once (or AT_ONCE), each so
# long. What is found is left in FOLDER/found as an input that shows it; FOLDER/report.txt has a line an
# entry: executions, inputs that reach something new, findings.
set -u
folder=$1 seconds=$2
shift 2
mkdir -p "$folder/found" "$folder/grown"

one() {
    local entry=${1%%:*} rest=${1#*:}
    local length=${rest%%:*} corpus=${rest#*:}
    mkdir -p "$folder/grown/$entry"
    # A finding ends a run; what is left of the time goes to the next run, from where it was.
    local ends=$((SECONDS + seconds)) runs=0
    : >"$folder/$entry.log"
    while [ $SECONDS -lt $ends ] && [ $runs -lt 20 ]; do
        runs=$((runs + 1))
        # shellcheck disable=SC2086 # the corpus is several folders
        ASAN_OPTIONS=allocator_may_return_null=1 nice -n 19 "$folder/fuzz_$entry" \
            -max_total_time=$((ends - SECONDS)) -timeout=30 -rss_limit_mb=2048 -max_len="$length" \
            -artifact_prefix="$folder/found/$entry-" -print_final_stats=1 \
            "$folder/grown/$entry" ${corpus//,/ } >>"$folder/$entry.log" 2>&1 && break
    done
    local executed
    executed=$(awk '/stat::number_of_executed_units/ { n += $2 } END { print n + 0 }' "$folder/$entry.log")
    echo "$entry: $executed executions, $(find "$folder/grown/$entry" -type f | wc -l) inputs kept," \
        "$(find "$folder/found" -name "$entry-*" | wc -l) findings" | tee -a "$folder/report.txt"
}

: >"$folder/report.txt"
for run in "$@"; do
    while [ "$(jobs -rp | wc -l)" -ge "${AT_ONCE:-2}" ]; do wait -n; done
    one "$run" &
done
wait
sort -o "$folder/report.txt" "$folder/report.txt"
[ -z "$(ls -A "$folder/found")" ]
