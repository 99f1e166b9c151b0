#!/bin/sh
# SPDX-License-Identifier: GPL-2.0-or-later
# headless_test.sh RUNNER PLUGIN_FOLDER CONSOLE SAMPLE SCRATCH
# The desktop's headless runner, through the bridge: every operation is listed, and the season plan runs.
set -eu
runner=$1 plugins=$2 console=$3 sample=$4 scratch=$5
rm -rf "$scratch" && mkdir -p "$scratch"
export QGIS_PLUGINPATH="$plugins" QGIS_CUSTOM_CONFIG_PATH="$scratch/profile" QT_QPA_PLATFORM=offscreen
fail() { echo "failed: $*" >&2; exit 1; }

"$runner" plugins enable pipward_bridge >"$scratch/enable.txt" 2>&1 || fail "the bridge could not be enabled: $(cat "$scratch/enable.txt")"
"$runner" list >"$scratch/list.txt" 2>/dev/null
"$console" --list | awk '{print $1}' | tr - _ >"$scratch/ids.txt"
[ -s "$scratch/ids.txt" ] || fail "the console lists no operation"
while read -r id; do
    grep -q "pipward:$id" "$scratch/list.txt" || fail "the runner does not list pipward:$id"
done <"$scratch/ids.txt"

cp "$sample" "$scratch/book.gpkg"
"$runner" run pipward:season_plan --BOOK="$scratch/book.gpkg" --AS_OF=2026-03-20 --KEEP=false \
    --POLLEN_TASK="$scratch/pollen.csv" --FOLDER="$scratch/out" >"$scratch/run.txt" 2>&1 ||
    fail "the season plan did not run: $(tail -5 "$scratch/run.txt")"
[ -s "$scratch/out/season-sheet.html" ] || fail "no sheet was made"
"$console" season-plan "$scratch/book.gpkg" --as-of 2026-03-20 --keep no --format csv --table pollen_task --quiet \
    >"$scratch/console.csv" 2>/dev/null
[ "$(wc -l <"$scratch/pollen.csv")" = "$(wc -l <"$scratch/console.csv")" ] ||
    fail "the runner's pollen tasks are not the console's"
