#!/usr/bin/env python3
"""Times of the command line as a user meets it, start of the process included.

  tests/bench/process.py build/app/whittaw [--runs 40] [--recipe bulletin-1334]

1. `whittaw card` on a day of three hides against GNU units on one conversion (`units '1 lb' g`),
   run in turns, medians: how many times as long a card takes.
2. `whittaw batch` on days of 100, 1000, 10 000 and 100 000 hides: milliseconds, and microseconds a
   hide above what an all but empty day takes; level figures mean that time grows in proportion.

Prints one line a figure. Exits with 1 if a command fails; times decide nothing.
"""

import argparse
import os
import shutil
import statistics
import subprocess
import sys
import tempfile
import time


def write_day(path, recipe, hides):
    with open(path, "w", encoding="utf-8") as day:
        day.write(f'date = 2026-11-07\nrecipe = "{recipe}"\n')
        for number in range(1, hides + 1):
            day.write(
                f'\n[[hide]]\ntag = "G{number}"\nspecies = "goat"\nlive_weight = "31 kg"\n'
            )


def seconds(command):
    """Wall time of one run. A check that says stop (exit status 1) is an answer, too."""
    start = time.perf_counter()
    done = subprocess.run(
        command, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE
    )
    spent = time.perf_counter() - start
    if done.returncode not in (0, 1):
        sys.exit(
            f"{' '.join(command)}: exit status {done.returncode}\n"
            + done.stderr.decode(errors="replace")
        )
    return spent


def in_turns(commands, runs):
    """Sorted times of each command. The order turns round each time, so that neither always
    follows the other."""
    times = [[] for _ in commands]
    for command in commands:
        seconds(command)  # files into the cache
    for run in range(runs):
        order = range(len(commands)) if run % 2 == 0 else reversed(range(len(commands)))
        for i in order:
            times[i].append(seconds(commands[i]))
    return [sorted(each) for each in times]


def main():
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    parser.add_argument("whittaw", help="the program")
    parser.add_argument("--runs", type=int, default=40, help="runs of each (30 or more)")
    parser.add_argument("--recipe", default="bulletin-1334")
    arguments = parser.parse_args()
    program = os.path.abspath(arguments.whittaw)
    if not os.access(program, os.X_OK):
        parser.error(f"no program at {arguments.whittaw}")

    with tempfile.TemporaryDirectory() as folder:

        def day(hides):
            path = os.path.join(folder, f"day-{hides}.toml")
            write_day(path, arguments.recipe, hides)
            return path

        card = [program, "card", day(3)]
        if shutil.which("units"):
            ours, theirs = in_turns([card, ["units", "1 lb", "g"]], arguments.runs)
            print(
                f"card {statistics.median(ours) * 1e3:.2f} ms, "
                f"units {statistics.median(theirs) * 1e3:.2f} ms "
                f"(medians of {arguments.runs}; least {ours[0] * 1e3:.2f} and "
                f"{theirs[0] * 1e3:.2f})"
            )
            print(f"ratio card/units {statistics.median(ours) / statistics.median(theirs):.2f}")
        else:
            print("GNU units is not installed: no ratio", file=sys.stderr)

        base = statistics.median(in_turns([[program, "batch", day(1)]], arguments.runs)[0])
        print(f"batch 1 hide {base * 1e3:.2f} ms")
        per_hide = []
        for hides in (100, 1000, 10_000, 100_000):
            runs = max(3, min(arguments.runs, 300_000 // hides))
            spent = statistics.median(in_turns([[program, "batch", day(hides)]], runs)[0])
            per_hide.append((spent - base) / hides)
            print(
                f"batch {hides} hides {spent * 1e3:.2f} ms, "
                f"{per_hide[-1] * 1e6:.2f} us a hide (median of {runs})"
            )
        print(f"growth 100000/1000 hides, time a hide: {per_hide[3] / per_hide[1]:.2f}")


if __name__ == "__main__":
    main()
