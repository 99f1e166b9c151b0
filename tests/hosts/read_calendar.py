#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Reads a field calendar with a library that is not ours: read_calendar.py CALENDAR.ics OUTCOME.json

The calendar's days and titles must be those of the outcome's table field_calendar."""
import datetime
import json
import sys

from icalendar import Calendar


def fail(words):
    sys.exit("FAILED: " + words)


def expect(condition, words):
    if not condition:
        fail(words)


def check_bytes(content):
    """RFC 5545, 3.1: lines end in CR LF and have at most 75 octets without it."""
    lines = content.split(b"\r\n")
    expect(lines[-1] == b"", "the last line has no end")
    for number, line in enumerate(lines, 1):
        expect(b"\n" not in line and b"\r" not in line, "line %d has a line end of another kind" % number)
        expect(len(line) <= 75, "line %d has %d octets" % (number, len(line)))
        line.decode("utf-8")  # never folded inside of a character


def check_event(event):
    title = str(event["SUMMARY"])
    for name in ("DTSTART", "DTEND"):
        expect(event[name].params.get("VALUE") == "DATE", title + ": " + name + " is no whole day")
        expect(type(event[name].dt) is datetime.date, title + ": " + name + " has a time")
    expect(event["DTEND"].dt > event["DTSTART"].dt, title + ": DTEND is not after DTSTART")
    expect(int(event["SEQUENCE"]) > 0, title + ": no SEQUENCE")
    expect("DTSTAMP" in event, title + ": no DTSTAMP")
    alarms = [part for part in event.walk("VALARM")]
    expect(len(alarms) == 1, title + ": %d alarms" % len(alarms))
    expect(alarms[0]["TRIGGER"].dt == datetime.timedelta(hours=6), title + ": the alarm is not at six")
    expect(str(alarms[0]["ACTION"]) == "DISPLAY", title + ": the alarm shows nothing")


def rows_of(outcome):
    table = outcome["tables"]["field_calendar"]
    names = [column["name"] for column in table["columns"]]
    rows = [dict(zip(names, row)) for row in table["rows"]]
    return sorted((row["do_from"], row["do_to"], row["what"]) for row in rows)


def main(calendar_path, outcome_path):
    with open(calendar_path, "rb") as file:
        content = file.read()
    check_bytes(content)
    calendar = Calendar.from_ical(content)
    expect(calendar.errors == [], "the calendar has errors: %s" % calendar.errors)
    events = list(calendar.walk("VEVENT"))
    expect(events, "the calendar is empty")
    for event in events:
        expect(event.errors == [], "an event has errors: %s" % event.errors)
        check_event(event)
    uids = [str(event["UID"]) for event in events]
    expect(len(set(uids)) == len(uids), "two events have one UID")
    one_day = datetime.timedelta(days=1)
    days = sorted((event["DTSTART"].dt.isoformat(), (event["DTEND"].dt - one_day).isoformat(),
                   str(event["SUMMARY"])) for event in events)
    with open(outcome_path, encoding="utf-8") as file:
        expect(days == rows_of(json.load(file)), "the days are not those of the table")
    print("%d events" % len(events))


if __name__ == "__main__":
    main(*sys.argv[1:])
