"""The validator's part on wording: every sentence that a rule says is there, filled with what it names, and said."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from fluent.syntax import FluentParser
from fluent.syntax import ast as ftl
from fluent.syntax.visitor import Visitor

from rules import tables

FOLDER = "wording"
PACKAGES = ("rules", "assistant")
COMMON = "common"


@dataclass(frozen=True, slots=True)
class Call:
    """One `say("id", name=...)` in the code, or a sentence that data name; names is None where they are not told."""

    file: str
    id: str
    names: frozenset[str] | None
    where: str


def problems() -> Iterator[tuple[str, str, str]]:
    """File, row and what is wrong with it, for every fault; a language that lacks a file or a sentence is one."""
    calls = [*(call for module in modules() for call in calls_of(module)), *said_by_data()]
    yield from unwritten()
    for language in languages():
        yield from in_language(language, calls)


def in_language(language: str, calls: list[Call]) -> Iterator[tuple[str, str, str]]:
    """The faults of one language."""
    messages = {file: messages_of(language, file) for file in sorted({call.file for call in calls} | files(language))}
    said = {(call.file, call.id) for call in calls}
    for call in calls:
        home = f"{FOLDER}/{language}/{call.file}.ftl"
        wants = messages[call.file].get(call.id)
        if wants is None:
            yield home, call.id, f"no such sentence; {call.where} says it"
        elif call.names is not None and call.names != wants:
            apart = ", ".join(sorted(call.names ^ wants))
            yield home, call.id, f"{call.where} fills it with other names than it has: {apart}"
    for file, held in messages.items():
        for id in held:
            if file != COMMON and (file, id) not in said:
                yield f"{FOLDER}/{language}/{file}.ftl", id, "nothing says it"


def languages() -> list[str]:
    """The languages there are."""
    return sorted(folder.name for folder in tables.data_path(FOLDER).iterdir() if folder.is_dir())


def files(language: str) -> set[str]:
    """The files of a language, without their ending."""
    root = Path(str(tables.data_path(f"{FOLDER}/{language}")))
    return {str(path.relative_to(root).with_suffix("")) for path in root.rglob("*.ftl")}


def messages_of(language: str, file: str) -> dict[str, frozenset[str]]:
    """The sentences of a file with the names that fill them, those of attributes as `id.attribute`; {} without a file.

    raises: BadTable where a sentence cannot be read
    """
    path = tables.data_path(f"{FOLDER}/{language}/{file}.ftl")
    if not path.is_file():
        return {}
    found: dict[str, frozenset[str]] = {}
    for entry in FluentParser().parse(path.read_text(encoding="utf-8")).body:
        if isinstance(entry, ftl.Junk):
            junk = (entry.content or "").strip()[:80]
            raise tables.BadTable(f"data/{FOLDER}/{language}/{file}.ftl: cannot be read: {junk}")
        if isinstance(entry, ftl.Message):
            found |= {f"{entry.id.name}.{part.id.name}": _names_in(part.value) for part in entry.attributes}
            if entry.value:
                found[entry.id.name] = _names_in(entry.value)
    return found


def _names_in(pattern: ftl.Pattern) -> frozenset[str]:
    names = _Names()
    names.visit(pattern)
    return frozenset(names.found)


class _Names(Visitor):
    """Gathers the names of the values in a sentence."""

    def __init__(self) -> None:
        self.found: set[str] = set()

    def visit_VariableReference(self, node: ftl.VariableReference) -> None:
        self.found.add(node.id.name)


def modules() -> Iterator[Path]:
    """Every module of the code."""
    root = Path(__file__).parents[2]
    for package in PACKAGES:
        yield from sorted((root / package).rglob("*.py"))


def said_by_data() -> Iterator[Call]:
    """The sentences that data name: the reply to a danger, a refusal about jars, what a canned food asks for, kinds."""
    from rules.preserving import catalogue, foods
    from rules.safety import danger, lethality

    for reply in danger.replies().values():
        yield from (Call(reply.file, f"{reply.id}.{piece}", frozenset(), danger.REPLIES) for piece in reply.pieces)
    for refusal in catalogue.refusals().values():
        yield from (Call(said.file, said.id, None, catalogue.FILE) for said in refusal.sentences)
    for food in foods.foods().values():
        said_of = (said for said in (food.demands, food.instead) if said)
        yield from (Call(said.file, said.id, frozenset(), foods.FOODS) for said in said_of)
    for kind in lethality.kinds():
        kinds = (lethality.called(kind), lethality.called_held(kind))
        yield from (Call(said.file, said.id, frozenset(), lethality.KINDS) for said in kinds)


def calls_of(module: Path) -> Iterator[Call]:
    """The sentences a module says: calls of a name that holds `sentences("file")`."""
    tree = ast.parse(module.read_text(encoding="utf-8"))
    sayers = dict(_sayers(tree))
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in sayers and node.args:
            first, where = node.args[0], f"{module.name}:{node.lineno}"
            if isinstance(first, ast.Constant):
                yield Call(sayers[node.func.id], str(first.value), _names(node), where)


def _names(call: ast.Call) -> frozenset[str] | None:
    names = [keyword.arg for keyword in call.keywords]
    return None if None in names else frozenset(name for name in names if name)


def _sayers(tree: ast.Module) -> Iterator[tuple[str, str]]:
    for node in ast.walk(tree):
        match node:
            case ast.Assign(
                targets=[ast.Name(id=name)],
                value=ast.Call(func=ast.Name(id="sentences"), args=[ast.Constant(value=str(file))]),
            ):
                yield name, file


def unwritten() -> Iterator[tuple[str, str, str]]:
    """Calls whose id is not written out, which nothing can check."""
    for module in modules():
        tree = ast.parse(module.read_text(encoding="utf-8"))
        sayers = dict(_sayers(tree))
        for node in ast.walk(tree):
            says = isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in sayers
            if isinstance(node, ast.Call) and says and not any(isinstance(arg, ast.Constant) for arg in node.args[:1]):
                yield module.name, f"line {node.lineno}", "the id of a sentence is written out where it is said"
