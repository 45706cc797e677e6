"""What the lexicon holds that no example utterance says yet."""

from __future__ import annotations

from collections.abc import Iterator
from importlib.resources.abc import Traversable

from assistant.contributing.validate import files_in
from rules import tables
from rules.foods import dishes


def unspoken() -> Iterator[str]:
    """Lexicon rows, a line each, whose words stand in no utterance."""
    said = "\n".join(
        f.read_text(encoding="utf-8").casefold() for part in ("train", "test") for f in utterance_files(part)
    )
    for dish in dishes.dishes().values():
        if not any(phrase.casefold() in said for phrase in (dish.name, *dish.heard_as)):
            yield f"dish\t{dish.name}"
    for row in tables.read_toml("lexicon/methods.toml")["method"]:
        if not any(phrase.casefold() in said for phrase in row["heard_as"]):
            yield f"method\t{row['id']}"


def utterance_files(part: str) -> list[Traversable]:
    """The utterance files of the training or test set."""
    return files_in(f"utterances/{part}", ".yml")
