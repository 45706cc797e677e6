"""The catalogue of moves and of pieces, row by row."""

from __future__ import annotations

import pytest

from assistant.dialogue import moves
from assistant.dialogue.heard import hear
from assistant.dialogue.made import MOVES
from assistant.dialogue.memory import Memory
from assistant.dialogue.turn import take_turn
from rules import tables
from rules.engine import known
from rules.model import MISSING_WORDS, Request

ROWS = tables.read_toml(moves.CATALOGUE)["move"]
BARE_REPLIES = {
    "elevation": ("7,000", "7000", "Santa Fe", "2100 m", "seven thousand feet"),
    "dish": ("short ribs", "lamb shanks", "rice"),
    "method": ("braise", "in the pressure cooker", "steamed"),
    "time": ("about two hours", "40 minutes"),
    "portions": ("60", "for 60 covers", "12 people"),
    "service_time": ("6 pm", "6:30", "at noon"),
    "reading": ("199", "199 F", "93 C"),
    "temperature": ("350", "350 F", "180 C"),
    "symptom": ("it sank in the middle", "dry"),
}


@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['id']} {row.get('factor', '')}".strip())
def test_every_phrase_is_heard_as_its_move(row: dict[str, object]) -> None:
    """As it stands, shouted, and with words of politeness around it."""
    move = moves.Move(str(row["id"]), float(str(row.get("factor", 1.0))))
    for phrase in row["phrases"]:  # type: ignore[attr-defined]
        for text in (phrase, f"  {phrase.upper()}! ", f"Okay, {phrase} please."):
            assert moves.heard(moves.words(text)) == move


def test_every_move_does_something() -> None:
    """Moves that are asides to what is asked are told by the piece, the others have a function."""
    assert {row["id"] for row in ROWS} == MOVES.keys() | {"why_asked", "dont_know"}


def test_every_piece_has_its_reasons() -> None:
    """One row for each word that an answer may miss."""
    assert set(moves.pieces()) == set(MISSING_WORDS)


@pytest.mark.parametrize(
    "text",
    ["how long to braise short ribs", "more salt?", "start over the beans at 7,000 ft", "7,000", "why pasta", "", "🍲"],
)
def test_a_question_is_no_move(text: str) -> None:
    """Only where nothing else is said."""
    assert moves.heard(moves.words(text)) is None


@pytest.mark.parametrize(
    ("word", "reply"), [(word, reply) for word, replies in BARE_REPLIES.items() for reply in replies]
)
def test_a_bare_reply_is_the_piece_that_was_asked_for(word: str, reply: str) -> None:
    """And goes on with the question."""
    heard = hear(reply, Memory(request=Request(topic="time"), asked=word)).hearing
    assert known(heard.request, word)
    assert heard.elliptical
    assert heard.request.text == reply


@pytest.mark.parametrize("word", MISSING_WORDS)
def test_asked_why_the_piece_is_explained_and_asked_for_again(word: str) -> None:
    """Whatever it is, the memory stays as it was."""
    memory = Memory(request=Request(text="how long", topic="time"), asked=word)
    turn = take_turn("why do you need that?", memory)
    assert turn.memory == memory
    assert turn.answer.text.startswith(moves.pieces()[word].why)


@pytest.mark.parametrize("word", MISSING_WORDS)
@pytest.mark.parametrize("reply", ["thanks", "hmm", "what visa do I need for Nepal"])
def test_what_gives_no_piece_is_none(word: str, reply: str) -> None:
    """Small talk and other matters fill nothing, whatever was asked for."""
    heard = hear(reply, Memory(request=Request(topic="troubleshoot"), asked=word)).hearing
    assert not known(heard.request, word)


def test_a_list_in_one_line_is_the_recipe_that_was_asked_for() -> None:
    """Its ingredients are not heard as dishes or amounts of the question."""
    asked = Memory(request=Request(topic="convert_recipe"), asked="recipe")
    heard = hear("2 cups flour, 1 cup milk, 2 eggs", asked).hearing.request
    assert heard.recipe == "2 cups flour\n1 cup milk\n2 eggs"
    assert (heard.dish, heard.quantity) == (None, None)


def test_a_figure_is_what_was_asked_for_and_nothing_else() -> None:
    """For 12, asked when it is to be served, is noon, and counts nobody."""
    heard = hear("for 12", Memory(request=Request(topic="schedule"), asked="service_time")).hearing
    assert (heard.request.service_time, heard.request.portions) == ("12:00", None)


def test_a_faulty_piece_says_what_is_wrong() -> None:
    """With the file it stands in."""
    with pytest.raises(tables.BadTable, match=r"lexicon/moves.toml.*none of elevation"):
        moves.Piece(word="money", why="", find_out="")
