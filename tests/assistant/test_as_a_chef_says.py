"""Advice that fits the dish and not its class alone; facts of the trade (common practice), where no source is named."""

import pytest

from assistant.answering import reply_to


def told(text: str) -> str:
    return reply_to(text).text


@pytest.mark.parametrize(
    ("text", "has", "lacks"),
    [
        (
            "gluten-free bread at 7,000 ft",
            ("half as big again", "nothing to punch down"),
            ("then punch it down", "baking powder"),
        ),
        ("challah at 7,000 ft", ("less yeast",), ("baking powder", "leavening")),
        ("cheesecake at 10,000 ft", ("hardly anything",), ("leavening",)),
        ("angel food cake at 10,000 ft", ("less sugar",), ("leavening", "liquid")),
        (
            "how long do wings take in the air fryer at 7,000 ft",
            ("air fryer to",),
            ("Set the oven", "load it less full"),
        ),
        ("how long does naan take in a tandoor at 7,000 ft", ("no dial",), ("Set the oven",)),
        ("steak sous vide at 7,000 ft, how long", ("sear it 1 to 2 min a side",), ()),
        (
            "how long to braise short ribs and then sear at 7,000 ft",
            ("1 to 2 min a side", "no part of the cooking time"),
            (),
        ),
        ("how long for gravy at 8,000 ft", ("direct heat",), ("pressure cooker",)),
        ("pudding at 7,000 ft, how long", ("direct heat",), ("pressure cooker",)),
        ("polenta at 7,000 ft, how long", (), ("slurry",)),
        ("ground turkey at 7,000 ft, how long", ("165 °F",), ("reads 160 °F",)),
        ("bacon at 7,000 ft, how long", ("crisp",), ("thermometer reads", "145 °F")),
        ("oysters on the grill at 7,000 ft, how long", (), ("Oil or marinate",)),
        ("cheesecake at 7,000 ft, how long", ("150 °F",), ("170",)),
        ("how long for a roux at 7,000 ft", ("colour and smell",), ("more liquid",)),
        ("vegetable stock at 7,000 ft, how long", (), ("bones",)),
        ("pan seared duck breast at 7,000 ft, how long", ("thickest part reads 165",), ("beside the bone",)),
        ("caramel sauce at 7,000 ft", ("320",), ("Thread",)),
        ("what temperature to bake brioche at 7,000 ft", ("350–375 °F",), ("yeast",)),
        ("baked beans at 7,000 ft, how long", ("tender first, then bake",), ()),
    ],
)
def test_advice_fits_the_dish(text, has, lacks):
    reply = told(text)
    assert [words for words in has if words not in reply] == []
    assert [words for words in lacks if words in reply] == []


# bakers up high take up to a fifth more starch (common practice); extension sends it from the double boiler to direct
# heat above 5,000 ft
@pytest.mark.parametrize(("feet", "more"), [("3,000", False), ("7,000", True)])
def test_a_filling_of_starch_wants_more_of_it_above_5000_ft(feet, more):
    reply = told(f"lemon meringue pie filling with cornstarch at {feet} ft")
    assert ("more cornstarch" in reply) is more
    assert ("direct heat" in reply) is more


@pytest.mark.parametrize(
    "text",
    [
        "what oven temperature for braised short ribs at 7,000 ft",
        "oven temp for prime rib at 7,000 ft",
        "what temperature should the oven be for a turkey at 7,000 ft",
        "how hot should the oven be for cookies at 7,000 ft",
    ],
)
def test_an_oven_question_leads_with_the_oven(text):
    assert told(text).startswith("Set the oven ")


def minutes(text: str) -> float:
    cook = reply_to(text).figure("cook_time")
    assert cook is not None
    return cook.value


@pytest.mark.parametrize(
    "ordered",
    [
        ("sliced carrots", "baby carrots", "whole carrots"),
        ("diced beets", "small beets", "whole beets", "large beets"),
        ("diced potatoes", "whole potatoes"),
        ("green peanuts", "dried peanuts"),
    ],
)
def test_a_bigger_or_drier_piece_takes_longer(ordered):
    times = [minutes(f"how long to boil {food} at 7,000 ft") for food in ordered]
    assert times == sorted(times)
    assert times[-1] >= 1.4 * times[0]


def test_a_large_pot_says_nothing_of_the_potatoes():
    usual, pot = (minutes(f"how long to boil potatoes{pot} at 7,000 ft") for pot in ("", " in a large pot"))
    assert usual == pot


@pytest.mark.parametrize(
    ("text", "asks"),
    [
        ("how long to boil carrots at 7,000 ft", "say whole, sliced or diced"),
        ("how long to boil peanuts at 7,000 ft", "say green or dried"),
        ("how long to roast a turkey at 7,000 ft", "say the weight"),
        ("how long to simmer pinto beans at 7,000 ft", "say whether they were soaked"),
    ],
)
def test_what_narrows_the_time_is_asked_for_in_the_first_line(text, asks):
    assert asks in told(text).splitlines()[0]


# a headline that a cook can plan by: where no reason is said, not more than a third of the middle to either side
@pytest.mark.parametrize(
    "text",
    [
        "how long do soaked pinto beans take at 6,200 ft",
        "14 lb turkey at 7,000 ft, how long",
        "how long to boil sliced carrots at 7,000 ft",
        "how long to braise short ribs at 7,000 ft",
        "5 lb chicken roasted at 7,000 ft, how long",
    ],
)
def test_a_range_without_a_reason_is_narrow(text):
    cook = reply_to(text).figure("cook_time")
    assert "It goes by" not in told(text)
    assert cook.value * 2 / 3 <= cook.low <= cook.high <= cook.value * 4 / 3 + 1
