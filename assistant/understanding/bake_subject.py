"""What of a bake is asked about: a change of tins, a rise that is timed, an ingredient, or another part of it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from spacy.tokens import Doc

from assistant.reading.spans import Found
from assistant.reading.tokens import norms
from assistant.understanding import tins

SWAP, PROOF, PAN = "tin_swap", "proof", "pan"
RISES = frozenset((
    "proof", "proofing", "proofs", "proofed", "prove", "proving", "proves", "rise", "rises", "rising", "bulk", "double",
    "doubles",
))  # fmt: skip
STARTERS = frozenset(("levain", "starter", "poolish", "biga", "madre", "preferment", "sponge"))
# what an ingredient right before it belongs to: oil cake, butter roll-in
KINDS = frozenset((
    "allergy", "allergies", "allergic", "free", "intolerance",
    "cake", "cakes", "bread", "breads", "dough", "roll", "rolls", "cookie", "cookies", "bun", "buns", "biscuits",
    "batter", "pastry", "croissants", "muffins", "sponge", "lamination", "layers", "shortbread", "tart",
))  # fmt: skip
# what means an ingredient of a bake said alone, what it means another thing behind, and what asks of an amount
SHORT = {"soda": "baking soda", "bicarb": "baking soda", "powder": "baking powder"}
OTHER_POWDERS = frozenset((
    "cocoa", "milk", "custard", "curry", "garlic", "onion", "chilli", "chili", "pudding", "egg", "club", "cream",
    "chocolate", "gelatine", "gelatin", "whey", "protein", "washing", "meringue", "whiskey",
))  # fmt: skip
REACH = 4
JUDGES = frozenset((
    "much", "many", "less", "more", "fewer", "cut", "drop", "reduce", "extra", "halve", "amount", "same", "straight",
    "too",
    "scale", "double", "up", "down", "right", "enough", "adjust", "change",
))  # fmt: skip
ASKS = frozenset((
    "much", "many", "less", "more", "fewer", "cut", "drop", "reduce", "change", "add", "extra", "lower", "halve",
    "about",
))  # fmt: skip
ASKED_WITHIN, ENDS = 3, frozenset((".", "!", "?", ";"))


def special(doc: Doc) -> str | None:
    """A change of tins, or a rise with its time; None where neither is told."""
    if len(tins.named(doc.text)) == 2:
        return SWAP if tins.swapped(doc.text) else PAN
    timed = any(measure.kind == "time" for measure in doc._.measures)
    rises = any(word in RISES or word in STARTERS for word in norms(doc))
    return PROOF if timed and rises and not _is_asked_of_all(doc) else None


def ingredient(doc: Doc) -> str | None:
    """The ingredient that is asked about: none that only tells what kind of bake it is."""
    return asked_outright(doc) or next((found.id for found in _asked(doc)), None) or _short_alone(doc)


def asked_outright(doc: Doc) -> str | None:
    """The ingredient that the question itself is of, as nothing but soda or powder too: is the soda too much?

    >>> from assistant.understanding.pipeline import read
    >>> asked_outright(read("3 eggs and 2 cups flour at 7,000 ft. is the soda too much?"))
    'baking soda'
    """
    words, asked = norms(doc), _question(doc)
    named = [(f.start, f.id) for f in doc._.found if f.kind == "ingredient"]
    inside = {i for f in doc._.found for i in range(f.start, f.end)}
    short = [(i, SHORT[w]) for i, w in enumerate(words) if w in SHORT and i not in inside and _is_short(words, i)]
    counted = {n.end for n in doc._.numbers} | {m.end for m in doc._.measures}
    said = sorted((at, id) for at, id in (*named, *short) if at in asked and at not in counted)
    wanted = [id for at, id in short if not ASKS.isdisjoint(words[max(at - ASKED_WITHIN, 0) : at])]
    return next((id for at, id in said if _is_judged(words, at)), next(iter(wanted), None))


def _short_alone(doc: Doc) -> str | None:
    """Soda or powder, where no other ingredient was named."""
    words, inside = norms(doc), {i for f in doc._.found for i in range(f.start, f.end)}
    return next((SHORT[w] for i, w in enumerate(words) if w in SHORT and i not in inside and _is_short(words, i)), None)


def _is_judged(words: Sequence[str], at: int) -> bool:
    """Whether what stands around it asks of its amount."""
    return not JUDGES.isdisjoint(words[max(at - ASKED_WITHIN, 0) : at + 1 + REACH])


def _is_short(words: Sequence[str], at: int) -> bool:
    beside = (words[at - 1] if at else "", words[at + 1] if at + 1 < len(words) else "")
    return beside[0] not in OTHER_POWDERS and beside[1] not in ("bread", "water", "pop", "farl", "farls", "crackers")


def _asked(doc: Doc) -> Iterator[Found]:
    found = [f for f in doc._.found if f.kind == "ingredient"]
    yield from (f for f in found if _asks(doc, f))
    asked = _question(doc)
    yield from (f for f in found if f.start in asked and not _is_of_a_kind(doc, f))
    yield from (f for f in found if not _is_of_a_kind(doc, f))


def _asks(doc: Doc, found: Found) -> bool:
    return any(token.norm_ in ASKS for token in doc[max(found.start - ASKED_WITHIN, 0) : found.start])


def _question(doc: Doc) -> range:
    """The last sentence with a question mark, where others stand before it: six eggs, times 8. Powder straight?"""
    words = norms(doc)
    end = next((i for i in range(len(words) - 1, -1, -1) if words[i] == "?"), 0)
    return range(next((i + 1 for i in range(end - 1, -1, -1) if words[i] in ENDS), 0), end)


def _is_asked_of_all(doc: Doc) -> bool:
    """Whether how much of an ingredient is asked: how much yeast for a dough that proofs an hour."""
    return any(word in ("much", "many") for word in norms(doc))


def _is_of_a_kind(doc: Doc, found: Found) -> bool:
    before = norms(doc)[found.start - 1] if found.start else ""
    behind: Sequence[str] = [token.norm_ for token in doc[found.end : found.end + 1]]
    with_it = before == "with" and any(f.kind == "dish" and f.end == found.start - 1 for f in doc._.found)
    return with_it or before in ("%", "percent") or any(word in KINDS for word in behind)
