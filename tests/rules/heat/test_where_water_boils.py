"""Where water boils, as every wet method opens."""

import pytest

from assistant.replies.sentences import worded
from rules.book import Case
from rules.heat import where_water_boils
from rules.model import Request


def opening(elevation_m, **fields):
    return where_water_boils.boiling_point.work(Case(Request(topic="time", elevation_m=elevation_m, **fields)))


# printed: 203 degF at 5,000 ft and 193 degF at 10,000 ft, 212 degF at sea level
@pytest.mark.parametrize(("feet", "printed_f"), [(0, 212), (5000, 203), (10_000, 193)])
def test_it_says_what_the_tables_print(feet, printed_f):
    part = opening(feet * 0.3048)
    (figure,) = part.figures
    assert (figure.id, figure.unit, worded(figure.label, "us")) == ("boiling_point", "degC", "Water boils at")
    assert figure.value * 1.8 + 32 == pytest.approx(printed_f, abs=1)
    assert figure.sea_level == pytest.approx(99.97, abs=0.01)


@pytest.mark.parametrize(
    ("elevation_m", "way"), [(2133.6, "under sea level"), (-400.0, "over sea level"), (0.0, None), (10.0, None)]
)
def test_it_is_held_against_sea_level_where_that_tells(elevation_m, way):
    text = worded(opening(elevation_m).because, "us")
    assert ("sea level," in text.replace("at sea level", "")) is (way is not None)
    assert way is None or way in text


def test_what_stays_is_said_in_words():
    case = Case(Request(elevation_m=0.0))
    assert worded(where_water_boils.boils_alike(case), "us") == "Water boils here as at sea level, so the time stays."
