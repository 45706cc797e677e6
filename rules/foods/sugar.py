"""Stages of boiled sugar: what the sugarwork method and the question about a stage have in common."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.book import Case, Part, celsius, rule
from rules.errors import within
from rules.foods.dishes import kin
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure
from rules.physics import water
from rules.physics.units import round_to, to_c, to_f
from rules.said import Words, listed, number, sentences, temp, temp_drop, temp_span, together
from rules.tables import read_csv

STAGES = "tables/sugar_stages_common-practice.csv"
CANDIES = "tables/candy_stages_common-practice.csv"
LOWEST_ASKED_C, HIGHEST_ASKED_C = 85.0, 205.0
UNDER_ANY_STAGE_K = 8.0
# cooler than this is no syrup of a recipe [degC]
SYRUP_FROM_C = 102.0
MAPLE_ABOVE_BOIL_K = 7.1 / 1.8
CSU_K_PER_M = 10 / 1.8 / 1524
NOTICEABLE_K = 0.1
READABLE_K = 0.05
# no kitchen thermometer tells less [K]
TELLING_K = 0.8
PUBLISHED_FROM_M = 600
# the stages that are still near enough to syrup for its boiling point to tell the sugar in it
SYRUPS = ("thread", "soft_ball")
# eggs that hot syrup is poured on
EGG_FOAMS = ("italian meringue", "pate a bombe")
# boiled so hot at sea level [degC]
ISOMALT, ISOMALT_C = "isomalt", 167.0
CHOCOLATES = ("chocolate", "chocolates", "chocolate bark", "bonbons")
say = sentences("foods/sugar")


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


def cooked_to(dish: str | None) -> Stage | None:
    """The stage that a sweet is cooked to; None where it is none.

    >>> cooked_to("fudge").id
    'soft_ball'
    """
    return next((stages()[_candies()[name]] for name in kin(dish) if name in _candies()), None)


def wanted(case: Case) -> Stage | None:
    """The stage a question is about: named, or the one the sweet is cooked to; None for all, or several."""
    if case.request.stages:
        return None
    cooked_to = (_candies()[name] for name in kin(case.request.dish) if name in _candies())
    named = stages().get(case.request.subject or next(cooked_to, None) or "")
    return None if named and _is_another(case, named) else named


def _is_another(case: Case, usual: Stage) -> bool:
    """Whether the recipe boils a sweet to a temperature of its own, far from the stage that is usual for it."""
    asked_c = case.request.temperature_c
    if asked_c is None or case.request.subject or asked_c < SYRUP_FROM_C:
        return False
    return not usual.low_c - UNDER_ANY_STAGE_K <= asked_c <= usual.high_c + UNDER_ANY_STAGE_K


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
    one, several = wanted(case), case.request.stages
    if one or several:
        return (one,) if one else tuple(stages()[id] for id in several if id in stages())
    if "maple_syrup" in case.traits or _is_chocolate(case) or _is_isomalt(case) or case.request.temperature_c:
        return ()
    return tuple(stages().values())


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
    label = say("stage-label", stage=stage.label)
    return Figure(f"{stage.id}_temperature", label, here, "degC", *ends, sea_level=round(middle, 2))


@rule("sugar.chocolate", "common-practice")
def chocolate(case: Case) -> Part | None:
    """Chocolate, which is no boiled sugar: it is tempered as anywhere."""
    if not _is_chocolate(case):
        return None
    return Part(headline=say("chocolate"), because=say("chocolate-because"))


def _is_chocolate(case: Case) -> bool:
    return case.request.dish in CHOCOLATES and case.request.subject not in stages()


@rule("sugar.stage", "common-practice", "csu-candy-high-elevation", "usu-faq-453")
def stage_temperature(case: Case) -> Part | None:
    """The temperature of the stage here: sea level's, less what the boiling point has fallen."""
    one, told = wanted(case), told_stages(case)
    if not told:
        return None
    drop_k = case.sea.boiling_c - case.here.boiling_c
    return Part(
        figures=tuple(_figure(case, s) for s in told),
        headline=_of_one(case, one) if one else _of_several(case, told) or _of_all(case, drop_k),
        because=_why(case, one, drop_k),
        sources=("common-practice",) if one and not one.shifts else (),
        maths=say(
            "stage-maths",
            sea=number(case.sea.boiling_c, 1),
            here=number(case.here.boiling_c, 1),
            drop=number(drop_k, 1),
        ),
    )


def _of_several(case: Case, told: tuple[Stage, ...]) -> Words:
    """Each of the stages that were named, in the order said."""
    if not case.request.stages:
        return ""
    each = [say("stage-at", stage=stage.label, here=temp_span(*span_here(case, stage))) for stage in told]
    return say("several-stages", place=case.place, each=listed(each, "semicolons"))


def _of_all(case: Case, drop_k: float) -> Words:
    if not case.moved and abs(drop_k) < NOTICEABLE_K:
        return say("all-at-sea-level")
    way = "lower" if drop_k > 0 else "higher"
    moved = say("all-stages", place=case.place, drop=temp_drop(abs(drop_k)), way=way)
    each = [say("stage-at", stage=stage.label, here=temp_span(*span_here(case, stage))) for stage in told_stages(case)]
    return together(moved, say("each-stage", each=listed(each, "semicolons")))


def _of_one(case: Case, stage: Stage) -> Words:
    food, (low, high), offset_k = case.request.dish or "", span_here(case, stage), thermometer_offset_k(case)
    cook = say(
        "one-stage",
        dish="stage" if food == stage.label else "named" if food else "sugar",
        food=food,
        stage=stage.label,
        here=temp_span(low, high),
        place=case.place,
        against="same" if _read(low, high) == _read(stage.low_c, stage.high_c) else "sea",
        sea=temp_span(stage.low_c, stage.high_c),
    )
    if is_unread(case):
        return say("by-cold-water", stage=stage.label, test=stage.cold_water, cook=cook)
    reads = say("your-thermometer", reads=temp_span(low + offset_k, high + offset_k))
    return together(cook, reads if abs(offset_k) >= READABLE_K else "")


def is_unread(case: Case) -> bool:
    """Whether the cook has no thermometer to read a syrup with."""
    return any("thermometer" in id for id in case.request.lacking)


def _read(*temps_c: float) -> list[tuple[float, float]]:
    """Temperatures as a reply gives them, to 1 degF and 0.5 degC."""
    return [(round_to(to_f(temp_c), 1), round_to(temp_c, 0.5)) for temp_c in temps_c]


def _why(case: Case, stage: Stage | None, drop_k: float) -> Words:
    if stage is not None and not stage.shifts:
        return say("caramel")
    boil = temp(case.here.boiling_c)
    if abs(drop_k) < NOTICEABLE_K:
        text = say("stages-stand", boil=boil)
    else:
        way = "lower" if drop_k > 0 else "higher"
        text = say("stages-move", drop=temp_drop(abs(drop_k)), way=way, boil=boil)
    return text if stage is not None else together(text, say("caramel"))


@rule("sugar.cold_water", "common-practice")
def cold_water(case: Case) -> Part | None:
    """The cold-water test, which needs no thermometer and no elevation."""
    told = told_stages(case)
    if not told:
        return None
    if case.request.stages:
        return Part(steps=(say("thermometer-first"),), because=say("cold-water"))
    tests = tuple(say("cold-water-test", stage=s.label, test=s.cold_water) for s in told)
    first = () if is_unread(case) else (say("thermometer-first"),)
    return Part(
        steps=(*first, *tests),
        because=say("cold-water") if any(s.shifts for s in told) else "",
    )


@rule("sugar.thermometer", "common-practice")
def thermometer(case: Case) -> Part | None:
    """What to read on a thermometer that is off."""
    offset_k = thermometer_offset_k(case)
    if abs(offset_k) < READABLE_K:
        return None
    way = "high" if offset_k > 0 else "low"
    return Part(
        figures=tuple(_reading(case, stage, offset_k) for stage in told_stages(case)),
        because=say("thermometer", off=temp_drop(abs(offset_k)), way=way),
    )


def _reading(case: Case, stage: Stage, offset_k: float) -> Figure:
    low, high = (end + offset_k for end in span_here(case, stage))
    label = say("reading-label", stage=stage.label)
    return Figure(f"{stage.id}_reading", label, round((low + high) / 2, 2), "degC", round(low, 2), round(high, 2))


@rule("sugar.recipe_temperature", "csu-candy-high-elevation", "usu-faq-453")
def recipe_temperature(case: Case) -> Part | None:
    """A recipe's own temperature carried here from where it was written."""
    asked_c = case.request.temperature_c
    if asked_c is None or boil_reading_c(case) is not None or _is_chocolate(case):
        return None
    within(
        "sugar temperature", asked_c, LOWEST_ASKED_C, HIGHEST_ASKED_C, "degC", "Sugar stages run from 230 to 350 °F."
    )
    at_sea_c = asked_c + case.sea.boiling_c - case.there.boiling_c
    dry = at_sea_c >= stages()["caramel"].low_c
    here_c = asked_c if dry else asked_c - (case.there.boiling_c - case.here.boiling_c)
    stage = next((s for s in stages().values() if s.low_c - 1 <= at_sea_c <= s.high_c + 1), None)
    whites, offset_k = case.request.dish in EGG_FOAMS and case.moved, thermometer_offset_k(case)
    if _is_isomalt(case):
        return None
    if several := _each_temperature(case):
        return several
    return Part(
        because="" if told_stages(case) else _why(case, None, case.sea.boiling_c - case.here.boiling_c),
        figures=(Figure("recipe_temperature", say("recipe-label"), round(here_c, 2), "degC"),),
        headline=together(
            _verdict(case, asked_c, here_c)
            or say(
                "recipe-headline",
                asked=temp(asked_c),
                baseline=case.baseline,
                here=temp(here_c),
                place=case.place,
                named="yes" if stage else "no",
                stage=stage.label if stage else "",
            ),
            say("your-thermometer-there", reads=temp(here_c + offset_k)) if abs(offset_k) >= READABLE_K else "",
            say("whites") if whites else "",
        ),
    )


def _each_temperature(case: Case) -> Part | None:
    """Each of the recipe's temperatures carried here, where it has two or more; None where it has one."""
    asked = tuple(temp_c for temp_c in case.request.temperatures_c if SYRUP_FROM_C < temp_c <= HIGHEST_ASKED_C)
    if len(asked) < 2 or case.request.taken_c is not None:
        return None
    drop_k, over_k = case.there.boiling_c - case.here.boiling_c, case.sea.boiling_c - case.there.boiling_c
    dry_c = stages()["caramel"].low_c
    each = [say("carried", asked=temp(c), here=temp(c if c + over_k >= dry_c else c - drop_k)) for c in asked]
    return Part(
        because=_why(case, None, case.sea.boiling_c - case.here.boiling_c),
        headline=say("each-carried", place=case.place, baseline=case.baseline, each=listed(each, "semicolons")),
    )


def _verdict(case: Case, asked_c: float, here_c: float) -> Words:
    """How far over or under a syrup was taken; empty where that is not asked."""
    taken_c = case.request.taken_c
    if taken_c is None:
        return ""
    off_k = taken_c - here_c
    way = "right" if abs(off_k) < TELLING_K else "over" if off_k > 0 else "under"
    return say(
        "taken",
        way=way,
        # too hot or too long: which of the two it was, and neither yes nor no
        of_two="yes" if case.request.either or case.request.asked_way == "either" else "no",
        off=temp_drop(abs(off_k)),
        taken=temp(taken_c),
        asked=temp(asked_c),
        here=temp(here_c),
        place=case.place,
        baseline=case.baseline,
    )


def _is_isomalt(case: Case) -> bool:
    return case.request.dish == ISOMALT


@rule("sugar.isomalt", "common-practice", "from-memory")
def isomalt(case: Case) -> Part | None:
    """Isomalt, which has no stages of sugar: it is boiled until almost no water is left, and gets as hot anywhere."""
    if not _is_isomalt(case):
        return None
    asked_c = case.request.temperature_c or ISOMALT_C
    drop_k = case.sea.boiling_c - case.here.boiling_c
    can = "yes" if "can_it" in case.request.forms else "no"
    return Part(
        figures=(Figure("isomalt_here", say("isomalt-label"), round(asked_c - drop_k, 2), "degC", sea_level=asked_c),),
        headline=say("isomalt", can=can, asked=temp(asked_c), here=temp(asked_c - drop_k), place=case.place),
        steps=(say("isomalt-test"), say("thermometer-first")),
        because=say("isomalt-because", drop=temp_drop(abs(drop_k))),
    )


@rule("sugar.published", "csu-candy-high-elevation", "usu-faq-453")
def published(case: Case) -> Part | None:
    """The published rule of thumb beside the boiling point."""
    one = wanted(case)
    if case.here.elevation_m < PUBLISHED_FROM_M or _is_chocolate(case) or (one and not one.shifts):
        return None
    rule_k = CSU_K_PER_M * case.here.elevation_m
    drop_k = case.sea.boiling_c - case.here.boiling_c
    return Part(because=say("published", rule=temp_drop(rule_k), drop=temp_drop(drop_k)))


@rule("sugar.syrup", "browne-1912-sucrose")
def syrup(case: Case) -> Part | None:
    """How much sugar a stage stands for, by the boiling point of syrup; and maple syrup, which is drawn by it."""
    if "maple_syrup" in case.traits:
        here_c, sea_c = (air.boiling_c + MAPLE_ABOVE_BOIL_K for air in (case.here, case.sea))
        return Part(
            figures=(celsius("syrup_temperature", say("maple-label"), here_c, sea_c),),
            headline=say("maple-headline", draw=temp(here_c), place=case.place),
            because=say("maple"),
            sources=("common-practice",),
        )
    one = wanted(case)
    if one is None or one.id not in SYRUPS:
        return None
    middle_k = (one.low_c + one.high_c) / 2 - case.sea.boiling_c
    percent = round_to(water.sucrose_percent(middle_k), 1)
    return Part(because=say("syrup", stage=one.label, percent=number(percent), over=temp_drop(middle_k)))


@rule("sugar.burns", "common-practice")
def burns(case: Case) -> Part:
    """Hot sugar burns."""
    return Part(cautions=(Caution("warn", say("burns"), ("common-practice",)),))


RULES = (
    chocolate,
    isomalt,
    syrup,
    recipe_temperature,
    stage_temperature,
    boiling_point,
    thermometer,
    published,
    cold_water,
    burns,
)
