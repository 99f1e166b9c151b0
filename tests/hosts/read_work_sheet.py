#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Reads a work sheet with a parser of HTML that is not ours: read_work_sheet.py SHEET.html OUTCOME.json TABLE

Every row of the outcome's table must stand on the sheet with a box to tick, trees in the order of the walk."""
import json
import sys
from html.parser import HTMLParser

EMPTY = {"meta", "input", "br", "link", "img", "hr"}


def expect(condition, words):
    if not condition:
        sys.exit("FAILED: " + words)


class Sheet(HTMLParser):
    def __init__(self):
        super().__init__()
        self.open, self.boxes, self.addresses, self.text = [], 0, [], []
        self.in_address = False

    def handle_starttag(self, tag, attributes):
        attributes = dict(attributes)
        self.boxes += tag == "input" and attributes.get("type") == "checkbox"
        if tag not in EMPTY:
            self.open.append(tag)
        if attributes.get("class") == "address":
            self.in_address = True
            self.addresses.append("")

    def handle_endtag(self, tag):
        expect(self.open and self.open[-1] == tag, "</%s> closes %s" % (tag, self.open[-1:]))
        self.open.pop()
        self.in_address = self.in_address and tag != "span"

    def handle_data(self, data):
        self.text.append(data)
        if self.in_address:
            self.addresses[-1] += data


def main(sheet_path, outcome_path, name):
    sheet = Sheet()
    with open(sheet_path, encoding="utf-8") as file:
        sheet.feed(file.read())
    expect(sheet.open == [], "tags are left open: %s" % sheet.open)
    with open(outcome_path, encoding="utf-8") as file:
        table = json.load(file)["tables"][name]
    names = [column["name"] for column in table["columns"]]
    rows = [dict(zip(names, row)) for row in table["rows"] if dict(zip(names, row))["order"] is not None]
    expect(rows, "the table is empty")
    expect(sheet.boxes == len(rows), "%d boxes for %d rows" % (sheet.boxes, len(rows)))
    expect(sheet.addresses == [row["tree"] for row in rows if row["tree"]], "the trees stand in another order")
    words = " ".join(" ".join(sheet.text).split())
    for row in rows:
        for key in ("what", "tags", "tag", "address"):
            expect(not row.get(key) or row[key] in words, "the sheet does not hold %s" % row.get(key))
    expect("Caution" in words, "the sheet has no cautions")
    print("%d pieces of work" % len(rows))


if __name__ == "__main__":
    main(*sys.argv[1:])
