"""What a later turn does about what was refused: presses for it, leaves it, or asks about something beside it."""

from __future__ import annotations

import pytest

from assistant.understanding import danger
from assistant.understanding.pipeline import read
from assistant.understanding.pressing import Pressing
from assistant.understanding.scene import Scene

JARS = "how long do I water bath pints of green beans at 7,000 ft"
BEANS = "dry kidney beans in the slow cooker on low at 7,000 ft"
ROAST = "roast chicken is done at 150 inside up here, right?"
CANNER = "pints of green beans at 10 psi in the pressure canner at 7,000 ft"
SOURED = "the beef stew stood on the counter all night"


def taken(*talk: str) -> Pressing | None:
    """What the last utterance of a talk does about what was refused before it."""
    scene, told = Scene(), None
    for text in talk:
        listened = danger.listen(read(text), scene)
        scene, told = listened.scene, listened.pressing
    return told


@pytest.mark.parametrize(
    ("refused", "text", "how"),
    [
        (JARS, "so 90 minutes?", "time"),
        (JARS, "nobody ever got sick from them", "luck"),
        (JARS, "the neighbour says it's fine", "word"),
        (JARS, "and a splash of vinegar in each jar", "added"),
        (JARS, "they smell fine", "senses"),
        (JARS, "just this once", "small"),
        (BEANS, "my aunt never bothers with that", "word"),
        (SOURED, "the kitchen is cold in here", "cold"),
        (SOURED, "into the fridge now?", "again"),
    ],
)
def test_presses(refused: str, text: str, how: str) -> None:
    told = taken(refused, text)
    assert told is not None
    assert (told.stance, told.how) == ("pressed", how)


@pytest.mark.parametrize(
    ("refused", "text"),
    [
        (JARS, "the pressure canner then"),
        (JARS, "ok into the freezer"),
        (JARS, "plum jam instead, half pints"),
        (BEANS, "the pressure cooker then, how long"),
        (ROAST, "165 then"),
        (CANNER, "15 then"),
        (SOURED, "sorry, it was in the fridge"),
    ],
)
def test_leaves(refused: str, text: str) -> None:
    told = taken(refused, text)
    assert told is not None
    assert told.stance == "left"


@pytest.mark.parametrize(
    ("refused", "text"),
    [
        (JARS, "thanks, good to know"),
        (JARS, "what does water boil at in Leadville"),
        (BEANS, "off to the coast on Friday, at 20 m, as usual there?"),
    ],
)
def test_is_about_something_beside_it(refused: str, text: str) -> None:
    told = taken(refused, text)
    assert told is not None
    assert told.stance == "apart"


def test_a_food_that_is_gone_back_to_is_refused_again() -> None:
    told = taken(JARS, "plum jam, half pints", "thanks", "back to the green beans, two hours in the big pot")
    assert told is not None
    assert told.stance == "pressed"


def test_nothing_is_pressed_for_where_nothing_was_refused() -> None:
    assert taken("how long to boil pasta at 7,000 ft", "my mother always did it so") is None
