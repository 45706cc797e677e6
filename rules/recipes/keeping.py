"""What conversion leaves alone for safety's sake: the minutes that make food safe, and how hot it must be inside."""

from __future__ import annotations

import re
from collections.abc import Iterator

from rules.baking import bands, inside
from rules.baking.batch import Batch
from rules.baking.change import Shift
from rules.baking.mark import TimeAt, of_time
from rules.book import Part, rule
from rules.heat.done_readings import UNDER_BOIL_K
from rules.model import Caution
from rules.physics.units import to_c
from rules.recipe import Step, TempMark, TimeMark
from rules.recipes.foods import EGG, Food, hazard, named_foods, raw_foods, softens, spoken
from rules.recipes.outcome import Outcome
from rules.remembered import remembered
from rules.safety import SafeTemperature, safe_temperature
from rules.said import Said, listed, sentences, temp

SOURCE = "usda-fsis-safe-temperatures"
SHELLFISH, SHELLFISH_SOURCE, CUSTARD = "shellfish", "fda-food-code-2022", "custard"
# Eggs boiled or poached are made safe by their minutes, whatever else the recipe is.
EGG_TIMES = ("boil", "simmer", "poach", "steam", "pressure")
# A reading of the centre that is named for safety lies between these [degC].
LEAST_C, MOST_C = to_c(120), to_c(212)
# The end of what a sentence says before a figure and after it.
ALONE = re.compile(r"\b(?:boil|simmer|steam|cook|poach)\s+(?:the\s+|your\s+)?(?:\w+\s+)?$", re.I)
_SENTENCE_END = re.compile(r"[.;!?](?:\s|$)")
say = sentences("recipes/keeping")


@rule("safety.never_shorter", SOURCE, SHELLFISH_SOURCE)
def never_shorter(at: TimeAt) -> Part | None:
    """A time stays where it would be shorter and makes a food safe to eat."""
    shift = at.shift
    if shift is None or shift.span.value >= 1 or shift.stays or at.mark.what == "rise":
        return None
    food = cooked_through(at)
    if food is None:
        return None
    because = say("never-shorter", food=food.name, safe=_reach(safe_of(food)))
    return Part(shift=Shift(bands.AS_IS, "time", stays=True), because=because, sources=_sources(food))


def safe_of(food: Food) -> SafeTemperature:
    """The row of the chart for a food that heat must make safe."""
    row = hazard(food, CUSTARD) or safe_temperature(None, EGG)
    if row is None:
        raise ValueError(f"{food.name} has no safe temperature")
    return row


def _sources(food: Food) -> tuple[str, ...]:
    return (SHELLFISH_SOURCE,) if food.dish_class == SHELLFISH else (SOURCE,)


@remembered(by=of_time)
def cooked_through(at: TimeAt) -> Food | None:
    """What a time makes safe: a food of its own clause, else one of the recipe, which may be in the pot by then.

    "Boil the noodles 8 minutes" cooks the noodles alone.
    """
    batch, mark = at.batch, at.mark
    said = spoken_of(at.step, mark)
    own = spoken(batch.recipe, said)
    foods = [food for food in own if hazard(food, batch.style)]
    if mark.what in EGG_TIMES:
        foods += [food for food in own if food.dish_class == EGG]
    if not foods and any(softens(food) and ALONE.search(said[: food.start]) for food in own):
        return None
    return next((food for food in foods or named_foods(batch.recipe) if foods or hazard(food, batch.style)), None)


def spoken_of(one: Step, mark: TimeMark) -> str:
    """The words of a time: its sentence, from the time before it to the time after it."""
    before = max((t.end for t in one.times if t.end <= mark.start), default=0)
    after = min((t.start for t in one.times if t.start >= mark.end), default=len(one.text))
    lead, tail = one.text[before : mark.start], one.text[mark.end : after]
    return f"{_SENTENCE_END.split(lead)[-1]} {_SENTENCE_END.split(tail)[0]}"


@rule("safety.by_thermometer", SOURCE, SHELLFISH_SOURCE)
def by_thermometer(done: Outcome) -> Part | None:
    """The safe temperatures of what is cooked from raw, where the recipe names no temperature of the centre."""
    batch = done.batch
    if any(named_inside(t) for one in batch.recipe.steps for t in one.temperatures):
        return None
    risky = [(food, safe) for food in raw_foods(batch.recipe) if (safe := hazard(food, batch.style))]
    found = {safe.kind: (food, safe) for food, safe in reversed(risky)}
    if not found or not _cooks(batch):
        return None
    foods = listed((say("food", food=f.name, safe=_reach(safe)) for f, safe in reversed(found.values())), "semicolons")
    sources = tuple(dict.fromkeys(s for food, _ in found.values() for s in _sources(food)))
    return Part(cautions=(Caution("warn", say("by-thermometer", foods=foods), sources),))


def _cooks(batch: Batch) -> bool:
    return any(t.what not in ("chill", "rest", "marinate") for one in batch.recipe.steps for t in one.times)


def named_inside(mark: TempMark) -> bool:
    """Whether a mark is a temperature that food must reach in its centre."""
    return mark.what == "food" and LEAST_C <= mark.low_c <= MOST_C


def _reach(safe: SafeTemperature) -> Said:
    return say("reach", temp=temp(safe.temp_c), rest_min=round(safe.rest_min))


@rule("baking.out_of_reach", "iapws-r7-97", "common-practice")
def out_of_reach(done: Outcome) -> Part | None:
    """Readings of the centre that the boil does not allow here: they stay as written, with what to take instead."""
    cautions = tuple(_unreachable(done.batch))
    return Part(cautions=cautions) if cautions else None


def _unreachable(batch: Batch) -> Iterator[Caution]:
    top_c = batch.here.boiling_c - UNDER_BOIL_K
    for index, one in enumerate(batch.recipe.steps):
        for mark in one.temperatures:
            if mark.what == "food" and mark.low_c > top_c and batch.up:
                yield Caution("warn", _same_stage(batch, index, mark))


def _same_stage(batch: Batch, index: int, mark: TempMark) -> Said:
    instead_c = inside.moved_c(mark.low_c, batch.there.boiling_c, batch.here.boiling_c)
    return say(
        "out-of-reach",
        step=index + 1,
        reading=temp(mark.low_c),
        place=batch.place,
        boil=temp(batch.here.boiling_c),
        instead=temp(instead_c),
    )
