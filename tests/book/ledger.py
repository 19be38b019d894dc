#!/usr/bin/env python3
"""A long history at random, its journal balanced by Debian's `ledger` and held against the program.

ledger is a general accounting tool; it adds up the journal without knowing anything of the book.
"""
import collections
import json
import random
import re
import shutil
import subprocess
import sys

from support import Checks, entries, fresh_folder, must, run

ENTRIES = 300
DEMO_LIKE = """date = 2026-11-07
recipe = "bulletin-1334"
[[hide]]
tag = "G1"
species = "goat"
live_weight = "41 kg"
fleshed_weight = "1.45 kg"
[[hide]]
tag = "K1"
species = "kid"
green_weight = "760 g"
[[hide]]
tag = "C1"
species = "calf"
live_weight = "62 kg"
[[hide]]
tag = "R1"
species = "rabbit"
live_weight = "3.4 kg"
"""
TAGS = ["G1", "K1", "C1", "R1"]

ledger = shutil.which("ledger")
if ledger is None:
    sys.exit("the program ledger is missing: install Debian's package ledger")
work = fresh_folder()
book = work / "book.toml"
day = work / "demo_like.toml"
day.write_text(DEMO_LIKE)
other_day = work / "other_day.toml"
other_day.write_text(DEMO_LIKE.replace("2026-11-07", "2026-11-14").replace("bulletin-1334",
                                                                          "calf-kid-1885"))
checks = Checks()
choose = random.Random(1885)
JARS = ["A", "B", "the blue jar", "C:1", "shed (left) [old]; damp", "Gl\u00e4schen"]
deeds = collections.Counter()
refused = collections.Counter()
done = 0
for _ in range(20 * ENTRIES):
    if done == ENTRIES:
        break
    jar = choose.choice(JARS)
    mass = f"{choose.uniform(0.5, 60.0):.{choose.choice((0, 1, 3))}f} g"
    verb = choose.choices(("save", "use", "top-up", "sieve", "weigh", "throw-out", "undo"),
                          (8, 6, 3, 3, 4, 1, 2))[0]
    words = [verb, "--jar", jar]
    if verb in ("save", "use", "top-up", "sieve"):
        words += ["--mass", mass]
    if verb == "save":
        words += ["--day", choose.choice((day, other_day)), "--hides",
                  ",".join(choose.sample(TAGS, choose.randint(1, 4)))]
        if choose.random() < 0.5:
            words += ["--moisture", f"{choose.uniform(3, 40):.1f} %"]
    elif verb == "top-up":
        words += ["--kind", choose.choice(("potassium alum", "ammonium alum", "salt"))]
    elif verb == "weigh":
        jars = {each["jar"]: each["mass_g"] for each in
                json.loads(must(book, "list", "--json"))["jars"]} if book.exists() else {}
        words += ["--mass", f"{max(1.0, jars.get(jar, 1.0) * choose.uniform(0.8, 1.2)):.1f} g"]
    elif verb == "throw-out" and choose.random() < 0.5:
        words += ["--mass", mass]
    elif verb == "undo":
        words = ["undo", str(choose.randint(1, max(1, done)))]
    before = book.read_bytes() if book.exists() else b""
    status, _, messages = run(book, *words)
    if status == 0:
        done += 1
        deeds[verb] += 1
    else:
        refused[verb] += 1
        checks.that(status == 65, f"{words}: exit {status}: {messages}")
        after = book.read_bytes() if book.exists() else b""
        checks.that(after == before, f"{words}: refused, and the book changed")
checks.that(done == ENTRIES and len(entries(book.read_bytes())) == ENTRIES, f"{done} entries")
print("entries:", dict(deeds), "refused:", dict(refused))
checks.that(all(deeds[verb] >= 5 for verb in ("save", "use", "top-up", "sieve", "weigh", "undo")),
            "a deed is hardly in it")

journal = work / "journal.txt"
journal.write_text(must(book, "journal"))


def balance(*more):
    """(account, part) -> amount, as ledger adds them up."""
    listing = subprocess.run(
        [ledger, "-f", "-", "--args-only", "balance", "--flat", "--no-total", "--balance-format",
         "%(join(scrub(display_total))) | %(account)\n", *more],
        input=journal.read_text(), capture_output=True, text=True, check=True)
    if listing.stderr:
        sys.exit(listing.stderr)
    sums = collections.defaultdict(float)
    for line in listing.stdout.splitlines():
        amounts, account = line.split(" | ")
        for amount, part in re.findall(r"(-?[\d.]+) ([a-z]+)", amounts.replace("\\n", " ; ")):
            sums[account, part] += float(amount)
    return sums


sums = balance()
parts = sorted({part for _, part in sums})
print("parts:", ", ".join(parts))
for part in parts:
    rest = sum(amount for (_, each), amount in sums.items() if each == part)
    checks.that(abs(rest) < 5e-7, f"all accounts hold {rest} {part}")

listed = json.loads(must(book, "list", "--json"))
# Both name the jars in the order in which they first appear, whatever the journal makes of a name.
names = list(dict.fromkeys(re.findall(r"^    (jar\S*)  ", journal.read_text(), re.MULTILINE)))
checks.that(len(names) == len(listed["jars"]), f"accounts {names}")
checks.that(all(name.startswith("jar_" + jar["jar"].split()[0].split(":")[0])
                for name, jar in zip(names, listed["jars"])), f"accounts {names}")
accounts = dict(zip(names, listed["jars"]))
for account, jar in accounts.items():
    for key, amount in jar["contents"].items():
        by_ledger = sums.get((account, key.rsplit("_", 1)[0]), 0.0)
        checks.that(abs(by_ledger - amount) < 1e-6,
                    f"{account}, {key}: list says {amount}, ledger {by_ledger}")
held = {account for account, _ in sums if account.startswith("jar_")}
checks.that(held <= set(accounts), f"accounts of no jar: {held - set(accounts)}")
print(f"{len(accounts)} jars, {len(sums)} balances")

# Jars of different names have different accounts.
book = work / "names.toml"
for jar in ("shed 1", "shed_1", "shed:1"):
    must(book, "save", "--jar", jar, "--mass", "9 g", "--day", day)
names = set(re.findall(r"^    (jar\S*)  ", must(book, "journal"), re.MULTILINE))
checks.that(len(names) == 3, f"three jars share the accounts {sorted(names)}")
checks.done()
