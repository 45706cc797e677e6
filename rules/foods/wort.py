"""Beer wort: bitterness forms more slowly at a lower boil, so it takes more hops or more time."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.foods import dishes
from rules.heat.cook_times import stated_span, time_figures
from rules.model import Figure
from rules.physics import kinetics
from rules.physics.units import round_time_min
from rules.said import number, sentences, temp

ISOMERISATION_KJ_PER_MOL = 98.6
say = sentences("foods/wort")


def bitterness_share(here_c: float, there_c: float) -> float:
    """Bitterness that forms in a minute at here_c as a share of there_c [degC], while plenty of hop acid is left.

    source: malowicki-2005-hops

    >>> round(bitterness_share(94.4, 100.0), 2)
    0.62
    """
    z_k = kinetics.z_from_activation(ISOMERISATION_KJ_PER_MOL, (here_c + there_c) / 2)
    return 1 / kinetics.rate_factor(here_c, there_c, z_k)


@rule("wort.hops", "malowicki-2005-hops", "palmer-2017-altitude-hops")
def hops(case: Case) -> Part | None:
    """What becomes of the hops."""
    if case.dish_class != "wort":
        return None
    share = bitterness_share(case.here.boiling_c, case.there.boiling_c)
    rate = Figure("bitterness_rate", say("rate-label", baseline=case.baseline), round(share, 2), "factor")
    figures = (*_times(case, share), rate)
    less = number(abs(1 - share) * 100, 0)
    if not case.moved:
        return Part(figures=figures, because=say("same"))
    if share >= 1:
        return Part(figures=figures, because=say("hotter", more=less))
    more = number((1 / share - 1) * 100, 0)
    asked = case.request.topic == "time"
    return Part(
        figures=figures,
        headline=say("headline", food=case.food, place=case.place, more=more) if asked else "",
        steps=(say("more-hops", more=more), say("by-volume")),
        because=say("cooler", less=less, boil=temp(case.here.boiling_c)),
    )


def _times(case: Case, share: float) -> tuple[Figure, ...]:
    """The boil, as long as the recipe has it, and how long the hops would need for the same bitterness."""
    span = stated_span(case)
    if span is None:
        row = dishes.sea_level_time(case.request.dish, case.dish_class, "boil")
        span = (row.low_min, row.high_min) if row else None
    if span is None:
        return ()
    low, high = span
    mid = (low + high) / 2
    hops_need = (round_time_min(t / share) for t in (mid, low, high))
    return (
        *time_figures(case, span, (low, mid, high)),
        Figure("bittering_time", say("hops-label"), next(hops_need), "min", *hops_need),
    )
