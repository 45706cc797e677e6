from rules.engine import answer
from rules.model import Request

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
