"""Lower temperatures held for longer: the codes' tables, each read by its own edition, never interpolated."""

from __future__ import annotations

from rules import safety
from rules.book import Case, Part, celsius, rule
from rules.errors import within
from rules.model import Caution, Figure
from rules.physics.units import to_c
from rules.safety import holding_limits, lethality
from rules.safety.lethality import Hold, Kind, printed, rows
from rules.safety.local_code import local_code
from rules.said import Listed, Said, Words, exact_duration, listed, number, sentences, temp

# of kinds that no table holds for longer, what the Food Code asks for [degF, min]
CODE_ROW = {"fish": (145, 0.25), "egg": (145, 0.25)}
SHOWN_F = (130, 135, 140, 145, 150, 155)
ROASTS_SHOWN_F = (130, 135, 140, 145)
LOWEST_C, HIGHEST_C = -40.0, 150.0
say = sentences("safety/subjects/time_temperature")


def asked_of(case: Case) -> Kind:
    """The kind of food that is asked about, shellfish as fish; whole cuts where nothing says."""
    otherwise = "fish" if "shellfish" in case.traits else "whole_cut"
    return lethality.kind(lethality.kind_judged(case.request.dish, case.dish_class) or otherwise)


@rule("safety.time_temperature", "alaska-18-aac-31", "ny-1-nycrr-271", "fda-food-code-2022", "fsis-gd-2021-14")
def equivalents(case: Case) -> Part:
    """How long a temperature must be held, by each printed table."""
    of, temp_c = asked_of(case), case.request.temperature_c
    if temp_c is not None:
        hint = "Give the temperature of the centre of the food."
        within("temperature held", temp_c, LOWEST_C, HIGHEST_C, "degC", hint)
        return _asked(case, of, temp_c)
    return _one_row(of) if not of.tables or of.id in CODE_ROW else _chart(of)


def _asked(case: Case, of: Kind, temp_c: float) -> Part:
    found, told = lethality.judge(of.id, temp_c, case.request.time_min), temp(temp_c)
    if found.needs_min is None:
        text = say("too-cool", least=temp(found.least_c), food=lethality.called_held(of.id), temperature=told)
        stated = case.request.time_min is not None
        headline = say("no", text=text) if stated else text
        return Part(headline=headline, cautions=(Caution("stop", text, (found.source,)),), sources=(found.source,))
    read = {row: file for file in of.tables if (row := printed(file, temp_c))}
    times = [row.time_min for row in read] or [found.needs_min]
    longest, shortest = max(times), min(times)
    needs = longest if case.request.time_min is None else found.needs_min
    short = case.request.time_min is not None and not found.safe
    return Part(
        headline=_held(case, of, temp_c, needs, safe=found.safe),
        figures=(Figure("hold_time", say("hold-label"), needs, "min", min(shortest, needs), max(longest, needs)),)
        if needs
        else (),
        because=say("by-table", each=_each(read)) if read else "",
        steps=(say("count-from"),),
        cautions=(Caution("stop", say("too-short", temperature=told), (found.source,)),) if short else (),
        sources=tuple(dict.fromkeys((*(row.source for row in read), found.source))),
    )


def _each(read: dict[Hold, str]) -> Listed:
    """What each table prints for the temperature."""
    rows = [
        say("row", table=_table(row, file), time=_time(row.time_min), temp_f=number(row.temp_f))
        for row, file in read.items()
    ]
    return listed(rows, "semicolons")


def _held(case: Case, of: Kind, temp_c: float, needs_min: float, *, safe: bool) -> Said:
    stated = case.request.time_min is not None
    return say(
        "held",
        verdict="open" if not stated else "yes" if safe else "no",
        food=lethality.called_held(of.id),
        temperature=temp(temp_c),
        way="after" if needs_min else "at_once",
        time=exact_duration(needs_min),
    )


def _table(row: Hold, file: str) -> Said:
    return say("table", source=row.source, file=file)


def _chart(of: Kind) -> Part:
    kept = SHOWN_F if of.id == "poultry" else ROASTS_SHOWN_F
    shown = [row for file in of.tables for row in rows(file) if len(of.tables) == 1 or row.temp_f in kept]
    times = {f: [row.time_min for row in shown if row.temp_f == f] for f in sorted({row.temp_f for row in shown})}
    told = [say("pair", temperature=temp(to_c(f)), times=_times(minutes)) for f, minutes in times.items()]
    safe = safety.row_of(of.chart)
    at_once = of.id == "poultry"
    hottest_f = rows(of.tables[0])[-1].temp_f
    return Part(
        headline=say(
            "chart",
            food=lethality.called_held(of.id),
            each=listed(told, "semicolons"),
            way="at_once" if at_once else "held",
            safe=temp(safe.temp_c),
        ),
        because=_tables_differ(of),
        figures=(
            *((celsius("safe_temperature", say("safe-label"), safe.temp_c, safe.temp_c),) if at_once else ()),
            *(_hold(f, minutes) for f, minutes in times.items() if f != hottest_f),
        ),
        steps=(say("tell-me"),),
        sources=tuple(dict.fromkeys(rows(file)[0].source for file in of.tables)),
    )


def _times(minutes: list[float]) -> Listed:
    return listed([_time(time_min) for time_min in dict.fromkeys(minutes)], "or")


def _tables_differ(of: Kind) -> Words:
    if len(of.tables) == 1:
        return say("editions")
    first, second = (_table(rows(file)[0], file) for file in of.tables)
    return say("two-tables", first=first, second=second)


def _hold(temp_f: float, minutes: list[float]) -> Figure:
    low, high = min(minutes), max(minutes)
    return Figure(f"hold_at_{temp_f:g}_f", say("at-label", temp_f=number(temp_f)), high, "min", low, high)


def _one_row(of: Kind) -> Part:
    charted = safety.row_of(of.chart)
    temp_f, time_min = CODE_ROW.get(of.id, (None, charted.rest_min))
    temp_c = charted.temp_c if temp_f is None else to_c(temp_f)
    return Part(
        headline=say(
            "one-row",
            food=lethality.called(of.id),
            temperature=temp(temp_c),
            way="held" if time_min else "at_once",
            time=exact_duration(time_min),
        ),
        figures=(
            celsius("safe_temperature", say("safe-label"), temp_c, temp_c),
            *((Figure("hold_time", say("hold-label"), time_min, "min"),) if time_min else ()),
        ),
        because=say("no-lower"),
        sources=("fda-food-code-2022",) if of.id in CODE_ROW else (charted.source,),
    )


def _time(time_min: float) -> Said:
    return say("time", way="held" if time_min else "at_once", time=exact_duration(time_min))


NEEDS: tuple[str, ...] = ()
RULES = (equivalents, holding_limits.same_everywhere, local_code)
