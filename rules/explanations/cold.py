"""Freezing, and other temperatures that air pressure leaves alone: tempered chocolate, a rice cooker's switch."""

from __future__ import annotations

from rules.book import celsius
from rules.explanations.named import Figures, Values, always, digits, here
from rules.physics.air import SEA_LEVEL_PA
from rules.physics.ambient import Ambient
from rules.said import temp

# how far the freezing point of water climbs when a whole atmosphere is taken off [K]
FREEZING_K = 0.0075
TEMPERED_C = 31.5
DRY_POT_C = 103.0


def freezing_moves_k(ambient: Ambient) -> float:
    """How far water freezes from where it does at sea level [K]; source: from-memory."""
    return FREEZING_K * abs(1 - ambient.pressure_pa / SEA_LEVEL_PA)


VALUES: Values = {
    "freezing_moves": here(digits(4), freezing_moves_k),
    "tempered": always(temp(TEMPERED_C)),
    "dry_pot": always(temp(DRY_POT_C)),
}
FIGURES: Figures = {
    "freezing_point": lambda case: celsius("freezing_point", "", 0.0, 0.0),
    "tempered": lambda case: celsius("tempered", "", TEMPERED_C, TEMPERED_C),
    "dry_pot": lambda case: celsius("dry_pot", "", DRY_POT_C, DRY_POT_C),
}
