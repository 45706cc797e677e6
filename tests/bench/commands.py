"""How long commands take from a cold start, and which packages each imports. Run: python tests/bench/commands.py"""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

COMMANDS: dict[str, tuple[str, ...]] = {
    "ask": ("ask", "--at", "7000ft", "how long to boil rice"),
    "chat": ("chat", "--new"),
    "kitchen list": ("kitchen", "list"),
    "drill": ("drill", "--set", "7", "--count", "5"),
    "--help": ("--help",),
}
SAID = {"chat": b"thanks\n"}
HEAVY = ("spacy", "rasa_sdk", "sanic", "sqlalchemy", "prompt_toolkit", "rich", "pint", "matplotlib", "numpy")
RUNS = 7
SIMMERLINE = str(Path(sys.executable).with_name("simmerline"))


def cold_s(name: str, environment: dict[str, str]) -> list[float]:
    """Wall time of the whole command, process start included [s]."""
    times = []
    for _ in range(RUNS):
        start = time.perf_counter()
        subprocess.run(
            [SIMMERLINE, *COMMANDS[name]], input=SAID.get(name, b""), check=True, capture_output=True, env=environment
        )
        times.append(time.perf_counter() - start)
    return times


def imported(name: str, environment: dict[str, str]) -> list[str]:
    """The heavy packages that a command imports."""
    program = "import sys; from assistant.cli import main; sys.argv[1:] = sys.argv[2:]; main()"
    command = [sys.executable, "-X", "importtime", "-c", program, "simmerline", *COMMANDS[name]]
    done = subprocess.run(command, input=SAID.get(name, b""), capture_output=True, env=environment, check=True)
    modules = {line.rpartition(b"|")[2].strip().decode() for line in done.stderr.splitlines()}
    return [package for package in HEAVY if package in modules]


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as folder:
        alone = {**os.environ, "SIMMERLINE_DB": f"sqlite:///{folder}/simmerline.db"}
        for command in COMMANDS:
            taken = cold_s(command, alone)
            packages = ", ".join(imported(command, alone)) or "none of the heavy packages"
            print(f"{command}: median {statistics.median(taken):.2f} s, slowest {max(taken):.2f} s; imports {packages}")
