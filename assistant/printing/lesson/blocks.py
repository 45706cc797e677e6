"""What a sheet is made of, block by block; every form writes the same blocks its own way."""

from __future__ import annotations

from dataclasses import dataclass

from assistant.printing.lesson.air_column import AirColumn


@dataclass(frozen=True, slots=True)
class Heading:
    """Opens a section."""

    text: str


@dataclass(frozen=True, slots=True)
class Lead:
    """A line that what follows hangs on: what is asked, what is explained. label: what stands before it, or "" """

    text: str
    label: str = ""


@dataclass(frozen=True, slots=True)
class Text:
    """A paragraph; label: what stands before it, or ""; small: for the few who look it up; strong: what
    it all comes to
    """

    text: str
    label: str = ""
    small: bool = False
    strong: bool = False


@dataclass(frozen=True, slots=True)
class Sum:
    """A line of reckoning, with its figures; label: what stands before it, or "" """

    text: str
    label: str = ""


@dataclass(frozen=True, slots=True)
class Steps:
    """What is done, numbered."""

    items: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Care:
    """What can hurt somebody, under its own title."""

    title: str
    items: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Grid:
    """A table: its head, and rows whose first cell says what they are."""

    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, slots=True)
class Picture:
    """The drawing of the air, with a line under it and what it shows in words."""

    column: AirColumn
    caption: str
    shows: str


@dataclass(frozen=True, slots=True)
class Asked:
    """A question. blank: what is written on"""

    text: str
    options: tuple[str, ...]
    blank: str


@dataclass(frozen=True, slots=True)
class Questions:
    """The questions of a set, numbered. intro: what stands over them"""

    intro: str
    items: tuple[Asked, ...]


@dataclass(frozen=True, slots=True)
class Answered:
    """The answer to a question: it, what else counts, and why."""

    shown: str
    counts: str
    why: str


@dataclass(frozen=True, slots=True)
class Answers:
    """The answers to a set, numbered as its questions."""

    items: tuple[Answered, ...]


@dataclass(frozen=True, slots=True)
class Together:
    """Blocks that stand on one page, such as what is done and what can hurt."""

    blocks: tuple[Block, ...]


Block = Heading | Lead | Text | Sum | Steps | Care | Grid | Picture | Questions | Answers | Together


@dataclass(frozen=True, slots=True)
class Sheet:
    """A sheet. to_fill_in: blanks at its head, such as for a name; foot: a line at the foot of every page"""

    title: str
    place: str
    to_fill_in: tuple[str, ...]
    blocks: tuple[Block, ...]
    foot: str
    language: str = "en"
