"""Stages of boiled sugar: what the sugarwork method and the question about a stage have in common."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.book import Case, Part, celsius, rule
from rules.errors import within
from rules.foods.dishes import kin
from rules.model import Caution, Figure
from rules.physics import water
from rules.physics.units import round_to, to_c
from rules.say import number
from rules.tables import read_csv

STAGES = "tables/sugar_stages_common-practice.csv"
CANDIES = "tables/candy_stages_common-practice.csv"
LOWEST_ASKED_C, HIGHEST_ASKED_C = 85.0, 205.0
UNDER_ANY_STAGE_K = 8.0
MAPLE = "maple syrup"
MAPLE_ABOVE_BOIL_K = 7.1 / 1.8
CSU_K_PER_M = 10 / 1.8 / 1524


@dataclass(frozen=True, slots=True)
class Stage:
    """A stage of boiled sugar at sea level [degC], and its cold-water test.

    shifts: whether water still sets its temperature, so that it moves with the boiling point
    """

    id: str
    label: str
    low_c: float
    high_c: float
    shifts: bool
    cold_water: str


@cache
def stages() -> dict[str, Stage]:
    """Every stage by id, coolest first.

    >>> round(stages()["soft_ball"].low_c, 1)
    112.2
    """
    return {
        r["stage"]: Stage(
            r["stage"],
            r["label"],
            to_c(float(r["low_f"])),
            to_c(float(r["high_f"])),
            r["shifts"] == "yes",
            r["cold_water"],
        )
        for r in read_csv(STAGES).rows
    }


@cache
def _candies() -> dict[str, str]:
    return {r["dish"]: r["stage"] for r in read_csv(CANDIES).rows}


def wanted(case: Case) -> Stage | None:
    """The stage a question is about: named, or the one the sweet is cooked to; None for all."""
    cooked_to = (_candies()[name] for name in kin(case.request.dish) if name in _candies())
    named = case.request.subject or next(cooked_to, None)
    return stages().get(named or "")


def boil_reading_c(case: Case) -> float | None:
    """What the cook's thermometer reads in boiling water [degC]: a temperature given with a stage and far under it."""
    asked_c = case.request.temperature_c
    if asked_c is None or wanted(case) is None:
        return None
    return asked_c if asked_c < min(case.here.boiling_c, case.there.boiling_c) + UNDER_ANY_STAGE_K else None


def thermometer_offset_k(case: Case) -> float:
    """How much the cook's thermometer reads too high [K]: as it is known, or as a reading in boiling water shows."""
    reading = boil_reading_c(case)
    return case.request.thermometer_offset_c if reading is None else reading - case.here.boiling_c


def told_stages(case: Case) -> tuple[Stage, ...]:
    """The stages a reply tells of: the one wanted, else all; none for maple syrup, which has a rule of its own."""
    one = wanted(case)
    if one:
        return (one,)
    return () if case.request.dish == MAPLE else tuple(stages().values())


def temp_here_c(case: Case, stage: Stage, temp_c: float) -> float:
    """A sea-level temperature of a stage, less what the boil has fallen, as far as the stage moves [degC]."""
    return temp_c - (case.sea.boiling_c - case.here.boiling_c if stage.shifts else 0.0)


def span_here(case: Case, stage: Stage) -> tuple[float, float]:
    """Low and high of a stage here [degC]."""
    return temp_here_c(case, stage, stage.low_c), temp_here_c(case, stage, stage.high_c)


def _figure(case: Case, stage: Stage) -> Figure:
    low, high = span_here(case, stage)
    middle = (stage.low_c + stage.high_c) / 2
    here = round((low + high) / 2, 2)
    ends = round(low, 2), round(high, 2)
    return Figure(f"{stage.id}_temperature", stage.label.capitalize(), here, "degC", *ends, sea_level=round(middle, 2))


@rule("sugar.stage", "common-practice", "csu-candy-high-elevation", "usu-faq-453")
def stage_temperature(case: Case) -> Part | None:
    """The temperature of the stage here: sea level's, less what the boiling point has fallen."""
    one, told = wanted(case), told_stages(case)
    if not told:
        return None
    drop_k = case.sea.boiling_c - case.here.boiling_c
    return Part(
        figures=tuple(_figure(case, s) for s in told),
        headline=_headline(case, one, drop_k),
        because=_why(case, one, drop_k),
        sources=("common-practice",) if one and not one.shifts else (),
        maths=f"T here = T sea level − ({number(case.sea.boiling_c, 1)} − {number(case.here.boiling_c, 1)}) = T − "
        f"{number(drop_k, 1)} K.",
    )


def _headline(case: Case, stage: Stage | None, drop_k: float) -> str:
    food = case.request.dish or "sugar"
    if stage is None:
        if not case.moved and abs(drop_k) < 0.1:
            return "At sea level every sugar stage stands as candy tables print it."
        way = "lower" if drop_k > 0 else "higher"
        return (
            f"At {case.place} every sugar stage up to hard crack is {case.say.temp_drop(abs(drop_k))} {way} than at "
            "sea level; caramel is not."
        )
    here = case.say.temp_span(*span_here(case, stage))
    sea = case.say.temp_span(stage.low_c, stage.high_c)
    against = f", against {sea} at sea level" if here != sea else ", as at sea level"
    to = "" if food == stage.label else f" to {stage.label}"
    offset_k = thermometer_offset_k(case)
    low, high = (end + offset_k for end in span_here(case, stage))
    reads = f" Your thermometer then reads {case.say.temp_span(low, high)}." if abs(offset_k) >= 0.05 else ""
    return f"Cook {food}{to} at {here} at {case.place}{against}.{reads}"


def _why(case: Case, stage: Stage | None, drop_k: float) -> str:
    gone = (
        "Caramel does not move: by then the water is gone, and sugar melts and browns at its own temperature anywhere."
    )
    if stage is not None and not stage.shifts:
        return gone
    boil = case.say.temp(case.here.boiling_c)
    moved = (
        f"A stage is how much water is left, and that water boils {case.say.temp_drop(abs(drop_k))} "
        f"{'lower' if drop_k > 0 else 'higher'} here, at {boil}. Cooked to the sea-level reading it would hold "
        f"{'less water and set too hard' if drop_k > 0 else 'more water and stay too soft'}."
    )
    still = f"Water boils here at {boil}, as at sea level, so the stages stand as printed."
    text = moved if abs(drop_k) >= 0.1 else still
    return text if stage is not None else f"{text} {gone}"


@rule("sugar.cold_water", "common-practice")
def cold_water(case: Case) -> Part | None:
    """The cold-water test, which needs no thermometer and no elevation."""
    told = told_stages(case)
    if not told:
        return None
    tests = tuple(f"{s.label.capitalize()}: {s.cold_water}." for s in told)
    first = "Boil the thermometer in plain water first, and take the stages from what it reads there."
    return Part(
        steps=(first, *tests),
        because=""
        if not any(s.shifts for s in told)
        else "The cold-water test works by how the syrup sets, so it is right at every elevation and for every "
        "thermometer.",
    )


@rule("sugar.thermometer", "common-practice")
def thermometer(case: Case) -> Part | None:
    """What to read on a thermometer that is off."""
    offset_k = thermometer_offset_k(case)
    if abs(offset_k) < 0.05:
        return None
    told = told_stages(case)
    reads = tuple(
        Figure(
            f"{s.id}_reading",
            f"{s.label.capitalize()} on your thermometer",
            round(sum(span_here(case, s)) / 2 + offset_k, 2),
            "degC",
            *(round(end + offset_k, 2) for end in span_here(case, s)),
        )
        for s in told
    )
    way = "high" if offset_k > 0 else "low"
    return Part(
        figures=reads,
        because=f"Your thermometer reads {case.say.temp_drop(abs(offset_k))} too {way}, so look for that much "
        f"{'more' if offset_k > 0 else 'less'} on it.",
    )


@rule("sugar.recipe_temperature", "csu-candy-high-elevation", "usu-faq-453")
def recipe_temperature(case: Case) -> Part | None:
    """A recipe's own temperature carried here from where it was written."""
    asked_c = case.request.temperature_c
    if asked_c is None or boil_reading_c(case) is not None:
        return None
    within(
        "sugar temperature", asked_c, LOWEST_ASKED_C, HIGHEST_ASKED_C, "degC", "Sugar stages run from 230 to 350 °F."
    )
    at_sea_c = asked_c + case.sea.boiling_c - case.there.boiling_c
    dry = at_sea_c >= stages()["caramel"].low_c
    here_c = asked_c if dry else asked_c - (case.there.boiling_c - case.here.boiling_c)
    stage = next((s for s in stages().values() if s.low_c - 1 <= at_sea_c <= s.high_c + 1), None)
    named = f", which is {stage.label}" if stage else ""
    return Part(
        figures=(Figure("recipe_temperature", "The recipe's temperature here", round(here_c, 2), "degC"),),
        headline=f"Where the recipe says {case.say.temp(asked_c)} at {case.baseline}, cook to {case.say.temp(here_c)} "
        f"at {case.place}{named}.",
    )


@rule("sugar.published", "csu-candy-high-elevation", "usu-faq-453")
def published(case: Case) -> Part | None:
    """The published rule of thumb beside the boiling point."""
    one = wanted(case)
    if case.here.elevation_m < 600 or (one and not one.shifts):
        return None
    rule_k = CSU_K_PER_M * case.here.elevation_m
    drop_k = case.sea.boiling_c - case.here.boiling_c
    return Part(
        because="Extension advice takes off 2 °F for each 1,000 ft, 10 °F at 5,000 ft, that is "
        f"{case.say.temp_drop(rule_k)} here; by boiling point it is {case.say.temp_drop(drop_k)}. What your own "
        "thermometer reads in boiling water today settles it."
    )


@rule("sugar.syrup", "browne-1912-sucrose")
def syrup(case: Case) -> Part | None:
    """How much sugar a stage stands for, by the boiling point of syrup; and maple syrup, which is drawn by it."""
    if case.request.dish == MAPLE:
        here_c = case.here.boiling_c + MAPLE_ABOVE_BOIL_K
        return Part(
            figures=(
                celsius(
                    "syrup_temperature",
                    "Maple syrup is drawn at",
                    here_c,
                    case.sea.boiling_c + MAPLE_ABOVE_BOIL_K,
                ),
            ),
            headline=f"Draw maple syrup at {case.say.temp(here_c)} at {case.place}, 7 °F (4 °C) over the boil of the "
            "day.",
            because="Maple syrup is finished 7.1 °F (4 °C) above the boiling point of water, wherever that stands "
            "today.",
            sources=("common-practice",),
        )
    one = wanted(case)
    if one is None or not one.shifts or one.id not in ("thread", "soft_ball"):
        return None
    middle_k = (one.low_c + one.high_c) / 2 - case.sea.boiling_c
    percent = round_to(water.sucrose_percent(middle_k), 1)
    return Part(
        because=f"At {one.label} the syrup is about {number(percent)} % sugar, and boils "
        f"{case.say.temp_drop(middle_k)} over water, here as anywhere."
    )


@rule("sugar.burns", "common-practice")
def burns(case: Case) -> Part:
    """Hot sugar burns."""
    return Part(
        cautions=(
            Caution(
                "warn",
                "Hot sugar sticks and burns deep: long sleeves, a deep pot, no children near, and a bowl of ice "
                "water beside you.",
                ("common-practice",),
            ),
        )
    )
