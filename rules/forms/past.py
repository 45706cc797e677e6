"""How far a sweet was boiled past its stage: the reading that it was taken to, less what the boil has fallen."""

from __future__ import annotations

from rules.book import Part, rule
from rules.forms import Asked
from rules.heat.verdict import opened
from rules.said import sentences, temp, temp_drop

say = sentences("forms/past")

# classes of what is boiled to a figure that falls with the boil, and those figures [degC]
BOILED_TO_A_FIGURE, SPAN_C = ("candy", "jam", "syrup"), (101.0, 156.0)
NOTICED_K = 0.5


@rule("past.stage", "csu-candy-high-elevation", "iapws-r7-97")
def stage(asked: Asked) -> Part | None:
    """By how much the reading that it was cooked to was too high here."""
    case, said_c = asked.case, asked.request.temperature_c
    if case.dish_class not in BOILED_TO_A_FIGURE or said_c is None or not SPAN_C[0] <= said_c <= SPAN_C[1]:
        return None
    if asked.request.elevation_m is None:
        return None
    drop_k = case.sea.boiling_c - case.here.boiling_c
    if drop_k < NOTICED_K:
        return Part(headline=say("not-past", said=temp(said_c), place=case.place))
    over = say(
        "past", said=temp(said_c), by=temp_drop(drop_k), to=temp(said_c - drop_k), place=case.place,
        boil=temp(case.here.boiling_c),
    )  # fmt: skip
    return Part(headline=opened("yes", over) if "is_ok" in asked.request.forms else over)


RULES = (stage,)
