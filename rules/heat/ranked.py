"""Several dishes ranked by how much they change here."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from rules.book import Case
from rules.heat.headline import doing
from rules.model import Answer, Figure
from rules.physics.units import round_to
from rules.said import Words, listed, number, sentences, together

say = sentences("heat/ranked")

# less than this share, and nobody would call it a change
NOTICED = 0.03


@dataclass(frozen=True, slots=True)
class Change:
    """A dish with its answer, and by what share of its time it changes."""

    answer: Answer
    share: float


def ranked(answers: Sequence[Answer]) -> Answer | None:
    """One answer that ranks those that have a time here and by the recipe, the most changed first; None for one.

    Its reasons are those of the first, its cautions those of all; what has no time is named and not ranked.
    """
    changes = [Change(answer, share) for answer in answers if (share := changed_by(answer)) is not None]
    if len(changes) < 2:
        return None
    order = sorted(changes, key=lambda change: abs(change.share), reverse=True)
    first = order[0].answer
    timed = [change.answer for change in order]
    others = [Case(answer.request).food for answer in answers if answer not in timed]
    told = say("ranked", place=Case(first.request).place, each=listed(map(_told, order), "semicolons"))
    return replace(
        first,
        headline=together(told, say("unranked", foods=listed(others, "and")) if others else ""),
        figures=(),
        steps=(),
        cautions=tuple(dict.fromkeys(caution for change in order for caution in change.answer.cautions)),
    )


def changed_by(answer: Answer) -> float | None:
    """By what share of its time a dish changes: 0.4 for 40 % longer."""
    here, base = answer.figure("cook_time"), answer.figure("baseline_time")
    return here.value / base.value - 1 if _timed(here) and _timed(base) and here and base else None


def _timed(figure: Figure | None) -> bool:
    return figure is not None and figure.value > 0


def _told(change: Change) -> Words:
    request = change.answer.request
    named = doing(Case(request), request.method) if request.method else Case(request).food
    way = "same" if abs(change.share) < NOTICED else "longer" if change.share > 0 else "shorter"
    return say("by-share", doing=named, way=way, share=number(round_to(100 * abs(change.share), 5)))
