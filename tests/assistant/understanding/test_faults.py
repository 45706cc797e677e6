"""What went wrong, heard in cooks' own words: which fault is meant of which dish, and what is no complaint at all."""

from functools import cache
from pathlib import Path

import pytest
import tomli

from assistant.answering import understand
from assistant.understanding.faults import heard_in, phrases, plain_phrases
from assistant.understanding.pipeline import read
from rules.mending import Failed, all_meant, catalogue
from rules.model import Request

CASES = tomli.loads((Path(__file__).parent / "faults" / "complaints.toml").read_text(encoding="utf-8"))
COMPLAINTS = [(text, id) for id, texts in CASES["complaints"].items() for text in texts]
ELSEWHERE = {subject: id for id, subject in CASES["answered_elsewhere"].items()}
LEAST = 0.95


@cache
def heard(text: str) -> Request:
    return understand(text)


def led_by(request: Request) -> str | None:
    """The row that leads the answer; of what another room answers the row it stands for."""
    if request.subject in ELSEWHERE:
        return ELSEWHERE[request.subject]
    if request.topic != "troubleshoot" or request.subject is None:
        return None
    failed = Failed(
        dish_class=request.dish_class, dish=request.dish, method=request.method, equipment=request.equipment
    )  # fmt: skip
    return all_meant([request.subject, *request.symptoms_too], failed)[0].id


def test_complaints_are_heard_as_the_fault_of_the_dish() -> None:
    assert len(COMPLAINTS) >= 150
    missed = [f"{text}: {got}, not {id}" for text, id in COMPLAINTS if (got := led_by(heard(text))) != id]
    assert len(missed) <= (1 - LEAST) * len(COMPLAINTS), "\n".join(missed)


@pytest.mark.parametrize("text", CASES["ordinary"]["texts"])
def test_an_ordinary_question_is_no_complaint(text: str, request: pytest.FixtureRequest) -> None:
    if text in CASES["ordinary"]["known_misses"]:
        request.applymarker(pytest.mark.xfail(reason="the learned table takes it for a complaint", strict=True))
    assert heard(text).topic != "troubleshoot"


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("my muffins sank", "told"),
        ("the crumb is gummy", "told"),
        ("gummy rice", "named"),
        ("will my soufflé fall", "wished"),
        ("if the custard curdles", "wished"),
        ("what margin before it curdles", "wished"),
        ("does altitude make cakes dense", "wished"),
        ("why do my cakes fall", "told"),
        ("it just will not set", "told"),
    ],
)
def test_what_happened_is_told_from_what_is_feared_or_but_named(text: str, said: str) -> None:
    assert [fault.said for fault in read(text)._.faults] == [said]


@pytest.mark.parametrize(
    "text",
    [
        "the rice is not gummy", "gravy without lumps", "split peas", "cracked wheat", "hard cider", "dry beans 1 lb",
        "hard boiled eggs", "jam this fall", "raw milk", "in the kitchen sink", "dried apples", "hard boil an egg",
    ],
)  # fmt: skip
def test_a_word_in_a_name_or_one_that_is_denied_tells_no_fault(text: str) -> None:
    assert not any(fault.told for fault in read(text)._.faults)


@pytest.mark.parametrize(
    ("text", "dish"),
    [
        ("cookies came out like one giant pancake", "cookies"),
        ("the jam set like toffee", "jam"),
        ("gumbo for 25, roux is fine but the okra takes ages", "okra"),
        ("apples in the apple pie are still crunchy", "apple pie"),
        ("chocolate muffins peaked like volcanoes", "muffins"),
    ],
)
def test_what_a_dish_is_likened_to_is_no_dish(text: str, dish: str) -> None:
    assert heard(text).dish == dish


@pytest.mark.parametrize(
    ("words", "id"),
    [
        ("sank in the middle", "sank_in_the_middle"), ("sinking", "fell"), ("wouldn't puff", "not_rising"),
        ("refuses to set", "not_set"), ("never gels", "not_set"), ("hard as a rock", "hard"), ("like gravel", "hard"),
        ("like bricks", "dense"), ("like glue", "gummy"), ("like leather", "tough"), ("overproved", "overproofed"),
    ],
)  # fmt: skip
def test_words_are_compared_by_their_stems(words: str, id: str) -> None:
    assert heard_in(words)[:1] == (id,)


def test_every_phrase_says_something() -> None:
    for those in phrases().values():
        for phrase in those:
            assert phrase.words[0]
            assert None not in (phrase.words[0], phrase.words[-1])
            assert phrase.symptom in catalogue()
    assert len(catalogue()) > 150


def test_a_phrase_alone_is_heard_as_its_own_row_or_a_nearer_one() -> None:
    """Nothing in the catalogue is hidden behind another row of no kin."""
    plain = [(words, id) for words, id in plain_phrases().items() if " " in words]
    lost = [(words, id) for words, id in plain if heard_in(words) == () and not read(words)._.faults]
    assert len(lost) < 0.1 * len(plain), lost


def test_amounts_and_rescue_are_heard_with_a_fault() -> None:
    request = heard(
        "cookies spread into one sheet at 7,000 ft, 1 cup butter, 3/4 cup sugar and 1 tsp soda, can I save them"
    )
    assert [(a.ingredient, a.value, a.unit) for a in request.amounts] == [
        ("butter", 1, "cup"), ("granulated sugar", 0.75, "cup"), ("baking soda", 1, "tsp"),
    ]  # fmt: skip
    assert request.saving
    assert not heard("cookies spread into one sheet at 7,000 ft").saving


def test_several_faults_are_all_kept_the_one_in_most_words_first() -> None:
    request = heard("éclairs crack open and then collapse as they cool, 2,100 m")
    assert (request.subject, request.symptoms_too) == ("puffs_collapsed", ("cracked",))


def test_what_went_wrong_stands_through_a_conversation() -> None:
    first = "my rice cooker clicks off and it is still hard in the middle"
    placed = understand("9,000 ft", (first,))
    assert (placed.topic, placed.subject) == ("troubleshoot", "rice_cooker_stops_early")
    assert "rice_cooker" in placed.equipment
    saved = understand("can I save it", (first, "9,000 ft"))
    assert (saved.topic, saved.saving, saved.elevation_m) == ("troubleshoot", True, pytest.approx(2743.2))
    dish = understand("the sourdough", ("it came out dry",))
    assert (dish.topic, dish.subject, dish.dish) == ("troubleshoot", "dry", "sourdough")
    place = understand("Leadville", ("my jam won't set",))
    assert (place.topic, place.subject) == ("troubleshoot", "not_set")


def test_what_is_as_it_should_be_is_no_question() -> None:
    asked = understand("the stock tastes like it should but the potatoes stay hard at 2,600 m, is it the water")
    assert (asked.topic, asked.dish) == ("troubleshoot", "potatoes")
