"""The drill in words: a question with its options, what is said to a reply, and the end of a set."""

from __future__ import annotations

from dataclasses import replace

from assistant.replies.sentences import worded
from rules.drill import Grade, Question
from rules.drill.question import LETTERS
from rules.said import Said, Words, listed, sentences

say = sentences("drill/wording")


def in_words(question: Question) -> Question:
    """The question with text for all it says; one that is in words already stays as it is."""
    units = question.asked_in
    return replace(
        question,
        text=worded(question.text, units),
        shown=worded(question.shown, units),
        why=worded(question.why, units),
        tolerance=worded(question.tolerance, units),
        options=tuple(worded(option, units) for option in question.options),
    )


def asked(question: Question, number: int, count: int) -> str:
    """A question as it is put."""
    text = say("asked", number=number, count=count, theme=theme(question.theme), question=question.text)
    return "\n".join((worded(text, question.asked_in), *options(question)))


def theme(theme: str) -> Said:
    """What a theme is called."""
    return say("theme", theme=theme)


def options(question: Question) -> tuple[str, ...]:
    """The options of a question, a line each."""
    lettered = zip(LETTERS, question.options, strict=False)
    return tuple(f"  {worded(say('option', letter=a, option=b), question.asked_in)}" for a, b in lettered)


def told(question: Question, grade: Grade) -> str:
    """What is said to a reply, with where it comes from."""
    return worded(say("told", feedback=grade.feedback, sources=sources(question)), question.asked_in)


def sources(question: Question) -> Words:
    """Where an answer comes from."""
    from rules.book import sources_of

    return listed([source.short for source in sources_of(question.sources)], "semicolons")


def score(right: int, answered: int, passed: int = 0) -> Said:
    """How a set came out; what was passed over counts neither way."""
    if answered:
        return say("score", right=right, answered=answered, passed=passed)
    return say("only-passed", passed=passed) if passed else say("no-score")


def reason(before: Question | None) -> str:
    """Why the answer before was what it was, and where that comes from."""
    if before is None:
        return worded(say("no-reason"), "us")
    return worded(say("reason", why=before.why, sources=sources(before)), before.asked_in)


def unread(question: Question) -> str:
    """What is said to a reply that cannot be read: that, and how one is written."""
    return worded(say("unread", hint=_hint(question)), question.asked_in)


def hint(question: Question) -> str:
    """How a reply to a question is written."""
    return worded(_hint(question), question.asked_in)


def _hint(question: Question) -> Said:
    match question.form:
        case "figure":
            return say("give", unit=question.unit)
        case "yes_no":
            return say("answer-yes-or-no")
        case "choice":
            return say("answer-a-letter", letters=listed(question.letters, "or"))
    return say("answer-in-order", letters=" ".join(question.letters))
