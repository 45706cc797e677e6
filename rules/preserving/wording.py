"""The words of what is refused, from data/wording/en/canning_refusals.toml."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.tables import BadTable, read_toml

FILE = "wording/en/canning_refusals.toml"
FIRST_WORDS = ("No", "Discard")


@dataclass(frozen=True, slots=True)
class Refusal:
    """What is refused. no: the answer; instead: what to do; why: the reason; ask: whom to ask.

    stop: the caution, where it is not the no itself
    heard: whether a cook asks about it by name; the others follow from the food, the canner, the jar and the time
    """

    id: str
    no: str
    instead: str
    why: str
    sources: tuple[str, ...]
    ask: str
    stop: str = ""
    heard: bool = False


@cache
def refusals() -> dict[str, Refusal]:
    """Every refusal by its id.

    raises: BadTable where a row has a field too many or too few, or does not begin with No or Discard
    """
    data = read_toml(FILE)
    found: dict[str, Refusal] = {}
    for row in data["refusal"]:
        try:
            refusal = Refusal(**{"ask": data["ask"], **row, "sources": tuple(row["sources"])})
        except (KeyError, TypeError) as fault:
            raise BadTable(f"data/{FILE}: {row.get('id', row)}: {fault}") from fault
        if refusal.no.split()[0].strip(".,:") not in FIRST_WORDS:
            raise BadTable(f"data/{FILE}: {refusal.id}: begin with {' or '.join(FIRST_WORDS)}")
        if refusal.id in found:
            raise BadTable(f"data/{FILE}: {refusal.id} stands there twice")
        found[refusal.id] = refusal
    return found


PRACTICES = frozenset(id for id, refusal in refusals().items() if refusal.heard)
