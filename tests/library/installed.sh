#!/bin/sh
# SPDX-License-Identifier: MIT
# installed.sh BUILD SOURCE COMPILER FLAGS: installs BUILD's library in a temporary prefix, builds docs/examples on it and
# holds what they say against what the console says of the sample.
set -eu
build=$1 source=$2 compiler=$3 flags=$4
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
fail() { echo "error: $*" >&2; exit 1; }

cmake --install "$build" --component library --prefix "$work/prefix" >"$work/install.log" || fail "$(cat "$work/install.log")"
[ -z "$(find "$work/prefix" -path '*detail*')" ] || fail "what is inside of a room was installed"

cmake -S "$source/docs/examples" -B "$work/examples" -DCMAKE_PREFIX_PATH="$work/prefix" \
    -DCMAKE_CXX_COMPILER="$compiler" -DCMAKE_CXX_FLAGS="$flags" -DCMAKE_BUILD_TYPE=Debug >"$work/configure.log" 2>&1 || fail "$(cat "$work/configure.log")"
cmake --build "$work/examples" >"$work/build.log" 2>&1 || fail "$(cat "$work/build.log")"

book=$work/book.gpkg
cp "$source/sample-gpkg/larkfold.gpkg" "$book"
run() { "$work/examples/$1" "$2" "$3" ${4+"$4"} >"$work/said" || fail "$1 ended with $?"; }
told() { grep -Fq "$1" "$work/said" || { cat "$work/said" >&2; fail "not said: $1"; }; }

run which_tree "$book" UP-03-09
told "UP-03-09: block Upper, row 3, position 9 (label)"
run which_tree_static "$book" UP-03-09
told "UP-03-09: block Upper, row 3, position 9 (label)"
run may_they_cross "$book" Wrenlea Owlcombe
told "S-alleles:"
told "Kinship:"
run bloom_forecast "$book" 2026-03-20
told "Wrenlea: full bloom 2026-"

# The other way in which projects find a library.
library=$(dirname "$(find "$work/prefix" -name pipward.pc)")
export PKG_CONFIG_PATH="$library"
# shellcheck disable=SC2046 # flags are words
"$compiler" -std=c++20 $(pkg-config --cflags pipward) "$source/docs/examples/which_tree.cpp" -o "$work/by_pkg_config" \
    $(pkg-config --libs pipward)
LD_LIBRARY_PATH=$(dirname "$library") "$work/by_pkg_config" "$book" UP-03-09 >"$work/said"
told "UP-03-09: block Upper, row 3, position 9 (label)"
echo "The installed library works."
