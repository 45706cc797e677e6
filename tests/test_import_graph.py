"""Which room may import which: arrows go one way, and no module imports itself round a corner."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
PACKAGES = ("rules", "assistant")

# each room may import those of its own and of earlier lines
FLOORS = (
    ("rules.errors", "rules.modules", "rules.physics.units"),
    ("rules.said", "rules.model", "rules.tables", "rules.recipe"),
    ("rules.physics", "rules.catalogue"),
    ("rules.foods.dishes", "rules.recipes.phrases"),
    ("rules.book", "rules.example"),
    ("rules.heat", "rules.foods", "rules.safety"),
    ("rules.baking", "rules.preserving", "rules.amounts"),
    ("rules.methods", "rules.safety.subjects"),
    ("rules.recipes", "rules.explanations"),
    ("rules.mending", "rules.forms"),
    ("rules.topics", "rules.engine"),
    ("rules.drill",),
    ("assistant",),
)


def modules() -> dict[str, Path]:
    """Dotted name -> file."""
    found = {}
    for package in PACKAGES:
        for path in sorted((ROOT / package).rglob("*.py")):
            parts = path.relative_to(ROOT).with_suffix("").parts
            found[".".join(parts[:-1] if parts[-1] == "__init__" else parts)] = path
    return found


def imported(name: str, path: Path, known: dict[str, Path]) -> Iterator[str]:
    """Modules of ours that a module imports, wherever in it, but for what only its types need."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    for_types = {inner for node in ast.walk(tree) if for_typing(node) for inner in ast.walk(node)}
    for node in ast.walk(tree):
        if node in for_types:
            continue
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names if alias.name in known)
        elif isinstance(node, ast.ImportFrom) and node.module and node.module.split(".")[0] in PACKAGES:
            for alias in node.names:
                inner = f"{node.module}.{alias.name}"
                yield inner if inner in known else node.module


def for_typing(node: ast.AST) -> bool:
    return isinstance(node, ast.If) and isinstance(node.test, ast.Name) and node.test.id == "TYPE_CHECKING"


@cache
def graph() -> dict[str, frozenset[str]]:
    known = modules()
    return {name: frozenset(set(imported(name, path, known)) - {name}) for name, path in known.items()}


def circles() -> Iterator[list[str]]:
    """Each circle once, by depth-first search."""
    done: set[str] = set()

    def visit(name: str, way: list[str]) -> Iterator[list[str]]:
        if name in way:
            yield [*way[way.index(name) :], name]
        elif name not in done:
            for other in sorted(graph()[name]):
                yield from visit(other, [*way, name])
            done.add(name)

    for name in sorted(graph()):
        yield from visit(name, [])


def floor(module: str) -> int:
    """The floor of a module: that of the longest room it lies in."""
    rooms = {room: level for level, row in enumerate(FLOORS) for room in row}
    own = [room for room in rooms if module == room or module.startswith(f"{room}.")]
    return rooms[max(own, key=len)] if own else 0


def test_no_module_imports_itself_round_a_corner() -> None:
    assert [" -> ".join(circle) for circle in circles()] == []


@pytest.mark.parametrize("package", PACKAGES)
def test_arrows_never_point_upward(package: str) -> None:
    upward = [
        f"{name} -> {other}"
        for name, others in graph().items()
        for other in sorted(others)
        if name.startswith(package) and floor(other) > floor(name)
    ]
    assert upward == []


def test_the_floors_name_rooms_that_are_there() -> None:
    assert {room for row in FLOORS for room in row} <= set(graph())
