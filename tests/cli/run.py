#!/usr/bin/env python3
"""Runs one case of the command line, a readable file with everything in it.

    run.py --program WHITTAW --recipes FOLDER CASE.test...

A case starts with what it is about, in free text. Then come sections, each led by a line of three
dashes, a space, and the section's name:

    --- file NAME      an input file of the case's own empty folder; may stand several times
    --- before         shell lines that make inputs too odd to write out
    --- needs          shell line that must succeed, else the case is skipped
    --- as nobody      runs without the rights of root
    --- run            the command, a shell line; `whittaw` is the program, $RECIPES the recipes
    --- status N       the exit status wanted; 0 if not said
    --- stdout         exactly this
    --- stdout has     each of these lines is part of a line of it (leading blanks do not count)
    --- stdout lacks   none of these is part of it
    --- stdout joined has   the same with every run of blanks and line ends taken as one blank
    --- stderr         the same four for the errors
    --- json           what the JSON on standard output holds, see below
    --- left NAME      what a file holds afterwards, exactly
    --- left NAME has|lacks|joined has   the same for parts of it
    --- folder         the names of all that lies in the folder afterwards

Standard output and standard error must be empty where no section speaks of them.

Lines of `json`, with PATH as hides.0.area_m2:

    PATH ~ NUMBER TOLERANCE    within the absolute tolerance
    PATH = JSON                equal
    PATH has TEXT              a text with that part in it
    PATH is KIND               number, text, list, object, flag or null
    PATH length N              of a list
    PATH keys A B C            an object has at least these keys
"""

import argparse
import difflib
import json
import os
import re
import subprocess
import sys
import tempfile

SKIPPED = 77
SECONDS = 60
NOBODY = 65534
HEADER = re.compile(r"^--- (file|before|needs|as nobody|run|status|stdout|stderr|json|left|folder)"
                    r"(?: (.*))?$")
KINDS = {"number": (int, float), "text": str, "list": list, "object": dict, "flag": bool,
         "null": type(None)}


class BadCase(Exception):
    """The case file itself is wrong."""


def read_case(path):
    """Sections of a case as (name, argument, text)."""
    sections = []
    with open(path, encoding="utf-8", newline="\n") as file:
        comment = []
        for number, line in enumerate(file, 1):
            header = HEADER.match(line.rstrip("\n"))
            if header:
                sections.append((header[1], header[2] or "", []))
            elif line.startswith("--- "):
                raise BadCase(f"{path}:{number}: no such section")
            elif sections:
                sections[-1][2].append(line)
            else:
                comment.append(line)
    if not "".join(comment).strip():
        raise BadCase(f"{path}: it must start with what it is about")
    sections = [(name, argument, "".join(lines)) for name, argument, lines in sections]
    if sum(name == "run" for name, _, _ in sections) != 1:
        raise BadCase(f"{path}: one section 'run' is wanted")
    return sections


def squeezed(text):
    return " ".join(text.split())


def check_text(what, how, wanted, got):
    """Differences of a text from what is wanted, as lines for a person."""
    if how == "":
        if got == wanted:
            return []
        return [f"{what} differs:"] + list(
            difflib.unified_diff(wanted.splitlines(), got.splitlines(), "wanted", "got",
                                 lineterm="")) + (
            ["(only the end of the last line differs)"]
            if got.splitlines() == wanted.splitlines() else [])
    joined = how.startswith("joined ")
    if how.split()[-1] not in ("has", "lacks"):
        raise BadCase(f"'{what} {how}' is not known")
    text = squeezed(got) if joined else got
    problems = []
    for line in wanted.splitlines():
        part = squeezed(line) if joined else line.strip()
        if not part:
            continue
        if (part in text) != (how.split()[-1] == "has"):
            problems.append(f"{what} {'lacks' if how.endswith('has') else 'has'}: {part}")
    if problems:
        problems += [f"{what} was:"] + ["    " + line for line in got.splitlines()[:60]]
    return problems


def find_in(value, path):
    for step in path.split("."):
        value = value[int(step)] if isinstance(value, list) else value[step]
    return value


def check_json(wanted, got):
    try:
        document = json.loads(got, parse_constant=lambda name: 1 / 0)
    except (ValueError, ZeroDivisionError) as error:
        return [f"standard output is not JSON: {error}", got[:2000]]
    problems = []
    for line in wanted.splitlines():
        if not line.strip():
            continue
        path, how, rest = (line.split(None, 2) + [""])[:3]
        try:
            value = document if path == "." else find_in(document, path)
        except (KeyError, IndexError, ValueError, TypeError):
            problems.append(f"json: {path} is not there")
            continue
        if how == "~":
            number, tolerance = (float(word) for word in rest.split())
            good = (isinstance(value, (int, float)) and not isinstance(value, bool) and
                    abs(value - number) <= tolerance)
        elif how == "=":
            good = value == json.loads(rest)
        elif how == "has":
            good = isinstance(value, str) and rest in value
        elif how == "is":
            good = isinstance(value, KINDS[rest]) and (rest == "flag" or
                                                       not isinstance(value, bool))
        elif how == "length":
            good = isinstance(value, list) and len(value) == int(rest)
        elif how == "keys":
            good = isinstance(value, dict) and set(rest.split()) <= set(value)
        else:
            raise BadCase(f"json: '{how}' is not known")
        if not good:
            problems.append(f"json: {line.strip()}\n    got {json.dumps(value)[:400]}")
    return problems


def shell(text, folder, settings, as_nobody=False):
    rights = {"user": NOBODY, "group": NOBODY, "extra_groups": []} if as_nobody else {}
    return subprocess.run(["sh", "-c", text], cwd=folder, env=settings, capture_output=True,
                          stdin=subprocess.DEVNULL, timeout=SECONDS, check=False, **rights)


def run_case(path, program, recipes, folder):
    """Problems of a case, or None where it cannot be run here."""
    sections = read_case(path)
    texts = {name: text for name, _, text in sections}
    settings = {"PATH": os.path.dirname(program) + ":/usr/local/bin:/usr/bin:/bin",
                "LC_ALL": "C.UTF-8", "HOME": folder, "RECIPES": recipes}
    as_nobody = "as nobody" in texts and os.geteuid() == 0
    os.chmod(folder, 0o777 if as_nobody else 0o700)
    for name, argument, text in sections:
        if name == "file":
            target = os.path.join(folder, argument)
            os.makedirs(os.path.dirname(target), exist_ok=True)
            with open(target, "w", encoding="utf-8", newline="\n") as file:
                file.write(text)
    if as_nobody and shell("whittaw --version && test -r \"$RECIPES/demo/day.toml\"", folder,
                           settings, True).returncode != 0:
        return None
    if "needs" in texts and shell(texts["needs"], folder, settings, as_nobody).returncode != 0:
        return None
    if "before" in texts:
        made = shell("set -e\n" + texts["before"], folder, settings)
        if made.returncode != 0:
            raise BadCase(f"{path}: 'before' failed: {made.stderr.decode(errors='replace')}")
    done = shell(texts["run"], folder, settings, as_nobody)
    streams = {"stdout": done.stdout.decode("utf-8", "surrogateescape"),
               "stderr": done.stderr.decode("utf-8", "surrogateescape")}

    problems = []
    status = next((int(argument) for name, argument, _ in sections if name == "status"), 0)
    if done.returncode != status:
        problems.append(f"exit status {done.returncode}, wanted {status}")
    said = set()
    for name, argument, text in sections:
        if name in streams:
            said.add(name)
            problems += check_text(name, argument, text, streams[name])
        elif name == "json":
            said.add("stdout")
            problems += check_json(text, streams["stdout"])
        elif name == "left":
            left, _, how = argument.partition(" ")
            try:
                with open(os.path.join(folder, left), encoding="utf-8", newline="") as file:
                    problems += check_text(left, how, text, file.read())
            except OSError as error:
                problems.append(f"{left}: {error.strerror}")
        elif name == "folder":
            got = sorted(os.listdir(folder))
            if got != sorted(text.split()):
                problems.append(f"the folder holds {got}, wanted {sorted(text.split())}")
    for name, text in streams.items():
        if name not in said and text:
            problems += [f"{name} is not empty:"] + ["    " + line
                                                     for line in text.splitlines()[:60]]
    return problems


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--program", required=True)
    parser.add_argument("--recipes", required=True)
    parser.add_argument("cases", nargs="+")
    given = parser.parse_args()
    worst = 0
    for path in given.cases:
        with tempfile.TemporaryDirectory(prefix="whittaw-case-") as folder:
            try:
                problems = run_case(path, os.path.abspath(given.program),
                                    os.path.abspath(given.recipes), folder)
            except BadCase as error:
                problems = [str(error)]
            except subprocess.TimeoutExpired:
                problems = [f"took longer than {SECONDS} s"]
        if problems is None:
            print(f"{path}: skipped, cannot be run here")
            worst = worst or SKIPPED
        elif problems:
            worst = 1
            text = "\n".join(problems).encode("utf-8", "backslashreplace").decode()
            print(f"{path}: FAILED\n" + "\n".join("  " + line for line in text.splitlines()))
    if worst == SKIPPED and len(given.cases) > 1:
        worst = 0
    return worst


if __name__ == "__main__":
    sys.exit(main())
