#!/usr/bin/env bash
# Installs what is missing, builds Sallow and opens the workbench on the demo tune. Without a
# display it writes the demo arrangement sheet, pattern sheet and MIDI instead and says where.
. "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

begin_log
install_packages debian-packages.txt
install_npm
configure_and_build -DSALLOW_TESTS=OFF

sallow="$build/app/sallow"
demo="$project/shared/demo/demo.abc"
say "to have it in the menu: bash packaging/package.sh makes a Debian package"

if [ -n "${DISPLAY:-}" ] || [ -n "${WAYLAND_DISPLAY:-}" ]; then
    say "opening the workbench on $demo"
    exec "$sallow" "$demo"
fi

out="$build/demo"
mkdir -p "$out"
say "there is no display here, so the demo tune is arranged without a window"
"$sallow" arrange "$demo" -o "$out/arrangement.pdf" -o "$out/arrangement.mid" \
    || fail "the demo tune could not be arranged"
"$sallow" arrange "$demo" --sheet pattern -o "$out/patterns.pdf" \
    || fail "the pattern sheet could not be written"
say "arrangement sheet: $out/arrangement.pdf"
say "pattern sheet:     $out/patterns.pdf"
say "MIDI:              $out/arrangement.mid"
