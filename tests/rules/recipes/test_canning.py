"""Recipes for canning: what is one, that nothing of its process moves, and what is said instead."""

from __future__ import annotations

import pytest

from assistant.answering import reply_to
from assistant.recipes.text import read_text
from assistant.replies.recipe.worded import in_words
from rules.recipes.canning import is_canning
from rules.recipes.convert import Converted, convert

LODGE_M = 2133.6
PEACHES = """Peaches in syrup
Ingredients
8 lb peaches
3 cups sugar
6 cups water
Method
Boil the sugar and water 5 minutes.
Pack into hot pint jars, leaving 1/2 inch headspace.
{}
"""


def canned(text: str, way: tuple[float, float] = (0, LODGE_M)) -> Converted:
    return in_words(convert(read_text(text), from_elevation_m=way[0], to_elevation_m=way[1]))


@pytest.mark.parametrize(
    "step",
    [
        "Process 25 minutes in a boiling-water canner.",
        "Process pints 25 minutes in a water bath.",
        "Adjust lids and process the jars in boiling water for 25 minutes.",
        "Process at 8 pounds pressure for 10 minutes.",
        "Wipe the rims, screw on the lids, and boil the jars, covered by an inch of water, 25 minutes.",
        "Process at 240 °F in a pressure canner for 10 minutes.",
    ],
)
@pytest.mark.parametrize("way", [(0, LODGE_M), (LODGE_M, 0)], ids=["up", "down"])
def test_nothing_of_a_process_is_converted(step, way) -> None:
    new = canned(PEACHES.format(step), way)
    assert new.canning
    assert [one.text for one in new.steps] == [one.text for one in new.recipe.steps]
    assert not any(line.changed for line in new.ingredients)
    stop = next(c for c in new.cautions if c.level == "stop")
    assert "tested recipe's own table" in stop.text
    assert "simmerline ask" in stop.text


# text of the steps, whether it is canning
WHETHER = [
    ("Ladle into hot jars, wipe the rims, adjust lids.", True),
    ("Ladle into sterilised jars and seal. Keep in a cool place. Refrigerate after opening.", True),
    ("Ladle into clean jars, cool, and refrigerate up to 3 weeks.", False),
    ("Ladle into freezer jars, leave 1/2 inch headspace, and freeze.", False),
    ("Process in the food processor for 30 seconds, until smooth.", False),
    ("Bake the custards in 6 jars in a water bath at 325 °F, 35 minutes.", False),
    ("Pour into glasses and chill 4 hours.", False),
    ("Shake with ice and strain into a mason jar.", False),
    ("Seal the jars finger-tight and cook sous vide at 176 °F for 1 hour.", False),
    ("Pressure-cook 10 minutes.", False),
]


@pytest.mark.parametrize(("text", "whether"), WHETHER)
def test_what_a_recipe_for_canning_is(text, whether) -> None:
    recipe = read_text(f"Quince jelly\nIngredients\n2 lb quinces\n1 cup sugar\nMethod\n{text}")
    assert is_canning(recipe) is whether


def test_a_jam_for_the_refrigerator_is_converted() -> None:
    text = "Jam\nIngredients\n2 lb plums\n3 cups sugar\nMethod\nBoil to 220 °F, 20 minutes. Cool and refrigerate."
    new = canned(text)
    assert "207 °F (was 220 °F)" in new.steps[0].text
    assert not any(c.level == "stop" for c in new.cautions)


def test_the_gel_point_of_a_canned_jam_is_converted_and_its_process_is_not() -> None:
    text = (
        "Plum jam\nIngredients\n2 lb plums\n3 cups sugar\nMethod\nBoil to the gel point, 220 °F, 20 minutes.\n"
        "Process 10 minutes in a boiling-water canner."
    )
    first, second = canned(text).steps
    assert first.text == "Boil to the gel point, 207 °F (was 220 °F), 20 minutes."
    assert second.text == "Process 10 minutes in a boiling-water canner."


# AIB 539, guide 2: peaches, boiling water: 20 min and more take 5, 10 and 15 min more above 1,000, 3,000 and 6,000 ft
@pytest.mark.parametrize(
    ("to_ft", "band", "adds"), [(2000, "1,001–3,000 ft", 5), (5000, "3,001–6,000 ft", 10), (7000, "above 6,000 ft", 15)]
)
def test_the_printed_band_is_told_and_asked_for(to_ft, band, adds) -> None:
    new = canned(PEACHES.format("Process 25 minutes in a boiling-water canner."), (0, to_ft * 0.3048))
    stop = next(c.text for c in new.cautions if c.level == "stop")
    assert band in stop
    assert f"{adds} min" in stop
    question = stop.split('"')[1]
    answer = reply_to(question)
    assert answer.figure("process_time").value == 25 + adds


def test_a_recipe_under_pressure_is_told_the_printed_pressure() -> None:
    text = (
        "Beans\nIngredients\n2 lb green beans\nMethod\nProcess pints 20 minutes at 10 lb pressure in a pressure canner."
    )
    new = canned(text)
    stop = next(c.text for c in new.cautions if c.level == "stop")
    # AIB 539, guide 4: dial gauge 14 psi from 6,001 to 8,000 ft, weighted gauge 15 psi above 1,000 ft
    assert "14 psi on a dial gauge or 15 psi on a weighted gauge" in stop
    assert "10 lb pressure" in new.steps[0].text
    assert "14 psi" in reply_to(stop.split('"')[1]).headline


def test_above_every_table_nothing_is_promised() -> None:
    new = canned(PEACHES.format("Process 25 minutes in a boiling-water canner."), (0, 3200))
    assert any("none is printed above 10,000 ft" in c.text for c in new.cautions)


def test_the_reply_opens_with_it() -> None:
    text = PEACHES.format("Process 25 minutes in a boiling-water canner.")
    answer = reply_to(f"convert this to 7,000 ft:\n\n{text}")
    assert answer.headline.startswith("Peaches in syrup is a recipe for canning and is not converted:")
    assert "nothing in it has to change" not in answer.text
    assert answer.text.index("Stop: ") < answer.text.index("Ingredients")
