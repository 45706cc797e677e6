"""The rules write no sentence: what people read stands in data/wording, and the code names it."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
MODULES = sorted((ROOT / "rules").rglob("*.py"))
FEWEST_WORDS = 5
# what goes wrong is said in the code, by the class of the error
OF_ERRORS = ("within", "among", "OutOfRange", "UnknownWord", "_help")


def prose(module: Path) -> Iterator[str]:
    """Literals of five words or more, but for docstrings, errors and their hints."""
    tree = ast.parse(module.read_text(encoding="utf-8"))
    left_out = {id(inner) for node in ast.walk(tree) if is_of_errors(node) for inner in ast.walk(node)}
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in left_out:
            words = re.findall(r"[A-Za-z]{2,}(?= |[.,;:!?]|$)", node.value)
            yield from (f"line {node.lineno}: {node.value[:60]}" for _ in words[FEWEST_WORDS - 1 : FEWEST_WORDS])


def is_of_errors(node: ast.AST) -> bool:
    match node:
        case ast.Raise():
            return True
        case ast.Call(func=ast.Name(id=name) | ast.Attribute(attr=name)):
            return name in OF_ERRORS or name == "compile"
        case ast.Assign(targets=[ast.Name(id=name)]):
            return "hint" in name.casefold()
        case ast.Expr(value=ast.Constant(value=str())):
            return True
    return False


@pytest.mark.parametrize("room", sorted({module.parent for module in MODULES}), ids=lambda room: room.name)
def test_no_room_of_the_rules_writes_a_sentence(room: Path) -> None:
    found = [f"{module.name}, {line}" for module in MODULES if module.parent == room for line in prose(module)]
    assert found == []


def test_a_sentence_in_the_code_is_seen(tmp_path: Path) -> None:
    written = tmp_path / "rule.py"
    written.write_text('"""A rule that says something."""\n\nSTEP = "Cook it with the lid on."\n', encoding="utf-8")
    assert list(prose(written)) == ["line 3: Cook it with the lid on."]
