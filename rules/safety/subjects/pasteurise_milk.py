"""Pasteurising milk: temperatures held for their time, which do not move; only the hottest rows fall out of reach."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Caution, Figure
from rules.physics.units import to_c
from rules.safety.holding_limits import placed
from rules.safety.local_code import local_code
from rules.tables import read_csv

TABLE = "tables/milk_pasteurising_fda-21-cfr-131-3.csv"
RICHER_K = 5 / 1.8


@rule("safety.pasteurise_milk", "fda-21-cfr-131-3")
def pasteurise(case: Case) -> Part:
    """The two ways a kitchen can use, and what an open pan reaches here."""
    rows = [(to_c(float(row["temp_f"])), float(row["time_s"])) for row in read_csv(TABLE).rows]
    (vat_c, vat_s), (flash_c, flash_s) = rows[:2]
    lost = [case.say.temp(temp_c) for temp_c, _ in rows if temp_c > case.here.boiling_c]
    reach = (
        f" Of the printed rows an open pan at {case.place} cannot reach {' and '.join(lost)}; you do not need them."
        if lost and placed(case.request)
        else ""
    )
    return Part(
        headline=f"Pasteurise milk at {case.say.temp(vat_c)} for {vat_s / 60:.0f} min or {case.say.temp(flash_c)} for "
        f"{flash_s:.0f} s, the same at every elevation.",
        figures=(
            celsius("vat_temperature", "Slow: hold at", vat_c, vat_c),
            Figure("vat_time", "For", vat_s / 60, "min"),
            celsius("flash_temperature", "Quick: hold at", flash_c, flash_c),
            Figure("flash_time", "For", flash_s / 60, "min"),
        ),
        steps=(
            "Heat it in a double boiler, stirring, with a checked thermometer; keep the air over it hot too, under a "
            "lid.",
            f"Cream, or milk with sugar: {case.say.temp_drop(RICHER_K)} hotter. Then cool it fast in ice and "
            "refrigerate.",
        ),
        because="Germs in milk die by temperature and time, not by boiling as such, so the targets stay where they "
        f"are though the boil moves.{reach}",
        cautions=(
            Caution(
                "warn",
                "Raw milk can carry dangerous germs, worst for children, the pregnant and the old. Milk to be sold is "
                "pasteurised in approved equipment by licensed people.",
                ("fda-21-cfr-131-3",),
            ),
        ),
    )


NEEDS: tuple[str, ...] = ()
RULES = (pasteurise, local_code)
