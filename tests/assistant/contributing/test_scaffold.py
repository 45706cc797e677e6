"""A scaffolded method must work as it stands, read like English, and not pass for finished."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from assistant.contributing import validate_methods
from assistant.contributing.scaffold import make_method

ROOT = Path(__file__).resolve().parents[3]
SALT = ("salt_bake", "baking * in salt", ("in salt", "in a salt crust"), "Buried in damp salt in the oven")
ASKED = """
from assistant.replies.headline import headline
from assistant.replies.worded import answer
from rules.model import Request
for dish in ("sea bass", None):
    print(headline(answer(Request(topic="time", method="salt_bake", dish=dish, dish_class="fish", elevation_m=2133.6))))
"""


@pytest.fixture
def checkout(tmp_path: Path) -> Path:
    for folder in ("rules", "data", "assistant"):
        shutil.copytree(ROOT / folder, tmp_path / folder, ignore=shutil.ignore_patterns("__pycache__"))
    return tmp_path


def run(checkout: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    environment = {**os.environ, "PYTHONPATH": str(checkout)}
    return subprocess.run(
        [sys.executable, *arguments], cwd=checkout, env=environment, capture_output=True, text=True, check=False
    )


def test_a_scaffolded_method_passes_its_own_test(checkout: Path) -> None:
    files = make_method(*SALT, root=checkout)
    assert [path.exists() for path in files] == [True] * 4
    done = run(checkout, "-m", "pytest", "-q", "-p", "no:cacheprovider", "--import-mode=importlib", str(files[-1]))
    assert done.returncode == 0, done.stdout
    assert "1 passed" in done.stdout


def test_a_reply_says_the_method_as_a_cook_does(checkout: Path) -> None:
    make_method(*SALT, root=checkout)
    told = run(checkout, "-c", ASKED)
    assert "baking sea bass in salt" in told.stdout, told.stderr
    assert "baking it in salt" in told.stdout


def test_what_is_still_to_be_written_is_a_fault(checkout: Path) -> None:
    assert list(validate_methods.unwritten(checkout / "data")) == []
    _, lexicon, wording, _ = make_method(*SALT, root=checkout)
    told = {file for file, _, _ in validate_methods.unwritten(checkout / "data")}
    assert told == {str(path.relative_to(checkout / "data")) for path in (lexicon, wording)}


def test_an_existing_method_is_not_overwritten(checkout: Path) -> None:
    with pytest.raises(FileExistsError):
        make_method("braise", "braising", ("braise",), "In a little liquid", checkout)


@pytest.mark.parametrize("word", ["", "Braise", "../braise", "salt bake", "9braise"])
def test_a_word_that_is_no_method_is_refused(word: str, checkout: Path) -> None:
    with pytest.raises(ValueError, match="no method word"):
        make_method(word, *SALT[1:], root=checkout)


@pytest.mark.parametrize("gerund", ["clay pot", "cooking in a clay pot", "* in a clay pot", "cooking * in * clay"])
def test_a_gerund_that_does_not_read_like_english_is_refused(gerund: str, checkout: Path) -> None:
    with pytest.raises(ValueError, match=r"dish"):
        make_method("clay_pot", gerund, ("clay pot",), "In wet clay", checkout)


@pytest.mark.parametrize(
    ("changes", "fault"),
    [
        ({"amount": "heap"}, 'amount "heap" unknown'),
        ({"usual_class": "fish_stick"}, 'usual_class "fish_stick" unknown'),
        ({"equipment": ["kettle", "kiln"]}, 'equipment "kiln" unknown'),
        ({"marks": ["hot", "tepid"]}, 'mark "tepid" unknown'),
        ({"gerund": "braise"}, "braise: no word in -ing before the dish"),
    ],
)
def test_a_fault_of_a_row_is_told(changes: dict[str, object], fault: str) -> None:
    row = {"id": "braise", "gerund": "braising", "amount": "covered_pot"}
    assert list(validate_methods.row_faults(row)) == []
    assert list(validate_methods.row_faults(row | changes)) == [fault]
