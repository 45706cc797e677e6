"""A headline that says yes or no agrees with the figures under it, and neither opens a question of two ways."""

from __future__ import annotations

from itertools import product

import pytest

from assistant.answering import reply_to
from rules.model import Answer, Figure
from rules.said import duration

PLACES = ("at 5,300 ft", "at 2,900 m", "at 60 ft")
TIMED = (
    "boiled potatoes", "penne", "braised oxtail", "simmered lentils", "steamed dumplings", "roast beef",
    "baked lasagna", "grilled sausages", "fried chicken wings", "pressure cooked chickpeas", "white rice",
)  # fmt: skip
BAKED = ("muffins", "sponge cake", "cornbread", "pound cake", "brownies")
# an ingredient, and the figure of its change
AMOUNTS = (("baking powder", "leavening_change"), ("sugar", "sugar_change"), ("flour", "flour_change"))
BATHS = ("pork chops at 60 C", "salmon at 50 C", "duck breast at 62 C")
NO_CHANGE = (
    "Does any number on my card change for sous vide {bath} {place}? yes or no",
    "sous vide {bath} {place}, anything in my chart to change? y/n",
)
EITHER = (
    "is 350 F too hot or too cool for muffins {place}",
    "are 25 min too long or too short for boiled potatoes {place}",
    "does braised oxtail need longer or the same {place}",
    "should fries be hotter or cooler {place}",
    "is 190 C still right for doughnuts {place} or do I turn it down",
    "do I cook stew with the lid on or leave it off {place}",
    "pot or pressure cooker for chickpeas {place}?",
    "lamb shanks braised in the oven or on the hob at a simmer {place}? hours for each",
    "are my pralines too hot or too long cooked {place}? took them to 240 F and they crumble",
    "bread sinks {place}. is it the yeast or the oven?",
    "sponge cake {place}: do I beat the whites stiff or soft",
)  # fmt: skip
YES, NO = ("Yes", "Just"), ("No", "Hardly")


def headline(answer: Answer) -> str:
    return answer.text.splitlines()[0]


def moved(answer: Answer, figure: Figure | None) -> float:
    """How far a time stands over that of the baseline, in the words that a cook reads [min]."""
    base = answer.figure("baseline_time")
    assert figure, answer.text
    assert base, answer.text
    return 0.0 if str(duration(figure.value)) == str(duration(base.value)) else figure.value - base.value


@pytest.mark.parametrize(("dish", "place"), list(product(TIMED, PLACES)))
def test_longer_is_said_where_it_is_longer(dish: str, place: str) -> None:
    for text, wanted in ((f"do {dish} take longer {place}?", 1), (f"do {dish} take the same time {place}?", 0)):
        answer = reply_to(text)
        by, said = moved(answer, answer.figure("cook_time")), headline(answer)
        assert said.startswith(YES if (by > 0) == bool(wanted) else NO), (text, said, by)


@pytest.mark.parametrize(("dish", "amount", "place"), list(product(BAKED, AMOUNTS, PLACES[:2])))
def test_more_or_less_of_a_thing_is_what_the_amount_says(dish: str, amount: tuple[str, str], place: str) -> None:
    for way, sign in (("more", 1), ("less", -1)):
        text = f"do {dish} {place} need {way} {amount[0]}?"
        answer = reply_to(text)
        change = answer.figure(amount[1])
        fits = change is not None and change.value * sign > 0
        if "Yes" in headline(answer) or fits:
            assert headline(answer).startswith("Yes") == fits, (text, headline(answer))


@pytest.mark.parametrize(("text", "bath", "place"), list(product(NO_CHANGE, BATHS, PLACES)))
def test_a_bath_under_the_boil_changes_nothing(text: str, bath: str, place: str) -> None:
    answer = reply_to(text.format(bath=bath, place=place))
    assert not headline(answer).startswith(YES), headline(answer)
    figure = answer.figure("bath_temperature")
    assert figure is None or figure.sea_level in (None, figure.value)


@pytest.mark.parametrize(("text", "place"), list(product(EITHER, PLACES[:2])))
def test_neither_yes_nor_no_opens_an_either_or(text: str, place: str) -> None:
    assert not headline(reply_to(text.format(place=place))).startswith((*YES, *NO)), text


@pytest.mark.parametrize(
    ("text", "opens"),
    [
        ("was I daft to add flour to my brownies at 6,300 ft", "No: use about"),
        ("was I daft to add flour to my cornbread at 7,100 ft", "Yes: leave"),
        ("was it a mistake to double the baking powder in muffins at 2,500 m", "Yes: use about"),
        ("am I silly to boil spaghetti longer in Leadville", "No: about"),
        ("am I mad to boil spaghetti less time in Leadville", "Yes: about"),
        ("is water boiled in Cusco still safe to drink", "Yes, once it has been kept"),
        (
            "custard sauce at 83 C, 8,800 ft: is that still the number or do I scale it like sugar?",
            "181 °F (83 °C) is done",
        ),
        ("is 25 min enough for carrots at 2,900 m or must I go longer", "25 min "),
        ("brisket braised at 2,500 m, in the oven or on the hob at a simmer, hours for each", "As long either way"),
        ("pot or pressure cooker for kidney beans at 5,600 ft, minutes for both please", "Quicker at"),
        ("lid on or lid off for a soup at 3,000 m", "Lid on"),
    ],
)
def test_the_headline_has_the_form_of_the_question(text: str, opens: str) -> None:
    assert headline(reply_to(text)).startswith(opens), headline(reply_to(text))
