"""A question that wants yes or no: about the cook's own figure, or which way something goes."""

from __future__ import annotations

from rules.book import Part, rule
from rules.forms import Asked, changes, enough
from rules.forms.changes import out_of_reach
from rules.heat.headline import about, doing
from rules.heat.verdict import opened
from rules.said import duration, sentences

say = sentences("forms/is_ok")

# less than this share, and nobody would change the clock
NOTICED = 0.03


@rule("is_ok.stated_time", "common-practice", "computed")
def stated_time(asked: Asked) -> Part | None:
    """Whether a time that somebody states is right here: the one of a recipe is, where nothing changes it."""
    request = asked.request
    if request.time_min is None or request.asked_way is not None or request.topic != "time" or asked.time is None:
        return None
    if request.elevation_m is None or out_of_reach(asked) or enough.times.judged_min(asked) is not None:
        return None
    here, base = asked.time
    same = abs(here.value / base.value - 1) < NOTICED
    told = say(
        "stated-time",
        fits="same" if same else "moved",
        said=duration(request.time_min),
        here=about(here),
        doing=doing(asked.case, request.method) if request.method else asked.case.food,
        place=asked.case.place,
        baseline=asked.case.baseline,
    )
    return Part(headline=opened("yes" if same else "no", told))


@rule("is_ok.changes", "common-practice")
def which_way(asked: Asked) -> Part | None:
    """Whether it goes the way that was asked: longer, hotter, the same."""
    return next((part for item in changes.RULES if (part := item(asked)) is not None), None)


RULES = (*enough.RULES, stated_time, which_way)
