"""What the tests of the powder book share: running the program, and reading the book without it.

Each script: SCRIPT PROGRAM WORK
"""
import os
import pathlib
import re
import shutil
import subprocess
import sys

PROGRAM = pathlib.Path(sys.argv[1]).resolve()
WORK = pathlib.Path(sys.argv[2]).resolve()
# With a sanitizer: freed memory is given back soon, so that peaks can be compared.
ENVIRONMENT = dict(os.environ, ASAN_OPTIONS="detect_leaks=0:quarantine_size_mb=4", TZ="UTC")

# Sixty goats: enough that a small mass can be saved from them many hundred times.
DAY = 'date = 2026-11-07\nrecipe = "bulletin-1334"\n' + "".join(
    f'[[hide]]\ntag = "G{i}"\nspecies = "goat"\nlive_weight = "41 kg"\n' for i in range(60))

ENTRY = re.compile(
    rb'\[\[entry\]\]\nnumber = (\d+)\nat = (\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ)\n'
    rb'deed = "([a-z ]+)"\n((?:[a-z]+ = [^\n]*\n)*?)end = (\d+)\n\n')


def fresh_folder():
    """The work folder, empty, with a day in it."""
    shutil.rmtree(WORK, ignore_errors=True)
    WORK.mkdir(parents=True)
    (WORK / "day.toml").write_text(DAY)
    return WORK


def command(book, *words):
    return [PROGRAM, "powder", *words, "--book", book]


def run(book, *words, before=(), **more):
    """Runs a verb; gives exit status, output and messages."""
    done = subprocess.run([*before, *command(book, *words)], capture_output=True, text=True,
                          check=False, env=ENVIRONMENT, timeout=120, **more)
    return done.returncode, done.stdout, done.stderr


def must(book, *words, **more):
    """Runs a verb that must succeed without a word on standard error; gives its output."""
    status, out, messages = run(book, *words, **more)
    if status != 0 or messages:
        sys.exit(f"{words}: exit {status}: {messages}")
    return out


def entries(text):
    """The book's entries as (number, time, deed, keys), strictly as the program writes them."""
    found = []
    at = 0
    while at < len(text):
        match = ENTRY.match(text, at)
        if match is None or match[1] != match[5]:
            raise ValueError(f"no sound entry at byte {at}: {text[at:at + 200]!r}")
        keys = dict(line.split(b" = ", 1) for line in match[4].splitlines())
        found.append((int(match[1]), match[2].decode(), match[3].decode(),
                      {key.decode(): value.strip(b'"').decode() for key, value in keys.items()}))
        at = match.end()
    return found


class Checks:
    """Counts what was wrong, says each kind a few times, and ends the script."""

    def __init__(self):
        self.bad = 0

    def that(self, sound, words):
        if not sound:
            self.bad += 1
            if self.bad <= 10:
                print("WRONG:", words)
        return sound

    def done(self):
        print(f"{self.bad} wrong")
        sys.exit(1 if self.bad else 0)
