"""A batch told of in words, put into the log beside those of its recipe."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from assistant.recipes.batch_lines import class_of
from assistant.recipes.batches import mending
from assistant.recipes.changes_heard import change_heard, symptom_heard
from assistant.store import batches
from assistant.store.batches import Batch
from assistant.store.database import Store
from assistant.store.owners import HOUSE
from rules.mending import Mending
from rules.model import Kitchen
from rules.recipe import Recipe


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """What is told of a batch.

    symptoms, changed: in the cook's words; compared: better, worse or same than the one before, or ""
    dish: what it is, where the title does not tell; from_elevation_m: where the recipe is right, None as noted before
    recipe: the recipe itself, where it is at hand
    """

    title: str
    symptoms: Sequence[str] = ()
    changed: Sequence[str] = ()
    rating: int | None = None
    compared: str = ""
    note: str = ""
    dish: str = ""
    from_elevation_m: float | None = None
    recipe: Recipe | None = None


def note(store: Store, told: Told, kitchen: Kitchen, today: date, owner: str = HOUSE) -> tuple[Batch, Mending | None]:
    """Keep a batch; it with its number, and what the log says to do next.

    raises: UnknownSymptom for a fault that is not known, ValueError for what no batch can have, StoreError
    """
    earlier = batches.of_recipe(store, told.title, owner)
    kind = class_of(told.dish or told.title, told.recipe, earlier)
    before = mending(earlier, recipe=told.recipe, units=kitchen.units)
    suggested = before.causes if before else ()
    from_m = earlier[-1].from_elevation_m if earlier and told.from_elevation_m is None else told.from_elevation_m
    batch = Batch(
        recipe=" ".join(told.title.split()), made_on=today, style=kind or "", kitchen=kitchen.name,
        elevation_m=kitchen.elevation_m, from_elevation_m=from_m, rating=told.rating, note=told.note,
        symptoms=tuple(dict.fromkeys(symptom_heard(words, kind) for words in told.symptoms)),
        changes=tuple(change_heard(words, suggested, kitchen.units) for words in told.changed),
        compared=told.compared, formula=earlier[0].formula if earlier else "",
    )  # fmt: skip
    kept = batches.add(store, batch, owner)
    return kept, mending((*earlier, kept), recipe=told.recipe, units=kitchen.units)
