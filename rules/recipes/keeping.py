"""What conversion leaves alone for safety's sake: the minutes that make food safe, and how hot it must be inside."""

from __future__ import annotations

import re
from collections.abc import Iterator

from rules.baking import bands, inside
from rules.baking.batch import Batch
from rules.baking.time_shift import Shift
from rules.heat.done_readings import UNDER_BOIL_K
from rules.model import Caution
from rules.physics.units import to_c
from rules.recipe import Step, TempMark, TimeMark
from rules.recipes.foods import EGG, Food, hazard, named_foods, raw_foods, softens, spoken
from rules.safety import SafeTemperature, safe_temperature

RULE = "safety.never_shorter"
SOURCE = "usda-fsis-safe-temperatures"
SHELLFISH, SHELLFISH_SOURCE, CUSTARD = "shellfish", "fda-food-code-2022", "custard"
# Eggs boiled or poached are made safe by their minutes, whatever else the recipe is.
EGG_TIMES = ("boil", "simmer", "poach", "steam", "pressure")
# A reading of the centre that is named for safety lies between these [degC].
LEAST_C, MOST_C = to_c(120), to_c(212)
# The end of what a sentence says before a figure and after it.
_ALONE = re.compile(r"\b(?:boil|simmer|steam|cook|poach)\s+(?:the\s+|your\s+)?(?:\w+\s+)?$", re.I)
_SENTENCE_END = re.compile(r"[.;!?](?:\s|$)")


def never_shorter(batch: Batch, one: Step, mark: TimeMark, shift: Shift) -> Shift:
    """The shift of a time, or that it stays, where it would shorten what makes a food safe to eat.

    source: usda-fsis-safe-temperatures
    """
    if shift.span.value >= 1 or shift.stays or mark.what == "rise":
        return shift
    food = cooked_through(batch, one, mark)
    if food is None:
        return shift
    because = (
        f"A time is never shortened where it makes food safe: {food.name} must reach {_reach(batch, safe_of(food))} in "
        "the centre. Go by the thermometer."
    )
    return Shift(bands.AS_IS, "time", RULE, because, _sources(food), stays=True)


def safe_of(food: Food) -> SafeTemperature:
    """The row of the chart for a food that heat must make safe."""
    row = hazard(food, CUSTARD) or safe_temperature(None, EGG)
    if row is None:
        raise ValueError(f"{food.name} has no safe temperature")
    return row


def _sources(food: Food) -> tuple[str, ...]:
    return (SHELLFISH_SOURCE,) if food.dish_class == SHELLFISH else (SOURCE,)


def cooked_through(batch: Batch, one: Step, mark: TimeMark) -> Food | None:
    """What a time makes safe: a food of its own clause, else one of the recipe, which may be in the pot by then.

    "Boil the noodles 8 minutes" cooks the noodles alone.
    """
    said = spoken_of(one, mark)
    own = spoken(batch.recipe, said)
    foods = [food for food in own if hazard(food, batch.style)]
    if mark.what in EGG_TIMES:
        foods += [food for food in own if food.dish_class == EGG]
    if not foods and any(softens(food) and _ALONE.search(said[: food.start]) for food in own):
        return None
    return next((food for food in foods or named_foods(batch.recipe) if foods or hazard(food, batch.style)), None)


def spoken_of(one: Step, mark: TimeMark) -> str:
    """The words of a time: its sentence, from the time before it to the time after it."""
    before = max((t.end for t in one.times if t.end <= mark.start), default=0)
    after = min((t.start for t in one.times if t.start >= mark.end), default=len(one.text))
    lead, tail = one.text[before : mark.start], one.text[mark.end : after]
    return f"{_SENTENCE_END.split(lead)[-1]} {_SENTENCE_END.split(tail)[0]}"


def cautions(batch: Batch) -> Iterator[Caution]:
    """The thermometer where the recipe names none, and the readings that nothing can have here."""
    yield from by_thermometer(batch)
    yield from out_of_reach(batch)


def by_thermometer(batch: Batch) -> Iterator[Caution]:
    """The safe temperatures of what is cooked from raw, where the recipe names no temperature of the centre."""
    if any(named_inside(t) for one in batch.recipe.steps for t in one.temperatures):
        return
    risky = [(food, safe) for food in raw_foods(batch.recipe) if (safe := hazard(food, batch.style))]
    found = {safe.kind: (food, safe) for food, safe in reversed(risky)}
    if found and _cooks(batch):
        said = "; ".join(f"{food.name} {_reach(batch, safe)}" for food, safe in reversed(found.values()))
        text = f"By thermometer, not by the clock, at every elevation: {said} in the centre."
        yield Caution("warn", text, tuple(dict.fromkeys(s for food, _ in found.values() for s in _sources(food))))


def _cooks(batch: Batch) -> bool:
    return any(t.what not in ("chill", "rest", "marinate") for one in batch.recipe.steps for t in one.times)


def named_inside(mark: TempMark) -> bool:
    """Whether a mark is a temperature that food must reach in its centre."""
    return mark.what == "food" and LEAST_C <= mark.low_c <= MOST_C


def _reach(batch: Batch, safe: SafeTemperature) -> str:
    rest = f" and a rest of {safe.rest_min:.0f} min" if safe.rest_min else ""
    return f"{batch.say.temp(safe.temp_c)}{rest}"


def out_of_reach(batch: Batch) -> Iterator[Caution]:
    """Readings of the centre that the boil does not allow here: they stay as written, with what to take instead."""
    top_c = batch.boil_here_c - UNDER_BOIL_K
    for index, one in enumerate(batch.recipe.steps):
        for mark in one.temperatures:
            if mark.what == "food" and mark.low_c > top_c and batch.up:
                yield _unreachable(batch, index, mark)


def _unreachable(batch: Batch, index: int, mark: TempMark) -> Caution:
    instead_c = inside.moved_c(mark.low_c, batch.boil_there_c, batch.boil_here_c)
    text = (
        f"Step {index + 1}: nothing wet reads {batch.say.temp(mark.low_c)} inside at {batch.here}, where water boils "
        f"at {batch.say.temp(batch.boil_here_c)}. The figure stays as written; about {batch.say.temp(instead_c)} is "
        "the same stage here."
    )
    return Caution("warn", text, ("iapws-r7-97", "common-practice"))
