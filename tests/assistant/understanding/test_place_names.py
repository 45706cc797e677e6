"""Places whose names are cut in two, misspelt or those of dishes, and places that nobody knows."""

from __future__ import annotations

import pytest

from assistant.answering import understand
from assistant.replies.sentences import worded
from assistant.understanding.pipeline import read
from rules.model import Kitchen


def heard(text: str) -> list[str]:
    return [found.id for found in read(text)._.found if found.kind == "place"]


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("the wedding is up in brecken ridge, rice in the combi", "Breckenridge"),
        ("how long for eggs in lead ville", "Leadville"),
        ("we live in stemboat springs", "Steamboat Springs"),
        ("beans in tellurid stay hard", "Telluride"),
        ("potatoes in flagstaf", "Flagstaff"),
        ("now were in at this ababa how long", "Addis Ababa"),
        ("injera in addis abbaba", "Addis Ababa"),
        ("rice in mexico sity", "Mexico City"),
        ("pasta in bogotta", "Bogota"),
        ("im in col spgs", "Colorado Springs"),
        ("quinoa in la pas how long", "La Paz"),
        ("quinua en Bogotá", "Bogota"),
        ("çorba in Doğubayazıt", "Dogubayazit"),
    ],
)
def test_a_name_is_heard_as_it_is_misheard(text: str, place: str) -> None:
    assert heard(text) == [place]


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("steamed ten minutes like always, Darjeeling", "Darjeeling, India"),
        ("momos in Darjeeling come out raw", "Darjeeling, India"),
        ("how long to steep Darjeeling at 7,000 ft", None),
        ("two cups of Darjeeling tea", None),
    ],
)
def test_a_town_and_its_tea(text: str, place: str | None) -> None:
    assert heard(text) == ([place] if place else [])


@pytest.mark.parametrize(
    "text", ["can more rice go in", "in the pot", "dead wood for the smoker", "how long for potatoes"]
)
def test_no_place_is_made_of_other_words(text: str) -> None:
    assert heard(text) == []


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("how long for potatoes in Zorgwayville", "Zorgwayville"),
        ("i live in a town called zorgholm, rice time", "zorgholm"),
        ("our cabin near Quexborough, beans", "Quexborough"),
        ("pasta up in zorgholm", "zorgholm"),
    ],
)
def test_an_unknown_place_is_said_to_be_unknown_with_the_boil_test(text: str, name: str) -> None:
    (unused,) = (u for u in understand(text).unused if u.kind == "elevation")
    asked = worded(unused.reason, "us")
    assert unused.text == name
    assert asked.count("?") == 1
    assert name in asked
    assert "boiling water" in asked


@pytest.mark.parametrize(
    "text", ["peppers in Zorgo jars", "recipe from Zorgwayville, at 7,000 ft", "rice in Leadville"]
)
def test_no_place_is_doubted_where_it_does_not_matter(text: str) -> None:
    assert [u for u in understand(text).unused if u.kind == "elevation"] == []


def test_who_does_not_know_the_elevation_is_offered_the_boil_test_unless_the_kitchen_is_known() -> None:
    text = "i don't know my elevation, how long for rice"
    (unused,) = understand(text).unused
    assert unused.kind == "elevation"
    known = understand(text, kitchen=Kitchen(elevation_m=2133.6))
    assert (known.unused, known.elevation_m) == ((), 2133.6)


def test_the_place_is_named_in_the_request() -> None:
    assert understand("rice in Leadville").place == "Leadville"
    assert understand("rice in Leadville, 10,150 ft").place == ""
