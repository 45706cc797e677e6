"""How full to fill the pan."""

from __future__ import annotations

from rules.baking import components, pan
from rules.book import Case, Part, rule
from rules.model import Figure
from rules.said import Said, sentences
from rules.topics.bake_adjust.asked import asked, baked, batch, style
from rules.topics.bake_adjust.tins import area_cm2, label
from rules.topics.bake_adjust.unchanged import no_need, stays

say = sentences("topics/bake_adjust/pan")
LEAST_CHANGE = 0.02


@rule("bake_adjust.pan", "egg-producers-cakes")
def pan_rule(case: Case) -> Part | None:
    """How full to fill the pan."""
    told = asked(case) == "pan"
    if asked(case) not in (None, "pan") or components.share(style(case), "fill") is None:
        return stays(case, "pan", "pan") if told else None
    work = batch(case)
    there, here = pan.fill(work, work.from_m), pan.fill(work, work.to_m)
    if abs(there - here) < LEAST_CHANGE:
        return no_need(case, "pan")
    full = "half" if here < there else "two-thirds"
    return Part(
        figures=(Figure("pan_fill", say("label"), round(here, 2), "factor", sea_level=round(pan.USUAL_FILL, 2)),),
        steps=() if told else (say("step", full=full),),
        because=pan.why(work),
        headline=_headline(case, full) if told else "",
    )


def _headline(case: Case, full: str) -> Said:
    """How full; of two tins the larger, where a batter needs the room."""
    tins = sorted(case.request.tins, key=area_cm2)
    if len(tins) > 1 and full == "half":
        return say("larger", tin=label(tins[-1]), baked=baked(case), place=case.place)
    return say("headline", full=full, baked=baked(case), place=case.place)
