"""What a reply to a question is worth, and what is said to it."""

from __future__ import annotations

from dataclasses import dataclass

from rules.drill.question import Question
from rules.model import Sentence
from rules.said import Said, sentences, yes

say = sentences("drill/grading")


@dataclass(frozen=True, slots=True)
class Grade:
    """What a reply is worth. feedback: what to say, with the explanation."""

    right: bool
    feedback: Sentence


def grade(question: Question, given: float | str | tuple[float, float] | None) -> Grade:
    """What a reply is worth.

    given: what was read in it: a figure or a range of figures in the unit of the question, "yes" or "no", a letter or
        letters; None where it was passed over
    """
    right = given is not None and question.accepts(given)
    return Grade(right, say("right", why=question.why) if right else _wrong(question, given is not None))


def _wrong(question: Question, tried: bool) -> Said:
    """The answer and the explanation; that of a yes or no begins with the word itself."""
    if question.form == "yes_no":
        return say("no-such", why=question.why) if tried else say("explained", why=question.why)
    if not tried:
        return say("passed-over", shown=question.shown, why=question.why)
    room = yes(question.tolerance)
    return say("wrong", shown=question.shown, room=room, tolerance=question.tolerance, why=question.why)
