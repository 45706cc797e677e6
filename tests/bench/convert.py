"""How long a recipe takes to convert: one, warm, and a folder of 2,000. Run: python tests/bench/convert.py"""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import tempfile
import time
from functools import partial
from itertools import cycle, islice
from pathlib import Path

from assistant.recipes.converting import convert_recipe
from assistant.replies.recipe.forms.json import as_json

SAMPLES = sorted((Path(__file__).parents[1] / "assistant" / "recipes" / "samples").iterdir())
KITCHEN_M = 2133.6
ROUNDS, RECIPES = 10, 2000


def warm_ms() -> dict[str, list[float]]:
    """Processor time to read, convert and write one recipe as JSON once all is loaded, by recipe [ms]."""
    times: dict[str, list[float]] = {path.name: [] for path in SAMPLES}
    for again in range(ROUNDS + 1):
        for path in SAMPLES:
            start = time.process_time()
            as_json(convert_recipe(path.read_bytes(), to_elevation_m=KITCHEN_M))
            if again:
                times[path.name].append((time.process_time() - start) * 1000)
    return times


def folder_s(cores: int) -> tuple[float, float]:
    """Wall time and processor time [s] of the command over a folder on so many cores, start and writing included."""
    with tempfile.TemporaryDirectory() as work:
        folder = Path(work, "recipes")
        folder.mkdir()
        for number, path in enumerate(islice(cycle(SAMPLES), RECIPES)):
            (folder / f"{number:04d}-{path.name}").write_bytes(path.read_bytes())
        command = [sys.executable, "-c", "from assistant.cli import main; main()", "convert", str(folder)]
        asked = ["--to", "7000ft", "--format", "html", "--out", str(Path(work, "out"))]
        keep = partial(os.sched_setaffinity, 0, sorted(os.sched_getaffinity(0))[:cores])
        before, start = os.times(), time.perf_counter()
        subprocess.run([*command, *asked], check=True, capture_output=True, preexec_fn=keep)
        wall, after = time.perf_counter() - start, os.times()
        return wall, sum(after[2:4]) - sum(before[2:4])


if __name__ == "__main__":
    by_recipe = warm_ms()
    all_ms = [ms for times in by_recipe.values() for ms in times]
    slowest = max(by_recipe, key=lambda name: statistics.median(by_recipe[name]))
    print(
        f"one recipe, warm: median {statistics.median(all_ms):.1f} ms, 95 % under "
        f"{statistics.quantiles(all_ms, n=20)[-1]:.1f} ms, slowest {slowest} with "
        f"{statistics.median(by_recipe[slowest]):.1f} ms (goal 10 ms, of processor time)"
    )
    alone_s, alone_cpu_s = folder_s(1)
    cores = len(os.sched_getaffinity(0))
    shared_s, shared_cpu_s = folder_s(cores)
    print(
        f"a folder of {RECIPES:,} recipes to pages: {alone_s:.1f} s on one core ({alone_cpu_s:.1f} s of processor), "
        f"{shared_s:.1f} s on {cores} ({shared_cpu_s:.1f} s): {alone_s / shared_s:.2f} times faster (goal 1.8 on two)"
    )
