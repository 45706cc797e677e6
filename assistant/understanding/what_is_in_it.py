"""What a cook says is in a dish: 1 tsp soda, 225 g each of flour, butter and sugar."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

from spacy.tokens import Doc

from assistant.reading.spans import Found, Measure
from assistant.understanding.cue_words import cues
from rules import tables
from rules.model import Amount

KINDS, NEAR = ("mass", "volume"), 2
# a larger percentage is hydration or butter [percent]
LARGEST_SHARE = 20.0
# units beside which a bare amount is in grams, and what it may be
GRAMS, LEAST_G, MOST_G = ("g", "kg"), 5.0, 50_000.0
# fewer than this before a thing may count it: 12 eggs
LEAST_BARE_G = 50.0
EACH = frozenset(cues("amounts", "each"))
# words that mean an ingredient only behind an amount of it: 1 tsp soda
# what ends an amount whose thing stands before it: flour 200 g, sugar 100 g
STOPS = ("", ",", ";", ".", ")", "\n", "and")
# behind an ingredient: soda two pinch
PINCHES, PINCHES_A_TSP = ("pinch", "pinches", "chutki"), 16
SHORT = {"soda": "baking soda", "powder": "baking powder"}


def amounts(doc: Doc) -> tuple[Amount, ...]:
    """Every amount with its ingredient, in the order of the text.

    >>> from assistant.understanding.pipeline import read
    >>> [(a.ingredient, a.value, a.unit) for a in amounts(read("1 tsp soda and 225 g each butter and sugar"))]
    [('baking soda', 1.0, 'tsp'), ('butter', 225.0, 'g'), ('granulated sugar', 225.0, 'g')]
    """
    measures = [m for m in doc._.measures if m.kind in KINDS]
    if bare := _in_grams(doc, measures):
        return bare
    if _is_named_first(doc, measures):
        said = [(f.id, m.said, m.unit) for m in measures if (f := _right_before(doc, m.start))]
        said += [(f.id, n / PINCHES_A_TSP, "tsp") for f in doc._.found if (n := _pinches(doc, f)) is not None]
        return tuple(Amount(name, roles()[name], round(n, 6), unit) for name, n, unit in said if name in roles())
    ends = [*(m.start for m in measures[1:]), len(doc)]
    named = (pair for m, end in zip(measures, ends, strict=False) for pair in _named(doc, m, end))
    told = tuple(Amount(name, roles()[name], round(m.said, 6), m.unit) for m, name in named if name in roles())
    return (*told, *_bare_before(doc, measures, told))


def asked_of(doc: Doc, subject: str) -> tuple[bool, Amount | None]:
    """Whether amounts are told of ingredients, and the one of the ingredient that is asked about.

    A baker's percentage of it, beside the flour, is an amount too.

    >>> from assistant.understanding.pipeline import read
    >>> asked_of(read("how much yeast for 10 kg flour, recipe 1.2% yeast"), "active dry yeast")[1].value
    120.0
    """
    told = amounts(doc)
    own = next((amount for amount in told if amount.ingredient == subject), None)
    flour = next((amount for amount in told if amount.role == "flour"), None)
    share = next(
        (n.value for n in doc._.numbers if doc[n.end : n.end + 1].text == "%" and n.value < LARGEST_SHARE), None
    )
    unit, grams = ("g", 1000.0) if flour and flour.unit == "kg" else (flour.unit if flour else "", 1.0)
    if own is None and flour and share and subject in roles():
        own = Amount(subject, roles()[subject], round(flour.value * share * grams / 100, 6), unit)
    return bool(told), own


def _named(doc: Doc, measure: Measure, end: int) -> Iterator[tuple[Measure, str]]:
    first = _right_before(doc, measure.start)
    if first is not None and doc[measure.end : measure.end + 1].text in STOPS:
        yield measure, first.id
        return
    found: list[Found] = [f for f in doc._.found if f.kind == "ingredient" and measure.end <= f.start < end]
    near = [f for f in found if f.start <= measure.end + NEAR]
    if near:
        shared = any(token.norm_ in EACH for token in doc[measure.end : near[0].start])
        yield from ((measure, f.id) for f in (found if shared else near[:1]))
        return
    behind = (token.norm_ for token in doc[measure.end : min(measure.end + NEAR, end)])
    yield from ((measure, SHORT[word]) for word in behind if word in SHORT)


def _is_named_first(doc: Doc, measures: list[Measure]) -> bool:
    """Whether each thing is named before how much of it there is: flour 3 tbsp, soda 1/4 tsp."""
    if len(measures) < 2 or any(_right_before(doc, m.start) is None for m in measures):
        return False
    last = measures[-1].end
    return not any(f.start == last and _pinches(doc, f) is None for f in doc._.found if f.kind == "ingredient")


def _in_grams(doc: Doc, measures: list[Measure]) -> tuple[Amount, ...]:
    """Amounts behind their things, some in kilos or grams and the others bare: flour 1 kg, water 620.

    Empty where each has a unit, or a measure stands before its thing.
    """
    if not any(m.unit in GRAMS for m in measures) or any(_right_before(doc, m.start) is None for m in measures):
        return ()
    taken = {i for m in (*doc._.measures, *doc._.elevations) for i in range(m.start, m.end)}
    bare = [n for n in doc._.numbers if n.start not in taken and LEAST_G <= n.value <= MOST_G]
    told = [(found.id, n.value) for n in bare if (found := _right_before(doc, n.start)) and _ends(doc, n.end)]
    if not told:
        return ()
    own = [(found.id, m.said, m.unit) for m in measures if (found := _right_before(doc, m.start))]
    each = [*own, *((name, value, "g") for name, value in told)]
    return tuple(Amount(name, roles()[name], round(value, 6), unit) for name, value, unit in each if name in roles())


def _bare_before(doc: Doc, measures: list[Measure], told: tuple[Amount, ...]) -> Iterator[Amount]:
    """Bare amounts before their things, beside some in grams or kilos: 800 g flour 520 water."""
    if not told or any(m.unit not in GRAMS for m in measures):
        return
    taken = {i for m in (*doc._.measures, *doc._.elevations) for i in range(m.start, m.end)}
    for number in doc._.numbers:
        found = next((f for f in doc._.found if f.kind == "ingredient" and f.start == number.end), None)
        plain = found is not None and number.start not in taken and LEAST_BARE_G <= number.value <= MOST_G
        if found and plain and found.id in roles() and all(found.id != amount.ingredient for amount in told):
            yield Amount(found.id, roles()[found.id], number.value, "g")


def _ends(doc: Doc, at: int) -> bool:
    """Whether a bare amount ends there: the text does, a pause follows, or the next thing."""
    behind = doc[at : at + 1].text
    return behind in STOPS or any(f.kind == "ingredient" and f.start == at for f in doc._.found)


def _right_before(doc: Doc, start: int) -> Found | None:
    return next((f for f in doc._.found if f.kind == "ingredient" and f.end == start), None)


def _pinches(doc: Doc, found: Found) -> float | None:
    """How many pinches stand behind an ingredient; None where none do."""
    number = next((n for n in doc._.numbers if n.start == found.end), None)
    pinches = number is not None and doc[number.end : number.end + 1].text.lower() in PINCHES
    return number.value if number is not None and pinches and found.kind == "ingredient" else None


@cache
def roles() -> dict[str, str]:
    """The role of every ingredient."""
    return {row["name"]: row["role"] for row in tables.read_toml("lexicon/ingredients.toml")["ingredient"]}
