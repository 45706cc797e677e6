"""The rule every wet method opens with: where water boils here."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Figure
from rules.said import Said, fixed, number, pressure, sentences, temp, temp_drop

NOTICEABLE_K = 0.05
say = sentences("heat/where_water_boils")


def boiling_figure(case: Case, boil_c: float) -> Figure:
    """The figure of a boiling point, against sea level's."""
    return celsius("boiling_point", say("label"), boil_c, case.sea.boiling_c)


def boils_alike(case: Case) -> Said:
    """Why the time stays where water boils as at the baseline."""
    return say("boils-alike", baseline=case.baseline)


@rule("water.boiling_point", "iapws-r7-97", "us-std-atm-1976")
def boiling_point(case: Case) -> Part:
    """Where water boils here: the ceiling of every open pot."""
    drop = case.sea.boiling_c - case.here.boiling_c
    return Part(
        figures=(boiling_figure(case, case.here.boiling_c),),
        because=say(
            "because",
            boil=temp(case.here.boiling_c),
            place=case.place,
            drop=temp_drop(abs(drop)),
            way="same" if abs(drop) <= NOTICEABLE_K else "under" if drop > 0 else "over",
            pressure=pressure(case.here.pressure_pa),
        ),
        maths=say(
            "maths",
            elevation=fixed(case.here.elevation_m, 0),
            pressure=number(case.here.pressure_pa, 0),
            boil=fixed(case.here.boiling_c),
        ),
    )
