"""Fuel, melting snow, the time to the boil, and which stove: figures worked out a second way."""

import pytest

from assistant.answering import reply_to, understand
from rules.engine import answer
from rules.heat import fuel
from rules.model import Quantity, Request
from rules.physics.ambient import ambient


def ask(subject: str, **slots):
    return answer(Request(topic="order", subject=subject, **slots))


def test_a_litre_takes_the_heat_of_its_degrees():
    # water at 4,000 m boils near 86.7 degC: 4.19 kJ for each of some 82 degrees
    assert fuel.boil_kj_l(ambient(4000)) == pytest.approx(4.19 * 81.7, rel=0.01)
    assert fuel.snow_kj_l(ambient(4000)) > 2 * fuel.boil_kj_l(ambient(4000))


def test_what_simmers_takes_more_and_what_boils_takes_less():
    found = ask("fuel", elevation_m=4000.0, elevation_from="stated", forms=("more",))
    assert found.figure("fuel_open_pot").value > 10
    assert found.figure("fuel_boiled").value < -5
    assert abs(found.figure("fuel_cooker").value) < 10


def test_who_asks_how_much_more_goes_up():
    down = ask("fuel", elevation_m=2500.0, from_elevation_m=4300.0, elevation_from="stated", forms=("more",))
    up = ask("fuel", elevation_m=4300.0, from_elevation_m=2500.0, elevation_from="stated", forms=("more",))
    assert down.figure("fuel_open_pot").value == up.figure("fuel_open_pot").value > 0


def test_gas_for_days_is_litres_times_heads_times_days():
    found = ask(
        "fuel", elevation_m=3000.0, elevation_from="stated", forms=("how_much",), time_min=4 * 1440.0, portions=2
    )
    each = found.figure("gas_a_litre").value / 1000
    assert found.figure("gas").value == pytest.approx(3 * 2 * 4 * each)


def test_own_gas_is_judged():
    said = {"elevation_m": 3000.0, "elevation_from": "stated", "time_min": 2 * 1440.0, "portions": 2}
    enough = ask("fuel", forms=("enough",), quantity=Quantity(450, "g"), **said)
    short = ask("fuel", forms=("enough",), quantity=Quantity(100, "g"), **said)
    verdicts = [dict(found.headline.values)["verdict"] for found in (enough, short)]
    assert verdicts == ["yes", "no"]


def test_an_elevation_that_nobody_gave_is_an_example():
    assert "serves as an example" in reply_to("do canister stoves use more fuel at altitude").headline


@pytest.mark.parametrize(
    ("text", "subject"),
    [
        ("how many gas cartridges for four nights for three people at 3,200 m", "fuel"),
        ("will we burn more propane at the upper lodge, 9,000 ft", "fuel"),
        ("how much white gas to melt snow for six at 4,800 m", "melting_snow"),
        ("how long to melt snow for 3 litres at 4,000 m", "melting_snow"),
        ("induction or gas for a canteen at 2,500 m", "stove_choice"),
        ("how soon does a 3 litre kettle boil at 3,000 m", "to_the_boil"),
        ("how long to bring 5 litres to the boil at 2,000 m", "to_the_boil"),
        ("kerosene or canister for a winter camp at 4,000 m", "camp_stove"),
    ],
)
def test_it_is_heard_whatever_the_topic(text, subject):
    assert understand(text).subject == subject


@pytest.mark.parametrize(
    "text",
    [
        "gas mark 5 at 2,000 m, should I use more",
        "why does water boil faster up here",
        "how long to boil water from the creek at 9,000 ft to make it safe",
        "rice on a gas burner at 2,500 m, how long",
        "does the gas in my dough need less yeast at 2,500 m",
        "how long do I boil potatoes in 3 litres of water at 7,000 ft",
    ],
)
def test_and_only_where_it_is_meant(text):
    assert understand(text).subject not in ("fuel", "to_the_boil", "stove_choice", "melting_snow", "camp_stove")


def test_induction_keeps_what_gas_loses():
    found = ask("stove_choice", elevation_m=2438.4, elevation_from="stated")
    # 8,000 ft: 4 % for each thousand
    assert found.figure("gas_kept").value == 68
    assert found.figure("induction_kept").value == 100
