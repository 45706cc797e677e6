"""A hint to a question of the drill: what narrows the answer down without giving it away."""

from __future__ import annotations

from collections.abc import Callable

from assistant.replies.sentences import worded
from rules.drill import Question
from rules.physics.units import PSI_PER_PA
from rules.said import Value, duration, elevation, gauge, number, sentences, temp, temp_drop

say = sentences("drill/hints")

# how far the hint reaches beyond what counts as right: that much of it on one side, twice on the other
SHARE = 0.15
WRITTEN: dict[str, Callable[[float], Value]] = {
    "degC": temp,
    "K": temp_drop,
    "min": duration,
    "psi": lambda psi: gauge(psi / PSI_PER_PA),
    "m": elevation,
}


def hint(question: Question) -> str:
    """What narrows the answer down."""
    return worded(_hint(question), question.asked_in)


def _hint(question: Question) -> Value:
    match question.form:
        case "figure":
            low, high = around(question)
            write = WRITTEN.get(question.unit, number)
            return say("between", low=write(low), high=write(high))
        case "choice":
            wrong = next(letter for letter in reversed(question.letters) if letter != question.answer)
            return say("is-not", letter=wrong)
        case "order":
            return say("begins-with", letter=str(question.answer)[0])
    return say("think", theme=question.theme)


def around(question: Question) -> tuple[float, float]:
    """A span about all that counts as right [unit], whose middle is not the answer.

    >>> from rules.drill import kinds_of, make_question
    >>> point = make_question(1, "boiling", kinds_of("boiling")[0], 1, "us")
    >>> low, high = around(point)
    >>> low < point.low, high > point.high, point.accepts((low + high) / 2)
    (True, True, False)
    """
    width = max(question.high - question.low, SHARE * abs(question.high))
    left, right = (2 * width, width) if len(question.id) % 2 else (width, 2 * width)
    return max(question.low - left, 0.0 if question.low >= 0 else question.low - left), question.high + right
