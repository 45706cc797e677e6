"""Slow cook: an electric crock that creeps up to just under the boil, which is lower here."""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, Rule, celsius, rule
from rules.foods.beans import BOIL_MIN, bare, first_boil
from rules.heat import chamber
from rules.heat.cook_times import time_figures
from rules.heat.dry import check, core, heated_through
from rules.heat.headline import takes
from rules.heat.wet import Heats, Pot, WetTime, pace_words, threshold, wet_time
from rules.heat.where_water_boils import boiling_point
from rules.methods.pressure_cook import way_out
from rules.model import Caution, Figure, Request
from rules.physics import kinetics
from rules.physics.units import FT_PER_M, round_time_min, to_c
from rules.safety.holding_limits import placed
from rules.say import duration_span

POT = Pot("slow_cook", "the crock", below_boil_k=3.0)
ADVISED_C = to_c(200)
WARM_AT_MOST_C = to_c(166)
HEAT_UP_SHARE, HEAT_UP_MOST_MIN = 0.5, 180.0
LOW_MIN_PER_FT = 60 / 4000
LONG_MIN = 240.0
LITTLE_LOST = ("rice", "porridge", "whole_grain", "soup", "mixed_stew")


def crock_time(case: Case) -> WetTime | None:
    """Time in the crock: the heat-up as at the baseline, the rest slowed as in any pot under the boil.

    Half of the baseline time, three hours at most, is taken to be heat-up (common practice).
    """
    heats: Heats = POT.heats(case)
    full = wet_time(case, heats)
    if full is None:
        return None
    soft = kinetics.softening(case.dish_class)
    ends = [kinetics.rate_factor(heats.here_c, heats.there_c, z) for z in (soft.z_low_k, soft.z_high_k)]

    def slowed(minutes: float, factor: float) -> float:
        warm = min(minutes * HEAT_UP_SHARE, HEAT_UP_MOST_MIN)
        return warm + (minutes - warm) * factor

    low, high, mid = full.base_low_min, full.base_high_min, full.base_mid_min
    likely = slowed(mid, full.factor)
    return WetTime(
        low, high, slowed(low, min(ends)), likely, slowed(high, max(ends)), likely / mid, full.source, full.stated
    )


@rule("slow_cook.crock", "csu-high-altitude-food-prep", "computed")
def crock(case: Case) -> Part:
    """Where the crock ends up, and the published 200 degF that may be out of reach."""
    here_c, sea_c = POT.working_c(case.here), POT.working_c(case.sea)
    advised, boil = case.say.temp(ADVISED_C), case.say.temp(case.here.boiling_c)
    out_of_reach = case.here.boiling_c < ADVISED_C
    why = (
        f"Extension advice holds slow-cooked food at {advised} or more. Water boils at {boil} here, so that is out of "
        "reach: hold it at a steady simmer, and let the thermometer say when it is safe."
        if out_of_reach
        else f"Extension advice holds slow-cooked food at {advised} or more, still under the boil of {boil} here."
    )
    headline = ""
    if case.request.topic == "temperature":
        end = case.say.temp(here_c)
        headline = f"At {case.place} a slow cooker ends at about {end}, a steady simmer, on LOW or HIGH."
    return Part(
        figures=(celsius("liquid_temperature", "The crock, once hot, about", here_c, sea_c),),
        headline=headline,
        steps=(
            "Start on HIGH for the first hour, then HIGH or LOW; check the food with a thermometer before serving.",
            "Start with thawed food and warm liquid, and fill the crock half to two thirds.",
            "Leave the lid on: each look costs about a quarter of an hour.",
        ),
        because="" if "slow_cooker" in case.request.equipment else why,
    )


@rule("slow_cook.time", "common-practice", "usu-ask-extension")
def time(case: Case) -> Part:
    """How long it takes here: heat-up, and then the slower simmer."""
    slow = crock_time(case)
    soft = kinetics.softening(case.dish_class)
    if slow is None:
        factor = kinetics.rate_factor(POT.working_c(case.here), POT.working_c(case.there), soft.z_k)
        ends = sorted((1.0, (1 + factor) / 2, factor))
        figure = Figure("time_factor", f"Time against {case.baseline}", *_factor(ends))
        return Part(figures=(figure,), because="No tested time is known for this; a cooler simmer softens it slower.")
    base = (slow.base_low_min, slow.base_high_min)
    figures = time_figures(case, base, (slow.low_min, slow.likely_min, slow.high_min))
    done = "gets hot through" if heated_through(case.dish_class) else "softens"
    return Part(
        figures=figures,
        headline=takes(case, "slow_cook", figures) if case.request.topic == "time" else "",
        because=(
            f"The crock takes as long to get hot as anywhere; after that the food {done} at a simmer that is cooler "
            f"than at {case.baseline}. Together that takes {pace_words(slow.factor)}."
            if case.moved
            else f"The simmer is as hot as at {case.baseline}, so the time stays."
        ),
        sources=tuple(dict.fromkeys((soft.source, slow.source))),
    )


def _factor(ends: list[float]) -> tuple[float, str, float, float]:
    low, mid, high = (round(e, 2) for e in ends)
    return mid, "factor", low, high


@rule("slow_cook.published", "usu-ask-extension")
def published(case: Case) -> Part | None:
    """What extension answers add: an hour on LOW for every 4,000 ft."""
    slow, feet = crock_time(case), case.here.elevation_m * FT_PER_M
    if slow is None or case.there.elevation_m or feet < 2000 or slow.base_low_min < LONG_MIN:
        return None
    low, high = (t + LOW_MIN_PER_FT * feet for t in (slow.base_low_min, slow.base_high_min))
    return Part(
        figures=(
            Figure("extension_time", "By extension advice, on LOW", round_time_min((low + high) / 2), "min",
                   round_time_min(low), round_time_min(high)),
        ),
        because=f"Extension advice adds an hour on LOW for every 4,000 ft, {duration_span(low, high)} here"
        f"{_beside(slow, low, high)}.",
    )  # fmt: skip


def _beside(slow: WetTime, low_min: float, high_min: float) -> str:
    """How the advice lies to the range by softening rate."""
    if high_min < slow.low_min:
        return ", less than the range above: start to test then"
    return "" if low_min <= slow.high_min else ", more than the range above: keep it on low and test"


def from_dry(case: Case) -> bool:
    """Whether the dish is dry beans that poison until they have boiled, and not a dish with beans in it."""
    return "lectin" in case.traits and case.dish_class == "dried_bean"


@rule("slow_cook.boil_first", "fda-bad-bug-book", "usu-ask-extension")
def boil_first(case: Case) -> Part | None:
    """Dry beans that poison until they have boiled: only after a hard boil."""
    if not from_dry(case):
        return None
    least, full = BOIL_MIN
    return Part(
        headline=f"Only if boiled first: soak {bare(case)}, drain them, and boil them hard {full:.0f} min in fresh "
        f"water{_then(case)}.",
        figures=(Figure("first_boil", "Boil hard first", full, "min", least, full),),
        steps=(first_boil(case),),
        because="A slow cooker may never get hot enough to destroy their poison, and beans that are warmed without "
        "boiling can poison worse than raw ones.",
        cautions=(
            Caution(
                "stop",
                "Never put dry beans of this kind into a slow cooker as they are: their natural poison outlives its "
                f"heat. They boil hard first, {least:.0f} min at the very least.",
                ("fda-bad-bug-book", "usu-ask-extension"),
            ),
        ),
    )


def _then(case: Case) -> str:
    slow = crock_time(case) if placed(case.request) else None
    return f"; then the crock takes {duration_span(slow.low_min, slow.high_min)} at {case.place}" if slow else ""


@rule("slow_cook.after_the_boil", "common-practice", "usu-ask-extension")
def after_the_boil(case: Case) -> Part:
    """The time in the crock of beans that have boiled first."""
    part = time.work(case) or Part()
    figures = tuple(replace(f, label="Then in the crock") if f.id == "cook_time" else f for f in part.figures)
    return replace(part, figures=figures, headline="")


@rule("slow_cook.beans", "usu-ask-extension")
def beans(case: Case) -> Part | None:
    """Dried beans: soaked first, and longer."""
    if case.dish_class != "dried_bean":
        return None
    soak = "Soak the beans 12 h and pour the water away before the crock."
    raw = "Boil them in plenty of water first, lid off, and pour it away." if "cyanogenic" in case.traits else ""
    return Part(
        steps=() if from_dry(case) else tuple(filter(None, (soak, raw))),
        because="Extension advice for soaked beans on HIGH is about 3 h at low elevation and 4 to 5 h at 8,000 ft; go "
        "by the bean.",
    )


@rule("slow_cook.with_beans", "fda-bad-bug-book", "usu-ask-extension")
def with_beans(case: Case) -> Part | None:
    """A dish with beans in it: dry ones boiled first, canned ones as they are."""
    if "lectin" not in case.traits or from_dry(case):
        return None
    least, full = BOIL_MIN
    part = time.work(case) if case.request.topic == "time" and crock_time(case) else None
    return Part(
        headline=f"{part.headline} Any dry beans in it boil hard {full:.0f} min first." if part else "",
        steps=(
            f"Canned beans go in as they are. Dry beans are soaked, drained and boiled hard in fresh water first, "
            f"{full:.0f} min ({least:.0f} at the very least).",
        ),
        cautions=(
            Caution("warn", "Never put dry kidney, white, black or pinto beans into a slow cooker unboiled: they keep "
                    "a natural poison.", ("fda-bad-bug-book", "usu-ask-extension")),
        ),
    )  # fmt: skip


@rule("slow_cook.warm", "usda-slow-cookers")
def warm(case: Case) -> Part | None:
    """A crock that is set to keep food warm does not cook it."""
    if not only_warm(case):
        return None
    asked = case.say.temp(case.request.temperature_c or 0.0)
    return Part(
        headline=f"No. {asked} is the WARM setting: it only keeps hot what is cooked. Cook {case.food} on LOW or HIGH.",
        cautions=(
            Caution("stop", "Never cook on WARM: food stays for hours where germs grow.", ("usda-slow-cookers",)),
        ),
    )


def only_warm(case: Case) -> bool:
    """Whether food that spoils is to be cooked at a heat that only keeps it warm."""
    asked_c = case.request.temperature_c
    cooked = "perishable" in case.traits and "dairy" not in case.traits and chamber.limit(case) is None
    return cooked and asked_c is not None and chamber.COLDEST_C < asked_c < WARM_AT_MOST_C


@rule("slow_cook.safety", "usda-fsis-high-altitude", "csu-high-altitude-food-prep")
def safety(case: Case) -> Part:
    """Never frozen, never to reheat, by thermometer."""
    text = (
        "Never cook on WARM, never start frozen meat in a slow cooker or reheat in one, and keep the food over 140 °F "
        "(60 °C) once it is hot; a large piece has to pass that within 4 h."
    )
    sources = ("usda-slow-cookers", "csu-high-altitude-food-prep", "usda-fsis-high-altitude")
    return Part(cautions=(Caution("warn", text, sources),))


@rule("slow_cook.liquid", "common-practice")
def liquid(case: Case) -> Part | None:
    """Hardly any liquid leaves under the lid."""
    if case.dish_class not in LITTLE_LOST:
        return None
    return Part(steps=("Little water leaves under the lid: add none until the end.",))


NEEDS = ("elevation", "dish")
RULES = (
    boiling_point, threshold, crock, with_beans, time, published, beans, liquid, core, check, safety, way_out,
)  # fmt: skip


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules, after a refusal of what is only kept warm; dry beans boil first. Every rule for None."""
    if request is None:
        return (*RULES, boil_first, after_the_boil, warm, *chamber.RULES)
    case = Case(request)
    if from_dry(case):
        others = tuple(after_the_boil if item is time else item for item in RULES if item is not threshold)
        return (boil_first, *(others if placed(request) else ()))
    if only_warm(case):
        return (warm, *(map(chamber.instead, RULES) if placed(request) else ()))
    return chamber.guarded(request, RULES)


def needs(request: Request) -> tuple[str, ...]:
    """What must be known first; nothing for a refusal, nor for beans that have to boil first."""
    case = Case(request)
    return () if from_dry(case) or only_warm(case) else chamber.needs(request, NEEDS)
