"""A Recipe -> plain text that is read back to the same lines."""

from __future__ import annotations

from collections.abc import Iterable

from assistant.recipes.facts import fact
from rules.recipe import Recipe


def to_text(recipe: Recipe) -> str:
    """The recipe as plain text that read_text reads back to the same lines.

    >>> from assistant.recipes.text import read_text
    >>> print(to_text(read_text("Rolls\\nIngredients\\nMethod\\nBake 20 minutes.")), end="")
    Rolls
    <BLANKLINE>
    Method
    1. Bake 20 minutes.
    """
    blocks = [[recipe.title] if recipe.title else [], [recipe.yields.line] if recipe.yields else []]
    blocks[0] += blocks.pop()
    facts = [n for n in recipe.notes if fact(n)]
    blocks[0] += facts
    if recipe.ingredients:
        blocks.append(["Ingredients", *_grouped((i.component, f"- {i.line}") for i in recipe.ingredients)])
    if recipe.steps:
        numbered = enumerate(recipe.steps, start=1)
        blocks.append(["Method", *_grouped((s.component, f"{n}. {' '.join(s.text.split())}") for n, s in numbered)])
    rest = [n for n in recipe.notes if n not in facts and n.strip(" :").lower() not in ("notes", "note")]
    if rest or recipe.unread:
        blocks.append(["Notes", *rest, *recipe.unread])
    return "\n\n".join("\n".join(block) for block in blocks if block) + "\n"


def _grouped(lines: Iterable[tuple[str, str]]) -> list[str]:
    """Lines with a heading wherever the sub-recipe changes."""
    written, current = list[str](), ""
    for component, line in lines:
        if component != current and component:
            written.append(f"For the {component}:")
        current = component
        written.append(line)
    return written
