"""What a conversation holds on to from one utterance to the next."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

from assistant.dialogue.tonight import Tonight
from assistant.dialogue.whereabouts import Whereabouts
from assistant.dialogue.workbench import RecipeTalk, Run
from assistant.drill import Sitting
from assistant.understanding.scene import Scene
from rules.model import PLACE_SLOTS, Kitchen, Request
from rules.said import Measure, elevation


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """A question that was put, as it was remembered and answered.

    request: as said, with the place where it was asked; kitchen: that was known after it
    danger: the hazard that it was refused for; subject: what of safety its answer was about, where that decided it
    """

    request: Request
    kitchen: Kitchen = Kitchen()
    danger: str | None = None
    subject: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Memory:
    """The state of one conversation.

    request: the question so far, as it was said; nothing in it is taken from the kitchen
    before: the question before a why, a timer or a word about the kitchen, to go back to; None after any other
    recipe: the last question that came with a recipe, to come back to after other questions
    menu: the plan of the service that is talked of, of one dish or of several
    tonight: for how many and when it is served, as it was said last
    earlier: the last question about each dish that was talked of, the latest last
    asked: the piece that was asked for last, a word of rules.model.MISSING_WORDS; None where nothing is awaited
    kitchen: what is taken for granted, from the store or said in this conversation
    places: the places that were spoken of, the one that is talked of last
    drill: the set of questions under way, or the last one
    talk: the recipe that is told or worked on line by line
    run: the batches of a recipe that are talked of
    scene: foods, acts, people and circumstances that bear on safety, and what was warned of last
    past: the questions of the conversation, the first and the latest few, oldest first
    missed: how many utterances in a row were not followed
    """

    request: Request | None = None
    before: Request | None = None
    recipe: Request | None = None
    menu: Request | None = None
    tonight: Tonight = Tonight()
    earlier: tuple[Request, ...] = ()
    asked: str | None = None
    kitchen: Kitchen = Kitchen()
    places: tuple[Whereabouts, ...] = ()
    drill: Sitting | None = None
    talk: RecipeTalk | None = None
    run: Run | None = None
    scene: Scene = Scene()
    past: tuple[Step, ...] = ()
    missed: int = 0


def without_place(memory: Memory) -> Memory:
    """The memory of somebody who never said where they cook or with what."""
    return replace(
        memory,
        request=_placeless(memory.request),
        before=_placeless(memory.before),
        recipe=_placeless(memory.recipe),
        menu=_placeless(memory.menu),
        earlier=tuple(filter(None, map(_placeless, memory.earlier))),
        kitchen=Kitchen(units=memory.kitchen.units),
        past=(),
        places=(),
    )


def _placeless(request: Request | None) -> Request | None:
    if request is None:
        return None
    unused = tuple(u for u in request.unused if u.kind != "elevation")
    nowhere: dict[str, Any] = {
        "elevation_m": None,
        "elevation_from": None,
        "elevations_m": (),
        "place": "",
        "pressure_pa": None,
    }
    return replace(request, equipment=(), unused=unused, **nowhere)


def moved(question: Request, last: Request) -> Request:
    """An earlier question where the last one was asked, in its units and at its depth."""
    place = {slot: getattr(last, slot) for slot in (*PLACE_SLOTS, "units", "depth")}
    return replace(question, **place)


def learn_kitchen(kitchen: Kitchen, said: Request) -> Kitchen:
    """The kitchen after what was said of it: a new elevation makes it another one, equipment is added to."""
    equipment = tuple(dict.fromkeys((*kitchen.equipment, *said.equipment)))
    kitchen = replace(kitchen, units=said.units, equipment=equipment)
    if said.elevation_m is None and said.pressure_pa is None:
        return kitchen
    if said.elevation_m == kitchen.elevation_m and said.pressure_pa is None:
        return kitchen
    return replace(kitchen, name="", elevation_m=said.elevation_m, pressure_pa=said.pressure_pa)


def place_of(memory: Memory) -> Measure | None:
    """The elevation of the kitchen, where it is known."""
    elevation_m = memory.kitchen.elevation_m
    return None if elevation_m is None else elevation(elevation_m)
