"""Whether anything changes: yes or no first, then by how much, in the time or in the temperature, as was asked."""

from __future__ import annotations

from rules.book import Part, rule
from rules.foods import sugar
from rules.forms import Asked
from rules.heat.compared import Compared, compared
from rules.heat.headline import alike, doing, known, middle
from rules.heat.verdict import opened
from rules.heat.wet import pace_words
from rules.model import Figure
from rules.physics import kinetics
from rules.said import Words, duration, number, sentences, temp_drop

say = sentences("forms/changes")

OF_TIME, OF_HEAT, OF_AMOUNT = ("longer", "shorter"), ("hotter", "cooler"), ("more_of", "less_of")
FOLLY = "folly"
LITTLE = 0.1
# less than this share, and nobody would call it a change
NOTICED = 0.02
# what an open pot is
OPEN_POTS = ("boil", "simmer", "braise", "stew", "steam", "bake", "slow_cook")


def opening(asked: Asked, way: str, *, little: bool = False, counted: bool = False) -> str:
    """How the answer opens: yes, little, no; the way itself where either may be meant; none where how much is asked.

    way: which way it goes; counted: whether it was asked by how much
    """
    wanted, forms = asked.request.asked_way, asked.request.forms
    if counted or ("what_is" in forms and "is_ok" not in forms):
        return "none"
    if wanted == "either":
        return way
    fits = way == wanted if wanted in (*OF_TIME, *OF_HEAT, "same") else way != "same"
    if FOLLY in forms:
        # whoever asks whether it was a mistake is told no where it was right
        return "no" if fits else "yes"
    if not fits:
        return "no"
    return "little" if little and way != "same" else "yes"


def about_heat(asked: Asked) -> bool:
    """Whether a temperature is asked about, and not a time."""
    request = asked.request
    if request.asked_way in (None, *OF_TIME, *OF_AMOUNT):
        return False
    return request.asked_way in OF_HEAT or request.topic not in ("time", "pressure")


@rule("changes.microwave", "usda-fsis-high-altitude")
def microwave(asked: Asked) -> Part | None:
    """A microwave oven: the power is the same, the time starts at one end of what is given."""
    here, request = asked.answer.figure("cook_time"), asked.request
    if (
        request.asked_way in (None, *OF_AMOUNT)
        or request.method != "microwave"
        or here is None
        or request.topic != "time"
    ):
        return None
    base = asked.answer.figure("baseline_time") or here
    way = "longer" if here.value > base.value * (1 + NOTICED) else "same"
    start = here.low if way == "same" else base.high
    return Part(
        headline=opened(
            _opening(asked, way),
            say("microwave", way=way, start=duration(start or here.value), here=middle(here), place=asked.case.place),
        )
    )


def _opening(asked: Asked, way: str) -> str:
    plain = way == "same" and asked.request.asked_way == "any" and not counts(asked)
    return "hardly" if plain else opening(asked, way, little=True, counted=counts(asked))


@rule("changes.heat", "common-practice", "iapws-r7-97")
def heat(asked: Asked) -> Part | None:
    """Whether a temperature changes: what is set, and what the liquid, the steam or the boil stand at."""
    if "poured" in asked.case.traits and asked.request.temperature_c is not None and about_heat(asked):
        # a sauce is done at a reading of its own, whatever its pan stands at
        read = asked.otherwise(topic="doneness", method=None, forms=("changes",)).answer.headline
        return Part(headline=read) if read else None
    found = of_heat(asked) if about_heat(asked) and not asked.judged else None
    if found is None or (asked.request.topic == "sugar_stage" and not stage_label(asked)):
        return None
    said = opening(asked, found.way, counted=counts(asked) and found.way != "same")
    return Part(headline=opened(said, _heat(asked, found)))


def of_heat(asked: Asked) -> Compared | None:
    """The temperature asked about, here against the baseline."""
    request = asked.request
    from_m = request.from_elevation_m
    base = asked.otherwise(elevation_m=from_m, from_elevation_m=None, pressure_pa=None).answer if from_m else None
    if request.topic == "sugar_stage":
        return compared(asked.answer, base, _stage(asked))
    if request.topic == "doneness":
        return compared(asked.answer, base, ("safe_temperature", "core_temperature"))
    return compared(asked.answer, base)


def _stage(asked: Asked) -> tuple[str, ...]:
    """The figure of the one stage that is asked about; none where it is all of them."""
    ids = tuple(f.id for f in asked.answer.figures if f.id.endswith("_temperature"))
    return ids if len(ids) == 1 else ()


def _heat(asked: Asked, found: Compared) -> Words:
    case = asked.case
    return say(
        "heat",
        thing="stage" if asked.request.topic == "sugar_stage" else found.thing,
        stage=stage_label(asked),
        way=found.way,
        temp=found.span,
        moved=temp_drop(abs(found.moved_k)),
        doing=_doing(asked),
        place=case.place,
        baseline=case.baseline,
        and_time=and_time(asked),
    )


def stage_label(asked: Asked) -> str:
    """What the one stage of sugar is called that is asked about; empty where none is."""
    one = sugar.wanted(asked.case)
    return one.label if one and asked.request.topic == "sugar_stage" else ""


def _doing(asked: Asked) -> Words:
    """What is done to the dish, or the dish alone where no method is asked about."""
    request = asked.request
    return (
        doing(asked.case, request.method)
        if request.method and request.topic in ("time", "temperature")
        else (asked.case.food)
    )


def and_time(asked: Asked) -> Words:
    """What becomes of the time, to stand behind a temperature; empty where it stays or is not known."""
    if asked.time is None or asked.request.topic != "temperature" or alike(*asked.time):
        return ""
    here, base = asked.time
    way = "longer" if here.value > base.value else "shorter"
    return say("and-time", way=way, here=duration(here.value), base=duration(base.value))


@rule("changes.time", "common-practice", "computed")
def time(asked: Asked) -> Part | None:
    """Whether a time changes, and by how much."""
    if asked.request.asked_way in (None, *OF_AMOUNT) or asked.request.topic not in ("time", "temperature", "pressure"):
        return None
    if out_of_reach(asked):
        return Part(headline=opened(opening(asked, "longer", counted=counts(asked)), asked.answer.headline))
    if asked.time is None:
        return _factor(asked)
    here, base = asked.time
    ratio = here.value / base.value
    way = way_of(here, base)
    said = opening(asked, way, little=abs(ratio - 1) <= LITTLE, counted=counts(asked) and way != "same")
    return Part(headline=opened(said, _time(asked, here, base, way)))


def way_of(here: Figure, base: Figure) -> str:
    """Which way a time goes: longer, shorter or same."""
    ratio = here.value / base.value
    if duration(here.value) == duration(base.value) or abs(ratio - 1) < NOTICED:
        return "same"
    return "longer" if ratio > 1 else "shorter"


def _time(asked: Asked, here: Figure, base: Figure, way: str) -> Words:
    return say(
        "time",
        way=way,
        pace=pace_words(here.value / base.value),
        here=middle(here),
        base=known(asked.case, base),
        doing=_doing_now(asked),
        place=asked.case.place,
        baseline=asked.case.baseline,
        and_oven=and_oven(asked),
    )


def _doing_now(asked: Asked) -> Words:
    return doing(asked.case, asked.request.method) if asked.request.method else asked.case.food


def and_oven(asked: Asked) -> Words:
    """What the oven is set to, to stand behind a time in it; empty where there is none."""
    found = compared(asked.answer, ids=("oven",))
    if found is None:
        return ""
    return say("and-oven", way=found.way, setting=found.span)


def _factor(asked: Asked) -> Part | None:
    """Where no time is known: by how much to lengthen the cook's own."""
    factor = asked.answer.figure("time_factor")
    if factor is None:
        return None
    way = "same" if abs(factor.value - 1) < NOTICED else "longer" if factor.value > 1 else "shorter"
    text = say(
        "factor",
        way=way,
        pace=pace_words(factor.value),
        factor=number(factor.value, 1),
        low=number(factor.low or factor.value, 1),
        high=number(factor.high or factor.value, 1),
        doing=_doing_now(asked),
        place=asked.case.place,
        baseline=asked.case.baseline,
    )
    return Part(headline=opened(opening(asked, way, counted=counts(asked) and way != "same"), text))


def out_of_reach(asked: Asked) -> bool:
    """Whether it is a food that an open pot here practically does not soften."""
    case = asked.case
    threshold_c = kinetics.softening(case.dish_class).threshold_c
    return threshold_c is not None and case.request.method in OPEN_POTS and case.here.boiling_c < threshold_c


def counts(asked: Asked) -> bool:
    """Whether it is asked by how much, and not whether."""
    return "more" in asked.request.forms


RULES = (microwave, heat, time)
