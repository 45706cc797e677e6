"""Eggs in the shell."""

from __future__ import annotations

from rules.book import Case
from rules.explanations.named import Figures, Quantity, Values, always, at_sea, digits, here
from rules.foods.eggs import YOLK_C, slowdown, usual_min
from rules.model import Figure
from rules.physics.ambient import ambient
from rules.physics.units import round_time_min
from rules.said import duration, elevation

ADVISED_M = 1524.0


def yolk_min(yolk: str) -> Quantity:
    """How long an egg from the refrigerator takes until its yolk is soft or hard [min], as the egg's own answer."""
    return lambda air: usual_min(yolk) * slowdown(air.boiling_c, ambient(0.0).boiling_c, YOLK_C[yolk])


soft_min, hard_min = yolk_min("soft"), yolk_min("hard")


def soft_egg(case: Case) -> Figure:
    """A soft-boiled egg."""
    return _egg("soft_egg", soft_min, case)


def hard_egg(case: Case) -> Figure:
    """A hard-boiled egg."""
    return _egg("hard_egg", hard_min, case)


def _egg(figure_id: str, time: Quantity, case: Case) -> Figure:
    return Figure(figure_id, "", round_time_min(time(case.here)), "min", sea_level=round_time_min(time(case.sea)))


VALUES: Values = {
    "soft_egg": here(duration, soft_min),
    "soft_egg_at_sea": at_sea(duration, soft_min),
    "soft_egg_minutes": here(digits(1), soft_min),
    "hard_egg": here(duration, hard_min),
    "hard_egg_at_sea": at_sea(duration, hard_min),
    "hard_egg_minutes": here(digits(1), hard_min),
    "eggs_advised": always(elevation(ADVISED_M)),
}
FIGURES: Figures = {"soft_egg": soft_egg, "hard_egg": hard_egg}
