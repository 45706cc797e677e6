"""Files that a cook asks for: a name that stays in its folder, and nothing written over."""

from __future__ import annotations

import asyncio
from pathlib import Path

import pytest

from assistant.dialogue.deeds import safe_name, write_new
from assistant.dialogue.embedded import Conversation
from assistant.dialogue.executor import KitchenExecutor
from assistant.dialogue.keeper import Keeper
from assistant.dialogue.memory import Memory

PASTED = "convert for 7,000 ft: 250 g flour, 200 g sugar, 3 eggs, 2 tsp baking powder. Bake 30 min at 350 F"


@pytest.mark.parametrize(
    ("name", "safe"),
    [
        ("Seed Cake 2134m", "seed-cake-2134m.txt"),
        ("../../etc/passwd", "etc-passwd.txt"),
        ("C:\\boot", "c-boot.txt"),
        (".hidden", "hidden.txt"),
        ("crème brûlée", "creme-brulee.txt"),
        ("饼", "recipe.txt"),
        ("x" * 300, "x" * 60 + ".txt"),
    ],
)
def test_a_name_stays_in_its_folder(name: str, safe: str) -> None:
    assert safe_name(name) == safe


def test_nothing_is_written_over(tmp_path: Path) -> None:
    first = write_new(tmp_path, "rolls.txt", b"one")
    second = write_new(tmp_path, "rolls.txt", b"two")
    assert (first.name, second.name) == ("rolls.txt", "rolls-2.txt")
    assert first.read_text() == "one"


def said(folder: Path | None, *turns: str) -> str:
    keeper = Keeper(warn=lambda text: None, folder=folder)
    conversation = Conversation("lodge", Memory(), KitchenExecutor(keeper))

    async def hold() -> str:
        return [(await conversation.say(turn)).text for turn in turns][-1]

    return asyncio.run(hold())


def test_the_recipe_is_written_and_where_is_said(tmp_path: Path) -> None:
    text = said(tmp_path, PASTED, "write it to a file as seed-cake.txt")
    assert text == f"Written to {tmp_path / 'seed-cake.txt'}."
    assert "1 1/2 tsp baking powder" in (tmp_path / "seed-cake.txt").read_text()


def test_what_climbs_out_of_the_folder_does_not(tmp_path: Path) -> None:
    inner = tmp_path / "inner"
    inner.mkdir()
    said(inner, PASTED, "write it to ../evil.txt please, save it to a file")
    assert [path.parent for path in tmp_path.rglob("*.txt")] == [inner]


def test_a_folder_that_cannot_be_written_to_is_said(tmp_path: Path) -> None:
    assert said(tmp_path / "gone", PASTED, "write it to a file").startswith("The file could not be written")


def test_without_a_folder_nothing_is_written() -> None:
    assert said(None, PASTED, "write it to a file") == (
        "I write files only in the chat on your own machine: simmerline chat."
    )
