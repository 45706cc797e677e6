"""Sous vide: a bath under the boil is as hot as it is set, so nothing changes until the boil comes down to it."""

from __future__ import annotations

from rules.book import Case, Part, Rule, celsius, rule
from rules.foods import dishes, eggs
from rules.foods.beans import bare, first_boil, poisonous_dry
from rules.heat.chamber import instead
from rules.heat.cook_times import stated_span, time_figures
from rules.heat.dry import COLDEST_C, HOTTEST_C, check, set_to
from rules.heat.headline import doing, takes
from rules.heat.heat_settings import Setting
from rules.heat.way_out import way_out
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure, Request
from rules.physics import kinetics
from rules.physics.ambient import Ambient
from rules.physics.evaporation import drying_ratio
from rules.physics.units import round_to, to_c
from rules.safety import lethality
from rules.safety.holding_limits import placed
from rules.said import (
    Said,
    Words,
    duration,
    exact_duration,
    number,
    sentences,
    temp,
    temp_drop,
    temp_span,
    together,
)

MARGIN_K = 2.0
DANGER_C = to_c(130)
PASTEURISED = ("tender_cut", "ground_meat", "sausage", "poultry_pieces", "whole_bird", "offal", "collagen_cut", "egg")
MUST_BE_PASTEURISED = ("poultry", "ground_meat")
DRYING_FROM_M = 600
say = sentences("methods/sous_vide")


def ceiling_c(air: Ambient) -> float:
    """The hottest a bath is worth setting [degC]: a little under the boil.

    >>> from rules.physics.ambient import ambient
    >>> round(ceiling_c(ambient(0)))
    98
    """
    return air.boiling_c - MARGIN_K


def bath(case: Case) -> tuple[Setting, Setting]:
    """The bath here, under the local ceiling, and as it is wanted: usually no cooler than anything printed for it."""
    wanted, stated = set_to(case, "sous_vide")
    kind = judged(case)
    if kind and not stated:
        least_c = lethality.judge(kind, wanted.low_c).least_c
        wanted = Setting(max(wanted.low_c, least_c), max(wanted.high_c, least_c), wanted.way)
    top = ceiling_c(case.here)
    return Setting(min(wanted.low_c, top), min(wanted.high_c, top), wanted.way), wanted


@rule("sous_vide.bath", "iapws-r7-97", "common-practice")
def bath_temperature(case: Case) -> Part:
    """The bath: as anywhere, up to just under the local boil."""
    here, wanted = bath(case)
    reached = here.high_c >= wanted.high_c - 0.05
    low, middle, high = (round(t, 2) for t in (here.low_c, here.middle_c, here.high_c))
    set_here, boil = temp_span(here.low_c, here.high_c), temp(case.here.boiling_c)
    headline: Words = ""
    if case.request.topic == "temperature":
        headline = (
            say("bath-headline", food=case.food, bath=set_here, place=case.place)
            if reached
            else say("ceiling-headline", place=case.place, ceiling=temp(ceiling_c(case.here)))
        )
    return Part(
        figures=(
            Figure("bath_temperature", say("bath-label"), middle, "degC", low, high, round(wanted.middle_c, 2)),
            celsius("bath_ceiling", say("ceiling-label"), ceiling_c(case.here), ceiling_c(case.sea)),
        ),
        headline=headline,
        steps=(say("bath-step", bath=set_here),),
        because=say("under-the-boil", boil=boil) if reached else say("over-the-boil", wanted=wanted.span, boil=boil),
    )


@rule("sous_vide.time", "common-practice", "iapws-r7-97")
def time(case: Case) -> Part | None:
    """How long: as at the baseline, unless the bath cannot be as hot."""
    stated, row = stated_span(case), dishes.sea_level_time(case.request.dish, case.dish_class, "sous_vide")
    if stated is None and row is None:
        return None
    low, high = stated or ((row.low_min, row.high_min) if row else (0.0, 0.0))
    here, wanted = bath(case)
    if not stated:
        least = least_min(case)
        low, high = max(low, least), max(high, least)
    soft = kinetics.softening(case.dish_class)
    ends = sorted(
        kinetics.rate_factor(here.middle_c, min(wanted.middle_c, ceiling_c(case.there)), z)
        for z in (soft.z_low_k, soft.z_k, soft.z_high_k)
    )
    figures = time_figures(case, (low, high), (low * ends[0], (low + high) / 2 * ends[1], high * ends[2]))
    too_hot = case.request.temperature_c is not None and wanted.low_c > ceiling_c(case.here)
    headline: Words = takes(case, "sous_vide", figures)
    if too_hot:
        headline = say("too-hot-headline", place=case.place, asked=wanted.span, ceiling=temp(ceiling_c(case.here)))
    return Part(
        figures=figures,
        headline=headline if case.request.topic == "time" else "",
        because=say("cooler-bath") if ends[1] > 1.01 else "",
    )


def least_min(case: Case) -> float:
    """The shortest time to name for poultry and minced meat, which nobody eats rare: until it is safe [min]."""
    kind = judged(case)
    minutes = lethality.bath_min(kind, bath(case)[0].low_c, thickness_mm(case)) if kind in MUST_BE_PASTEURISED else None
    return minutes or 0.0


@rule("sous_vide.pasteurised", "baldwin-sous-vide")
def pasteurised(case: Case) -> Part | None:
    """The published time after which a piece is safe in the bath as it is set, the same at every elevation."""
    kind, here = judged(case), bath(case)[0]
    minutes = lethality.bath_min(kind, here.low_c, thickness_mm(case)) if kind else None
    if kind is None or minutes is None:
        return None
    piece, set_here = say("thickness", piece=piece_of(case, kind)), temp(here.low_c)
    label = say("pasteurised-label", piece=piece, bath=set_here)
    return Part(
        figures=(Figure("pasteurised_after", label, minutes, "min", sea_level=minutes),),
        because=say(
            "pasteurised",
            kind=lethality.kind(kind).name,
            piece=piece,
            time=exact_duration(minutes),
            bath=set_here,
        ),
        sources=(lethality.bath_source(kind),),
    )


@rule("sous_vide.water", "computed", "common-practice")
def water(case: Case) -> Part | None:
    """What does change: the bath dries away faster, and gas in a bag takes more room."""
    if case.here.elevation_m < DRYING_FROM_M:
        return None
    more = number(round_to((drying_ratio(case.here.elevation_m) - 1) * 100, 5))
    return Part(steps=(together(say("cover-the-bath"), say("weigh-down")),), because=say("water", more=more))


@rule("sous_vide.sear", "common-practice")
def sear(case: Case) -> Part | None:
    """The crust, which a pan gives behind the bath, and which is no part of its time."""
    return Part(steps=(say("sear"),)) if "seared_after" in case.traits else None


@rule("sous_vide.safety", "fda-food-code-2022", "baldwin-sous-vide")
def safety(case: Case) -> Part | None:
    """Cool baths and raw food."""
    here, _ = bath(case)
    texts = []
    if case.dish_class in PASTEURISED:
        texts.append(say("held-long-enough"))
    if "fish" in case.traits or ("shellfish" in case.traits and here.low_c < 60):
        texts.append(say("served-raw", safe=temp(to_c(145))))
    if here.low_c < DANGER_C and "dairy" not in case.traits:
        texts.append(say("four-hours", danger=temp(DANGER_C)))
    return Part(cautions=tuple(Caution("warn", t, ("fda-food-code-2022", "baldwin-sous-vide")) for t in texts))


@rule("sous_vide.vegetables", "common-practice", "computed")
def vegetables(case: Case) -> Part | None:
    """Vegetables and beans, whose bath is hot, against the ceiling."""
    _, wanted = bath(case)
    room_k = ceiling_c(case.here) - wanted.high_c
    if wanted.high_c < 80 or room_k > 8 or room_k < 0:
        return None
    return Part(because=say("hot-bath", doing=doing(case, "sous_vide"), room=temp_drop(room_k + MARGIN_K)))


def judged(case: Case) -> str | None:
    """The kind of food that the bath is judged by; None for food without a safe temperature."""
    return lethality.kind_judged(case.request.dish, case.dish_class)


def thickness_mm(case: Case) -> int:
    """The piece that the printed times are read for [mm]: an inch, and for a whole bird the thickest."""
    return lethality.THICKEST_MM if case.dish_class == "whole_bird" else lethality.THIN_MM


def piece_of(case: Case, kind: str) -> str:
    """That piece, as a sentence chooses by it: thick, thin, or an egg in its shell."""
    if kind == "egg":
        return "egg"
    return "thick" if thickness_mm(case) == lethality.THICKEST_MM else "thin"


def needed_min(kind: str, bath_c: float, size_mm: int) -> float | None:
    """How long a bath takes to make a kind of food safe [min]; None where no table says, or none goes so low.

    Eggs are printed by the bath; food that only has a safe temperature by its centre alone.
    """
    in_bath = lethality.bath_min(kind, bath_c, size_mm)
    if in_bath is not None or not lethality.kind(kind).tables:
        return in_bath
    return lethality.judge(kind, bath_c).needs_min


def verdict(case: Case) -> bool | None:
    """Whether the bath and the time that the cook gave are safe; None where either is missing or no table tells."""
    kind, asked_c = judged(case), case.request.temperature_c
    if kind is None or asked_c is None or not COLDEST_C < asked_c <= HOTTEST_C:
        return None
    if lethality.judge(kind, asked_c).needs_min is None:
        return False
    stated, needs = stated_span(case), needed_min(kind, asked_c, thickness_mm(case))
    if stated is None or needs is None:
        return None
    # a minute or less says that the centre is safe at once, not how long it takes to get there
    return stated[0] >= needs if needs > 1 else None


@rule("sous_vide.refused", "fda-food-code-2022", "baldwin-sous-vide")
def refused(case: Case) -> Part | None:
    """A bath too cool, or a time too short: no, and what to do instead."""
    kind, asked_c = judged(case), case.request.temperature_c
    if verdict(case) is not False or kind is None or asked_c is None:
        return None
    judgement = lethality.judge(kind, asked_c)
    never = judgement.needs_min is None
    bath_c = lethality.kind(kind).bath_c if never else asked_c
    needs = needed_min(kind, bath_c, thickness_mm(case))
    return Part(
        headline=_never(case, kind, asked_c) if never else _too_short(case, kind, asked_c),
        figures=(
            *((celsius("bath_instead", say("instead-label"), bath_c, bath_c),) if never else ()),
            *((_needs_figure(case, kind, bath_c, needs),) if needs and needs > 1 else ()),
        ),
        steps=(_instead(case, kind, bath_c, needs),),
        because=say("printed-times"),
        cautions=(Caution("stop", _stop(kind, asked_c, never=never), (judgement.source,)),),
        sources=tuple(dict.fromkeys((judgement.source, *((s,) if (s := lethality.bath_source(kind)) else ())))),
    )


def _needs_figure(case: Case, kind: str, bath_c: float, needs: float) -> Figure:
    piece = say("thickness", piece=piece_of(case, kind))
    label = say("pasteurised-label", piece=piece, bath=temp(bath_c))
    return Figure("pasteurised_after", label, needs, "min", sea_level=needs)


def _never(case: Case, kind: str, asked_c: float) -> Said:
    stated = stated_span(case)
    return say(
        "never",
        food=case.request.dish or lethality.kind(kind).name,
        asked=temp(asked_c),
        stated="yes" if stated else "no",
        time=duration(stated[0]) if stated else "",
        kind=lethality.kind(kind).name,
        least=temp(lethality.judge(kind, asked_c).least_c),
    )


def _too_short(case: Case, kind: str, asked_c: float) -> Said:
    stated = stated_span(case) or (0.0, 0.0)
    return say(
        "too-short",
        time=duration(stated[0]),
        asked=temp(asked_c),
        food=case.request.dish or lethality.kind(kind).name,
        piece=say("thickness", piece=piece_of(case, kind)),
        needs=exact_duration(needed_min(kind, asked_c, thickness_mm(case)) or 0.0),
    )


def _instead(case: Case, kind: str, bath_c: float, needs: float | None) -> Said:
    if not needs or needs <= 1:
        return say("instead-centre", bath=temp(bath_c))
    piece = piece_of(case, kind)
    return say(
        "instead-held",
        bath=temp(bath_c),
        needs=exact_duration(needs),
        thickness=say("thickness", piece=piece),
        piece=piece,
    )


def _stop(kind: str, asked_c: float, *, never: bool) -> Said:
    if not never:
        return say("stop-too-short", asked=temp(asked_c))
    worms = "outlive-freezing" if kind == "wild_game" else "none"
    return say("stop-never", asked=temp(asked_c), kind=lethality.kind(kind).name, worms=worms)


@rule("sous_vide.safe", "baldwin-sous-vide")
def safe(case: Case) -> Part | None:
    """A bath hot enough and a time long enough: yes."""
    kind, asked_c, stated = judged(case), case.request.temperature_c, stated_span(case)
    if not verdict(case) or kind is None or asked_c is None or stated is None:
        return None
    return Part(
        headline=say(
            "safe",
            time=duration(stated[0]),
            asked=temp(asked_c),
            food=case.request.dish or lethality.kind(kind).name,
            piece=say("thickness", piece=piece_of(case, kind)),
            place=case.place,
            needs=exact_duration(needed_min(kind, asked_c, thickness_mm(case)) or 0.0),
        )
    )


@rule("sous_vide.lectin", "fda-bad-bug-book", "usu-ask-extension")
def lectin(case: Case) -> Part | None:
    """Dry beans that poison until they have boiled: never in a bath."""
    if not poisonous_dry(case):
        return None
    return Part(
        headline=say("lectin-headline", beans=bare(case)),
        steps=(first_boil(case), say("cook-on")),
        because=say("lectin"),
        cautions=(Caution("stop", say("lectin-caution"), ("fda-bad-bug-book",)),),
    )


NEEDS = ("elevation",)
RULES = (
    safe,
    bath_temperature,
    time,
    pasteurised,
    vegetables,
    boiling_point,
    water,
    check,
    sear,
    safety,
    eggs.sauce_safety,
)
AFTER_A_REFUSAL = (boiling_point, water, safety)


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules, after a refusal where bath or time are not safe; every rule for None."""
    if request is None:
        return (*RULES, refused, lectin, way_out)
    case = Case(request)
    if poisonous_dry(case):
        return (lectin, *((boiling_point, way_out) if placed(request) else ()))
    if verdict(case) is False:
        return (refused, *(map(instead, AFTER_A_REFUSAL) if placed(request) else ()))
    return RULES


def needs(request: Request) -> tuple[str, ...]:
    """What must be known first; nothing for a refusal."""
    case = Case(request)
    return () if poisonous_dry(case) or verdict(case) is False else NEEDS
