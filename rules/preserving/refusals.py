"""What is refused: ways of canning that have made people ill, and foods, canners, jars and times that nobody tested."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.model import Caution
from rules.preserving.gate import refusal
from rules.preserving.vessel import CALLED, called, food_of, vessel
from rules.preserving.wording import refusals


@rule("preserve.refused", "usda-aib-539", "nchfp")
def refused(case: Case) -> Part | None:
    """What is refused, what to do instead, why, and whom to ask; no figure."""
    reason = refusal(case.request)
    if reason is None:
        return None
    words, food = refusals()[reason], food_of(case.request)
    named = {"food": called(case.request), "canner": CALLED[vessel(case.request)], "place": case.place}
    no, instead = words.no.format(**named), food.instead or words.instead
    stop = words.stop.format(**named) or no.removeprefix("No. ")
    sources = tuple(dict.fromkeys((*words.sources, *food.sources)))
    return Part(
        headline=no,
        steps=(f"{instead[:1].upper()}{instead[1:].rstrip('.')}.", words.ask),
        because=words.why,
        cautions=(Caution("stop", stop, sources),),
        sources=sources,
    )
