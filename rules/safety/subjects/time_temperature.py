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
from rules.say import exact_duration

NAMES = {
    "alaska-18-aac-31": "FDA Food Code table (as Alaska prints it)",
    "ny-1-nycrr-271": "New York State table",
    "fda-food-code-2022": "Food Code 2017 and 2022",
    "fsis-gd-2021-14": "USDA table for {file}, 12 % fat",
    "schuman-1997-eggs": "Schuman 1997",
}
WHAT = {"whole_cut": "a whole roast", "pork": "a whole roast", "raw_ham": "a whole roast", "egg": "eggs in the shell"}
# of kinds that no table holds for longer, what the Food Code asks for [degF, min]
CODE_ROW = {"fish": (145, 0.25), "egg": (145, 0.25)}
ALIKE_FISH = ("shellfish", "cephalopod")
MINCED = "minced or tenderised meat"
SHOWN_F = (130, 135, 140, 145, 150, 155)
ROASTS_SHOWN_F = (130, 135, 140, 145)
LOWEST_C, HIGHEST_C = -40.0, 150.0


def asked_of(case: Case) -> Kind:
    """The kind of food that is asked about; whole cuts where nothing says."""
    if case.dish_class in ALIKE_FISH:
        return lethality.kind("fish")
    return lethality.kind(lethality.kind_judged(case.request.dish, case.dish_class) or "whole_cut")


@rule("safety.time_temperature", "alaska-18-aac-31", "ny-1-nycrr-271", "fda-food-code-2022", "fsis-gd-2021-14")
def equivalents(case: Case) -> Part:
    """How long a temperature must be held, by each printed table."""
    of, temp_c = asked_of(case), case.request.temperature_c
    if temp_c is not None:
        hint = "Give the temperature of the centre of the food."
        within("temperature held", temp_c, LOWEST_C, HIGHEST_C, "degC", hint)
        return _asked(case, of, temp_c)
    return _one_row(case, of) if not of.tables or of.id in CODE_ROW else _chart(case, of)


def _what(of: Kind) -> str:
    return MINCED if of.id == "ground_meat" else WHAT.get(of.id, of.name)


def _asked(case: Case, of: Kind, temp_c: float) -> Part:
    found, told = lethality.judge(of.id, temp_c, case.request.time_min), case.say.temp(temp_c)
    if found.needs_min is None:
        least = case.say.temp(found.least_c)
        text = f"No table goes under {least} for {_what(of)}: {told} is not a safe finish for any time."
        no = "No. " if case.request.time_min is not None else ""
        return Part(headline=f"{no}{text}", cautions=(Caution("stop", text, (found.source,)),), sources=(found.source,))
    read = {row: file for file in of.tables if (row := printed(file, temp_c))}
    times = [row.time_min for row in read] or [found.needs_min]
    longest, shortest = max(times), min(times)
    needs = longest if case.request.time_min is None else found.needs_min
    each = "; ".join(f"{_name(row, file)}: {_time(row.time_min)} at {row.temp_f:g} °F" for row, file in read.items())
    return Part(
        headline=_held(case, of, told, needs, safe=found.safe),
        figures=(Figure("hold_time", "Hold for", needs, "min", min(shortest, needs), max(longest, needs)),)
        if needs
        else (),
        because=f"{each}. The tables differ by edition or food; the longer time is given, and nothing is read between "
        "rows."
        if each
        else "",
        steps=("Count from when the coldest point has reached it, by a checked thermometer, and write it down.",),
        cautions=()
        if case.request.time_min is None or found.safe
        else (Caution("stop", f"Too short at {told}: do not serve it.", (found.source,)),),
        sources=tuple(dict.fromkeys((*(row.source for row in read), found.source))),
    )


def _held(case: Case, of: Kind, told: str, needs: float, *, safe: bool) -> str:
    what, stated = _what(of), case.request.time_min
    after = f"after {_time(needs)}" if needs else "at once"
    said = f"{what} held at {told} in the centre is safe {after}, at any elevation."
    if stated is None:
        return said[:1].upper() + said[1:]
    return f"{'Yes' if safe else 'No'}. {said[:1].upper() + said[1:]}"


def _name(row: Hold, file: str) -> str:
    return NAMES[row.source].format(file=file.split("_")[0])


def _chart(case: Case, of: Kind) -> Part:
    kept = SHOWN_F if of.id == "poultry" else ROASTS_SHOWN_F
    shown = [row for file in of.tables for row in rows(file) if len(of.tables) == 1 or row.temp_f in kept]
    temps = sorted({row.temp_f for row in shown})
    told = [
        f"{case.say.temp(to_c(f))} {' or '.join(dict.fromkeys(_time(r.time_min) for r in shown if r.temp_f == f))}"
        for f in temps
    ]
    safe = safety.row_of(of.chart)
    at_once = f", and {case.say.temp(safe.temp_c)} at once" if of.id == "poultry" else ""
    return Part(
        headline=f"For {_what(of)} the codes print: {'; '.join(told)}{at_once}. They hold at any elevation.",
        because="Where two times stand, two tables differ: "
        f"{' and the '.join(_name(rows(file)[0], file) for file in of.tables)}. Name the one your inspector uses, or "
        "take the longer."
        if len(of.tables) > 1
        else "Food Code 2013 and older print 15 s at 155 °F (68 °C), later ones 17 s.",
        figures=(
            *((celsius("safe_temperature", "Safe at the centre", safe.temp_c, safe.temp_c),) if at_once else ()),
            *(
                Figure(
                    f"hold_at_{f:g}_f",
                    f"At {f:g} °F",
                    max(r.time_min for r in shown if r.temp_f == f),
                    "min",
                    min(r.time_min for r in shown if r.temp_f == f),
                    max(r.time_min for r in shown if r.temp_f == f),
                )
                for f in temps
                if f != rows(of.tables[0])[-1].temp_f
            ),
        ),
        steps=("Tell me the temperature that you hold, and I give the printed time.",),
        sources=tuple(dict.fromkeys(rows(file)[0].source for file in of.tables)),
    )


def _one_row(case: Case, of: Kind) -> Part:
    charted = safety.row_of(of.chart)
    temp_f, time_min = CODE_ROW.get(of.id, (None, charted.rest_min))
    temp_c = charted.temp_c if temp_f is None else to_c(temp_f)
    held = f"held {exact_duration(time_min)}" if time_min else "at once"
    return Part(
        headline=f"{of.name[:1].upper()}{of.name[1:]}: {case.say.temp(temp_c)} in the centre, {held}, at any "
        "elevation.",
        figures=(
            celsius("safe_temperature", "Safe at the centre", temp_c, temp_c),
            *((Figure("hold_time", "Hold for", time_min, "min"),) if time_min else ()),
        ),
        because="No code prints a lower temperature for this food. Lower ones take a plan that your inspector has "
        "approved.",
        sources=("fda-food-code-2022",) if of.id in CODE_ROW else (charted.source,),
    )


def _time(minutes: float) -> str:
    return exact_duration(minutes) if minutes else "at once"


NEEDS: tuple[str, ...] = ()
RULES = (equivalents, holding_limits.same_everywhere, local_code)
