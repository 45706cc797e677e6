"""Reduce: boiling water away from an open pan. The burner sets the pace, and the volume is the measure."""

from __future__ import annotations

from rules.book import Case, Part, rule
from rules.heat.burner import boil_off_ml_min_kw, boiled_down
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure
from rules.physics import water
from rules.said import number, sentences, temp

say = sentences("methods/reduce")


@rule("reduce.pan", "common-practice")
def pan(case: Case) -> Part:
    """The pan and the mark to stop at."""
    return Part(steps=(say("widest-pan"), say("by-volume")))


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
        figures=(Figure("boil_off_rate", say("rate-label"), round(here, 1), "ml", sea_level=round(sea, 1)),),
        because=say("rate", boil=temp(case.here.boiling_c)),
        maths=say("rate-maths", boil=number(case.here.boiling_c, 1), latent=number(latent, 0), rate=number(here, 1)),
    )


@rule("reduce.scorch", "common-practice")
def scorch(case: Case) -> Part:
    """A reduction burns at the end."""
    return Part(cautions=(Caution("note", say("scorch"), ("common-practice",)),))


NEEDS = ("elevation",)
RULES = (boiling_point, pan, time, rate, scorch)
