#!/usr/bin/env bash
# outputkills.sh SALLOW TUNE KILLS: the real program, killed again and again while it saves, for every
# command and kind of file. A file is whole, or as it was before, and nothing else is left. Ends with
# 1 where that does not hold. It takes minutes and is run by hand.
set -u
export LC_ALL=C.UTF-8 QT_QPA_PLATFORM=offscreen SOURCE_DATE_EPOCH=1000000000
sallow=$1 tune=$2 kills=$3
dir=$(mktemp -d)
trap 'rm -rf "$dir"' EXIT
export HOME=$dir SALLOW_USER=$dir/user
mkdir "$dir/out"

calls=()
for kind in pdf svg png musicxml mxl abc mid wav flac ogg txt html plan.json sallow; do
    calls+=("$kind arrange $tune --tune 1")
done
for kind in json bin; do calls+=("$kind weigh $tune --tune 1"); done
for kind in pdf svg png; do
    calls+=("$kind handout --key G --patterns 1-5-8" "$kind drill $tune --tune 1")
done
calls+=("png picture $tune --tune 1")

# A number from 0 to 1 of the time that the call takes, spread evenly.
broken=0 whole=0 before=0 done_kills=0
each=$(((kills + ${#calls[@]} - 1) / ${#calls[@]}))
for call in "${calls[@]}"; do
    kind=${call%% *} words=${call#* }
    rm -rf "$dir/out" && mkdir "$dir/out"
    out=$dir/out/o.$kind
    begun=$(date +%s%N)
    # shellcheck disable=SC2086 # words of a call
    "$sallow" $words -o "$out" >/dev/null 2>&1 || { echo "$call: does not work"; exit 1; }
    took=$((($(date +%s%N) - begun) / 1000))
    cp "$out" "$dir/reference"
    for ((i = 0; i < each; ++i)); do
        echo old >"$out"
        # shellcheck disable=SC2086
        "$sallow" $words -o "$out" >/dev/null 2>&1 &
        program=$!
        sleep "$(awk -v t="$took" -v i="$i" -v n="$each" 'BEGIN { printf "%.6f", t * (0.02 + 1.1 * i / n) / 1e6 }')"
        kill -9 $program 2>/dev/null
        wait $program 2>/dev/null
        done_kills=$((done_kills + 1))
        if cmp -s "$out" "$dir/reference"; then whole=$((whole + 1))
        elif [ "$(head -c 4 "$out" | tr -d "\0")" = old ]; then before=$((before + 1))
        else echo "$call: a damaged file after a kill"; broken=$((broken + 1)); fi
        [ "$(ls -A "$dir/out")" = "o.$kind" ] || { echo "$call: left $(ls -A "$dir/out")"; broken=$((broken + 1)); }
    done
done
echo "$done_kills kills: $whole files whole, $before as before, $broken broken or left over"
[ "$broken" -eq 0 ]
