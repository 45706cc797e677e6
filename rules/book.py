"""The rule registry: which rules exist, where they live, and what each rests on.

A room is a module in rules/methods (named as the method), rules/topics (named as the topic) or rules/safety (named as
the subject of the question). It holds a tuple RULES, in the order in which a cook wants to hear them, and may hold
NEEDS: what must be known before it can answer. The book imports a room when it is first asked for, so that a cold
answer pays for one room only. A room with many rules of which a request wants one (`why`) holds rules_for(request)
instead of RULES; rules_for(None) gives every rule.
"""

from __future__ import annotations

import importlib
import pkgutil
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import cache
from types import ModuleType

from rules import tables
from rules.case import Case
from rules.model import Caution, Figure, Request

SHELVES = ("methods", "topics", "safety")


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """What one rule adds to an answer.

    headline: the one sentence that answers, where this rule can word it better than the general template
    because: why, in a sentence or a short paragraph with live figures; maths: the equation with its numbers (depth 3)
    sources: replaces the rule's own sources when a table row names a better one
    """

    figures: tuple[Figure, ...] = ()
    steps: tuple[str, ...] = ()
    because: str = ""
    maths: str = ""
    cautions: tuple[Caution, ...] = ()
    headline: str = ""
    sources: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Rule:
    """A rule: its id, the sources it rests on, and the function that works it out (None where it does not apply)."""

    id: str
    sources: tuple[str, ...]
    work: Callable[[Case], Part | None]

    def __call__(self, case: Case) -> Part | None:
        return self.work(case)

    @property
    def purpose(self) -> str:
        """The first line of the function's docstring."""
        return (self.work.__doc__ or "").strip().splitlines()[0]


def rule(rule_id: str, *sources: str) -> Callable[[Callable[[Case], Part | None]], Rule]:
    """Make a function a rule. sources are ids of data/sources.toml, at least one."""

    def wrap(work: Callable[[Case], Part | None]) -> Rule:
        if not sources:
            raise ValueError(f"rule {rule_id}: name at least one source, or common-practice")
        return Rule(rule_id, sources, work)

    return wrap


@cache
def names(shelf: str) -> tuple[str, ...]:
    """Names of the rooms on a shelf (`methods`, `topics` or `safety`), sorted; a shelf names what is none in NOT_ROOMS.

    >>> "braise" in names("methods")
    True
    """
    package = importlib.import_module(f"rules.{shelf}")
    helpers = getattr(package, "NOT_ROOMS", ())
    return tuple(sorted(m.name for m in pkgutil.iter_modules(package.__path__) if m.name not in helpers))


@cache
def room(shelf: str, name: str) -> ModuleType | None:
    """The module of a method, topic or subject of safety, imported at first use; None where there is none yet."""
    return importlib.import_module(f"rules.{shelf}.{name}") if name in names(shelf) else None


def rules_of(module: ModuleType, request: Request | None = None) -> tuple[Rule, ...]:
    """The rules of a room for a request (every rule for None), in the order in which they speak."""
    choose = getattr(module, "rules_for", None)
    rules: tuple[Rule, ...] = choose(request) if choose else module.RULES
    return rules


def needs_of(module: ModuleType) -> tuple[str, ...]:
    """What a room must know before it can answer, words of model.MISSING_WORDS, most important first."""
    return getattr(module, "NEEDS", ("elevation",))


def every_rule() -> Iterator[tuple[str, Rule]]:
    """Every rule with the name of its room, each once, in the order of rooms; those that join any room first."""
    from rules import amount, danger, equipment

    yield "danger", danger.warning
    yield "amount", amount.note
    yield "equipment", equipment.note
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
