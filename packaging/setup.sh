# Shared by start.sh and check.sh: installs what is missing, then configures and builds.
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

wanted_packages() {
    sed -e 's/#.*//' -e '/^[[:space:]]*$/d' "$project/packaging/debian-packages.txt"
}

install_packages() {
    local missing=() name
    for name in $(wanted_packages); do
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

# The music font and the referees of the tests, pinned with their checksums.
install_npm() {
    local stamp="$project/packaging/node_modules/.sallow-lock"
    if cmp -s "$project/packaging/package-lock.json" "$stamp"; then
        say "music font and referees are there"
        return
    fi
    say "fetching the music font and the referees of the tests (npm ci)"
    (cd "$project/packaging" && quietly npm ci)
    cp "$project/packaging/package-lock.json" "$stamp"
}

configure_and_build() {
    say "building in $build (a first build takes some minutes)"
    quietly cmake -C "$project/packaging/presets/release.cmake" \
        -S "$project" -B "$build" -G Ninja "$@"
    if ! ninja -C "$build"; then fail "the build stopped; the first error stands above"; fi
}

set_up() {
    mkdir -p "$build"
    : >"$log"
    install_packages
    install_npm
    configure_and_build "$@"
}
