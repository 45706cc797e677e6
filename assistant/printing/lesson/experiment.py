"""The experiment of a theme: what each group needs, what is done, what can hurt, and for the key what it shows."""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil

from assistant.printing.lesson.blocks import Block, Care, Heading, Lead, Steps, Text
from assistant.printing.lesson.themes import Trial, group_of
from assistant.replies.sentences import worded
from rules import explanations
from rules.book import Case
from rules.model import Request, Units
from rules.said import Said, Value, sentences

WORDING = "printing/lesson"
say = sentences("printing/lesson")


def experiment(trial: Trial, elevation_m: float, class_size: int, units: Units) -> Iterator[Block]:
    """The experiment for a class at an elevation [m]."""
    groups = ceil(class_size / group_of())
    said = _Said(trial, elevation_m, units)
    yield Heading(worded(say("experiment-head", title=said("")), units))
    yield Lead(said("aim"), worded(say("aim"), units))
    needs = (worded(Said(WORDING, f"need-{thing}", (("count", each * groups),)), units) for thing, each in trial.needs)
    yield Text("; ".join(needs) + ".", worded(say("needs", **{"class": class_size, "groups": groups}), units))
    yield Care(worded(say("care"), units), tuple(said(f"caution-{at}") for at in range(1, trial.cautions + 1)))
    yield Steps(tuple(said(f"step-{at}") for at in range(1, trial.steps + 1)))
    yield Text(said("record"), worded(say("findings"), units))


def finding(trial: Trial, elevation_m: float, units: Units) -> Iterator[Block]:
    """What the experiment shows, for the teacher."""
    yield Heading(worded(say("finding-head"), units))
    yield Text(_Said(trial, elevation_m, units)("finding"))


def message(trial: Trial, part: str) -> str:
    """The message of a part of an experiment; its title where there is no part."""
    return f"experiment-{trial.id}.{part}" if part else f"experiment-{trial.id}"


class _Said:
    """Says the parts of an experiment, filled with what it names."""

    def __init__(self, trial: Trial, elevation_m: float, units: Units) -> None:
        case = Case(Request(elevation_m=elevation_m, units=units))
        self.trial, self.units = trial, units
        self.values: tuple[tuple[str, Value], ...] = tuple(
            (name, explanations.value(name)(case)) for name in trial.values
        )

    def __call__(self, part: str) -> str:
        return worded(Said(WORDING, message(self.trial, part), self.values), self.units)
