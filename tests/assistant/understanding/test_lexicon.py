"""Phrases of the lexicon, and what becomes of overlaps."""

import pytest

from assistant.reading.spans import Found
from assistant.understanding.lexicon import hear, phrase_book, settle


def names(text: str, kind: str) -> list[str]:
    return [found.id for found in hear(text.lower().split()) if found.kind == kind]


@pytest.mark.parametrize(
    ("text", "dish"),
    [
        ("braise short ribs", "short ribs"),
        ("braise shortribs", "short ribs"),
        ("bone in short rib", "short ribs"),
        ("a brisket", "beef brisket"),
        ("dry penne", "penne"),
    ],
)
def test_hears_the_dish(text: str, dish: str) -> None:
    assert names(text, "dish") == [dish]


def test_the_longest_match_wins() -> None:
    long, short = Found(1, 4, "dish", "short rib stew"), Found(1, 3, "dish", "short ribs")
    assert settle([short, long]) == (long,)


def test_of_equal_length_the_first_in_the_lexicon_wins() -> None:
    first, second = Found(0, 1, "dish", "stock"), Found(0, 1, "method", "simmer")
    assert settle([first, second]) == (first,)


def test_a_dish_and_an_ingredient_of_one_name_stand_side_by_side() -> None:
    pair = Found(0, 1, "dish", "eggs"), Found(0, 1, "ingredient", "egg")
    assert settle(pair) == pair


@pytest.mark.parametrize(
    ("text", "method"), [("how long to hard boil", "boil"), ("in the pressure cooker", "pressure_cook")]
)
def test_hears_the_method(text: str, method: str) -> None:
    assert names(text, "method") == [method]


def test_no_phrase_is_empty() -> None:
    assert all(phrase.strip() for phrase in phrase_book().phrases)
