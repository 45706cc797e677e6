"""Quantities. Factors from memory of NIST SP 811: 0.3048 m, 453.592 g, 6 894.76 Pa, 3 386.39 Pa, 236.588 ml a cup."""

import pytest

from assistant.reading import units
from assistant.reading.spans import Measure
from assistant.understanding.pipeline import read


def heard(text: str) -> list[Measure]:
    return list(read(text)._.measures)


@pytest.mark.parametrize(
    ("text", "kind", "low", "high"),
    [
        ("7k ft", "length", 2133.6, None),
        ("7000'", "length", 2133.6, None),
        ("5,280'", "length", 1609.344, None),
        ("5280ft", "length", 1609.344, None),
        ("2.1 km", "length", 2100, None),
        ("2100 m asl", "length", 2100, None),
        ("2100 metres above sea level", "length", 2100, None),
        ("seven thousand feet", "length", 2133.6, None),
        ("7 000 ft", "length", 2133.6, None),
        ("an hour and a half", "time", 90, None),
        ("2h30", "time", 150, None),
        ("2 h 30", "time", 150, None),
        ("1½ hrs", "time", 90, None),
        ("1 1/2 hours", "time", 90, None),
        ("1 hour and 20 minutes", "time", 80, None),
        ("half an hour", "time", 30, None),
        ("quarter of an hour", "time", 15, None),
        ("two and a half hours", "time", 150, None),
        ("25-30 min", "time", 25, 30),
        ("25 to 30 minutes", "time", 25, 30),
        ("two or three hours", "time", 120, 180),
        ("90 minutes to 2 hours", "time", 90, 120),
        ("between 2 and 3 hours", "time", 120, 180),
        ("a couple of hours", "time", 120, None),
        ("barometer reads 25 inches", "pressure", 84659.7, None),
        ("the barometer says 25", "pressure", 84659.7, None),
        ("station pressure is 790", "pressure", 79000, None),
        ("30 m", "time", 30, None),
        ("45 seconds", "time", 0.75, None),
        ("350F", "temperature", 176.667, None),
        ("350 °F", "temperature", 176.667, None),
        ("177 C", "temperature", 177, None),
        ("350 degrees", "degree", 350, None),
        ("24.6 inHg", "pressure", 83305, None),
        ("24.6 inches of mercury", "pressure", 83305, None),
        ("832 hPa", "pressure", 83200, None),
        ("832 millibars", "pressure", 83200, None),
        ("15 psi", "pressure", 103421, None),
        ("15 pounds of pressure", "pressure", 103421, None),
        ("4 lb", "mass", 1814.37, None),
        ("4 lb 6 oz", "mass", 1984.47, None),
        ("1.5 kg", "mass", 1500, None),
        ("2 tsp", "volume", 9.8578, None),
        ("half a teaspoon", "volume", 2.46446, None),
        ("quarter teaspoon", "volume", 1.23223, None),
        ("3/4 cup", "volume", 177.441, None),
        ("for 12 people", "portion", 12, None),
        ("60 covers", "portion", 60, None),
        ("12 portions", "portion", 12, None),
        ("one hundred and fifty guests", "portion", 150, None),
        ("20 of us", "portion", 20, None),
    ],
)
def test_hears(text: str, kind: str, low: float, high: float | None) -> None:
    (measure,) = heard(text)
    assert (measure.kind, measure.low, measure.high) == (
        kind,
        pytest.approx(low, rel=1e-4),
        pytest.approx(high or low, rel=1e-4),
    )


@pytest.mark.parametrize("text", ["per person", "bake 2 in a row", "a can of beans", "step 3 of 7", "bake at 350"])
def test_hears_nothing(text: str) -> None:
    assert heard(text) == []


def test_elevations_are_two_and_not_a_range() -> None:
    assert [round(m.low) for m in heard("from 5,000 ft to 7,000 ft")] == [1524, 2134]


def test_a_quantity_keeps_the_words_of_the_cook() -> None:
    (measure,) = heard("4 pounds of short ribs")
    assert (measure.said, measure.unit) == (4, "lb")


def test_every_spelling_is_a_name_as_any_pint_takes_it() -> None:
    assert [spelling for spelling in units.spellings() if not spelling.isidentifier()] == []


def test_a_spelling_with_a_sign_is_heard_all_the_same() -> None:
    assert [(m.kind, m.low) for m in heard("polenta for 12 grown-ups")] == [("portion", 12)]
