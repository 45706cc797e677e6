"""Lower temperatures held for longer: the food codes' tables, each read by its own edition, never interpolated."""

from __future__ import annotations

from dataclasses import dataclass

from rules import holding
from rules.book import Part, rule
from rules.case import Case, celsius
from rules.errors import within
from rules.local_code import local_code
from rules.model import Caution, Figure
from rules.say import exact_duration, to_c, to_f
from rules.tables import read_csv

ROASTS = ("roast_lethality_alaska-18-aac-31", "roast_lethality_ny-1-nycrr-271")
MINCED = ("minced_lethality_fda-food-code-2022",)
NAMES = {
    "alaska-18-aac-31": "FDA Food Code table (as Alaska prints it)",
    "ny-1-nycrr-271": "New York State table",
    "fda-food-code-2022": "Food Code 2017 and 2022",
}
MINCED_CLASSES = ("ground_meat", "sausage")
AT_ONCE_165 = ("poultry_pieces", "whole_bird", "casserole")
SECONDS_15_AT_145 = ("fish", "shellfish", "cephalopod", "egg")
SHOWN_F = (130, 135, 140, 145)
ROUNDING_F = 0.02
LOWEST_C, HIGHEST_C = -40.0, 150.0


@dataclass(frozen=True, slots=True)
class Hold:
    """A printed row: held at this temperature [degF] for this time [min], by this source."""

    temp_f: int
    time_min: float
    source: str


def rows(file: str) -> tuple[Hold, ...]:
    """The rows of a table in data/tables, coolest first."""
    table = read_csv(f"tables/{file}.csv")
    return tuple(Hold(int(row["temp_f"]), float(row["time_min"]), table.source) for row in table.rows)


def printed(file: str, temp_c: float) -> Hold | None:
    """The row for a temperature [degC]: the hottest printed one that it reaches; None under the coolest.

    >>> printed("roast_lethality_ny-1-nycrr-271", 54.6).time_min
    121.0
    >>> printed("roast_lethality_ny-1-nycrr-271", 54.0) is None
    True
    """
    # for the turning round of degF and degC
    reached = [row for row in rows(file) if row.temp_f <= to_f(temp_c) + ROUNDING_F]
    return max(reached, key=lambda row: row.temp_f) if reached else None


@rule("safety.time_temperature", "alaska-18-aac-31", "ny-1-nycrr-271", "fda-food-code-2022")
def equivalents(case: Case) -> Part:
    """How long a temperature must be held, by each printed table."""
    if case.dish_class in AT_ONCE_165:
        return _one_row(case, "Poultry, stuffed food and casseroles", 165, 0.0)
    if case.dish_class in SECONDS_15_AT_145:
        return _one_row(case, "Fish, shellfish, and eggs for immediate service", 145, 0.25)
    tables = MINCED if case.dish_class in MINCED_CLASSES else ROASTS
    temp_c = case.request.temperature_c
    return _chart(case, tables) if temp_c is None else _asked(case, tables, temp_c)


def _asked(case: Case, tables: tuple[str, ...], temp_c: float) -> Part:
    hint = "Give the temperature of the centre of the food."
    within("temperature held", temp_c, LOWEST_C, HIGHEST_C, "degC", hint)
    found = [row for file in tables if (row := printed(file, temp_c))]
    lowest_c = to_c(rows(tables[0])[0].temp_f)
    what = "Minced or tenderised meat" if tables is MINCED else "A whole roast"
    if not found:
        least = case.say.temp(lowest_c)
        text = f"No table goes under {least}: {case.say.temp(temp_c)} is not a safe finish for any time."
        return Part(headline=text, cautions=(Caution("stop", text, _sources(tables)),), sources=_sources(tables))
    longest, shortest = (pick(row.time_min for row in found) for pick in (max, min))
    each = "; ".join(f"{NAMES[row.source]}: {_time(row.time_min)} at {row.temp_f} °F" for row in found)
    return Part(
        headline=f"{what} held at {case.say.temp(temp_c)} in the centre is safe after {_time(longest)}, at any "
        "elevation.",
        figures=(Figure("hold_time", "Hold for", longest, "min", shortest, longest),),
        because=f"{each}. The tables differ by edition; the longer time is given, and nothing is read between rows.",
        steps=("Count from when the coldest point has reached it, by a checked thermometer, and write it down.",),
        sources=_sources(tables),
    )


def _chart(case: Case, tables: tuple[str, ...]) -> Part:
    shown = [row for file in tables for row in rows(file) if tables is MINCED or row.temp_f in SHOWN_F]
    temps = sorted({row.temp_f for row in shown})
    told = [
        f"{case.say.temp(to_c(f))} {' or '.join(dict.fromkeys(_time(r.time_min) for r in shown if r.temp_f == f))}"
        for f in temps
    ]
    what = "minced or tenderised meat" if tables is MINCED else "a whole roast"
    return Part(
        headline=f"For {what} the codes print: {'; '.join(told)}. They hold at any elevation.",
        because="Where two times stand, two tables differ: "
        f"{' and the '.join(NAMES[rows(file)[0].source] for file in tables)}. Name the one your inspector uses, or "
        "take the longer."
        if len(tables) > 1
        else "Food Code 2013 and older print 15 s at 155 °F (68 °C), later ones 17 s.",
        figures=tuple(
            Figure(
                f"hold_at_{f}_f",
                f"At {f} °F",
                max(r.time_min for r in shown if r.temp_f == f),
                "min",
                min(r.time_min for r in shown if r.temp_f == f),
                max(r.time_min for r in shown if r.temp_f == f),
            )
            for f in temps
            if f != rows(tables[0])[-1].temp_f
        ),
        steps=("Tell me the temperature that you hold, and I give the printed time.",),
        sources=_sources(tables),
    )


def _one_row(case: Case, what: str, temp_f: int, time_min: float) -> Part:
    temp_c = to_c(temp_f)
    held = f"held {exact_duration(time_min)}" if time_min else "at once"
    return Part(
        headline=f"{what}: {case.say.temp(temp_c)} in the centre, {held}, at any elevation.",
        figures=(
            celsius("safe_temperature", "Safe at the centre", temp_c, temp_c),
            *((Figure("hold_time", "Hold for", time_min, "min"),) if time_min else ()),
        ),
        because="The roast tables are for whole beef, lamb and pork only. Lower temperatures for other food take a "
        "plan that your inspector has approved.",
        sources=("fda-food-code-2022",),
    )


def _time(minutes: float) -> str:
    return exact_duration(minutes) if minutes else "at once"


def _sources(tables: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(rows(file)[0].source for file in tables)


NEEDS: tuple[str, ...] = ()
RULES = (equivalents, holding.same_everywhere, local_code)
