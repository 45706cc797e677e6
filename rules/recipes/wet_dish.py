"""Wet dishes: times by how fast food softens at the boil of the place, the liquid for them, the pressure cooker."""

from __future__ import annotations

import re
from collections.abc import Iterator

from rules.baking.bands import AS_IS, Span
from rules.baking.batch import Batch, longer, rescaled
from rules.baking.change import Change, step
from rules.baking.time_shift import Shift
from rules.foods import dishes
from rules.heat.pressure import LOW_SETTING_GAUGE_PA, STOVE_TOP_GAUGE_PA, inside_c
from rules.physics import evaporation, kinetics
from rules.physics.air import pressure_pa
from rules.physics.ambient import ambient
from rules.physics.units import PSI_PER_PA
from rules.recipe import Step, TimeMark
from rules.recipes import foods, keeping
from rules.recipes.foods import raw_foods
from rules.say import number

TIME_RULE, LIQUID_RULE, PRESSURE_RULE = "wet.time", "wet.liquid", "wet.pressure"
CLASSES = {
    "braise": "collagen_cut", "beans": "dried_bean", "rice": "rice", "pasta": "pasta", "soup": "soup",
    "reduction": "general", "custard": "custard", "cheesecake": "custard",
}  # fmt: skip
# What a soup is called when it is not one.
POURED = (
    ("stock", re.compile(r"\bstock\b|\bbroth\b|\bbouillon\b", re.I)),
    ("sauce", re.compile(r"\bsauce\b|\bgravy\b|\bjus\b", re.I)),
)
POTS = ("braise", "beans", "rice", "pasta", "soup")
SET_BY_LOSS = ("sugarwork", "jam", "reduction")
BATH = re.compile(r"\b(?:water[- ]bath|bain[- ]marie|hot water|boiling water)\b", re.I)
# A pot that keeps its steam, in the oven or on the stove.
COVERED = re.compile(r"\b(?:covered|cover|lid|dutch oven|foil|tightly|casserole)\b", re.I)
UNCOVERED = re.compile(r"\buncover(?:ed)?\b", re.I)
# Words by which "cook 20 minutes" is seen to be cooking in liquid.
IN_LIQUID = re.compile(
    r"\b(?:boil(?:s|ing|ed)?|simmer(?:s|ing|ed)?|water|stock|broth|liquid|cover(?:ed)?|(?:low|gentle) heat|absorbed)\b",
    re.I,
)
WET_TIMES = ("boil", "simmer", "braise", "poach", "steam")
OVEN_POTS = ("braise", "beans", "rice")
POT_AREA_M2 = 0.06
SHORTEST_MIN = 3.0
LEAST_COOK_MIN = {"braise": 20.0, "soup": 20.0, "beans": 20.0}
# Dried beans boiled no longer are soaked quickly, or rid of their poison, which is never shortened.
BEANS_BOILED_MIN = 15.0
# Boiled for so long they are near done, and what follows in the oven is for the rest of the dish.
BEANS_SOFT_MIN = 30.0
# Rice stirred for so long is cooking, whatever the sentence calls it.
LEAST_RICE_MIN = 10.0
# "Simmer the peel 2 hours until soft": softening, in whatever is boiled down afterwards.
TENDER = re.compile(r"[^.;]*?\b(?:until|till)\b[^.;]*?\b(?:soft|tender)\b(?![- ]ball)", re.I)
# What cooks in a pot for less than that, and is softened all the same rather than fried.
STARCHES = re.compile(r"\b(?:noodles?|pasta|macaroni|orzo|rice|barley|dumplings?|potato(?:es)?|lentils?)\b", re.I)
# "Boil the water and salt 5 minutes": nothing in it softens.
_WATER_ALONE = re.compile(
    r"\b(?:boil|simmer)\s+(?:the\s+)?(?:water|brine|syrup|vinegar|sugar|wine)(?:(?:,|\s+and)\s+(?:the\s+)?\w+)*\s*$",
    re.I,
)
# How many times as much liquid a pot is ever given for a longer simmer: beyond that, look and top up.
MOST_LIQUID = 1.5


def dish_class(batch: Batch) -> str | None:
    """The dish class whose softening sets the pace of the pot; None where all of it comes cooked.

    Of what is cooked from raw the slowest decides: dried beans, then meat full of collagen.
    """
    title = batch.recipe.title
    if batch.style == "soup" and (named := next((c for c, words in POURED if words.search(title)), None)):
        return named
    if batch.style not in ("braise", "beans"):
        return CLASSES.get(batch.style, "general")
    raw = {food.dish_class for food in raw_foods(batch.recipe)}
    slow = ("dried_bean", "lentil", *foods.lists("foods")["slow_classes"])
    if found := next((name for name in slow if name in raw), None):
        return found
    if meats := raw & set(foods.lists("foods")["classes"]):
        return min(meats, key=lambda name: (kinetics.softening(name).z_k, name))
    if batch.recipe.ingredients and batch.style == "beans":
        return None
    return CLASSES[batch.style] if not batch.recipe.ingredients else "general"


def paced_by(batch: Batch, one: Step, mark: TimeMark) -> str | None:
    """The dish class that sets the pace of one time: the slowest food its own clause names, else that of the pot."""
    whole = dish_class(batch)
    own = [f for f in foods.spoken(batch.recipe, keeping.spoken_of(one, mark)) if not f.cooked]
    own_classes = {f.dish_class for f in own if foods.softens(f) and f.dish_class not in ("soup", "stock", "sauce")}
    if not own_classes and whole == "dried_bean" and mark.what in ("bake", "braise") and _softened(batch, one):
        return "general"
    if whole in own_classes or not own_classes:
        return whole
    return min(own_classes, key=lambda name: (kinetics.softening(name).z_k, name))


def _softened(batch: Batch, one: Step) -> bool:
    """Whether dried beans have had their boil in the steps before."""
    before = batch.recipe.steps[: batch.recipe.steps.index(one)]
    return any(t.what in WET_TIMES and t.high_min >= BEANS_SOFT_MIN for step in before for t in step.times)


def governs(batch: Batch, one: Step, mark: TimeMark) -> bool:
    """Whether a time is one of cooking in liquid or steam, or in a bath, and so follows the boiling point.

    A loaf baked with steam is baked; a sauce boiled down goes by the burner, since a pot loses water as fast here.
    """
    softens = batch.style not in SET_BY_LOSS or TENDER.match(one.text, mark.end)
    if mark.low_min < SHORTEST_MIN or not softens:
        return False
    said = keeping.spoken_of(one, mark)
    if mark.what in WET_TIMES:
        brief = mark.what == "boil" and mark.high_min <= BEANS_BOILED_MIN and dish_class(batch) == "dried_bean"
        alone = _WATER_ALONE.search(one.text[: mark.start])
        return not (brief or alone or (mark.what == "steam" and in_the_oven(one)))
    if mark.what == "bake":
        if batch.style in ("cheesecake", "custard"):
            return bool(BATH.search(one.text)) and "crust" not in said
        return batch.style in OVEN_POTS and bool(COVERED.search(said)) and not UNCOVERED.search(said)
    starch = STARCHES.search(one.text[: mark.start])
    least_min = SHORTEST_MIN if starch else LEAST_COOK_MIN.get(batch.style, SHORTEST_MIN)
    told = mark.what == "cook" or (mark.what == "other" and batch.style == "rice" and mark.low_min >= LEAST_RICE_MIN)
    return told and batch.style in POTS and mark.low_min >= least_min and bool(IN_LIQUID.search(one.text[: mark.end]))


def boiled_down(batch: Batch, mark: TimeMark) -> Shift | None:
    """A time in which water is boiled away: it stays, since the burner sets how fast that goes."""
    if batch.style not in SET_BY_LOSS or mark.what not in (*WET_TIMES, "reduce", "cook") or mark.low_min < SHORTEST_MIN:
        return None
    because = (
        "The burner sets how fast water boils away, and steam takes about as much heat at any elevation. Go by the "
        "volume or the thermometer, not the clock."
    )
    return Shift(AS_IS, "time", TIME_RULE, because, ("iapws-r7-97",), stays=True)


def in_the_oven(one: Step) -> bool:
    """Whether a step names an oven setting or bakes."""
    return any(t.what == "oven" for t in one.temperatures) or bool(re.search(r"\bbak(?:e|ed|ing)\b", one.text, re.I))


def softening_ratio(dish_class: str, here_c: float, there_c: float) -> Span:
    """How many times longer a class takes at here_c than at there_c [degC], with the range of its z."""
    soft = kinetics.softening(dish_class)
    value, *ends = (kinetics.rate_factor(here_c, there_c, z) for z in (soft.z_k, soft.z_low_k, soft.z_high_k))
    return Span(value, min(ends), max(ends))


def simmering(batch: Batch, paced: str | None = None) -> Shift | None:
    """A time at the boil, the simmer, in steam or in a water bath; None where nothing in the pot softens.

    paced: the dish class that sets the pace, that of the pot where not given
    """
    name = paced or dish_class(batch)
    if name is None:
        return None
    ratio = softening_ratio(name, batch.boil_here_c, batch.boil_there_c)
    if abs(ratio.value - 1) < 1e-9:
        return None
    because = (
        f"Water boils at {batch.say.temp(batch.boil_here_c)} at {batch.here}, against "
        f"{batch.say.temp(batch.boil_there_c)} at "
        f"{batch.there}, and cooking at that heat takes {longer(ratio.value)}. Go by tenderness, not the clock."
    )
    return Shift(ratio, "time", TIME_RULE, because, (kinetics.softening(name).source, "iapws-r7-97"))


def gauge_pa(one: Step) -> float:
    """Gauge pressure of a step [Pa]: as it says, else that of a low setting, else a stove-top cooker's 15 psi."""
    if one.pressures:
        return one.pressures[0].gauge_pa
    return LOW_SETTING_GAUGE_PA if "low pressure" in one.text.lower() else STOVE_TOP_GAUGE_PA


def under_pressure(batch: Batch, one: Step, paced: str | None = None) -> Shift | None:
    """A time under pressure: the gauge adds to the air outside. None where nothing in the cooker softens.

    paced: the dish class that sets the pace, that of the cooker where not given
    """
    gauge, name = gauge_pa(one), paced or dish_class(batch)
    if name is None:
        return None
    here_c, there_c = inside_c(ambient(batch.to_m), gauge), inside_c(ambient(batch.from_m), gauge)
    ratio = softening_ratio(name, here_c, there_c)
    if abs(ratio.value - 1) < 1e-9:
        return None
    because = (
        f"A gauge reads what the cooker adds to the air outside: at {batch.say.gauge(gauge)} it is "
        f"{batch.say.temp(here_c)} "
        f"inside at {batch.here}, against {batch.say.temp(there_c)} at {batch.there}."
    )
    rule_of_thumb = _rule_of_thumb(batch.to_m) / _rule_of_thumb(batch.from_m)
    span = Span(ratio.value, min(ratio.low, rule_of_thumb), max(ratio.high, rule_of_thumb))
    return Shift(
        span,
        "time",
        PRESSURE_RULE,
        because,
        ("iapws-r7-97", kinetics.softening(name).source, "usda-fsis-high-altitude"),
    )


def _rule_of_thumb(elevation_m: float) -> float:
    """The published 5 % more for each 1,000 ft above 2,000 ft, smoothly."""
    return 1 + 0.05 * max(0.0, elevation_m / 304.8 - 2)


def changes(batch: Batch) -> Iterator[Change]:
    """The liquid of a pot, and the gauge that would give the same heat inside a cooker."""
    if batch.style in ("braise", "beans", "soup"):
        yield from liquid(batch)
    for index, one in enumerate(batch.recipe.steps):
        if any(t.what == "pressure" for t in one.times):
            yield gauge_note(batch, index, one)


def pressure_option(batch: Batch) -> tuple[float, float] | None:
    """How long a stove-top cooker at 15 psi takes here [min]; None where no table has the class."""
    name = dish_class(batch)
    span = dishes.sea_level_time(None, name, "pressure_cook") if name else None
    if span is None or name is None:
        return None
    here_c, sea_c = (inside_c(ambient(m), STOVE_TOP_GAUGE_PA) for m in (batch.to_m, 0.0))
    ratio = softening_ratio(name, here_c, sea_c)
    return span.low_min * ratio.low, span.high_min * ratio.high


def liquid(batch: Batch) -> Iterator[Change]:
    """The largest liquid takes what the longer simmer boils off, reckoned for a covered pot of 28 cm (11 in)."""
    pours = [p for p in batch.parts("liquid", least_g=100.0) if p.mass_g and p.line.role != "dairy"]
    minutes, name = pot_minutes(batch), dish_class(batch)
    if not pours or not minutes or name is None or batch.boil_here_c == batch.boil_there_c:
        return
    ratio = softening_ratio(name, batch.boil_here_c, batch.boil_there_c)
    main = max(pours, key=lambda p: p.mass_g)
    extra = ratio.map(
        lambda r: evaporation.extra_liquid_ml(
            minutes * r, minutes, POT_AREA_M2, covered=True, elevation_m=batch.to_m, from_elevation_m=batch.from_m
        )
    )
    span = extra.map(lambda ml: min(MOST_LIQUID, max(1 / MOST_LIQUID, 1 + ml / main.mass_g)))
    way = "more" if extra.value > 0 else "less"
    because = (
        f"The {'longer' if batch.up else 'shorter'} simmer boils off about {batch.say.volume(abs(extra.value))} "
        f"{way}, reckoned "
        "for a covered pot of 28 cm (11 in)."
    )
    change = rescaled(
        main, span, "liquid", rule=LIQUID_RULE, because=because, sources=("ashrae-applications",), coarse=True
    )
    if change and change.way != "same":
        yield change


def pot_minutes(batch: Batch) -> float:
    """Minutes the pot stands at a simmer by the recipe, all its steps together [min]."""
    marks = [t for one in batch.recipe.steps for t in one.times if governs(batch, one, t)]
    return sum((t.low_min + t.high_min) / 2 for t in marks)


def gauge_note(batch: Batch, index: int, one: Step) -> Change:
    """The gauge that would be as hot inside here as the recipe's is there; the recipe's own stays."""
    gauge = gauge_pa(one)
    same_heat = gauge + pressure_pa(batch.from_m) - pressure_pa(batch.to_m)
    psi, same_psi = gauge * PSI_PER_PA, same_heat * PSI_PER_PA
    return Change(
        what="pressure", way="same", at=step(index), from_value=round(psi, 1), from_unit="psi", to_value=round(psi, 1),
        to_low=round(min(psi, same_psi), 1), to_high=round(max(psi, same_psi), 1), to_unit="psi", rule=PRESSURE_RULE,
        because=f"The weight or setting stays and the time changes. A gauge at {number(same_psi, 1)} psi here would "
                "be as hot inside as "
        f"{number(psi, 1)} psi at {batch.there}; use it only where your cooker is marked for it.",
        sources=("uwyo-altitude-adjusters", "iapws-r7-97"),
    )  # fmt: skip
