"""Which temperature is meant: of the food, an oven, a smoker, a bath, a drier, food held hot, or a refrigerator."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from spacy.tokens import Doc

from assistant.reading.tokens import norms
from assistant.understanding.claims import plain_numbers
from assistant.understanding.cue_words import cues
from assistant.understanding.lexicon import meanings
from rules.foods.methods import methods
from rules.physics.units import to_f

ROLES = ("core", "oven", "hold", "fridge", "bath", "smoker", "drier", "set")
# where a word tells two, the first of these is meant
PLACES = ("other", "bath", "smoker", "drier", "oven", "hold")
OTHER = "other"
CUES = {
    role: frozenset(cues("temperature_role", role))
    for role in (*PLACES, "core", "part", "fridge", "set", "dry", "slow", "leaving", "pulling")
}
TO_CORE, AT, AFTER = (frozenset(cues("temperature_role", name)) for name in ("to", "at", "after"))
UNCOUNTED = ("is", "as", "degrees", "minus", "plus", "yes", "this", "was", "its", "thats")
COUNTED = ("em", "them", "those", "these", "us", "you", "each")
COUNTS = ("for", "feed", "feeding", "of", "x", "page", "route", "room", "table")
# of two methods said together, the one whose heat is the more particular tells
BY_METHOD = ("bath", "smoker", OTHER, "oven")
BARE_F, BARE_C, COLD_BARE_F = (85, 212), (40, 85), (41, 76)
COLD_F, BOIL_F, HOT_F, HOTTEST_F, EITHER_SCALE = 76.0, 176.0, 212.0, 500.0, (150, 212)
BOILING_C, COOKED_C = 100.0, (60, 80)
PEOPLE = frozenset(cues("temperature_role", "people"))
# no bath of water is hotter
BATH_C = 99.0
METRIC = frozenset(cues("temperature_role", "metric"))
FAHRENHEIT = frozenset(cues("temperature_role", "fahrenheit"))
OF_WATER = tuple(tuple(phrase.split()) for phrase in cues("temperature_role", "of_water"))
IN_PLACE_OF = tuple(tuple(phrase.split()) for phrase in cues("temperature_role", "in_place_of"))
# forms of a question in which such a figure is judged
ASKS = frozenset(("safe", "is_ok", "enough", "done", "can_it", "is_true", "changes"))
BEFORE, BEHIND, SHORT = 6, 3, 12
OTHER_BEFORE, SHORTEST, ENDS = 2, 3, (".", "?", "!")


@dataclass(frozen=True, slots=True)
class Said:
    """A temperature of an utterance with its role; temp_f in degF."""

    role: str
    temp_f: float


def said(doc: Doc, last: Said | None = None, *, celsius: bool = False) -> tuple[Said, ...]:
    """Every temperature that was said, with a degree sign, a unit or bare, and what it is of.

    last: the temperature said before in a conversation: a bare figure in a short utterance is another of its kind
    celsius: whether the cook has spoken in degrees Celsius before, and never in Fahrenheit
    """
    words = norms(doc)
    default = last.role if last and len(words) <= SHORT else None
    figures = tuple(_temperatures(doc, words))
    found = [Said(_role(doc, words, at, temp_f, default), temp_f) for at, temp_f, _ in figures]
    bares = [bare for *_, bare in figures]
    metric = _metric(words)
    if celsius and FAHRENHEIT.isdisjoint(words):
        told = tuple(_is_told(words, at) for at, *_ in figures)
        found = [_as_before(s, told=t) if bare else s for s, bare, t in zip(found, bares, told, strict=True)]
    else:
        found = [_in_celsius(said, metric=metric) if bare else said for said, bare in zip(found, bares, strict=True)]
    return tuple(_beside(said, found) for said in found) or tuple(_another(doc, words, last))


def _metric(words: Sequence[str]) -> bool:
    """Whether the cook measures in metres, kilos or degrees Celsius and never in Fahrenheit."""
    return not METRIC.isdisjoint(words) and FAHRENHEIT.isdisjoint(words)


def _in_celsius(said: Said, *, metric: bool) -> Said:
    """A figure without a unit is Celsius where Fahrenheit makes no sense: meat 95 inside, an oven at 160 for 2 kg."""
    hot_core = said.role == "core" and BARE_C[1] < said.temp_f <= BOILING_C
    hot_oven = metric and said.role in ("oven", "smoker") and BOILING_C < said.temp_f < HOT_F
    hot_bath = metric and said.role == "bath" and BARE_C[1] < said.temp_f <= BATH_C
    return Said(said.role, to_f(said.temp_f)) if hot_core or hot_oven or hot_bath else said


def _as_before(said: Said, *, told: bool) -> Said:
    """A bare figure of a cook who speaks in Celsius; meat at 150 inside can only be Fahrenheit."""
    of_food = said.role in ("core", "hold", "fridge")
    if said.temp_f > HOT_F or (of_food and said.temp_f > BOILING_C and told):
        return said
    return Said("oven" if of_food and said.temp_f > BOILING_C else said.role, to_f(said.temp_f))


def _is_told(words: Sequence[str], at: int) -> bool:
    """Whether the words beside a figure tell that it is of the food."""
    return not {*words[max(0, at - 3) : at], *words[at + 1 : at + 4]}.isdisjoint(CUES["core"] | CUES["part"])


def places(doc: Doc) -> tuple[int, ...]:
    """Where temperatures are said."""
    return tuple(at for at, *_ in _temperatures(doc, norms(doc)))


def spoken_in_celsius(doc: Doc) -> bool | None:
    """Whether the temperatures of an utterance are in Celsius; None where none has a unit."""
    units = {m.unit for m in doc._.measures if m.kind == "temperature"}
    return None if not units else units == {"degC"}


def _beside(said: Said, found: Sequence[Said]) -> Said:
    """Beside the temperature of an oven or a smoker a much lower one is that of the food: 225, stalled at 160."""
    hotter = said.role in ("oven", "smoker") and any(
        s.role == said.role and s.temp_f >= HOT_F > said.temp_f for s in found
    )
    return Said("core", said.temp_f) if hotter else said


def _another(doc: Doc, words: Sequence[str], last: Said | None) -> Iterator[Said]:
    """In 63 C, right? 45, so it does not dry?: the second figure."""
    if last is None or len(words) > SHORT:
        return
    for number in plain_numbers(doc):
        if BARE_C[0] <= number.value <= BARE_F[1] and not _counts(words, number.start, number.end):
            yield Said(last.role, number.value if number.value > BARE_C[1] else to_f(number.value))


def _temperatures(doc: Doc, words: Sequence[str]) -> Iterator[tuple[int, float, bool]]:
    """Where each temperature stands, what it is [degF], and whether it was said without C or F.

    Of 70 instead of 74 the first is asked about.
    """
    for m in doc._.measures:
        if is_replaced(words, m.start):
            continue
        if m.kind == "temperature":
            yield m.start, to_f(m.low), False
        elif m.kind == "degree":
            yield m.start, m.said if m.said > BARE_C[1] else to_f(m.said), m.said > BARE_C[1]
    cold = not CUES["fridge"].isdisjoint(words)
    asks = not {form.id for form in doc._.forms}.isdisjoint(ASKS)
    for number in plain_numbers(doc):
        if _counts(words, number.start, number.end) or is_replaced(words, number.start):
            continue
        told = _told(words, number.start) or (asks and _replaces(words, number.start))
        of_fridge = cold and COLD_BARE_F[0] < number.value < COLD_BARE_F[1] and not _in_heat(words, number.start)
        if _cooked_to(words, number.start, number.value):
            yield number.start, to_f(number.value), False
        elif of_fridge or BARE_F[0] < number.value <= (HOTTEST_F if told else BARE_F[1]):
            yield number.start, number.value, True
        elif BARE_C[0] <= number.value <= BARE_C[1] and told:
            yield number.start, to_f(number.value), False


def _cooked_to(words: Sequence[str], at: int, value: float) -> bool:
    """Whether a number is what food is heated to, in Celsius, though a refrigerator is spoken of too: cooked to 74."""
    said = at > 0 and (words[at - 1] in CUES["core"] or (words[at - 1] in TO_CORE and value >= COOKED_C[0]))
    return said and BARE_C[0] <= value <= COOKED_C[1]


def is_replaced(words: Sequence[str], at: int) -> bool:
    """Whether another figure takes the place of this one: 70 instead of 74."""
    lengths = {len(phrase) for phrase in IN_PLACE_OF}
    return any(tuple(words[at - n : at]) in IN_PLACE_OF and words[at - n - 1].isdigit() for n in lengths if at - n >= 1)


def _replaces(words: Sequence[str], at: int) -> bool:
    """Whether a figure takes the place of a higher one: 70 instead of 74."""
    ends = (at + 1 + len(phrase) for phrase in IN_PLACE_OF if tuple(words[at + 1 : at + 1 + len(phrase)]) == phrase)
    higher = (words[end] for end in ends if end < len(words) and words[end].isdigit())
    return words[at].isdigit() and PEOPLE.isdisjoint(words) and any(int(words[at]) < int(word) for word in higher)


def _told(words: Sequence[str], at: int) -> bool:
    """Whether the words beside a small bare number tell that it is a temperature: pull at 52, core 50, 58 inside."""
    near = {*words[max(0, at - 3) : at], *words[at + 1 : at + 4]}
    told = any(not near.isdisjoint(CUES[role]) for role in ("core", "part", "set", "bath", "hold", "oven", "smoker"))
    ends = at + 1 == len(words) or words[at + 1] in AFTER or not words[at + 1].isalnum()
    return told or (at > 0 and words[at - 1] in AT and ends and PEOPLE.isdisjoint(words))


def _in_heat(words: Sequence[str], at: int) -> bool:
    """Whether the words beside a figure tell what is hot, though a refrigerator is spoken of too: at 54 in the bath."""
    near = {*words[max(0, at - 3) : at], *words[at + 1 : at + 4]}
    return any(not near.isdisjoint(CUES[role]) for role in ("bath", "oven", "smoker"))


def _counts(words: Sequence[str], start: int, at: int) -> bool:
    """Whether the number counts people or things: for 120, 100 eggs, 120 of them."""
    behind = at < len(words) and (words[at] in PEOPLE or (words[at].endswith("s") and words[at] not in UNCOUNTED))
    behind = behind or (at + 1 < len(words) and words[at] == "of" and words[at + 1] in COUNTED)
    return behind or (start > 0 and words[start - 1] in COUNTS and not (start > 1 and words[start - 2] in CUES["oven"]))


def _role(doc: Doc, words: Sequence[str], at: int, temp_f: float, default: str | None) -> str:
    """By the words behind and before it first, then by those of the whole utterance, then by what it can be.

    default: the role of the temperature before it in a conversation
    """
    if temp_f < COLD_F and not CUES["fridge"].isdisjoint(words):
        return "fridge"
    behind = _up_to_pause(words[at + 1 : at + 1 + BEHIND])
    if temp_f < HOT_F and _tells_core(behind):
        return "core"
    before = words[max(0, at - BEFORE) : at]
    set_to = not CUES["set"].isdisjoint(before)
    vessel = not (CUES["oven"] | CUES["smoker"]).isdisjoint(before[-3:])
    if temp_f < HOT_F and before[-1:] and before[-1] in TO_CORE and not set_to and not vessel:
        return "core"
    if temp_f < BOIL_F and not CUES["pulling"].isdisjoint((*before[-4:], *behind[:1])):
        return "core"
    if tuple(before[-2:]) in OF_WATER or tuple(before[-3:]) in OF_WATER:
        # what the water has is no reading of the food in it
        return OTHER
    bare = words[at] == f"{temp_f:.0f}"
    if len(_sentence(words, at)) <= SHORTEST:
        # a figure in a few words by itself: 160 then. How long on the grill?
        return default or ("core" if temp_f < BOIL_F else "oven")
    role = _nearest(before, temp_f) or _nearest(behind, temp_f)
    either = EITHER_SCALE[0] <= temp_f < HOT_F and CUES["slow"].isdisjoint(words)
    if role is None and not CUES["dry"].isdisjoint(before[-3:]) and either:
        return OTHER
    if role is None and temp_f < HOT_F and not CUES["part"].isdisjoint((*before[-3:], *behind)):
        role = _of_whole(doc, words, temp_f, "core") if temp_f < BOIL_F else "core"
    role = role or _of_whole(doc, words, temp_f, "set" if set_to else default or "core")
    unclear = role == "oven" and EITHER_SCALE[0] <= temp_f <= EITHER_SCALE[1] and bare
    return OTHER if unclear and default != "oven" and CUES["slow"].isdisjoint(words) else role


def _sentence(words: Sequence[str], at: int) -> Sequence[str]:
    """The words between full stops in which a figure stands; the whole where it ends in none."""
    end = next((i for i in range(at, len(words)) if words[i] in ENDS), None)
    start = next((i + 1 for i in range(at, -1, -1) if words[i] in ENDS), 0)
    return words if end is None or end + 1 >= len(words) else words[start:end]


def _up_to_pause(behind: Sequence[str]) -> Sequence[str]:
    return behind[: next((i for i, word in enumerate(behind) if not word[0].isalnum()), len(behind))]


def _tells_core(behind: Sequence[str]) -> bool:
    in_the = behind[2:3] if behind[:1] == ["in"] else ()
    return not CUES["core"].isdisjoint((*behind[:2], *in_the))


def _nearest(near: Sequence[str], temp_f: float) -> str | None:
    """The role that the last word tells that tells one; a place that food comes off is none."""
    for i in range(len(near) - 1, -1, -1):
        places = ("core", *PLACES) if len(near) - i <= OTHER_BEFORE else ("core", *PLACES[1:])
        if not _left(near, i):
            for role in places:
                if near[i] in CUES[role] and not (role in ("core", "hold") and temp_f >= HOT_F):
                    return role
    return None


def _left(words: Sequence[str], at: int) -> bool:
    """Whether food comes off or out of what a word names."""
    return not CUES["leaving"].isdisjoint(words[max(0, at - 2) : at])


def _methods(doc: Doc, words: Sequence[str]) -> Iterator[tuple[int, str]]:
    """Where each method is told, by itself or as the first word of a dish's name: roast turkey."""
    for found in doc._.found:
        if found.kind == "method":
            yield found.start, found.id
        elif found.kind == "dish" and len(found) > 1:
            yield from ((found.start, id) for kind, id in meanings(words[found.start]) if kind == "method")


def _of_whole(doc: Doc, words: Sequence[str], temp_f: float, other: str) -> str:
    told = {methods()[id].temperature_of for at, id in _methods(doc, words) if not _left(words, at)}
    by_method = next((role for role in BY_METHOD if role in told), None)
    if by_method and (temp_f >= BOIL_F or by_method in ("bath", "smoker")):
        return by_method
    staying = {word for i, word in enumerate(words) if not _left(words, i)}
    for role in PLACES[1:]:
        if not CUES[role].isdisjoint(staying) and not (role == "hold" and temp_f >= HOT_F):
            return role
    return "oven" if temp_f >= BOIL_F and other == "core" else other
