"""The gate at its edges: the last foot printed, the last minute a steam canner runs, the jar, the canner owned."""

import pytest

from assistant.replies.worded import answer
from rules.foods.dishes import dishes
from rules.model import Quantity, Request
from rules.physics.units import to_f
from rules.preserving import gate, process_times
from rules.preserving.vessel import vessel

FT_M, PA_PER_PSI = 0.3048, 6894.757


def asked(dish=None, feet=7000, **fields):
    known = dishes().get(dish or "")
    fields = {"elevation_m": None if feet is None else feet * FT_M, **fields}
    return Request(topic="preserve", dish=dish, dish_class=known.dish_class if known else None, **fields)


# how high the tables go


@pytest.mark.parametrize(("feet", "reason"), [(None, None), (9_999, None), (10_000, None), (10_001, "too_high")])
@pytest.mark.parametrize("way", [None, "boiling_water_canning", "pressure_canning", "weighted_gauge"])
@pytest.mark.parametrize("dish", ["pears", None])
def test_the_tables_end_at_ten_thousand_feet(dish, way, feet, reason):
    """Utah State's highest band, and the extension texts' 15 psi, end at 10,000 ft."""
    assert gate.refusal(asked(dish, feet, subject=way)) == reason


# a steam canner


@pytest.mark.parametrize("read_at_ft", [None, 0, 3000, 5000, 8000])
@pytest.mark.parametrize(
    ("dish", "feet", "reason"),
    [
        ("figs", 1000, None),
        ("figs", 1001, "steam_too_long"),
        ("tomatoes", 3001, None),
        ("tomatoes", 6001, "steam_too_long"),
        ("peaches", 10_000, None),
    ],
)
def test_steam_outlasted_by_the_shortest_time_of_the_food_is_refused(dish, feet, reason, read_at_ft):
    """Figs are printed from 45 min, tomatoes from 35; the elevation adds 5, 10 and 15; wherever the recipe was read."""
    read_at_m = None if read_at_ft is None else read_at_ft * FT_M
    request = asked(dish, feet, subject="steam_canning", from_elevation_m=read_at_m)
    assert gate.refusal(request) == reason


def test_the_longer_end_of_a_range_decides_over_steam():
    """25 to 35 min at 7,000 ft: 35 and 15 is more than 45."""
    assert gate.refusal(asked("peaches", subject="steam_canning", time_min=25)) is None
    assert gate.refusal(asked("peaches", subject="steam_canning", time_min=25, time_high_min=35)) == "steam_too_long"


@pytest.mark.parametrize(("minutes", "reason"), [(45, None), (45.5, "steam_too_long"), (46, "steam_too_long")])
def test_steam_is_let_through_up_to_45_minutes(minutes, reason):
    assert gate.refusal(asked("peaches", 500, subject="steam_canning", time_min=minutes)) == reason


def test_only_steam_has_the_limit():
    assert gate.refusal(asked("figs", subject="boiling_water_canning")) is None
    assert answer(asked("figs", subject="boiling_water_canning", time_min=45)).figure("process_time").value == 60


def test_a_steam_canner_of_the_cooks_own_is_held_to_the_limit():
    assert gate.refusal(asked("figs", equipment=("steam_canner",))) == "steam_too_long"


# the jar


@pytest.mark.parametrize(
    ("dish", "quantity", "fields", "reason"),
    [
        ("apple juice", Quantity(0.5, "gal"), {}, None),
        ("grape juice", Quantity(0.5, "gal"), {"time_min": 10}, None),
        ("grape juice", Quantity(0.5, "gal"), {"time_min": 5}, "time_not_printed"),
        ("apple juice", Quantity(0.5, "gal"), {"subject": "steam_canning"}, "half_gallon_jars"),
        ("apple juice", Quantity(0.5, "gal"), {"subject": "pressure_canning"}, "half_gallon_jars"),
        ("apple juice", Quantity(0.5, "gal"), {"equipment": ("steam_canner",)}, "half_gallon_jars"),
        ("peaches", Quantity(0.5, "gal"), {}, "half_gallon_jars"),
        ("green beans", Quantity(0.5, "gal"), {}, "half_gallon_jars"),
        ("peaches", Quantity(1, "gal"), {}, None),
        ("peaches", Quantity(0.5, "lb"), {}, None),
        ("peaches", Quantity(1, "qt"), {}, None),
    ],
)
def test_a_half_gallon_jar_is_known_by_its_size(dish, quantity, fields, reason):
    assert gate.refusal(asked(dish, quantity=quantity, **fields)) == reason


# the canner that is owned, and the one the food calls for


@pytest.mark.parametrize(
    ("dish", "fields", "way"),
    [
        ("green beans", {}, "pressure"),
        ("green beans", {"equipment": ("steam_canner",)}, "pressure"),
        ("green beans", {"subject": "boiling_water_canning"}, "boiling_water"),
        ("peaches", {}, "boiling_water"),
        ("peaches", {"equipment": ("dial_gauge_canner",)}, "boiling_water"),
        ("peaches", {"equipment": ("steam_canner",)}, "steam"),
        ("peaches", {"equipment": ("steam_canner",), "subject": "boiling_water_canning"}, "boiling_water"),
        ("peaches", {"gauge_pa": 10 * PA_PER_PSI}, "pressure"),
        ("peaches", {"subject": "weighted_gauge"}, "pressure"),
        ("peaches", {"subject": "dial_gauge"}, "pressure"),
        (None, {}, "boiling_water"),
        (None, {"equipment": ("dial_gauge_canner",)}, "pressure"),
        (None, {"equipment": ("weighted_gauge_canner",)}, "pressure"),
        (None, {"equipment": ("pressure_canner",)}, "pressure"),
        (None, {"equipment": ("electric_pressure_cooker",)}, "boiling_water"),
        (None, {"equipment": ("pressure_canner",), "subject": "steam_canning"}, "steam"),
    ],
)
def test_the_canner_to_answer_for(dish, fields, way):
    assert vessel(asked(dish, **fields)) == way


@pytest.mark.parametrize("canner", ["dial_gauge_canner", "weighted_gauge_canner", "pressure_canner"])
def test_an_owned_canner_is_no_cooker(canner):
    cooker = asked("green beans", method="pressure_cook", equipment=("electric_pressure_cooker",))
    assert gate.refusal(cooker) == "electric_canner"
    assert gate.refusal(asked("green beans", method="pressure_cook", equipment=(canner,))) is None
    assert gate.refusal(asked("green beans", method="preserve", equipment=())) is None


# empty jars, and food that is dried


@pytest.mark.parametrize(
    ("dish", "reason"),
    [
        ("green beans", "jars_of_low_acid"),
        ("melons", "jars_of_low_acid"),
        ("octopus", "jars_of_low_acid"),
        ("jam", None),
        ("pickled beets", None),
        ("figs", None),
        ("sauerkraut", None),
        (None, None),
    ],
)
def test_jars_are_sterilised_for_acid_food_alone(dish, reason):
    assert gate.refusal(asked(dish, subject="jar_sterilising")) == reason


def test_jerky_is_heated_through_before_it_is_dried():
    """USDA on jerky: 160 degF, poultry 165 degF, before the drier, which stands at 130 to 140 degF."""
    told = answer(asked("beef jerky"))
    found = {f.id: to_f(f.value) for f in told.figures}
    assert found["meat_first_temperature"] == pytest.approx(160, abs=0.1)
    assert found["drying_temperature"] == pytest.approx(140, abs=0.1)
    assert "160 °F" in told.headline
    assert "165 °F" in told.headline
    assert "fruit" not in told.headline + " ".join(told.steps)


def test_jerky_of_a_bird_is_heated_to_165_f():
    told = answer(asked("turkey", subject="jerky"))
    assert to_f(told.figure("poultry_first_temperature").value) == pytest.approx(165, abs=0.1)
    assert told.figure("meat_first_temperature") is None


def test_meat_is_never_dried_as_fruit_is():
    for dish in ("venison roast", "salmon", "chicken breasts"):
        told = answer(asked(dish, subject="drying"))
        assert "before it is dried" in told.headline, dish


def test_fruit_is_dried_without_a_word_of_meat():
    told = answer(asked("apples", subject="drying"))
    assert "Dry apples" in told.headline
    assert not told.cautions


@pytest.mark.parametrize("way", ["boiling_water_canning", "steam_canning", "pressure_canning"])
def test_jerky_is_never_canned(way):
    assert gate.refusal(asked("beef jerky", subject=way)) == "untested"


@pytest.mark.parametrize("subject", ["blanching", "drying"])
def test_what_needs_no_jar_is_not_refused_for_the_food(subject):
    assert gate.refusal(asked("octopus", subject=subject)) is None
    assert gate.refusal(asked("green beans", 12_000, subject=subject)) is None


# the time that was read


def test_the_longer_end_of_a_range_is_the_time():
    told = answer(asked("peaches", time_min=20, time_high_min=25))
    assert told.figure("process_time").value == 40


@pytest.mark.parametrize(
    ("dish", "minutes", "read_at_ft", "reason"),
    [
        ("peaches", 19, None, "time_not_printed"),
        ("peaches", 20, None, None),
        ("peaches", 180, None, None),
        ("peaches", 181, None, "time_not_printed"),
        ("peaches", 20, 3000, "time_not_printed"),
        ("peaches", 25, 3000, None),
        ("peaches", 29, 6000, "time_not_printed"),
        ("peaches", 30, 6000, None),
        ("peaches", 20, 12_000, None),
        ("jam", 5, 1000, None),
        ("jam", 5, 1001, "time_not_printed"),
        ("jam", 14, 6001, "time_not_printed"),
        ("jam", 15, 6001, None),
        (None, 4, None, "time_not_printed"),
        (None, 5, None, None),
        (None, 180, None, None),
        (None, 181, None, "time_not_printed"),
    ],
)
def test_a_time_shorter_than_the_printed_column_is_refused(dish, minutes, read_at_ft, reason):
    """Peaches 20/25/30/35 and jam 5/10/15: the guide's shortest cells of the band that the recipe was read in."""
    read_at_m = None if read_at_ft is None else read_at_ft * FT_M
    assert gate.refusal(asked(dish, time_min=minutes, from_elevation_m=read_at_m)) == reason


@pytest.mark.parametrize(
    ("base", "feet", "time"),
    [
        (15, 7000, 25),
        (15.5, 7000, 30.5),
        (16, 7000, 31),
        (19, 7000, 34),
        (20, 7000, 35),
        (15, 6000, 20),
        (16, 6000, 26),
    ],
)
def test_a_time_between_the_short_and_the_long_tables_takes_the_longer_addition(base, feet, time):
    """Short is printed up to 15 min and takes 10 above 6,000 ft; long from 20 min takes 15."""
    assert process_times.process(asked(feet=feet, time_min=base)).most_min == time


@pytest.mark.parametrize(("minutes", "kept"), [(24, False), (25, True), (30, True), (31, False)])
def test_a_time_under_pressure_is_one_that_is_printed(minutes, kept):
    """Carrots: 25 min in pints, 30 in quarts."""
    told = answer(asked("carrots", subject="pressure_canning", time_min=minutes))
    assert (told.figure("process_time") is not None) is kept


@pytest.mark.parametrize(
    ("base", "read_at_ft", "feet", "low", "high"),
    [
        (20, 0, 1000, 20, 20),
        (25, 3000, 3001, 30, 30),
        (25, 3000, 9000, 35, 40),
        (30, 6000, 9000, 35, 40),
        (35, 8000, 9000, 35, 40),
        (35, 7000, 2000, 35, 35),
        (35, 8000, 6000, 35, 35),
        (15, 8000, 9000, 15, 20),
        (15, 6000, 9000, 20, 25),
    ],
)
def test_a_recipe_of_a_higher_band_has_its_addition_already(base, read_at_ft, feet, low, high):
    """Peaches 20/25/30/35 by the guide, 40 above 8,000 ft by Utah State; applesauce 15/20/20/25, 30 there."""
    request = Request(time_min=base, from_elevation_m=read_at_ft * FT_M, elevation_m=feet * FT_M)
    found = process_times.process(request)
    assert (found.base_min, found.least_min, found.most_min) == (base, low, high)
