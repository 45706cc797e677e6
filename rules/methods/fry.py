"""Fry: in deep fat or in a film of it. Deep fat runs cooler the higher one climbs, and the frying takes longer."""

from __future__ import annotations

from rules.baking import frying
from rules.book import Case, Part, rule
from rules.foods import eggs, popcorn
from rules.heat import dry
from rules.heat.dry import Pace, PaceOf, heated_through, set_to, setting_figure, wet_surface_pace
from rules.heat.heat_settings import Setting
from rules.heat.where_water_boils import boiling_point, boils_alike
from rules.model import Caution
from rules.physics.ambient import Ambient
from rules.said import Said, Words, number, oven, sentences, temp, temp_drop, yes

say = sentences("methods/fry")

HIGHEST_ADVICE_M = 3048.0
NOTICED_K = 0.5
# what comes to the pan wet
PATTED_DRY = frozenset(("meat", "poultry", "fish", "shellfish"))
HARDLY = 1.015
# food that goes into the fat twice, and the coolest fat that anything is fried in [degC]
TWICE, COOLEST_FAT_C = 2, 115.0
THIN_SHARE = (1 / 3, 2 / 3)


def drop_k(elevation_m: float) -> tuple[float, float, float]:
    """How far deep fat is turned down at an elevation [m] against sea level [K]: least, as published, most.

    Held above 10,000 ft, where the advice ends.
    source: uwyo-altitude-adjusters

    >>> [round(k * 1.8) for k in drop_k(1524)]
    [10, 15, 15]
    """
    fall = frying.difference_k(0.0, min(max(elevation_m, 0.0), HIGHEST_ADVICE_M))
    return -fall.high + 0.0, -fall.value + 0.0, -fall.low + 0.0


def fat(case: Case) -> tuple[Setting, Setting]:
    """The fat here and at sea level: what the cook gave holds at the baseline; a pan stays as it is."""
    there, stated = set_to(case, "fry")
    if stated and len(_twice(case)) == TWICE:
        there = Setting(there.low_c, there.high_c, "deep")
    if there.way != "deep":
        return there, there
    at_baseline = drop_k(case.there.elevation_m)[1] if stated else 0.0
    sea = Setting(there.low_c + at_baseline, there.high_c + at_baseline, there.way)
    _, down, most = drop_k(case.here.elevation_m)
    low = sea.low_c - (most if not stated else down)
    return Setting(low, sea.high_c - down, sea.way), sea


@rule("fry.fat", "uwyo-altitude-adjusters", "csu-high-altitude-food-prep", "common-practice")
def fat_temperature(case: Case) -> Part:
    """The temperature of the fat here, by the published rule for deep fat."""
    here, sea = fat(case)
    if case.dish_class == "popcorn":
        return Part(figures=(setting_figure("fat_temperature", say("pan-and-oil"), here, sea),))
    if here.way != "deep":
        return _pan(case, here)
    lower = sea.middle_c - here.middle_c
    batches = () if case.dish_class == "whole_bird" else (say("batches"), say("first-piece"))
    turned_down = say("turned-down", lower=temp_drop(lower), boil=temp(case.here.boiling_c))
    return Part(
        figures=(setting_figure("fat_temperature", say("deep-fat"), here, sea),),
        headline=_headline(case, here, sea),
        steps=(*(_twice_step(case) or (say("deep-fat-step", setting=here.span),)), *batches),
        because=turned_down if lower > NOTICED_K else say("no-change"),
    )


def _pan(case: Case, heat: Setting) -> Part:
    asked = case.request.topic == "temperature"
    return Part(
        figures=(setting_figure("fat_temperature", say("pan"), heat),),
        headline=_pan_headline(case, heat) if asked else "",
        steps=(say("pan-step", wet=yes(not PATTED_DRY.isdisjoint(case.traits))),),
        because=say("pan-because"),
        sources=("common-practice",),
    )


def _pan_headline(case: Case, heat: Setting) -> Words:
    named = yes(case.request.dish is not None)
    return say("pan-headline", setting=heat.span, named=named, food=case.food, place=case.place)


def _twice(case: Case) -> tuple[tuple[float, float], ...]:
    """Each temperature of fat that food goes into twice, as it was given and here [degC]."""
    down = drop_k(case.here.elevation_m)[1] - drop_k(case.there.elevation_m)[1]
    return tuple((asked_c, asked_c - down) for asked_c in case.request.temperatures_c if asked_c >= COOLEST_FAT_C)


def _twice_step(case: Case) -> tuple[Words, ...]:
    each = _twice(case)
    if len(each) != TWICE:
        return ()
    (_, first_c), (_, second_c) = each
    hotter = "second" if second_c > first_c else "first"
    return (say("twice-step", first=oven(first_c), second=oven(second_c), hotter=hotter),)


def _headline(case: Case, here: Setting, sea: Setting) -> Words:
    if case.request.topic != "temperature":
        return ""
    each = _twice(case)
    if len(each) == TWICE:
        (first_c, first_here_c), (second_c, second_here_c) = each
        return say(
            "twice-headline",
            first=oven(first_here_c),
            second=oven(second_here_c),
            was_first=oven(first_c),
            was_second=oven(second_c),
            food=case.food,
            place=case.place,
            baseline=case.baseline,
        )
    turned_down = sea.middle_c - here.middle_c >= NOTICED_K
    return say(
        "deep-fat-headline",
        setting=here.span,
        named=yes(case.request.dish is not None),
        food=case.food,
        place=case.place,
        way="down" if turned_down else "same",
        usual=sea.span,
    )


def pace_of(case: Case) -> PaceOf:
    """How much longer frying takes: the cooler fat drives less heat, and the wet middle cooks at a cooler boil.

    What is fried is thin and half of it crust, so one to two thirds of the slowing by the boil is counted.
    """
    wet = wet_surface_pace(case)
    here, sea = fat(case)
    asked_drop = here.way == "deep"

    def pace(air: Ambient) -> Pace:
        if "fried_briefly" in case.traits:
            return Pace(1.0, 1.0, 1.0)
        full = wet(air)
        whole = full.high if full.high > 1 else full.low
        of = Pace(*sorted((1.0, *(whole**share for share in THIN_SHARE))))
        if not asked_drop:
            return of
        at_sea_k = sea.middle_c - case.sea.boiling_c
        drive = at_sea_k / (at_sea_k - drop_k(air.elevation_m)[1] + case.sea.boiling_c - air.boiling_c)
        return Pace(*sorted((of.low * drive, of.likely * drive, of.high * drive)))

    return pace


@rule("fry.time", "computed", "uwyo-altitude-adjusters")
def time(case: Case) -> Part:
    """How long it fries here."""
    if "fried_briefly" in case.traits:
        return dry.time_part(case, "fry", pace_of(case), say("by-eye"), "common-practice")
    pace = pace_of(case)
    why = _why(case, pace(case.here).likely / pace(case.there).likely)
    return dry.time_part(case, "fry", pace, why, "computed", "uwyo-altitude-adjusters")


def _why(case: Case, ratio: float) -> Said:
    if not case.moved:
        return boils_alike(case)
    done = "heated" if heated_through(case.dish_class) else "softened"
    if ratio < 1:
        return say("sooner", done=done, baseline=case.baseline)
    longer = "more" if ratio > HARDLY else "hardly"
    return say("longer", done=done, longer=longer, percent=number((ratio - 1) * 100, 0))


@rule("fry.smoke_point", "from-memory", "computed")
def smoke_point(case: Case) -> Part | None:
    """What thin air does to the fat itself: nothing; to the water in the food, more."""
    if case.here.elevation_m < 600 or "fried_briefly" in case.traits:
        return None
    return Part(because=say("smoke-point", boil=temp(case.here.boiling_c)))


@rule("fry.hot_fat", "common-practice")
def hot_fat(case: Case) -> Part | None:
    """The usual cautions with hot fat."""
    here, _ = fat(case)
    if here.way != "deep":
        lid = Caution("note", say("keep-a-lid"), ("common-practice",))
        return Part(cautions=(lid,)) if "spatters" in case.traits else None
    kettle = Caution("warn", say("hot-fat"), ("common-practice",))
    bird = Caution("warn", say("whole-bird"), ("common-practice",))
    return Part(cautions=(bird, kettle) if case.dish_class == "whole_bird" else (kettle,))


RULES = (
    popcorn.pops, fat_temperature, time, boiling_point, dry.core, dry.check, smoke_point, popcorn.larger, eggs.safety,
    hot_fat,
    popcorn.hot_fat,
)  # fmt: skip
