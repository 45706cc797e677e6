"""The one validator of everything under data/: all faults in one go, each pinned to its file and row."""

from __future__ import annotations

import csv
from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, fields
from importlib.resources.abc import Traversable
from typing import Any, get_args

from rapidfuzz import process

from rules import book, catalogue, tables
from rules.errors import RulesError
from rules.foods.dishes import with_changes
from rules.model import MISSING_WORDS
from rules.physics import air
from rules.physics.units import M_PER_FT
from rules.recipe import TempOf, TimeOf

ROLES = [
    "flour",
    "sugar",
    "fat",
    "egg",
    "liquid",
    "leavening",
    "yeast",
    "acid",
    "salt",
    "starch",
    "dairy",
    "chocolate",
    "nut",
    "fruit",
    "flavouring",
    "other",
]
DENSITY_G_PER_CUP = (20, 1000)
TRAITS = "lexicon/traits.toml"
NOT_BOTH = ("perishable", "shelf_stable")


@dataclass(frozen=True, slots=True)
class Fault:
    """What is wrong, where."""

    file: str
    row: str
    problem: str

    def __str__(self) -> str:
        return f"data/{self.file}: {self.row}: {self.problem}"


def faults() -> list[Fault]:
    """Every fault of the data, in the order of the checks."""
    return [fault for check in CHECKS for fault in check()]


def unknown(kind: str, word: str, known: Iterable[str]) -> str:
    """The sentence for a word that is not in a list, with the nearest one that is."""
    near = process.extractOne(word, list(known), score_cutoff=60)
    return f'{kind} "{word}" unknown' + (f'; did you mean "{near[0]}"' if near else "")


def rows_of(file: str, key: str) -> list[dict[str, Any]]:
    """The rows of a lexicon file; none where the file is not there."""
    return list(tables.read_toml(file).get(key, ())) if tables.data_path(file).is_file() else []


def ids(file: str, key: str) -> set[str]:
    """The ids of a lexicon file."""
    return {row["id"] for row in rows_of(file, key)}


def required(file: str, rows: list[dict[str, Any]], name: str, fields: tuple[str, ...]) -> Iterator[Fault]:
    """Rows that lack a field, or stand twice."""
    for row in rows:
        for field in fields:
            if field not in row:
                yield Fault(file, str(row.get(name, "?")), f"{field} missing")
    for word, count in Counter(str(row.get(name)) for row in rows).items():
        if count > 1:
            yield Fault(file, word, f"stands {count} times")


def twice_heard(file: str, rows: list[dict[str, Any]], name: str) -> Iterator[Fault]:
    """Words that are heard as two different rows."""
    owner: dict[str, str] = {}
    for row in rows:
        own = str(row.get(name, "")).replace("_", " ")
        for phrase in dict.fromkeys(p.casefold() for p in [own, *row.get("heard_as", ())]):
            first = owner.setdefault(phrase, str(row[name]))
            if first != row[name]:
                yield Fault(file, str(row[name]), f'"{phrase}" is heard as "{first}" already')


def check_sources() -> Iterator[Fault]:
    """The bibliography."""
    rows = rows_of("sources.toml", "source")
    yield from required("sources.toml", rows, "id", ("id", "title", "short", "publisher", "year", "where", "basis"))
    for row in rows:
        if row.get("basis") not in tables.BASES:
            yield Fault("sources.toml", row["id"], unknown("basis", str(row.get("basis")), tables.BASES))


def check_classes() -> Iterator[Fault]:
    """Dish classes."""
    file = "lexicon/classes.toml"
    rows, methods = rows_of(file, "class"), ids("lexicon/methods.toml", "method")
    yield from required(file, rows, "id", ("id", "label", "taken_for", "check", "varies", "default_method"))
    for row in rows:
        if row.get("default_method") not in methods:
            yield Fault(file, row["id"], unknown("method", str(row.get("default_method")), methods))
        yield from trait_faults(file, row["id"], (), row.get("traits", ()))


def check_traits() -> Iterator[Fault]:
    """The closed list of traits."""
    rows = rows_of(TRAITS, "trait")
    yield from required(TRAITS, rows, "id", ("id", "means", "source"))
    for row in rows:
        if row.get("source") not in tables.sources():
            yield Fault(TRAITS, str(row.get("id")), unknown("source", str(row.get("source")), tables.sources()))


def trait_faults(file: str, row: str, of: Iterable[str], changes: Iterable[str]) -> Iterator[Fault]:
    """Traits that are not in the list, change nothing, or cannot go together."""
    known, of = ids(TRAITS, "trait"), tuple(of)
    for change in changes:
        trait, taken = change.removeprefix("-"), change.startswith("-")
        if trait not in known:
            yield Fault(file, row, unknown("trait", trait, known))
        elif taken != (trait in of):
            yield Fault(file, row, f'"{change}" changes nothing: see the traits of its class')
    if set(NOT_BOTH) <= set(with_changes(of, changes)):
        yield Fault(file, row, f"is {' and '.join(NOT_BOTH)} at once")


def check_methods() -> Iterator[Fault]:
    """Cooking methods."""
    from assistant.contributing.validate_methods import problems

    file = "lexicon/methods.toml"
    rows = rows_of(file, "method")
    yield from required(file, rows, "id", ("id", "label", "gerund", "heard_as", "amount", "description"))
    yield from twice_heard(file, rows, "id")
    yield from (Fault(*problem) for problem in problems())


def check_dishes() -> Iterator[Fault]:
    """Dishes: known class, methods and traits, dishes that cook alike well formed, no word heard as two dishes."""
    classes = {row["id"]: row.get("traits", ()) for row in rows_of("lexicon/classes.toml", "class")}
    methods = ids("lexicon/methods.toml", "method")
    every: list[dict[str, Any]] = []
    for path in files_in("lexicon/dishes", ".toml"):
        file = f"lexicon/dishes/{path.name}"
        rows = rows_of(file, "dish")
        followers = [{"name": f} if isinstance(f, str) else f for row in rows for f in row.get("cooks_like", ())]
        every += [*rows, *followers]
        yield from required(file, rows, "name", ("name", "class", "methods"))
        for follower in followers:
            for field in sorted(follower.keys() - {"name", "heard_as", "traits"}):
                yield Fault(file, str(follower.get("name", "?")), f"{field} is not for a dish of cooks_like")
        for row in rows:
            if row.get("class") not in classes:
                yield Fault(file, row["name"], unknown("class", str(row.get("class")), classes))
            for method in row.get("methods", ()):
                if method not in methods:
                    yield Fault(file, row["name"], unknown("method", method, methods))
            for named in (row, *(f for f in row.get("cooks_like", ()) if not isinstance(f, str))):
                of = classes.get(row.get("class"), ())
                yield from trait_faults(file, str(named.get("name", "?")), of, named.get("traits", ()))
    yield from required("lexicon/dishes", every, "name", ("name",))
    yield from twice_heard("lexicon/dishes", [row for row in every if "name" in row], "name")


def check_topics() -> Iterator[Fault]:
    """The catalogue of questions."""
    file = catalogue.FILE
    rows = rows_of(file, "topic")
    yield from required(file, rows, "id", ("id", "description", "example"))
    for row in rows:
        for column in row.keys() - {field.name for field in fields(catalogue.Topic)}:
            yield Fault(file, row["id"], unknown("column", column, [field.name for field in fields(catalogue.Topic)]))
        for mark in set(row.get("marks", ())).difference(get_args(catalogue.Mark)):
            yield Fault(file, row["id"], unknown("mark", mark, get_args(catalogue.Mark)))
        for topic in set(row.get("turns_to", {}).values()) - {row["id"] for row in rows}:
            yield Fault(file, row["id"], unknown("topic", topic, [row["id"] for row in rows]))
        for word in (*row.get("needs", ()), *row.get("ask", {})):
            if word not in MISSING_WORDS:
                yield Fault(file, row["id"], unknown("slot", word, MISSING_WORDS))


def check_places() -> Iterator[Fault]:
    """Places: an airport that exists or an elevation that can be cooked at."""
    import airportsdata

    file = "lexicon/places.toml"
    rows, airports = rows_of(file, "place"), airportsdata.load("IATA")
    yield from required(file, rows, "name", ("name",))
    yield from twice_heard(file, rows, "name")
    for row in rows:
        airport = airports.get(row.get("airport", ""))
        elevation_m = row.get("elevation_m", airport["elevation"] * M_PER_FT if airport else None)
        if elevation_m is None:
            yield Fault(file, row["name"], "no elevation_m, and no airport of that code")
            continue
        try:
            air.pressure_pa(elevation_m)
        except RulesError as error:
            yield Fault(file, row["name"], str(error))


def check_ingredients() -> Iterator[Fault]:
    """Ingredients: plausible densities, known sources and roles."""
    file = "lexicon/ingredients.toml"
    rows = rows_of(file, "ingredient")
    low, high = DENSITY_G_PER_CUP
    yield from required(file, rows, "name", ("name", "source", "role"))
    yield from twice_heard(file, rows, "name")
    for row in rows:
        if not low <= row.get("grams_per_cup", low) <= high:
            yield Fault(file, row["name"], f"{row['grams_per_cup']} g a cup is not plausible")
        if row.get("role") not in ROLES:
            yield Fault(file, row["name"], unknown("role", str(row.get("role")), ROLES))
        if row.get("source") not in tables.sources():
            yield Fault(file, row["name"], unknown("source", str(row.get("source")), tables.sources()))


def check_word_lists() -> Iterator[Fault]:
    """Equipment, explanations and symptoms: complete rows, no phrase heard as two."""
    for name in ("equipment", "explanations", "symptoms"):
        file, key = f"lexicon/{name}.toml", name.removesuffix("s") if name != "equipment" else name
        rows = rows_of(file, key)
        yield from required(file, rows, "id", ("id", "heard_as"))
        yield from twice_heard(file, rows, "id")


def check_safety_subjects() -> Iterator[Fault]:
    """Subjects of food safety: complete rows, known topics, no phrase heard as two, each room reached."""
    file = "lexicon/safety_subjects.toml"
    rows = rows_of(file, "subject")
    yield from required(file, rows, "id", ("id", "title", "topic", "heard_as"))
    yield from twice_heard(file, rows, "id")
    for row in rows:
        if row.get("topic") not in catalogue.topics():
            yield Fault(file, row["id"], unknown("topic", str(row.get("topic")), catalogue.topics()))
    for room in set(book.names("safety")) - {row["id"] for row in rows}:
        yield Fault(file, room, "has rules in rules/safety, but stands in no row")


def check_recipe_roles() -> Iterator[Fault]:
    """Roles of the figures of a recipe: known to the rules, in ranges; unsafe recipes: known sources and apparatus."""
    file, roles = "lexicon/recipe_roles.toml", {"time": get_args(TimeOf), "temperature": get_args(TempOf)}
    for kind, known in roles.items():
        for row in rows_of(file, kind):
            if row.get("id") not in known:
                yield Fault(file, str(row.get("id")), unknown(kind, str(row.get("id")), known))
            if row.get("low_c", 0) > row.get("high_c", 0):
                yield Fault(file, row["id"], "low_c is above high_c")
    file, apparatus = "lexicon/recipe_safety.toml", ids(file, "apparatus")
    rows = rows_of(file, "danger")
    yield from required(file, rows, "id", ("id", "sources"))
    for row in rows:
        for source in row.get("sources", ()):
            if source not in tables.sources():
                yield Fault(file, row["id"], unknown("source", source, tables.sources()))
        for name in row.get("apparatus", ()):
            if name not in apparatus:
                yield Fault(file, row["id"], unknown("apparatus", name, apparatus))


def check_tables() -> Iterator[Fault]:
    """Published tables: known source, a unit for every column of numbers, all rows complete."""
    known = tables.sources()
    for path in files_in("tables", ".csv"):
        file = f"tables/{path.name}"
        try:
            table = tables.read_csv(file)
        except (RulesError, ValueError, csv.Error) as error:
            yield Fault(file, "head", str(error))
            continue
        if table.source not in known:
            yield Fault(file, "head", unknown("source", table.source, known))
        for number, row in enumerate(table.rows, start=1):
            if row.get("source", table.source) not in known:
                yield Fault(file, f"row {number}", unknown("source", str(row["source"]), known))
            if None in row or None in row.values():
                yield Fault(file, f"row {number}", "has not as many cells as the head")
        for column in numeric_columns(table):
            if column not in table.units:
                yield Fault(file, column, "no unit in the `# units:` line")


def numeric_columns(table: tables.Table) -> list[str]:
    """Columns in which every filled cell is a number."""
    columns = list(table.rows[0]) if table.rows else []
    return [c for c in columns if (cells := [r[c] for r in table.rows if r[c]]) and all(map(is_number, cells))]


def is_number(cell: str) -> bool:
    """Whether a cell holds a number."""
    try:
        float(cell)
    except ValueError:
        return False
    return True


def files_in(folder: str, ending: str) -> list[Traversable]:
    """Files of a data folder, sorted by name; none where there is no such folder."""
    path = tables.data_path(folder)
    return sorted((f for f in path.iterdir() if f.name.endswith(ending)), key=lambda f: f.name) if path.is_dir() else []


def check_moves() -> Iterator[Fault]:
    """What cooks say about the conversation itself, and the pieces that are asked for."""
    from assistant.dialogue import moves

    for read in (moves.phrases, moves.pieces):
        try:
            read()
        except tables.BadTable as fault:
            yield Fault(moves.CATALOGUE, read.__name__, str(fault).removeprefix(f"data/{moves.CATALOGUE}: "))


def check_drill() -> Iterator[Fault]:
    """How a drill is asked for, and the words by which replies to it are read."""
    from assistant.drill import words

    try:
        words.catalogue()
    except tables.BadTable as fault:
        yield Fault(words.CATALOGUE, "replies", str(fault).removeprefix(f"data/{words.CATALOGUE}: "))


def check_dangers() -> Iterator[Fault]:
    """What is heard as danger, and that there is a sentence for each."""
    from assistant.contributing.validate_dangers import problems

    yield from (Fault(*problem) for problem in problems())


def check_wording() -> Iterator[Fault]:
    """Every sentence that is said stands in every language, filled with the names it has."""
    from assistant.contributing import (
        validate_causes,
        validate_dangers,
        validate_details,
        validate_explanations,
        validate_printing,
        validate_wording,
    )

    by_rows = (
        *validate_explanations.calls(),
        *validate_causes.calls(),
        *validate_dangers.calls(),
        *validate_details.calls(),
        *validate_printing.calls(),
    )
    yield from (Fault(*problem) for problem in validate_wording.problems(by_rows))
    yield from (Fault(*problem) for problem in validate_explanations.problems())
    yield from (Fault(*problem) for problem in validate_printing.problems())


def check_lexicon_rows() -> Iterator[Fault]:
    """Every word of the lexicon is heard as its own row, every number is plausible."""
    from assistant.contributing.validate_lexicon import problems

    yield from (Fault(*problem) for problem in problems())


def check_utterances() -> Iterator[Fault]:
    """The example questions."""
    from assistant.contributing.validate_utterances import problems

    yield from (Fault(*problem) for problem in problems())


CHECKS: tuple[Callable[[], Iterator[Fault]], ...] = (
    check_sources,
    check_traits,
    check_classes,
    check_methods,
    check_dishes,
    check_topics,
    check_places,
    check_ingredients,
    check_word_lists,
    check_moves,
    check_drill,
    check_safety_subjects,
    check_dangers,
    check_wording,
    check_lexicon_rows,
    check_utterances,
    check_recipe_roles,
    check_tables,
)
