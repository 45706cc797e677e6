"""How the pressure of a cooker is let go: by itself, or at once; the same at every elevation."""

from __future__ import annotations

from functools import cache

from rules.book import Part, rule
from rules.forms import Asked
from rules.said import Said, duration_span, sentences, together
from rules.tables import read_csv

TABLE = "tables/release_common-practice.csv"
say = sentences("forms/release")


@cache
def ways() -> dict[str, tuple[str, float, float]]:
    """How each class of dish is released, and how long it stands before [min].

    source: common-practice

    >>> ways()["egg"][0], ways()["dried_bean"]
    ('quick', ('foams', 10.0, 20.0))
    """
    return {
        row["dish_class"]: (row["way"], float(row["low_min"]), float(row["high_min"])) for row in read_csv(TABLE).rows
    }


@rule("release.way", "common-practice")
def way(asked: Asked) -> Part | None:
    """Natural or quick release, with the time that the room has worked out."""
    request = asked.request
    if request.method != "pressure_cook" and request.topic != "pressure":
        return None
    how = _how(asked)
    timed = asked.answer.headline if asked.time or asked.answer.figure("whistles") else None
    first_time = request.time_min is not None or "how_long" in request.forms or "how_much" in request.forms
    return Part(headline=together(timed, how) if first_time else together(how, timed))


def _how(asked: Asked) -> Said:
    kind, low, high = ways().get(asked.case.dish_class if asked.request.dish_class else "", ("any", 0.0, 0.0))
    return say("how", way=kind, food=asked.case.food, time=duration_span(low, high))


RULES = (way,)
