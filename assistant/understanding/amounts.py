"""What is said of amounts: of how many, of what, how served, counted in what, and which dishes a menu holds."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from itertools import pairwise

from spacy.tokens import Doc

from assistant.reading.spans import Found, Measure, Number
from assistant.reading.tokens import norms
from assistant.understanding.allergens import counts_guest
from assistant.understanding.claims import plain_numbers
from assistant.understanding.cue_words import cues, said
from rules import tables
from rules.amounts import packs
from rules.amounts.portion import COOKED, EACH, PORTION, WAYS, YIELD, portion
from rules.catalogue import marked
from rules.foods.dishes import dishes

FEEDING, GATHERING = cues("portions", "feeding"), cues("portions", "gathering")
HOSTING, HOSTED = cues("amount", "hosting"), cues("amount", "hosted")
A_HEAD = cues("amount", "a_head")
OF_PORTION, OF_COOKED, OF_YIELD = cues("amount", "portion"), cues("amount", "cooked"), cues("amount", "yields")
OUT_OF_IT, COMES_OUT, GIVES = cues("amount", "out_of_it"), cues("amount", "comes_out"), cues("amount", "gives")
# what comes out of a weight: from a trimmed roast to rice
SHARES_OUT = (0.25, 4.5)
VESSELS = frozenset(cues("amount", "vessels"))
COURSES = {way: cues("course", way) for way in WAYS}
JOINS, BETWEEN = cues("menu", "joins"), cues("menu", "between")
TURKEY = cues("schedule", "turkey")
BIRD, TURKEY_FROM_G = "whole bird", 3600.0
# from so many on a bare figure behind a dish is of people rather than of minutes
MANY, CUT_WORDS = 20, 1
# what is counted where they eat more than once
MEALS, MOST_MEALS = cues("portions", "meals"), 60
MOST_PORTIONS, MOST_PIECES = 100_000, 10_000
# how far from its usual size a piece may be
SIZES = (0.35, 3.0)
LIQUID_WORDS = ("water", "stock", "broth", "liquid", "milk", "wine")
# the state of what is bought dry, and what stands between it and the dish it is for
DRY, MADE_INTO = "dry", ("for", "into", "make", "making")
# liquids that go with a dish, and no dish of a menu
NOT_ON_A_MENU = ("water", "stock")
# words between a figure or a length of time and what tells of it
NEAR = 3
DEPTH_M = ((0.045, 0.07, "pan_2in"), (0.09, 0.11, "pan_4in"), (0.14, 0.16, "pan_6in"))

# what is drunk by the cup, and from how many on cups are those who drink
DRUNK, CUP, FEWEST_CUPS = ("tea", "coffee"), "cup", 6


def portions(doc: Doc, topic: str, hour: int | None = None) -> int | None:
    """How many people: 60 covers, serves 8, a party of 20, and where the talk is of buying, plain `for 12`.

    Groups are added up: 30 adults and 12 kids. hour: where a figure stands that is the hour of service
    """
    groups = [m for m in doc._.measures if m.kind == "portion" and not counts_guest(doc, m.start, m.end)]
    groups = [m for m in groups if norms(doc)[m.end - 1] not in MEALS] or groups
    counted = sum(m.said for m in groups[: 1 + _added(doc, groups)])
    if not counted:
        numbers = (n for n in plain_numbers(doc) if n.start != hour and not counts_guest(doc, n.start, n.end))
        counted = next((n.value for n in numbers if counts_people(doc, n, topic)), 0)
    if not counted and topic in marked("feeding"):
        counted = next((n.value for n in doc._.numbers if _counts_meals(doc, n) and n.value >= MANY), 0)
    if not counted and topic in marked("feeding") and said(norms(doc), A_HEAD):
        counted = 1
    return int(counted) if 1 <= counted <= MOST_PORTIONS else None


def cups_drunk(doc: Doc, dish: str | None) -> int | None:
    """How many cups of a drink are served: 140 cups of tea."""
    if dish is None or dishes()[dish].dish_class not in DRUNK:
        return None
    cups = (m.said for m in doc._.measures if m.unit == CUP and m.said >= FEWEST_CUPS and m.said == int(m.said))
    return next((int(count) for count in cups if count <= MOST_PORTIONS), None)


def meals(doc: Doc, topic: str, eaters: int | None = None) -> int:
    """How many times they eat, where an order is for several: 80 trekkers, 6 nights. One where nothing tells.

    eaters: a number of meals that counts those who eat counts them once: 50 lunches are for 50
    """
    if topic not in marked("feeding"):
        return 1
    counted = (n.value for n in doc._.numbers if _counts_meals(doc, n))
    times = next((int(value) for value in counted if value == int(value) and 2 <= value <= MOST_MEALS), 1)
    alone = sum(n.value == times for n in doc._.numbers) == 1
    return 1 if times == eaters and alone else times


def _counts_meals(doc: Doc, number: Number) -> bool:
    """Whether a number stands before a meal: 6 nights; 50 lunches."""
    words = norms(doc)
    return number.end < len(words) and words[number.end] in MEALS and words[number.start - 1] != "per"


def _added(doc: Doc, groups: Sequence[Measure]) -> int:
    """How many further groups are added to the first."""
    added = 0
    for one, other in pairwise(groups):
        if other.start - one.end != 1 or norms(doc)[one.end] not in ("and", "plus", "+", "&", ","):
            break
        added += 1
    return added


def counts_people(doc: Doc, number: Number, topic: str) -> bool:
    """Whether a plain number is one of people."""
    before = norms(doc)[number.start - 1] if number.start else ""
    two = " ".join(norms(doc)[max(0, number.start - 2) : number.start])
    if before in FEEDING or two in GATHERING or (before == "for" and _timed(doc, number.end)):
        return True
    if before == "for" and number.value >= MANY and _is_of_dish(doc, number):
        return True
    if topic not in marked("feeding"):
        return False
    if before == "to" and any(word in FEEDING for word in norms(doc)[: number.start]):
        return True
    after = norms(doc)[number.end] if number.end < len(doc) else "."
    return before in ("for", "about", "around", "of") or ((before in HOSTING or two in HOSTING) and after in HOSTED)


def _is_of_dish(doc: Doc, number: Number) -> bool:
    """Whether a dish is for so many, and no oven or minutes are meant: beef stew for 120, how long."""
    heated = any(m.kind in ("temperature", "degree") for m in doc._.measures)
    after = norms(doc)[number.end] if number.end < len(doc) else "."
    named = any(f.kind == "dish" and 0 <= number.start - 1 - f.end <= CUT_WORDS for f in doc._.found)
    return named and not heated and (not after[0].isalnum() or after in ("at", "in", "how", "people", "tonight"))


def _timed(doc: Doc, at: int) -> bool:
    """Whether a time of day is told right behind: lamb for 8 at 7."""
    return any(m.start == at + 1 and norms(doc)[at] in ("at", "by") for m in doc._.clock)


def course(words: Sequence[str]) -> str | None:
    """How it is served, where the words tell."""
    return next((way for way in reversed(WAYS) if said(words, COURSES[way])), None)


def counted_in(doc: Doc) -> tuple[str, ...]:
    """What an amount is asked in: pans of a depth, packs, pieces; a dish that is asked how many of is counted."""
    words = norms(doc)
    heard = [id for id, phrases in _containers().items() if said(words, phrases)]
    if "pan" in heard or "pans" in words:
        heard += [id for m in doc._.measures if m.kind == "length" for low, high, id in DEPTH_M if low <= m.low <= high]
    sized = {m.end: m.start for m in doc._.measures if m.kind == "mass"}
    starts = (sized.get(f.start, f.start) for f in doc._.found if f.kind == "dish")
    many = any(start and words[start - 1] == "many" for start in starts)
    return tuple(dict.fromkeys([*heard, *(("piece",) if many and "piece" not in heard else ())]))


@cache
def _containers() -> dict[str, tuple[str, ...]]:
    rows = tables.read_toml(packs.CONTAINERS)["container"]
    return {row["id"]: tuple(row["heard_as"]) for row in rows if "heard_as" in row}


def count(doc: Doc, dish: str | None, topic: str) -> int | None:
    """How many pieces of the dish the cook has: the number before it, or before its weight: twelve 18 lb birds."""
    if dish is None or packs.piece(dish, dishes()[dish].dish_class) is None:
        return None
    starts = {f.start for f in doc._.found if f.kind == "dish"}
    starts |= {m.start for m in doc._.measures if m.kind == "mass" and m.end in starts}
    for number in plain_numbers(doc):
        whole = number.value == int(number.value) and 1 < number.value <= MOST_PIECES
        if whole and number.end in starts and not counts_people(doc, number, topic):
            return int(number.value)
    return None


def quantity_of(doc: Doc, dish: str | None, counted: int | None) -> str | None:
    """What the first weight or volume is of: each piece, one portion, or what is cooked."""
    measure = next((m for m in doc._.measures if m.kind in ("mass", "volume")), None)
    words = norms(doc)
    if measure is None:
        return YIELD if said(words, OF_YIELD) else None
    behind = " ".join(words[measure.end : measure.end + NEAR]).removeprefix("of ")
    if any(f"{behind} ".startswith(f"{word} ") for word in OF_COOKED):
        return COOKED
    if measure.kind == "volume" and any(word in VESSELS for word in words[measure.end : measure.end + 2]):
        # a pot is told by what it holds, cooked
        return COOKED
    if measure.kind == "mass" and any(f"{behind} ".startswith(f"{word} ") for word in OF_PORTION):
        return PORTION
    follows = any(f.kind == "dish" and f.start == measure.end for f in doc._.found)
    if measure.kind == "mass" and follows and _is_a_piece(dish, measure.low, counted):
        return EACH
    return None


def own_yield(doc: Doc) -> tuple[Measure, Measure] | None:
    """What the cook puts in and gets out, as weights: 27 kg out of 10 kg; 20 kg raw gave us 11 kg pulled."""
    words = norms(doc)
    weights = [m for m in doc._.measures if m.kind == "mass"]
    if len(weights) != 2 or not said(words, OUT_OF_IT):
        return None
    got = next((m for m in weights if _is_out(words, m)), None)
    if got is None:
        return None
    put = next(m for m in weights if m is not got)
    return (put, got) if SHARES_OUT[0] <= got.low / put.low <= SHARES_OUT[1] else None


def _is_out(words: Sequence[str], measure: Measure) -> bool:
    behind, before = words[measure.end : measure.end + NEAR], words[max(0, measure.start - NEAR) : measure.start]
    return any(word in COMES_OUT for word in behind[:2]) or any(word in GIVES for word in before)


def _is_a_piece(dish: str | None, grams: float, counted: int | None) -> bool:
    piece = packs.piece(dish, dishes()[dish].dish_class) if dish else None
    low, high = SIZES
    return counted is not None or bool(piece and piece.grams and low <= grams / piece.grams <= high)


def menu(doc: Doc, topic: str) -> tuple[str, ...]:
    """Every dish of a menu, in order: those joined by `and`, a comma or nothing; potatoes for mash are one."""
    return joined_dishes(doc) if topic in marked("feeding") else ()


def joined_dishes(doc: Doc) -> tuple[str, ...]:
    """Every dish that stands beside another as one more, in order; none where there is but one."""
    heard: list[Found] = []
    for found in doc._.found:
        one = dishes().get(found.id) if found.kind == "dish" else None
        if one is None or one.dish_class in NOT_ON_A_MENU:
            continue
        if not heard or (is_joined(doc, heard[-1], found) and found.id not in {h.id for h in heard}):
            heard.append(found)
    return tuple(found.id for found in heard) if len(heard) > 1 else ()


def made_of(doc: Doc, dish: str | None, topic: str) -> str | None:
    """Of a dry good that is bought for a dish, the dish, which tells how much of it: basmati for biryani."""
    heard = [f for f in doc._.found if f.kind == "dish"]
    if topic not in marked("feeding") or len(heard) < 2 or heard[0].id != dish:
        return dish
    dry = all(portion(f.id, dishes()[f.id].dish_class).state == DRY for f in heard[:2])
    between = [t.norm_ for t in doc[heard[0].end : heard[1].start] if t.norm_ not in BETWEEN]
    return heard[1].id if dry and between[-1:] and between[-1] in MADE_INTO else dish


def is_joined(doc: Doc, one: Found, other: Found) -> bool:
    """Whether a dish stands beside another as one more, rather than telling what that is for."""
    words = norms(doc)[one.end : other.start]
    while words and words[-1] in BETWEEN and words[-1] not in JOINS:
        words.pop()
    if words:
        return words[-1] in JOINS
    return one.end == other.start and dishes()[one.id].dish_class != dishes()[other.id].dish_class


def bird(dish: str | None, doc: Doc) -> str | None:
    """A bird of no other name is a turkey where the feast or its size tells so."""
    if dish != BIRD:
        return dish
    heavy = any(m.kind == "mass" and m.low >= TURKEY_FROM_G for m in doc._.measures)
    return "turkey" if heavy or any(word in TURKEY for word in norms(doc)) else dish


def is_liquid(doc: Doc, measure: Measure) -> bool:
    """Whether a volume is of the liquid that a dish is given: 3 cups of water."""
    behind = norms(doc)[measure.end : measure.end + NEAR]
    return measure.kind == "volume" and any(word in LIQUID_WORDS for word in behind[: 1 + (behind[:1] == ["of"])])


def liquid_per(doc: Doc) -> float | None:
    """How much liquid the cook gives it: 2 to 1, or 3 cups of water to 2 cups of rice."""
    volumes = [m for m in doc._.measures if m.kind == "volume"]
    given, dry = ([m for m in volumes if is_liquid(doc, m) is of] for of in (True, False))
    if given and dry:
        return given[0].low / dry[0].low if dry[0].low else None
    numbers = {number.start: number for number in plain_numbers(doc)}
    for one in numbers.values():
        other = numbers.get(one.end + 1)
        if other and norms(doc)[one.end] in ("to", ":") and min(one.value, other.value) > 0:
            return max(one.value, other.value) / min(one.value, other.value)
    return None
