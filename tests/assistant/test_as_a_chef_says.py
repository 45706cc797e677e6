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
    ],
)
def test_an_oven_question_leads_with_the_oven(text):
    assert told(text).startswith("Set the oven to ")
