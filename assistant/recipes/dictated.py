"""A recipe that is told in pieces, a line or a few at a time -> its lines, and what is said around them."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cache
from typing import Literal

from assistant.reading.text import fold
from assistant.recipes.corrected import corrected
from assistant.recipes.lines import any_of, read_line, words
from assistant.recipes.sheet import Entry, Sheet
from assistant.recipes.shorthand import spelled_out
from assistant.recipes.told import SMALLEST_G, as_written, is_weighed, roles
from assistant.recipes.yields import bare_yields, read_yields
from rules import tables

Kind = Literal["ingredient", "step", "part", "makes", "heading", "around"]
WORDS = "lexicon/recipe_talk.toml"
LONGEST_TEXT = 4_000
LONGEST_TITLE, LONGEST_PREPARATION = 6, 3
NEAR_NAME = 74.0
_BULLET = re.compile(r"^\s*(?:[•*·●▪–—-]\s*|\(?\d{1,2}[.)]\s+(?=[A-Za-z]))+")
_HEADED = re.compile(r"^(?P<around>[^\d:;]{2,60}):\s+(?P<lines>.*)$", re.S)
_PLACED = re.compile(
    r"^(?P<lines>.*\S)\s+(?P<around>(?:for|at)\s+\d[\d,.]*\s*(?:ft|feet|foot|m|metres?|meters?))\.?$", re.I | re.S
)
_AN_AMOUNT = re.compile(r"\d")
_CUT = re.compile(r"\s*(?:,(?!(?<=\d,)\d)|;|\.(?=\s|$))\s*")
# a further amount begins without a sign before it
_NEXT = re.compile(
    r"(?<=[a-z])\s+(?:and\s+|plus\s+|&\s*)?(?=\d)|(?<!\ba)\s+(?:and\s+)?(?=(?:a\s+)?(?:pinch|dash)\b)", re.I
)
# what a line is led in by: and 200 g flour
_LED = re.compile(
    r"^(?:(?:and|plus|also|oh|then|ok|so)\s+(?:also\s+)?(?=\d|an?\s|pinch\b|[½¼¾⅓⅔])"
    r"|(?:first|next|second|here goes|starts?)[a-z ]{0,16}:\s+(?=\d))",
    re.I,
)
_BARE = re.compile(r"(?P<figure>\d+(?:\.\d+)?)\s+(?P<name>[a-z][a-z ]*)", re.I)
_TURNED = re.compile(r"(?P<name>[a-z][a-z ]*?)\s+(?P<figure>\d+(?:[.,/]\d+)?)\s*(?P<unit>[a-z]+)?", re.I)
_HEAT = re.compile(r"\b\d{2,3}\s*(?:°\s*)?(?:[cf]\b|degrees|deg\b)|\bgas\s+(?:mark\s+)?\d", re.I)
_TIME = re.compile(r"\b\d+(?:\.\d+)?\s*(?:min|mins|minutes?|hrs?|hours?|h)\b|\bovernight\b", re.I)


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece of what was said, and what it is of a recipe; around: nothing of one."""

    text: str
    kind: Kind


@dataclass(frozen=True, slots=True)
class Dictated:
    """What an utterance tells of a recipe. around: the words that are of no line of it."""

    pieces: tuple[Piece, ...] = ()

    @property
    def around(self) -> str:
        """What is said around the lines."""
        return ", ".join(piece.text for piece in self.pieces if piece.kind == "around")

    def of(self, *kinds: Kind) -> tuple[str, ...]:
        """The pieces of some kinds."""
        return tuple(piece.text for piece in self.pieces if piece.kind in kinds)

    @property
    def has_lines(self) -> bool:
        """Whether a line of a recipe is among it."""
        return bool(self.of("ingredient", "step"))


def dictated(text: str) -> Dictated:
    """The lines of a recipe in an utterance; a bare number of what is weighed is grams.

    >>> [piece.text for piece in dictated("200 g flour, sifted, 3 eggs and a pinch of salt").pieces]
    ['200 g flour, sifted', '3 eggs', 'a pinch of salt']
    """
    if not 0 < len(text) <= LONGEST_TEXT:
        return Dictated()
    pieces = [piece for line in spelled_out(corrected(text)).splitlines() if line.strip() for piece in _pieces(line)]
    return Dictated(tuple(_joined(_told_steps(pieces))))


def _pieces(line: str) -> Iterator[Piece]:
    """A line as one piece where it is one, else cut at its signs."""
    line = _BULLET.sub("", line).strip()
    for pattern in (_HEADED, _PLACED):
        # what leads up to the lines, and where they are for, is said around them
        if (found := pattern.search(line)) and _AN_AMOUNT.search(found["lines"]):
            around = found["around"].strip(" :,")
            yield Piece(part_named(around), "part") if part_named(around) else Piece(around, "around")
            yield from _pieces(found["lines"])
            return
    whole = _piece(line)
    amounts = sum(_piece(part).kind == "ingredient" for part in (p for c in _CUT.split(line) for p in _NEXT.split(c)))
    ends = any(_is_heated(part) for part in _CUT.split(line)[1:])
    if whole.kind not in ("around", "step") and amounts < 2 and not ends:
        yield whole
        return
    if whole.kind == "step" and not amounts:
        yield replace(whole, text=line)
        return
    for cut in filter(None, _CUT.split(line)):
        one = _piece(cut)
        apart = [_piece(part) for part in _NEXT.split(cut) if part.strip()]
        several = len(apart) > 1 and all(part.kind == "ingredient" for part in apart)
        yield from apart if several else [one]


def _is_heated(part: str) -> bool:
    """Whether a part of a line is a step at a heat: then 190 C 20 min."""
    low = fold(_LED.sub("", part.strip(" .,;")))
    return bool(_HEAT.search(low)) and is_step(low)


def _piece(text: str) -> Piece:
    text = _LED.sub("", text.strip(" .,;"))
    low = fold(text)
    if low.rstrip(":") in _headings():
        return Piece(text, "heading")
    if part := part_named(text):
        return Piece(part, "part")
    if read_yields(text) or bare_yields(text):
        return Piece(text, "makes")
    if line := as_line(text):
        return Piece(line, "ingredient")
    if is_step(low):
        return Piece(text, "step")
    return Piece(text, "around")


@cache
def _headings() -> frozenset[str]:
    return frozenset(word for name in ("ingredients", "steps") for word in words("headings", name))


@cache
def listed(name: str) -> tuple[str, ...]:
    """A list of words by which a recipe is talked of."""
    return tuple(tables.read_toml(WORDS)[name])


def part_named(text: str) -> str:
    """The sub-recipe that a few words name and nothing else: "for the icing", "oh the topping i forgot".

    >>> part_named("oh the topping i forgot"), part_named("icing:"), part_named("2 cups icing sugar")
    ('topping', 'icing', '')
    """
    if any(char.isdigit() for char in text):
        return ""
    said = [word for word in re.findall(r"[a-z-]+", fold(text)) if word not in listed("around_a_part")]
    parts = words("headings", "parts")
    if len(said) > 2 or not said or said[-1] not in parts or (len(said) > 1 and " ".join(said) in _dishes()):
        return ""
    return " ".join(said) if len(said) < 2 or text.strip().endswith(":") or fold(text).startswith("for ") else ""


@cache
def _dishes() -> frozenset[str]:
    from rules.foods.dishes import dishes

    return frozenset(name for dish in dishes().values() for name in (dish.name, *dish.heard_as))


def as_line(text: str) -> str:
    """A text as an ingredient line, where it is one: an amount of an ingredient that is known.

    >>> as_line("100 powdered sugar"), as_line("flour 250 g"), as_line("2 egss"), as_line("how much flour")
    ('100 g powdered sugar', '250 g flour', '2 eggs', '')
    """
    for form in _forms(text):
        read = read_line(form)
        if read is None or read.amount is None or read.line != form or read.amount <= 0:
            continue
        if read.known and (read.unit or read.mass_from == "each" or read.role in ("egg", "fruit")):
            return form
    return ""


def _forms(text: str) -> Iterator[str]:
    """A text in the forms in which it may be a line: with grams, turned round, spelled right."""
    bare = _BARE.fullmatch(text)
    if bare and float(bare["figure"]) >= SMALLEST_G and is_weighed(text):
        yield f"{bare['figure']} g {bare['name']}"
    if text[:1].isdigit() or re.match(r"(?:an?|one|two|three|four|five|six|half|pinch|dash)\b|[½¼¾⅓⅔]", text, re.I):
        yield text
        if right := _spelled(text):
            yield right
    turned = _TURNED.fullmatch(text)
    if turned and turned["name"].split()[-1].lower() not in listed("no_name_ends"):
        yield f"{turned['figure']} {turned['unit'] or 'g'} {turned['name']}"


def _spelled(text: str) -> str:
    """A line with the name of its ingredient put right where it is a slip of the keys."""
    from rapidfuzz import process
    from rapidfuzz.distance import OSA

    head, _, last = text.rpartition(" ")
    if not head or len(last) < 4 or not last.isalpha():
        return ""
    found = process.extractOne(last.lower(), _names(), scorer=OSA.normalized_similarity, score_cutoff=NEAR_NAME / 100)
    return f"{head} {found[0]}" if found and found[0] != last.lower() else ""


@cache
def _names() -> tuple[str, ...]:
    one_word = {name for name in roles() if name.isalpha()}
    return tuple(sorted(one_word | {f"{name}s" for name in one_word if len(name) < 5 and name[-1] != "s"}))


def is_step(low: str) -> bool:
    """Whether a text in lower case is a step: it says to do something with heat, time or the dough.

    >>> is_step("bake at 350f for 30 minutes"), is_step("190c for 20 min"), is_step("how long at 7000 ft")
    (True, True, False)
    """
    if any(low.startswith(f"{word} ") for word in listed("asks")) or low.endswith("?"):
        return False
    verb = re.match(rf"(?:then\s+|and\s+)*{any_of('steps', 'verbs')}", low)
    word = verb.group().split()[-1] if verb else ""
    figures = bool(_HEAT.search(low)) + bool(_TIME.search(low))
    plain = bool(verb) and word not in listed("no_step_alone") and len(low.split()) > 1
    worked = figures > 0 and bool(verb or _any(listed("step_words")).match(low)) and word not in listed("no_step")
    return plain or worked or (figures > 0 and _is_bare_step(low))


def _is_bare_step(low: str) -> bool:
    """Whether nothing but a time, a temperature and little words is said: 190c for 20 min, 1 hr more."""
    rest = _TIME.sub(" ", _HEAT.sub(" ", low))
    return set(re.findall(r"[a-z]+", rest)) <= {*listed("step_fillers"), *listed("step_words")}


@cache
def _any(phrases: tuple[str, ...]) -> re.Pattern[str]:
    return re.compile(rf"(?:{'|'.join(map(re.escape, phrases))})\b")


def ends_it(low: str) -> bool:
    """Whether a step sets the oven or bakes: what a recipe usually ends with."""
    return bool(_HEAT.search(low)) or _any(listed("ends_it")).search(low) is not None


def _told_steps(pieces: list[Piece]) -> Iterator[Piece]:
    """Pieces with what a bare step does said: 1 hr more behind a rise is a rise, 190c is of the oven."""
    verb = ""
    for piece in pieces:
        if piece.kind != "step":
            yield piece
            continue
        low = fold(piece.text)
        said = next((word for word in listed("step_words") if re.search(rf"\b{word}\b", low)), "")
        verb = said or ("bake at" if _HEAT.match(low) else verb)
        bare = not said and _is_bare_step(low)
        yield Piece(f"{verb} {piece.text}" if bare and verb else piece.text, "step")


def _joined(pieces: Iterator[Piece]) -> Iterator[Piece]:
    """Pieces with how an ingredient is prepared put behind it: 2 cups flour, sifted."""
    last: Piece | None = None
    for piece in pieces:
        little = piece.kind == "around" and len(piece.text.split()) <= LONGEST_PREPARATION
        prepared = set(fold(piece.text).split()) & set(words("lines", "neutral"))
        if last and last.kind == "ingredient" and little and prepared:
            last = replace(last, text=f"{last.text}, {piece.text}")
            continue
        if last:
            yield last
        last = piece
    if last:
        yield last


def added(sheet: Sheet, told: Dictated) -> Sheet:
    """The recipe with what was told of it."""
    for piece in told.pieces:
        match piece.kind:
            case "part":
                sheet = replace(sheet, part=piece.text)
            case "makes":
                sheet = replace(sheet, makes=piece.text)
            case "ingredient":
                line, part = _of_part(piece.text, sheet.part)
                sheet = replace(sheet, ingredients=(*sheet.ingredients, Entry(line, part)))
            case "step":
                part = sheet.part if sheet.part and sheet.part not in ("", *listed("top_parts")) else ""
                sheet = replace(sheet, steps=(*sheet.steps, Entry(piece.text, part)))
    return sheet


def _of_part(line: str, part: str) -> tuple[str, str]:
    """An ingredient and the sub-recipe it is of, where its own line says so: 100 g sugar for the icing."""
    found = re.search(rf",?\s+for (?:the )?(?P<part>{any_of('headings', 'parts')})$", line, re.I)
    return (line[: found.start()], found["part"].lower()) if found else (line, part)


def among_lines(told: Dictated) -> Dictated:
    """What is told amidst a recipe: what nobody has heard of is a line too, and is left as it is written."""
    return Dictated(tuple(_unless_around(piece) for piece in told.pieces))


def _unless_around(piece: Piece) -> Piece:
    return replace(piece, kind="ingredient") if piece.kind == "around" and _is_unmeasured(piece.text) else piece


def _is_unmeasured(text: str) -> bool:
    """Whether a text counts out what is unknown, or names an ingredient and how much is left to the cook."""
    if as_written(text):
        return True
    asks = any(fold(text).startswith(f"{word} ") for word in listed("asks")) or "?" in text
    read = None if asks or any(char.isdigit() for char in text) else read_line(text)
    return read is not None and bool(read.known) and len(text.split()) <= LONGEST_TITLE


def as_title(text: str) -> str:
    """A title, where a few words can be nothing else: Yellow Cake."""
    low = fold(text).strip(" .!")
    said = low.split()
    asks = any(low.startswith(f"{word} ") or low == word for word in (*listed("asks"), *listed("no_title")))
    digits = any(char.isdigit() for char in text)
    return text.strip(" .:") if 0 < len(said) <= LONGEST_TITLE and not asks and not digits and "?" not in text else ""
