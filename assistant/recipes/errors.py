"""What can be wrong with a recipe before it is even read."""

from __future__ import annotations

from assistant.errors import AssistantError


class RecipeError(AssistantError, ValueError):
    """A file or text that cannot be read as a recipe.

    name: the file, or what else the cook calls it; problem: what is wrong; remedy: how to put it right

    >>> print(RecipeError("rolls.json", "the JSON breaks off at line 3", "Save the file again"))
    rolls.json: the JSON breaks off at line 3. Save the file again.
    """

    def __init__(self, name: str, problem: str, remedy: str) -> None:
        super().__init__(name, problem, remedy)
        self.name, self.problem, self.remedy = name, problem, remedy

    def __str__(self) -> str:
        return f"{self.name or 'this recipe'}: {self.problem}. {self.remedy}."


class NoRecipe(RecipeError):
    """A file or text that can be read but holds no recipe."""
