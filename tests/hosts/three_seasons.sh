#!/bin/sh
# SPDX-License-Identifier: MIT
# One cross of the made-up Larkfold Orchard through the console, from its goal to numbered trees, with every
# sheet on the way: sh three_seasons.sh PROGRAM SAMPLE. The counts are invented.
set -u
pipward=$1
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
cp "$2" "$work/book.gpkg" && chmod u+w "$work/book.gpkg" && cd "$work" || exit 1

fail() { echo "FAILED: $*" >&2; echo "--- stdout" >&2; head -c 3000 out >&2; echo "--- stderr" >&2; cat err >&2; exit 1; }
run() {
    "$pipward" "$@" >out 2>err || fail "pipward $*"
}
shows() { grep -qF -- "$1" out || fail "standard output does not show: $1"; }
says() { grep -qF -- "$1" err || fail "standard error does not say: $1"; }
sheet() { [ -s "sheets/$1" ] || fail "there is no sheet $1"; }
holds() { grep -qF -- "$2" "sheets/$1" || fail "$1 does not hold: $2"; }

# 2026: the plan, the tags, the flowers.
run season-plan book.gpkg --as-of 2026-03-20 --out sheets
sheet season-sheet.html
holds season-sheet.html "26-01"
run field-calendar book.gpkg --as-of 2026-03-20 --out sheets
holds field-calendar.ics "for cross 26-01"
run label-sheet book.gpkg --as-of 2026-03-20 --labels-of crosses --copies 2 --out sheets
sheet labels.pdf
run work-sheet book.gpkg --as-of 2026-03-28 --days 7 --at 48.1335,9.3009 --out sheets
sheet work-sheet.html
holds work-sheet.html "Caution"
run record-pollination book.gpkg --tag 26-01-a --cross 26-01 --tree LO-03-05 --flowers 60 --as-of 2026-05-02
run record-pollination book.gpkg --tag 26-01-b --cross 26-01 --tree LO-03-06 --flowers 50 --as-of 2026-05-03
says "record-undo reverts it"

# Autumn: fruit when its seed is ripe, not before.
run harvest-list book.gpkg --as-of 2026-07-01 --out sheets
shows "harvest not before"
run harvest-list book.gpkg --as-of 2026-09-26 --at 48.1335,9.3009 --out sheets --format csv
grep -q "26-01-a.*harvest now" sheets/harvest_list.csv || fail "26-01-a is not to be harvested at the end of September"
holds harvest-list.html "26-01-b"
holds harvest-list.html "Seeds are poisonous."
run record-harvest book.gpkg --tag 26-01-a --fruits 20 --seeds-sound 118 --seeds-empty 15 --as-of 2026-09-26
run record-harvest book.gpkg --tag 26-01-b --fruits 14 --seeds-sound 80 --seeds-empty 9 --as-of 2026-09-26
run work-sheet book.gpkg --as-of 2026-09-30 --days 7 --out sheets
shows "Wash the seed of cross 26-01"
holds work-sheet.html "Hydrogen peroxide."

# Winter: two lots in stratification, ninety days from 25 November on.
run record-seed-lot book.gpkg --code S-26-01-A --cross 26-01 --seeds 99 --from-tags "26-01-a 26-01-b" \
    --washed-on 2026-10-04 --stratified-from 2026-11-25 --stratification-c 3 --medium "moist sand" --as-of 2026-11-25
run record-seed-lot book.gpkg --code S-26-01-B --cross 26-01 --seeds 99 --from-tags "26-01-a 26-01-b" \
    --washed-on 2026-10-04 --stratified-from 2026-11-25 --stratification-c 3 --medium "moist sand" \
    --treatment "water, 24 h, changed twice" --as-of 2026-11-25
run stratification book.gpkg --as-of 2027-01-15
shows "S-26-01-A"
shows "Tue 23 Feb"
run seed-status book.gpkg --crosses 26-01 --as-of 2027-01-15
shows "check germination"

# 2027: germination, the trial, the seedlings' places.
for count in "A 20 2027-02-20" "B 31 2027-02-20" "A 71 2027-03-10" "B 84 2027-03-10"; do
    # shellcheck disable=SC2086 # three words
    set -- $count
    run record-germination book.gpkg --lot "S-26-01-$1" --germinated "$2" --as-of "$3"
done
run seed-trial book.gpkg --as-of 2027-03-12 --out sheets
sheet seed-trial.svg
shows "26-01"
run work-sheet book.gpkg --as-of 2027-03-12 --days 7 --out sheets
shows "Pot the germinated seed of cross 26-01"
run row-lay book.gpkg --write yes --block Nursery --add-block yes --spacing 0.5 --points "522460 5331230, 522507 5331243" \
    --rows 4 --row-distance 3.5 --as-of 2027-04-10
run row-assign book.gpkg --block Nursery --crosses "26-01=155" --planting "spring 2027" --write yes \
    --as-of 2027-04-12 --out sheets
says "155 seedlings of 1 cross"
sheet planting-sheet.html
holds planting-sheet.html "26-01-155"
run label-sheet book.gpkg --as-of 2027-04-12 --block Nursery --order to-and-fro --out sheets
sheet labels.pdf
run field-map book.gpkg --as-of 2027-04-12 --block Nursery --out sheets
sheet field-map.pdf
run tree-find book.gpkg --search "Marlside x Kettlefen no. 17"
shows "26-01-017"

# 2028 and later: where the cross stands, and how long it keeps its breeder waiting.
run seed-status book.gpkg --crosses 26-01 --as-of 2028-05-01
shows "155"
run first-fruiting book.gpkg --as-of 2028-05-01 --year 2032 --format csv --table first_fruiting
grep -q "26-01-001,.*,due," out || fail "seedlings sown in 2027 should fruit in 2032"
run book-check book.gpkg --as-of 2028-05-01
exit 0
