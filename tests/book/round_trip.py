#!/usr/bin/env python3
"""What an exit status of 0 acknowledged is read back: no entry is written that is damaged when read.

And what is refused, or is no book, stays as it was.
"""
import json

from support import Checks, fresh_folder, must, run

work = fresh_folder()
checks = Checks()
day = work / "day.toml"


def prepared(name):
    book = work / (name.replace(" ", "_") + ".toml")
    must(book, "save", "--jar", "A", "--mass", "500 g", "--day", day)
    return book


def sound_or_refused(name, *words, lost_jar=False):
    book = prepared(name)
    before = book.read_bytes()
    status, _, messages = run(book, *words)
    if status != 0:
        checks.that(book.read_bytes() == before, f"{name}: refused, and the book changed")
        print(f"{name}: refused: {messages.strip()}")
        return
    status, out, messages = run(book, "list", "--json")
    checks.that(status == 0 and not messages, f"{name}: exit 0, and then: {messages.strip()}")
    if status == 0:
        listed = json.loads(out)
        checks.that(listed["complete"] and listed["last_entry"] == 2, f"{name}: not complete")
        checks.that(lost_jar or listed["jars"][0]["mass_g"] > 1.0, f"{name}: the jar is empty")


for mass in ("1 mg", "0.5 mg", "0.4 mg", "0.0001 mg", "499.4996 g", "499.5004 g", "500.4996 g"):
    sound_or_refused(f"use {mass}", "use", "--jar", "A", "--mass", mass, lost_jar=mass.endswith(" g"))
    sound_or_refused(f"weigh {mass}", "weigh", "--jar", "A", "--mass", mass, lost_jar=True)
    sound_or_refused(f"top up {mass}", "top-up", "--jar", "A", "--kind", "salt", "--mass", mass)
sound_or_refused("weigh 1.5", "weigh", "--jar", "A", "--mass", "749.9999 g")
for moisture in ("0.004 %", "0 %", "89.999 %", "20.005 %", "1/3"):
    sound_or_refused(f"moisture {moisture.replace('/', '_')}", "save", "--jar", "B", "--mass", "90 g",
                     "--day", day, "--moisture", moisture)
sound_or_refused("quote", "note", "--note", 'a "quote", a \\ and a line\nend = 2\n\n[[entry]]\n')
sound_or_refused("not UTF-8", "note", "--note", b"bad \xff")
sound_or_refused("not UTF-8 with a quote", "note", "--note", b'bad \xff "quote"')
sound_or_refused("half a pair", "note", "--note", b'\xed\xa0\x80 "quote"')
sound_or_refused("controls", "note", "--note", "".join(map(chr, range(1, 32))) + "\x7f\u0085\u202e")
sound_or_refused("long note", "note", "--note", "\x01" * 2000)
sound_or_refused("long hides", "use", "--jar", "A", "--mass", "1 g", "--hides", "\x01" * 120000)
sound_or_refused("jar of quotes", "save", "--jar", '"\\"', "--mass", "9 g", "--day", day)
sound_or_refused("looks like a number", "note", "--note", "12")

# A day with very long tags must not make an entry that the book cannot be read past.
long_day = work / "long_day.toml"
long_day.write_text('date = 2026-11-07\nrecipe = "bulletin-1334"\n' + "".join(
    f'[[hide]]\ntag = "{"G" * 30000}{i}"\nspecies = "goat"\nlive_weight = "41 kg"\n'
    for i in range(40)))
sound_or_refused("long tags", "save", "--jar", "A", "--mass", "9 g", "--day", long_day)

# The number of a damaged last entry is not given again.
book = prepared("damaged last")
must(book, "note", "--note", "second")
text = book.read_text()
book.write_text(text.replace('"second"', "second"))
run(book, "note", "--note", "third")
book.write_text(book.read_text().replace("= second", '= "second"'))
status, _, messages = run(book, "list")
checks.that(status == 0 and not messages, f"mended, and then: {messages}")

# The highest number there is.
book = work / "highest.toml"
must(book, "note", "--note", "first")
book.write_text(book.read_text().replace("= 1\n", "= 9223372036854775807\n"))
status, _, messages = run(book, "note", "--note", "next")
checks.that(status in (0, 65) and "= -" not in book.read_text(), f"after the highest: {messages}")

# What is no book is not written in.
not_book = work / "not_book.toml"
not_book.write_bytes(day.read_bytes())
status, _, messages = run(not_book, "note", "--note", "wrong file")
checks.that(status != 0 and not_book.read_bytes() == day.read_bytes(), "wrote in a day")
missing = work / "missing.toml"
status, _, messages = run(missing, "use", "--jar", "A", "--mass", "1 g")
checks.that(status == 65 and (not missing.exists() or not missing.read_bytes()),
            "a refused entry left a book")
checks.done()
