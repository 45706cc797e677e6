"""How long an order and a schedule take: a menu of 500 different dishes, process start included.

Run: python tests/bench/order.py
"""

from __future__ import annotations

import resource
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from rules.foods.dishes import dishes

DISHES = 500


def menu() -> str:
    """So many different dishes, every way of telling who takes them."""
    takers = ("40%", "35", "half", "all", "side, 60")
    return "Covers: 90\n" + "\n".join(f"{name}, {takers[at % 5]}" for at, name in enumerate(list(dishes())[:DISHES]))


# command, form and what else is told: a kitchen that could cook so much
RUNS = (
    ("order", "text", ()),
    ("order", "xlsx", ()),
    ("schedule", "text", ("--serve", "18:30", "--ovens", "40", "--burners", "100", "--cooks", "60")),
)


def timed(command: str, form: str, menu_file: Path, *more: str) -> tuple[float, float, int]:
    """How long a run takes by the clock and of a processor [s], and its exit code."""
    out = menu_file.with_name(f"{command}.{form}")
    typed = [sys.executable, "-c", "from assistant.cli import main; main()", command, str(menu_file), "--at", "7000ft"]
    start, used = time.perf_counter(), resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime
    done = subprocess.run([*typed, *more, "--format", form, "--out", str(out)], check=False, capture_output=True)
    worked = resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime - used
    return time.perf_counter() - start, worked, done.returncode


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as work:
        path = Path(work, "menu.txt")
        path.write_text(menu(), encoding="utf-8")
        for command, form, more in RUNS:
            clock_s, worked_s, code = timed(command, form, path, *more)
            print(
                f"{DISHES} dishes, {command} as {form}: {clock_s:.1f} s, "
                f"{worked_s:.1f} s of a processor, exit code {code}"
            )
