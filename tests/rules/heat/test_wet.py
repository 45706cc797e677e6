"""Time in wet heat: how its range is made, what is said of it in words, and of beans that poison."""

import pytest

from assistant.replies.sentences import worded
from assistant.replies.worded import answer
from rules.heat.wet import pace_words
from rules.model import Request
from rules.physics.kinetics import softening
from rules.physics.water import boiling_point_c

PSI_PA = 6894.757
CLASSES = ("pasta", "dried_bean", "starchy_root", "collagen_cut")


@pytest.mark.parametrize("elevation_m", [1500.0, 3000.0, -300.0])
@pytest.mark.parametrize("dish_class", CLASSES)
def test_the_range_spans_the_stubborn_piece_and_the_yielding_one(dish_class: str, elevation_m: float) -> None:
    """The z of the class in its table, and 10 to the power of a temperature over z, as the reaction rate is defined."""
    asked = Request(topic="time", method="boil", dish_class=dish_class, dish="it", time_min=20.0, time_high_min=30.0)
    cook = answer(Request(**{f: getattr(asked, f) for f in asked.__slots__} | {"elevation_m": elevation_m})).figure(
        "cook_time"
    )
    soft, cooler_k = softening(dish_class), boiling_point_c(0.0) - boiling_point_c(elevation_m)
    ends = [10 ** (cooler_k / z) for z in (soft.z_low_k, soft.z_k, soft.z_high_k)]
    assert cook.low == pytest.approx(20 * min(ends), rel=0.06)
    assert cook.value == pytest.approx(25 * ends[1], rel=0.06)
    assert cook.high == pytest.approx(30 * max(ends), rel=0.06)
    assert max(ends) / min(ends) > 1.02, "z has a range"


@pytest.mark.parametrize(("elevation_m", "longer"), [(0.0, False), (600.0, False), (1200.0, True), (2133.6, True)])
def test_where_water_boils_cool_beans_that_poison_take_the_longer_boil(elevation_m: float, longer: bool) -> None:
    beans = answer(
        Request(topic="time", method="boil", dish="kidney beans", dish_class="dried_bean", elevation_m=elevation_m)
    )
    told = next(c.text for c in beans.cautions if "poison" in c.text)
    assert ("take the longer" in told) is longer


@pytest.mark.parametrize(("psi", "taken"), [(15, True), (29.9, True), (30.5, False), (45, False)])
def test_a_gauge_that_no_cooker_has_is_not_reckoned_with(psi: float, taken: bool) -> None:
    reply = answer(Request(topic="pressure", gauge_pa=psi * PSI_PA, elevation_m=2133.6))
    assert bool(reply.figures) is taken
    assert any("gauge pressure is" in caution.text for caution in reply.cautions) is not taken


@pytest.mark.parametrize(
    ("factor", "said"),
    [
        (1.004, "as long"),
        (0.8, "about 20 % less time"),
        (1.43, "about 43 % longer"),
        (2.02, "about twice as long"),
        (2.47, "about 2½ times as long"),
        (3.22, "about three times as long"),
        (7.1, "about 7 times as long"),
    ],
)
def test_how_much_longer_is_said_as_cooks_say_it(factor, said):
    assert worded(pace_words(factor), "us") == said


@pytest.mark.parametrize(
    ("dish", "dish_class", "lid"),
    [("chicken stock", "stock", "an open pot"), ("beef stew", "mixed_stew", "a covered pot")],
)
def test_the_pot_that_is_reckoned_with_is_told(dish, dish_class, lid):
    asked = Request(topic="time", method="simmer", dish=dish, dish_class=dish_class, elevation_m=2133.6, time_min=180)
    told = next(b.text for b in answer(asked).because if b.rule == "simmer.extra_liquid")
    assert f"{lid} of 22 cm (9 in)" in told
