"""Gas marks; equivalents as British cookbooks print them, from memory: 1 is 140 degC, 4 is 180, 6 is 200, 9 is 240."""

from __future__ import annotations

import pytest

from assistant.answering import understand
from assistant.reading.gas_marks import marks
from assistant.reading.reader import hear


@pytest.mark.parametrize(("mark", "temp_c"), [(1, 140), (2, 150), (4, 180), (6, 200), (9, 240)])
def test_as_cookbooks_print_them(mark: float, temp_c: float) -> None:
    assert marks()[mark] == temp_c


@pytest.mark.parametrize(
    ("text", "temp_c"),
    [
        ("roast the lamb at gas mark 4 in Nairobi", 180),
        ("the book says gas 6 for 20 minutes, I'm at 2,100 m", 200),
        ("a low oven, mark 2, three hours", 150),
        ("regulo 5 for the sponge", 190),
    ],
)
def test_a_mark_is_the_temperature_of_the_oven(text: str, temp_c: float) -> None:
    assert understand(text).temperature_c == temp_c


@pytest.mark.parametrize(
    "text", ["gas 4 burner range", "a gas 6 ring stove", "gas 12", "mark 7 of these", "propane gas 5 kg"]
)
def test_a_number_behind_gas_is_not_always_a_mark(text: str) -> None:
    assert [m for m in hear(text).measures if m.kind == "temperature"] == []
