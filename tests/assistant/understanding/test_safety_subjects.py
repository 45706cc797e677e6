"""Subjects of food safety are heard, and only where they are meant."""

import pytest

from assistant.answering import reply_to, understand
from assistant.understanding.pipeline import read
from rules.tables import read_toml

ROWS = read_toml("lexicon/safety_subjects.toml")["subject"]


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row["id"])
def test_every_phrase_finds_its_own_subject(row):
    from assistant.reading.text import fold
    from assistant.understanding.safety_subjects import safety_subject

    topic = row["within"][0] if "within" in row else "time"
    assert {safety_subject(fold(phrase), topic).id for phrase in row["heard_as"]} == {row["id"]}


@pytest.mark.parametrize(
    ("text", "topic", "subject"),
    [
        ("can i water bath can asparagus at 8000 ft", "preserve", "boiling_water_canning"),
        ("is oven canning safe at 7,000 ft", "preserve", "oven_canning"),
        ("how long do i boil water to make it safe to drink at 8,000 ft", None, "drinking_water"),
        ("distill whiskey at 7000 ft", None, "distilling"),
        ("pasteurize milk at 9,000 ft", None, "pasteurise_milk"),
        ("how do i thaw a 12 lb turkey", None, "thawing"),
        ("my thermometer reads 34 F in ice water, calibrate it", "calibrate", "thermometer_ice_point"),
    ],
)
def test_a_question_of_safety(text, topic, subject):
    doc = read(text)
    assert doc._.subject == subject
    assert topic is None or doc._.topic.id == topic


@pytest.mark.parametrize(
    "text",
    [
        "how long does cheesecake bake in a water bath at 7,000 ft",
        "why does thawing take so long",
        "how long to chill eggs in ice water at 6,000 ft",
        "how long to cook pumpkin butter at 7,000 ft",
        "can eggs be boiled at 9,000 ft",
        "is the pot still boiling at 8,000 ft",
    ],
)
def test_a_question_that_only_sounds_like_it(text):
    assert read(text)._.safety is None


def test_the_refusal_reaches_the_cook():
    answer = reply_to("can i water bath can green beans at 6,500 ft, the recipe says 3 hours")
    assert answer.headline.startswith("No.")
    assert any(caution.level == "stop" for caution in answer.cautions)


@pytest.mark.parametrize(
    "text",
    [
        "how long to boil water to make it safe at 8,000 ft",
        "do i boil creek water longer up at 9,000",
        "what do I do with snow water before we drink it, boiling wise, 11,000 ft",
    ],
)
def test_water_to_drink_is_heard_however_it_is_said(text: str) -> None:
    assert understand(text).subject == "drinking_water"


@pytest.mark.parametrize("text", ["is boiling chicken in water safe at 7,000 ft", "boil pasta in water at 7,000 ft"])
def test_a_dish_in_the_sentence_is_what_it_is_about(text: str) -> None:
    assert understand(text).subject != "drinking_water"


def test_garlic_confit_is_garlic_in_oil() -> None:
    assert understand("is it safe to make garlic confit").subject == "garlic_in_oil"


@pytest.mark.parametrize(
    ("text", "subject"),
    [
        ("freeze blanch green beans time at 7,000", "blanching"),
        ("can I use the electric pressure cooker to can", "electric_canner"),
        ("can i can my grandma's salsa at 6000 ft", "untested_recipe"),
        ("how long to process peaches at 7000 ft", None),
    ],
)
def test_a_subject_of_preserving_is_heard_beside_a_dish(text: str, subject: str | None) -> None:
    assert understand(text).subject == subject
