"""What a temperature is of."""

from __future__ import annotations

import pytest

from assistant.understanding import temperatures
from assistant.understanding.pipeline import read
from rules.physics.units import to_c


@pytest.mark.parametrize(
    ("text", "role", "temp_f"),
    [
        ("is chicken done at 155 internal", "core", 155),
        ("the turkey reads 150 in the thigh", "core", 150),
        ("roast the turkey in the oven at 200 F overnight", "oven", 200),
        ("sous vide chicken at 130 F for 2 hours", "bath", 130),
        ("hold the gravy at 120 F until dinner", "hold", 120),
        ("the fridge was at 52 F this morning", "fridge", 52),
        ("smoke the turkey at 180 F", "smoker", 180),
    ],
)
def test_role(text: str, role: str, temp_f: float) -> None:
    said = temperatures.said(read(text))
    assert [(t.role, round(t.temp_f)) for t in said] == [(role, temp_f)]


def test_celsius_is_turned() -> None:
    (said,) = temperatures.said(read("chicken breast at 65 C inside, serve it"))
    assert said.role == "core"
    assert to_c(said.temp_f) == pytest.approx(65)


@pytest.mark.parametrize("text", ["chicken thighs for 130, how many cases", "100 eggs for breakfast at 7,000 ft"])
def test_people_and_things_are_no_temperatures(text: str) -> None:
    assert temperatures.said(read(text)) == ()
