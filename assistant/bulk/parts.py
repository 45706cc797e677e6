"""What is to be done, cut into parts that are done and kept one by one."""

from __future__ import annotations

import json
import math
import os
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import asdict, dataclass
from functools import cache
from hashlib import sha256
from pathlib import Path

from assistant.bulk.faults import Fault
from assistant.bulk.kitchens import Kitchens, Place
from assistant.recipes.read import bytes_of
from rules import tables

# About how much one part may hold: few enough to lose little with it, enough to be worth a file.
CONVERSIONS, ROWS = 4096, 65_536
# What conversions depend on, beside the data: folders of our own packages.
CODE = ("rules", "assistant/recipes", "assistant/reading", "assistant/replies", "assistant/bulk")
DATA = ("lexicon", "tables", "wording")


@dataclass(frozen=True, slots=True)
class Source:
    """A recipe: what it is called in the table, and where it lies."""

    id: str
    path: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Options:
    """What is asked for. from_elevation_m: the elevation that the recipes are written for [m]"""

    from_elevation_m: float = 0.0
    with_text: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """Some recipes for all kitchens, and the file that they become.

    key: stands for everything that the result follows from
    """

    name: str
    key: str
    recipes: tuple[Source, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Order:
    """A part as it is handed to whoever does it.

    kitchens: each with its place, those of one place together; folder: where the file goes, seen by all who work
    limit_s: how long one recipe may take; tries: how often one is tried that stops or kills who works on it
    made_by: by which data and code it is to be done; given_up: ids of the recipes that were tried often enough
    """

    part: Part
    kitchens: tuple[tuple[str, Place], ...]
    options: Options
    folder: str
    limit_s: float
    tries: int
    made_by: str
    given_up: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True, kw_only=True)
class Finished:
    """What came of a part: how many rows its file has, and what could not be done."""

    rows: int
    faults: tuple[Fault, ...]


def sources(paths: Sequence[Path], root: Path | None) -> tuple[Source, ...]:
    """The recipes of these files, called as they lie in the folder where they all come from one."""
    return tuple(Source(_readable(path.relative_to(root) if root else path), str(path)) for path in paths)


def parts(recipes: Iterable[Source], kitchens: Kitchens, options: Options) -> tuple[Part, ...]:
    """The parts, in order of name.

    Which part a recipe falls into follows from its name alone, and how many parts there are from the size of the whole
    by powers of two: a recipe that is changed or added later leaves the other parts as they are.
    """
    every = tuple(recipes)
    together = min(CONVERSIONS / len(kitchens.distinct), ROWS / len(kitchens.names))
    count = 1 << max(0, math.ceil(math.log2(max(1.0, len(every) / max(1.0, together)))))
    shared = _key(made_by(), asdict(options), sorted(zip(kitchens.names, map(asdict, kitchens.places), strict=True)))
    drawers: dict[int, list[Source]] = defaultdict(list)
    for source in every:
        drawers[int(_key(source.id), 16) % count].append(source)
    return tuple(
        Part(
            name=f"part-{number:06d}-of-{count:06d}",
            key=_key(shared, [(source.id, _content(source.path)) for source in held]),
            recipes=tuple(sorted(held, key=lambda source: source.id)),
        )
        for number, held in sorted(drawers.items())
    )


def in_place_order(kitchens: Kitchens) -> tuple[tuple[str, Place], ...]:
    """The kitchens from the lowest up, those of one place together in the order of the table."""
    held = zip(kitchens.names, kitchens.places, strict=True)
    return tuple(sorted(held, key=lambda kitchen: (kitchen[1].elevation_m, kitchen[1].units)))


@cache
def made_by() -> str:
    """What stands for the data and the code that conversions follow from."""
    told = sha256()
    for name, file in _files():
        told.update(f"{name}\x00{sha256(file.read_bytes()).hexdigest()}\n".encode())
    return told.hexdigest()


def _files() -> Iterator[tuple[str, Path]]:
    ours = Path(tables.__file__).parents[1]
    data = Path(str(tables.data_path("units.txt"))).parent
    found = [(ours, path) for folder in CODE for path in (ours / folder).rglob("*")]
    found += [(data, path) for folder in DATA for path in (data / folder).rglob("*")] + [(data, data / "units.txt")]
    named = ((path.relative_to(root).as_posix(), path) for root, path in found if path.is_file())
    return (one for one in sorted(set(named)) if "__pycache__" not in one[0])


def _content(path: str) -> str:
    try:
        return sha256(bytes_of(Path(path))).hexdigest()
    except OSError:
        return ""


def _key(*of: object) -> str:
    return sha256(json.dumps(of, sort_keys=True).encode()).hexdigest()


def _readable(path: Path) -> str:
    return os.fsencode(path).decode("utf-8", errors="replace")
