"""The validator's part on wording: every sentence that a rule says is there, filled with what it names, and said."""

from __future__ import annotations

import ast
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

from fluent.syntax import FluentParser
from fluent.syntax import ast as ftl
from fluent.syntax.visitor import Visitor

from rules import tables

FOLDER = "wording"
PACKAGES = ("rules", "assistant")
COMMON, SHARED = "common", "shared"


@dataclass(frozen=True, slots=True)
class Call:
    """One `say("id", name=...)` in the code; names is None where they are not written out."""

    file: str
    id: str
    names: frozenset[str] | None
    where: str


@dataclass(frozen=True, slots=True)
class Message:
    """A sentence of a file: the names of the values in it, and the sentences it names."""

    names: frozenset[str]
    sentences: frozenset[str]


Messages = dict[str, dict[str, Message]]


def problems(by_rows: Iterable[Call] = ()) -> Iterator[tuple[str, str, str]]:
    """File, row and what is wrong with it, for every fault; a language that lacks a file or a sentence is one.

    by_rows: what is said not by a call in the code but by rows of the data
    """
    calls = [*(call for module in modules() for call in calls_of(module)), *by_rows]
    yield from unwritten()
    for language in languages():
        yield from in_language(language, calls)


def in_language(language: str, calls: list[Call]) -> Iterator[tuple[str, str, str]]:
    """The faults of one language."""
    messages = all_messages(language, {call.file for call in calls})
    said = {(home(messages, call.file, call.id), call.id) for call in calls}
    said |= {
        (home(messages, file, id), id) for file, held in messages.items() for m in held.values() for id in m.sentences
    }
    for call in calls:
        where = f"{FOLDER}/{language}/{call.file}.ftl"
        if call.id not in messages[home(messages, call.file, call.id)]:
            yield where, call.id, f"no such sentence; {call.where} says it"
        elif call.names is not None and (apart := call.names ^ names_of(messages, call.file, call.id)):
            yield where, call.id, f"{call.where} fills it with other names than it has: {', '.join(sorted(apart))}"
    for file, held in messages.items():
        for id in held:
            if file != COMMON and (file, id) not in said:
                yield f"{FOLDER}/{language}/{file}.ftl", id, "nothing says it"


def all_messages(language: str, wanted: Iterable[str] = ()) -> Messages:
    """The sentences of every file of a language and of every file that is wanted, with those that folders share."""
    known = files(language) | set(wanted)
    return {file: messages_of(language, file) for file in sorted(known | {shared(file) for file in known})}


def shared(file: str) -> str:
    """The file of what the files of a folder share."""
    return f"{file.rpartition('/')[0]}/{SHARED}"


def home(messages: Messages, file: str, id: str) -> str:
    """The file where a sentence stands: its own, or the one that its folder shares."""
    return shared(file) if id not in messages[file] and id in messages[shared(file)] else file


def names_of(messages: Messages, file: str, id: str) -> frozenset[str]:
    """The values that a sentence and those it names are filled with; none where it is not there."""
    message = messages[home(messages, file, id)].get(id)
    if message is None:
        return frozenset()
    return message.names.union(*(names_of(messages, file, other) for other in message.sentences))


def languages() -> list[str]:
    """The languages there are."""
    return sorted(folder.name for folder in tables.data_path(FOLDER).iterdir() if folder.is_dir())


def files(language: str) -> set[str]:
    """The files of a language, without their ending."""
    root = Path(str(tables.data_path(f"{FOLDER}/{language}")))
    return {str(path.relative_to(root).with_suffix("")) for path in root.rglob("*.ftl")}


def messages_of(language: str, file: str) -> dict[str, Message]:
    """The sentences of a file by their ids, those of attributes as `id.attribute`; empty where there is no such file.

    raises: BadTable where a sentence cannot be read
    """
    path = tables.data_path(f"{FOLDER}/{language}/{file}.ftl")
    if not path.is_file():
        return {}
    found: dict[str, Message] = {}
    for entry in FluentParser().parse(path.read_text(encoding="utf-8")).body:
        if isinstance(entry, ftl.Junk):
            junk = (entry.content or "").strip()[:80]
            raise tables.BadTable(f"data/{FOLDER}/{language}/{file}.ftl: cannot be read: {junk}")
        if isinstance(entry, ftl.Message):
            found |= {f"{entry.id.name}.{part.id.name}": _message(part.value) for part in entry.attributes}
            if entry.value:
                found[entry.id.name] = _message(entry.value)
    return found


def _message(pattern: ftl.Pattern) -> Message:
    names = _Names()
    names.visit(pattern)
    return Message(frozenset(names.found), frozenset(names.sentences))


class _Names(Visitor):
    """Gathers the names of the values and of other sentences in a sentence."""

    def __init__(self) -> None:
        self.found: set[str] = set()
        self.sentences: set[str] = set()

    def visit_VariableReference(self, node: ftl.VariableReference) -> None:
        self.found.add(node.id.name)

    def visit_MessageReference(self, node: ftl.MessageReference) -> None:
        self.sentences.add(f"{node.id.name}.{node.attribute.name}" if node.attribute else node.id.name)


def modules() -> Iterator[Path]:
    """Every module of the code."""
    root = Path(__file__).parents[2]
    for package in PACKAGES:
        yield from sorted((root / package).rglob("*.py"))


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
