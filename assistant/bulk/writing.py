"""One part: its recipes converted for every kitchen, and written to one file."""

from __future__ import annotations

import gc
import os
from collections.abc import Callable, Iterator, Sequence
from itertools import groupby, islice
from pathlib import Path
from typing import Any

import pyarrow as pa
import pyarrow.parquet as pq

from assistant.bulk import schema
from assistant.bulk.faults import Fault
from assistant.bulk.kitchens import Place
from assistant.bulk.manifest import ENDING, UNFINISHED
from assistant.bulk.parts import Finished, Options, Order, Source
from assistant.mistakes import problem
from assistant.recipes.converting import converted, recipe_in
from assistant.recipes.read import bytes_of
from assistant.replies.recipe.forms.json import without_text
from assistant.replies.recipe.forms.text import as_text
from assistant.replies.recipe.worded import in_words
from rules.recipe import Recipe

# How many conversions are held at a time, and how many rows are written at a time.
CONVERSIONS, ROWS = 256, 4096
# So many new objects before the collector looks for rings among them: conversions leave few.
COLLECTED_AFTER = 50_000
Begun = Callable[[int], None]
Group = tuple[Place, list[str]]


def write_part(order: Order, begun: Begun) -> Finished:
    """Convert the recipes of a part and write its file, which has its name only when it is whole.

    begun: is told the place of each recipe in the part when it is begun, and the number of them when all are
    raises: OSError where the file cannot be written; MemoryError
    """
    folder, part = Path(order.folder), order.part
    begun_as = folder / f".{part.name}.{os.uname().nodename}.{os.getpid()}{UNFINISHED}"
    columns = schema.pairs(order.options.with_text)
    faults: list[Fault] = []
    rows = 0
    try:
        with pq.ParquetWriter(begun_as, columns, compression="zstd") as file:
            for table in _gathered(_tables(order, begun, faults), columns):
                file.write_table(table)
                rows += table.num_rows
        begun_as.replace(folder / f"{part.name}{ENDING}")
    finally:
        begun_as.unlink(missing_ok=True)
    return Finished(rows=rows, faults=tuple(faults))


def settle() -> None:
    """Load what every recipe needs, so that none has to answer for that time, and leave it to no collector's rounds."""
    sample = recipe_in("Rolls\n500 g bread flour\n7 g yeast\n320 g water\nBake 20 minutes at 425 F.")
    _row(sample, Place(2000.0, "us"), Options(with_text=True))
    gc.collect()
    gc.freeze()
    gc.set_threshold(COLLECTED_AFTER)


def _gathered(tables: Iterator[pa.Table], columns: pa.Schema) -> Iterator[pa.Table]:
    """The same rows in tables that are worth a row group each."""
    held: list[pa.Table] = []
    for table in tables:
        held.append(table)
        if sum(t.num_rows for t in held) >= ROWS:
            yield pa.concat_tables(held)
            held = []
    yield pa.concat_tables(held) if held else columns.empty_table()


def _tables(order: Order, begun: Begun, faults: list[Fault]) -> Iterator[pa.Table]:
    groups = [(place, [name for name, _ in of]) for place, of in groupby(order.kitchens, key=lambda k: k[1])]
    for index, source in enumerate(order.part.recipes):
        if source.id in order.given_up:
            continue
        begun(index)
        try:
            recipe = recipe_in(bytes_of(Path(source.path)), name=source.id)
        except MemoryError:
            raise
        except Exception as fault:
            faults.append(Fault(kind="recipe", recipe=source.id, problem=problem(fault, source.id)))
            continue
        yield from _of_recipe(recipe, source, groups, order.options, faults)
    begun(len(order.part.recipes))


def _of_recipe(
    recipe: Recipe, source: Source, groups: Sequence[Group], options: Options, faults: list[Fault]
) -> Iterator[pa.Table]:
    """The rows of one recipe, each place worked out once and told of every kitchen there."""
    left = iter(groups)
    while some := list(islice(left, CONVERSIONS)):
        rows: list[dict[str, Any]] = []
        names: list[str] = []
        at: list[int] = []
        for place, kitchens in some:
            try:
                rows.append(_row(recipe, place, options))
            except MemoryError:
                raise
            except Exception as fault:
                told = problem(fault, source.id)
                faults += (Fault(kind="pair", recipe=source.id, kitchen=name, problem=told) for name in kitchens)
                continue
            names += kitchens
            at += [len(rows) - 1] * len(kitchens)
        if rows:
            yield from _shared(_table(rows, options.with_text), source.id, names, at)


def _row(recipe: Recipe, place: Place, options: Options) -> dict[str, Any]:
    found = in_words(
        converted(
            recipe,
            from_elevation_m=options.from_elevation_m,
            to_elevation_m=place.elevation_m,
            units=place.units,
        ),
        place.units,
    )
    text = {"text": as_text(found, place.units)} if options.with_text else {}
    return schema.as_row({**without_text(found), **text}, place.elevation_m, place.units)


def _table(rows: list[dict[str, Any]], with_text: bool) -> pa.Table:
    columns = schema.conversions(with_text)
    try:
        return pa.Table.from_pylist(rows, schema=columns)
    except UnicodeEncodeError:
        return pa.Table.from_pylist(_sayable(rows), schema=columns)


def _sayable(value: Any) -> Any:
    """The same with a question mark for every half of a letter, as standard output shows it."""
    match value:
        case str():
            return value.encode("utf-8", errors="replace").decode("utf-8")
        case dict():
            return {key: _sayable(of) for key, of in value.items()}
        case list() | tuple():
            return [_sayable(of) for of in value]
    return value


def _shared(conversions: pa.Table, recipe: str, names: list[str], at: list[int]) -> Iterator[pa.Table]:
    """The conversions, a row for every kitchen that shares one. at: which conversion is each kitchen's"""
    for start in range(0, len(names), ROWS):
        told = names[start : start + ROWS]
        rows = conversions.take(pa.array(at[start : start + ROWS], pa.int64()))
        key = [pa.array([recipe] * len(told), pa.string()), pa.array(told, pa.string())]
        yield pa.Table.from_arrays([*key, *rows.columns], schema=schema.pairs("text" in conversions.column_names))
