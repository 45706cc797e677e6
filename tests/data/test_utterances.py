"""The test questions are well formed, name known things, and are kept apart from the training examples."""

from __future__ import annotations

import re
from collections import Counter
from pathlib import Path
from typing import Any

import pytest
import ruamel.yaml

from rules.catalogue import topics
from rules.foods.dishes import dishes
from rules.model import MISSING_WORDS

UTTERANCES = Path(__file__).parents[2] / "data" / "utterances"
METHODS = {
    "boil", "simmer", "poach", "braise", "stew", "steam", "pressure_cook", "fry", "roast", "bake", "proof",
    "sugarwork", "preserve", "sous_vide", "slow_cook", "brew", "grill", "smoke", "microwave", "reduce", "hold",
    "chill",
}  # fmt: skip
NUMBER = (int, float)
KEYS: dict[str, Any] = {
    "text": str,
    "context": list,
    "xfail": str,
    "topic": str,
    "dish": (str, type(None)),
    "dish_class": str,
    "method": (str, type(None)),
    "elevation": type(None),
    "elevation_ft": NUMBER,
    "elevation_m": NUMBER,
    "elevation_from": str,
    "from_elevation_ft": NUMBER,
    "from_elevation_m": NUMBER,
    "within_ft": NUMBER,
    "time_min": NUMBER,
    "time_high_min": NUMBER,
    "temperature_f": NUMBER,
    "temperature_c": NUMBER,
    "quantity": dict,
    "portions": int,
    "pressure_psi": NUMBER,
    "units": str,
    "missing": list,
}
MARKUP = re.compile(r"\[([^\]]*)\](?:\([^)]*\)|\{[^}]*\})")  # [word](entity) and [word]{...} of the training format
FEWEST = {"time": 40, "why": 30}


def read(path: Path) -> Any:
    """One YAML file as plain data; repeated keys are an error of the reader."""
    return ruamel.yaml.YAML(typ="safe", pure=True).load(path)


FILES = sorted((UTTERANCES / "test").glob("*.yml"))
CASES = [(path.stem, case) for path in FILES for case in read(path)["cases"]]
cases = pytest.mark.parametrize(("topic", "case"), CASES, ids=[case["text"] for _, case in CASES])


def plain(sentence: str) -> str:
    """A sentence without case, marks and spacing, so that near copies are found too."""
    return " ".join("".join(c if c.isalnum() else " " for c in sentence.casefold()).split())


def test_one_file_a_topic() -> None:
    """Each topic has its file."""
    assert {path.stem for path in FILES} == set(topics())


def test_there_are_enough() -> None:
    """At least 300 in all, 40 on time, 30 on why, 15 on each other topic."""
    counts = Counter(topic for topic, _ in CASES)
    assert len(CASES) >= 300
    assert {t: n for t, n in counts.items() if n < FEWEST.get(t, 15)} == {}


@cases
def test_case_is_well_formed(topic: str, case: dict[str, Any]) -> None:
    """Known keys of the right kind, one way to give an elevation, and values from the catalogues."""
    assert set(case) <= set(KEYS)
    assert [key for key, value in case.items() if not isinstance(value, KEYS[key])] == []
    assert case["text"] == case["text"].strip() != ""
    assert case["topic"] == topic
    assert case.get("method") in METHODS | {None}
    assert len({"elevation", "elevation_ft", "elevation_m"} & set(case)) <= 1
    assert case.get("elevation_from", "stated") in {"stated", "place", "barometer", "boil_test"}
    assert set(case.get("missing", ())) <= set(MISSING_WORDS)
    assert set(case.get("quantity", {"value": 1, "unit": "g"})) == {"value", "unit"}


@cases
def test_dish_is_in_the_lexicon(topic: str, case: dict[str, Any]) -> None:
    """A dish is called by the name the lexicon gives it."""
    assert case.get("dish") is None or case["dish"] in dishes()


def test_no_sentence_twice() -> None:
    """Each sentence stands once, unless an earlier utterance gives it another meaning."""
    counts = Counter((plain(case["text"]), tuple(case.get("context", ()))) for _, case in CASES)
    assert [sentence for sentence, n in counts.items() if n > 1] == []


def test_no_sentence_is_trained_on() -> None:
    """Training and test sentences are apart."""
    files = [path.read_text("utf-8") for path in (UTTERANCES / "train").rglob("*.yml")]
    trained = {plain(MARKUP.sub(r"\1", line)) for text in files for line in text.splitlines()}
    assert sorted(case["text"] for _, case in CASES if plain(case["text"]) in trained) == []
