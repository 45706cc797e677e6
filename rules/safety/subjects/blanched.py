"""Blanching for the plate: a short boil that sets the colour, or that lifts a skin."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.model import Caution, Figure
from rules.physics import kinetics
from rules.physics.units import round_time_min, round_to
from rules.preserving.freeze_dry import printed_min
from rules.said import duration_span, sentences, temp

# what is dropped in to be peeled, and how long until the skin lifts [min]
SKINNED, SKIN_MIN = (
    ("tomatoes", "cherry tomatoes", "peaches", "nectarines", "apricots", "plums", "fava beans"),
    (0.5, 1.0),
)
# a vegetable without a printed time [min]
USUAL_MIN = (2.0, 3.0)
# the skin lifts by the first heat, so the cooler boil takes little more
SKIN_PACE = 1.25
say = sentences("safety/subjects/blanched")


@rule("safety.blanched", "nchfp", "common-practice")
def blanched(case: Case) -> Part:
    """How long, from when it boils again, and what shows that it is enough."""
    skin = case.request.dish in SKINNED
    low, high = SKIN_MIN if skin else (printed_min(case.request.dish or "") or USUAL_MIN)
    ratio = kinetics.rate_factor(case.here.boiling_c, case.sea.boiling_c, kinetics.softening(case.dish_class).z_k)
    pace = min(ratio, SKIN_PACE) if skin else max(ratio, 1.0)
    least, most = [round_to(end * pace, 0.25) if skin else round_time_min(end * pace) for end in (low, high)]
    here, sea = duration_span(least, most), duration_span(low, high)
    return Part(
        headline=say("skin", food=case.food, here=here, sea=sea, place=case.place)
        if skin
        else say("headline", food=case.food, here=here, sea=sea, place=case.place),
        figures=(Figure("blanching_time", say("label"), (least + most) / 2, "min", least, most, (low + high) / 2),),
        steps=(say("water"), say("ice")),
        cautions=(Caution("note", say("hot-water"), ("common-practice",)),),
        because=say("because", boil=temp(case.here.boiling_c)),
    )


NEEDS = ("elevation",)
RULES = (blanched,)
