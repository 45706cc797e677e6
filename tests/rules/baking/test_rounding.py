"""Roundings a cook can measure."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.baking.rounding import ML, G, in_unit, kitchen, measure, same_measure, step_of

UNITS = st.sampled_from(["tsp", "tbsp", "cup", "g", "ml", "oz", "lb", "kg", "percent", "fl_oz", "qt", "stick"])
AMOUNTS = st.floats(0.01, 5000, allow_nan=False)


@given(AMOUNTS, UNITS, st.booleans())
def test_rounding_stays_within_half_a_step(amount, unit, fine) -> None:
    step = step_of(amount, unit, fine=fine)
    assert kitchen(amount, unit, fine=fine) == pytest.approx(amount, abs=max(step / 2, step - amount) + 1e-9)


@given(AMOUNTS, UNITS)
def test_nothing_is_rounded_away(amount, unit) -> None:
    assert kitchen(amount, unit) > 0


@given(st.floats(0.05, 40), st.floats(0.05, 40), UNITS)
def test_more_is_never_rounded_to_less(one, other, unit) -> None:
    low, high = sorted((one, other))
    assert kitchen(low, unit) <= kitchen(high, unit) + step_of(low, unit)


@given(st.integers(1, 160))
def test_cups_say_what_they_hold(sixteenths) -> None:
    """The spoons and fractions of the text add up to the amount."""
    text = measure(sixteenths / 16, "cup")
    total = Fraction(0)
    for words, unit in re.findall(r"([\d /]+?) (cups?|tbsp)", text):
        figure = sum(Fraction(part) for part in words.split())
        total += figure if unit.startswith("cup") else figure / 16
    assert float(total) == pytest.approx(sixteenths / 16, abs=0.01)


@pytest.mark.parametrize(("amount", "unit", "said"), [
    (0.125, "tsp", "1/8 tsp"), (0.0625, "tsp", "1/16 tsp"), (1.625, "tsp", "1 1/2 tsp plus 1/8 tsp"),
    (2 / 3, "cup", "2/3 cup"),
    (1.75, "cup", "1 3/4 cups"), (0.1875, "cup", "3 tbsp"), (0.9375, "cup", "3/4 cup plus 3 tbsp"), (6.9, "g", "6.9 g"),
    (2.75, "stick", "2 3/4 sticks"), (74, "percent", "74%"), (3, None, "3"), (1.5, "lb", "1 1/2 lb"),
])  # fmt: skip
def test_a_measure_in_words(amount, unit, said) -> None:
    assert measure(amount, unit) == said


@pytest.mark.parametrize(
    ("low", "high", "unit", "said"), [(6.5, 8.5, "tbsp", "6 1/2 to 8 1/2 tbsp"), (1, 1.5, "cup", "1 to 1 1/2 cups")]
)
def test_a_range_in_words(low, high, unit, said) -> None:
    assert measure(low, unit, high=high) == said


@given(st.sampled_from(sorted(ML)), st.sampled_from(sorted(ML)), st.floats(0.1, 100))
def test_volumes_turn_into_each_other(one, other, amount) -> None:
    assert in_unit(in_unit(amount, one, other), other, one) == pytest.approx(amount)


def test_a_volume_is_no_mass() -> None:
    assert all(in_unit(1, a, b) is None for a in ML for b in G)


def test_a_packet_of_yeast_is_measured_in_teaspoons() -> None:
    assert same_measure(1, "packet", fine=True) == (2.25, "tsp")
