from rules.engine import answer
from rules.model import Request

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(**{"topic": "time", "method": "roast", "elevation_m": SEVEN_THOUSAND_FT_M, **fields}))


CHICKEN = {"dish": "roast chicken", "dish_class": "whole_bird"}


def test_the_dish_is_not_roasted_twice_in_a_sentence():
    assert ask(**CHICKEN).headline.startswith("Roast chicken takes")


def test_plural_dishes_take():
    assert ask(dish="roast potatoes", dish_class="starchy_root").headline.startswith("Roast potatoes take ")


def test_both_published_opinions_are_told():
    told = next(b for b in ask(**CHICKEN).because if b.rule == "roast.published")
    assert {"csu-high-altitude-food-prep", "usda-roast-325"} <= set(told.sources)


def test_a_low_temperature_is_that_of_the_meat_not_the_oven():
    oven = ask(dish="prime rib", dish_class="tender_cut", temperature_c=54.4).figure("oven")
    assert oven.value > 100


def test_nothing_is_added_at_sea_level():
    flat = ask(**CHICKEN, elevation_m=0.0)
    assert flat.figure("cook_time").value == flat.figure("baseline_time").value
    assert flat.figure("usda_time") is None


def test_coming_down_is_no_slower():
    down = ask(**CHICKEN, elevation_m=0.0, from_elevation_m=SEVEN_THOUSAND_FT_M, time_min=100.0)
    assert down.figure("cook_time").value < 100


def test_a_word_with_roast_and_no_formula_is_a_question_of_time():
    given = answer(Request(topic="bake_adjust", method="roast", elevation_m=SEVEN_THOUSAND_FT_M, **CHICKEN))
    assert given.request.topic == "time"
    assert given.figure("cook_time")
