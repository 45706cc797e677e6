"""The rule registry: which rules exist, where they live, and what each rests on.

A room is a module in rules/methods (named as the method), rules/topics (named as the topic), rules/safety/subjects
(named as the subject of the question), rules/recipes/rooms (named as what of a recipe its rules are asked about) or
rules/forms (named as the form of the question, whose rules are asked about what another room has worked out). It
holds a tuple RULES, in the order in which a cook wants to hear them, and may hold NEEDS, or a function `needs`, where
it must know other things than the catalogue says of the topic. The book imports a room when it is first asked for, so
that a cold answer pays for one room only. A room that reads a request its own way (which of two elevations is the
baseline) holds a function `settled` that gives the request as it is to be worked out. A room with many rules of which a
request wants one (`why`) holds rules_for(request) instead of RULES; rules_for(None) gives every rule.
"""

from __future__ import annotations

import importlib
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import cache, cached_property
from types import ModuleType
from typing import TYPE_CHECKING, Any

from rules import tables
from rules.foods.dishes import classes, traits_of
from rules.model import Caution, Figure, Request, Sentence
from rules.modules import module_names
from rules.physics.ambient import Ambient, ambient
from rules.said import Measure, Said, Words, elevation, sentences

if TYPE_CHECKING:
    from rules.baking.change import Change, Shift

SHELVES = ("methods", "topics", "safety", "recipes", "forms")
FOLDERS = {
    "methods": "rules.methods",
    "topics": "rules.topics",
    "safety": "rules.safety.subjects",
    "recipes": "rules.recipes.rooms",
    "forms": "rules.forms",
}
# rules that join any room of a question, as (what they are asked for, module, name)
JOINING = (
    ("danger", "rules.safety.danger", "warning"),
    ("danger", "rules.preserving.tested_way", "after_danger"),
    ("amount", "rules.heat.batch_size", "note"),
    ("equipment", "rules.heat.equipment", "note"),
)
say = sentences("common")


@dataclass(frozen=True)
class Case:
    """What a rule works on. Every value is derived from the request; nothing is changed on the way."""

    request: Request

    @cached_property
    def here(self) -> Ambient:
        """The asker's air."""
        return ambient(self.request.elevation_m or 0.0, self.request.pressure_pa)

    @cached_property
    def there(self) -> Ambient:
        """The air of the baseline: where the time or recipe that is being scaled was right."""
        return ambient(self.request.from_elevation_m or 0.0)

    @cached_property
    def sea(self) -> Ambient:
        """Standard air at sea level, which published tables take for granted."""
        return ambient(0.0)

    @property
    def dish_class(self) -> str:
        """The dish class, or `general` where the dish or the class is unknown."""
        named = self.request.dish_class
        return named if named in classes() else "general"

    @cached_property
    def traits(self) -> tuple[str, ...]:
        """What the food is: ids of data/lexicon/traits.toml."""
        return traits_of(self.request.dish, self.request.dish_class)

    @property
    def food(self) -> str | Said:
        """What to call the dish in a sentence."""
        return self.request.dish or say("it")

    @property
    def place(self) -> Measure:
        """The asker's elevation."""
        return elevation(self.here.elevation_m)

    @property
    def baseline(self) -> Measure:
        """The baseline's elevation."""
        return elevation(self.there.elevation_m)

    @property
    def moved(self) -> bool:
        """Whether the asker's air differs from the baseline's by more than a cook could notice."""
        return abs(self.here.boiling_c - self.there.boiling_c) >= 0.1


def celsius(figure_id: str, label: Sentence, temp_c: float, sea_level_c: float | None = None) -> Figure:
    """A temperature figure, to a hundredth of a degree: text rounds further."""
    return Figure(
        figure_id, label, round(temp_c, 2), "degC", sea_level=None if sea_level_c is None else round(sea_level_c, 2)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """What one rule adds to an answer, or to a recipe that is converted.

    headline: the one sentence that answers, where this rule can word it better than the general template
    because: why, in a sentence or a short paragraph with live figures; maths: the equation with its numbers (depth 3)
    sources: replaces the rule's own sources when a table row names a better one
    changes: what it changes in a recipe, line by line or step by step
    shift: what becomes of the one time or temperature it was asked about
    """

    figures: tuple[Figure, ...] = ()
    steps: tuple[Words, ...] = ()
    because: Words = ""
    maths: Words = ""
    cautions: tuple[Caution, ...] = ()
    headline: Words = ""
    sources: tuple[str, ...] = ()
    changes: tuple[Change, ...] = ()
    shift: Shift | None = None


@dataclass(frozen=True, slots=True)
class Rule:
    """A rule: its id, the sources it rests on, and the function that works it out (None where it does not apply).

    What it is asked about is a Case; on the shelf of recipes what its room says: the recipe, which is a Case too, one
    time or temperature of it, or what came of it; on the shelf of forms a question with what was worked out.
    """

    id: str
    sources: tuple[str, ...]
    work: Callable[[Any], Part | None]

    def __call__(self, case: Any) -> Part | None:
        return self.work(case)

    @property
    def purpose(self) -> str:
        """The first line of the function's docstring."""
        return (self.work.__doc__ or "").strip().splitlines()[0]


def rule(rule_id: str, *sources: str) -> Callable[[Callable[[Any], Part | None]], Rule]:
    """Make a function a rule. sources are ids of data/sources.toml, at least one."""

    def wrap(work: Callable[[Any], Part | None]) -> Rule:
        if not sources:
            raise ValueError(f"rule {rule_id}: name at least one source, or common-practice")
        return Rule(rule_id, sources, work)

    return wrap


def names(shelf: str) -> tuple[str, ...]:
    """Names of the rooms on a shelf (`methods`, `topics`, `safety`, `recipes` or `forms`), sorted.

    >>> "braise" in names("methods")
    True
    """
    return module_names(FOLDERS[shelf])


@cache
def room(shelf: str, name: str) -> ModuleType | None:
    """The module of a room, imported at first use; None where there is none yet."""
    return importlib.import_module(f"{FOLDERS[shelf]}.{name}") if name in names(shelf) else None


def rules_of(module: ModuleType, request: Request | None = None) -> tuple[Rule, ...]:
    """The rules of a room for a request (every rule for None), in the order in which they speak."""
    choose = getattr(module, "rules_for", None)
    rules: tuple[Rule, ...] = choose(request) if choose else module.RULES
    return rules


def spoken(rules: tuple[Rule, ...], case: Any) -> Iterator[tuple[Rule, Part]]:
    """Each rule that has something to say to a case, in order, with what it says."""
    for item in rules:
        if (part := item(case)) is not None:
            yield item, part


def on_recipe(name: str, case: Any) -> Iterator[tuple[Rule, Part]]:
    """The same for the rules of one room on the shelf of recipes."""
    module = room("recipes", name)
    return spoken(rules_of(module) if module else (), case)


def every_rule() -> Iterator[tuple[str, Rule]]:
    """Every rule with the name of its room, each once, in the order of rooms; those that join any room first."""
    for called, module_name, rule_name in JOINING:
        yield called, getattr(importlib.import_module(module_name), rule_name)
    seen: set[str] = set()
    for shelf in SHELVES:
        for name in names(shelf):
            module = room(shelf, name)
            for item in rules_of(module) if module else ():
                if item.id not in seen:
                    seen.add(item.id)
                    yield f"{shelf}/{name}", item


def sources_of(rule_ids: tuple[str, ...]) -> tuple[tables.Source, ...]:
    """Entries of the bibliography, in the order asked for, each once."""
    known = tables.sources()
    return tuple(known[i] for i in dict.fromkeys(rule_ids) if i in known)
