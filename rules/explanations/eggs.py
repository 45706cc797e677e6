"""Eggs in the shell."""

from __future__ import annotations

from rules.book import Case
from rules.explanations.named import Figures, Quantity, Values, always, at_sea, digits, here
from rules.model import Figure
from rules.physics.conduction import egg_time_min
from rules.physics.units import round_time_min
from rules.said import duration, elevation

EGG_G, FRIDGE_C, SOFT_C, HARD_C = 57.0, 4.0, 63.0, 77.0
ADVISED_M = 1524.0


def yolk_min(yolk_c: float) -> Quantity:
    """How long a large egg from the refrigerator takes until its yolk has come to a temperature [degC], in minutes."""
    return lambda ambient: egg_time_min(EGG_G, FRIDGE_C, ambient.boiling_c, yolk_c)


soft_min, hard_min = yolk_min(SOFT_C), yolk_min(HARD_C)


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
