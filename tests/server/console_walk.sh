#!/bin/sh
# SPDX-License-Identifier: MIT
# The console on a book that lives on a server: sh with_server.sh sh console_walk.sh PROGRAM. Made-up data.
set -u
pipward=$1
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
cd "$work" || exit 1

fail() { echo "FAILED: $*" >&2; cat out err >&2; exit 1; }
run() {
    operation=$1
    shift
    "$pipward" "$operation" "$PIPWARD_SERVER" "$@" >out 2>err || fail "$operation $*"
}
shows() { grep -qF -- "$1" out || fail "standard output does not show: $1"; }
says() { grep -qF -- "$1" err || fail "standard error does not say: $1"; }

run book-new --crs EPSG:25832
printf 'label,accession,x,y\nT1,Ember,522400,5331200\nT2,Sorrel,522402,5331200\n' >trees.csv
run layer-import --layer-file trees.csv --layer-crs EPSG:25832 --add-accessions yes --accession-kind cultivar \
    --species apple --as-of 2026-05-01 --write yes
says "Added: 2 trees, 2 accessions."
run record-bloom --tree T1 --bbch 61 --as-of 2026-05-01
says "as bloom_observation/1"
printf 'tree,observed_on,bbch\nT2,2026-05-01,62\nT1,2026-05-02,63\n' >notes.csv
run record-import --records-file notes.csv --as-of 2026-05-03 --write yes
says "2 rows"
run record-import --records-file notes.csv --as-of 2026-05-03 --write yes
says "There already: 2"
run record-undo
says "Undid 2 records of one import"
run row-lay --write yes --block Nursery --add-block yes --spacing 0.5 --points "522400 5331210, 522410 5331210" --as-of 2026-05-03
run first-fruiting --as-of 2026-05-03
run seed-status --as-of 2026-05-03
run pedigree-show --accessions T1 --as-of 2026-05-03 --out .
[ -s pedigree.pdf ] || fail "there is no drawing"
run tree-find --search Sorrel
shows "T2"
exit 0
