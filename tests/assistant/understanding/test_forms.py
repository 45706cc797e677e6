"""The form of a question, whatever it is about, and the topics whose frame it fits."""

from __future__ import annotations

import pytest
from spacy.matcher import Matcher

from assistant.understanding import forms
from assistant.understanding.pipeline import pipeline, read
from rules import tables
from rules.catalogue import topics

HEARD = [
    ("how long do lentils want at 8,000 ft", "how_long"),
    ("trout fillets, cooking time please", "how_long"),
    ("how hot should the fat be for samosas", "how_hot"),
    ("what temperature do i hold the gravy at", "how_hot"),
    ("how much barley for sixty", "how_much"),
    ("how much more water for the oats", "more"),
    ("when do I put the lamb in for eight o'clock", "start"),
    ("what order do I fire these", "start"),
    ("why does the custard curdle", "why"),
    ("how come it foams so much", "why"),
    ("is it true that salt speeds it up", "is_true"),
    ("whats the difference between a simmer and a poach", "differ"),
    ("is it worth getting a pressure canner", "worth"),
    ("should I poach or steam the cod", "which"),
    ("how do I know when the ham is done", "done"),
    ("is 20 min enough for farro", "enough"),
    ("is this chicken still safe", "safe"),
    ("does the roast change at all up here", "changes"),
    ("the sponge came out flat, what went wrong", "wrong"),
    ("can we even cook beans there", "can_it"),
    ("been simmering 3 hours and still hard, how much longer", "remaining"),
    ("convert this for 6,000 ft", "convert"),
    ("how do I boil rice", "how_to"),
]


@pytest.mark.parametrize(("text", "form"), HEARD)
def test_a_form_is_heard(text: str, form: str) -> None:
    assert form in {heard.id for heard in read(text)._.forms}


@pytest.mark.parametrize("text", ["short ribs at 7,000 ft", "braised lamb shanks, Leadville", "salmon 2,100 m"])
def test_a_bare_dish_has_none(text: str) -> None:
    assert not read(text)._.forms


def test_every_pattern_is_one_that_the_matcher_takes() -> None:
    matcher = Matcher(pipeline().vocab, validate=True)
    for row in tables.read_toml(forms.FILE)["form"]:
        matcher.add(row["id"], [tokens for pattern in row["patterns"] for tokens in forms.patterns_of(pattern)])
    assert len(matcher) == len(forms.forms())


@pytest.mark.parametrize(
    ("text", "not_about"),
    [
        ("what happens to pectin in a carrot at 80 degrees", "preserve"),
        ("polenta for ten", "sugar_stage"),
        ("brown rice time please", "timer"),
        ("why is the boil cooler", "set_kitchen"),
        ("how long for potatoes in Cusco", "convert_recipe"),
        ("the crust is pale", "pressure"),
    ],
)
def test_a_frame_keeps_a_topic_out(text: str, not_about: str) -> None:
    assert not_about not in read(text)._.fitting


def test_frames_name_forms_and_signs_that_there_are() -> None:
    known = {*forms.forms(), "bare", *_signs(), *_kinds()}
    named = {sign for topic in topics().values() for sign in (*topic.forms, *topic.must, *topic.cannot)}
    assert named <= known


def _signs() -> set[str]:
    return {row["id"] for row in tables.read_toml("lexicon/signs.toml")["sign"]}


def _kinds() -> set[str]:
    spans = {"dish", "method", "symptom", "equipment", "ingredient", "place", "elevation", "number"}
    return spans | {"time", "temperature", "degree", "mass", "volume", "length", "pressure", "portion", "clock"}
