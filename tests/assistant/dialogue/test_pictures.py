"""Pictures asked for in talk: which one is meant, what is written, and what is said where nothing can be drawn."""

from __future__ import annotations

import asyncio
import builtins
from pathlib import Path

import pytest

from assistant.dialogue.deeds import Draw
from assistant.dialogue.embedded import Conversation
from assistant.dialogue.executor import KitchenExecutor
from assistant.dialogue.keeper import Keeper
from assistant.dialogue.memory import Memory
from assistant.dialogue.turn import Turn, take_turn
from rules.model import Kitchen

LODGE = Kitchen(elevation_m=2133.6)
RIBS, BOIL = "how long to braise short ribs", "what does water boil at here"
CAKE = "convert for 7,000 ft: 250 g flour, 200 g sugar, 3 eggs, 2 tsp baking powder, 120 g butter. Bake 30 min at 350 F"
DINNER = "short ribs, polenta and green beans for 90 at 6:30 pm saturday"


def talk(*said: str, kitchen: Kitchen = LODGE) -> Turn:
    memory, turn = Memory(kitchen=kitchen), None
    for line in said:
        turn = take_turn(line, memory)
        memory = turn.memory
    assert turn is not None
    return turn


@pytest.mark.parametrize(
    ("said", "kind", "name"),
    [
        ((RIBS, "show me"), "range", "range-short-ribs.svg"),
        ((RIBS, "can I see that as a chart"), "range", "range-short-ribs.svg"),
        ((RIBS, "draw that as a png"), "range", "range-short-ribs.png"),
        ((BOIL, "show me"), "boil", "boil.svg"),
        ((RIBS, "plot the boiling curve"), "boil", "boil.svg"),
        ((RIBS, "graph the time factors"), "time", "time.svg"),
        (("how hot is a pressure cooker at 15 psi", "show me"), "pressure", "pressure.svg"),
        ((RIBS, "show me the pressure cooker curve"), "pressure", "pressure.svg"),
        ((CAKE, "show me"), "recipe", "recipe.svg"),
        ((CAKE, "show me before and after"), "recipe", "recipe.svg"),
        ((DINNER, "show me"), "plan", "plan.svg"),
        ((DINNER, "draw the timeline"), "plan", "plan.svg"),
    ],
)
def test_which_picture_is_meant(said: tuple[str, ...], kind: str, name: str) -> None:
    deed = talk(*said).deed
    assert isinstance(deed, Draw)
    assert (deed.kind, deed.name) == (kind, name)
    assert deed.question.elevation_m == pytest.approx(2133.6, abs=1)


@pytest.mark.parametrize("said", ["show me", "plot that", "draw it"])
def test_nothing_is_changed_by_a_picture(said: str) -> None:
    before = talk(RIBS)
    after = take_turn(said, before.memory)
    assert after.memory.request == before.memory.request
    assert after.answer == take_turn(said, before.memory).answer


@pytest.mark.parametrize(
    "said", ["show me how to braise short ribs", "show my kitchen", "show both units", "how long for rice"]
)
def test_other_words_are_no_picture(said: str) -> None:
    assert talk(RIBS, said).deed is None


def test_what_is_lacking_is_said() -> None:
    assert talk(RIBS, "show me the timeline").answer.text.startswith("There is no plan yet to draw")
    assert talk("plot the boiling curve", kitchen=Kitchen()).answer.text.startswith("Where is the kitchen?")


def held(folder: Path | None, *turns: str) -> str:
    keeper = Keeper(warn=lambda text: None, folder=folder)
    conversation = Conversation("lodge", Memory(kitchen=LODGE), KitchenExecutor(keeper))

    async def hold() -> str:
        return [(await conversation.say(turn)).text for turn in turns][-1]

    return asyncio.run(hold())


@pytest.mark.parametrize(
    ("said", "name", "inside"),
    [
        ((RIBS, "show me"), "range-short-ribs.svg", "Braising short ribs"),
        ((BOIL, "show me"), "boil.svg", "Where water boils"),
        ((CAKE, "show me"), "recipe.svg", "baking powder"),
        ((DINNER, "show me"), "plan.svg", "polenta"),
    ],
)
def test_the_picture_is_written_and_where_is_said(
    tmp_path: Path, said: tuple[str, ...], name: str, inside: str
) -> None:
    assert held(tmp_path, *said) == f"Written to {tmp_path / name}."
    assert inside in (tmp_path / name).read_text()


def test_the_same_picture_twice_is_two_files_alike(tmp_path: Path) -> None:
    held(tmp_path, BOIL, "show me", "show me")
    assert (tmp_path / "boil.svg").read_bytes() == (tmp_path / "boil-2.svg").read_bytes()


def test_without_what_draws_it_is_said_how_to_get_it(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    there = builtins.__import__

    def without(name: str, *rest: object, **more: object) -> object:
        if name.partition(".")[0] == "matplotlib":
            raise ImportError(name)
        return there(name, *rest, **more)  # type: ignore[arg-type]

    monkeypatch.setattr(builtins, "__import__", without)
    text = held(tmp_path, BOIL, "show me")
    assert 'pip install "simmerline[print]"' in text
    assert not list(tmp_path.iterdir())


def test_outside_the_chat_nothing_is_drawn() -> None:
    assert held(None, BOIL, "show me").startswith("I draw only in the chat on your own machine")
