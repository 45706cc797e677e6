"""What is installed, and what is built: pins that keep the bounds, and a wheel and an sdist that hold everything."""

from __future__ import annotations

import ntpath
import os
import subprocess
import sys
import tarfile
import tomllib
import zipfile
from collections.abc import Iterator
from importlib.metadata import version
from pathlib import Path, PureWindowsPath
from typing import Any

import pytest
from packaging.markers import Marker
from packaging.requirements import Requirement
from packaging.specifiers import SpecifierSet

from assistant.dialogue.deeds import safe_name

ROOT = Path(__file__).parents[1]
PROJECT: dict[str, Any] = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
PYTHONS = ("3.11", "3.12", "3.13")
# by its own way from Python 3.13 on
is_reserved = getattr(ntpath, "isreserved", None) or (lambda path: PureWindowsPath(path).is_reserved())
LEFT_OUT = ("__pycache__", ".mypy_cache", ".ruff_cache", ".pytest_cache")


def asked_for() -> list[Requirement]:
    """All that pyproject.toml asks for, whatever the extra."""
    extras = PROJECT["optional-dependencies"].values()
    return [Requirement(line) for lines in (PROJECT["dependencies"], *extras) for line in lines]


def pinned(python: str) -> dict[str, str]:
    """Name -> version that CI installs on Linux with a Python."""
    lines = (ROOT / ".ci" / "constraints.txt").read_text(encoding="utf-8").splitlines()
    here = {"python_version": python, "python_full_version": f"{python}.0", "sys_platform": "linux", "os_name": "posix",
            "implementation_name": "cpython", "platform_python_implementation": "CPython"}  # fmt: skip
    pins = [Requirement(line) for line in lines if line and not line.lstrip().startswith("#")]
    return {pin.name: str(pin.specifier).removeprefix("==") for pin in pins if _holds(pin.marker, here)}


def _holds(marker: Marker | None, here: dict[str, str]) -> bool:
    return marker is None or marker.evaluate(here)


@pytest.mark.parametrize("python", PYTHONS)
def test_every_pin_keeps_the_bounds_of_the_project(python: str) -> None:
    pins = pinned(python)
    for wanted in asked_for():
        name = wanted.name.lower().replace("_", "-").replace(".", "-")
        assert wanted.specifier.contains(pins[name], prereleases=True), f"{wanted}, pinned {pins[name]}"


@pytest.mark.parametrize("wanted", asked_for(), ids=lambda wanted: wanted.name)
def test_what_is_asked_for_says_from_which_version_on(wanted: Requirement) -> None:
    assert any(bound.operator in (">=", "==") for bound in wanted.specifier)


def test_the_pythons_that_are_named_are_those_it_is_for() -> None:
    named = [line.rpartition(" :: ")[2] for line in PROJECT["classifiers"] if "Python :: 3." in line]
    assert named == list(PYTHONS)
    assert all(SpecifierSet(PROJECT["requires-python"]).contains(python) for python in PYTHONS)


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the sdist, and the wheel that was built from it."""
    out = tmp_path_factory.mktemp("built")
    pytest.importorskip("hatchling")
    command = [sys.executable, "-m", "build", "--no-isolation", "--outdir", str(out), str(ROOT)]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    return out


def files(*folders: str) -> Iterator[str]:
    """The files of the checkout in some folders."""
    for folder in folders:
        for path in sorted((ROOT / folder).rglob("*")):
            if path.is_file() and not set(path.parts) & set(LEFT_OUT) and path.suffix != ".pyc":
                yield path.relative_to(ROOT).as_posix()


def test_the_wheel_holds_everything_and_nothing_else(built: Path) -> None:
    with zipfile.ZipFile(next(built.glob("*.whl"))) as wheel:
        names = {name for name in wheel.namelist() if ".dist-info/" not in name}
        (told,) = [wheel.read(name).decode() for name in wheel.namelist() if name.endswith(".dist-info/METADATA")]
    wanted = {name.replace("data/", "rules/_data/", 1) if name.startswith("data/") else name
              for name in files("assistant", "rules", "data")}  # fmt: skip
    assert names == wanted
    assert {"assistant/py.typed", "rules/py.typed"} <= names
    assert "License-Expression: MIT" in told
    assert f"Version: {version('simmerline')}" in told


def test_the_sdist_holds_what_is_needed_to_build_and_test_it(built: Path) -> None:
    with tarfile.open(next(built.glob("*.tar.gz"))) as sdist:
        names = {name.partition("/")[2] for name in sdist.getnames()}
    wanted = {*files("assistant", "rules", "data", "tests"), "README.md", "DEVELOPERS.md", "pyproject.toml"}
    assert wanted <= names


def test_the_wheel_answers_far_from_the_checkout(built: Path, tmp_path: Path) -> None:
    with zipfile.ZipFile(next(built.glob("*.whl"))) as wheel:
        wheel.extractall(tmp_path)
    program = (
        "import assistant, rules; from assistant import ask; from rules import tables\n"
        "print(assistant.__file__, rules.__file__, tables.data_path('units.txt'), sep='\\n')\n"
        "print(ask('how long to braise short ribs at 7,000 feet', depth=1).text)"
    )
    variables = {**os.environ, "PYTHONPATH": str(tmp_path)}
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, cwd=tmp_path, env=variables,
                          check=True, encoding="utf-8")  # fmt: skip
    *places, answer = done.stdout.strip().splitlines()
    assert [place for place in places if not place.startswith(str(tmp_path))] == []
    assert "at 7,000 ft" in answer


def bad_elsewhere(path: str) -> bool:
    """Whether some system cannot hold a file of this name."""
    unheld = set(path) & set('<>:"\\|?*') or any(part.endswith((".", " ")) for part in path.split("/"))
    return bool(unheld) or not path.isascii() or is_reserved(path)


def test_no_file_has_a_name_that_another_system_cannot_hold() -> None:
    paths = list(files("assistant", "rules", "data", "tests"))
    assert [path for path in paths if bad_elsewhere(path)] == []
    assert len({path.casefold() for path in paths}) == len(paths) > 1000
    assert all(map(bad_elsewhere, ["data/aux.csv", "a:b.txt", "end.", "Käse.txt"]))


@pytest.mark.parametrize(
    "title", ["CON", "aux", "LPT1", "nul", "COM¹", "C:\\rolls", "a/b", "Rolls: 7 o'clock?", "…", "x" * 300, "COM1.txt"]
)
def test_a_name_made_from_words_does_on_any_system(title: str) -> None:
    name = safe_name(title)
    assert not is_reserved(name)
    assert PureWindowsPath(name).name == name
    assert not set(name) & set('<>:"/\\|?*')
    assert len(name) < 100
