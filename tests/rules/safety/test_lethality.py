"""The judge of time and temperature, over every kind of food and every dish that it judges."""

from itertools import pairwise, product

import pytest

from assistant.replies.worded import answer
from rules import safety
from rules.errors import UnknownWord
from rules.foods.dishes import dishes
from rules.model import Request
from rules.physics.units import to_c, to_f
from rules.safety.lethality import bath_min, judge, kind_judged, kinds
from rules.tables import read_csv

TEMPS_C = tuple(range(40, 81))
TIMES_MIN = (None, 0.25, 3, 12, 35, 112, 121, 180, 1440, 10_000)
# the coolest temperature that anything is printed for, by kind [degF], typed from the codes: see tests/published
LEAST_F = {
    "poultry": 136,
    "ground_meat": 145,
    "whole_cut": 130,
    "pork": 130,
    "raw_ham": 130,
    "fish": 145,
    "egg": 134.6,
    "egg_dish": 160,
    "game": 160,
    "wild_game": 165,
    "leftover": 165,
    "stuffing": 165,
}
JUDGED = {d.name: kind for d in dishes().values() if (kind := kind_judged(d.name, d.dish_class))}


def raw_rows(file):
    """The table as it lies in its file."""
    return [(float(r["temp_f"]), float(r["time_min"])) for r in read_csv(f"tables/{file}.csv").rows]


@pytest.mark.parametrize("kind", kinds())
def test_never_safe_below_the_table(kind):
    """What is called safe stands on a printed row that was reached in every table, or on the chart after its rest.

    The chart prints whole degrees: 160 degF is its 71 degC.
    """
    safe = safety.row_of(kinds()[kind].chart)
    for temp_c, time_min in product(TEMPS_C, TIMES_MIN):
        found = judge(kind, temp_c, time_min)
        if not found.safe:
            continue
        held, here_f = time_min or 0.0, to_f(temp_c) + 0.1
        by_chart = temp_c >= int(safe.temp_c) and here_f >= to_f(safe.temp_c) - 0.2 and held >= safe.rest_min
        by_tables = kinds()[kind].tables and all(
            any(row_f <= here_f and held >= row_min for row_f, row_min in raw_rows(file))
            for file in kinds()[kind].tables
        )
        assert by_chart or by_tables, (kind, temp_c, time_min)
        assert temp_c >= to_c(LEAST_F[kind]) - 0.12, (kind, temp_c, time_min)


@pytest.mark.parametrize("kind", kinds())
def test_hotter_or_longer_is_never_less_safe(kind):
    for temp_c, times in product(TEMPS_C, pairwise(TIMES_MIN)):
        shorter, longer = (judge(kind, temp_c, t).safe for t in times)
        assert longer or not shorter, (kind, temp_c, times)
    for time_min, temps in product(TIMES_MIN, pairwise(TEMPS_C)):
        cooler, hotter = (judge(kind, t, time_min).safe for t in temps)
        assert hotter or not cooler, (kind, temps, time_min)


@pytest.mark.parametrize("kind", kinds())
def test_nothing_under_54_4_for_any_time(kind):
    assert kind in LEAST_F
    for temp_c in (0, 20, 45, 51.7, 54, 54.3):
        found = judge(kind, temp_c, 1e9)
        assert not found.safe
        assert found.needs_min is None
        assert found.least_c == pytest.approx(to_c(LEAST_F[kind]), abs=0.01)


@pytest.mark.parametrize(
    ("kind", "temp_f", "minutes", "safe"),
    [
        ("poultry", 130, 120, False),
        ("poultry", 140, 35, True),
        ("poultry", 140, 34, False),
        ("poultry", 165, None, True),
        ("poultry", 164, None, False),
        ("ground_meat", 125, 10_000, False),
        ("ground_meat", 160, None, True),
        ("ground_meat", 155, 17 / 60, True),
        ("whole_cut", 145, 3, True),
        ("whole_cut", 145, None, False),
        ("whole_cut", 130, 112, False),
        ("whole_cut", 130, 121, True),
        ("pork", 145, 3, True),
        ("fish", 145, None, True),
        ("fish", 140, 600, False),
        ("egg", 135, 75, True),
        ("egg", 135, 45, False),
        ("game", 145, 30, False),
        ("game", 160, None, True),
        ("wild_game", 160, 60, False),
        ("wild_game", 165, None, True),
        ("stuffing", 160, 60, False),
        ("leftover", 165, None, True),
    ],
)
def test_what_every_food_handler_is_taught(kind, temp_f, minutes, safe):
    assert judge(kind, to_c(temp_f), minutes).safe is safe


def test_a_temperature_printed_in_celsius_is_its_row():
    assert judge("whole_cut", 54.4, 121).safe
    assert judge("poultry", 57.8, 81.4).safe
    assert judge("poultry", 73.9).safe


def test_an_unknown_kind_is_named():
    with pytest.raises(UnknownWord, match="poultry"):
        judge("poultri", 60)


@pytest.mark.parametrize("kind", [k.id for k in kinds().values() if k.bath])
def test_a_bath_is_never_shorter_than_the_hold(kind):
    sizes = range(5, 75, 5)
    for temp_c in (t / 4 for t in range(4 * 50, 4 * 80)):
        times = [bath_min(kind, temp_c, size) for size in sizes]
        needs = judge(kind, temp_c).needs_min
        assert all((time is None) == (needs is None) for time in times)
        if needs is None:
            continue
        assert all(time >= needs for time in times)
        assert times == sorted(times), "a thicker piece takes no less"


@pytest.mark.parametrize("kind", [k.id for k in kinds().values() if k.bath])
def test_a_hotter_bath_takes_no_longer(kind):
    for size in (5, 25, 70):
        times = [t for c in range(50, 80) if (t := bath_min(kind, float(c), size)) is not None]
        assert times == sorted(times, reverse=True)


# By the chart of safe temperatures and the Food Code: the least to which the centre of such food is ever taken.
@pytest.mark.parametrize(("trait", "least_f"), [("poultry", 136), ("ground", 136), ("game", 136), ("trichinella", 165)])
def test_every_dish_with_a_trait_is_judged_as_strictly(trait, least_f):
    judged = {name: kind for name, kind in JUDGED.items() if trait in dishes()[name].traits}
    assert judged
    for name, kind in judged.items():
        assert LEAST_F[kind] >= least_f, name


def test_raw_meat_is_judged():
    raw = (
        "poultry_pieces",
        "whole_bird",
        "ground_meat",
        "sausage",
        "tender_cut",
        "collagen_cut",
        "offal",
        "fish",
        "egg",
    )
    assert [d.name for d in dishes().values() if d.dish_class in raw and d.name not in JUDGED] == []


def sous_vide_dishes():
    """One dish for each class and kind."""
    found = {}
    for name, kind in JUDGED.items():
        found.setdefault((dishes()[name].dish_class, kind), dishes()[name])
    return [dish for dish in found.values() if dish.dish_class not in ("mixed_stew", "pie", "casserole", "battered")]


@pytest.mark.parametrize("dish", sous_vide_dishes(), ids=lambda dish: dish.name)
def test_a_bath_is_judged_for_every_food(dish):
    """What no table covers is refused, its figures do not come back, and nothing unsafe is called safe."""
    kind = JUDGED[dish.name]
    for temp_c, time_min in product(TEMPS_C, (None, 30.0, 120.0, 1440.0)):
        given = answer(
            Request(
                topic="time", method="sous_vide", dish=dish.name, dish_class=dish.dish_class, elevation_m=2133.6,
                temperature_c=float(temp_c), time_min=time_min,
            )
        )  # fmt: skip
        told = (dish.name, temp_c, time_min, given.headline)
        found = judge(kind, temp_c, time_min)
        if found.needs_min is None:
            assert given.headline.startswith("No."), told
            assert not any(f.unit == "degC" and abs(f.value - temp_c) < 0.5 for f in given.figures), told
            assert not any(f.id == "cook_time" for f in given.figures), told
        if given.headline.startswith("Yes."):
            assert found.safe, told
        if given.headline.startswith("No."):
            assert given.cautions[0].level == "stop", told
