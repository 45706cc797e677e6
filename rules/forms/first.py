"""Which of several dishes goes on first: the one that takes longest here, and by how much before the others."""

from __future__ import annotations

from rules.book import Part, rule
from rules.forms import Asked
from rules.forms.which import alike, ranked, rival_of
from rules.heat.headline import middle
from rules.said import duration, listed, sentences

say = sentences("forms/first")


@rule("first.dish", "common-practice", "computed")
def slowest(asked: Asked) -> Part | None:
    """The dishes by their times here, the slowest first, so that all are done together."""
    request = asked.request
    if not request.dish or not request.dishes_too:
        return None
    rivals = [rival for dish in (request.dish, *request.dishes_too) if (rival := rival_of(asked, dish))]
    if len(rivals) < 2:
        return None
    first, *rest = ranked(rivals, slow_first=True)
    if all(alike(first, other) for other in rest):
        each = listed([one.named for one in rivals], "and")
        return Part(headline=say("together", each=each, time=middle(first.time), place=asked.case.place))
    later = [
        say("later", doing=one.named, time=duration(one.time.value), gap=duration(first.time.value - one.time.value))
        for one in rest
    ]
    return Part(
        headline=say(
            "first", first=first.named, time=middle(first.time), later=listed(later, "and"), place=asked.case.place
        )
    )


RULES = (slowest,)
