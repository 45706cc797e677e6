"""No answer speaks of a bone, a crust or a yolk to a dish that has none: three dishes of every class."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from itertools import islice
from pathlib import Path
from typing import Any

import pytest

from assistant.worked_out import work_out
from rules.foods.dishes import classes, dishes, usual_method
from rules.model import Request

SENTENCES = tomllib.loads((Path(__file__).parent / "foreign_sentences.toml").read_text())["sentence"]
DISHES_OF_A_CLASS, UP_M = 3, 2300.0
# what is said of a kettle goes by the dish as well
EQUIPMENT = ("kettle",)


def every_third() -> list[tuple[str, str]]:
    """Three dishes of every class, spread over the class."""
    found: list[tuple[str, str]] = []
    for id in classes():
        own = [name for name, dish in dishes().items() if dish.dish_class == id]
        step = max(len(own) // DISHES_OF_A_CLASS, 1)
        found += [(id, name) for name in islice(own[::step], DISHES_OF_A_CLASS)]
    return found


def answers(dish: str) -> Iterator[tuple[str, str]]:
    """What is said of a dish, by the topic: its time, when it is done, and its rise where it is proofed."""
    row = dishes()[dish]
    proofed = (("bake_adjust", None),) if "proof" in row.methods else ()
    for topic, method in (("time", usual_method(dish, row.dish_class)), ("doneness", None), *proofed):
        request = Request(
            text=f"{topic} of {dish}", topic=topic, dish=dish, dish_class=row.dish_class, method=method,
            elevation_m=UP_M, elevation_from="stated", subject="proof" if topic == "bake_adjust" else None,
            equipment=EQUIPMENT,
        )  # fmt: skip
        yield topic, work_out(request).answer.text


@pytest.mark.parametrize(("dish_class", "dish"), every_third())
def test_every_sentence_fits_the_dish(dish_class: str, dish: str) -> None:
    kinds = {dish_class, *dishes()[dish].traits}
    for topic, text in answers(dish):
        for row in SENTENCES:
            said = re.search(row["says"], text) if kinds.isdisjoint(row["only"]) else None
            assert said is None, f"{topic} of {dish} ({dish_class}): {said}"


@pytest.mark.parametrize("row", SENTENCES, ids=lambda row: row["says"])
def test_its_own_foods_still_hear_it(row: dict[str, Any]) -> None:
    """A sentence that nobody hears any longer is listed in vain."""
    own = (name for dish_class, name in every_third() if {dish_class, *dishes()[name].traits} & set(row["only"]))
    assert any(re.search(row["says"], text) for name in own for _, text in answers(name))
