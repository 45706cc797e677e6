"""Scripted conversations, one item each: slots, figures and words after every utterance, through the actions."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
import ruamel.yaml

from assistant.dialogue.embedded import Conversation, Said
from assistant.dialogue.memory import Memory
from rules.model import Kitchen

FOLDER = Path(__file__).with_name("conversations")
FT_M = 0.3048
NOBODY_SAID = "none"
VERDICTS = ("No", "Discard", "Only if")

Turn = dict[str, Any]
Check = Callable[[Turn, Conversation, Said, Said | None], bool]


def scripts() -> list[Any]:
    """The conversations, named by file and name; a known miss is a strict xfail with its reason."""
    reader = ruamel.yaml.YAML(typ="safe", pure=True)
    return [
        pytest.param(
            script,
            id=f"{path.stem}: {script['name']}",
            marks=[pytest.mark.xfail(reason=script["xfail"], strict=True)] if "xfail" in script else [],
        )
        for path in sorted(FOLDER.glob("*.yml"))
        for script in reader.load(path)
    ]


@pytest.mark.parametrize("script", scripts())
def test_goes_as_written(script: dict[str, Any]) -> None:
    """Every expectation of every turn holds."""
    conversation = Conversation("lodge", Memory(kitchen=kitchen(script.get("kitchen", {}))))
    before: Said | None = None
    for turn in script["turns"]:
        said = asyncio.run(conversation.say(turn["say"]))
        unknown = turn.keys() - CHECKS.keys() - {"say", "within_ft"}
        assert not unknown, f"the script expects what nobody checks: {unknown}"
        wrong = [key for key in turn.keys() & CHECKS.keys() if not CHECKS[key](turn, conversation, said, before)]
        slots = conversation.tracker.slots
        assert not wrong, f"{turn['say']!r}: {wrong} in {turn}\n{said.text}\n{slots}"
        before = said


def kitchen(row: dict[str, Any]) -> Kitchen:
    """The kitchen that a script begins in."""
    rest = {key: value for key, value in row.items() if key not in ("elevation_ft", "equipment")}
    elevation_m = row["elevation_ft"] * FT_M if "elevation_ft" in row else None
    return Kitchen(**rest, elevation_m=elevation_m, equipment=tuple(row.get("equipment", ())))


def answer(said: Said) -> dict[str, Any]:
    """The answer of the JSON contract, the last where an aside came before."""
    return said.answers[-1]


def figure(said: Said, id: str) -> float:
    """The value of a figure."""
    return float(next(f["value"] for f in answer(said)["figures"] if f["id"] == id))


def expected_m(turn: Turn) -> float:
    """The elevation that a turn expects [m]."""
    return float(turn["elevation_m"]) if "elevation_m" in turn else turn["elevation_ft"] * FT_M


def elevation(turn: Turn, conversation: Conversation, said: Said, before: Said | None) -> bool:
    """The elevation of the answer: within 1 m, or within_ft where a town or a thermometer gave it."""
    heard_m = answer(said)["heard"]["elevation_m"]
    tolerance_m = turn["within_ft"] * FT_M if "within_ft" in turn else 1.0
    return heard_m is not None and abs(heard_m - expected_m(turn)) <= tolerance_m


def no_elevation(turn: Turn, conversation: Conversation, said: Said, before: Said | None) -> bool:
    """Nobody gave an elevation, and none is used."""
    return turn["elevation"] == NOBODY_SAID and answer(said)["heard"]["elevation_m"] is None


def asked(turn: Turn, conversation: Conversation, said: Said, before: Said | None) -> bool:
    """The piece that is awaited, and that the form is open exactly then."""
    awaited = None if turn["asked"] == NOBODY_SAID else turn["asked"]
    in_form = conversation.tracker.active_loop.get("name") == "piece_form"
    return conversation.tracker.slots["asked"] == awaited and in_form == (awaited is not None)


def than_before(turn: Turn, conversation: Conversation, said: Said, before: Said | None) -> bool:
    """Figures that must be more or less than in the turn before."""
    assert before is not None
    now_and_then = {id: (figure(said, id), figure(before, id)) for id in turn["than_before"]}
    return all((a > b) == (turn["than_before"][id] == "more") and a != b for id, (a, b) in now_and_then.items())


def text(turn: Turn, conversation: Conversation, said: Said, before: Said | None) -> bool:
    """Whether the whole reply is shorter or longer than the one before."""
    assert before is not None
    return (len(said.text) < len(before.text)) == (turn["text"] == "shorter") and len(said.text) != len(before.text)


def kitchen_now(turn: Turn, conversation: Conversation, said: Said, before: Said | None) -> bool:
    """What is remembered of the kitchen."""
    known = conversation.memory.kitchen
    expected = dict(turn["kitchen"])
    feet, none = expected.pop("elevation_ft", None), expected.pop("elevation", None)
    if none == NOBODY_SAID and known.elevation_m is not None:
        return False
    if feet is not None and (known.elevation_m is None or abs(known.elevation_m - feet * FT_M) > 1.0):
        return False
    equipment = expected.pop("equipment", None)
    return (equipment is None or list(known.equipment) == equipment) and all(
        getattr(known, key) == value for key, value in expected.items()
    )


def is_refused(said: Said) -> bool:
    """Whether a reply forbids what was asked: a verdict, and a caution that stops."""
    told = answer(said)
    stops = any(caution["level"] == "stop" for caution in told["cautions"])
    return stops and said.text.startswith(VERDICTS)


CHECKS: dict[str, Check] = {
    "slots": lambda turn, c, said, before: all(c.tracker.slots[k] == v for k, v in turn["slots"].items()),
    "request": lambda turn, c, said, before: all(
        c.tracker.slots["request"][k] == v for k, v in turn["request"].items()
    ),
    "units": lambda turn, c, said, before: c.tracker.slots["request"]["units"] == turn["units"],
    "first": lambda turn, c, said, before: said.text.splitlines()[0] == turn["first"],
    "says": lambda turn, c, said, before: turn["says"] in said.text,
    "same_text": lambda turn, c, said, before: before is not None and (said.text == before.text) == turn["same_text"],
    "refused": lambda turn, c, said, before: turn["refused"] == is_refused(said),
    "no_figures": lambda turn, c, said, before: answer(said)["figures"] == [],
    "figures": lambda turn, c, said, before: all(
        abs(figure(said, id) - f["value"]) <= f["within"] for id, f in turn["figures"].items()
    ),
    "elevation_ft": elevation,
    "elevation_m": elevation,
    "elevation": no_elevation,
    "asked": asked,
    "than_before": than_before,
    "text": text,
    "kitchen": kitchen_now,
}
