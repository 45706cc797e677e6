"""The drill for trainees: questions made from a seed, answered by the rules themselves, and graded.

One module a theme makes the questions; a kind of question is a function of a Draw. The same seed and the same choices
give the same set, to the byte, so that a teacher can repeat it.
"""

from __future__ import annotations

import importlib
from collections.abc import Iterable, Iterator
from functools import cache
from random import Random

from rules.drill.draw import Draw, Kind
from rules.drill.grading import Grade, grade
from rules.drill.question import Question
from rules.errors import UnknownWord, within
from rules.model import Sentence, Units

__all__ = ["LEVELS", "LONGEST_SET", "THEMES", "Grade", "Question", "grade", "make_set", "make_set_of"]

THEMES = ("boiling", "timing", "baking", "safety")
LEVELS = (1, 2, 3)
LONGEST_SET = 40
ROUNDS = 60


def make_set(
    seed: int, *, themes: Iterable[str] = THEMES, count: int = 10, level: int = LEVELS[-1], units: Units = "us"
) -> tuple[Question, ...]:
    """A set of questions, no two alike, the themes in turn.

    seed: any whole number; themes: of THEMES, each counted once, in their order
    count: 1 to LONGEST_SET; level: the highest that is asked, of LEVELS
    units: the system in which figures are asked for and shown first
    raises: UnknownWord for a theme, OutOfRange for count or level

    >>> [question.theme for question in make_set(7, themes=("safety", "baking"), count=3)]
    ['baking', 'safety', 'baking']
    """
    wanted = tuple(theme for theme in THEMES if theme in _known(themes))
    within("number of questions", count, 1, LONGEST_SET, "")
    within("level", level, LEVELS[0], LEVELS[-1], "")
    taken: dict[Sentence, Question] = {}
    streams = [_stream(seed, theme, level, units) for theme in wanted]
    while len(taken) < count:
        for stream in streams:
            question = next(question for question in stream if question.text not in taken)
            taken[question.text] = question
    return tuple(taken.values())[:count]


def make_set_of(seed: int, kinds: Iterable[str], *, count: int, units: Units = "us") -> tuple[Question, ...]:
    """A set of questions of these kinds only, no two alike, each kind once before one comes again.

    seed: any whole number; kinds: such as "boiling.point", of which at least one can be asked in many ways
    count: 1 to LONGEST_SET, fewer where the kinds have no more to ask
    raises: UnknownWord for a kind, OutOfRange for count

    >>> [question.id for question in make_set_of(7, ("boiling.ice", "baking.powder"), count=3)]
    ['baking.powder/1', 'boiling.ice/1', 'boiling.ice/2']
    """
    within("number of questions", count, 1, LONGEST_SET, "")
    wanted = [(theme_of(name), kind_named(name)) for name in kinds]
    taken: dict[Sentence, Question] = {}
    for number in range(1, ROUNDS):
        shuffled = list(wanted)
        Random(f"{seed}/{number}").shuffle(shuffled)
        for theme, kind in shuffled:
            question = make_question(seed, theme, kind, number, units)
            taken.setdefault(question.text, question)
            if len(taken) == count:
                return tuple(taken.values())
    return tuple(taken.values())


def kind_named(name: str) -> Kind:
    """The kind of question of a name, its theme and the kind in it.

    raises: UnknownWord

    >>> kind_named("boiling.ice").level
    1
    """
    found = {f"{theme}.{kind.name}": kind for theme in THEMES for kind in kinds_of(theme)}
    if name not in found:
        raise UnknownWord.among("kind of question", name, found)
    return found[name]


def theme_of(question_id: str) -> str:
    """The theme of a question by its id."""
    return question_id.partition(".")[0]


@cache
def kinds_of(theme: str) -> tuple[Kind, ...]:
    """The kinds of question of a theme, in their order.

    raises: UnknownWord
    """
    if theme not in THEMES:
        raise UnknownWord.among("theme", theme, THEMES)
    kinds: tuple[Kind, ...] = importlib.import_module(f"rules.drill.{theme}").KINDS
    return kinds


def make_question(seed: int, theme: str, kind: Kind, number: int, units: Units) -> Question:
    """The question of a kind that this seed gives when the kind comes up for the number-th time, from 1."""
    rng = Random(f"{seed}/{theme}.{kind.name}/{number}")
    return kind.make(Draw(f"{theme}.{kind.name}/{number}", theme, kind.level, rng, units))


def _stream(seed: int, theme: str, level: int, units: Units) -> Iterator[Question]:
    """Questions of a theme without end, each kind once before one comes again."""
    kinds = [kind for kind in kinds_of(theme) if kind.level <= level]
    for number in range(1, ROUNDS):
        shuffled = list(kinds)
        Random(f"{seed}/{theme}/{number}").shuffle(shuffled)
        for kind in shuffled:
            yield make_question(seed, theme, kind, number, units)


def _known(themes: Iterable[str]) -> tuple[str, ...]:
    """Themes, every one of THEMES where none is named.

    raises: UnknownWord
    """
    named = tuple(themes) or THEMES
    for theme in named:
        if theme not in THEMES:
            raise UnknownWord.among("theme", theme, THEMES)
    return named
