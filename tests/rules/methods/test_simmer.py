from assistant.replies.worded import answer
from rules.model import Request

SEVEN_THOUSAND_FT_M = 2133.6


def ask(**fields):
    return answer(Request(topic="time", method="simmer", **fields))


def test_a_simmer_stands_under_the_boil():
    given = ask(dish="white rice", dish_class="rice", elevation_m=SEVEN_THOUSAND_FT_M)
    assert given.figure("liquid_temperature").value < given.figure("boiling_point").value


def test_starch_is_thickened_over_direct_heat():
    given = ask(dish_class="starch_pudding", elevation_m=SEVEN_THOUSAND_FT_M)
    assert any("double boiler" in step for step in given.steps)


def test_a_stock_is_taken_as_open():
    stock, beans = (
        ask(dish_class=c, elevation_m=SEVEN_THOUSAND_FT_M, time_min=60.0) for c in ("stock", "collagen_cut")
    )
    assert stock.figure("extra_liquid").value > 3 * beans.figure("extra_liquid").value


def test_turning_up_the_heat_is_answered():
    assert any("Turning up the heat" in b.text for b in ask(dish_class="soup", elevation_m=1500.0).because)


def test_rice_is_soaked_up_here():
    high, low = (
        answer(Request(topic="time", method="simmer", dish="white rice", dish_class="rice", elevation_m=m))
        for m in (2133.6, 0.0)
    )
    assert any("Soak the rice" in s for s in high.steps)
    assert not any("Soak the rice" in s for s in low.steps)
