#!/usr/bin/env python3
"""Holds the documents to what the program really prints.

A line before a fenced block says what the block is:
  <!-- output: whittaw card recipes/demo/day.toml -->   the block is that output, byte for byte
  <!-- table: species -->                               the block is a table of the library
  <!-- compiles -->                                     the block is a whole C++ program
Tables are Markdown without a fence, up to <!-- end -->.

usage: blocks.py TOP PROGRAM TABLES COMPILER WORK [--update]
"""
import pathlib
import re
import shlex
import subprocess
import sys

top, program, tables, compiler, work = map(pathlib.Path, sys.argv[1:6])
update = "--update" in sys.argv
failures = []
seen = 0


def run(words, stdin=""):
    done = subprocess.run(words, cwd=top, input=stdin, capture_output=True, text=True, check=False)
    return done.stdout + done.stderr


def real_output(command):
    words = shlex.split(command)
    assert words[0] == "whittaw", command
    return run([program, *words[1:]])


def compiles(name, text):
    source = work / f"{name}.cpp"
    source.write_text(text)
    flags = ["-std=c++20", "-Wall", "-Wextra", "-Werror", f"-I{top}/lib/include"]
    done = subprocess.run([compiler, *flags, "-o", work / name, source], capture_output=True,
                          text=True, check=False)
    return done.stderr


def check(page):
    global seen
    text = page.read_text()

    def output_block(match):
        global seen
        seen += 1
        wanted = real_output(match[2])
        if match[4] != wanted:
            failures.append(f"{page.name}: '{match[2]}' prints something else than the page shows")
        return f"{match[1]}{match[3]}{wanted}```"

    def table_block(match):
        global seen
        seen += 1
        wanted = run([tables, match[2]])
        if match[3] != wanted:
            failures.append(f"{page.name}: table '{match[2]}' differs from the library's")
        return f"{match[1]}{wanted}<!-- end -->"

    def program_block(match):
        global seen
        seen += 1
        errors = compiles(f"{page.stem}_{seen}", match[2])
        if errors:
            failures.append(f"{page.name}: a program does not compile\n{errors[:2000]}")
        return match[0]

    new = re.sub(r"(<!-- output: (.*?) -->\n)(```\w*\n)(.*?)```", output_block, text, flags=re.S)
    new = re.sub(r"(<!-- table: (.*?) -->\n)(.*?)<!-- end -->", table_block, new, flags=re.S)
    re.sub(r"<!-- compiles -->\n(```cpp\n)(.*?)```", program_block, new, flags=re.S)
    if update and new != text:
        page.write_text(new)


work.mkdir(parents=True, exist_ok=True)
for page in [top / "README.md", top / "DEVELOPERS.md", *sorted((top / "docs").glob("*.md"))]:
    check(page)
if seen == 0:
    failures.append("no block was found")
if update:
    failures = [failure for failure in failures if "compile" in failure]
for failure in failures:
    print(failure)
print(f"{seen} blocks")
sys.exit(1 if failures else 0)
