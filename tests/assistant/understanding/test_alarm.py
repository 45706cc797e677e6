"""The net under the hazards: not stale, and what it is for."""

from __future__ import annotations

import json

import pytest

from assistant.understanding import alarm, concepts, danger, train_alarm
from assistant.understanding.pipeline import read
from assistant.understanding.scene import Scene
from rules import tables


def alarmed(text: str, *before: str) -> float:
    scene = Scene()
    for said in before:
        scene = danger.listen(read(said), scene).scene
    return alarm.sound(danger.heard_in(read(text), scene).features).danger


def test_is_not_stale() -> None:
    """Stale: python -m assistant.understanding.train_alarm."""
    about = json.loads(tables.data_path(alarm.ABOUT).read_text(encoding="utf-8"))
    assert about["examples"] == train_alarm.fingerprint()


def test_knows_the_families_of_the_catalogue() -> None:
    about = json.loads(tables.data_path(alarm.ABOUT).read_text(encoding="utf-8"))
    assert set(about["classes"]) == {*concepts.families(), alarm.HARMLESS}


def test_examples_name_a_family_or_none() -> None:
    known = {*concepts.families(), alarm.HARMLESS}
    assert {example.family for example in train_alarm.examples()} == known
    assert min(len(example.text) for example in train_alarm.examples()) > 0


@pytest.mark.parametrize(
    "text",
    [
        "how long to braise short ribs at 7,000 feet",
        "what does water boil at in Leadville",
        "my cake sank in the middle at 7,000 ft",
        "set a timer for the beans, 40 minutes",
        "and in Celsius?",
    ],
)
def test_everyday_questions_do_not_alarm_it(text: str) -> None:
    assert alarmed(text) < danger.ALONE_FROM


def test_what_was_said_before_counts() -> None:
    alone = alarmed("twenty minutes then?")
    assert alarmed("twenty minutes then?", "a jar of my green beans spat at me when I opened it") > alone


def test_the_same_features_sound_the_same() -> None:
    doc = read("left the stew on the stove all night, is it fine")
    first = alarm.sound(danger.heard_in(doc, Scene()).features)
    assert first == alarm.sound(danger.heard_in(doc, Scene()).features)
    assert 0 <= first.danger <= 1
    assert sum(first.families.values()) == pytest.approx(first.danger)
