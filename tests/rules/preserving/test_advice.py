"""What is asked around jars: the answer first, and the printed time after it."""

import pytest

from assistant.replies.worded import answer
from rules.foods.dishes import dishes
from rules.model import Quantity, Request
from rules.physics.units import to_c
from rules.preserving.advice import ADVICE
from rules.preserving.gate import WITHOUT_PROCESS

FT_M = 0.3048


def ask(subject, dish=None, feet=7000, **fields):
    known = dishes().get(dish or "")
    return answer(
        Request(
            topic="preserve",
            subject=subject,
            dish=dish,
            dish_class=known.dish_class if known else None,
            elevation_m=None if feet is None else feet * FT_M,
            **fields,
        )
    )


@pytest.mark.parametrize("subject", ADVICE)
@pytest.mark.parametrize("dish", [None, "peaches", "green beans", "jam", "dill pickles", "tomatoes", "octopus"])
def test_every_advice_is_given_without_an_elevation(subject, dish):
    given = ask(subject, dish, feet=None)
    assert given.headline
    assert not given.missing
    assert subject in WITHOUT_PROCESS


@pytest.mark.parametrize(
    ("dish", "begins"),
    [
        ("tomatoes", "Yes: acid goes into every jar of tomatoes"),
        ("figs", "Yes: acid goes into every jar of figs"),
        ("peaches", "Only what the tested recipe"),
        ("dill pickles", "Yes: the vinegar"),
        ("green beans", "No acid makes green beans safe in boiling water"),
        (None, "Tomatoes, tomatillos, figs"),
    ],
)
def test_whether_acid_goes_in(dish, begins):
    assert ask("acid_needed", dish).headline.startswith(begins)


def test_acid_is_told_by_the_spoon_and_the_minutes_follow():
    steps = ask("acid_needed", "tomatoes", jars=(Quantity(1.0, "qt"),), packing=("crushed",)).steps
    assert "2 tbsp bottled lemon juice or ½ tsp citric acid to a quart" in steps[0]
    assert "quarts 60 min" in steps[-1]


@pytest.mark.parametrize(
    ("dish", "free"), [("peaches", "1/2 in"), ("jam", "1/4 in"), ("green beans", "1 in"), ("chicken", "1 1/4 in")]
)
def test_headspace_by_the_recipe(dish, free):
    assert free in ask("headspace_asked", dish).headline


def test_the_clock_of_a_pressure_canner_counts_from_its_pressure():
    given = ask("clock_start", "green beans", 5300)
    assert given.headline.startswith("Count from when the gauge shows 13 psi")
    assert "not from when the weight goes on" in given.headline
    assert "10 min" in given.steps[0]
    assert "pints 20 min, quarts 25 min" in given.steps[-1]


def test_the_clock_of_boiling_water_counts_from_the_boil():
    assert "202 °F" in ask("clock_start", "peaches", 5500).headline
    assert "°F" not in ask("clock_start", "peaches", None).headline


@pytest.mark.parametrize(("jar", "size"), [(Quantity(4, "oz"), "half-pint"), (Quantity(120, "ml"), "half-pint")])
def test_a_small_jar_takes_no_less(jar, size):
    given = ask("small_jars", "jam", jars=(jar,))
    assert given.headline == f"A small jar takes no less. It takes the time of a {size}."
    assert "15 min" in given.steps[-1]


@pytest.mark.parametrize(
    ("dish", "begins"),
    [("peaches", "Yes: fruit"), ("jam", "Not in an ordinary"), ("dill pickles", "By a tested recipe")],
)
def test_less_sugar_by_what_is_in_the_jar(dish, begins):
    assert ask("less_sugar", dish).headline.startswith(begins)


def test_salt_is_weighed_for_a_ferment_and_free_elsewhere():
    assert "2 to 2.5 %" in ask("salt_amount", "sauerkraut").headline
    assert "for taste only" in ask("salt_amount", "green beans").headline


@pytest.mark.parametrize(
    ("subject", "words"),
    [
        ("vinegar_strength", "5 % acidity"),
        ("fermenting", "Elevation hardly matters"),
        ("fridge_pickles", "elevation does not change them"),
        ("siphoning", "do not open them to fill them up"),
        ("sealed_batch", "use them within a year"),
        ("curing", "I give no cure"),
    ],
)
def test_the_answer_comes_first(subject, words):
    assert words in ask(subject).headline


def test_a_batch_that_sealed_is_answered_in_a_line():
    given = ask("sealed_batch", "pears")
    assert not given.steps
    assert not given.because
    assert not given.cautions


@pytest.mark.parametrize(
    ("feet", "told_f", "by", "gel"), [(7000, 220, "13 °F", "207 °F"), (5000, 220, "9 °F", "211 °F")]
)
def test_jelly_boiled_to_the_sea_level_figure_is_boiled_too_far(feet, told_f, by, gel):
    given = ask("over_boiled_jam", "jelly", feet, temperature_c=to_c(told_f))
    assert f"is {by}" in given.headline
    assert f"about {gel}" in given.headline
    assert "To save it" in given.steps[0]


def test_jelly_that_is_only_stiff_is_not_told_how_far():
    given = ask("over_boiled_jam", "jelly")
    assert given.headline.startswith("Most likely")
    assert ask("over_boiled_jam", "jelly", 0, temperature_c=to_c(220)).headline.startswith("Most likely")


def test_fruit_butter_has_no_gel_point():
    given = ask(None, "apple butter", jars=(Quantity(1.0, "pt"),))
    assert given.figure("gel_point") is None
    assert "for 15 min" in given.headline


def test_minutes_come_first_where_jars_are_asked_about_and_the_gel_point_where_it_is():
    by_jar = ask(None, "jam", jars=(Quantity(0.5, "pt"),))
    assert by_jar.headline.startswith("Process half-pints of jam for 15 min")
    assert any("sets at about 207 °F" in step for step in by_jar.steps)
    alone = ask(None, "jam")
    assert alone.headline.startswith("Jam sets at about 207 °F")
    assert any("half-pints or pints 15 min" in step for step in alone.steps)
    assert ask(None, "jam", forms=("how_long",)).headline.startswith("Process jam")
