"""A menu as a kitchen writes it -> Menu: plain text with a dish a line, a table of comma-separated columns, or recipes.

A line names a dish, and behind it in any order who takes it (40%, all, 35), as what it is served (side) and how big a
portion is (8 oz). Lines of the head tell the covers, the time of service and the kitchen. What cannot be read is one
fault each, and the rest of the menu stands.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from functools import cache
from itertools import pairwise
from pathlib import Path

from assistant.reading.reader import Heard, hear
from assistant.reading.spans import Found, Measure
from assistant.reading.words import cut
from assistant.recipes.pantry import neutral
from assistant.understanding import lexicon
from assistant.understanding.amounts import course
from rules import tables
from rules.amounts.portion import portion
from rules.foods.dishes import dishes
from rules.recipes.phrases import stems
from rules.said import Said, number, sentences

WORDS = "lexicon/menus.toml"
MOST_BYTES, MOST_LINES, LONGEST_LINE = 1024 * 1024, 2000, 300
MOST_COVERS = 100_000
RECIPES = (".txt", ".md", ".json", ".jsonld", ".html", ".htm")
# nearer than this a name is taken for the dish it nearly spells, or is offered [0 to 100]
TAKEN, OFFERED = 85, 72
# what joins two dishes of one line
JOINS = ("and", "&", "with", "+", "w")
RAW = ("raw", "dry", "uncooked")
KINDS = ("mass", "volume", "portion", "percent", "time", "length")
_BULLET = re.compile(r"^\s*(?:[-*•·▪]\s+|\d{1,3}[.)]\s+)?")
_PERCENT = re.compile(r"(?P<sign>[-−]\s*)?(?P<figure>\d+(?:[.,]\d+)?)\s*(?:%|percent\b|pct\b)", re.IGNORECASE)
_COUNT = re.compile(
    r"(?:^|[\s,;:(]|\bx\s*|×\s*)(?P<sign>[-−]\s*)?(?P<figure>\d{1,6})(?=\s*(?:$|[,;)]|x\b|×))", re.IGNORECASE
)
_PART = re.compile(r"(?<![\d/])(?P<over>\d{1,2})/(?P<under>\d{1,2})(?![\d/])")
_LEADING = re.compile(r"^\s*(?P<sign>[-−]\s*)?(?P<figure>\d{1,6})\s*(?:x\s+|×\s*|\s)(?=[^\W\d])", re.IGNORECASE)
say = sentences("planning/order")


@dataclass(frozen=True, slots=True, kw_only=True)
class MenuLine:
    """A dish of a menu, or a recipe of the cook's own. line: where it stands, from one

    covers: how many take it; share: of all the guests; both None where all do. portion_g: on the plate, cooked
    recipe: the file of a recipe, None for a dish of the lexicon, which `dish` names
    """

    line: int
    text: str
    dish: str = ""
    recipe: Path | None = None
    covers: int | None = None
    share: float | None = None
    course: str | None = None
    portion_g: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Menu:
    """A menu as read. faults: what could not be read, a sentence each; notes: what was taken for something"""

    title: str = ""
    covers: int | None = None
    service: str = ""
    kitchen: str = ""
    at: str = ""
    lines: tuple[MenuLine, ...] = ()
    faults: tuple[Said, ...] = ()
    notes: tuple[Said, ...] = ()


@dataclass
class _Reading:
    """What has been read so far."""

    head: dict[str, str] = field(default_factory=dict)
    lines: list[MenuLine] = field(default_factory=list)
    faults: list[Said] = field(default_factory=list)
    notes: list[Said] = field(default_factory=list)


class _Unreadable(ValueError):
    """A line that cannot be read. fault: the sentence that says so"""

    def __init__(self, fault: Said) -> None:
        super().__init__(fault.id)
        self.fault = fault


def read_menu(content: bytes, folder: Path | None = None) -> Menu:
    """Read a menu. folder: where the recipes lie that it names; None where it may name none."""
    if len(content) > MOST_BYTES:
        return Menu(faults=(say("too-large"),))
    if b"\x00" in content and not content.startswith((b"\xff\xfe", b"\xfe\xff")):
        return Menu(faults=(say("not-text"),))
    text, told = _decoded(content)
    reading = _Reading(notes=told)
    rows = text.splitlines()
    if len(rows) > MOST_LINES:
        reading.faults.append(say("too-many-lines", most=number(MOST_LINES, 0), left=number(len(rows) - MOST_LINES, 0)))
    columns = _columns(rows[0]) if rows else {}
    if columns:
        _read_table(reading, rows[:MOST_LINES], columns, folder)
    else:
        for at, row in enumerate(rows[:MOST_LINES], start=1):
            _read_row(reading, at, row, folder)
    head = reading.head
    return Menu(
        title=head.get("title", ""),
        covers=int(head["covers"]) if "covers" in head else None,
        service=head.get("service", ""),
        kitchen=head.get("kitchen", ""),
        at=head.get("at", ""),
        lines=tuple(reading.lines),
        faults=tuple(reading.faults),
        notes=tuple(reading.notes),
    )


def of_folder(files: Iterable[Path], title: str = "") -> Menu:
    """The menu that a folder of recipes is: each for all the guests."""
    lines = (MenuLine(line=at, text=file.name, recipe=file) for at, file in enumerate(files, start=1))
    return Menu(title=title, lines=tuple(lines))


def _decoded(content: bytes) -> tuple[str, list[Said]]:
    if content.startswith((b"\xff\xfe", b"\xfe\xff")):
        return content.decode("utf-16", errors="replace"), []
    try:
        return content.decode("utf-8-sig"), []
    except UnicodeDecodeError:
        return content.decode("cp1252", errors="replace"), [say("not-utf-8")]


@cache
def _words(section: str) -> dict[str, str]:
    """What each word of a section stands for."""
    listed = tables.read_toml(WORDS)[section]
    return {word: name for name, words in listed.items() for word in words}


@cache
def plain_dishes() -> frozenset[str]:
    """Dishes that are no more than the usual formula of their kind."""
    return frozenset(tables.read_toml(WORDS)["plain"]["dishes"])


def is_meatless(text: str) -> bool:
    """Whether the words of a dish say that it is made without meat: vegetable lasagna."""
    return not set(cut(text).norms).isdisjoint(tables.read_toml(WORDS)["meatless"]["words"])


# A table


def _columns(row: str) -> dict[str, int]:
    """The columns of a table by what they are, where the first line names them; empty where it is no table."""
    cells = [cell.strip().lower() for cell in next(csv.reader([row]), [])]
    known = {_words("columns")[cell]: at for at, cell in reversed(list(enumerate(cells))) if cell in _words("columns")}
    return known if "dish" in known and len(cells) > 1 else {}


def _read_table(reading: _Reading, rows: Sequence[str], columns: dict[str, int], folder: Path | None) -> None:
    try:
        table = list(csv.reader(io.StringIO("\n".join(rows))))
    except csv.Error:
        reading.faults.append(say("no-table"))
        return
    for at, cells in enumerate(table[1:], start=2):
        told = {name: cells[i].strip() for name, i in columns.items() if i < len(cells) and cells[i].strip()}
        if not told.get("dish"):
            continue
        share = told.get("share", "")
        share = f"{share}%" if re.fullmatch(r"[-−]?\d+(?:\.\d+)?", share) else share
        parts = (told["dish"], told.get("course", ""), share, told.get("covers", ""), told.get("portion", ""))
        _read_row(reading, at, ", ".join(filter(None, parts)), folder)


# Plain text


def _read_row(reading: _Reading, at: int, row: str, folder: Path | None) -> None:
    text = _BULLET.sub("", row).strip()
    if not any(sign.isalnum() for sign in text) or text.startswith("#"):
        return
    if len(text) > LONGEST_LINE:
        reading.faults.append(say("too-long", line=at))
        return
    try:
        if not _read_head(reading, at, text):
            reading.lines += _dishes(reading, at, text, folder)
    except _Unreadable as unreadable:
        reading.faults.append(unreadable.fault)


def _read_head(reading: _Reading, at: int, text: str) -> bool:
    """Whether the line is one of the head, which is then noted."""
    lead, colon, rest = text.partition(":")
    name = _words("head").get(lead.strip().lower()) if colon and not lead[-1:].isdigit() else None
    if name:
        _note(reading, at, name, rest.strip())
        return True
    heard = hear(text, KINDS)
    if any(found.kind == "dish" for found in _found(text)) or _as_recipe(text):
        return False
    opens = not reading.lines and not reading.head and not reading.faults
    if opens and not heard.numbers and (_is_event(text) or not _nearly(text)):
        reading.head["title"] = text
        return True
    if "," in text and not heard.clock:
        return False
    if heard.clock:
        _note(reading, at, "service", text)
        return True
    first = cut(text).norms[0] if cut(text).norms else ""
    groups = [m for m in heard.measures if m.kind == "portion"]
    if groups or (_words("head").get(first) == "covers" and heard.numbers):
        _note(reading, at, "covers", text)
        return True
    return False


def _is_event(text: str) -> bool:
    """Whether a line names an occasion, however like a dish it may sound: dinner, banquet."""
    return not set(cut(text).norms).isdisjoint(tables.read_toml(WORDS)["titles"]["events"])


def _note(reading: _Reading, at: int, name: str, told: str) -> None:
    """Note a thing of the head; the first of its kind stands."""
    if name == "covers":
        told = str(_covers_told(at, told))
    elif name == "service":
        told = _time_told(told)
    if name in reading.head and reading.head[name] != told:
        raise _Unreadable(say("told-twice", line=at, what=name, kept=reading.head[name], left=told))
    reading.head[name] = told


def _time_told(text: str) -> str:
    """A time of service without the words that lead up to it."""
    leads = sorted((word for word, name in _words("head").items() if name == "service"), key=len, reverse=True)
    lead = next((word for word in leads if text.lower().startswith(f"{word} ")), "")
    return text[len(lead) :].strip(" :") or text


def _covers_told(at: int, text: str) -> int:
    heard = hear(text, KINDS)
    figures = [m.said for m in heard.measures if m.kind == "portion"] or [n.value for n in heard.numbers]
    # the reader hears the sign of some figures and not of others
    return _enough(at, -abs(figures[0]) if figures and re.search(r"[-−]\s*\d", text) else sum(figures[:1]), text)


def _enough(at: int, covers: float, text: str) -> int:
    if not 1 <= covers <= MOST_COVERS:
        raise _Unreadable(say("no-covers", line=at, text=text, most=number(MOST_COVERS, 0)))
    return round(covers)


# A dish


def _dishes(reading: _Reading, at: int, text: str, folder: Path | None) -> Iterator[MenuLine]:
    """The dishes of a line, mostly one; all of them are taken by as many."""
    file = _as_recipe(text)
    takers = _takers(at, MenuLine(line=at, text=text), text[len(file) :] if file else text)
    if file:
        yield _recipe(takers, file, folder)
        return
    found = [one for one in _found(text) if one.kind == "dish"]
    if not found:
        yield replace(takers, dish=_guessed(reading, at, text))
        return
    words = cut(text).norms
    # of dishes that stand side by side the last one is what it is: garlic mashed potatoes
    first = next(i for i, one in enumerate(found) if i + 1 == len(found) or found[i + 1].start > one.end)
    found = found[first:]
    named = [_meant(reading, at, text, found[0])]
    for one, other in pairwise(found):
        if words[one.end : other.start] and set(words[one.end : other.start]) <= set(JOINS):
            named.append(other.id)
        else:
            break
    if len(named) > 1:
        reading.notes.append(say("read-as-two", line=at, text=text, dishes=" + ".join(named)))
    for name in named:
        yield replace(takers, dish=name, portion_g=_plated(name, text) if len(named) == 1 else None)


def _meant(reading: _Reading, at: int, text: str, found: Found) -> str:
    """The dish that was heard in a line; a name misspelled whole goes before what was heard of it, which is told."""
    words = cut(text.split(",")[0]).norms
    named = {w for other in _found(text) if other.kind != "dish" for w in words[other.start : other.end]}
    left = [
        w
        for w in words[: found.start]
        if len(w) > 1 and w.isalpha() and not set(stems(w)) <= neutral() and w not in named | _small_words()
    ]
    if not left or found.id in text.split(",")[0].lower().partition(" ")[0]:
        return found.id
    near = _nearly(text.split(",")[0])
    dish = near[0] if near and near[1] >= TAKEN else found.id
    reading.notes.append(say("read-as", line=at, text=text, dish=dish))
    return dish


def _as_recipe(text: str) -> str:
    """The name of a recipe's file at the head of a line; "" where there is none."""
    named = text.split(",")[0].strip()
    return named if named.lower().endswith(RECIPES) else ""


def _recipe(takers: MenuLine, file: str, folder: Path | None) -> MenuLine:
    """The line of a recipe, which lies beside the menu or below it and nowhere else."""
    path = (folder / file) if folder else None
    if path is None or not path.is_file() or folder is None or folder.resolve() not in path.resolve().parents:
        raise _Unreadable(say("no-recipe", line=takers.line, file=file))
    return replace(takers, recipe=path)


def _found(text: str) -> tuple[Found, ...]:
    return lexicon.hear(list(cut(text).norms))


def _guessed(reading: _Reading, at: int, text: str) -> str:
    """The dish that a line nearly spells."""
    near = _nearly(text)
    if near and near[1] >= TAKEN:
        reading.notes.append(say("read-as", line=at, text=text, dish=near[0]))
        return near[0]
    raise _Unreadable(say("no-dish", line=at, text=text, near=near[0] if near else "", sure="yes" if near else "no"))


def _nearly(text: str) -> tuple[str, float] | None:
    """The dish whose name or other word is nearest to the words of a line, and how near; None where none is near."""
    from rapidfuzz import fuzz, process

    words = " ".join(w for w in hear(text, KINDS).left() if w[0].isalpha() and w not in _small_words())
    best = process.extractOne(words, _names().keys(), scorer=fuzz.ratio, score_cutoff=OFFERED) if words else None
    return (_names()[best[0]], best[1]) if best else None


@cache
def _small_words() -> frozenset[str]:
    return frozenset(word for words in _words("shares") for word in words.split())


@cache
def _names() -> dict[str, str]:
    return {word: name for name, dish in dishes().items() for word in (*dish.heard_as, name)}


# Who takes it, and how much of it


def _takers(at: int, line: MenuLine, text: str) -> MenuLine:
    """A line with its take-rate or count, and as what it is served."""
    words = list(cut(text).norms)
    line = replace(line, course=course([*words, "."]) or course(words))
    if found := _PERCENT.search(text):
        share = float(found["figure"].replace(",", ".")) / 100
        if found["sign"] or not 0 < share <= 1:
            raise _Unreadable(say("no-share", line=at, text=text))
        return replace(line, share=share)
    heard = hear(text, KINDS)
    if part := _fraction(text, heard):
        return replace(line, share=part)
    groups = [m for m in heard.measures if m.kind == "portion"]
    if groups:
        before = text[: heard.place(groups[0])[0]].rstrip()
        return replace(line, covers=_enough(at, -1 if before.endswith(("-", "−")) else groups[0].said, text))
    if counted := _bare_count(text, heard):
        return replace(line, covers=_enough(at, -1 if counted["sign"] else float(counted["figure"]), text))
    told = " ".join(words)
    shares = {"all": 1.0, "half": 0.5, "third": 1 / 3, "quarter": 0.25}
    named = next(
        (shares[n] for word, n in _words("shares").items() if re.search(rf"\b{re.escape(word)}\b", told)), None
    )
    return replace(line, share=named)


def _fraction(text: str, heard: Heard) -> float | None:
    """A part of the guests that stands as a fraction and belongs to no measure: 1/2."""
    spans = [heard.place(m) for m in heard.measures]
    found = next((m for m in _PART.finditer(text) if not any(a <= m.start() < b for a, b in spans)), None)
    part = int(found["over"]) / int(found["under"]) if found and int(found["under"]) else 0.0
    return part if 0 < part <= 1 else None


def _bare_count(text: str, heard: Heard) -> re.Match[str] | None:
    """A figure that stands for itself, before the dish or behind it, and belongs to no measure."""
    spans = [heard.place(m) for m in heard.measures]
    found = (*_LEADING.finditer(text), *_COUNT.finditer(text))
    return next((m for m in found if not any(a <= m.start("figure") < b for a, b in spans)), None)


def _plated(dish: str, text: str) -> float | None:
    """The size of a portion as it is cooked [g]; a raw one by what becomes of it."""
    heard = hear(text, KINDS)
    one: Measure | None = next((m for m in heard.measures if m.kind == "mass"), None)
    if one is None:
        return None
    raw = not set(heard.norms(one.end, one.end + 2)).isdisjoint(RAW)
    return one.low * (portion(dish, dishes()[dish].dish_class).yields if raw else 1.0)
