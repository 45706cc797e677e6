"""What is refused or warned of whatever the topic: the verdict, what to do instead, why, and whom to ask."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cache

from rules import tables
from rules.book import Case, Part, rule
from rules.model import Caution, Units
from rules.physics.units import to_c
from rules.say import Say

WORDING = "wording/en/dangers"
VERDICTS = ("No", "Discard", "Yes", "Only if")


@dataclass(frozen=True, slots=True, kw_only=True)
class Danger:
    """A row of the wording; see its head."""

    id: str
    verdict: str
    instead: tuple[str, ...]
    why: str
    sources: tuple[str, ...]
    ask: str = ""
    rule: str = ""

    def __post_init__(self) -> None:
        if not self.verdict.startswith(VERDICTS):
            raise tables.BadTable(f"data/{WORDING}: {self.id}: the verdict begins with one of {', '.join(VERDICTS)}")


@cache
def dangers() -> dict[str, Danger]:
    """Every danger by id."""
    files = sorted(file.name for file in tables.data_path(WORDING).iterdir() if file.name.endswith(".toml"))
    rows = {id: row for name in files for id, row in tables.read_toml(f"{WORDING}/{name}").items()}
    return {
        id: Danger(id=id, **row | {"instead": tuple(row["instead"]), "sources": tuple(row["sources"])})
        for id, row in rows.items()
    }


@dataclass(frozen=True, slots=True)
class _Temperatures:
    """Words temperatures by their figure in degF: {temp[165]}."""

    say: Say

    def __getitem__(self, temp_f: int) -> str:
        return self.say.temp(to_c(float(temp_f)))


def further(case: Case) -> Iterator[Caution]:
    """The verdicts on further dangers, or the rule of a family, each as a caution."""
    for id in case.request.dangers_too:
        told = worded(dangers()[id], case.request.units)
        yield Caution("warn", told.rule, told.sources) if told.rule else Caution("stop", told.verdict, told.sources)


def worded(danger: Danger, units: Units) -> Danger:
    """A danger with its temperatures in words.

    raises: KeyError, ValueError or IndexError for a placeholder that is none
    """
    temp = _Temperatures(Say(units))
    return replace(
        danger,
        verdict=danger.verdict.format(temp=temp),
        instead=tuple(step.format(temp=temp) for step in danger.instead),
        why=danger.why.format(temp=temp),
        ask=danger.ask.format(temp=temp),
        rule=danger.rule.format(temp=temp),
    )


@rule("safety.danger", "from-memory")
def warning(case: Case) -> Part | None:
    """A danger that was heard: the verdict first, and no figure of what is refused."""
    if case.request.danger not in dangers():
        return None
    told = worded(dangers()[case.request.danger], case.request.units)
    return Part(
        headline=told.verdict,
        steps=(*told.instead, *((f"Ask: {told.ask}",) if told.ask else ())),
        because=told.why,
        cautions=(Caution("stop", told.verdict, told.sources), *further(case)),
        sources=told.sources,
    )


NEEDS: tuple[str, ...] = ()
RULES = (warning,)
