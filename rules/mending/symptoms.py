"""What went wrong: the rows of the catalogue, and which of them a word means of a dish."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from rules.errors import UnknownWord
from rules.tables import read_toml

CATALOGUE = "lexicon/symptoms.toml"


@dataclass(frozen=True, slots=True)
class Symptom:
    """One row of data/lexicon/symptoms.toml.

    classes: dish classes it can befall, the usual one first; kinds: words that mean it of those classes
    keeps: it is never taken for another fault, whatever the dish
    usual: of a word that means something else of every dish, the row that is taken where the dish says nothing
    raw: meat with this fault is not to be served yet; discard: whatever has it is thrown out untasted
    """

    id: str
    title: str
    classes: tuple[str, ...]
    kinds: tuple[str, ...]
    keeps: bool = False
    usual: str = ""
    raw: bool = False
    discard: bool = False


@cache
def catalogue() -> dict[str, Symptom]:
    """Every symptom by id, in order of precedence.

    >>> catalogue()["sank_in_the_middle"].title
    'sank in the middle'
    """
    rows = read_toml(CATALOGUE)["symptom"]
    return {
        r["id"]: Symptom(
            r["id"],
            r["title"],
            tuple(r.get("classes", ())),
            tuple(r.get("kinds", ())),
            r.get("keeps", False),
            r.get("usual", ""),
            r.get("raw", False),
            r.get("discard", False),
        )
        for r in rows
    }


def meant(id: str, dish_class: str | None) -> Symptom:
    """The symptom that is meant of a dish: the row itself where it befalls that class, else one of the same kind.

    raises: UnknownWord for an id that is not in the catalogue

    >>> meant("hard", "rice").id, meant("hard", None).id, meant("sank_in_the_middle", "choux").id
    ('grain_hard', 'beans_hard', 'puffs_collapsed')
    """
    row = catalogue().get(id)
    if row is None:
        raise UnknownWord.among("symptom", id, catalogue())
    fits_any = not row.usual and (dish_class is None or not row.classes)
    if row.keeps or fits_any or dish_class in row.classes:
        return row
    kinds = {row.id, *row.kinds}
    akin = (other for other in catalogue().values() if kinds & set(other.kinds) and dish_class in other.classes)
    return next(akin, catalogue()[row.usual] if row.usual else row)
