"""What tells a concept, and what makes its words something else."""

from __future__ import annotations

import pytest

from assistant.understanding.pipeline import read
from rules.foods.dishes import dishes


def told(text: str) -> set[str]:
    return {heard.concept for heard in read(text)._.concepts}


@pytest.mark.parametrize(
    "text",
    [
        "can I can green beans at 7,000 ft",
        "how do you can corn",
        "can peaches in syrup",
        "want to can them tonight",
        "putting up forty pints of tomatoes",
        "waterbath caning peeches",
    ],
)
def test_can_is_the_verb_of_preserving(text: str) -> None:
    assert "canning" in told(text)


@pytest.mark.parametrize(
    "text",
    [
        "can I cook green beans in the oven",
        "how can corn be cooked faster",
        "can peaches be frozen",
        "when can we eat the beans",
        "20 quarts of veal bones, how long to simmer",
        "a tin of tomatoes in the stew",
    ],
)
def test_can_is_to_be_able(text: str) -> None:
    assert "canning" not in told(text)


@pytest.mark.parametrize(
    ("text", "concept"), [("honey for my 8 month old", "infant"), ("soup for gran, she is 91", "at_risk")]
)
def test_people_by_their_age(text: str, concept: str) -> None:
    assert concept in told(text)


@pytest.mark.parametrize("text", ["honey glazed baby carrots", "baby back ribs with honey", "chelow at 7,500 ft"])
def test_lookalikes_are_told_apart(text: str) -> None:
    assert not told(text) & {"infant", "at_risk"}


def test_the_row_of_a_dish_decides() -> None:
    """A steak fried like chicken is no chicken."""
    assert "poultry" in told("chicken thighs")
    assert "poultry" not in told("chicken fried steak")


@pytest.mark.parametrize("name", sorted(d.name for d in dishes().values() if d.dish_class == "dried_bean"))
def test_every_bean_with_lectin_is_heard(name: str) -> None:
    if "lectin" in dishes()[name].traits:
        assert "lectin_bean" in told(f"{name} in the slow cooker")
