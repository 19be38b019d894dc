#!/usr/bin/env python3
"""Eight writers at once, thirty entries each: all are there, numbered 1 to 240, each once."""
import threading

from support import Checks, entries, fresh_folder, run

WRITERS, EACH = 8, 30
work = fresh_folder()
book = work / "book.toml"
checks = Checks()


def write(writer):
    for i in range(EACH):
        status, out, messages = run(book, "note", "--note", f"writer {writer} entry {i}")
        checks.that(status == 0 and not messages, f"exit {status}: {out}{messages}")


threads = [threading.Thread(target=write, args=(writer,)) for writer in range(WRITERS)]
for thread in threads:
    thread.start()
for thread in threads:
    thread.join()

found = entries(book.read_bytes())
checks.that([entry[0] for entry in found] == list(range(1, WRITERS * EACH + 1)), "numbers")
checks.that(sorted(entry[3]["note"] for entry in found) ==
            sorted(f"writer {w} entry {i}" for w in range(WRITERS) for i in range(EACH)), "notes")
for writer in range(WRITERS):
    own = [entry[3]["note"] for entry in found if entry[3]["note"].startswith(f"writer {writer} ")]
    checks.that(own == [f"writer {writer} entry {i}" for i in range(EACH)],
                f"the entries of writer {writer} are out of order")
checks.that(len(list(work.glob("*.unfinished-*"))) == 0, "something was moved aside")
print(f"{len(found)} entries")
checks.done()
