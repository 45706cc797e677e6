"""What a cold start of each command takes of the processor, and which packages it imports. Run: tests/bench/commands.py

User time, medians, beside the import of the library that a command cannot do without; all in turn within one run, so
that other work on the machine falls on all of them. The cache of the command is filled before; --cold leaves it out.
"""

from __future__ import annotations

import os
import resource
import statistics
import subprocess
import sys
import tempfile

RUNS = 9
QUESTION = "how long to braise short ribs at 7,000 feet"
PROGRAM = "from assistant.cli import main; main()"
HEAVY = (
    "spacy", "weasel", "rasa_sdk", "sanic", "sqlalchemy", "prompt_toolkit", "rich", "pint", "matplotlib", "numpy",
    "scipy", "icalendar", "openpyxl", "reportlab",
)  # fmt: skip
# what is run, and what is said to it
PROGRAMS: dict[str, tuple[str, ...]] = {
    "import spacy": ("import spacy",),
    "import typer": ("import typer",),
    "ask": (PROGRAM, "ask", QUESTION),
    "chat": (PROGRAM, "chat", "--new"),
    "kitchen list": (PROGRAM, "kitchen", "list"),
    "drill": (PROGRAM, "drill", "--set", "7", "--count", "5"),
    "--help": (PROGRAM, "--help"),
}
SAID = {"chat": f"{QUESTION}\n".encode()}
# what is compared with what, and how many times it may be at the most
AIMS = (("ask", "import spacy", 1.25), ("--help", "import typer", 2.5), ("chat", "ask", 1.1))


def run(name: str, environment: dict[str, str], *options: str) -> bytes:
    """Run one of the programs and give what it says on standard error."""
    command = [sys.executable, *options, "-c", *PROGRAMS[name]]
    done = subprocess.run(command, input=SAID.get(name, b""), check=True, capture_output=True, env=environment)
    return done.stderr


def user_s(name: str, environment: dict[str, str]) -> float:
    """User time of one run, from the start of the process to its end [s]."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime
    run(name, environment)
    return resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime - before


def imported(name: str, environment: dict[str, str]) -> list[str]:
    """The heavy packages that a command imports."""
    told = run(name, environment, "-X", "importtime").splitlines()
    modules = {line.rpartition(b"|")[2].strip().decode() for line in told}
    return [package for package in HEAVY if package in modules]


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as folder:
        cache = "off" if "--cold" in sys.argv[1:] else f"{folder}/cache"
        alone = {**os.environ, "SIMMERLINE_DB": f"sqlite:///{folder}/simmerline.db", "SIMMERLINE_CACHE": cache}
        packages = {name: ", ".join(imported(name, alone)) for name in PROGRAMS if run(name, alone) is not None}
        times = [{name: user_s(name, alone) for name in PROGRAMS} for _ in range(RUNS)]
        median = {name: statistics.median(turn[name] for turn in times) for name in PROGRAMS}
        print(f"| command | user time, median of {RUNS} | imports |\n| --- | --- | --- |")
        for name in PROGRAMS:
            print(f"| {name} | {median[name]:.3f} s | {packages[name] or 'none of the heavy packages'} |")
        for name, beside, aim in AIMS:
            print(f"\n{name}: {median[name] / median[beside]:.2f} times {beside} (aim {aim})")
