import math

import pytest

from assistant.replies.worded import answer
from rules.foods.dishes import dishes
from rules.model import Request
from rules.physics.units import to_c
from rules.safety.lethality import judge, kind_judged

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(**{"topic": "time", "method": "sous_vide", "elevation_m": SEVEN_THOUSAND_FT_M, **fields}))


def test_time_and_bath_stay():
    low, high = (ask(dish="steak", dish_class="tender_cut", elevation_m=m) for m in (0.0, 3048.0))
    assert low.figure("bath_temperature").value == high.figure("bath_temperature").value
    assert low.figure("cook_time").value == high.figure("cook_time").value


def test_a_bath_over_the_boil_is_brought_down_and_lengthened():
    given = ask(dish_class="root_vegetable", temperature_c=92.0, time_min=60.0)
    assert given.figure("bath_temperature").value < given.figure("boiling_point").value
    assert given.figure("cook_time").value > 60


def test_a_cool_bath_is_limited_to_four_hours():
    assert any("4 h" in c.text for c in ask(dish_class="general", temperature_c=50.0).cautions)


def test_fish_is_not_pasteurised():
    assert any("not pasteurised" in c.text for c in ask(dish="salmon", dish_class="fish").cautions)


def test_the_bath_is_covered_where_it_dries_faster():
    assert any("Cover the bath" in s for s in ask(dish_class="tender_cut").steps)
    assert not any("Cover the bath" in s for s in ask(dish_class="tender_cut", elevation_m=0.0).steps)


CHICKEN = {"dish": "chicken breasts", "dish_class": "poultry_pieces"}


def test_too_cool_is_no_and_says_what_to_set():
    given = ask(**CHICKEN, temperature_c=to_c(130), time_min=120.0)
    assert given.headline.startswith("No.")
    assert given.cautions[0].level == "stop"
    assert given.figure("bath_instead").value == pytest.approx(60)
    assert given.figure("cook_time") is None
    assert given.figure("bath_temperature") is None


def test_too_short_is_no_and_says_how_long():
    given = ask(**CHICKEN, temperature_c=60.0, time_min=45.0)
    assert given.headline.startswith("No.")
    assert given.figure("pasteurised_after").value == 90
    assert not any(f.value == 45 for f in given.figures)


def test_long_enough_is_yes():
    assert ask(**CHICKEN, temperature_c=60.0, time_min=90.0).headline.startswith("Yes.")
    assert ask(dish="steak", dish_class="tender_cut", temperature_c=55.0, time_min=180.0).headline.startswith("Yes.")


def test_a_refusal_waits_for_no_elevation():
    given = ask(**CHICKEN, temperature_c=to_c(130), time_min=120.0, elevation_m=None)
    assert given.missing == ()
    assert given.headline.startswith("No.")
    assert ask(**CHICKEN, temperature_c=60.0, elevation_m=None).missing == ("elevation",)


def test_no_usual_bath_is_one_that_would_be_refused():
    for dish in dishes().values():
        if "sous_vide" in dish.methods and (kind := kind_judged(dish.name, dish.dish_class)):
            bath = ask(dish=dish.name, dish_class=dish.dish_class).figure("bath_temperature")
            assert judge(kind, bath.low).needs_min is not None, dish.name


def test_usual_times_of_poultry_make_it_safe():
    for dish in dishes().values():
        if "sous_vide" in dish.methods and "poultry" in dish.traits:
            given = ask(dish=dish.name, dish_class=dish.dish_class)
            assert given.figure("cook_time").low >= given.figure("pasteurised_after").value, dish.name


def test_a_whole_bird_is_read_at_the_thickest_printed_piece():
    given = ask(dish="whole chicken", dish_class="whole_bird", temperature_c=65.0, time_min=180.0)
    assert given.headline.startswith("No.")
    assert "70 mm" in given.headline


def test_cooked_to_order_eggs_are_no_refusal():
    assert not ask(dish="eggs", dish_class="egg", temperature_c=63.0, time_min=60.0).headline.startswith(("No", "Yes"))
    assert ask(dish="eggs", dish_class="egg", temperature_c=58.0, time_min=45.0).headline.startswith("No.")


def test_dry_kidney_beans_never():
    given = ask(dish="kidney beans", dish_class="dried_bean", temperature_c=88.0)
    assert given.headline.startswith("No.")
    assert given.figure("cook_time") is None
    assert "boil them hard" in given.steps[0]


def test_chickpeas_may():
    assert ask(dish="chickpeas", dish_class="dried_bean").figure("cook_time")


@pytest.mark.parametrize("temperature_c", [math.nan, math.inf, -5.0, 900.0])
def test_a_bath_that_cannot_be_is_no_verdict(temperature_c):
    assert not ask(**CHICKEN, temperature_c=temperature_c).headline.startswith(("No.", "Yes."))
