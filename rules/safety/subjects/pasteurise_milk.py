"""Pasteurising milk: temperatures held for their time, which do not move; only the hottest rows fall out of reach."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Caution, Figure
from rules.physics.units import to_c
from rules.safety.holding_limits import placed
from rules.safety.local_code import local_code
from rules.said import exact_duration, listed, sentences, temp, temp_drop, together
from rules.tables import read_csv

TABLE = "tables/milk_pasteurising_fda-21-cfr-131-3.csv"
RICHER_K = 5 / 1.8
say = sentences("safety/subjects/pasteurise_milk")


@rule("safety.pasteurise_milk", "fda-21-cfr-131-3")
def pasteurise(case: Case) -> Part:
    """The two ways a kitchen can use, and what an open pan reaches here."""
    rows = [(to_c(float(row["temp_f"])), float(row["time_s"])) for row in read_csv(TABLE).rows]
    (vat_c, vat_s), (flash_c, flash_s) = rows[:2]
    lost = [temp(temp_c) for temp_c, _ in rows if temp_c > case.here.boiling_c]
    reach = say("out-of-reach", place=case.place, lost=listed(lost)) if lost and placed(case.request) else None
    vat_min, flash_min = vat_s / 60, flash_s / 60
    return Part(
        headline=say(
            "headline",
            vat=temp(vat_c),
            vat_time=exact_duration(vat_min),
            flash=temp(flash_c),
            flash_time=exact_duration(flash_min),
        ),
        figures=(
            celsius("vat_temperature", say("slow-label"), vat_c, vat_c),
            Figure("vat_time", say("time-label"), vat_min, "min"),
            celsius("flash_temperature", say("quick-label"), flash_c, flash_c),
            Figure("flash_time", say("time-label"), flash_min, "min"),
        ),
        steps=(say("heat"), say("richer", more=temp_drop(RICHER_K))),
        because=together(say("because"), reach),
        cautions=(Caution("warn", say("raw-milk"), ("fda-21-cfr-131-3",)),),
    )


NEEDS: tuple[str, ...] = ()
RULES = (pasteurise, local_code)
