"""Canning in boiling water or open steam: the tested time and what the elevation adds to it."""

from __future__ import annotations

from rules.book import Part, rule
from rules.case import Case
from rules.model import Caution, Figure
from rules.preserving import times
from rules.preserving.bands import CEILING_FT, Band, whole_feet
from rules.preserving.vessel import PRESSURE, STEAM, food_of, vessel
from rules.say import exact_duration, number

STEAM_LIMIT_MIN = 45.0
STERILE_UNDER_MIN = 10.0
STOP_HIGHER = Caution(
    "stop",
    f"No printed canning table goes above {CEILING_FT:,} ft, so there is no time to give. Freeze, dry or refrigerate "
    "it, or ask your extension office.",
    ("usda-aib-539", "usu-canning-bands"),
)


def band_figure(band: Band) -> Figure:
    """Where the printed band begins."""
    return Figure("band", "Printed band begins at", float(band.low_ft), "ft")


def applies(case: Case) -> bool:
    """Whether the question is about boiling water or steam, for a food that may go into it."""
    return vessel(case.request) != PRESSURE and food_of(case.request).kind != "low_acid"


@rule("preserve.process_time", "usda-aib-539")
def process_time(case: Case) -> Part | None:
    """The process time here, from the one the cook read in a tested recipe."""
    if not applies(case) or times.stated_min(case.request) is None:
        return None
    found = times.process(case.request)
    if found is None:
        return _too_high(case)
    return _given(case, found)


def _given(case: Case, found: times.Process) -> Part:
    base, time = found.base_min, found.most_min
    more = (
        f"{exact_duration(base)} by the recipe and {exact_duration(time - base)} for the elevation"
        if time > base
        else ""
    )
    where = "in open steam" if vessel(case.request) == STEAM else "in boiling water"
    steam_too_long = vessel(case.request) == STEAM and time > STEAM_LIMIT_MIN
    headline = (
        f"Process {case.food if case.request.dish else 'the jars'} for {exact_duration(time)} {where} at {case.place}"
    )
    headline += f": {more}." if more else ", as the recipe says."
    figures = (
        Figure("process_time", "Process time here", time, "min", found.least_min, time),
        Figure("added_time", "Of that, for the elevation", time - base, "min", found.least_min - base, time - base),
        band_figure(found.added.usda),
    )
    if steam_too_long:
        return Part(
            headline=f"Not in a steam canner: at {case.place} the process comes to {exact_duration(time)}, and a steam "
            f"canner is good for {exact_duration(STEAM_LIMIT_MIN)}. Use a boiling-water canner for "
            f"{exact_duration(time)}.",
            figures=figures,
            cautions=(
                Caution(
                    "stop",
                    f"A steam canner boils dry after {exact_duration(STEAM_LIMIT_MIN)}, elevation included, and may "
                    "not be opened to add water.",
                    ("nchfp-steam-canners",),
                ),
            ),
            because=_why(case, found.added),
        )
    return Part(
        headline=headline,
        figures=figures,
        steps=_steps(case, time),
        because=_why(case, found.added),
        sources=_sources(found.added),
    )


@rule("preserve.added_time", "usda-aib-539", "usu-canning-bands")
def added_time(case: Case) -> Part | None:
    """Without a time: what the tables add at this elevation, and the question for the recipe's time."""
    if not applies(case) or times.stated_min(case.request) is not None:
        return None
    short, long = (times.added(kind, case.here.elevation_m) for kind in (times.SHORT, times.LONG))
    if short is None or long is None:
        return _too_high(case)
    long = short if food_of(case.request).kind == "jam" else long
    low, high = short.most_min, long.most_min
    if high == 0:
        headline = f"At {case.place} process for the time your tested recipe prints for 0–1,000 ft; nothing is added."
    elif low == high:
        headline = f"At {case.place} add {exact_duration(high)} to the time your tested recipe prints for 0–1,000 ft."
    else:
        headline = (
            f"At {case.place} add {exact_duration(high)} to a tested process of 20 min or more, {exact_duration(low)} "
            "to one of 15 min or less."
        )
    return Part(
        headline=headline,
        figures=(
            Figure("added_time", "Add for the elevation", high, "min", low, high),
            band_figure(long.usda),
        ),
        steps=(
            "Tell me the time that your tested recipe prints for 0–1,000 ft, with the jar size, and I give the time "
            "here. If it prints a column for your elevation, use that and add nothing.",
            *_steps(case, None),
        ),
        because=_why(case, long),
        sources=_sources(long),
    )


def _too_high(case: Case) -> Part:
    feet = number(whole_feet(case.here.elevation_m))
    return Part(
        headline=f"I have no process time for {feet} ft: no printed canning table goes above {CEILING_FT:,} ft.",
        cautions=(STOP_HIGHER,),
        because="Canning times are read from tested tables and never reckoned beyond them.",
    )


def _why(case: Case, added: times.Added) -> str:
    boil = case.say.temp(case.here.boiling_c)
    text = (
        f"Water boils at {boil} here, so jars need longer to get the same kill. The USDA guide prints the band "
        f"{added.usda.words}, {_plus(added.usda.value)}."
    )
    if added.usu and added.differ:
        return (
            f"{text} Utah State's tables split that band and print {added.usu.words}, {_plus(added.usu.value)}. The "
            "two differ; the longer is given."
        )
    return f"{text} Utah State's {added.usu.words} agrees." if added.usu else text


def _plus(minutes: float) -> str:
    return f"{exact_duration(minutes)} more" if minutes else "nothing more"


def _sources(added: times.Added) -> tuple[str, ...]:
    return tuple(dict.fromkeys(band.source for band in (added.usda, added.usu) if band))


def _steps(case: Case, time_min: float | None) -> tuple[str, ...]:
    """What to do at the canner. time_min: the process time [min], None where it is not known yet."""
    boil = case.say.temp(case.here.boiling_c)
    if vessel(case.request) == STEAM:
        first = f"Vent until the steam reads {boil}, the boil here, then start the clock; it must hold to the end."
    else:
        first = (
            f"Start the clock at a full rolling boil, {boil} here, with 1 in (2.5 cm) of water over the jars, lid on."
        )
    again = "If the boil stops, bring it back and start the time again from nothing."
    sterile = (
        ("For a recipe of less than 10 min fill sterile jars, or process for 10 min before the elevation is added.",)
        if time_min is not None and (times.stated_min(case.request) or 0) < STERILE_UNDER_MIN
        else ()
    )
    return (first, again, *sterile)


@rule("preserve.acid", "csu-9-341", "usda-aib-539")
def acid(case: Case) -> Part | None:
    """Foods on the border of acid: the acid that makes boiling water enough."""
    food = food_of(case.request)
    if food.kind != "acidify" or "tomato" not in (case.request.dish or ""):
        text = "Add the bottled lemon juice, citric acid or vinegar that its tested recipe names, all of it."
        return Part(cautions=(Caution("warn", text, ("usda-aib-539",)),)) if food.kind == "acidify" else None
    return Part(
        steps=(
            "Acid in every jar of tomatoes: 2 tbsp bottled lemon juice or ½ tsp citric acid to a quart, 1 tbsp or ¼ "
            "tsp to a pint. Bottled, since fresh lemons vary. It goes in with a pressure canner too.",
        ),
        because="Tomatoes sit on the border, about pH 4.6. Below it botulism spores cannot grow, so boiling water is "
        "enough.",
    )


@rule("preserve.acid_by_recipe", "usda-aib-539")
def acid_by_recipe(case: Case) -> Part | None:
    """Pickles, relish and salsa: it is the vinegar of the recipe that makes them safe."""
    if food_of(case.request).kind != "pickle":
        return None
    if "ferment" in (case.request.dish or ""):
        text = (
            "The acid that makes a ferment safe comes of its salt and its time: weigh the salt as the tested recipe "
            "has it, and can it only once it has soured through."
        )
        return Part(cautions=(Caution("warn", text, ("usda-aib-539",)),))
    return Part(
        cautions=(
            Caution(
                "warn",
                "The recipe's vinegar, 5 % acid, is what makes it safe: never less of it, never weaker, never more "
                "vegetables to the same vinegar.",
                ("usda-aib-539",),
            ),
        )
    )


@rule("preserve.steam", "nchfp-steam-canners")
def steam(case: Case) -> Part | None:
    """The atmospheric steam canner: same times as boiling water, acid foods only, 45 min at most."""
    if vessel(case.request) != STEAM or food_of(case.request).kind == "low_acid":
        return None
    return Part(
        because="A steam canner takes the times of boiling water for tested acid recipes, "
        f"{exact_duration(STEAM_LIMIT_MIN)} at most with the elevation.",
        cautions=(
            Caution(
                "warn",
                "An atmospheric steam canner is for acid foods only, pH 4.6 or less. Heat the jars first and do not "
                "open it while the clock runs.",
                ("nchfp-steam-canners",),
            ),
        ),
    )
