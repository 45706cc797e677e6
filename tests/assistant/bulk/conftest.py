"""Runs of the command in a process of its own, and recipes that do what no recipe should."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

dataset = pytest.importorskip("pyarrow.dataset", reason="the extra bulk is not installed")

ROOT = Path(__file__).parents[3]
SAMPLES = ROOT / "tests" / "assistant" / "recipes" / "samples"
COMMAND = [sys.executable, "-c", "from assistant.cli import main; main()", "bulk"]
# so many at few elevations that hardly two recipes fall into one part
MANY_KITCHENS = 65_536
# what a process that converts does with a recipe that says so
MISCHIEF = """
import os, time
import assistant.recipes.converting as converting

read = converting.recipe_in


def recipe_in(content, *, name=""):
    for deed in (b"endless", b"killing", b"greedy", b"stumbling", b"slow"):
        if isinstance(content, bytes) and b"mischief: " + deed in content:
            do(deed)
    return read(content, name=name)


def do(deed):
    if deed == b"endless":
        while True:
            pass
    if deed == b"killing":
        os.kill(os.getpid(), 9)
    if deed == b"greedy":
        held = [bytearray(1 << 28) for _ in range(64)]
    if deed == b"stumbling":
        raise ZeroDivisionError("an egg too few")
    if deed == b"slow":
        time.sleep(1.5)


converting.recipe_in = recipe_in
"""
ROLLS = "Rolls\nMakes 12 rolls\n{grams} g bread flour\n7 g yeast\n320 g water\n9 g salt\n\nBake 20 minutes at 425 F.\n"
KITCHENS = (
    "name,elevation,units\nTimberfold Lodge,7000 ft,us\nTimberfold Bakery,5300 ft,metric\nValley Dock,30 m,metric\n"
)


@dataclass(frozen=True)
class Ground:
    """A folder to run in: recipes, a table of kitchens, and where results go."""

    folder: Path
    environment: dict[str, str]

    @property
    def recipes(self) -> Path:
        return self.folder / "recipes"

    @property
    def out(self) -> Path:
        return self.folder / "out"

    def rolls(self, *names: str, says: str = "") -> None:
        """Recipes of these names, each with an amount of its own."""
        for name in names:
            text = ROLLS.format(grams=500 + len(list(self.recipes.iterdir())))
            (self.recipes / f"{name}.txt").write_text(text + says)

    def many_kitchens(self) -> None:
        rows = (f"Kitchen {number},{1000 * (number % 3)} m,us" for number in range(MANY_KITCHENS))
        (self.folder / "kitchens.csv").write_text("\n".join(("name,elevation,units", *rows)))

    def start(self, *options: str) -> subprocess.Popen[str]:
        kitchens = str(self.folder / "kitchens.csv")
        told = [str(self.recipes), "--kitchens", kitchens, "--out", str(self.out), *options]
        pipe = subprocess.PIPE
        return subprocess.Popen([*COMMAND, *told], stdout=pipe, stderr=pipe, text=True, env=self.environment)

    def run(self, *options: str) -> tuple[int, str, str]:
        """The code, and what was written to both outputs."""
        process = self.start(*options)
        told, aside = process.communicate(timeout=300)
        return process.returncode, told, aside

    def rows(self) -> list[dict[str, Any]]:
        """The table, by recipe and kitchen."""
        found = dataset.dataset(self.out / "conversions").to_table().to_pylist()
        return sorted(found, key=lambda row: (row["recipe"], row["kitchen"]))

    def count(self) -> dict[str, int]:
        """How many rows there are of each recipe."""
        found = dataset.dataset(self.out / "conversions").to_table(columns=["recipe"])
        return {row["values"]: row["counts"] for row in found["recipe"].value_counts().to_pylist()}

    def errors(self) -> list[dict[str, Any]]:
        found: list[dict[str, Any]] = dataset.dataset(self.out / "errors.parquet").to_table().to_pylist()
        return found

    def files(self) -> dict[str, tuple[int, bytes]]:
        """The parts: when each was written, and what it holds."""
        every = (self.out / "conversions").iterdir()
        return {path.name: (path.stat().st_mtime_ns, path.read_bytes()) for path in every}


@pytest.fixture
def ground(tmp_path: Path) -> Ground:
    """Nothing but the kitchens."""
    return grounds(tmp_path)


def grounds(folder: Path) -> Ground:
    (folder / "recipes").mkdir(parents=True)
    (folder / "kitchens.csv").write_text(KITCHENS)
    (folder / "mischief").mkdir()
    (folder / "mischief" / "sitecustomize.py").write_text(MISCHIEF)
    environment = {**os.environ, "PYTHONPATH": os.pathsep.join((str(ROOT), str(folder / "mischief")))}
    return Ground(folder, environment)


@pytest.fixture
def elsewhere(tmp_path: Path) -> Callable[[Ground], Ground]:
    """Makes a second folder with the same recipes and kitchens."""

    def make(of: Ground) -> Ground:
        made = grounds(tmp_path / "elsewhere")
        shutil.copytree(of.recipes, made.recipes, dirs_exist_ok=True)
        shutil.copy(of.folder / "kitchens.csv", made.folder)
        return made

    return make
