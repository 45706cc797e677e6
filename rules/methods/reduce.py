"""Reduce: boiling water away from an open pan. The burner sets the pace, and the volume is the measure."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.burner import boil_off_ml_min_kw, boiled_down
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure
from rules.physics import water
from rules.say import number


@rule("reduce.pan", "common-practice")
def pan(case: Case) -> Part:
    """The pan and the mark to stop at."""
    return Part(
        steps=(
            "Use the widest pan you have, uncovered, over the strongest heat the liquid stands.",
            "Go by volume, not by the clock: stand a spoon handle in the pan, mark the level, and stop at the mark "
            "you want.",
        ),
    )


@rule("reduce.time", "crc-handbook", "nfpa-54")
def time(case: Case) -> Part | None:
    """How long it takes: as at the baseline on an electric burner, longer on gas, which has less air to burn."""
    return boiled_down(case, "reduce")


@rule("reduce.rate", "crc-handbook")
def rate(case: Case) -> Part:
    """How fast a kilowatt boils water off here."""
    here, sea = boil_off_ml_min_kw(case.here), boil_off_ml_min_kw(case.sea)
    latent = water.latent_heat_kj_per_kg(case.here.boiling_c)
    return Part(
        figures=(
            Figure("boil_off_rate", "Boiled off each minute by 1 kW", round(here, 1), "ml", sea_level=round(sea, 1)),
        ),
        because=f"The liquid is {case.say.temp(case.here.boiling_c)} while it reduces. It starts to boil sooner and "
        "browns less, but what is left when half is gone is the same half: concentration does not know the elevation.",
        maths=f"L({number(case.here.boiling_c, 1)} °C) = {number(latent, 0)} kJ/kg; 60/L = {number(here, 1)} ml/min "
        "for 1 kW.",
    )


@rule("reduce.scorch", "common-practice")
def scorch(case: Case) -> Part:
    """A reduction burns at the end."""
    text = "Turn the heat down for the last third and stir: a thick reduction scorches long before it looks dry."
    return Part(cautions=(Caution("note", text, ("common-practice",)),))


NEEDS = ("elevation",)
RULES = (boiling_point, pan, time, rate, scorch)
