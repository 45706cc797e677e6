"""How a question, its feedback and the end of a set are worded."""

from __future__ import annotations

from rules.drill import Grade, Question
from rules.drill.question import LETTERS


def asked(question: Question, number: int, count: int) -> str:
    """A question as it is put."""
    return "\n".join((f"{number} of {count}, {question.theme}. {question.text}", *options(question)))


def options(question: Question) -> tuple[str, ...]:
    """The options of a question, a line each."""
    return tuple(f"  {letter}) {option}" for letter, option in zip(LETTERS, question.options, strict=False))


def told(question: Question, grade: Grade) -> str:
    """What is said to a reply, with where it comes from."""
    return f"{grade.feedback} Source: {sources(question)}."


def sources(question: Question) -> str:
    """Where an answer comes from."""
    from rules.book import sources_of

    return "; ".join(source.short for source in sources_of(question.sources))


def score(right: int, answered: int) -> str:
    """How a set came out."""
    return f"{right} of {answered} right." if answered else "No question answered."
