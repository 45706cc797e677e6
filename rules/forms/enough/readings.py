"""A temperature that the cook reads or keeps: in food, in a bath, in water, in sugar, in the refrigerator."""

from __future__ import annotations

from rules.book import Part, rule
from rules.foods.sugar import boil_reading_c, stages
from rules.forms import Asked, opens
from rules.heat import done_readings
from rules.heat.compared import ends
from rules.heat.headline import about, doing
from rules.heat.verdict import opened
from rules.methods.sous_vide import ceiling_c
from rules.model import Caution
from rules.safety.holding_limits import limit_c
from rules.said import Words, exact_duration, sentences, temp, temp_span, yes

say = sentences("forms/enough")

SET, OF_SAFETY = "set", frozenset(("safe", "harm"))
COMBI = "combi_oven"
WET = ("boil", "steam", "simmer", "stew", "braise", "poach")
DRINKS = ("tea", "coffee")
SIMMERED = ("simmer", "stew", "braise", "poach")
# two thermometers that agree, and how far under the boil is no simmer any more
SAME_BOIL_K, SIMMER_AT_LEAST_K = 1.5, 12.0
# hotter is no water in an open pot
WATER_AT_MOST_C = 105.0
# what a temperature may be of that is no water
ELSEWHERE = ("core", "hold", "fridge", "bath")


@rule("enough.cold", "fda-food-code-2022")
def cold(asked: Asked) -> Part | None:
    """A refrigerator, which is as cold as it is set anywhere."""
    asked_c, most_c = asked.request.temperature_c, limit_c("cold_hold")
    if asked_c is None or asked.request.temperature_of != "fridge":
        return None
    verdict = "yes" if asked_c <= most_c + 0.05 else "no"
    return Part(headline=opened(verdict, say("cold", verdict=verdict, asked=temp(asked_c), most=temp(most_c))))


@rule("enough.outdoors", "common-practice", "fda-food-code-2022")
def outdoors(asked: Asked) -> Part | None:
    """The cold outside, which no thermostat holds, and where a full pot cools too slowly."""
    if asked.request.temperature_of != "outdoors" or asked.request.temperature_c is None:
        return None
    told = say("outdoors", asked=temp(asked.request.temperature_c), most=temp(limit_c("cold_hold")))
    return Part(headline=opened("no", told), cautions=(Caution("warn", say("outdoors-pot")),))


@rule("enough.core", "usda-fsis-safe-temperatures", "fda-food-code-2022")
def core(asked: Asked) -> Part | None:
    """A reading of the centre, where how long or how hot was asked: judged as doneness is."""
    request = asked.request
    if request.temperature_of != "core" or request.topic not in ("time", "temperature") or request.dish_class is None:
        return None
    other = asked.otherwise(topic="doneness", method=None)
    if not other.judged:
        return None
    stops = tuple(c for c in other.answer.cautions if c.level == "stop")
    return Part(headline=other.answer.headline, cautions=stops)


@rule("enough.reading", "common-practice", "iapws-r7-97")
def reading(asked: Asked) -> Part | None:
    """A reading of the centre of bread, cake, custard or roots against what cooks call done here."""
    request, case = asked.request, asked.case
    of = done_readings.reading(request.dish, case.dish_class)
    if request.topic != "doneness" or request.temperature_c is None or of is None:
        return None
    if asked.judged and not is_set_past_safety(asked, of):
        return None
    if "can_it" in request.forms and of.bound == "boil" and request.temperature_c > case.here.boiling_c:
        return None
    low_c, high_c = of.here(case.here, case.sea)
    stands = (
        "under" if request.temperature_c < low_c - 0.6 else "over" if request.temperature_c > high_c + 0.6 else "in"
    )
    text = say(
        "reading",
        stands=stands,
        asked=temp(request.temperature_c),
        food=case.food,
        done=temp_span(low_c, high_c),
        place=case.place,
        stays="yes" if of.bound == SET else "no",
    )
    return Part(headline=opened(opens(asked, "yes" if stands == "in" else "no"), text))


def is_set_past_safety(asked: Asked, of: done_readings.Reading) -> bool:
    """Whether a reading that is safe is asked about as what sets the dish, and not as what makes it safe."""
    safe, asked_c = asked.answer.figure("safe_temperature"), asked.request.temperature_c
    hot_enough = safe is not None and asked_c is not None and asked_c >= safe.value
    return of.bound == SET and hot_enough and OF_SAFETY.isdisjoint(asked.request.forms)


@rule("enough.bath", "baldwin-sous-vide", "computed")
def bath(asked: Asked) -> Part | None:
    """A sous vide bath against the boil here, and how long it has to hold the food."""
    request, case = asked.request, asked.case
    if request.method != "sous_vide" or request.temperature_c is None or request.time_min is not None:
        return None
    top_c, after = ceiling_c(case.here), asked.answer.figure("pasteurised_after")
    reach = "over" if request.temperature_c > top_c else "under"
    text = say(
        "bath",
        reach=reach,
        asked=temp(request.temperature_c),
        top=temp(top_c),
        boil=temp(case.here.boiling_c),
        place=case.place,
        held="yes" if after and reach == "under" else "no",
        after=exact_duration(after.value) if after else "",
    )
    return Part(headline=opened(opens(asked, "yes" if reach == "under" else "no"), text))


@rule("enough.hold", "fda-food-code-2022", "iapws-r7-97")
def hold(asked: Asked) -> Part | None:
    """Food that is held hot: whether it is hot enough, and what the boil leaves room for."""
    request, case = asked.request, asked.case
    asked_c = request.temperature_c
    if asked_c is None or (request.method != "hold" and request.temperature_of != "hold"):
        return None
    by_hold = request.method == "hold" and request.topic in ("time", "temperature")
    held = asked if by_hold else asked.otherwise(topic="temperature", method="hold")
    least = held.answer.figure("hold_temperature")
    stops = tuple(c for c in held.answer.cautions if c.level == "stop")
    if least is None or request.elevation_m is None or not least.value - 0.05 <= asked_c < case.here.boiling_c:
        return None if held is asked else Part(headline=held.answer.headline, cautions=stops)
    text = say("hold", asked=temp(asked_c), boil=temp(case.here.boiling_c), place=case.place, least=temp(least.value))
    return Part(headline=opened("yes", text))


@rule("enough.drink", "common-practice", "iapws-r7-97")
def drink(asked: Asked) -> Part | None:
    """Whether the boil is hot enough for tea or coffee: as their brewing is answered."""
    if asked.request.topic != "boiling_point" or asked.case.dish_class not in DRINKS:
        return None
    return Part(headline=asked.otherwise(topic="temperature", method="brew").answer.headline)


@rule("enough.boil", "iapws-r7-97", "us-std-atm-1976")
def boil(asked: Asked) -> Part | None:
    """Water or steam at a temperature, against the boil here."""
    request, case = asked.request, asked.case
    asked_c = request.temperature_c
    if asked_c is None or asked_c > WATER_AT_MOST_C or request.temperature_of in ELSEWHERE:
        return None
    if request.topic != "boiling_point" and request.method not in WET:
        return None
    over_k = asked_c - case.here.boiling_c
    stands = "over" if over_k > SAME_BOIL_K else "at" if over_k >= -SAME_BOIL_K else "under"
    simmers = request.method in SIMMERED and over_k > -SIMMER_AT_LEAST_K
    if COMBI in request.equipment and stands == "over":
        return Part(headline=say("combi", asked=temp(asked_c), boil=temp(case.here.boiling_c), place=case.place))
    text = say(
        "boil",
        stands="simmer" if stands == "under" and simmers else stands,
        asked=temp(asked_c),
        boil=temp(case.here.boiling_c),
        place=case.place,
        and_time=_and_dish(asked),
    )
    return Part(
        headline=opened(opens(asked, "yes" if stands == "at" or (stands == "under" and simmers) else "no"), text)
    )


def _and_dish(asked: Asked) -> Words:
    """What it takes of the dish, to stand behind the boil; empty where none was named."""
    if asked.time is None or asked.request.dish is None or asked.request.method is None:
        return ""
    return say("and-dish", time=about(asked.time[0]), doing=doing(asked.case, asked.request.method))


def _stage_moves(asked: Asked, asked_c: float, here_c: float) -> Part:
    """Whether a recipe's reading changes with the elevation, and to what."""
    moves = abs(here_c - asked_c) >= SAME_BOIL_K
    values = {"asked": temp(asked_c), "here": temp(here_c), "place": asked.case.place, "baseline": asked.case.baseline}
    return Part(headline=opened("yes" if moves else "no", say("stage-moves", moves=yes(moves), **values)))


@rule("enough.stage", "common-practice", "csu-candy-high-elevation")
def stage(asked: Asked) -> Part | None:
    """A reading of boiled sugar against the stage that is wanted."""
    request, asked_c = asked.request, asked.request.temperature_c
    ids = [f for f in asked.answer.figures if f.id.endswith("_temperature") and f.id != "recipe_temperature"]
    if request.topic != "sugar_stage" or asked_c is None or len(ids) != 1 or boil_reading_c(asked.case) is not None:
        return None
    low_c, high_c = ends(ids[0])
    stands = "under" if asked_c < low_c - 0.6 else "over" if asked_c > high_c + 0.6 else "in"
    own = asked.answer.figure("recipe_temperature")
    if own and request.asked_way == "any":
        return _stage_moves(asked, asked_c, own.value)
    moved = own and request.subject not in stages() and low_c <= own.value <= high_c
    reached = stands == "over" and "can_it" in request.forms
    text = say(
        "stage",
        stands="reached" if reached else stands,
        asked=temp(asked_c),
        stage=stages()[ids[0].id.removesuffix("_temperature")].label,
        here=temp(own.value) if own and moved else temp_span(low_c, high_c),
        place=asked.case.place,
    )
    return Part(headline=opened(opens(asked, "yes" if stands == "in" or reached else "no"), text))
