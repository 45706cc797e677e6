"""Every hazard in wordings of its own, and harmless neighbours that share its words."""

from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any

import pytest

from assistant.answering import reply_to
from assistant.contributing.validate_dangers import verdict_words
from assistant.replies.worded import answer
from assistant.understanding import concepts, danger
from assistant.understanding.hazards import hazards
from assistant.understanding.pipeline import read
from assistant.understanding.scene import Scene
from rules.model import Request
from rules.safety.danger import replies

VERDICTS = tuple(verdict_words("en")["danger"])
HERE = Path(__file__).parent
READ = {path.stem: tomllib.loads(path.read_text(encoding="utf-8")) for path in sorted(HERE.glob("*.toml"))}
SETS = {name: read["hazard"] for name, read in READ.items() if "hazard" in read}
FEWEST = 6


def cases(kind: str) -> list[Any]:
    """Every line of a kind; one of `known_misses` is expected to fail, and must be unmarked when it is mended."""
    found = []
    for row in (row for rows in SETS.values() for row in rows):
        for said in row.get(kind, ()):
            talk = [said] if isinstance(said, str) else said
            missed = pytest.mark.xfail(reason="a known miss") if said in row.get("known_misses", ()) else ()
            found.append(pytest.param(row, talk, id=f"{row['id']}: {' / '.join(talk)}", marks=missed))
    return found


@pytest.mark.parametrize(("row", "talk"), cases("dangerous"))
def test_is_heard_and_answered_by_a_verdict(row: dict[str, Any], talk: list[str]) -> None:
    scene = Scene()
    for said in talk:
        listened = danger.listen(read(said), scene)
        scene = listened.scene
    hazard, answer = listened.hazard, reply_to(talk[-1], talk[:-1])
    assert hazard is not None
    assert hazard.id in (row["id"], *row.get("or", ())), answer.text
    if hazard.beside:
        assert answer.request.dangers_too == (hazard.id,)
        assert any(caution.level == "warn" and caution.text in answer.text for caution in answer.cautions)
        return
    assert hazard.subject or answer.text.startswith(VERDICTS)
    assert any(caution.level == "stop" for caution in answer.cautions) or hazard.subject
    assert answer.figures == () or hazard.subject


@pytest.mark.parametrize(("row", "talk"), cases("harmless"))
def test_a_harmless_neighbour_is_answered(row: dict[str, Any], talk: list[str]) -> None:
    answer = reply_to(talk[-1], talk[:-1])
    assert answer.request.danger is None, answer.text


@pytest.mark.parametrize("id", sorted({hazard.id for hazard in hazards()}))
def test_has_wordings_of_its_own(id: str) -> None:
    rows = [row for rows in SETS.values() for row in rows if row["id"] == id]
    assert sum(len(row["dangerous"]) for row in rows) >= FEWEST
    assert sum(len(row.get("harmless", ())) for row in rows) >= 2


def test_every_family_has_its_set() -> None:
    assert set(concepts.families()) == set(SETS)


def test_every_reply_names_what_to_do_and_why() -> None:
    for id in replies():
        answered = answer(Request(topic="preserve", danger=id))
        assert answered.steps, id
        assert answered.because[0].text, id
        assert answered.because[0].sources, id
