"""What a pair of recipe and kitchen costs in bulk, at several sizes. Run: python tests/bench/bulk.py

Recipes are the samples with other amounts; kitchens are invented, each at an elevation of its own, or five at each.
"""

from __future__ import annotations

import os
import random
import re
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from itertools import cycle, islice
from pathlib import Path

SAMPLES = sorted((Path(__file__).parents[1] / "assistant" / "recipes" / "samples").iterdir())
COMMAND = [sys.executable, "-c", "from assistant.cli import main; main()", "bulk"]
# recipes, kitchens, and how many elevations the kitchens stand at
SIZES = ((96, 100, 100), (96, 400, 400), (8, 3000, 3000), (48, 3000, 600))
GOAL_PAIRS, GOAL_S, CORES = 1_000_000, 900, 2
AMOUNT = re.compile(r"\b\d+(?= ?(?:g|ml|cups?|tsp|tbsp|teaspoons?|tablespoons?|lb|oz|ounces?)\b)")


def recipes(count: int) -> Iterator[tuple[str, bytes]]:
    """The samples again and again, every time with other amounts."""
    for number, path in enumerate(islice(cycle(SAMPLES), count)):
        times = 1 + number // len(SAMPLES) * 0.01
        text = AMOUNT.sub(lambda found, by=times: str(max(1, round(int(found[0]) * by))), path.read_text())
        yield f"{number:05d}-{path.name}", text.encode()


def kitchens(count: int, elevations: int) -> Iterator[str]:
    """Rows of a table: kitchens from the sea up to 3,000 m, in no order."""
    chance = random.Random(7)
    heights = chance.sample(range(0, 30_000), elevations)
    yield "name,elevation,units"
    for number in range(count):
        yield f"Kitchen {number + 1},{heights[number % elevations] / 10} m,us"


def measured(folder: Path, count: int, rows: int, elevations: int, *options: str) -> tuple[float, float, float, float]:
    """What a run takes with all its processes.

    returns: processor time [s], wall time [s], the most that one process held [MB], size of the table [MB]
    """
    here = folder / f"{count}-{rows}-{elevations}{'-'.join(options)}"
    (here / "recipes").mkdir(parents=True)
    for name, content in recipes(count):
        (here / "recipes" / name).write_bytes(content)
    (here / "kitchens.csv").write_text("\n".join(kitchens(rows, elevations)))
    told = [str(here / "recipes"), "--kitchens", str(here / "kitchens.csv"), "--out", str(here / "out"), *options]
    began = time.perf_counter()
    process = subprocess.Popen([*COMMAND, *told], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
    _, status, used = os.wait4(process.pid, 0)
    took = time.perf_counter() - began
    if status:
        raise SystemExit(process.stdout.read().decode() if process.stdout else status)
    size = sum(path.stat().st_size for path in (here / "out" / "conversions").iterdir())
    return used.ru_utime + used.ru_stime, took, used.ru_maxrss / 1024, size / 1e6


def main() -> None:
    """Print a line for each size, then what the goal would take."""
    workers = ("--workers", str(CORES))
    with tempfile.TemporaryDirectory() as work:
        started, *_ = measured(Path(work), 2, 1, 1, *workers)
        print(f"to start: {started:.1f} s of processor time")
        for count, rows, elevations in SIZES:
            cpu, wall, most, size = measured(Path(work), count, rows, elevations, *workers)
            pairs, ms = count * rows, (cpu - started) * 1000 / (count * rows)
            free = CORES * 1000 / ms
            print(
                f"{count:,} recipes x {rows:,} kitchens at {elevations:,} elevations, {pairs:,} pairs: {ms:.2f} ms of "
                f"processor time a pair ({free:,.0f} a second on {CORES} free cores; {GOAL_PAIRS:,} in "
                f"{GOAL_PAIRS / free / 60:.1f} min, goal {GOAL_S / 60:.0f}), {wall:.0f} s as it was, "
                f"{most:.0f} MB, {size * 1e6 / pairs:.0f} bytes a pair",
                flush=True,
            )


if __name__ == "__main__":
    main()
