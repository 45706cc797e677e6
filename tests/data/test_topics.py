"""The catalogue of questions is the only list of topics: what goes by the topic stands in its row."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

from rules import book
from rules.catalogue import marked, topics
from rules.model import MISSING_WORDS

ROOT = Path(__file__).parents[2]
MODULES = [path for package in ("rules", "assistant") for path in sorted((ROOT / package).rglob("*.py"))]
# words that are topics and slots of a request at once
SLOTS_TOO = {*MISSING_WORDS, "pressure"}
FEWEST = 2


def listed(tree: ast.AST) -> Iterator[tuple[int, set[str]]]:
    """Line and words of every tuple, list, set or dictionary whose words are all ids of topics."""
    for node in ast.walk(tree):
        items = node.keys if isinstance(node, ast.Dict) else getattr(node, "elts", ())
        words = {item.value for item in items if isinstance(item, ast.Constant) and isinstance(item.value, str)}
        if len(words) >= FEWEST and len(words) == len(items) and words <= topics().keys():
            yield node.lineno, words  # type: ignore[attr-defined]


def test_no_code_lists_topics() -> None:
    """A new topic touches its row, its module, its wording and its examples."""
    found = [
        (str(module.relative_to(ROOT)), line, words)
        for module in MODULES
        for line, words in listed(ast.parse(module.read_text("utf-8")))
        if words - SLOTS_TOO
    ]
    assert found == []


def test_a_list_of_topics_is_found() -> None:
    """In whatever brackets it stands."""
    for text in ('("time", "why")', '["help", "timer"]', '{"help", "timer"}', '{"order": 1, "schedule": 2}'):
        assert list(listed(ast.parse(text)))
    assert not list(listed(ast.parse('("time", "dish")')))


def test_a_room_for_topics_is_a_topic() -> None:
    """And what a method answers has no room of its own."""
    assert set(book.names("topics")) <= topics().keys()
    assert not marked("by_method") & set(book.names("topics"))
