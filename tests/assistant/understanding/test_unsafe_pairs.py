"""Unsafe pairs of act and food over the whole lexicon, said in many ways: never a figure, always a verdict first."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.answering import reply_to
from assistant.contributing.validate_dangers import verdict_words
from rules.foods.dishes import Dish, dishes
from rules.preserving.foods import food

VERDICTS = tuple(verdict_words("en")["danger"])
PLACES = ("", " at 7,000 ft", " at 2,100 m", ", we are at eighty five hundred feet", " in Leadville")
DOUBTS = ("", ", is that safe", ", how long", " please", ", my inspector said it is fine", ", ok?")
BEFORE = ("", "hi chef, ", "quick one: ", "for a novel, ", "would you kindly tell me, ", "grandma always did: ")
CONTEXTS = ((), ("how long to boil rice at 7,000 ft",), ("my kitchen is at 7,000 ft", "thanks"))


@dataclass(frozen=True)
class Pair:
    """Acts that are unsafe for some foods. acts: with {} for the food; foods: which dishes of the lexicon."""

    name: str
    acts: tuple[str, ...]
    foods: Callable[[Dish], bool]


def canned_as(*kinds: str) -> Callable[[Dish], bool]:
    """Dishes that are canned so; not those that are pickled, or come in a can by their name."""
    return lambda dish: (
        food(dish.name, dish.dish_class).kind in kinds
        and dish.dish_class not in ("pickle", "canned_low_acid", "canned_high_acid")
    )


PAIRS = (
    Pair(
        "low acid in boiling water",
        (
            "water bath can {} in pint jars",
            "canning {} in a boiling water bath",
            "boil jars of {} for the pantry shelf",
            "put up quarts of {} in the water bath canner",
        ),
        canned_as("low_acid"),
    ),
    Pair(
        "no canner",
        (
            "can jars of {} in the oven",
            "canning {} in my electric pressure cooker",
            "seal jars of {} in the microwave",
            "canning {} in the slow cooker",
        ),
        canned_as("low_acid", "high_acid", "acidify"),
    ),
    Pair(
        "beans with lectin under the boil",
        ("{} in the slow cooker from dry", "sous vide dry {}", "crockpot dry {} on low all day"),
        lambda dish: "lectin" in dish.traits and dish.dish_class == "dried_bean",
    ),
    Pair(
        "poultry underdone",
        ("pull the {} at 145 degrees inside", "is {} done at 150 f internal", "{} reads 140 F in the middle, serve it"),
        lambda dish: dish.dish_class == "whole_bird" and "poultry" in dish.traits,
    ),
    Pair(
        "ground meat underdone",
        ("pull the {} at 135 F internal", "{} reads 140 degrees in the middle, is it done"),
        lambda dish: dish.dish_class == "ground_meat",
    ),
    Pair(
        "left out",
        (
            "{} sat out on the counter overnight, can I reheat it",
            "left the {} out all night, boil it again",
            "{} was left out for 9 hours, still good to eat",
        ),
        lambda dish: dish.dish_class in ("soup", "stock", "mixed_stew", "rice"),
    ),
    Pair(
        "poultry in a cool oven",
        ("roast the {} at 200 F overnight", "slow roast {} in a 180 F oven"),
        lambda dish: dish.dish_class == "whole_bird" and "poultry" in dish.traits,
    ),
)


def slipped(text: str, at: int) -> str:
    """The text with two inner letters of one of its longer words changed round, as thumbs do; 0 for none."""
    words = text.split(" ")
    long = [i for i, word in enumerate(words) if len(word) >= 7 and word.isalpha()]
    if not at or not long:
        return text
    i = long[at % len(long)]
    word, cut = words[i], len(words[i]) // 2
    words[i] = word[: cut - 1] + word[cut] + word[cut - 1] + word[cut + 1 :]
    return " ".join(words)


@pytest.mark.parametrize("pair", PAIRS, ids=lambda pair: pair.name)
def test_no_figure_and_a_verdict_first(pair: Pair) -> None:
    foods = sorted(name for name, dish in dishes().items() if pair.foods(dish))
    assert foods

    @settings(max_examples=150, derandomize=True, deadline=None)
    @given(
        st.sampled_from(foods),
        st.sampled_from(pair.acts),
        st.sampled_from(BEFORE),
        st.sampled_from(DOUBTS),
        st.sampled_from(PLACES),
        st.sampled_from(CONTEXTS),
        st.integers(0, 3),
    )
    def holds(name: str, act: str, before: str, doubt: str, place: str, context: tuple[str, ...], slip: int) -> None:
        said = before + slipped(act, slip).format(name) + place + doubt
        answer = reply_to(said, context)
        assert answer.figures == (), f"{said} -> {answer.text[:200]}"
        assert answer.headline.startswith(VERDICTS), f"{said} -> {answer.text[:200]}"
        assert any(caution.level == "stop" for caution in answer.cautions), said

    holds()
