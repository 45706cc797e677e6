"""The batches of a conversation put into the log of the store, where `simmerline batch` reads them."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from assistant.dialogue.deeds import GONE, LogRun
from assistant.dialogue.workbench import Baked, Run
from assistant.recipes.batch import Batch
from assistant.store import batches
from assistant.store.database import Store
from assistant.store.owners import HOUSE


def log_run(store: Store, deed: LogRun, today: date, owner: str = HOUSE) -> Run:
    """Keep every batch of a run: new ones are added, those that are there are put right, one taken back is removed.

    owner: whose log it is; returns: the run with the numbers that its batches have in the log
    raises: StoreError
    """
    done = tuple(filter(None, (_logged(store, deed, batch, today, owner) for batch in deed.run.batches)))
    return replace(deed.run, batches=done)


def _logged(store: Store, deed: LogRun, baked: Baked, today: date, owner: str) -> Baked | None:
    if baked.note == GONE:
        if baked.id:
            batches.remove(store, baked.id, owner)
        return None
    known = batches.by_id(store, baked.id, owner) if baked.id else None
    batch = _batch(deed, baked, known.made_on if known else today)
    if known:
        if known != batch:
            batches.amend(store, batch, owner)
        return baked
    return replace(baked, id=batches.add(store, batch, owner).id)


def _batch(deed: LogRun, baked: Baked, made_on: date) -> Batch:
    return Batch(
        recipe=deed.run.title, made_on=made_on, style=baked.style, kitchen=deed.kitchen,
        elevation_m=baked.elevation_m, from_elevation_m=baked.from_elevation_m, symptoms=baked.symptoms,
        changes=baked.changes, rating=baked.rating, note=baked.note, compared=baked.compared, formula=baked.formula,
        id=baked.id,
    )  # fmt: skip
