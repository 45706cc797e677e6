"""Preserving, as one room: which rules speak to a request, and what must be known first."""

from __future__ import annotations

from rules.book import Case, Part, Rule, rule
from rules.model import Caution, Figure, Request
from rules.preserving import (
    advice,
    boiling_water,
    freeze_dry,
    gel,
    judged,
    otherwise,
    pressure,
    process_times,
    refusals,
)
from rules.preserving.bands import empty_jars_min, near_edge, whole_feet
from rules.preserving.gate import WITHOUT_PROCESS, is_drying, refusal, tells_printed
from rules.preserving.vessel import PRESSURE, called, food_of, vessel
from rules.said import exact_duration, number, sentences, together

READ_OFF = ("barometer", "boil_test", "place", "assumed")
say = sentences("preserving/room")


@rule("preserve.tested_recipe", "usda-aib-539", "nchfp")
def tested_recipe(case: Case) -> Part | None:
    """What an answer about jars says that is no refusal and names no recipe: a tested one, and somebody to ask."""
    if case.request.subject not in WITHOUT_PROCESS and tells_printed(case.request):
        return None
    return Part(cautions=(Caution("warn", say("tested-recipe"), ("usda-aib-539", "nchfp")),))


@rule("preserve.which_band", "usda-aib-539")
def which_band(case: Case) -> Part | None:
    """An elevation that is close under a band, or was not read from a map: the higher band is the safe one."""
    added = process_times.added(process_times.LONG, case.here.elevation_m)
    if case.request.elevation_m is None or added is None:
        return None
    edge = near_edge(added.usda, whole_feet(case.here.elevation_m))
    if not edge and case.request.elevation_from not in READ_OFF and case.request.pressure_pa is None:
        return None
    under = say("under-band", high_ft=number(added.usda.high_ft)) if edge and added.usda.high_ft is not None else None
    return Part(cautions=(Caution("warn", together(under, say("from-a-map")), ("usda-aib-539",)),))


@rule("preserve.unnamed_food", "usda-aib-539")
def unnamed_food(case: Case) -> Part | None:
    """No food was named: for which foods boiling water does, and for which it never does."""
    if food_of(case.request).named or vessel(case.request) == PRESSURE:
        return None
    return Part(cautions=(Caution("stop", say("unnamed-food"), ("usda-aib-539",)),))


@rule("preserve.demands", "usda-aib-539")
def demands(case: Case) -> Part | None:
    """What the tested process asks of the food, before it goes into the jar."""
    asked = food_of(case.request).demands
    return Part(steps=(asked,)) if asked else None


@rule("preserve.tested_food", "usda-aib-539")
def tested_food(case: Case) -> Part | None:
    """Where it stands that the food has a tested process in this canner."""
    food = food_of(case.request)
    if not food.named or tells_printed(case.request):
        return None
    because = say("tested-food", food=called(case.request), vessel=vessel(case.request))
    return Part(because=because, sources=food.sources)


@rule("preserve.jar_sterilising", "usda-aib-539")
def jar_sterilising(case: Case) -> Part | None:
    """Empty jars: how long to boil them here, and when it is not needed."""
    if case.request.subject != "jar_sterilising":
        return None
    time = empty_jars_min(case.here.elevation_m)
    return Part(
        headline=say("jars-headline", time=exact_duration(time), place=case.place),
        figures=(Figure("sterilising_time", say("jars-label"), time, "min", sea_level=10.0),),
        steps=(say("jars-upright"), say("jars-lids")),
        because=say("jars-because"),
    )


EVERY: tuple[Rule, ...] = (
    refusals.refused,
    jar_sterilising,
    freeze_dry.blanching,
    freeze_dry.hung,
    freeze_dry.jerky,
    freeze_dry.sun_drying,
    freeze_dry.drying,
    boiling_water.process_time,
    boiling_water.printed_time,
    boiling_water.added_time,
    demands,
    gel.gel_point,
    pressure.pressure,
    pressure.low_acid,
    pressure.other_canner,
    boiling_water.acid,
    boiling_water.acid_by_recipe,
    boiling_water.acid_by_fermenting,
    boiling_water.steam,
    boiling_water.water_over_jars,
    tested_food,
    unnamed_food,
    which_band,
    tested_recipe,
)
SETTING: tuple[Rule, ...] = (gel.gel_point, gel.jars_after, tested_recipe)
ALONE: dict[str | None, tuple[Rule, ...]] = {
    "jar_sterilising": (jar_sterilising, which_band, tested_recipe),
    "blanching": (freeze_dry.blanching,),
    "drying": (freeze_dry.hung, freeze_dry.jerky, freeze_dry.sun_drying, freeze_dry.drying),
    "gel_point": (gel.gel_point,),
    "over_boiled_jam": (advice.over_boiled,),
    **dict.fromkeys(advice.ADVICE, (advice.advice,)),
    **dict.fromkeys(otherwise.WAYS, (otherwise.otherwise,)),
}
REFUSED: tuple[Rule, ...] = (refusals.refused,)
JUDGED: tuple[Rule, ...] = (judged.judged, demands, boiling_water.acid, boiling_water.acid_by_recipe, which_band)


def rules_for(request: Request | None) -> tuple[Rule, ...]:
    """The rules that may speak: a refusal, or a subject that is not about a process, stands alone."""
    if request is None:
        return EVERY
    reason = refusal(request)
    if reason in judged.OF_TIME and judged.judges(request) and judged.verdict_on(Case(request)):
        return JUDGED
    if reason:
        return REFUSED
    if gel.gels(request) and not gel.about_jars(request) and request.subject in (None, "gel_point"):
        return SETTING
    return ALONE["drying"] if is_drying(request) else ALONE.get(request.subject, EVERY)


def needs(request: Request) -> tuple[str, ...]:
    """The elevation, except for what is refused or advised at every elevation, and for where jam sets."""
    anywhere = refusal(request) or request.subject in (*advice.ADVICE, *otherwise.WAYS, "drying", "jerky")
    return () if anywhere or rules_for(request) == SETTING else ("elevation",)
