#!/usr/bin/env python3
"""A clock that goes backwards, and a date in the future written by hand: kept, in order, and said."""
import datetime
import re
import shutil
import sys

from support import PROGRAM, Checks, entries, fresh_folder, must, run

work = fresh_folder()
checks = Checks()


def check(book, times):
    found = entries(book.read_bytes())
    checks.that([entry[0] for entry in found] == list(range(1, len(times) + 1)), "numbers")
    # A clock runs on: what is wanted of a time is its minute, or its day.
    checks.that(all(entry[1].startswith(time) for entry, time in zip(found, times)),
                f"times {[entry[1] for entry in found]}")
    checks.that([entry[3]["note"] for entry in found] == [str(i) for i in range(len(times))],
                "order")
    checks.that([entry[1] for entry in found] == sorted(entry[1] for entry in found),
                "times fall")
    status, history, messages = run(book, "history")
    checks.that(status == 0 and not messages, f"history: exit {status}: {messages}")
    checks.that([line.split()[0] for line in history.splitlines()] ==
                [str(i + 1) for i in range(len(times))], history)


def written(book, time):
    """Writes another time by hand into the last entry."""
    head, last = book.read_text().rsplit("\nat = ", 1)
    book.write_text(head + "\nat = " + time + last[len(time):])


def by_hand():
    # A year too late: time stands still until then.
    year = datetime.datetime.now(datetime.timezone.utc).year
    late = f"{year + 1}-11-20T18:04:00Z"
    book = work / "future.toml"
    must(book, "note", "--note", "0")
    written(book, late)
    for i in range(1, 4):
        status, _, said = run(book, "note", "--note", str(i))
        checks.that(status == 0 and "clock" in said, f"future date: exit {status}, said {said!r}")
    check(book, [late] * 4)

    # A mistyped year in an earlier entry: what follows it keeps rising.
    book = work / "past.toml"
    must(book, "note", "--note", "0")
    written(book, "2006-11-20T18:04:00Z")
    must(book, "note", "--note", "1")
    check(book, ["2006-11-20T18:04:00Z", f"{year}"])

    # No calendar has it: such an entry is damaged, and its time does not rule those that follow.
    for time in (f"{year + 1}-13-45T18:04:00Z", f"{year + 1}-02-30T18:04:00Z",
                 f"{year + 1}-11-20T25:04:00Z", f"{year + 1}-11-20T18:61:00Z"):
        book = work / (re.sub(r"\D", "", time) + ".toml")
        must(book, "note", "--note", "0")
        must(book, "note", "--note", "1")
        written(book, time)
        status, _, said = run(book, "list")
        checks.that("damaged" in said, f"{time}: exit {status}, said {said!r}")
        status, _, said = run(book, "note", "--note", "2")
        checks.that(status == 0 and f"\nat = {year}" in book.read_text().split("[[entry]]")[-1],
                    f"{time} rules what follows")


def by_clock(faketime):
    def at(time, book, note):
        status, _, said = run(book, "note", "--note", note, before=[faketime, "-f", "@" + time])
        checks.that(status == 0, f"{note}: exit {status}: {said}")
        return said

    book = work / "book.toml"
    said = at("2026-11-20 18:04:00", book, "0")
    checks.that(not said, f"said {said!r}")
    said = at("2026-11-19 18:04:00", book, "1")
    checks.that("clock" in said and "2026-11-19" in said, f"a day back: said {said!r}")
    said = at("1970-01-01 00:00:30", book, "2")
    checks.that("clock" in said and "1970-01-01" in said, f"an empty clock battery: said {said!r}")
    said = at("2026-11-20 18:07:00", book, "3")
    checks.that(not said, f"the clock is right again: said {said!r}")
    check(book, ["2026-11-20T18:04"] * 3 + ["2026-11-20T18:07"])


by_hand()
if b"__asan_init" in PROGRAM.read_bytes():
    print("by hand only: a faked clock and a sanitizer's runtime do not go together")
else:
    program = shutil.which("faketime")
    if program is None:
        sys.exit("the program faketime is missing: install Debian's package faketime")
    by_clock(program)
checks.done()
