#!/bin/sh
# SPDX-License-Identifier: MIT
# look_ups.sh CONSOLE BOOK: what single questions and records cost on a book of large_book, as CPU seconds and
# megabytes of each process. The book is copied before it is written.
set -eu
console=$1
book=$2
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
copy=$folder/copy.gpkg
cp "$book" "$copy"

measure() {
    name=$1
    shift
    /usr/bin/time -f '%U %S %M' -o "$folder/time" "$console" "$@" --as-of 2024-05-01 >"$folder/out" 2>&1 || true
    awk -v name="$name" 'END { printf "%-44s %6.2f s CPU %6.0f MB\n", name, $1 + $2, $3 / 1024 }' "$folder/time"
}

while read -r search; do
    measure "tree-find $search" tree-find "$book" --search "$search"
done <<END
UP-03-12
up 3 12
UP-O3-l2
row 3 tree 12 Upper
Wrenlea
Wernlea
Wrenlea in Upper
01-01-017
Larkfold x Kettlestead 17
bumblewump
Upper
qqqqqqqq
END
measure "tree-find --at" tree-find "$book" --at 48.1340,9.2990
measure "tree-near" tree-near "$book" --at-grid 522010.0,5331040.0
measure "record-bloom" record-bloom "$copy" --accession "Larkfold" --bbch 61 --observed-on 2024-04-22
measure "record-bloom, again" record-bloom "$copy" --accession "Wrenlea Red" --bbch 61 --observed-on 2024-04-23
