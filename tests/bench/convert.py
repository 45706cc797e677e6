"""How long a recipe takes to convert: one, warm, and a folder of 1,000. Run: python tests/bench/convert.py"""

from __future__ import annotations

import statistics
import subprocess
import sys
import tempfile
import time
from itertools import cycle, islice
from pathlib import Path

from assistant.recipes.converting import convert_recipe
from assistant.replies.recipe.forms.json import as_json

SAMPLES = sorted((Path(__file__).parents[1] / "assistant" / "recipes" / "samples").iterdir())
KITCHEN_M = 2133.6
ROUNDS, RECIPES = 10, 1000


def warm_ms() -> dict[str, list[float]]:
    """Time to read, convert and write one recipe as JSON once everything is loaded, by recipe [ms]."""
    times: dict[str, list[float]] = {path.name: [] for path in SAMPLES}
    for again in range(ROUNDS + 1):
        for path in SAMPLES:
            start = time.perf_counter()
            as_json(convert_recipe(path.read_bytes(), to_elevation_m=KITCHEN_M))
            if again:
                times[path.name].append((time.perf_counter() - start) * 1000)
    return times


def folder_s() -> float:
    """Wall time of the command over a folder of 1,000 recipes, process start and writing included [s]."""
    with tempfile.TemporaryDirectory() as work:
        folder = Path(work, "recipes")
        folder.mkdir()
        for number, path in enumerate(islice(cycle(SAMPLES), RECIPES)):
            (folder / f"{number:04d}-{path.name}").write_bytes(path.read_bytes())
        command = [str(Path(sys.executable).with_name("simmerline")), "convert", str(folder), "--to", "7000ft"]
        start = time.perf_counter()
        subprocess.run([*command, "--format", "html", "--out", str(Path(work, "out"))], check=True, capture_output=True)
        return time.perf_counter() - start


if __name__ == "__main__":
    by_recipe = warm_ms()
    all_ms = [ms for times in by_recipe.values() for ms in times]
    slowest = max(by_recipe, key=lambda name: statistics.median(by_recipe[name]))
    print(
        f"one recipe, warm: median {statistics.median(all_ms):.1f} ms, 95 % under "
        f"{statistics.quantiles(all_ms, n=20)[-1]:.1f} ms, slowest {slowest} with "
        f"{statistics.median(by_recipe[slowest]):.1f} ms (goal 20 ms)"
    )
    print(f"a folder of {RECIPES:,} recipes to pages: {folder_s():.1f} s (goal 30 s)")
