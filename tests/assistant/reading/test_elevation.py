"""Elevations: which figure is one, and which part it plays."""

from __future__ import annotations

import pytest

from assistant.answering import understand
from rules.model import Kitchen

FT_M = 0.3048


def feet(value: float | None) -> int | None:
    return None if value is None else round(value / FT_M)


@pytest.mark.parametrize(
    ("text", "here", "baseline"),
    [
        ("how long to braise short ribs at 7,000 feet", 7000, None),
        ("short ribs 7k ft", 7000, None),
        ("rice at 7,000", 7000, None),
        ("in 5280 how long for rice", 5280, None),
        ("up here at 8500", 8500, None),
        ("elevation 7200", 7200, None),
        ("my elevation's 5,000", 5000, None),
        ("rice 7200", 7200, None),
        ("7200 above sea level rice time", 7200, None),
        ("a mile high rice", 5280, None),
        ("at 2100 m asl", 6890, None),
        ("rice at sea level", 0, None),
        ("200 feet below sea level", -200, None),
        ("at 7,000 ft (2,134 m) how long for rice", 7000, None),
        # a baseline beside the kitchen
        ("from 0 to 7,000 ft", 7000, 0),
        ("written for sea level, I'm at 6,200", 6200, 0),
        ("convert my recipe for 6,500 ft", 6500, None),
        ("convert my 7,000 ft cake recipe for 500 ft", 500, 7000),
        ("convert 5000 ft to 7000 ft", 7000, 5000),
        ("turn this sea-level sponge into a 7000 ft sponge", 7000, 0),
        ("take it from 7,000 ft down to sea level", 0, 7000),
        ("my pot roast takes 3 hours at home at 500 ft, how long now I'm at 7000", 7000, 500),
        ("it takes 40 minutes at sea level how long at 9,000 feet", 9000, 0),
        ("at sea level it takes 40 minutes, at 9,000 feet how long", 9000, 0),
        ("stew takes 2 hours where I'm from. How long at 8000 ft?", 8000, None),
        ("15 g of baking powder at sea level, how much at 5,700 ft", 5700, 0),
        ("why does it boil at a lower temperature at 7000 than at sea level", 7000, 0),
        ("peanut brittle goes to 300F at sea level, at 7,500 ft I pull it at?", 7500, 0),
        ("presure cooker 15psi vs 12psi at five thousand feet", 5000, None),
        ("how come beans never go soft at 9,000 ft", 9000, None),
        ("I live at 5,280 ft. How long do I boil rice at 9,000 ft?", 9000, None),
        ("it takes 3 hours at 5,000 ft", None, 5000),
        ("ham 5 hrs down in the valley at 1,400 ft, new place is at 8,100 ft", 8100, 1400),
        ("90 minutes was plenty in Boston, what now at 6,100 feet", 6100, 19),
        ("in the valley at 4,500 ft how long for rice", 4500, None),
        ("an hour at the old place, 900 ft, the new kitchen is at 7,100 ft", 7100, 900),
        ("was fine in Boston, 7,000 ft now", 7000, 19),
        # corrections
        ("no, 6,000 not 7,000", 6000, None),
        ("at 7,000, sorry 6500 i meant", 6500, None),
        ("at 7,000 no make that 6,500 ft", 6500, None),
        ("I'm not at sea level, I'm at 7500", 7500, None),
    ],
)
def test_parts(text: str, here: int | None, baseline: int | None) -> None:
    request = understand(text)
    assert (feet(request.elevation_m), feet(request.from_elevation_m)) == (here, baseline)


@pytest.mark.parametrize(
    "text",
    [
        "how long to braise short ribs",
        "bake at 350",
        "at 15 psi",
        "dinner at 6 pm",
        "for 30 minutes",
        "short ribs at 325",
        "since 2020",
        "a 9 inch pan",
        "rice for 2000 people",
        "fry at 375",
        "NaN feet",
        "infinity feet",
        "9" * 1000 + " feet",
        "compared to what",
        "the plaice at the market",
    ],
)
def test_no_elevation_is_made_up(text: str) -> None:
    assert understand(text).elevation_m is None


@pytest.mark.parametrize(
    ("text", "question"),
    [
        ("I'm at 70,000 ft", "70,000 ft is higher than any mountain. Did you mean 7,000 ft?"),
        ("I'm at 7000 m", "7,000 m is above any kitchen. Did you mean 7,000 ft (2,130 m)?"),
        ("I'm at -2,000 ft", "-2,000 ft is below any kitchen on land. What is the elevation there?"),
        ("I'm at 28,000 ft", "28,000 ft is above any kitchen I can work for. What is your elevation?"),
    ],
)
def test_an_impossible_elevation_is_asked_back(text: str, question: str) -> None:
    request = understand(text)
    assert request.elevation_m is None
    assert [(u.kind, u.reason) for u in request.unused] == [("elevation", question)]


def test_a_bare_number_is_in_metres_in_a_metric_kitchen() -> None:
    metric = Kitchen(units="metric")
    assert understand("rice at 850", kitchen=metric).elevation_m == 850
    assert understand("rice at 7,000", kitchen=metric).elevation_m == pytest.approx(2133.6)


def test_the_kitchen_is_used_where_nobody_says() -> None:
    kitchen = Kitchen(elevation_m=2133.6, pressure_pa=78_000.0)
    request = understand("how long for rice", kitchen=kitchen)
    assert (request.elevation_m, request.elevation_from, request.pressure_pa) == (2133.6, "kitchen", 78_000.0)
    stated = understand("how long for rice at 9,000 ft", kitchen=kitchen)
    assert (feet(stated.elevation_m), stated.elevation_from, stated.pressure_pa) == (9000, "stated", None)


def test_a_doubtful_elevation_is_not_replaced_by_the_kitchen() -> None:
    assert understand("rice at 70,000 ft", kitchen=Kitchen(elevation_m=2133.6)).elevation_m is None


def test_a_place_stands_for_its_elevation() -> None:
    request = understand("what does water boil at in Leadville")
    assert request.elevation_from == "place"
    # 10,152 ft by the town's own account, from memory
    assert feet(request.elevation_m) == pytest.approx(10152, rel=0.03)


def test_an_unknown_place_is_asked_for() -> None:
    (unused,) = understand("I cook in Zorgville, how long for rice").unused
    assert (unused.kind, unused.text) == ("elevation", "Zorgville")
