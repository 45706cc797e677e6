"""Numbers in digits and in words."""

import pytest

from assistant.reading.figures import hear
from assistant.reading.text import clean
from assistant.reading.words import TOKEN


def values(text: str) -> list[float]:
    return [number.value for number in hear([m.group().lower() for m in TOKEN.finditer(clean(text).text)])]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("seven thousand", [7000]),
        ("seven thousand five hundred", [7500]),
        ("seventy two hundred", [7200]),
        ("seventy-two hundred", [7200]),
        ("fifty two eighty", [5280]),
        ("five thousand two hundred and eighty", [5280]),
        ("three fifty", [350]),
        ("three seventy five", [375]),
        ("one ninety nine", [199]),
        ("one hundred and ninety nine", [199]),
        ("7 thousand", [7000]),
        ("7k", [7000]),
        ("7.5k", [7500]),
        ("7,000", [7000]),
        ("2.1", [2.1]),
        ("2,5", [2.5]),
        (".5", [0.5]),
        ("3/4", [0.75]),
        ("1 1/2", [1.5]),
        ("1½", [1.5]),
        ("two and a half", [2.5]),
        ("one and three quarters", [1.75]),
        ("five and a half thousand", [5500]),
        ("nine and a half k", [9500]),
        ("seven point two thousand", [7200]),
        ("three point one", [3.1]),
        ("ninety three point five", [93.5]),
        ("boiling point 7,200", [7200]),
        ("half a", [0.5]),
        ("three quarters of a", [0.75]),
        ("a dozen", [12]),
        ("half a dozen", [6]),
        ("two dozen", [24]),
        ("a couple of", [2]),
        ("-200", [-200]),
        ("minus 500", [-500]),
        ("25-30", [25, 30]),
        ("between 2 and 3", [2, 3]),
        ("forty five minutes and sixty guests", [45, 60]),
        ("two or three", [2, 3]),
        ("1/0", []),
        ("no numbers here", []),
        ("9" * 1900, []),
    ],
)
def test_hears(text: str, expected: list[float]) -> None:
    assert values(text) == pytest.approx(expected)
