"""Measures that cooks of other lands use, against what they are outside."""

from __future__ import annotations

import pytest

from assistant.reading.reader import hear

IMPERIAL_PINT_ML, POUND_G = 568.26125, 453.59237


@pytest.mark.parametrize(
    ("said", "kind", "size"),
    [
        ("2 metric cups of flour", "volume", 500),
        ("an australian cup of rice", "volume", 250),
        ("three katoris of dal", "volume", 450),
        ("1 rice cooker cup of rice", "volume", 180),
        ("2 dessertspoons of salt", "volume", 20),
        ("a gill of cream", "volume", IMPERIAL_PINT_ML / 4),
        ("2 uk pints of stock", "volume", 2 * IMPERIAL_PINT_ML),
        ("a bushel of apples", "volume", 35_239),
        ("5 tolas of saffron", "mass", 5 * 180 * 0.06479891),  # 180 grains
        ("one pav kilo of onions", "mass", 250),
        ("2 seers of atta", "mass", 1866.2),  # 80 tolas each
        ("2 stone of spuds", "mass", 28 * POUND_G),
        ("3 catties of pork", "mass", 4 * POUND_G),  # a catty is a pound and a third
        ("two jin of cabbage", "mass", 1000),
        ("60# of pork butt", "mass", 60 * POUND_G),
    ],
)
def test_sizes(said: str, kind: str, size: float) -> None:
    measure = next(m for m in hear(said).measures if m.kind == kind)
    assert measure.low == pytest.approx(size, rel=2e-3)


@pytest.mark.parametrize("said", ["10 stone fruit pies", "2 pao de queijo", "4 kati rolls", "a whistle"])
def test_no_measures(said: str) -> None:
    assert [m for m in hear(said).measures if m.kind in ("mass", "volume", "whistle")] == []


@pytest.mark.parametrize(
    ("said", "low", "high"), [("6 whistles", 6, 6), ("3-4 seetis", 3, 4), ("two to three whistles", 2, 3)]
)
def test_whistles_are_counted(said: str, low: int, high: int) -> None:
    measure = next(m for m in hear(said).measures if m.kind == "whistle")
    assert (measure.low, measure.high) == (low, high)
