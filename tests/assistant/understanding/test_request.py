"""One utterance, taken apart."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.answering import understand
from assistant.understanding import trace
from rules.model import Kitchen, Quantity, Request


def test_the_first_question() -> None:
    request = understand("how long to braise short ribs at 7,000 feet")
    assert request == Request(
        text="how long to braise short ribs at 7,000 feet",
        topic="time",
        dish="short ribs",
        dish_class="collagen_cut",
        method="braise",
        elevation_m=pytest.approx(2133.6),  # type: ignore[arg-type]
        elevation_from="stated",
        forms=("how_long",),
    )


@pytest.mark.parametrize(
    ("text", "dish", "method"),
    [
        ("how long for hard boiled eggs", "hard-boiled eggs", "boil"),
        ("pot roast at 7,000 ft", "pot roast", None),
        ("how long to boil beans in the pressure cooker", "dried beans", "pressure_cook"),
        ("penne pasta at 9,000", "penne", None),
        ("once the water boils how long for penne", "penne", "boil"),
        ("brase shrot ribs 7000ft how long", "short ribs", "braise"),
        ("how hot should the oil be at 7,000 ft", None, "fry"),
        ("what does water boil at", None, None),
    ],
)
def test_dish_and_method(text: str, dish: str | None, method: str | None) -> None:
    request = understand(text)
    assert (request.dish, request.method) == (dish, method)


def test_an_ingredient_gives_way_to_what_is_baked() -> None:
    assert understand("should i add an egg to my pound cake at 7000ft").dish == "pound cake"


def test_an_unknown_dish_is_kept_and_gets_the_general_class() -> None:
    request = understand("how long to braise zorgon at 7,000 ft")
    assert (request.dish, request.dish_class, request.method) == (None, "general", "braise")
    assert [(u.kind, u.text) for u in request.unused] == [("dish", "zorgon")]


@pytest.mark.parametrize(
    ("text", "field", "value"),
    [
        ("how much brisket for 60 covers", "portions", 60),
        ("rice for 12", "portions", 12),
        ("how much chili for a party of 20", "portions", 20),
        ("braise 4 lb of short ribs", "quantity", Quantity(4, "lb")),
        ("baking powder for 2 tsp at 6500", "quantity", Quantity(2, "tsp")),
        ("set a timer for 25 minutes", "time_min", 25),
        ("it takes 25 to 30 minutes", "time_high_min", 30),
        ("dinner at 6:30, when do I start the brisket", "service_time", "18:30"),
        ("simmer it uncovered", "covered", False),
        ("braise with the lid on", "covered", True),
        ("covered or uncovered", "covered", None),
        ("unsoaked black beans in the pressure cooker", "soaked", False),
        ("pressure cook pinto beans without soaking", "soaked", False),
        ("black beans, I forgot to soak them", "soaked", False),
        ("soaked chickpeas in the pressure cooker", "soaked", True),
        ("black beans in the pressure cooker", "soaked", None),
        ("how long for rice at 2100 m", "units", "metric"),
        ("how long for rice at 7,000 ft", "units", "us"),
    ],
)
def test_a_slot(text: str, field: str, value: object) -> None:
    assert getattr(understand(text), field) == value


@pytest.mark.parametrize(("text", "depth"), [("in one line why", 1), ("why", 2), ("why, show me the equations", 3)])
def test_depth(text: str, depth: int) -> None:
    assert understand(text).depth == depth


@pytest.mark.parametrize(
    "text",
    [
        "",
        " ",
        "\x00\x07\x1b[2J",
        "\ud800",
        "🍲" * 5000,
        "how long " * 1_200_000,
        "NaN feet",
        "-inf m",
        "1e999 ft",
        "9" * 5000,
        "1/0 cup",
        "7,,,000 ft",
        "水在7000英尺",
        "'" * 3000,
        "(((((" * 500,
        "at " * 3000,
        "7000 ft " * 500,
        "braise " * 700,
        b"\xff\xfe\x00".decode("latin-1"),
        "-430.0001 m",
        "0 ft",
        "0 psi 0 F 0 people",
    ],
)
def test_strange_text_gives_a_request(text: str) -> None:
    request = understand(text, context=[text], kitchen=Kitchen(elevation_m=2000.0))
    assert isinstance(request, Request)
    assert len(request.text) <= 2_001 or len(text) <= 2_001


def test_what_was_not_read_is_said() -> None:
    (note,) = understand("how long to boil rice " + "x" * 5000).unused
    assert note.kind == "text"


SPOKEN = """
how long at to from 7,000 7k ft feet m half a an hour and 15 psi F 350 degrees boil braise short ribs in Denver not no
sorry sea level below - ' " 1/2 ½ 6:30 pm for 12 people why 24.6 inHg water boils , ? . nan -5 9e99
"""
WORDS = st.sampled_from(SPOKEN.split())


@given(st.lists(WORDS, max_size=25).map(" ".join) | st.text(max_size=200))
@settings(max_examples=300, deadline=None)
def test_any_text_gives_a_request(text: str) -> None:
    request = understand(text)
    assert request.text == text
    assert request.elevation_m is None or -430 <= request.elevation_m <= 5500
    assert (request.elevation_m is None) == (request.elevation_from is None)


@given(st.lists(st.lists(WORDS, max_size=8).map(" ".join), max_size=4))
@settings(max_examples=60, deadline=None)
def test_any_conversation_gives_a_request(utterances: list[str]) -> None:
    assert isinstance(understand("and at 9,000?", utterances), Request)


def test_the_same_words_give_the_same_request() -> None:
    text = "my pot roast takes 3 hours at 500 ft, how long at 7,000"
    assert understand(text) == understand(text)


def test_trace_is_json_and_names_the_components() -> None:
    import json

    heard = json.loads(json.dumps(trace("how long to braise short ribs at 7,000 feet")))
    assert heard["kitchen_elevation"][0]["words"] == "7,000 feet"
    assert heard["kitchen_topic"]["topic"] == "time"
    assert {"kitchen_numbers", "kitchen_measures", "kitchen_lexicon", "kitchen_spelling", "kitchen_subject"} <= set(
        heard
    )
