"""Slow cook: an electric crock that creeps up to just under the boil, which is lower here."""

from __future__ import annotations

from dataclasses import replace

from rules.book import Case, Part, Rule, celsius, rule
from rules.foods.beans import BOIL_MIN, bare, first_boil, poisonous_dry
from rules.heat import chamber
from rules.heat.cook_times import factor_figure, moved_span, time_figures
from rules.heat.crock import crock_min
from rules.heat.dry import check, core, heated_through
from rules.heat.equipment import start_on_high
from rules.heat.headline import takes
from rules.heat.pots import SLOW_COOK
from rules.heat.way_out import way_out
from rules.heat.wet import Heats, WetTime, pace_words, threshold, wet_time
from rules.heat.where_water_boils import boiling_point
from rules.model import Caution, Figure, Request
from rules.physics import kinetics
from rules.physics.units import FT_PER_M, round_time_min, to_c
from rules.safety.holding_limits import placed
from rules.said import duration_span, number, sentences, temp, together

ADVISED_C = to_c(200)
WARM_AT_MOST_C = to_c(166)
LOW_MIN_PER_FT = 60 / 4000
LONG_MIN = 240.0
HIGH_FT = 2000
say = sentences("methods/slow_cook")


def crock_time(case: Case) -> WetTime | None:
    """Time in the crock: the heat-up as at the baseline, the rest slowed as in any pot under the boil."""
    heats: Heats = SLOW_COOK.heats(case)
    full = wet_time(case, heats)
    if full is None:
        return None
    soft, mid = kinetics.softening(case.dish_class), full.base_mid_min
    ends = [kinetics.rate_factor(heats.here_c, heats.there_c, z) for z in (soft.z_low_k, soft.z_high_k)]
    least, likely, most = (crock_min(mid, factor) / mid for factor in (min(ends), full.factor, max(ends)))
    base = full.base_low_min, full.base_high_min
    return WetTime(*base, *moved_span(base, (least, likely, most)), likely, full.source, full.stated)


@rule("slow_cook.crock", "csu-high-altitude-food-prep", "computed")
def crock(case: Case) -> Part:
    """Where the crock ends up, and the published 200 degF that may be out of reach."""
    here_c, sea_c = SLOW_COOK.working_c(case.here), SLOW_COOK.working_c(case.sea)
    why = say(
        "advised",
        advised=temp(ADVISED_C),
        boil=temp(case.here.boiling_c),
        reach="out" if case.here.boiling_c < ADVISED_C else "in",
    )
    asked = case.request.topic == "temperature"
    return Part(
        figures=(celsius("liquid_temperature", say("crock-label"), here_c, sea_c),),
        headline=say("crock-headline", place=case.place, end=temp(here_c)) if asked else "",
        steps=(start_on_high(), say("start-thawed"), say("lid-on")),
        because="" if "slow_cooker" in case.request.equipment else why,
    )


@rule("slow_cook.time", "common-practice", "usu-ask-extension")
def time(case: Case) -> Part:
    """How long it takes here: heat-up, and then the slower simmer."""
    slow = crock_time(case)
    soft = kinetics.softening(case.dish_class)
    if slow is None:
        factor = kinetics.rate_factor(SLOW_COOK.working_c(case.here), SLOW_COOK.working_c(case.there), soft.z_k)
        low, likely, high = sorted((1.0, (1 + factor) / 2, factor))
        return Part(figures=(factor_figure(case, likely, low, high),), because=say("no-time"))
    base = (slow.base_low_min, slow.base_high_min)
    figures = time_figures(case, base, (slow.low_min, slow.likely_min, slow.high_min))
    done = "hot" if heated_through(case.dish_class) else "soft"
    return Part(
        figures=figures,
        headline=takes(case, "slow_cook", figures) if case.request.topic == "time" else "",
        because=say("slower", done=done, baseline=case.baseline, pace=pace_words(slow.factor))
        if case.moved
        else say("same", baseline=case.baseline),
        sources=tuple(dict.fromkeys((soft.source, slow.source))),
    )


@rule("slow_cook.published", "usu-ask-extension")
def published(case: Case) -> Part | None:
    """What extension answers add: an hour on LOW for every 4,000 ft."""
    slow, feet = crock_time(case), case.here.elevation_m * FT_PER_M
    if slow is None or case.there.elevation_m or feet < HIGH_FT or slow.base_low_min < LONG_MIN:
        return None
    low, high = (t + LOW_MIN_PER_FT * feet for t in (slow.base_low_min, slow.base_high_min))
    middle, *ends = (round_time_min(t) for t in ((low + high) / 2, low, high))
    relation = "less" if high < slow.low_min else "overlaps" if low <= slow.high_min else "more"
    return Part(
        figures=(Figure("extension_time", say("published-label"), middle, "min", *ends),),
        because=say("published", time=duration_span(low, high), relation=relation),
    )


@rule("slow_cook.boil_first", "fda-bad-bug-book", "usu-ask-extension")
def boil_first(case: Case) -> Part | None:
    """Dry beans that poison until they have boiled: only after a hard boil."""
    if not poisonous_dry(case):
        return None
    least, full = BOIL_MIN
    slow = crock_time(case) if placed(case.request) else None
    return Part(
        headline=say(
            "boil-first-headline",
            beans=bare(case),
            full=number(full),
            then="crock" if slow else "nothing",
            time=duration_span(slow.low_min, slow.high_min) if slow else "",
            place=case.place,
        ),
        figures=(Figure("first_boil", say("boil-first-label"), full, "min", least, full),),
        steps=(first_boil(case),),
        because=say("boil-first"),
        cautions=(Caution("stop", say("never-dry", least=number(least)), ("fda-bad-bug-book", "usu-ask-extension")),),
    )


@rule("slow_cook.after_the_boil", "common-practice", "usu-ask-extension")
def after_the_boil(case: Case) -> Part:
    """The time in the crock of beans that have boiled first."""
    part = time.work(case) or Part()
    figures = tuple(replace(f, label=say("then-label")) if f.id == "cook_time" else f for f in part.figures)
    return replace(part, figures=figures, headline="")


@rule("slow_cook.beans", "usu-ask-extension")
def beans(case: Case) -> Part | None:
    """Dried beans: soaked first, and longer."""
    if case.dish_class != "dried_bean":
        return None
    boiled = (say("boil-away"),) if "cyanogenic" in case.traits else ()
    return Part(steps=() if poisonous_dry(case) else (say("soak"), *boiled), because=say("beans"))


@rule("slow_cook.with_beans", "fda-bad-bug-book", "usu-ask-extension")
def with_beans(case: Case) -> Part | None:
    """A dish with beans in it: dry ones boiled first, canned ones as they are."""
    if "lectin" not in case.traits or poisonous_dry(case):
        return None
    least, full = map(number, BOIL_MIN)
    part = time.work(case) if case.request.topic == "time" and crock_time(case) else None
    text = say("never-dry-in-it")
    return Part(
        headline=together(part.headline, say("any-dry-beans", full=full)) if part else "",
        steps=(say("canned-beans", full=full, least=least),),
        cautions=(Caution("warn", text, ("fda-bad-bug-book", "usu-ask-extension")),),
    )


@rule("slow_cook.warm", "usda-slow-cookers")
def warm(case: Case) -> Part | None:
    """A crock that is set to keep food warm does not cook it."""
    if not only_warm(case):
        return None
    return Part(
        headline=say("warm-headline", asked=temp(case.request.temperature_c or 0.0), food=case.food),
        cautions=(Caution("stop", say("never-on-warm"), ("usda-slow-cookers",)),),
    )


def only_warm(case: Case) -> bool:
    """Whether food that spoils is to be cooked at a heat that only keeps it warm."""
    asked_c = case.request.temperature_c
    cooked = "perishable" in case.traits and "dairy" not in case.traits and chamber.limit(case) is None
    return cooked and asked_c is not None and chamber.COLDEST_C < asked_c < WARM_AT_MOST_C


@rule("slow_cook.safety", "usda-fsis-high-altitude", "csu-high-altitude-food-prep")
def safety(case: Case) -> Part:
    """Never frozen, never to reheat, by thermometer."""
    sources = ("usda-slow-cookers", "csu-high-altitude-food-prep", "usda-fsis-high-altitude")
    return Part(cautions=(Caution("warn", say("safety"), sources),))


@rule("slow_cook.liquid", "common-practice")
def liquid(case: Case) -> Part | None:
    """Hardly any liquid leaves under the lid."""
    return Part(steps=(say("no-more-liquid"),)) if "keeps_liquid" in case.traits else None


NEEDS = ("elevation", "dish")
RULES = (
    boiling_point, threshold, with_beans, crock, time, published, beans, liquid, core, check, safety, way_out,
)  # fmt: skip


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules, after a refusal of what is only kept warm; dry beans boil first. Every rule for None."""
    if request is None:
        return (*RULES, boil_first, after_the_boil, warm, *chamber.RULES)
    case = Case(request)
    if poisonous_dry(case):
        others = tuple(after_the_boil if item is time else item for item in RULES if item is not threshold)
        return (boil_first, *(others if placed(request) else ()))
    if only_warm(case):
        return (warm, *(map(chamber.instead, RULES) if placed(request) else ()))
    return chamber.guarded(request, RULES)


def needs(request: Request) -> tuple[str, ...]:
    """What must be known first; nothing for a refusal, nor for beans that have to boil first."""
    case = Case(request)
    return () if poisonous_dry(case) or only_warm(case) else chamber.needs(request, NEEDS)
