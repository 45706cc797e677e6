"""What is asked of the batches of a bake beside the next change: an amount, a bigger one, an oven without figures."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.dialogue.workbench import Run
from assistant.recipes.amended import place_of
from assistant.recipes.batch_told import applied, has, listed
from assistant.recipes.dictated import as_line, dictated
from assistant.recipes.sheet import Entry, Sheet
from assistant.recipes.told import unknown
from assistant.understanding.conversation import settle_in
from rules.heat.batch_size import BATCH
from rules.model import Answer, Quantity, Request
from rules.said import Words, elevation, mass, number, oven, sentences

if TYPE_CHECKING:
    from assistant.dialogue.batch_talk import Said

say = sentences("dialogue/batch_talk")
LONGEST = 16
# of the batter what leaves the oven
LEFT_IN_OVEN = 0.9
_MASS = re.compile(
    r"(?P<mass>\d+(?:\.\d+)?)\s*(?P<unit>kg|kilos?|g|grams?)\b(?P<of>\s+of\s+(?:it|that|this|them|cake|the)\b)?"
)
_TINS = re.compile(r"\b(?P<count>\d{1,2}|two|three|four|five|six|a|one)\s+(?:[a-z]+\s+)??(?P<tin>[a-z]+)\b")
COUNTS = {"a": 1, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6}
FEWEST = 2
# up to how hot an oven is read as cool, and as middling [degC]; and how long a hand stands it
READ_AS = ((165.0, "cool", "8 to 10"), (200.0, "middle", "5 to 6"), (400.0, "hot", "3 to 4"))
WARM_C = (100.0, 290.0)


def lines_told(text: str) -> tuple[Entry, ...]:
    """The ingredient lines of a formula as it was told, a brand or a name that nobody has heard of among them.

    >>> [entry.line for entry in lines_told("200 g sugar, 180 g Nordmark, 3 eggs. It sank")]
    ['200 g sugar', '180 g Nordmark', '3 eggs']
    """
    found = []
    for piece in dictated(text).pieces:
        if piece.kind == "ingredient" or (piece.kind == "around" and unknown(piece.text)):
            found.append(Entry(piece.text))
    return tuple(found) if len(found) >= FEWEST else ()


def as_it_stands(run: Run, sheet: Sheet) -> Sheet:
    """The recipe of the batches with the change that was given last.

    sheet: the recipe as the batches have come to it
    """
    return applied(sheet, (run.suggested,)) if run.suggested else sheet


def amount_now(said: Said, sheet: Sheet) -> Words | None:
    """How much of an ingredient the batches have come to: how much baking powder am I on now."""
    if not (has(said.low, "amount_now") and has(said.low, "now")) or len(said.low.split()) > LONGEST:
        return None
    now = as_it_stands(said.run, sheet)
    at, here_m = place_of(now, said.low), said.last.elevation_m
    if at is None or here_m is None:
        return None
    return say("amount-now", line=now.ingredients[at].line, recipe=said.run.title, place=elevation(here_m))


def wanted_g(low: str) -> float | None:
    """How much of the bake is wanted [g]: 3 kg of it, 3 kg in two tins.

    >>> wanted_g("customer wants 3 kg of it"), wanted_g("i used 250 g flour"), wanted_g("make 2 kg in two tins")
    (3000.0, None, 2000.0)
    """
    found = _MASS.search(low)
    if found is None or not (found["of"] or tins(low)) or as_line(low[found.start() :]):
        return None
    return float(found["mass"]) * (1000.0 if found["unit"].startswith("k") else 1.0)


def tins(low: str) -> tuple[int, str] | None:
    """In how many tins, and what they are called."""
    for found in _TINS.finditer(low):
        if found["tin"] in listed("tins"):
            count = found["count"]
            return COUNTS.get(count) or int(count), found["tin"]
    return None


def bigger(said: Said, question: Request, grams: float) -> tuple[Request, Words] | None:
    """The recipe of the batches for so much of the bake [g], and what is said of it; None where lines have no weight.

    question: the recipe as it came out well, where it is baked
    """
    from assistant.recipes.recipe_answer import convert
    from rules.recipes.convert import Converted

    found = convert(settle_in(question, said.memory.kitchen))
    weights = [line.mass_g for line in found.ingredients] if isinstance(found, Converted) else []
    batter_g = sum(weight or 0.0 for weight in weights)
    if not batter_g or None in weights:
        return None
    factor = round(grams / LEFT_IN_OVEN / batter_g, 1)
    batch, into = len(said.run.batches), tins(said.low)
    figures = {"mass": mass(grams), "factor": number(factor, 1), "batch": batch}
    note = say("bigger", **figures)
    if into:
        each = mass(factor * batter_g / into[0])
        note = say("bigger-tins", count=f"{into[0]} {into[1]}", each=each, **figures)
    return replace(question, quantity=Quantity(factor, BATCH), portions=None), note


def asks_by_hand(low: str) -> bool:
    """Whether an oven is spoken of that shows no figures."""
    return has(low, "no_numbers") and has(low, "ovens")


def by_hand(said: Said, question: Request, setting_c: float) -> Answer:
    """How hot an oven without figures is: by flour, by the hand, by one small cake. setting_c: that is wanted"""
    _, way, seconds = next(row for row in READ_AS if setting_c <= row[0])
    steps = (
        say("by-flour", way=way, setting=oven(setting_c)),
        say("by-count", seconds=say("seconds", count=seconds)),
        say("by-trial"),
    )
    return Answer(request=settle_in(question, said.memory.kitchen), headline=say("by-hand"), steps=steps)


def setting_in(low: str, usual_c: float) -> float:
    """The oven that is spoken of [degC]; a bare figure over 290 is in degrees Fahrenheit."""
    figures = [float(figure) for figure in re.findall(r"\b\d{3}\b", low)]
    settings = [figure if figure <= WARM_C[1] else (figure - 32) / 1.8 for figure in figures]
    return next((c for c in settings if WARM_C[0] <= c <= WARM_C[1]), usual_c)
