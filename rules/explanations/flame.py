"""Gas flames, and the hot air of ovens."""

from __future__ import annotations

from rules.explanations.named import Figures, Values, always, figure, grouped, here
from rules.heat.burner import DERATE_ABOVE_FT, DERATE_PER_1000_FT, gas_share
from rules.physics.ambient import Ambient
from rules.physics.units import M_PER_FT
from rules.said import elevation, number


def kept_percent(ambient: Ambient) -> float:
    """What a gas burner that is fitted for the place keeps of its heat [%]."""
    return gas_share(ambient.elevation_m) * 100


VALUES: Values = {
    "gas_kept": here(grouped, kept_percent),
    "gas_step": always(number(DERATE_PER_1000_FT * 100)),
    "gas_loss_starts": always(elevation(DERATE_ABOVE_FT * M_PER_FT)),
}
FIGURES: Figures = {"gas_kept": figure("gas_heat", "percent", kept_percent, 0)}
