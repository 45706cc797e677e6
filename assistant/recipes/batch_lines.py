"""A batch of the log in one line, and what the log says to do next, line by line."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from assistant.recipes.batches import in_words, titles
from assistant.replies.sentences import worded
from rules.said import elevation, listed, sentences

if TYPE_CHECKING:
    from assistant.recipes.batch import Batch
    from rules.mending import Mending
    from rules.model import Units
    from rules.recipe import Recipe
    from rules.said import Listed, Said, Value

say = sentences("cli/batch")
RUNNERS_UP = 2


def class_of(words: str, recipe: Recipe | None, earlier: tuple[Batch, ...]) -> str | None:
    """What is baked: by its ratios, else by its name, else as it was noted before."""
    if recipe is not None:
        from rules.baking.style import recognise
        from rules.mending.failed_dish import CLASSES

        style = recognise(recipe).id
        return CLASSES.get(style, style)
    from assistant.understanding.awaited import in_reply

    named = in_reply("dish", words).dish_class
    if named and named != "general":
        return named
    return next((b.style for b in reversed(earlier) if b.style), None)


def line(batch: Batch, units: Units) -> str:
    """A batch in one line: what it is, where it was made, and a sentence for each of the rest."""
    what = say("batch", batch=str(batch.id), recipe=batch.recipe, day=batch.made_on.isoformat())
    parts: list[Value] = [what, *_places(batch)]
    wrong = titles(batch)
    if batch.changes:
        parts.append(say("changed", changes=changes_of(batch, units)))
    parts.append(listed(wrong, "semicolons") if wrong else say("nothing-wrong"))
    if batch.rating is not None:
        parts.append(say("rated", rating=batch.rating))
    if note := batch.note.rstrip("."):
        parts.append(note)
    head, rest = say("closed", text=listed(parts[:2], "commas")), [say("sentence", text=part) for part in parts[2:]]
    return worded(listed([head, *rest], "sentences"), units)


def _places(batch: Batch) -> Iterator[Said]:
    """Where it was made, and where its recipe is right, as far as known."""
    if batch.elevation_m is not None:
        yield say("at", elevation=elevation(batch.elevation_m))
    if batch.from_elevation_m is not None:
        yield say("recipe-for", elevation=elevation(batch.from_elevation_m))


def changes_of(batch: Batch, units: Units) -> Listed:
    """What was changed for a batch."""
    return listed([in_words(change, units) for change in batch.changes], "semicolons")


def next_lines(found: Mending | None, batch: Batch, units: Units) -> Iterator[str]:
    """The one change to make next, why, what comes after it, and what to take care of."""
    return (worded(words, units) for words in _next(found, batch))


def _next(found: Mending | None, batch: Batch) -> Iterator[Value]:
    from rules.mending.safety import cautions

    if found is None or found.next is None:
        yield say("keep-it")
        return
    if found.note:
        yield found.note
    yield say("next", change=found.next.line)
    if found.next.cause.because:
        yield say("why", because=found.next.change.because)
    for row in found.causes[1 : 1 + RUNNERS_UP]:
        yield say("after-that", change=row.line)
    for caution in cautions(found):
        yield say("caution", level=caution.level, caution=caution.text)
    if batch.elevation_m is None:
        yield say("no-elevation")
