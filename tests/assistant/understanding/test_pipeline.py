"""The pipeline as a whole."""

import subprocess
import sys
import tomllib
from pathlib import Path

from assistant.understanding.pipeline import COMPONENTS, pipeline

ROOT = Path(__file__).parents[3]


def test_every_component_finds_what_it_requires() -> None:
    assert not any(pipeline().analyze_pipes()["problems"].values())


def test_the_components_run_in_their_order() -> None:
    assert tuple(pipeline().pipe_names) == COMPONENTS


def test_every_component_is_an_entry_point() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    points = project["entry-points"]["spacy_factories"]
    assert set(points) == set(COMPONENTS)
    rooms = ("assistant.reading.", "assistant.understanding.")
    assert all(point.startswith(rooms) and point.endswith(f":{name}") for name, point in points.items())


def test_importing_the_package_loads_nothing_heavy() -> None:
    heavy = {"spacy", "pint", "numpy", "rapidfuzz"}
    code = f"import sys, assistant.understanding; print(sorted({heavy} & set(sys.modules)))"
    shown = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, cwd=ROOT)
    assert shown.stdout.strip() == "[]"
