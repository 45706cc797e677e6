"""What went wrong: the rows of the catalogue, and which of them a word means of a dish."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any

from rules.errors import UnknownWord
from rules.foods.dishes import usual_method
from rules.tables import read_toml

CATALOGUE = "lexicon/symptoms.toml"
GENERAL = "general"
RESCUE = "mending/rescue"


@dataclass(frozen=True, slots=True, kw_only=True)
class Failed:
    """The dish that failed, as far as it is known. equipment: what it was cooked in, ids of the lexicon."""

    dish_class: str | None = None
    dish: str | None = None
    method: str | None = None
    equipment: tuple[str, ...] = ()

    @classmethod
    def of(cls, dish_class: str | None, dish: str | None, method: str | None, equipment: tuple[str, ...]) -> Failed:
        """What was told of it; cooked as that dish usually is where nobody said how."""
        usual = usual_method(dish, dish_class) if dish and dish_class else None
        return cls(dish_class=dish_class, dish=dish, method=method or usual, equipment=equipment)

    @property
    def is_known(self) -> bool:
        """Whether it is known what kind of dish it is."""
        return self.dish_class not in (None, GENERAL)


@dataclass(frozen=True, slots=True)
class Symptom:
    """One row of data/lexicon/symptoms.toml, whose head explains every column."""

    id: str
    title: str
    classes: tuple[str, ...] = ()
    kinds: tuple[str, ...] = ()
    usual: str = ""
    dishes: frozenset[str] = frozenset()
    methods: frozenset[str] = frozenset()
    equipment: frozenset[str] = frozenset()
    together: tuple[frozenset[str], ...] = ()
    keeps: bool = False
    raw: bool = False
    discard: bool = False
    everywhere: bool = False
    rescue: str = ""
    instead_of: tuple[str, ...] = ()

    def singles_out(self, failed: Failed) -> bool:
        """Whether the row is for this very dish, or for what it was cooked in."""
        by_method = failed.method in self.methods and (not failed.is_known or failed.dish_class in self.classes)
        return failed.dish in self.dishes or by_method or not self.equipment.isdisjoint(failed.equipment)

    def befalls(self, failed: Failed) -> bool:
        """Whether this can go wrong with the dish; anything can with one that is not known."""
        if self.usual:
            return False
        if self.keeps or self.singles_out(failed):
            return True
        if self.methods or self.equipment or (self.dishes and not self.classes):
            return not failed.is_known and failed.method is None
        return not self.classes or not failed.is_known or failed.dish_class in self.classes


@cache
def catalogue() -> dict[str, Symptom]:
    """Every symptom by id, in order of precedence.

    >>> catalogue()["sank_in_the_middle"].title
    'sank in the middle'
    """
    return {r["id"]: _row(r) for r in read_toml(CATALOGUE)["symptom"]}


def _row(row: dict[str, Any]) -> Symptom:
    held: dict[str, Any] = {key: tuple(row.get(key, ())) for key in ("classes", "kinds", "instead_of")}
    held |= {key: frozenset(row.get(key, ())) for key in ("dishes", "methods", "equipment")}
    held |= {key: row[key] for key in ("usual", "rescue", "keeps", "raw", "discard", "everywhere") if key in row}
    together = tuple(frozenset(group) for group in row.get("together", ()))
    return Symptom(row["id"], row["title"], together=together, **held)


def meant(id: str, failed: Failed | str | None = None) -> Symptom:
    """The symptom that is meant of a dish: the row for that dish, the row itself where it befalls it, or one akin.

    failed: the dish, or its class alone
    raises: UnknownWord for an id that is not in the catalogue

    >>> meant("hard", "rice").id, meant("hard").id, meant("sank_in_the_middle", "choux").id
    ('grain_hard', 'beans_hard', 'puffs_collapsed')
    """
    row = catalogue().get(id)
    if row is None:
        raise UnknownWord.among("symptom", id, catalogue())
    failed = failed if isinstance(failed, Failed) else Failed(dish_class=failed)
    if row.keeps:
        return row
    akin = [*_akin(row, failed)]
    own = next((other for other in akin if row.id in other.kinds and other.singles_out(failed)), None)
    if row.befalls(failed):
        return own or row
    near = own or next((other for other in akin if other.singles_out(failed)), None)
    known = near or (failed.is_known and next((other for other in akin if other.befalls(failed)), None))
    return known or (catalogue()[row.usual] if row.usual else row)


def _akin(row: Symptom, failed: Failed) -> Iterable[Symptom]:
    """Rows that words for this one can mean, those of its first kind first."""
    kinds = (row.id, *row.kinds)
    near = {other.id: other for kind in kinds for other in catalogue().values() if kind in other.kinds}
    # what is of jars alone is meant only of what is in a jar
    of_jars = (other for other in near.values() if not other.keeps or failed.dish_class in other.classes)
    return (other for other in of_jars if other.id != row.id)


def all_meant(ids: Sequence[str], failed: Failed) -> tuple[Symptom, ...]:
    """The symptoms that are meant of a dish, the one that leads first; what cannot befall it only where nothing can.

    What is told at once and has a row of its own leads; then what was told first.

    >>> [s.id for s in all_meant(["burnt", "raw"], Failed(dish_class="fried_dough"))][0]
    'dark_outside_raw_inside'
    """
    both = [row.id for row in catalogue().values() if row.together and all(not g.isdisjoint(ids) for g in row.together)]
    covered = {other for id in ids if id in catalogue() for other in catalogue()[id].instead_of}
    rows = tuple(dict.fromkeys(meant(id, failed) for id in (*both, *ids) if id not in covered))
    return tuple(row for row in rows if row.befalls(failed)) or rows


def of_dish(failed: Failed) -> tuple[Symptom, ...]:
    """What usually goes wrong with a dish, its own faults first."""
    rows = [row for row in catalogue().values() if not row.usual and not row.keeps]
    singled = [row for row in rows if row.singles_out(failed)]
    known = [row for row in rows if failed.is_known and failed.dish_class in row.classes]
    of_class = (row for row in known if not (row.methods or row.equipment))
    return tuple(dict.fromkeys((*singled, *sorted(of_class, key=lambda row: len(row.classes)))))
