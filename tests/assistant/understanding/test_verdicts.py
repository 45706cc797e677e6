"""What cooks believe is put to the test: the first sentence says whether it is so, and gives the figure."""

from __future__ import annotations

import pytest

from assistant.answering import reply_to


def first_sentence(text: str) -> str:
    """The headline of a reply."""
    return reply_to(text).text.split("\n")[0]


VERDICTS = [
    ("is it for lack of oxygen that my macaroni stays chewy at 2,800 m", "No", "pressure, not the oxygen"),
    ("my chef says a handful of salt makes the pot boil hotter at 7,500 ft. Who is right?", "Partly", "0.3 °F"),
    ("does salt drop the boiling point of water at 1,500 m", "No", "raises"),
    ("does sugar make the boiling point drop at 2,000 m", "No", "never lowers"),
    ("my aunt says a copper pot boils water at a higher temperature. is she right? 2,400 m", "No", "mistaken"),
    ("is a microwave immune to altitude, 7,000 ft", "Partly", "same power"),
    ("they say weaker gravity makes the sponge rise at 3,000 m", "No", "0.09 %"),
    ("does the equator make water boil lower in Quito", "No", "latitude"),
    ("does the wind lower the boiling point at 11,000 ft", "Partly", "shield"),
    ("does lemon juice in the water raise its boiling point at 5,000 ft", "No", "hundredth"),
    ("does the step per 1000 ft grow the higher you climb, at 14,000 ft", "No", "The fall is even"),
    ("is it impossible to cook chickpeas at 3,700 m", "Half true", "under pressure"),
    ("true or false: a kettle cuts out before it boils at 3,600 m", "No", "steam"),
    ("I was told water boils at 95 C at 3,000 m, is that right", "No", "90 °C"),
    ("true or false: at 2,000 m water boils at about 93.5 C", "Yes", "93.5 °C"),
    ("does an oven thermostat have to be recalibrated for altitude", "No", "warmth"),
]


@pytest.mark.parametrize(("asked", "verdict", "why"), VERDICTS)
def test_a_claim_is_judged_in_the_first_sentence(asked: str, verdict: str, why: str) -> None:
    said = first_sentence(asked)
    assert said.startswith(verdict), said
    assert why in said


def test_a_claim_that_nobody_knows_is_not_judged() -> None:
    said = first_sentence("my uncle swears the full moon decides where water boils at 2,000 m, is that so")
    assert not said.startswith(("Yes", "No,", "No.", "Partly"))


@pytest.mark.parametrize("height", ["600 m", "1,900 m", "4,300 m"])
def test_the_climb_for_a_degree_is_as_good_as_even(height: str) -> None:
    said = reply_to(f"is it true that water boils 1 C lower for every 300 m, at {height}").text
    assert said.startswith("Yes")
    assert "grow" not in said


TIMES = [
    ("the recipe says 20 min for potatoes, is that right at 8,500 ft", "No: 20 min is the time at sea level"),
    ("my aunt says 15 minutes for brown lentils, who is right at 2,900 m", "No: 15 min is the time at sea level"),
]


@pytest.mark.parametrize(("asked", "told"), TIMES)
def test_a_time_that_is_stated_is_judged_for_the_place(asked: str, told: str) -> None:
    assert first_sentence(asked).startswith(told)


RANKED = [
    ("rank these by how much they change at 8,200 ft: poached salmon, boiled potatoes, roast duck", "boiling potatoes"),
    ("put lentils, rice and a pot roast in order, from most to least affected at 2,600 m", "simmering lentils"),
]


@pytest.mark.parametrize(("asked", "most"), RANKED)
def test_dishes_are_ranked_the_most_changed_first(asked: str, most: str) -> None:
    said = first_sentence(asked)
    assert said.startswith("From most to least changed")
    assert said.split(": ", 1)[1].startswith(most)


FOR_A_CLASS = [
    ("I want a demonstration for my trainees of boiling and pressure, 2,300 m", "syringe"),
    ("write me a sum for the whiteboard, where water boils at 2,700 m", "2,700 m ÷ 300 m"),
    ("explain to a child of eight why rice takes longer at 3,000 m", "blanket"),
    ("explain to my kids why the cake sank at 2,000 m", "balloons"),
]


@pytest.mark.parametrize(("asked", "told"), FOR_A_CLASS)
def test_a_class_and_a_child_get_what_they_are_told_by(asked: str, told: str) -> None:
    assert told in first_sentence(asked)


def test_eggs_for_a_child_are_still_timed() -> None:
    assert "min" in first_sentence("my 8 year old likes eggs hard, how long do I boil them at 2,000 m, tell me")


def test_a_bird_is_not_told_the_reading_of_a_roast() -> None:
    bird = first_sentence("how long must a roast duck rest before carving at 6,500 ft")
    assert bird.startswith("Rest a chicken or a duck 15 to 25 min")
    assert "145" not in bird
    assert "165 °F" in bird
    assert "145 °F" in first_sentence("how many minutes should I let a leg of lamb rest at 2,300 m")
