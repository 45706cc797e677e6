"""What is refused: ways of canning that have made people ill, and foods, canners, jars and times that nobody tested."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.model import Caution
from rules.preserving.catalogue import refusals
from rules.preserving.gate import STEAM_LIMIT_MIN, refusal
from rules.preserving.tested_way import open_after, tested_way
from rules.preserving.vessel import called, food_of, vessel
from rules.said import exact_duration, sentences

say = sentences("preserving/refusals")


@rule("preserve.refused", "usda-aib-539", "nchfp")
def refused(case: Case) -> Part | None:
    """What is refused, what to do instead, why, and whom to ask; no figure."""
    reason = refusal(case.request)
    if reason is None:
        return None
    of, food = refusals()[reason], food_of(case.request)
    named = {"food": called(case.request), "canner": say("canner", vessel=vessel(case.request)), "place": case.place}
    steps = (food.instead,) if food.instead else tuple(of.reply.said(piece) for piece in of.reply.instead_pieces)
    way = tested_way(case) if reason in open_after("refusals") else None
    sources = tuple(dict.fromkeys((*of.reply.sources, *food.sources)))
    return Part(
        headline=of.reply.said("verdict", **named),
        steps=(*steps, *((way,) if way else ()), *of.whom()),
        because=of.reply.said("why", limit=exact_duration(STEAM_LIMIT_MIN)),
        cautions=(Caution("stop", of.reply.said(of.stop, **named), sources),),
        sources=sources,
    )
