#!/usr/bin/env python3
"""A disk that fills up, and a limit on file size: exit 74, the book as it was, and room again."""
import os
import resource
import subprocess

from support import Checks, entries, fresh_folder, must, run

work = fresh_folder()
checks = Checks()
TAIL = b'[[entry]]\nnumber = 99\nat = 2026-11-08T09:00:00Z\ndeed = "not'


def refused(case, book, before, *words, **more):
    status, _, messages = run(book, *words, **more)
    checks.that(status == 74, f"{case}: exit {status}: {messages}")
    checks.that(book.read_bytes() == before, f"{case}: the book is not as it was")
    checks.that(not list(book.parent.glob("*.unfinished-*")), f"{case}: a file was left beside it")
    return messages


def goes_in(case, book, before, note):
    status, _, messages = run(book, "note", "--note", note)
    text = book.read_bytes()
    checks.that(status == 0, f"{case}: exit {status}: {messages}")
    checks.that(text.startswith(before), f"{case}: earlier entries changed")
    found = entries(text)
    checks.that([entry[0] for entry in found] == list(range(1, len(found) + 1)), f"{case}: numbers")
    checks.that(found[-1][3]["note"] == note, f"{case}: the entry is not there")


def size_limits():
    """Every limit from the book's size to one byte short of the new entry's end."""
    book = work / "limited.toml"
    for i in range(3):
        must(book, "note", "--note", f"entry {i}")
    before = book.read_bytes()
    must(book, "note", "--note", "the new one")
    after = book.read_bytes()
    for limit in range(len(before), len(after)):
        book.write_bytes(before)
        refused(f"limit {limit - len(before)}", book, before, "note", "--note", "the new one",
                preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (limit, limit)))
    goes_in("limit lifted", book, before, "the new one")
    book.write_bytes(before)
    status, _, _ = run(book, "note", "--note", "the new one", preexec_fn=lambda: resource.setrlimit(
        resource.RLIMIT_FSIZE, (len(after), len(after))))
    checks.that(status == 0, "the entry just fits, and was refused")
    # With an unfinished entry, and no room for the copy of it.
    book.write_bytes(before + TAIL)
    refused("limit and an unfinished entry", book, before + TAIL, "note", "--note", "the new one",
            preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (20, 20)))
    # With room for the copy, and none for the entry: only the unfinished one is gone, into its copy.
    status, _, _ = run(book, "note", "--note", "the new one", preexec_fn=lambda: resource.setrlimit(
        resource.RLIMIT_FSIZE, (len(before) + 9, len(before) + 9)))
    asides = [path.read_bytes() for path in work.glob("*.unfinished-*")]
    checks.that(status == 74, f"room for the copy only: exit {status}")
    checks.that((book.read_bytes(), asides) in ((before, [TAIL]), (before + TAIL, [])),
                "room for the copy only: an entry or the unfinished one is lost")
    print(f"{len(after) - len(before)} limits on file size")


def tiny_disk(disk):
    def fill():
        filler = os.open(disk / "filler", os.O_WRONLY | os.O_CREAT | os.O_APPEND)
        try:
            while os.write(filler, b"x" * 1024) > 0:
                pass
        except OSError:
            pass
        finally:
            os.close(filler)

    splits = set()
    for length in range(20, 140, 5):
        for path in disk.iterdir():
            path.unlink()
        book = disk / "book.toml"
        must(book, "note", "--note", "the first")
        fill()
        # The book's own page has room for some entries; then one goes over its edge.
        for i in range(100):
            before = book.read_bytes()
            note = f"{i} ".ljust(length, "o")
            status, _, messages = run(book, "note", "--note", note)
            if status != 0:
                break
        checks.that(status == 74 and "No space" in messages, f"exit {status}: {messages}")
        checks.that(book.read_bytes() == before, f"length {length}: the book is not as it was")
        splits.add(4096 - len(before))
        refused(f"length {length}, again", book, before, "note", "--note", note)
        (disk / "filler").unlink()
        goes_in(f"length {length}, room again", book, before, note)
    # An unfinished entry and no room for its copy.
    before = book.read_bytes() + TAIL
    book.write_bytes(before)
    fill()
    refused("full disk and an unfinished entry", book, before, "note", "--note", "next")
    (disk / "filler").unlink()
    goes_in("room again for the copy", book, before[:-len(TAIL)], "next")
    print(f"full disk: the entry went over the edge after {len(splits)} different numbers of bytes")


size_limits()
disk = work / "disk"
disk.mkdir()
mount = subprocess.run(["mount", "-t", "tmpfs", "-o", "size=16k", "tmpfs", disk],
                       capture_output=True, text=True, check=False)
if mount.returncode == 0:
    try:
        tiny_disk(disk)
    finally:
        subprocess.run(["umount", disk], check=True)
else:
    print(f"no full disk here, file size limits only: {mount.stderr.strip()}")
checks.done()
