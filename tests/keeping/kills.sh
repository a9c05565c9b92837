#!/usr/bin/env bash
# The real program on a display of its own, killed again and again while it works: what was kept
# aside and what was saved can always be read, and work goes on from there.
# kills.sh SALLOW READER TUNE KILLS; exit 77 where there is no display to be had. Prints for each
# kill how old what was kept aside was, in milliseconds, while a key was pressed every fifth of a
# second.
set -u
export LC_ALL=C.UTF-8
sallow=$1 reader=$2 tune=$3 kills=$4
command -v Xvfb >/dev/null && command -v xdotool >/dev/null || exit 77
dir=$(mktemp -d)
export SALLOW_USER=$dir/user HOME=$dir SALLOW_SOUND_DRIVER=file
unset XDG_DATA_HOME XDG_CONFIG_HOME WAYLAND_DISPLAY
program= server=
finish() {
    [ -n "$program" ] && kill -9 "$program" 2>/dev/null
    [ -n "$server" ] && kill "$server" 2>/dev/null
    rm -rf "$dir"
}
trap finish EXIT
Xvfb -displayfd 3 -screen 0 1280x900x24 3>"$dir/display" 2>/dev/null &
server=$!
for _ in $(seq 100); do [ -s "$dir/display" ] && break; sleep 0.1; done
[ -s "$dir/display" ] || exit 77
DISPLAY=:$(cat "$dir/display")
export DISPLAY QT_QPA_PLATFORM=xcb
QT_QPA_PLATFORM=offscreen "$sallow" arrange "$tune" -o "$dir/work.sallow" >/dev/null 2>&1 || exit 2

window_of() { # of a process and with these words in its title
    for _ in $(seq 300); do
        window=$(xdotool search --all --onlyvisible --pid "$1" --name "$2" 2>/dev/null | head -1)
        [ -n "$window" ] && return 0
        kill -0 "$1" 2>/dev/null || return 1
        sleep 0.1
    done
    return 1
}

lost=0
for ((kill = 1; kill <= kills; ++kill)); do
    "$sallow" "$dir/work.sallow" >/dev/null 2>>"$dir/said" &
    program=$!
    disown
    left=$(ls "$SALLOW_USER"/unsaved/*.unsaved 2>/dev/null | wc -l)
    if [ "$left" -gt 0 ]; then
        window_of $program 'Work left unsaved' || { echo "kill $kill: unsaved work was not offered"; exit 1; }
        xdotool windowfocus --sync "$window" key Return 2>/dev/null
    fi
    window_of $program '. Sallow$' || { echo "kill $kill: the tune did not open"; exit 1; }
    xdotool windowfocus --sync "$window" 2>/dev/null
    presses=$((8 + RANDOM % 14))
    for ((i = 0; i < presses; ++i)); do
        xdotool key --window 0 $((2 + RANDOM % 5)) 2>/dev/null
        [ $((RANDOM % 3)) -eq 0 ] && xdotool key --window 0 Right 2>/dev/null
        [ $((RANDOM % 20)) -eq 0 ] && xdotool key --window 0 ctrl+s 2>/dev/null
        sleep 0.2
    done
    now=$(date +%s%3N)
    kill -9 $program
    wait $program 2>/dev/null
    program=
    files=$(ls "$SALLOW_USER"/unsaved/*.unsaved 2>/dev/null)
    "$reader" "$dir/work.sallow" $files >"$dir/read" || { echo "kill $kill: unreadable"; lost=1; }
    newest=$(stat --printf '%.3Y\n' "$dir/work.sallow" $files | tr -d . | sort -n | tail -1)
    echo "kill $kill: kept $((now - newest)) ms before, $(tail -1 "$dir/read")"
done
exit $lost
