"""The gel point of jam and jelly: so far above the boil of water, wherever that is."""

from __future__ import annotations

from rules.book import Case, Part, celsius, rule
from rules.model import Figure
from rules.physics.units import FT_PER_M, to_c
from rules.preserving.vessel import food_of
from rules.say import number
from rules.tables import read_csv

TABLE = "tables/gel_point_usda-aib-539.csv"
RISE_K = 8 / 1.8
# a syrup of 65 Brix, which is where a pectin gel forms, boils so far above water (Cruess and McNair)
LABORATORY_RISE_K = 3.9
TABLE_STEP_FT = 1000


def printed_f(elevation_ft: float) -> tuple[int, float] | None:
    """The row of the printed table nearest to an elevation [ft] and its temperature [degF]; None beyond the table.

    source: usda-aib-539, guide 7

    >>> printed_f(5280), printed_f(9000)
    ((5000, 211.0), None)
    """
    rows = {int(row["elevation_ft"]): float(row["temp_f"]) for row in read_csv(TABLE).rows}
    nearest = min(rows, key=lambda ft: abs(ft - elevation_ft))
    return (nearest, rows[nearest]) if abs(nearest - elevation_ft) <= TABLE_STEP_FT / 2 else None


def asked(case: Case) -> bool:
    """Whether the question is about jam or its gel point."""
    return case.request.subject == "gel_point" or food_of(case.request).kind == "jam"


@rule("preserve.gel_point", "usda-aib-539", "lowe-experimental-cookery")
def gel_point(case: Case) -> Part | None:
    """Where jam sets: 8 degF over the boil of water here."""
    if not asked(case):
        return None
    here, sea = case.here.boiling_c + RISE_K, case.sea.boiling_c + RISE_K
    low = case.here.boiling_c + LABORATORY_RISE_K
    name = case.request.dish or "jam"
    food = name[:1].upper() + name[1:]
    about_jars = case.request.time_min is not None and case.request.subject != "gel_point"
    return Part(
        figures=(
            Figure(
                "gel_point", "Gel point", round(here, 2), "degC", round(low, 2), round(here, 2), sea_level=round(sea, 2)
            ),
            celsius("boiling_point", "Water boils at", case.here.boiling_c, case.sea.boiling_c),
        ),
        headline="" if about_jars else f"{food} sets at about {case.say.temp(here)} at {case.place}.",
        steps=(
            "Boil water first and read your thermometer in it: the gel point is 8 °F (4.5 °C) above that reading, so "
            "an error of the thermometer cancels.",
            "Start testing a degree or two early. Sheet test: two drops run together and fall as one from a cool "
            "spoon. Cold plate: a drop wrinkles when pushed. Take the pan off the heat while you test.",
        ),
        because=f"A syrup is ready to set near 65 % sugar, and that boils {case.say.temp_drop(RISE_K)} over water: "
        f"water boils at {case.say.temp(case.here.boiling_c)} here. {_printed(case)}The laboratory figure for 65 °Brix "
        f"is {case.say.temp_drop(LABORATORY_RISE_K)}. With added pectin go by the packet's minutes, not by the "
        "thermometer.",
        maths=f"{case.here.boiling_c:.2f} + {RISE_K:.2f} = {here:.2f} °C.",
    )


def _printed(case: Case) -> str:
    row = printed_f(case.here.elevation_m * FT_PER_M)
    return f"The USDA table prints {case.say.temp(to_c(row[1]))} for {number(row[0])} ft. " if row else ""
