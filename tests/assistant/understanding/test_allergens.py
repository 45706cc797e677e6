"""A guest's allergy: what it is of, and that it is no dish and that guest no head count."""

import pytest

from assistant.answering import reply_to
from assistant.understanding.amounts import portions
from assistant.understanding.pipeline import read


def told(text):
    return [one.id for one in read(text)._.allergies]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("my aunt is allergic to sesame and soy", ["sesame", "soy"]),
        ("two of them have a shellfish allergy", ["shellfish"]),
        ("she can't eat hazelnuts, only the cake", ["nut"]),
        ("a coeliac and a vegan at the table", ["gluten"]),
        ("Grandpa mustn't have dairy, what about the gratin", ["milk"]),
        ("nobody is allergic to eggs here", []),
        ("no nut allergies, brownies at 6,000 ft", []),
        ("I can't have the milk boiling over", []),
        ("peanuts for 20 at 7,000 ft", []),
    ],
)
def test_what_is_told(text, expected):
    assert told(text) == expected


def test_what_it_is_of_is_no_dish():
    found = [f.id for f in read("rice and curry, one guest is allergic to peanuts")._.found if f.kind == "dish"]
    assert "peanuts" not in found
    assert "white rice" in found


def test_the_guest_is_no_head_count():
    assert portions(read("pot roast for 14 at 6,500 ft, one guest is allergic to soy"), "order") == 14


def test_nor_is_one_with_an_allergy_to_something_else():
    assert portions(read("chili for 11, one guest is allergic to kiwi"), "order") == 11


@pytest.mark.parametrize(
    ("text", "holds"),
    [
        ("one of us has an egg allergy and I bake sponge cake at 6,500 ft", "it is in"),
        ("a friend is allergic to shellfish, I steam rice at 6,500 ft", "it may be in"),
        ("the neighbour is coeliac, I boil potatoes at 6,500 ft", "it is not in"),
    ],
)
def test_the_reply_tells_what_holds_it(text, holds):
    answer = reply_to(text)
    assert answer.request.subject == "allergy"
    assert all(part in answer.text for part in (holds, "board", "label"))


def test_a_question_of_cooking_is_answered_and_the_allergy_named():
    answer = reply_to("my cousin can't eat gluten, how long do I boil buckwheat at 6,500 ft")
    assert answer.request.topic == "time"
    assert "For an allergy" in answer.text
