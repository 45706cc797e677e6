"""Time in wet heat: how its range is made, what is said of it in words, and of beans that poison."""

import math

import pytest

from assistant.replies.sentences import worded
from assistant.replies.worded import answer
from rules.book import Case
from rules.foods.dishes import classes
from rules.heat import wet
from rules.heat.wet import Heats, Pot, pace_words
from rules.model import Request
from rules.physics.ambient import ambient
from rules.physics.kinetics import softening
from rules.physics.water import boiling_point_c

PSI_PA = 6894.757
CLASSES = ("pasta", "dried_bean", "starchy_root", "collagen_cut")


@pytest.mark.parametrize("elevation_m", [1500.0, 3000.0, -300.0])
@pytest.mark.parametrize("dish_class", CLASSES)
def test_the_range_spans_the_stubborn_piece_and_the_yielding_one(dish_class: str, elevation_m: float) -> None:
    """The z of the class in its table, 10 to the power of a temperature over z, and two spreads that have nothing to do
    with each other added as squares (JCGM 100:2008, 5.1, from memory)."""
    asked = Request(topic="time", method="boil", dish_class=dish_class, dish="it", time_min=20.0, time_high_min=30.0)
    cook = answer(Request(**{f: getattr(asked, f) for f in asked.__slots__} | {"elevation_m": elevation_m})).figure(
        "cook_time"
    )
    soft, cooler_k = softening(dish_class), boiling_point_c(0.0) - boiling_point_c(elevation_m)
    ends = [10 ** (cooler_k / z) for z in (soft.z_low_k, soft.z_k, soft.z_high_k)]
    down, up = (
        math.hypot(math.log(own), math.log(z))
        for own, z in ((25 / 20, ends[1] / min(ends)), (30 / 25, max(ends) / ends[1]))
    )
    assert cook.value == pytest.approx(25 * ends[1], rel=0.06)
    assert cook.low == pytest.approx(25 * ends[1] / math.exp(down), rel=0.06)
    assert cook.high == pytest.approx(25 * ends[1] * math.exp(up), rel=0.06)
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


# what surrounds the food, without the engine ------------------------------------------------------------------------

AT_SEVEN = {"topic": "time", "method": "boil", "elevation_m": 2133.6}


def case(**fields):
    return Case(Request(**{**AT_SEVEN, **fields}))


def z_of(dish_class):
    return softening(dish_class).z_k


@pytest.mark.parametrize(
    ("pot", "elevation_m", "working_c"),
    [
        (Pot("boil", "water"), 0.0, 99.97), (Pot("boil", "water"), 2133.6, 92.87),
        (Pot("simmer", "liquid", below_boil_k=3.0), 2133.6, 89.87),
        (Pot("poach", "liquid", below_boil_k=2.0, hold_c=75.0), 2133.6, 75.0),
        (Pot("poach", "liquid", below_boil_k=2.0, hold_c=95.0), 2133.6, 90.87),
        (Pot("poach", "liquid", hold_c=0.0), 0.0, 0.0),
    ],
)  # fmt: skip
def test_a_pot_is_as_hot_as_it_is_held_and_the_boil_allows(pot, elevation_m, working_c):
    """Boiling points by the steam tables on the standard atmosphere."""
    assert pot.working_c(ambient(elevation_m)) == pytest.approx(working_c, abs=0.01)


def test_a_pot_knows_here_the_baseline_and_sea_level():
    heats = Pot("stew", "liquid", below_boil_k=3.0).heats(case(from_elevation_m=1524.0))
    assert (heats.method, heats.heat) == ("stew", "liquid")
    # 202.9 degF at 5,000 ft
    assert (heats.here_c, heats.there_c, heats.table_c) == pytest.approx((89.87, 91.95, 96.97), abs=0.1)


def test_a_time_of_the_cooks_is_scaled_and_its_range_is_the_stubborn_piece():
    heats, dish_class = Heats("boil", "water", 90.0, 100.0, 100.0), "collagen_cut"
    time = wet.wet_time(case(dish_class=dish_class, time_min=60.0, time_high_min=80.0), heats)
    assert (time.base_low_min, time.base_mid_min, time.base_high_min, time.stated) == (60, 70, 80, True)
    assert time.factor == pytest.approx(10 ** (10 / z_of(dish_class)))
    assert time.likely_min == pytest.approx(70 * time.factor)
    soft = softening(dish_class)
    assert 60 * 10 ** (10 / soft.z_high_k) < time.low_min < 60 * time.factor
    assert 80 * time.factor < time.high_min < 80 * 10 ** (10 / soft.z_low_k)
    assert time.source == "common-practice"


def test_the_tables_time_is_carried_to_the_baseline_first():
    """A potato's 15 to 25 min hold at 100 degC: at 95 degC where the recipe was written they are longer already."""
    heats = Heats("boil", "water", 90.0, 95.0, 100.0)
    time = wet.wet_time(case(dish_class="starchy_root"), heats)
    longer = 10 ** (5 / z_of("starchy_root"))
    assert (time.base_low_min, time.base_high_min) == pytest.approx((15 * longer, 25 * longer))
    assert time.likely_min == pytest.approx(20 * longer**2)
    assert time.stated is False


def test_dry_beans_that_were_not_soaked_take_longer():
    """Black beans under pressure: 20 to 25 min without a soak, from common practice; the table's time is for soaked."""
    beans = {"dish": "black beans", "dish_class": "dried_bean", "method": "pressure_cook"}
    heats = Heats("pressure_cook", "steam_inside", 121.0, 121.0, 121.0)
    soaked, dry, unsaid = (wet.wet_time(case(**beans, soaked=said), heats) for said in (True, False, None))
    assert (dry.base_low_min, dry.base_high_min) == (20, 25)
    assert soaked.base_high_min < dry.base_low_min
    assert unsaid == soaked


def test_a_time_that_nobody_knows_is_none_and_told_by_how_much():
    heats = Heats("boil", "water", 90.0, 100.0, 100.0)
    assert wet.wet_time(case(dish_class="layer_cake"), heats) is None
    part = wet.time_part(case(dish_class="layer_cake"), heats)
    (factor,) = part.figures
    soft = softening("layer_cake")
    ends = [10 ** (10 / z) for z in (soft.z_high_k, soft.z_k, soft.z_low_k)]
    assert (factor.low, factor.value, factor.high) == pytest.approx(ends, abs=0.005)
    why = worded(part.because, "us")
    assert why.startswith("No tested time is known for this. The water is 18 °F (10 °C) cooler than at sea level")
    assert why.endswith("Work from the time you know at sea level.")
    assert worded(part.maths, "us").startswith("Factor = 10^((100 − 90)/z) with z = 45 K (25–60 K): ×1.67")
    assert part.sources == (soft.source,)


@pytest.mark.parametrize(
    ("here_c", "said"),
    [(90.0, "18 °F (10 °C) cooler"), (110.0, "18 °F (10 °C) hotter"), (100.04, "stands at 212 °F"), (99.9, "cooler")],
)
@pytest.mark.parametrize(
    ("heat", "named"),
    [
        ("liquid", "The liquid"), ("water", "The water"), ("steam", "The steam "), ("crock", "The crock"),
        ("steam_inside", "The steam inside"),
    ],
)  # fmt: skip
def test_what_is_cooler_or_hotter_is_named(heat, named, here_c, said):
    text = worded(wet.pace_here(case(), Heats("boil", heat, here_c, 100.0, 100.0), 2.0), "us")
    assert text.startswith(named)
    assert said in text
    assert ("takes about twice as long at that heat" in text) is (said != "stands at 212 °F")
    assert "at sea level" in text


@pytest.mark.parametrize(
    ("here_c", "ends"),
    [
        (90.0, ", and how strongly the cooler heat tells on the food."),
        (110.0, ", and how strongly the hotter heat tells on the food."),
    ],
)
def test_the_range_is_explained(here_c, ends):
    heats = Heats("boil", "water", here_c, 100.0, 100.0)
    text = worded(wet.time_part(case(dish_class="starchy_root"), heats).because, "us")
    assert f"It goes by {classes()['starchy_root'].varies}{ends}" in text
    assert text.endswith(ends)
    own = worded(wet.time_part(case(dish_class="starchy_root", time_min=20.0), heats).because, "us")
    assert own.endswith(f"The range around the 20 min you gave is{ends.replace(', and', '')}")


def test_where_nothing_moved_the_range_is_only_the_foods():
    heats = Heats("boil", "water", 100.0, 100.0, 100.0)
    text = worded(wet.time_part(case(dish_class="starchy_root", elevation_m=0.0), heats).because, "us")
    assert "so the time stays. It goes by " in text
    assert "tells on the food" not in text
    own = worded(wet.time_part(case(dish_class="starchy_root", elevation_m=0.0, time_min=20.0), heats).because, "us")
    assert own.endswith("so the time stays.")


def test_a_time_is_told_with_its_figures_headline_and_sources():
    heats = Heats("boil", "water", 90.0, 100.0, 100.0)
    part = wet.time_part(case(dish="potatoes", dish_class="starchy_root", time_min=20.0), heats)
    here, base = part.figures
    assert (here.id, here.value, base.id, base.value) == ("cook_time", 33, "baseline_time", 20)
    assert worded(part.headline, "us").startswith("About 33 min (29 to 39 min) for boiling potatoes at 7,000 ft")
    assert part.sources == ("hiroshima-potato-kinetics", "common-practice")
    assert wet.time_part(case(dish_class="starchy_root", topic="doneness"), heats).headline == ""
    named = wet.time_part(case(dish="potatoes", dish_class="starchy_root", time_min=20.0), heats, "big potatoes")
    assert "big potatoes" in worded(named.headline, "us")


@pytest.mark.parametrize(("method", "by_the_burner"), [("boil", True), ("simmer", True), ("steam", False)])
def test_what_is_boiled_down_goes_by_the_burner(method, by_the_burner):
    asked = case(dish="plum jam", dish_class="jam", method=method, time_min=30.0)
    assert ("boiled_down" in asked.traits) is True
    part = wet.time_part(asked, Heats(method, "liquid", 90.0, 97.0, 97.0))
    assert ("nfpa-54" in part.sources) is by_the_burner


def test_the_equation_is_written_to_a_tenth_of_a_degree():
    heats = Heats("boil", "water", 92.868, 99.974, 99.974)
    part = wet.time_part(case(dish_class="starchy_root", time_min=20.0), heats)
    written = "Factor = 10^((100 − 92.9)/z) with z = 45 K (34–60 K): ×1.44."
    assert worded(part.maths, "us") == written
