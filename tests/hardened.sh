#!/bin/sh
# hardened.sh PROGRAM: whether it has been built with the guards of compiler and linker: loaded at any
# address, its tables of calls read-only, its stack watched, its calls of the C library bounded.
set -eu
program=$1
missing=0
lacks() {
    echo "not there: $1" >&2
    missing=1
}
readelf -h "$program" | grep -q 'Type:.*DYN' || lacks "position independence"
readelf -l "$program" | grep -q GNU_RELRO || lacks "read-only relocations"
readelf -d "$program" | grep -Eq 'BIND_NOW|FLAGS.*NOW' || lacks "binding at the start"
readelf -l "$program" | grep -A1 GNU_STACK | grep -q 'RW ' || lacks "a stack that runs no code"
readelf -W --dyn-syms "$program" | grep -q __stack_chk_fail || lacks "the stack protector"
readelf -W --dyn-syms "$program" | grep -Eq '__[a-z]+_chk@' || lacks "bounded calls of the C library"
exit $missing
