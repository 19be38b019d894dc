#!/usr/bin/env python3
"""Books of ten thousand and a hundred thousand entries: memory does not grow with the book.

Times are printed, and nothing is asked of them.
"""
import json
import os
import subprocess
import sys
import time

from support import ENVIRONMENT, Checks, command, entries, fresh_folder, must

work = fresh_folder()
checks = Checks()

# One entry of each common kind, as the program itself writes them.
sample = work / "sample.toml"
must(sample, "save", "--jar", "A", "--mass", "12.5 g", "--day", work / "day.toml", "--hides", "G1")
must(sample, "use", "--jar", "A", "--mass", "11 g", "--note", "on the flanks")
must(sample, "note", "--note", "a dry week")
must(sample, "top-up", "--jar", "A", "--kind", "salt", "--mass", "0.5 g")
kinds = [block for block in sample.read_text().split("[[entry]]\n") if block]


def build(length):
    book = work / f"book-{length}.toml"
    with book.open("w") as file:
        for i in range(length):
            block = kinds[i % len(kinds)]
            old = i % len(kinds) + 1
            block = block.replace(f"number = {old}\n", f"number = {i + 1}\n")
            jar = i // len(kinds) % 20
            block = block.replace('"A"', f'"{jar}"').replace(f"end = {old}\n", f"end = {i + 1}\n")
            file.write("[[entry]]\n" + block)
    return book


def measure(book, *words):
    """Seconds and peak memory in bytes of one run that must succeed."""
    with (work / "output").open("w") as output:
        start = time.perf_counter()
        process = subprocess.Popen(command(book, *words), stdout=output, stderr=subprocess.PIPE,
                                   env=ENVIRONMENT)
        messages = process.stderr.read()
        _, status, usage = os.wait4(process.pid, 0)
        seconds = time.perf_counter() - start
    process.returncode = os.waitstatus_to_exitcode(status)
    if status != 0 or messages:
        sys.exit(f"{words}: exit {process.returncode}: {messages}")
    return seconds, usage.ru_maxrss * 1024


peaks = {}
for length in (10, 10_000, 100_000):
    book = build(length)
    seconds, peaks[length] = measure(book, "list", "--json")
    listed = json.loads((work / "output").read_text())
    checks.that(listed["complete"] and listed["last_entry"] == length, f"{length}: not complete")
    size = book.stat().st_size
    print(f"list, {length} entries ({size / 1e6:.1f} MB): {seconds:.3f} s, "
          f"peak {peaks[length] / 1e6:.1f} MB")
    seconds, peak = measure(book, "note", "--note", "one more")
    print(f"note, after {length} entries: {seconds:.3f} s, peak {peak / 1e6:.1f} MB")
    with book.open("rb") as file:
        file.seek(size)
        checks.that([entry[0] for entry in entries(file.read())] == [length + 1],
                    f"the entry after {length}")
    book.unlink()
checks.that(peaks[100_000] - peaks[10_000] < 20e6,
            f"memory grows by {(peaks[100_000] - peaks[10_000]) / 1e6:.1f} MB")
checks.done()
