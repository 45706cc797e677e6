"""A bare height is in the unit of the land, of the house or of the place that is spoken of."""

from __future__ import annotations

import pytest

from assistant.answering import understand
from assistant.reading.elevation_figures import land_unit
from assistant.reading.places import elevation_m, height_unit

FT_M = 0.3048


@pytest.mark.parametrize(
    ("text", "metres"),
    [
        ("rice at the rifugio at 2450", 2450),
        ("our high camp on ararat at 4200, how long for rice", 4200),
        ("pasta on denali at 14000", 14000 * FT_M),
        ("training in Cusco, how long for quinoa", 3399),
        ("for how long the spaghetti in 3.100 meter", 3100),
        ("refugio at 3100, lentils, how long", 3100),
        ("potatoes at 3.4 thousand in the bale", 3400),
        ("pasta in the andes at 4100", 4100),
        ("hut at 2300, dal, how long", 2300),
        ("camp at 3300 above Chamonix, how long for rice", 3300),
        ("beans in colorado at 8800", 8800 * FT_M),
        ("cabin in utah at 5500, rice", 5500 * FT_M),
        ("pasta at tres mil quinientos in Bolivia", 3500),
        ("beans at 7000", 7000 * FT_M),
    ],
)
def test_the_land_tells_the_unit(text: str, metres: float) -> None:
    assert understand(text).elevation_m == pytest.approx(metres, abs=1)


def test_two_lands_tell_nothing() -> None:
    assert land_unit(["from", "colorado", "to", "the", "alps"], ()) == ""


def test_lowlands_tell_nothing() -> None:
    assert (height_unit("London"), height_unit("Denver"), height_unit("Cusco")) == ("", "ft", "m")


@pytest.mark.parametrize(
    ("place", "metres"),
    [
        ("Gotthard Pass", 2106),
        ("Grimsel Pass", 2164),
        ("Stelvio Pass", 2757),
        ("Paso de Jama", 4200),
        ("Mueller Hut", 1800),
    ],
)
def test_passes_and_huts_by_the_map(place: str, metres: float) -> None:
    assert elevation_m(place) == pytest.approx(metres, abs=50)


def test_an_unknown_house_is_asked_about_by_its_name() -> None:
    assert understand("lentils at Refugio Quelmapu").unused[0].text.endswith("Quelmapu")


def test_the_only_height_is_the_kitchens() -> None:
    assert understand("roast carrots at 2,200 m time").elevation_m == pytest.approx(2200)
