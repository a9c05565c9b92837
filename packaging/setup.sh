# Shared by start.sh, check.sh and package.sh: installs what is missing, then configures and builds.
# Sourced, not run. Safe to run again: what is there already is left as it is.

set -euo pipefail
project="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
build="${SALLOW_BUILD:-$project/build/release}"
log="$build/setup.log"

say() { printf 'sallow: %s\n' "$*"; }
fail() { printf 'sallow: FAILED: %s\n' "$*" >&2; exit 1; }

as_root() {
    if [ "$(id -u)" -eq 0 ]; then "$@"
    elif command -v sudo >/dev/null; then sudo "$@"
    else fail "installing packages needs root: run this as root, or install sudo"
    fi
}

# Runs a command with its output in the log; on failure shows the end of it.
quietly() {
    if ! "$@" >>"$log" 2>&1 </dev/null; then
        tail -n 40 "$log" >&2
        fail "$* (the whole output is in $log)"
    fi
}

# install_packages LIST...: the Debian packages that files of packaging/ name.
install_packages() {
    local missing=() name
    for name in $(cd "$project/packaging" && sed -e 's/#.*//' -e '/^[[:space:]]*$/d' "$@"); do
        case "$name" in
            nodejs) if command -v node >/dev/null; then continue; fi ;;
            npm) if command -v npm >/dev/null; then continue; fi ;;
        esac
        if ! dpkg-query -W -f='${Status}' "$name" 2>/dev/null | grep -q '^install ok installed$'; then
            missing+=("$name")
        fi
    done
    if [ ${#missing[@]} -eq 0 ]; then
        say "all Debian packages are there"
        return
    fi
    command -v apt-get >/dev/null || fail "no apt-get here: install these by hand: ${missing[*]}"
    say "installing ${#missing[@]} Debian packages: ${missing[*]}"
    quietly as_root env DEBIAN_FRONTEND=noninteractive apt-get update -q
    quietly as_root env DEBIAN_FRONTEND=noninteractive \
        apt-get install -y -q --no-install-recommends "${missing[@]}"
}

# install_npm [all]: the music font, and with `all` the referees of the tests, pinned with their
# checksums.
install_npm() {
    local stamp="$project/packaging/node_modules/.sallow-lock"
    local wanted="${1:-font} $(cksum <"$project/packaging/package-lock.json")"
    local there=""
    if [ -e "$stamp" ]; then there="$(cat "$stamp")"; fi
    if [ "$there" = "$wanted" ] || [ "$there" = "all ${wanted#* }" ]; then
        say "music font and referees are there"
        return
    fi
    if [ "${1:-}" = all ]; then
        say "fetching the music font and the referees of the tests (npm ci)"
        (cd "$project/packaging" && quietly npm ci)
    else
        say "fetching the music font (npm ci)"
        (cd "$project/packaging" && quietly npm ci --omit=dev)
    fi
    echo "$wanted" >"$stamp"
}

# Runs Ninja with its output in the log and how far it has come on the screen: on a terminal in one
# line, else a line at every fifth.
compile() {
    local line done_now all last=0 status=0
    say "building; the compiler's output goes to $log"
    NINJA_STATUS='[%f/%t] ' ninja -C "$build" "$@" 2>&1 </dev/null | tee -a "$log" | {
        while IFS= read -r line; do
            [[ "$line" =~ ^\[([0-9]+)/([0-9]+)\] ]] || continue
            done_now="${BASH_REMATCH[1]}" all="${BASH_REMATCH[2]}"
            if [ -t 1 ]; then printf '\rsallow: built %d of %d ' "$done_now" "$all"
            elif [ $((done_now * 5 / all)) -gt "$last" ]; then
                last=$((done_now * 5 / all))
                say "built $done_now of $all"
            fi
        done
        if [ -t 1 ]; then printf '\n'; fi
    } || status=$?
    return "$status"
}

# A build folder that is made here compiles each folder of sources as one, so that what
# they share is read once; one that is there already keeps what it was made with.
configure() {
    local joined=()
    if [ ! -e "$build/CMakeCache.txt" ]; then joined=(-DSALLOW_JOINED=ON); fi
    quietly cmake -C "$project/packaging/presets/release.cmake" \
        -S "$project" -B "$build" -G Ninja "${joined[@]}" "$@"
}

configure_and_build() {
    configure "$@"
    if compile; then return; fi
    grep -m 1 -A 40 '^FAILED: ' "$log" >&2 || tail -n 40 "$log" >&2
    fail "the build stopped (the whole output is in $log)"
}

begin_log() {
    mkdir -p "$build"
    : >"$log"
}
