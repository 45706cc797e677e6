"""The catalogue of what is refused about jars, from data/lexicon/canning_refusals.toml."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any

from rules.safety import danger
from rules.safety.danger import Reply
from rules.said import Said, sentences
from rules.tables import BadTable, read_toml

FILE, WORDING = "lexicon/canning_refusals.toml", "preserving/refusals"
say = sentences("preserving/refusals")


@dataclass(frozen=True, slots=True)
class Refusal:
    """What is refused.

    heard: whether a cook asks about it by name; the others follow from the food, the canner, the jar and the time
    shared: whether its words are those of a danger; else they are of the food, the canner and the place
    """

    id: str
    reply: Reply
    heard: bool
    shared: bool

    @property
    def stop(self) -> str:
        """Its sentence that is the caution."""
        return "verdict" if self.shared else "stop"

    @property
    def sentences(self) -> tuple[Said, ...]:
        """Every sentence of its own or of the danger that it shares them with."""
        own = () if self.shared else ("stop",)
        return tuple(self.reply.said(piece) for piece in (*own, *self.reply.pieces))

    def whom(self) -> tuple[Said, ...]:
        """Whom to ask."""
        if self.shared:
            return self.reply.whom()
        return (self.reply.said("ask") if self.reply.asks else say("ask"),)


@cache
def refusals() -> dict[str, Refusal]:
    """Every refusal by its id.

    raises: BadTable where a row has a field too many or too few, or names a danger that is none
    """
    return {id: _refusal(id, row) for id, row in read_toml(FILE).items()}


def _refusal(id: str, row: dict[str, Any]) -> Refusal:
    heard, fields = row.get("heard", False), {key: value for key, value in row.items() if key != "heard"}
    try:
        if fields.keys() == {"danger"}:
            return Refusal(id, danger.replies()[row["danger"]], heard, shared=True)
        reply = Reply(**{"asks": False, **fields, "id": id, "file": WORDING, "sources": tuple(row["sources"])})
    except (KeyError, TypeError) as fault:
        raise BadTable(f"data/{FILE}: {id}: {fault}") from fault
    return Refusal(id, reply, heard, shared=False)


PRACTICES = frozenset(id for id, row in read_toml(FILE).items() if row.get("heard"))
