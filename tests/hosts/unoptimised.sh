#!/bin/sh
# SPDX-License-Identifier: MIT
# unoptimised.sh SOURCE BUILD: builds library and console without any inlining and walks the sample with it. Where two
# types share a name the linker keeps one body for both; only such a build runs the wrong one.
set -eu
source=$1 build=$2
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
fail() { echo "error: $*" >&2; exit 1; }

cmake -S "$source" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE= -DCMAKE_CXX_FLAGS=-O0 -DCMAKE_UNITY_BUILD=ON -DPIPWARD_TESTS=OFF \
    -DCMAKE_DISABLE_FIND_PACKAGE_QGIS=ON >"$work/log" 2>&1 || fail "$(cat "$work/log")"
cmake --build "$build" --target pipward_console >"$work/log" 2>&1 || fail "$(tail -n 40 "$work/log")"

book=$work/book.gpkg
cp "$source/sample-gpkg/larkfold.gpkg" "$book"
walk() { "$build/plugin/console/pipward" "$@" --out "$work" >"$work/said" 2>"$work/told" || fail "$*: $(cat "$work/told")"; }
says() { grep -Fq "$1" "$work/said" || fail "it does not say: $1"; }

walk book-check "$book" --as-of 2026-03-20
walk season-plan "$book" --as-of 2026-03-20
says "Pollen work"
walk tree-find "$book" --search UP-03-09
says "block Upper, row 3, position 9"
walk tree-near "$book" --at 48.13638,9.30025
walk walk-order "$book" --trees "UP-03-09, LO-02-08, LO-04-11"
walk seed-status "$book" --as-of 2026-03-20
walk pedigree-show "$book" --accessions "LF 11-023"
walk field-map "$book"
walk label-sheet "$book" --trees UP-03-09
echo "Library and console walk the sample without inlining."
