"""Batches told in a conversation stand in the log of `simmerline batch`, and both give the same next change."""

from __future__ import annotations

import asyncio
import re

import pytest
from typer.testing import CliRunner

from assistant.cli import create_app
from assistant.dialogue.embedded import Conversation
from assistant.dialogue.executor import KitchenExecutor
from assistant.dialogue.memory import Memory
from assistant.dialogue.record import Record
from assistant.store import batches, open_store
from assistant.store.batches import Batch

pytestmark = pytest.mark.usefixtures("database")

FIRST = "my spice cake sank in the middle at 7,000 ft, 350F 35 minutes, 2 tsp baking powder, 250 g flour, 220 g sugar"


def talk(*turns: str) -> tuple[list[str], Memory]:
    """The replies to a conversation that is held with the store."""
    record = Record.resume(new=True, warn=lambda text: pytest.fail(text))
    conversation = Conversation(record.id, Memory(), KitchenExecutor(record))

    async def hold() -> list[str]:
        return [(await conversation.say(turn)).text for turn in turns]

    said = asyncio.run(hold())
    record.close()
    return said, conversation.memory


def kept() -> tuple[Batch, ...]:
    store = open_store()
    try:
        return batches.every(store)
    finally:
        store.close()


def next_change(text: str) -> str:
    found = re.search(r"Next change: (.+?\.)(?:\s|$)", " ".join(text.split()))
    assert found, text
    return found[1]


def command(*arguments: str) -> str:
    done = CliRunner().invoke(create_app(), ["batch", *arguments])
    assert done.exit_code == 0, done.stderr
    return done.stdout


def test_one_complaint_is_no_log() -> None:
    talk(FIRST)
    assert kept() == ()


def test_the_second_batch_puts_both_into_the_log() -> None:
    said, _ = talk(FIRST, "I did that and the second batch sank again")
    first, second = kept()
    assert (first.recipe, first.symptoms, first.changes) == ("spice cake", ("sank_in_the_middle",), ())
    assert second.changes[0]["what"] == "leavening"
    assert second.elevation_m == pytest.approx(2133.6)
    assert "In the log as 1 and 2." in said[-1]


@pytest.mark.parametrize(
    "later",
    [
        ("I did that and the second batch sank again",),
        ("did it, second batch sank a bit less",),
        ("did that, the second batch sank even more",),
        ("did that, second one sank", "third batch is flat on top but dry"),
        ("second batch without baking powder, flat like a pancake",),
    ],
)
def test_chat_and_the_command_give_the_same_next_change(later: tuple[str, ...]) -> None:
    said, _ = talk(FIRST, *later)
    last = kept()[-1]
    assert next_change(said[-1]) == next_change(command("show", str(last.id)))
    if len(kept()) > 1:
        assert next_change(said[-1]) == next_change(command("compare", "spice cake"))


def test_the_command_goes_on_where_the_conversation_ended() -> None:
    """A batch noted by the command after those of a conversation is worked out on the recipe that was told there."""
    talk(FIRST, "did that, second batch sank again")
    noted = command("note", "spice cake", "--symptom", "sank in the middle", "--changed", "suggested", "--at", "7000ft")
    said, _ = talk(FIRST, "did that, second batch sank again", "did that too, the third batch sank again")
    assert next_change(noted) == next_change(said[-1])


def test_what_came_out_well_is_kept_without_a_next_change() -> None:
    said, memory = talk(FIRST, "did that, second batch sank a little", "third batch was spot on")
    assert "nothing wrong" in said[-1]
    assert "Next change" not in said[-1]
    assert kept()[-1].symptoms == ()
    assert memory.run is not None
    assert memory.run.suggested is None


def test_a_batch_that_was_told_wrong_is_put_right_in_the_log() -> None:
    talk(FIRST, "did that, second batch sank", "sorry, batch 2 was gummy, I told you wrong")
    first, second = kept()
    assert first.symptoms == ("sank_in_the_middle",)
    assert second.symptoms == ("crumb_gummy",)


def test_a_batch_that_is_taken_back_leaves_the_log() -> None:
    talk(FIRST, "did that, second batch sank", "undo")
    assert len(kept()) == 1


def test_the_recipe_as_converted_is_the_first_batch() -> None:
    pasted = (
        "convert for 7,000 ft: 250 g flour, 200 g sugar, 3 eggs, 2 tsp baking powder, 150 ml milk. Bake 30 min at 350 F"
    )
    talk(pasted, "keep it as batch 1")
    (batch,) = kept()
    assert batch.elevation_m == batch.from_elevation_m == pytest.approx(2133.6)
    assert "1 1/2 tsp baking powder" in batch.formula


def test_undo_of_the_command_forgets_the_batch_noted_last() -> None:
    talk(FIRST, "did that, second batch sank")
    assert "batch 2" in command("undo")
    assert len(kept()) == 1


def test_a_batch_is_shown_with_its_recipe() -> None:
    talk(FIRST, "did that, second batch sank")
    said = command("show", "1")
    assert "2 tsp baking powder" in said
    assert "Next change" not in said
