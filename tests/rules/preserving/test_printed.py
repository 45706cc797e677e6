"""Printed times: which jar, pack and style is meant, how they are told, and what is refused of them."""

import pytest

from assistant.replies.worded import answer
from rules.foods.dishes import dishes
from rules.model import Quantity, Request
from rules.preserving import jars, printed
from rules.preserving.gate import refusal
from rules.preserving.times_here import times
from rules.preserving.vessel import BOILING_WATER, PRESSURE

FT_M = 0.3048
PINT, QUART, HALF_PINT, HALF_GALLON = (Quantity(*q) for q in ((1.0, "pt"), (1.0, "qt"), (0.5, "pt"), (0.5, "gal")))


def asked(dish, feet=7000, **fields):
    known = dishes()[dish]
    return Request(topic="preserve", dish=dish, dish_class=known.dish_class, elevation_m=feet * FT_M, **fields)


def told(dish, feet=7000, **fields):
    return answer(asked(dish, feet, **fields))


@pytest.mark.parametrize(
    ("jar", "size"),
    [
        (Quantity(4, "oz"), "half_pint"),
        (Quantity(8, "oz"), "half_pint"),
        (Quantity(250, "ml"), "half_pint"),
        (Quantity(12, "oz"), "pint"),
        (Quantity(330, "ml"), "pint"),
        (Quantity(500, "ml"), "pint"),
        (Quantity(1.5, "pt"), "quart"),
        (Quantity(750, "ml"), "quart"),
        (Quantity(1, "l"), "quart"),
        (Quantity(0.5, "gal"), "half_gallon"),
        (Quantity(1, "gal"), None),
    ],
)
def test_a_jar_takes_the_size_that_holds_it(jar, size):
    assert jars.size_of(jar) == size


@pytest.mark.parametrize(
    ("size", "own", "takes"),
    [
        ("half_pint", ("pint", "quart"), "pint"),
        ("half_pint", ("half_pint", "pint"), "half_pint"),
        ("pint", ("quart",), "quart"),
        ("quart", ("half_pint", "pint"), None),
    ],
)
def test_a_size_that_is_not_printed_takes_the_next_bigger_one(size, own, takes):
    assert jars.fitting(size, own) == takes


@pytest.mark.parametrize(
    ("feet", "minutes"),
    [(0, 30), (1000, 30), (1001, 35), (3000, 35), (3001, 40), (6000, 40), (6001, 45), (8000, 45), (8001, 50)],
)
def test_both_ends_of_every_band(feet, minutes):
    given = told("peaches", feet, jars=(QUART,), packing=("raw",))
    assert given.figure("process_time").value == minutes
    assert f"quarts of raw-pack peaches for {minutes} min" in given.headline


def test_above_8000_ft_the_longer_of_two_tables_is_told():
    given = told("peaches", 9000, jars=(PINT,), packing=("hot",))
    time = given.figure("process_time")
    assert (time.low, time.value, time.high, time.sea_level) == (35, 40, 40, 20)
    assert "usu-canning-bands" in {s for b in given.because for s in b.sources}


def test_what_is_not_said_is_told_in_one_line():
    headline = told("peaches").headline
    assert "hot pack, pints 35 min, quarts 40 min; raw pack, pints 40 min, quarts 45 min" in headline
    assert told("peaches").figure("process_time") is None


def test_packs_that_take_the_same_are_not_told_apart():
    assert "pints 35 min, quarts 40 min." in told("plums").headline
    assert "pack" not in told("plums").headline


@pytest.mark.parametrize(
    ("packing", "minutes"),
    [
        (("crushed",), {50}),
        (("in_water",), {55}),
        (("whole", "in_water"), {55}),
        (("in_juice",), {100}),
        (("no_liquid",), {100}),
        (("whole",), {55, 100}),
        ((), {50, 55, 100}),
    ],
)
def test_tomatoes_by_their_style(packing, minutes):
    found = times(asked("tomatoes", jars=(PINT,), packing=packing), BOILING_WATER)
    assert {time.most_min for time in found} == minutes


@pytest.mark.parametrize(("packing", "minutes"), [(("boneless",), {90}), (("with_bones",), {75}), ((), {75, 90})])
def test_chicken_by_its_bones(packing, minutes):
    found = times(asked("chicken thighs", jars=(QUART,), packing=packing), PRESSURE)
    assert {time.most_min for time in found} == minutes


@pytest.mark.parametrize(
    ("dish", "jar", "minutes", "as_size"),
    [
        ("jam", Quantity(4, "oz"), 15, "half-pint"),
        ("jam", Quantity(250, "ml"), 15, "half-pint"),
        ("dill pickles", Quantity(12, "oz"), 20, "pint"),
        ("pears", Quantity(500, "ml"), 35, "pint"),
        ("pears", Quantity(4, "oz"), 35, "pint"),
        ("pears", Quantity(1, "l"), 40, "quart"),
        ("peaches", Quantity(1.5, "pt"), 40, "quart"),
    ],
)
def test_an_odd_jar_is_told_whose_time_it_takes(dish, jar, minutes, as_size):
    given = told(dish, jars=(jar,), packing=("hot",))
    assert f"for {minutes} min" in given.headline
    assert f"takes the time of a {as_size}" in given.headline


def test_a_half_pint_of_what_is_printed_from_pints_up_takes_the_pint():
    given = told("pears", jars=(HALF_PINT,))
    assert "for 35 min" in given.headline
    assert "takes the time of a pint" in given.headline


def test_a_pack_that_is_not_printed_is_said():
    assert "No raw-pack time is printed for pears" in told("pears", packing=("raw",), jars=(PINT,)).headline


@pytest.mark.parametrize(
    ("dish", "jar", "way"),
    [
        ("jam", QUART, "half-pints or pints 15 min"),
        ("salsa", QUART, "pints 25 min"),
        ("lemon curd", PINT, "half-pints 25 min"),
        ("chili", QUART, "pints 75 min"),
        ("trout", QUART, "pints 100 min"),
        ("creamed corn", QUART, "pints 85 min"),
        ("mushrooms", QUART, "half-pints or pints 45 min"),
        ("green beans", Quantity(1, "gal"), "pints 20 min, quarts 25 min"),
    ],
)
def test_a_jar_that_is_too_big_is_refused_and_the_tested_one_told(dish, jar, way):
    assert refusal(asked(dish, jars=(jar,))) == "jar_too_big"
    given = told(dish, jars=(jar,))
    assert given.headline.startswith("No. No process is printed")
    assert not given.figures
    assert any(step.startswith("The tested way") and way in step for step in given.steps)


@pytest.mark.parametrize(("dish", "reason"), [("apple juice", None), ("peaches", "half_gallon_jars")])
def test_half_gallons_hold_juice_alone(dish, reason):
    assert refusal(asked(dish, jars=(HALF_GALLON,))) == reason


def test_juice_in_half_gallons_takes_its_own_time():
    assert told("apple juice", jars=(HALF_GALLON,)).figure("process_time").value == 20
    assert "half-gallon" not in told("apple juice").headline


@pytest.mark.parametrize(
    ("fields", "minutes", "pressures"),
    [
        ({}, 25, ("14 psi", "15 psi")),
        ({"subject": "dial_gauge"}, 25, ("14 psi",)),
        ({"subject": "weighted_gauge"}, 25, ("15 psi",)),
        ({"equipment": ("dial_gauge_canner",)}, 25, ("14 psi",)),
    ],
)
def test_minutes_and_pressure_in_one_sentence(fields, minutes, pressures):
    headline = told("green beans", jars=(QUART,), **fields).headline
    assert f"for {minutes} min" in headline
    assert [p for p in ("14 psi", "15 psi") if p in headline] == list(pressures)


def test_under_pressure_the_time_is_the_same_at_every_elevation():
    for feet in (0, 1500, 5000, 9900):
        assert told("carrots", feet, jars=(PINT,)).figure("process_time").value == 25


def test_tomatoes_under_pressure_take_the_pair_of_the_higher_pressure():
    given = told("tomatoes", 7000, subject="pressure_canning", jars=(PINT,), packing=("crushed",))
    assert given.figure("process_time").value == 15
    assert given.figure("dial_gauge").value == 14


@pytest.mark.parametrize(
    ("dish", "feet", "words"),
    [
        ("pears", 5000, "hot pack, pints 30 min, quarts 35 min"),
        ("tomatoes", 0, "crushed, pints 35 min, quarts 45 min"),
    ],
)
def test_open_steam_takes_what_its_water_lasts_for(dish, feet, words):
    headline = told(dish, feet, subject="steam_canning").headline
    assert "in open steam" in headline
    assert words.removeprefix("hot pack, ") in headline
    assert "85 min" not in headline


def test_steam_that_does_not_last_is_refused_for_the_jar_that_is_meant():
    assert refusal(asked("tomatoes", 0, subject="steam_canning", jars=(QUART,), packing=("in_water",))) is None
    assert refusal(asked("tomatoes", 6500, subject="steam_canning")) == "steam_too_long"


@pytest.mark.parametrize("dish", ["peaches", "jam", "green beans", "chicken", "dill pickles", "sauerkraut"])
def test_every_printed_time_names_its_recipe_and_headspace(dish):
    cautions = [c.text for c in told(dish, jars=(PINT,)).cautions]
    assert any("Holds only for the tested recipe" in text and "headspace" in text for text in cautions)


@pytest.mark.parametrize("packing", [("raw",), ("hot",), ()])
def test_a_time_of_the_cook_that_is_under_the_printed_one_is_refused(packing):
    """25 min is right for hot-pack quarts, and too little for raw ones."""
    fits = packing != ("raw",)
    reason = refusal(asked("peaches", time_min=25, jars=(QUART,), packing=packing))
    assert (reason is None) is fits


def test_the_shortest_printed_time_goes_by_jar_and_pack():
    assert printed.shortest_min(asked("peaches"), BOILING_WATER) == 20
    assert printed.shortest_min(asked("peaches", jars=(QUART,), packing=("raw",)), BOILING_WATER) == 30
    assert printed.shortest_min(asked("octopus"), BOILING_WATER) is None


@pytest.mark.parametrize(
    ("danger", "dish", "way"),
    [
        ("electric_canner", "green beans", "only in a vented pressure canner"),
        ("low_acid_boiled", "corn kernels", "only in a vented pressure canner"),
        ("open_kettle", "peaches", "in a boiling-water canner"),
        ("oven_canning", "pears", "in a boiling-water canner"),
    ],
)
def test_after_a_danger_the_tested_way_comes_first(danger, dish, way):
    given = told(dish, danger=danger)
    assert given.steps[0].startswith("The tested way")
    assert way in given.steps[0]
    assert given.steps[-1].startswith("Ask")
    assert not given.figures


@pytest.mark.parametrize(
    ("danger", "dish", "feet"),
    [("spoiled_jar", "peaches", 7000), ("own_canning_recipe", "salsa", 7000), ("electric_canner", "octopus", 7000)],
)
def test_no_tested_way_after_what_is_thrown_away_or_untested(danger, dish, feet):
    assert not any(step.startswith("The tested way") for step in told(dish, feet, danger=danger).steps)


def test_no_tested_way_where_the_elevation_is_not_known():
    known = dishes()["green beans"]
    given = answer(Request(topic="preserve", dish="green beans", dish_class=known.dish_class, danger="electric_canner"))
    assert not any(step.startswith("The tested way") for step in given.steps)


def test_low_acid_food_never_gets_a_tested_way_in_boiling_water():
    from rules.preserving.foods import foods

    for dish, row in foods().items():
        if row.kind == "low_acid" and row.process:
            given = told(dish, danger="low_acid_boiled")
            assert "only in a vented pressure canner" in given.steps[0], dish
