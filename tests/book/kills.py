#!/usr/bin/env python3
"""Kills writers at random instants of their life, alone and two at a time, and reads the book.

An attempt that exited 0 stands exactly once, a killed one at most once; numbers rise by one; what
stood before stands byte for byte; jars hold what the standing entries come to; and files that were
moved aside hold only text that was unfinished.
"""
import json
import os
import random
import signal
import statistics
import subprocess
import sys
import threading
import time

from support import ENVIRONMENT, Checks, command, entries, fresh_folder, must

WANTED = 1000  # kills that found the writer alive
LONGEST = 120.0  # seconds, on a slow build
TAIL = (b'[[entry]]\nnumber = 9999\nat = 2026-11-08T09:00:00Z\ndeed = "noted"\n'
        b'note = "written while the lamp went out"\nend = 9999\n\n')

work = fresh_folder()
checks = Checks()
random.seed(20261107)
begun = time.monotonic()
counts = {"killed": 0, "killed and standing": 0, "exited 0": 0, "moved aside": 0}
rounds = 0


def words_of(name, deed):
    if deed == "note":
        return "note", "--note", name
    if deed == "use":
        return "use", "--jar", "A", "--mass", "1 g", "--note", name
    return "save", "--jar", "A", "--mass", "1 g", "--day", work / "day.toml", "--note", name


def attempt(book, name, longest):
    """Starts a writer and kills it after a while; gives its exit status."""
    process = subprocess.Popen(command(book, *words_of(name, random.choice(("note", "use", "save")))),
                               stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, env=ENVIRONMENT)
    ends = time.perf_counter() + random.uniform(0.0, longest)
    while time.perf_counter() < ends:
        time.sleep(0.0001)
    process.send_signal(signal.SIGKILL)
    process.communicate()
    return process.returncode


def life(book):
    """A writer's usual life in seconds, and at least that of a quick build."""
    times = []
    for i in range(5):
        start = time.perf_counter()
        must(book, *words_of(f"life-{i}", ("note", "use", "save")[i % 3]))
        times.append(time.perf_counter() - start)
    return max(0.004, statistics.median(times))


def check_book(book, before, results):
    """Reads the book with the rules above; `results` is attempt -> exit status."""
    text = book.read_bytes()
    checks.that(text.startswith(before), f"{book.name}: earlier entries changed")
    try:
        found = entries(text)
    except ValueError as wrong:
        checks.that(False, f"{book.name}: {wrong}")
        return
    checks.that([entry[0] for entry in found] == list(range(1, len(found) + 1)),
                f"{book.name}: numbers {[entry[0] for entry in found]}")
    notes = [entry[3].get("note") for entry in found]
    for name, status in results.items():
        stands = notes.count(name)
        if status == 0:
            counts["exited 0"] += 1
            checks.that(stands == 1, f"{name} exited 0 and stands {stands} times")
        else:
            checks.that(status == -signal.SIGKILL, f"{name}: exit {status}")
            counts["killed"] += 1
            counts["killed and standing"] += stands
            checks.that(stands <= 1, f"{name} was killed and stands {stands} times")
    grams = sum(float(keys["mass"].split()[0]) * {"saved": 1, "used": -1}[deed]
                for _, _, deed, keys in found if "mass" in keys)
    listed = json.loads(must(book, "list", "--json"))
    checks.that(listed["complete"] and listed["last_entry"] == len(found), f"{book.name}: {listed}")
    checks.that(abs(listed["jars"][0]["mass_g"] - grams) < 0.01,
                f"{book.name}: jar holds {listed['jars'][0]['mass_g']} g and not {grams} g")
    for aside in work.glob(book.name + ".unfinished-*"):
        counts["moved aside"] += 1
        content = aside.read_bytes()
        checks.that(TAIL.startswith(content) and len(content) < len(TAIL) - 1,
                    f"{aside.name} holds {content!r}")
        aside.unlink()


def prepared_book():
    global rounds
    rounds += 1
    book = work / f"book-{rounds}.toml"
    must(book, "save", "--jar", "A", "--mass", "900 g", "--day", work / "day.toml")
    return book


while counts["killed"] < WANTED and time.monotonic() - begun < LONGEST:
    # One writer at a time; before some, an unfinished entry as a power cut leaves it.
    book = prepared_book()
    longest = 1.1 * life(book)
    results = {}
    for i in range(40):
        text = book.read_bytes()
        before = text
        unfinished = next((length for length in range(len(TAIL) - 2, 0, -1)
                           if text.endswith(b"\n\n" + TAIL[:length])), 0)
        if unfinished > 0:
            before = text[:-unfinished]
        elif i % 4 == 0:
            with book.open("ab") as file:
                file.write(TAIL[:random.randint(1, len(TAIL) - 2)])
        name = f"attempt-{rounds}-{i}"
        results[name] = attempt(book, name, longest)
        checks.that(book.read_bytes().startswith(before), f"{name}: earlier entries changed")
    must_end = subprocess.run(command(book, "note", "--note", "the last one"), check=False,
                              capture_output=True, env=ENVIRONMENT)
    checks.that(must_end.returncode == 0, f"{book.name}: {must_end.stderr}")
    check_book(book, before, results)

    # Two writers at once.
    book = prepared_book()
    life(book)
    before = book.read_bytes()
    results = {}

    def several(writer):
        for i in range(20):
            name = f"attempt-{rounds}-{writer}-{i}"
            results[name] = attempt(book, name, 1.5 * longest)

    writers = [threading.Thread(target=several, args=(writer,)) for writer in range(2)]
    for writer in writers:
        writer.start()
    for writer in writers:
        writer.join()
    check_book(book, before, results)

for name, count in counts.items():
    print(f"{name}: {count}")
print(f"{rounds} books, {time.monotonic() - begun:.1f} s")
checks.that(counts["killed"] >= WANTED, "too few kills")
checks.that(counts["exited 0"] > 0, "no writer lived")
checks.done()
