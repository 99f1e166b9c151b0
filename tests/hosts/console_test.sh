#!/bin/sh
# SPDX-License-Identifier: MIT
# Drives the console program from outside: sh console_test.sh PROGRAM SAMPLE CASE
# Each case is a function below. 77 means skipped, said on standard error.
set -u
pipward=$1
sample=$2
case_name=$3
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
cd "$work" || exit 1

fail() { echo "FAILED: $*" >&2; echo "--- stdout" >&2; head -c 2000 out >&2; echo "--- stderr" >&2; cat err >&2; exit 1; }

# run WANTED_EXIT WORDS ...: what the program says goes to the files out and err.
run() {
    wanted=$1
    shift
    "$pipward" "$@" >out 2>err
    code=$?
    [ "$code" = "$wanted" ] || fail "pipward $*: exit $code, not $wanted"
}
says() { grep -qF -- "$1" err || fail "standard error does not say: $1"; }
shows() { grep -qF -- "$1" out || fail "standard output does not show: $1"; }
silent() { [ ! -s out ] || fail "standard output is not empty"; }
calm() { [ ! -s err ] || fail "standard error is not empty"; }

need_sample() {
    [ -f "$sample" ] || { echo "skipped: the sample book is not there yet" >&2; exit 77; }
    cp "$sample" book.gpkg && chmod u+w book.gpkg
}
new_book() { run 0 book-new book.gpkg --crs EPSG:25832; }
sum_of() { cksum <"$1"; }

help_names_every_operation() {
    run 0 --list
    calm
    cut -c3- out | cut -d' ' -f1 >ids
    [ "$(wc -l <ids)" -ge 9 ] || fail "fewer operations than declared"
    run 0 --help
    calm
    while read -r id; do shows "$id"; done <ids
    shows "Exit codes"
}

every_operation_has_help() {
    "$pipward" --list | cut -c3- | cut -d' ' -f1 >ids
    while read -r id; do
        run 0 "$id" --help
        calm
        shows "Usage: pipward $id BOOK"
        shows "--format table|json|csv"
    done <ids
    run 0 season-plan --help
    shows "--as-of DAY"
    shows "Default: today."
}

version_is_told() { run 0 --version; calm; grep -Eq '^pipward [0-9]+\.[0-9]+\.[0-9]+$' out || fail "no version"; }

no_words_are_a_wrong_call() { run 2; silent; says "pipward OPERATION BOOK"; }

unknown_operation_offers_the_nearest() {
    run 2 saeson-plan book.gpkg
    silent
    says "There is no operation 'saeson-plan'. Did you mean season-plan?"
}

wrong_option_offers_the_nearest() {
    run 2 season-plan book.gpkg --as-off 2026-03-20
    silent
    says "season-plan has no option --as-off. Did you mean --as-of?"
}

wrong_values_are_told_all_at_once() {
    run 2 season-plan book.gpkg --as-of 2026-02-30 --risk 3 --keep perhaps --format yaml extra
    silent
    says "there is no day 2026-02-30"
    says "risk is 3, which is out of its range"
    says "keep: 'perhaps' is not yes or no"
    says "There is no format 'yaml'"
    says "'extra' is one word too many"
}

an_option_needs_its_value() {
    run 2 season-plan book.gpkg --station --quiet
    silent
    says "--station needs a value"
    run 2 season-plan book.gpkg --risk 0.1 --risk 0.2
    says "--risk is given twice"
}

a_missing_book_is_told() {
    run 3 book-check nowhere.gpkg
    silent
    says "nowhere.gpkg"
    run 2 book-check
    silent
    says "book is missing"
}

a_file_that_is_no_geopackage_is_told() {
    echo "this is a letter" >letter.gpkg
    before=$(sum_of letter.gpkg)
    run 3 season-plan letter.gpkg --as-of 2026-03-20
    silent
    says "letter.gpkg"
    [ "$before" = "$(sum_of letter.gpkg)" ] || fail "the file was changed"
}

an_empty_book_is_told_what_it_lacks() {
    new_book
    before=$(sum_of book.gpkg)
    for operation in book-check season-plan; do
        run 1 "$operation" book.gpkg --as-of 2026-03-20
        silent
        says "no trees"
        says "no weather station"
    done
    [ "$before" = "$(sum_of book.gpkg)" ] || fail "the book was changed"
}

a_book_is_never_made_over_another() {
    new_book
    before=$(sum_of book.gpkg)
    run 3 book-new book.gpkg --crs EPSG:25832
    silent
    says "book.gpkg"
    [ "$before" = "$(sum_of book.gpkg)" ] || fail "the book was changed"
}

an_unknown_coordinate_system_is_a_wrong_call() {
    run 2 book-new book.gpkg --crs EPSG:99999999
    silent
    [ ! -e book.gpkg ] || fail "a file was left behind"
    run 2 book-new book.gpkg
    says "crs is missing"
}

csv_of_several_tables_asks_which() {
    run 2 season-plan book.gpkg --format csv
    silent
    says "One CSV cannot hold several tables."
    run 2 season-plan book.gpkg --table pollen_tsk
    says "season-plan returns no table 'pollen_tsk'"
}

a_full_disk_on_standard_output_is_told() {
    [ -w /dev/full ] || { echo "skipped: this system has no /dev/full" >&2; exit 77; }
    "$pipward" --help >/dev/full 2>err
    code=$?
    : >out
    [ "$code" = 3 ] || fail "exit $code, not 3"
    says "Standard output takes no more."
}

an_unwritable_folder_is_told_before_any_work() {
    new_book
    : >file
    before=$(sum_of book.gpkg)
    run 3 book-check book.gpkg --as-of 2026-03-20 --out file/below
    silent
    says "file/below"
    [ "$before" = "$(sum_of book.gpkg)" ] || fail "the book was changed"
}

json_is_json_with_the_contracts_keys() {
    need_sample
    run 0 book-check book.gpkg --as-of 2026-03-20 --format json
    python3 - <<'PY' || fail "not the contract"
import json
outcome = json.load(open("out"))
assert list(outcome) == ["operation", "book", "as_of", "tables", "files", "findings"], list(outcome)
assert outcome["operation"] == "book-check" and outcome["as_of"] == "2026-03-20"
assert [c["name"] for c in outcome["tables"]["finding"]["columns"]][0] == "level"
PY
}

json_tells_why_there_is_no_result() {
    new_book
    run 1 season-plan book.gpkg --as-of 2026-03-20 --format json
    says "no trees"
    says "nothing was written"
    python3 - <<'PY' || fail "not the contract"
import json
outcome = json.load(open("out"))
assert list(outcome) == ["operation", "book", "as_of", "tables", "files", "findings"], list(outcome)
assert list(outcome["tables"])[0] == "pollen_task"
assert all(table["columns"] and not table["rows"] for table in outcome["tables"].values())
assert any("no trees" in finding["message"] for finding in outcome["findings"])
PY
    run 1 season-plan book.gpkg --as-of 2026-03-20 --format json --table bloom_window
    python3 -c 'import json; assert list(json.load(open("out"))["tables"]) == ["bloom_window"]' || fail "not that table"
    run 1 season-plan book.gpkg --as-of 2026-03-20 --format csv --table bloom_window
    silent
    says "no trees"
}

findings_are_told_once_and_the_weightiest_first() {
    need_sample
    run 0 book-check book.gpkg --as-of 2026-03-20
    shows "Season 2014 has only"
    ! grep -q "Season 2014 has only" err || fail "told twice"
    run 0 book-check book.gpkg --as-of 2026-03-20 --format json
    says "Season 2014 has only"
    sqlite3 book.gpkg "update bloom_observation set bbch = 66 where fid = 1"
    run 1 book-check book.gpkg --as-of 2026-03-20
    head -n 1 err | grep -q '^error: bloom_observation fid 1, bbch = 66' || fail "the error does not come first"
    run 1 book-check book.gpkg --as-of 2026-03-20 --quiet
    ! grep -q '^note: ' err || fail "notes although quiet"
}

people_read_plain_words_and_scripts_codes() {
    need_sample
    run 0 bloom-skill book.gpkg --as-of 2026-03-20 --keep no
    shows "chill then heat"
    ! grep -q chill_then_heat out || fail "a code before people's eyes"
    run 0 bloom-skill book.gpkg --as-of 2026-03-20 --keep no --format csv --table bloom_left_out
    shows "chill_then_heat"
}

today_stands_in_for_as_of() {
    need_sample
    run 0 book-check book.gpkg --format json
    shows "\"as_of\":\"$(date +%Y-%m-%d)\""
}

weather_of_an_unknown_station_is_refused() {
    new_book
    printf 'date,t_min,t_max\n2026-04-21,3.5,14.0\n' >days.csv
    before=$(sum_of book.gpkg)
    run 2 weather-import book.gpkg --file days.csv --station Home
    silent
    says "The book has no station 'Home'."
    run 2 weather-import book.gpkg
    says "file is missing"
    [ "$before" = "$(sum_of book.gpkg)" ] || fail "the book was changed"
}

weather_from_a_missing_file_is_told() {
    need_sample
    run 3 weather-import book.gpkg --file nowhere.csv
    silent
    says "nowhere.csv"
}

# Another writer holds the book; the interrupt comes while the program waits for its turn, and then it has it.
the_interrupt_key_stops_before_anything_is_written() {
    need_sample
    printf 'date,t_min,t_max\n2026-04-21,3.5,14.0\n' >days.csv
    before=$(sum_of book.gpkg)
    mkfifo words
    sqlite3 book.gpkg <words >/dev/null &
    writer=$!
    exec 3>words
    echo 'begin immediate; select 1;' >&3
    until ! sqlite3 book.gpkg 'begin immediate; rollback;' 2>/dev/null; do sleep 0.05; done
    "$pipward" weather-import book.gpkg --file days.csv --unit celsius --as-of 2026-04-22 --write >out 2>err 3>&- &
    process=$!
    tries=0
    until ls -l "/proc/$process/fd" 2>/dev/null | grep -q 'book\.gpkg'; do
        tries=$((tries + 1))
        [ "$tries" -lt 200 ] || fail "the program never opened the book"
        sleep 0.05
    done
    sleep 1
    kill -INT "$process"
    exec 3>&-
    wait "$writer"
    wait "$process"
    code=$?
    [ "$code" = 130 ] || fail "exit $code, not 130"
    silent
    says "Stopped as you asked."
    [ "$before" = "$(sum_of book.gpkg)" ] || fail "the book was changed"
}

# A pipe might never end: it is refused instead of waited for.
a_pipe_is_no_weather_file() {
    need_sample
    mkfifo days
    run 3 weather-import book.gpkg --file days --unit celsius
    silent
    says "a pipe or a device"
}

# SQLite opens a file whose header asks for a newer writing version for reading only, even for root.
read_only() { printf '\003' | dd of="$1" bs=1 seek=18 conv=notrunc 2>/dev/null; }

a_read_only_book_can_be_looked_at() {
    need_sample
    read_only book.gpkg
    before=$(sum_of book.gpkg)
    run 3 bloom-forecast book.gpkg --as-of 2026-03-20
    silent
    says "set keep to no"
    run 0 bloom-forecast book.gpkg --as-of 2026-03-20 --keep no
    shows "Bloom windows"
    [ "$before" = "$(sum_of book.gpkg)" ] || fail "the book was changed"
}

an_as_of_beyond_the_weather_is_told() {
    need_sample
    run 1 season-plan book.gpkg --as-of 2041-03-20
    silent
    says "no temperatures of the 2041 season"
    says "weather-import"
}

an_as_of_beyond_the_season_is_told() {
    need_sample
    run 1 season-plan book.gpkg --as-of 2026-08-01
    silent
    says "The 2026 season ended"
}

the_plan_writes_its_sheet_and_its_tables() {
    need_sample
    run 0 season-plan book.gpkg --as-of 2026-03-20 --out plan --format csv
    silent
    [ -s plan/season-sheet.html ] || fail "no sheet"
    for table in pollen_task field_task cross_outlook bloom_window bloom_left_out bloom_model; do
        [ -s "plan/$table.csv" ] || fail "no $table.csv"
        rows=$(sqlite3 book.gpkg "select count(*) from $table") || fail "the book has no $table"
        [ "$rows" -gt 0 ] || fail "$table is empty in the book"
    done
}

the_same_call_prints_the_same_bytes() {
    need_sample
    run 0 season-plan book.gpkg --as-of 2026-03-20 --format json --keep no --quiet
    mv out first
    run 0 season-plan book.gpkg --as-of 2026-03-20 --format json --keep no --quiet
    cmp first out || fail "two runs differ"
    run 0 season-plan book.gpkg --as-of 2026-03-20 --format json
    cmp first out || fail "the run that writes differs"
    comma=$(locale -a 2>/dev/null | grep -iE '^(de|fr|nl|it|es)_' | head -n 1)
    if [ -n "$comma" ]; then
        LC_ALL=$comma run 0 season-plan book.gpkg --as-of 2026-03-20 --format json --keep no
        cmp first out || fail "the locale $comma changes the result"
    fi
}

days_read_alike_in_sentences_and_in_columns() {
    need_sample
    run 0 season-plan book.gpkg --as-of 2026-03-20 --out made
    ! grep -E '[0-9]{4}-[0-9]{2}-[0-9]{2}' out || fail "a day as programs write it"
    says "Season 2026 as of Fri 20 Mar"
    sed 's/<[^>]*>//g; s/<!--.*-->//' made/season-sheet.html >plain
    ! grep -E '[0-9]{4}-[0-9]{2}-[0-9]{2}' plain || fail "a day as programs write it stands on the sheet"
    run 0 season-plan book.gpkg --as-of 2026-03-20 --keep no --format json
    says "Season 2026 as of 2026-03-20"
    python3 - <<'END' || fail "the book keeps days as people read them"
import sqlite3
texts = [row[0] for row in sqlite3.connect("book.gpkg").execute("select why from pollen_task")]
assert any("2026-0" in text for text in texts) and not any(" Apr" in text for text in texts), texts
END
}

# Read back with a library that is not ours; /usr/bin holds the Python that Debian's packages are for.
the_field_calendar_is_read_by_another_program() {
    need_sample
    [ -x /usr/bin/python3 ] && /usr/bin/python3 -c 'import icalendar' 2>/dev/null ||
        { echo "skipped: python3-icalendar is not installed" >&2; exit 77; }
    run 0 field-calendar book.gpkg --as-of 2026-03-20 --format json --out made
    /usr/bin/python3 "$here/read_calendar.py" made/field-calendar.ics out >told 2>err || fail "not the calendar"
}

the_sheets_are_read_by_another_program() {
    need_sample
    [ -x /usr/bin/python3 ] || { echo "skipped: python3 is not installed" >&2; exit 77; }
    run 0 work-sheet book.gpkg --as-of 2026-03-28 --days 21 --format json --out made
    /usr/bin/python3 "$here/read_work_sheet.py" made/work-sheet.html out work_sheet >told 2>err || fail "not the sheet"
    run 0 harvest-list book.gpkg --as-of 2025-09-28 --format json --out made
    /usr/bin/python3 "$here/read_work_sheet.py" made/harvest-list.html out harvest_list >told 2>err || fail "not the list"
}

a_note_is_answered_in_one_line_and_can_be_taken_back() {
    need_sample
    run 0 record-bloom book.gpkg --tree LO-04-07 --bbch 61 --as-of 2026-05-12
    silent
    [ "$(wc -l <err)" = 1 ] || fail "more than one line of answer"
    says "tree LO-04-07, observed on Tue 12 May, BBCH stage 61"
    says "record-undo reverts it."
    entry=$(grep -o "bloom_observation/[0-9]*" err)
    run 0 record-undo book.gpkg
    says "Undid $entry"
    run 0 record-undo book.gpkg
    says "no record to undo"
}

a_note_that_cannot_be_is_told_whole_and_not_written() {
    need_sample
    before=$(sum_of book.gpkg)
    run 1 record-pollination book.gpkg --tag 25-03-b --cross 26-4 --tree LO-05-8 --flowers 30 --as-of 2026-05-10
    silent
    says "tag = 25-03-b: The tag hangs at LO-05-08 for cross 25-03"
    says "The nearest are: 26-04"
    says "The nearest are: LO-05-08"
    [ "$before" = "$(sum_of book.gpkg)" ] || fail "the book was changed"
    run 2 record-bloom book.gpkg --tree LO-04-07 --bbch 66
    says "Did you mean '65'?"
}

quiet_says_nothing_more_than_warnings() {
    need_sample
    run 0 bloom-forecast book.gpkg --as-of 2026-03-20 --keep no --quiet
    ! grep -vq '^warning: ' err || fail "more than warnings on standard error"
    run 0 bloom-forecast book.gpkg --as-of 2026-03-20 --keep no
    says "Season 2026 as of Fri 20 Mar"
}

"$case_name"
