"""What is told of a kitchen field by field: its equipment, and how far its instruments are off."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.errors import AssistantError

if TYPE_CHECKING:
    from assistant.reading.spans import Measure


class BadOffset(AssistantError, ValueError):
    """A text that tells no difference. text: as it was typed; why: what is wrong, and what would do"""

    def __init__(self, text: str, why: str) -> None:
        super().__init__(text, why)
        self.text, self.why = text, why

    def __str__(self) -> str:
        return f"{self.text!r} {self.why}"


def equipment_id(words: str) -> str:
    """The id of a piece of equipment by its name or another that it goes by.

    raises: UnknownWord that names the nearest
    """
    from assistant.reading.text import fold
    from assistant.understanding.lexicon import meanings
    from rules.errors import UnknownWord
    from rules.tables import read_toml

    id = next((id for kind, id in meanings(fold(words)) if kind == "equipment"), None)
    if id is None:
        labels = [row["label"] for row in read_toml("lexicon/equipment.toml")["equipment"]]
        raise UnknownWord.among("equipment", words, labels)
    return id


def pascals(text: str) -> float:
    """A pressure difference [Pa] as it is typed: 0.05inHg, -2 hPa.

    raises: BadOffset
    """
    typed = _signed(text, ("pressure",))
    if typed is None:
        raise BadOffset(text, "is not a pressure; say 0.05inHg or -2hPa")
    return typed.low


def kelvins(text: str) -> float:
    """A temperature difference [K] as it is typed: 2F, -1 C.

    raises: BadOffset
    """
    # "2K" is two kelvins here, and never two thousand
    typed = _signed(re.sub(r"(?<=\d)\s*k\s*$", " K", text, flags=re.IGNORECASE), ("temperature",))
    if typed is None:
        raise BadOffset(text, "is not a difference in temperature; say 2F or -1C")
    return typed.said * 5 / 9 if typed.unit == "degF" else typed.said


def _signed(text: str, kinds: tuple[str, ...]) -> Measure | None:
    """A measure of some kinds and nothing else, with its sign."""
    from assistant.reading.reader import hear

    return hear(re.sub(r"^\+\s*|(?<=^-)\s+", "", text.strip()), kinds).only()
