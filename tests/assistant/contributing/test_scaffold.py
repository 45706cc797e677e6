"""A scaffolded method must work as it stands."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from assistant.contributing.scaffold import make_method

ROOT = Path(__file__).resolve().parents[3]


@pytest.fixture
def checkout(tmp_path: Path) -> Path:
    for folder in ("rules", "data", "assistant"):
        shutil.copytree(ROOT / folder, tmp_path / folder, ignore=shutil.ignore_patterns("__pycache__"))
    return tmp_path


def test_a_scaffolded_method_passes_its_own_test(checkout: Path) -> None:
    files = make_method("spit_roast", checkout)
    assert [path.exists() for path in files] == [True] * 4
    run = subprocess.run(
        [sys.executable, "-m", "pytest", "-q", "-p", "no:cacheprovider", "--import-mode=importlib", str(files[-1])],
        cwd=checkout,
        env={**os.environ, "PYTHONPATH": str(checkout)},
        capture_output=True,
        text=True,
    )
    assert run.returncode == 0, run.stdout
    assert "1 passed" in run.stdout


def test_an_existing_method_is_not_overwritten(checkout: Path) -> None:
    with pytest.raises(FileExistsError):
        make_method("braise", checkout)


@pytest.mark.parametrize("word", ["", "Braise", "../braise", "spit roast", "9braise"])
def test_a_word_that_is_no_method_is_refused(word: str, checkout: Path) -> None:
    with pytest.raises(ValueError, match="no method word"):
        make_method(word, checkout)
