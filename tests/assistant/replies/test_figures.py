"""One figure as a cook reads it."""

import pytest

from assistant.replies.figures import figure_line, value_text
from assistant.replies.quantities import Say
from assistant.replies.speech_text import speakable
from rules.model import Figure


@pytest.mark.parametrize(
    ("figure", "line"),
    [
        (
            Figure("boiling_point", "Water boils at", 92.87, "degC", sea_level=99.97),
            "Water boils at: 199 °F (93 °C); at sea level 212 °F (100 °C)",
        ),
        (
            Figure("cook_time", "Time here", 250, "min", 200, 310, 165),
            "Time here: about 4 h 10 min, range 3 h 20 min to 5 h 10 min",
        ),
        (
            Figure("oven", "Oven", 162.8, "degC", 148.9, 176.7, 162.8),
            "Oven: about 325 °F (162 °C), range 300 °F (148 °C) to 350 °F (176 °C); as at sea level",
        ),
        (Figure("steep_time", "Steep", 4, "min", 4, 4), "Steep: 4 min"),
        (Figure("extra_liquid", "Extra liquid", 140, "ml"), "Extra liquid: 9 tbsp (140 ml)"),
        (Figure("gauge", "Gauge", 15, "psi"), "Gauge: 15 psi (103 kPa)"),
        (Figure("more", "More time", 25, "percent"), "More time: 25 %"),
        (Figure("factor", "Factor", 1.4142, "factor"), "Factor: ×1.41"),
        (
            Figure("pasteurised_after", "Pasteurised", 81.4, "min", sea_level=81.4),
            "Pasteurised: 1 h 21 min 24 s; as at sea level",
        ),
        (Figure("leavening_to", "Baking powder", 1.5, "tsp"), "Baking powder: 1 1/2 tsp"),
    ],
)
def test_a_figure_line_gives_value_range_and_sea_level(figure: Figure, line: str) -> None:
    assert figure_line(figure, Say("us")) == line


def test_the_askers_units_come_first() -> None:
    figure = Figure("boiling_point", "Water boils at", 92.87, "degC")
    assert value_text(figure, Say("metric")) == "93 °C (199 °F)"


@pytest.mark.parametrize(
    ("line", "aloud"),
    [
        ("3 h 25 min to 5 h", "3 hours 25 minutes to 5 hours"),
        ("at 7,000 ft (2,130 m), as before", "at 7,000 feet, as before"),
        ("1½ cups", "1 and a half cups"),
        ("234–241 °F", "234 to 241 degrees Fahrenheit"),
        ("1 h at 15 psi", "1 hour at 15 p s i"),
        ("25 % more", "25 percent more"),
    ],
)
def test_symbols_are_read_as_words(line: str, aloud: str) -> None:
    assert speakable(line) == aloud


@pytest.mark.parametrize(
    ("figure", "line"),
    [
        (
            Figure("hold_time", "Hold for", 121, "min", 112, 121),
            "Hold for: about 2 h 1 min, range 1 h 52 min to 2 h 1 min",
        ),
        (Figure("hold_at_155_f", "At 155 °F", 17 / 60, "min"), "At 155 °F: 17 s"),
        (Figure("process_time", "Process time here", 57, "min", 57, 57), "Process time here: 57 min"),
    ],
)
def test_a_time_of_safety_is_not_rounded(figure, line):
    assert figure_line(figure, Say()) == line
