import pytest

from assistant.replies.worded import answer
from rules.model import Request
from rules.physics.units import to_c

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(**{"topic": "time", "method": "roast", "elevation_m": SEVEN_THOUSAND_FT_M, **fields}))


CHICKEN = {"dish": "roast chicken", "dish_class": "whole_bird"}


def test_the_dish_is_not_roasted_twice_in_a_sentence():
    assert " for roast chicken at " in ask(**CHICKEN).headline


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


TURKEY = {"dish": "turkey", "dish_class": "whole_bird"}


def test_a_bird_in_a_cool_oven_is_refused():
    given = ask(**TURKEY, temperature_c=to_c(250), time_min=600.0)
    assert given.headline.startswith("No.")
    assert given.cautions[0].level == "stop"
    assert all(f.value != 600 for f in given.figures)
    assert given.figure("oven").low > to_c(320)


def test_the_refusal_waits_for_no_elevation():
    given = ask(**TURKEY, temperature_c=to_c(250), elevation_m=None)
    assert given.missing == ()
    assert given.headline.startswith("No.")


def test_a_temperature_for_the_centre_is_no_refusal():
    given = ask(**TURKEY, temperature_c=to_c(165))
    assert "165 °F (74 °C) is for the centre" in given.headline
    assert " for roasting turkey at 7,000 ft" in given.headline.split("165 °F")[0]
    assert given.figure("cook_time")


def test_but_all_night_it_is_the_oven():
    assert ask(**TURKEY, temperature_c=to_c(165), time_min=720.0).headline.startswith("No.")


@pytest.mark.parametrize(
    ("dish", "dish_class", "temp_f", "refused"),
    [
        ("roast beef", "tender_cut", 170, True),
        ("roast beef", "tender_cut", 250, False),
        ("roast beef", "tender_cut", 120, True),
        ("meatloaf", "ground_meat", 150, True),
        ("meatloaf", "ground_meat", 160, False),
        ("pork shoulder", "collagen_cut", 195, False),
        ("pork shoulder", "collagen_cut", 180, True),
        ("carrots", "root_vegetable", 180, False),
        ("beef rouladen", "collagen_cut", 300, True),
        ("rabbit", "poultry_pieces", 300, False),
    ],
)
def test_which_raw_meat_goes_into_which_oven(dish, dish_class, temp_f, refused):
    given = ask(dish=dish, dish_class=dish_class, temperature_c=to_c(temp_f))
    assert given.headline.startswith("No.") is refused, given.headline


def test_a_cool_oven_for_a_whole_cut_is_noted():
    given = ask(dish="roast beef", dish_class="tender_cut", temperature_c=to_c(250))
    assert any("USDA asks for an oven of 325" in c.text for c in given.cautions)
