#!/bin/sh
# What is installed beside the program, as the judges of its forms see it: installed.sh PROJECT.
# Judges that are not on this machine are left out; without any the test says that it is skipped.
cd "$1/packaging/installed" || exit 1
status=0
asked=0
judge() {
    command -v "$1" >/dev/null || return 0
    asked=$((asked + 1))
    said="$("$@" 2>&1)" || { echo "$*: $said"; status=1; }
}
judge desktop-file-validate sallow.desktop
judge appstreamcli validate --no-net local.sallow.Sallow.metainfo.xml
judge mandoc -T lint -W warning sallow.1
judge xmllint --noout sallow.mime.xml local.sallow.Sallow.metainfo.xml
judge bash -n sallow.bash
[ "$asked" -gt 1 ] || echo "SKIPPED: no judge of menu entries, metainfo and manuals is here"
exit $status
