# SPDX-License-Identifier: MIT
# The console in a real pseudo-terminal: python3 screen_test.py PROGRAM SAMPLE
# Every operation's examples that need no file of their own, at 80, 110 and 160 columns by turns: no line is
# wider than the terminal, bold letters come only there and never with NO_COLOR (no-color.org, an informal
# standard) or a dumb terminal, and a pipe gets neither.
import fcntl
import json
import os
import pty
import re
import shutil
import struct
import subprocess
import sys
import tempfile
import termios
import unicodedata

program, sample = sys.argv[1:3]
widths = (80, 110, 160)
escape = re.compile(r"\x1b\[[0-9;?]*[A-Za-z]")


def environment(**more):
    kept = {name: value for name, value in os.environ.items() if name not in ("COLUMNS", "NO_COLOR")}
    return {**kept, "TERM": "xterm", **more}


def on_terminal(words, width, **more):
    """What the terminal gets of both outputs together, with line ends as the program wrote them."""
    master, slave = pty.openpty()
    fcntl.ioctl(slave, termios.TIOCSWINSZ, struct.pack("HHHH", 40, width, 0, 0))
    process = subprocess.Popen([program, *words], stdin=slave, stdout=slave, stderr=slave, env=environment(**more))
    os.close(slave)
    chunks = []
    while True:
        try:
            chunk = os.read(master, 65536)
        except OSError:  # the last writer is gone
            break
        if not chunk:
            break
        chunks.append(chunk)
    os.close(master)
    assert process.wait() == 0, (words, b"".join(chunks)[-2000:])
    return b"".join(chunks).decode().replace("\r\n", "\n")


def columns(text):
    wide = sum(unicodedata.east_asian_width(c) in "WF" for c in text)
    return len(text) + wide - sum(unicodedata.category(c) in ("Mn", "Me", "Cf") for c in text)


def check_width(text, width, words):
    for line in text.split("\n"):
        for part in escape.sub("", line).split("\r"):  # the progress bar is drawn over itself
            assert columns(part) <= width, (words, width, columns(part), part)


def books(folder):
    book = os.path.join(folder, "book.gpkg")
    shutil.copy(sample, book)
    os.chmod(book, 0o644)
    return {"BOOK": book, "NEW": os.path.join(folder, "new.gpkg")}


def words_of(operation, example, places):
    words = [operation["id"]]
    for key, value in example["values"].items():
        words += [f"--{key}", places.get(value, value)] if key != "book" else []
    return words + [places[example["values"]["book"]]]


def calls():
    for operation in json.loads(subprocess.check_output([program, "--catalogue"])):
        for example in operation["examples"]:
            if "FILE" not in example["values"].values():
                yield operation, example


assert os.path.exists(sample), "the sample book is not there"
tried = 0
for turn, (operation, example) in enumerate(calls()):
    with tempfile.TemporaryDirectory() as folder:
        words = words_of(operation, example, books(folder))
        width = widths[turn % len(widths)]
        check_width(on_terminal(words, width), width, words)
        tried += 1
assert tried > 40, tried

with tempfile.TemporaryDirectory() as folder:
    place = books(folder)["BOOK"]
    plan = next(operation for operation, _ in calls() if len(operation["results"]) > 4)
    words = [plan["id"], place, "--as-of", "2026-03-20", "--keep", "no"]
    for width in widths:
        text = on_terminal(words, width)
        check_width(text, width, words)
        assert "\x1b[1m" in text, "no bold title on a terminal"
    assert "\x1b[1m" in on_terminal(words, 80, NO_COLOR=""), "an empty NO_COLOR asks for nothing"
    quiet = [*words, "--quiet"]  # without the progress bar, which is drawn with escapes by its nature
    for more in ({"NO_COLOR": "1"}, {"TERM": "dumb"}):
        assert "\x1b" not in on_terminal(quiet, 80, **more), more
    piped = subprocess.run([program, *words], capture_output=True, check=True, env=environment())
    assert b"\x1b" not in piped.stdout + piped.stderr, "an escape in a pipe"
    check_width(piped.stdout.decode(), 100, words)
    narrow = subprocess.run([program, *words], capture_output=True, check=True, env=environment(COLUMNS="72"))
    check_width(narrow.stdout.decode(), 72, words)
    for operation, _ in calls():
        check_width(on_terminal([operation["id"], "--help"], 80), 80, operation["id"])
