"""A few words behind an answer go on with it, and give it the one thing that was said."""

from __future__ import annotations

import pytest

from assistant.answering import reply_to, understand


def said(*turns: str) -> str:
    """The headline of the last turn."""
    *context, last = turns
    return reply_to(last, context).headline


@pytest.mark.parametrize(
    ("turns", "dish"),
    [
        (("hard boiled eggs at 6,600 ft", "oh sorry, I meant the dippy sort, for soldiers"), "soft-boiled eggs"),
        (("soft boiled eggs at 2,100 m", "could they be a touch more set"), "medium-boiled eggs"),
        (("hard boiled eggs at 9,100 ft", "bit less cooked please"), "medium-boiled eggs"),
        (("poached eggs at 7,100 ft", "a little firmer please"), "poached eggs"),
    ],
)
def test_another_yolk_is_another_egg(turns: tuple[str, ...], dish: str) -> None:
    *context, last = turns
    request = understand(last, context)
    assert (request.topic, request.dish) == ("time", dish)


@pytest.mark.parametrize("text", ["the yolks came out far too soft", "too soft!"])
def test_how_eggs_came_out_stays_a_fault(text: str) -> None:
    assert understand(text, ["hard boiled eggs at 6,600 ft"]).dish == "hard-boiled eggs"


@pytest.mark.parametrize(
    ("first", "then", "opening"),
    [
        ("fusilli at 8,400 ft", "I prefer it chewier", "Firmer: take fusilli at the early end"),
        ("boiled carrots at 2,500 m", "make them softer", "Softer: give carrots the late end"),
        ("vanilla custard at 6,900 ft", "softer please", "Softer: take custard out at the early end"),
        ("chicken drumsticks at 7,700 ft", "less done please", "Not less done than this"),
        ("kidney beans at 7,700 ft", "a bit firmer", "Not less done than this"),
    ],
)
def test_firmer_and_softer_are_ends_of_the_time(first: str, then: str, opening: str) -> None:
    assert said(first, then).startswith(opening)


def test_the_early_end_is_the_low_end() -> None:
    """The figure of the headline against the range of the plain answer."""
    time = reply_to("penne at 8,000 ft", []).figure("cook_time")
    assert time is not None
    assert time.low is not None
    assert f"about {round(time.low)} min" in said("penne at 8,000 ft", "firmer please")


@pytest.mark.parametrize(
    ("first", "opening"),
    [
        ("plum jam at 7,300 ft", "By hand: two drops run together"),
        ("yogurt at 2,300 m", "By hand: heat the milk until it steams"),
        ("how hot the oil for churros at 6,100 ft", "By hand: a cube of white bread"),
        ("fudge at 6,100 ft", "Yes, by the cold-water test"),
        ("sous vide pork chops at 6,100 ft", "A bath cannot be kept by hand"),
        ("sourdough at 6,100 ft", "Sourdough: "),
    ],
)
def test_without_a_thermometer_it_is_told_by_hand(first: str, opening: str) -> None:
    assert said(first, "I don't own a thermometer").startswith(opening)


def test_no_step_reads_a_thermometer_that_is_not_there() -> None:
    for first in ("plum jam at 7,300 ft", "fudge at 6,100 ft"):
        steps = " ".join(reply_to("no thermometer here", [first]).steps)
        assert "thermometer" not in steps.casefold()


@pytest.mark.parametrize("then", ["8", "8 on the packet", "label says 8", "8 it says"])
def test_a_bare_figure_behind_pasta_is_the_packets(then: str) -> None:
    request = understand(then, ["orecchiette at 6,300 ft", "and the linguine?"])
    assert (request.dish, request.time_min, request.temperature_c) == ("linguine", 8, None)


@pytest.mark.parametrize("then", ["Kitchen manager rang. 140.", "front desk says 95", "events team: 125"])
def test_a_bare_figure_behind_covers_counts_them(then: str) -> None:
    request = understand(then, ["how much goulash for 110 at 7,400 ft"])
    assert (request.topic, request.portions, request.temperature_c) == (
        "order", int("".join(c for c in then if c.isdigit())), None,
    )  # fmt: skip


def test_a_bare_figure_beside_service_is_its_hour() -> None:
    context = ["roast pork for 90 at 6,000 ft, service at 7 pm, when do I start"]
    assert understand("sorry, 745 service", context).service_time == "19:45"
    assert understand("client says 105", context).service_time == "19:00"


def test_how_far_behind_what_is_cooked_ahead() -> None:
    told = said("par-cooked carrots at 8,200 ft", "and how far should I take those")
    assert told.startswith("Until a skewer goes in and meets a firm middle.")


@pytest.mark.parametrize("first", ["reduce beef stock at 7,900 ft", "apricot jam at 7,900 ft"])
def test_a_wide_pan_behind_what_is_boiled_down(first: str) -> None:
    assert understand("why the wider pot", [first]).subject == "wide_pan_reduces"


def test_a_wide_pan_behind_searing_is_none_of_it() -> None:
    assert understand("why a wide pan", ["sear a pork chop at 7,900 ft"]).subject != "wide_pan_reduces"


def test_an_amount_behind_a_dish_is_of_it() -> None:
    request = understand("I have 2 kg of it", ["how much liquid for beef stew at 7,100 ft"])
    assert request.topic == "liquid"
    assert request.quantity is not None
    assert request.quantity.value == 2


@pytest.mark.parametrize(
    ("text", "dish"),
    [("buffalo cheese momos at 3,900 m", "momos"), ("goat cheese empanadas at 7,000 ft", "empanadas")],
)
def test_what_stands_between_a_food_and_what_is_made_of_it(text: str, dish: str) -> None:
    assert understand(text).dish == dish


def test_the_plain_name_in_the_singular_is_the_one_talked_of() -> None:
    assert understand("and the rib at 8,800 ft?", ["smoke beef ribs at 5,900 ft"]).dish == "beef ribs"


@pytest.mark.parametrize("fault", ["it went gluey", "too stiff, it stands in a heap", "it came out claggy"])
def test_a_stiff_risotto_is_loosened(fault: str) -> None:
    told = reply_to(fault, ["risotto at 7,600 ft"]).text
    assert "hot stock" in told
    assert "rinse" not in told
    assert "fried rice" not in told


def test_plain_rice_that_went_gluey_is_not_loosened() -> None:
    assert "hot stock" not in reply_to("it went gluey", ["jasmine rice at 7,600 ft"]).text


@pytest.mark.parametrize(
    ("text", "metres"),
    [("dumplings in the Lesotho highlands", 2300), ("lentils in Spiti", 3800), ("stew in McLeodganj", 1830),
     ("rice in Palandöken", 2200), ("pasta in Alagna", 1190), ("potatoes in Tepoztlan", 1700)],
)  # fmt: skip
def test_towns_in_the_hills_are_known(text: str, metres: float) -> None:
    """From memory, each within 60 m."""
    assert understand(text).elevation_m == pytest.approx(metres, abs=60)


def test_how_long_behind_the_signs_is_told_plainly() -> None:
    context = ["yogurt at 2,300 m", "I have no thermometer"]
    assert not said(*context, "and how long does it take?").startswith("By hand")


@pytest.mark.parametrize(
    ("turn", "dish", "method"),
    [
        ("wild rice in a plain pot", "wild rice", "simmer"),
        ("beetroot, just a regular pot", "beets", "boil"),
        ("on the hob", "black-eyed peas", "simmer"),
    ],
)
def test_the_pot_that_is_named_takes_the_place_of_pressure(turn: str, dish: str, method: str) -> None:
    request = understand(turn, ["black-eyed peas in the pressure cooker at 7,700 ft"])
    assert (request.topic, request.dish, request.method) == ("time", dish, method)


def test_a_dish_that_only_changes_stays_under_pressure() -> None:
    assert understand("wild rice", ["black-eyed peas in the pressure cooker at 7,700 ft"]).method == "pressure_cook"


@pytest.mark.parametrize(
    ("turns", "slot", "value"),
    [
        (("bucatini at 6,300 ft, 13 min on the pack", "sorry, 10 not 13"), "time_min", 10),
        (("boiled beets for 36 at 6,300 ft, how many kilos", "it is 28 rather than 36"), "portions", 28),
    ],
)
def test_a_figure_takes_the_place_of_the_one_that_it_denies(turns: tuple[str, ...], slot: str, value: float) -> None:
    *context, last = turns
    assert getattr(understand(last, context), slot) == value


def test_a_figure_that_denies_none_that_was_told_changes_nothing() -> None:
    assert understand("10 not 12", ["bucatini at 6,300 ft, 13 min on the pack"]).time_min in (None, 13)


def test_from_cold_is_answered_beside_the_time() -> None:
    assert said("butternut squash boiled at 6,300 ft, 14 min", "is that from cold?").startswith("Not from cold")
