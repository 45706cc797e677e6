"""The questions of a lesson and their answers: a set of the drill, of the kinds that go with the theme."""

from __future__ import annotations

from assistant.drill import sheet, wording
from assistant.printing.lesson.blocks import Answered, Answers, Asked, Questions
from assistant.replies.sentences import worded
from rules.drill import Question, make_set_of
from rules.model import Units
from rules.said import sentences

# One page holds so many; a class of more shares them.
MOST_QUESTIONS, LEAST_QUESTIONS = 20, 4
say = sentences("printing/lesson")


def enough_for(class_size: int) -> int:
    """How many questions a class gets where nobody says: one for two, so that neighbours can differ.

    >>> enough_for(20), enough_for(3), enough_for(60)
    (10, 4, 20)
    """
    return max(LEAST_QUESTIONS, min(MOST_QUESTIONS, (class_size + 1) // 2))


def drawn(kinds: tuple[str, ...], seed: int, count: int, units: Units) -> tuple[Question, ...]:
    """The set of a seed, in words."""
    return tuple(map(wording.in_words, make_set_of(seed, kinds, count=count, units=units)))


def questions(made: tuple[Question, ...], seed: int, units: Units) -> Questions:
    """The questions without a word of their answers."""
    return Questions(
        worded(say("drill-line", seed=str(seed)), units),
        tuple(
            Asked(
                str(question.text),
                tuple(line.strip() for line in wording.options(question)),
                sheet.blank(question),
            )
            for question in made
        ),
    )


def answers(made: tuple[Question, ...]) -> Answers:
    """The answers, what else counts, and why."""
    return Answers(
        tuple(
            Answered(
                str(question.shown),
                sheet.room(question),
                sheet.reason(question),
            )
            for question in made
        )
    )
