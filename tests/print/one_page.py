#!/usr/bin/env python3
"""Prints cards in headless Chromium and counts the pages: one, whatever is on them.

usage: one_page.py PROGRAM RECIPES WORK
"""
import pathlib
import re
import subprocess
import sys
import tempfile

program, recipes, work = map(pathlib.Path, sys.argv[1:4])
work.mkdir(parents=True, exist_ok=True)

HEAD = 'date = 2026-11-07\nrecipe = "bulletin-1334"\n'


def hide(tag, size='live_weight = "31 kg"', species="goat", more=""):
    return f'[[hide]]\ntag = "{tag}"\nspecies = "{species}"\n{size}\n{more}\n'


def many(count, owner=""):
    more = f'owner = "{owner}"' if owner else ""
    return "".join(hide(f"G{i + 1}", more=more) for i in range(count))


SHELF = """
[[shelf]]
kind = "aluminium sulfate"
alumina = "17 %"
amount = "100 g"
label = "the bag that stood behind the door since the spring before last"
[[shelf]]
kind = "ammonium alum"
amount = "120 g"
[[shelf]]
kind = "potassium alum"
amount = "50 g"
[[shelf]]
kind = "salt"
iodized = true
[[shelf]]
kind = "washing soda"
form = "anhydrous"
[[shelf]]
kind = "oatmeal"
"""
DAYS = {
    "one rabbit": HEAD + hide("R1", 'live_weight = "3 kg"', "rabbit"),
    "twelve hides": HEAD + many(12),
    "sixty hides with owners": HEAD + many(60, "the farm at the top of the lane"),
    "long tags": HEAD + "".join(hide("a very long tag indeed " * 4 + str(i)) for i in range(12)),
    "everything wrong at once": HEAD + 'water_temperature = "2 C"\n[bucket]\nmaterial = "zinc"\n'
    'volume = "5 L"\n' + many(8, "upper farm")
    + hide("K9", 'live_weight = "300 kg"', "goat", 'trim = "ellipse"') + SHELF,
    "without soda": HEAD.replace("bulletin-1334", "calf-kid-1885") + many(6),
    "the demo": None,
}


def pages(html):
    pdf = html.with_suffix(".pdf")
    pdf.unlink(missing_ok=True)
    with tempfile.TemporaryDirectory() as profile:
        subprocess.run(
            ["chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic",
             "--no-first-run", "--disable-background-networking", "--disable-component-update",
             "--disable-sync", f"--user-data-dir={profile}", "--no-pdf-header-footer",
             f"--print-to-pdf={pdf}", html.as_uri()],
            check=True, capture_output=True, timeout=120)
    text = subprocess.run(["pdfinfo", pdf], check=True, capture_output=True, text=True).stdout
    return int(re.search(r"Pages: +(\d+)", text)[1])


bad = 0
for name, day in DAYS.items():
    source = recipes / "demo" / "day.toml"
    if day is not None:
        source = work / f"{name.replace(' ', '_')}.toml"
        source.write_text(day)
    for paper in ("a4", "letter"):
        for units in ("metric", "us"):
            if day is None or (paper, units) in (("a4", "metric"), ("letter", "us")):
                html = (work / f"{name}_{paper}_{units}.html".replace(" ", "_")).resolve()
                done = subprocess.run([program, "card", source, "--paper", paper, "--units", units,
                                       "-o", html], capture_output=True, text=True, check=False)
                if done.returncode not in (0, 1):
                    print(f"{name}: {done.stderr}")
                    bad += 1
                    continue
                size = re.search(r"body\{font-size:([\d.]+)pt", html.read_text())[1]
                count = pages(html)
                print(f"{name}, {paper}, {units}: {count} page(s) at {size} pt")
                bad += count != 1 or float(size) < 6.5
sys.exit(1 if bad else 0)
