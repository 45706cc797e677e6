"""The validator's part on example questions: well formed, naming what there is, apart from what is trained on."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator
from functools import cache
from typing import Any

import srsly  # type: ignore[import-untyped]

from rules import tables
from rules.catalogue import topics
from rules.foods.dishes import dishes
from rules.model import MISSING_WORDS

Problem = tuple[str, str, str]

TRAIN, TEST = "utterances/train", "utterances/test"
NUMBER = (int, float)
KEYS: dict[str, Any] = {
    "text": str, "context": list, "xfail": str, "topic": str, "dish": (str, type(None)), "dish_class": str,
    "method": (str, type(None)), "elevation": type(None), "elevation_ft": NUMBER, "elevation_m": NUMBER,
    "elevation_from": str, "from_elevation_ft": NUMBER, "from_elevation_m": NUMBER, "within_ft": NUMBER,
    "time_min": NUMBER, "time_high_min": NUMBER, "elapsed_min": NUMBER, "planned_min": NUMBER,
    "temperature_f": NUMBER, "temperature_c": NUMBER, "quantity": dict,
    "portions": int, "pressure_psi": NUMBER, "units": str, "missing": list,
}  # fmt: skip
ELEVATIONS = {"elevation", "elevation_ft", "elevation_m"}
MARKUP = re.compile(r"\[([^\]]*)\](?:\([^)]*\)|\{[^}]*\})")  # [word](entity) and [word]{...} of the training format


def problems() -> Iterator[Problem]:
    """File, row and what is wrong with it, for every fault."""
    files = files_of(TEST)
    for topic in sorted(set(topics()) ^ set(files)):
        yield f"{TEST}/{topic}.yml", topic, "each topic has its file of test questions, and each file its topic"
    for topic, cases in files.items():
        if topic in topics() and len(cases) < topics()[topic].fewest_questions:
            yield f"{TEST}/{topic}.yml", topic, f"{len(cases)} questions are too few"
        for case in cases:
            yield from ((f"{TEST}/{topic}.yml", str(case.get("text")), fault) for fault in case_faults(topic, case))
    yield from repeated([case for cases in files.values() for case in cases])


@cache
def files_of(folder: str) -> dict[str, list[dict[str, Any]]]:
    """Topic -> its test questions."""
    paths = sorted((f for f in tables.data_path(folder).iterdir() if f.name.endswith(".yml")), key=lambda f: f.name)
    return {f.name.removesuffix(".yml"): srsly.yaml_loads(f.read_text(encoding="utf-8"))["cases"] for f in paths}


def case_faults(topic: str, case: dict[str, Any]) -> Iterator[str]:
    """Known keys of the right kind, one way to give an elevation, and values from the catalogues."""
    yield from (f'key "{key}" unknown' for key in case if key not in KEYS)
    yield from (f"{k}: {v!r} is of the wrong kind" for k, v in case.items() if not isinstance(v, KEYS.get(k, object)))
    if not case.get("text") or case["text"] != case["text"].strip():
        yield "text missing, or with blanks around it"
    if case.get("topic") != topic:
        yield f"topic is {case.get('topic')}, but the file is {topic}"
    methods = {row["id"] for row in tables.read_toml("lexicon/methods.toml")["method"]}
    if case.get("method") not in methods | {None}:
        yield f'method "{case["method"]}" unknown'
    if case.get("dish") is not None and case["dish"] not in dishes():
        yield f'dish "{case["dish"]}" unknown'
    if len(ELEVATIONS & set(case)) > 1:
        yield "gives its elevation twice"
    if case.get("elevation_from", "stated") not in ("stated", "place", "barometer", "boil_test"):
        yield f'elevation_from "{case["elevation_from"]}" unknown'
    yield from (f'missing word "{word}" unknown' for word in case.get("missing", ()) if word not in MISSING_WORDS)
    if "quantity" in case and set(case["quantity"]) != {"value", "unit"}:
        yield "quantity has a value and a unit"


def repeated(cases: list[dict[str, Any]]) -> Iterator[Problem]:
    """Sentences that stand twice with the same context, or that are trained on."""
    trained = trained_sentences()
    counts = Counter((plain(str(case.get("text"))), tuple(case.get("context", ()))) for case in cases)
    for (sentence, _), count in counts.items():
        if count > 1:
            yield TEST, sentence, f"stands {count} times"
        if sentence in trained:
            yield TEST, sentence, "is trained on"


def trained_sentences() -> set[str]:
    """The sentences of the training examples, plain."""
    texts = [f.read_text(encoding="utf-8") for f in tables.data_path(TRAIN).iterdir() if f.name.endswith(".yml")]
    return {plain(MARKUP.sub(r"\1", line)) for text in texts for line in text.splitlines()}


def plain(sentence: str) -> str:
    """A sentence without case, marks and spacing, so that near copies are found too.

    >>> plain("Soft-ball, at 7,000 ft?")
    'soft ball at 7 000 ft'
    """
    return " ".join("".join(c if c.isalnum() else " " for c in sentence.casefold()).split())
