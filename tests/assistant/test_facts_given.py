"""Facts that stand in the question are used: places, figures of the asker's own, amounts, ages."""

from __future__ import annotations

from dataclasses import replace

import pytest

from assistant.dialogue.memory import Memory
from assistant.dialogue.turn import take_turn
from assistant.understanding.pipeline import read
from rules.engine import settle
from rules.model import Request

SAME_M = 30.0


def asked(text: str) -> Request:
    """What is heard of a question that opens a conversation."""
    return take_turn(text, Memory()).reply.request


def told(text: str) -> str:
    """The first line of the reply."""
    return take_turn(text, Memory()).answer.text.partition("\n")[0]


@pytest.mark.parametrize(
    ("text", "kitchen_m", "baseline_m"),
    [
        ("gnocchi 4 min in Lisbon, floury in Cortina after 4, how long", 1224, 15),
        ("venison ragu 2 hours, Hamburg, Quito, how long?", 2850, 10),
        ("my focaccia is adjusted for 5,500 ft and the new shop is at 8,200 ft, how much yeast", 2499, 1676),
        ("my cheesecake new york sank in la paz, what now", 3640, None),
        ("flatbread at 2600 m oven 240 C, what do I set", 2600, None),
        ("my uncle swears a gammon needs an extra hour at 7,600 ft. 8 lb gammon, how long", 2316, None),
        ("we run a cafe in the highest city in the US. bag says 12 minutes for orzo", 3094, None),
        ("barley 40 min on the altiplano?", 3800, None),
        ("cinnamon rolls baked in Taos, 375 oven, change anything?", 2162, None),
        ("chana 4 whistles in Mumbai, Darjeeling how many", 2042, 10),
    ],
)
def test_the_kitchen_is_where_the_asker_stands(text: str, kitchen_m: float, baseline_m: float | None) -> None:
    request = asked(text)
    assert request.elevation_m == pytest.approx(kitchen_m, abs=SAME_M)
    if baseline_m is None:
        assert request.from_elevation_m is None or request.from_elevation_m == 0
    else:
        assert request.from_elevation_m == pytest.approx(baseline_m, abs=SAME_M)


def test_a_place_that_flour_is_compared_with_is_no_kitchen() -> None:
    assert asked("why more water when the semolina is the same as in Durban").elevation_m is None


@pytest.mark.parametrize(
    ("text", "taken_c", "written_c"),
    [
        ("the card wants 116, I let the fudge get to 120 C at 2100 m. how far over was I", 120, 116),
        ("took my butterscotch to 140 C in Puno like the recipe says, did I overshoot?", 140, 140),
        ("was i over? brittle, boiled it to 300 f at 8,300 ft, sheet says 295", 148.9, 146.1),
    ],
)
def test_a_syrup_that_was_taken_too_far(text: str, taken_c: float, written_c: float) -> None:
    request = asked(text)
    assert (request.topic, request.subject) == ("sugar_stage", None)
    assert request.taken_c == pytest.approx(taken_c, abs=0.1)
    assert request.temperature_c == pytest.approx(written_c, abs=0.1)


def test_how_far_over_is_said_by_the_cooks_own_figure() -> None:
    # water boils at 90 degC at 3,000 m (from memory, boiling tables): 10 K lower
    line = told("I cooked the caramels to 120 C at 3000 m, recipe 120, too far?")
    assert line.startswith("Yes, 10 °C")
    assert "110 °C" in line
    assert told("stopped the caramels at 110 C at 3000 m, recipe 120, was I over?").startswith("No, 110 °C")


def test_the_water_test_and_the_cards_figure_are_told_apart() -> None:
    # 201 degF is 11 degF under the sea's boil
    assert "285 °F" in told("water test says 201 F here, my brittle card says 296, where do I stop")
    assert (
        "275 °F"
        in take_turn("toffee 290 f on the card, probe reads 197 in boiling water, stop at?", Memory()).answer.text
    )


def test_both_temperatures_of_sugar_are_carried() -> None:
    line = told("fudge to 238 and brittle to 302 on my cards, kitchen 7,000 ft. both please")
    assert "for 238 °F" in line
    assert "for 302 °F" in line


@pytest.mark.parametrize(
    "text",
    [
        "double fried wings: 155 first, 180 second in Nagoya. 2500 m, both?",
        "tempura twice: oil 160 then 190 in Nagoya. what at 2500 m?",
        "wedges in the fryer: blanched at 140, finished at 185 at sea level. both at 2500 m",
    ],
)
def test_both_temperatures_of_fat_are_carried(text: str) -> None:
    request = asked(text)
    assert (request.topic, request.method, len(request.temperatures_c)) == ("temperature", "fry", 2)
    assert told(text).startswith("First fat ")


def test_fat_is_turned_down_by_the_published_rule() -> None:
    # 3 degF for each 1,000 ft: 30 degF at 10,000 ft
    line = told("hand cut chips, blanch 300 then finish 375 at sea level, now at 10,000 ft")
    assert "270 °F" in line
    assert "345 °F" in line


def test_a_recipe_that_is_right_at_a_height_is_carried_from_there() -> None:
    line = told("scones already adjusted for 5,000 ft, now at 8,000 ft: 4 tsp baking powder, how much now")
    assert "the step from 5,000 ft" in line
    assert "the step" not in told("scones at 8,000 ft, 4 tsp baking powder, how much")
    whole = told(
        "my carrot cake is already adjusted for Boulder. In Leadville do I go from sea level or just the difference?"
    )
    assert "the step from 5,430 ft" in whole
    assert "0 °F" not in whole


def test_one_told_figure_of_a_recipe_is_asked_about() -> None:
    assert told(
        "recipe was written for sea level, kitchen at 7,000 ft. butter cake. 2 cups sugar, what now"
    ).startswith("Use ")
    assert asked("recipe from my gran in Cardiff, pearl barley 30 minutes, and now I'm in Quito").time_min == 30


def test_teaspoons_stay_teaspoons() -> None:
    assert "instead of 4 tsp" in told("4 tsp baking powder for drop scones at 6,800 ft, how many tsp?")


def test_amounts_without_a_unit_beside_kilos() -> None:
    assert asked("flour 2 kg water 1300, focaccia at 2,400 m, how much water").quantity.value == 1300  # type: ignore[union-attr]
    assert asked("900 g flour 600 water for pizza at 2,300 m how much water").quantity.value == 600  # type: ignore[union-attr]


def test_water_beside_flour_is_a_doughs() -> None:
    request = asked("630 g water to a kilo of flour in Oslo, bakery in Cusco, how much water?")
    assert (request.topic, request.dish_class) == ("bake_adjust", "yeast_bread")


def test_a_pot_is_no_amount_of_food() -> None:
    request = asked("30 litre pots, mealie pap for 90 at 1,700 m, how much meal and how much water")
    assert request.quantity is None
    assert request.portions == 90


def test_several_meals_are_counted() -> None:
    assert asked("how much dry pasta for 20 hikers, 5 dinners, at 3,000 m").portions == 100
    assert asked("how much dry pasta for 20 hikers at 3,000 m").portions == 20


@pytest.mark.parametrize("text", ["gran is 84 and frail", "papa, 79, likes it soft", "she just turned 90"])
def test_an_age_is_no_temperature(text: str) -> None:
    request = asked(f"{text}. boiled eggs at 2,000 m, how long")
    assert request.temperature_c is None
    assert request.portions is None


def test_a_core_is_no_age() -> None:
    assert asked("the chicken core is 76 C at 2000 m, done?").temperature_c == 76


def test_eggs_for_the_ill_are_hard() -> None:
    request = asked("dad is on chemo, boiled eggs at 2,200 m, I give them 7 minutes, is it enough")
    assert request.dish == "hard-boiled eggs"
    assert told("dad is on chemo, boiled eggs at 2,200 m, I give them 7 minutes, is it enough").startswith(
        "No: 7 min is short"
    )


def test_a_bake_that_is_steamed_is_timed_as_steamed() -> None:
    request = asked("jam roly poly, card says steam 2 hours. 1,700 m. anything to change? or a pressure cooker")
    assert (request.topic, request.method, request.time_min) == ("time", "steam", 120)


def test_a_rise_that_is_a_recipes_is_carried() -> None:
    assert "at sea level is done in about" in told(
        "danish proof 2 h in my recipe from Aarhus. at 3,000 m what proof time"
    )


def test_the_bath_in_the_oven_is_no_canner() -> None:
    assert asked("baked custard in a water bath at 7,000 ft, how long").method == "bake"
    assert asked("cheesecake in jars, water bath, 7,000 ft, how long").method == "preserve"
    assert told("how do I can custard in a water bath at 7,000 ft").startswith("No.")


@pytest.mark.parametrize("text", ["eggs. 24. soft. 7900 ft", "veal shank stock 8,200 ft does it reduce faster"])
def test_what_was_said_is_not_asked_again(text: str) -> None:
    assert not take_turn(text, Memory()).answer.missing


def test_a_time_of_another_kitchen_is_not_one_that_has_passed() -> None:
    request = asked("brisket smoked at 225 in Houston 13 hours. now at 7,000 ft how long")
    assert (request.method, request.time_min, request.elapsed_min) == ("smoke", 780, None)


def test_a_time_of_a_town_nobody_knows_is_a_baseline() -> None:
    request = asked("moussaka 50 min in Zorgville, now the chalet at 1,900 m")
    assert (request.time_min, request.elapsed_min) == (50, None)


def test_how_long_the_onions_are_cooked_is_no_time_of_the_dish() -> None:
    assert asked("goat curry, onions browned 25 minutes first. how long at 2,400 m").time_min is None


def test_what_was_assumed_is_said() -> None:
    alike = Request(
        topic="temperature", dish="carrots", dish_class="root_vegetable", elevation_m=2000.0, elevation_from="stated",
        choices=("time", "temperature"),
    )  # fmt: skip
    settled = settle(alike)
    assert (settled.topic, settled.choices) == ("time", ())
    assert [unused.kind for unused in settled.unused] == ["assumed"]
    assert settle(replace(alike, elevation_m=None)).choices == ("time", "temperature")


def test_kilos_are_told_first_where_kilos_are_asked() -> None:
    assert " kg (" in told("how many kilos of pasta for 30 at 9,000 ft")


def test_a_bag_says_minutes() -> None:
    assert read("freekeh says 22 on the bag").has_extension("times")
    assert asked("freekeh at 8,000 ft, says 22 on the bag").time_min == 22


def test_six_sharp_is_a_time() -> None:
    assert asked("slice the brisket at 6 sharp, 5,000 ft, when do I light the smoker").service_time == "18:00"
