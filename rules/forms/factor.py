"""By what to multiply a time that the cook knows."""

from __future__ import annotations

from rules.book import Part, rule
from rules.forms import Asked
from rules.heat.headline import doing
from rules.model import Figure
from rules.said import number, sentences

say = sentences("forms/factor")


@rule("factor.time", "common-practice", "computed")
def multiplier(asked: Asked) -> Part | None:
    """The factor from the time at the baseline to the time here, with its range."""
    factor = of_time(asked)
    if factor is None:
        return None
    likely, low, high = (number(f or factor.value, 1) for f in (factor.value, factor.low, factor.high))
    return Part(
        figures=(factor,),
        headline=say(
            "multiply",
            way="same" if likely == number(1, 1) else "moved",
            factor=likely,
            low=low,
            high=high,
            ranged="no" if low == high else "yes",
            doing=doing(asked.case, asked.request.method) if asked.request.method else asked.case.food,
            place=asked.case.place,
            baseline=asked.case.baseline,
        ),
    )


def of_time(asked: Asked) -> Figure | None:
    """The factor of the time, by the figures of the answer."""
    known = asked.answer.figure("time_factor")
    if known or asked.time is None:
        return known
    here, base = asked.time
    ends = (here.low or here.value) / (base.low or base.value), (here.high or here.value) / (base.high or base.value)
    likely = here.value / base.value
    low, high = min(*ends, likely), max(*ends, likely)
    return Figure("time_factor", say("label"), round(likely, 2), "factor", round(low, 2), round(high, 2))


RULES = (multiplier,)
