"""Two places, methods, dishes or temperatures held against each other."""

import pytest

from assistant.replies.sentences import worded
from rules import engine
from rules.model import Request
from rules.physics.units import to_c

RICE = {"dish": "white rice", "dish_class": "rice", "method": "simmer"}


def said(**fields):
    answer = engine.answer(Request(**{"topic": "time", "forms": ("which",), **fields}))
    return worded(answer.headline, answer.request.units)


def test_two_places_as_high_are_the_same():
    text = said(**RICE, elevation_m=3650.0, elevations_m=(3650.0, 3640.0))
    assert text.startswith("The same: about 29 min (")
    assert "11,980 ft (3,650 m), and 29 min at 11,940 ft (3,640 m)" in text


@pytest.mark.parametrize("heights", [(1600.0, 3650.0), (3650.0, 1600.0)])
def test_the_higher_place_takes_longer(heights):
    assert said(**RICE, elevation_m=heights[0], elevations_m=heights).startswith("Longer at 11,980 ft (3,650 m): ")


def test_asked_which_is_quicker_the_lower_place_is_first():
    text = said(**RICE, elevation_m=3650.0, elevations_m=(3650.0, 1600.0), asked_way="shorter")
    assert text.startswith("Quicker at 5,250 ft (1,600 m): ")


def test_three_places_each_have_their_time():
    text = said(**RICE, elevation_m=1500.0, elevations_m=(1500.0, 2500.0, 3500.0), units="metric")
    assert text.count("min at ") == 3
    assert text.index("1,500 m") < text.index("2,500 m") < text.index("3,500 m")


def test_where_water_boils_in_two_places():
    text = said(topic="boiling_point", elevation_m=1500.0, elevations_m=(1500.0, 3000.0), units="metric")
    assert text.startswith(
        "Lower at 3,000 m (9,840 ft): water boils at 90 °C (194 °F) there, against 95 °C (203 °F) at "
    )


def test_the_baseline_is_the_other_place_where_one_was_named():
    text = said(**RICE, elevation_m=3640.0, from_elevation_m=3650.0)
    assert text.startswith("The same: ")


def test_differ_is_answered_as_which():
    fields = dict(**RICE, elevation_m=1600.0, elevations_m=(1600.0, 3650.0))
    assert said(**fields, forms=("differ",)) == said(**fields)


def test_two_methods_by_their_times():
    beans = {"dish": "chickpeas", "dish_class": "dried_bean", "elevation_m": 2438.4}
    text = said(**beans, method="simmer", methods_too=("pressure_cook",))
    assert text.startswith("Quicker at 8,000 ft (2,440 m): pressure cooking chickpeas, about 17 min")
    assert said(**beans, method="pressure_cook") == said(**beans, method="pressure_cook", methods_too=("simmer",))


def test_two_dishes_each_by_its_own_method():
    text = said(dish="chickpeas", dish_class="dried_bean", method="simmer", dishes_too=("red lentils",),
                elevation_m=2743.2)  # fmt: skip
    assert text.startswith("Quicker at 9,000 ft (2,740 m): simmering red lentils")


@pytest.mark.parametrize(
    ("topic", "temps_f", "nearer"),
    [("boiling_point", (195, 203), "195 °F"), ("doneness", (145, 160), "145 °F"), ("doneness", (130, 160), "160 °F")],
)
def test_of_two_temperatures_the_right_one(topic, temps_f, nearer):
    dish = {"dish": "pork chops", "dish_class": "tender_cut"} if topic == "doneness" else {}
    text = said(topic=topic, **dish, elevation_m=2743.2, temperatures_c=tuple(map(to_c, temps_f)))
    assert text.startswith(nearer)


def test_of_two_ovens_the_nearer_to_the_usual():
    text = said(topic="temperature", dish="lasagna", dish_class="casserole", method="bake", elevation_m=2377.0,
                temperatures_c=(to_c(300), to_c(350)), temperature_c=to_c(300))  # fmt: skip
    assert text.startswith("350 °F")
