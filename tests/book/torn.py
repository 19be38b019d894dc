#!/usr/bin/env python3
"""Books cut off at every byte of their last entry, as a power cut leaves them, and other tails.

Entries before the cut stand byte for byte; what was cut is moved aside, all of it and nothing else.
"""
from support import Checks, entries, fresh_folder, must, run

work = fresh_folder()
book = work / "book.toml"
checks = Checks()
for i in range(3):
    must(book, "note", "--note", f"entry {i}")
whole = book.read_bytes()
last = whole.rfind(b"[[entry]]")
end = len(whole.rstrip(b"\n"))  # the last entry is whole with the end of its last line


def write_after(case, sound, tail, moved=True):
    """An entry written after `sound` and `tail`."""
    book.write_bytes(sound + tail)
    for aside in work.glob("*.unfinished-*"):
        aside.unlink()
    status, _, messages = run(book, "note", "--note", "after")
    text = book.read_bytes()
    checks.that(status == 0, f"{case}: exit {status}: {messages}")
    kept = sound if moved else sound + tail
    checks.that(text.startswith(kept), f"{case}: earlier entries changed")
    checks.that(text[len(kept):].count(b"[[entry]]") == 1, f"{case}: {text[len(kept):]!r}")
    number = kept.count(b"[[entry]]") + 1
    checks.that(f"\nnumber = {number}\n".encode() in text[len(kept):], f"{case}: not {number}")
    asides = [path.read_bytes() for path in work.glob("*.unfinished-*")]
    checks.that(asides == ([tail] if moved else []), f"{case}: moved aside: {asides}")
    checks.that(("not finished" in messages) == moved, f"{case}: said {messages!r}")


for cut in range(last + 1, end + 1):
    write_after(f"cut after {cut - last} bytes", whole[:last], whole[last:cut])
    book.write_bytes(whole[:cut])
    status, _, messages = run(book, "history")
    checks.that(status == 0 and "not finished" in messages, f"reading {cut - last}: {messages}")
for cut in range(end + 1, len(whole) + 1):
    write_after(f"cut after {cut - last} bytes", whole[:cut], b"", moved=False)
write_after("no data reached the disk", whole, b"\0" * 300)
write_after("a new entry of which no data reached the disk", whole, b"[[entry]]\nnum" + b"\0" * 90)
write_after("a remark by hand", whole, b"# looked through\n", moved=False)
write_after("line ends of another system", whole.replace(b"\n", b"\r\n"), b"", moved=False)
write_after("a byte order mark", b"\xef\xbb\xbf" + whole, b"", moved=False)
write_after("a remark at the head", b"# our powder\n\n" + whole, b"", moved=False)
# A file that is no book is neither written in nor moved aside.
for text in (b"shopping: salt, alum", b"salt\nalum\n", b"[[hide]]\ntag = 1\n", b" " + whole):
    book.write_bytes(text)
    for aside in work.glob("*.unfinished-*"):
        aside.unlink()
    status, _, messages = run(book, "note", "--note", "after")
    checks.that(status == 65 and book.read_bytes() == text, f"{text[:20]!r}: exit {status}")
    checks.that(not list(work.glob("*.unfinished-*")), f"{text[:20]!r}: moved aside")
checks.that(len(entries(whole)) == 3, "the book at the start")
checks.done()
