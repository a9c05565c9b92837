#!/usr/bin/env bash
# Installs what is missing, builds Sallow and packs it as a Debian package, which puts it in the menu:
# packages/sallow_*.deb in the build folder. Says how to install and remove it.
. "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

begin_log
install_packages debian-packages.txt debian-packages-package.txt
install_npm
configure_and_build -DSALLOW_TESTS=OFF

say "packing"
# Files have the time of the last change, or, where there is no git to tell it, of the release.
released="$(sed -n 's/^ -- .*>  //p' "$project/packaging/installed/changelog" | head -n 1)"
export SOURCE_DATE_EPOCH="${SOURCE_DATE_EPOCH:-$(git -C "$project" log -1 --format=%ct 2>/dev/null || date -d "$released" +%s)}"
rm -rf "$build/packages"
quietly cpack --config "$build/CPackConfig.cmake" -B "$build/packages"
package="$(ls "$build"/packages/sallow_*.deb)"
say "the package: $package"
say "to install it: apt install $package      to remove it: apt purge sallow"
