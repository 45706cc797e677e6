"""A question of the drill: what is asked, what counts as right, and why."""

from __future__ import annotations

from dataclasses import dataclass
from math import isclose
from typing import Literal

from rules.model import Sentence, Units

Form = Literal["figure", "choice", "yes_no", "order"]

LETTERS = "abcdef"
UNITS = ("degC", "K", "min", "psi", "percent", "factor", "tsp", "tbsp", "m")


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """One question with its answer. What it says is rules.said.Words, and text once assistant.drill has worded it.

    id: such as "boiling.point/1"; with the seed and the units it makes the same question again
    theme: one of rules.drill.THEMES; level: 1 first weeks, 2 a cook, 3 who trains others
    text: the question; for a figure it says in which unit to answer
    form: a figure, a letter of the options, yes or no, or all the letters in their order
    answer: the figure in `unit`, else "b", "yes" or "cab"
    unit: one of UNITS for a figure, else ""
    low, high: every figure between them counts as right, both included [unit]
    tolerance: that in words; "" where there is only one right reply
    asked_in: the system of units that a figure without a unit is in, and in which all is worded first
    in_hours: whether such a figure of a time is hours
    shown: the answer in words
    why: the explanation, with the figures of this question
    sources: ids of data/sources.toml
    raises: ValueError where these do not fit together
    """

    id: str
    theme: str
    level: int
    text: Sentence
    form: Form
    answer: float | str
    shown: Sentence
    why: Sentence
    sources: tuple[str, ...]
    unit: str = ""
    low: float = 0.0
    high: float = 0.0
    tolerance: Sentence = ""
    asked_in: Units = "us"
    in_hours: bool = False
    options: tuple[Sentence, ...] = ()

    def __post_init__(self) -> None:
        if not _fits(self):
            raise ValueError(f"question {self.id}: {self.answer!r} is no {self.form} with these options and bounds")

    @property
    def letters(self) -> str:
        """The letters of the options, one after the other."""
        return LETTERS[: len(self.options)]

    def accepts(self, given: float | str | tuple[float, float]) -> bool:
        """Whether a reply counts as right: a figure or a range of figures [unit], else the word or the letters."""
        if self.form != "figure":
            return given == self.answer
        ends = given if isinstance(given, tuple) else (given, given)
        return all(isinstance(end, int | float) and self._within(end) for end in ends)

    def _within(self, figure: float) -> bool:
        return (
            self.low <= figure <= self.high
            or isclose(figure, self.low, rel_tol=1e-9, abs_tol=1e-9)
            or isclose(figure, self.high, rel_tol=1e-9, abs_tol=1e-9)
        )


def _fits(question: Question) -> bool:
    """Whether the answer of a question is of its form."""
    answer, options = question.answer, question.options
    if question.form == "figure":
        bounded = not isinstance(answer, str) and question.low <= answer <= question.high
        return bounded and question.unit in UNITS and not options
    if len(set(options)) != len(options) or question.unit:
        return False
    if question.form == "yes_no":
        return answer in ("yes", "no") and not options
    if question.form == "choice":
        return isinstance(answer, str) and len(answer) == 1 and answer in question.letters
    return len(options) > 2 and sorted(str(answer)) == list(question.letters)
