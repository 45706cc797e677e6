"""What a trainee's reply says: a figure in the unit of the question, yes or no, letters; or a word about the drill."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Literal

from assistant.drill.words import after, bare, listed
from assistant.reading.text import LONGEST
from assistant.reading.units import SPOKEN
from rules.drill import Question
from rules.drill.question import LETTERS
from rules.physics.units import FT_PER_M, ML_PER_TBSP, ML_PER_TSP, PSI_PER_PA, to_c

if TYPE_CHECKING:
    from assistant.reading.reader import Heard
    from assistant.reading.spans import Measure

Meaning = Literal["answer", "pass", "stop", "again", "hint", "why", "unread"]

# unit of a question -> kind of measure that answers it
MEASURES = {
    "degC": "temperature", "K": "temperature", "min": "time", "psi": "pressure", "tsp": "volume", "tbsp": "volume",
    "m": "length",
}  # fmt: skip
ML = {"tsp": ML_PER_TSP, "tbsp": ML_PER_TBSP}
# "5 C" is five cups in a recipe, and "50 m" 50 minutes, but not as replies about degrees and elevations
UNASKED = {"degC": "volume", "K": "volume", "m": "time"}
WORD_END = r"\b"
# two thirds OF A CUP, half A CUP: these do not say for how much
SHARE = re.compile(r"\b(?:of|half|quarter)\s+$", re.IGNORECASE)
MOST_WORDS = 12


@dataclass(frozen=True, slots=True)
class Reply:
    """A reply as it was read. given: for rules.drill.grade where it is an answer, else None."""

    meaning: Meaning
    given: float | str | tuple[float, float] | None = None


def read(question: Question, text: str) -> Reply:
    """What a reply to a question says. Never raises, whatever the text.

    question: in words, since its options can be named by them

    >>> from rules.drill import kinds_of, make_question
    >>> where = make_question(1, "boiling", kinds_of("boiling")[0], 1, "us")
    >>> read(where, "stop"), read(where, "hm")
    (Reply(meaning='stop', given=None), Reply(meaning='unread', given=None))
    >>> round(read(where, "about 212 F").given)
    100
    """
    said = bare(text)
    for meaning in ("stop", "pass", "again", "hint", "why"):
        if said in listed(meaning):
            return Reply(meaning)
    given = READERS[question.form](question, text, said) if said else None
    return Reply("unread") if given is None else Reply("answer", given)


def attempted(text: str) -> bool:
    """Whether words that cannot be read as the answer were meant as one: a bare figure, a letter, yes or no.

    >>> attempted("12 min"), attempted("b"), attempted("how long to boil pasta"), attempted("and at 9,000?")
    (True, True, False, False)
    """
    said = bare(text)
    words = said.split()
    if not words or len(words) > MOST_WORDS or words[0] in listed("asks"):
        return False
    if said in listed("yes") | listed("no"):
        return True
    heard, left = _heard(text)
    plain = all(len(word) == 1 or not word.isalpha() or word in listed("filler") for word in left)
    return plain and bool(heard.numbers or heard.measures or any(word in LETTERS for word in left))


def _yes_no(question: Question, text: str, said: str) -> str | None:
    for word in ("yes", "no"):
        if said in listed(word):
            return word
    first = said.split()[0]
    return first if first in ("yes", "no") else None


def _choice(question: Question, text: str, said: str) -> str | None:
    words = said.split()
    letters = [w for w in words if w in question.letters and (w != "a" or len(words) == 1 or _is_named(words, w))]
    others = [w for w in words if w not in letters and w not in listed("filler") | listed("lettered")]
    if len(set(letters)) == 1 and not others:
        return letters[0]
    meant = [letter for letter, option in zip(question.letters, question.options, strict=True) if _is(option, said)]
    return meant[0] if len(meant) == 1 else None


def _is_named(words: list[str], letter: str) -> bool:
    """Whether the letter a stands where a letter stands, and not as the article."""
    return words[-1] == letter or words[words.index(letter) - 1] in listed("lettered")


def _is(option: str, said: str) -> bool:
    """Whether words are an option, or as much of its wording as names it."""
    told = bare(option)
    return said == told or (len(said) > 2 and f" {said} " in f" {told} ")


def _order(question: Question, text: str, said: str) -> str | None:
    words = [word for word in said.replace(",", " ").split() if word not in listed("filler") - set(LETTERS)]
    joined = "".join(words)
    return joined if sorted(joined) == sorted(question.letters) else None


def _figure(question: Question, text: str, said: str) -> float | tuple[float, float] | None:
    words = said.split()
    if len(words) > MOST_WORDS or words[0] in listed("asks") - {"is"}:
        return None
    heard, left = _heard(_apart_from_cups(text) if question.unit in ML else text, UNASKED.get(question.unit))
    if any(word.isalpha() and word not in listed("filler") for word in left):
        return None
    kind = MEASURES.get(question.unit)
    fitting = [measure for measure in heard.measures if measure.kind == kind]
    if fitting and len(heard.measures) == 1:
        return _span(*(_in_unit(question.unit, si, fitting[0]) for si in (fitting[0].low, fitting[0].high)))
    numbers = [number.value for number in heard.alone()]
    if heard.measures or not 1 <= len(numbers) <= 2:
        return None
    readings = [_bare_span(question, numbers, units) for units in _systems(question)]
    return next((reading for reading in readings if question.accepts(reading)), readings[0])


def _heard(text: str, unasked: str | None = None) -> tuple[Heard, list[str]]:
    """What a reply is made of, and the words that are left; degrees without a scale are a number, as the question has.

    unasked: a kind that is not asked for, and cannot be meant
    """
    from assistant.reading.reader import hear

    heard = hear(text[:LONGEST], tuple(kind for kind in SPOKEN if kind != unasked))
    return replace(heard, measures=tuple(m for m in heard.measures if m.kind != "degree")), heard.left()


def _apart_from_cups(text: str) -> str:
    """A reply about spoons without the cup that they are for: "a cup" is no measure there."""
    return after("each_cup", WORD_END).sub(lambda m: m[0] if SHARE.search(text[: m.start()]) else " ", text)


def _in_unit(unit: str, si: float, measure: Measure) -> float:
    """A measure, in m, min, degC, Pa or ml, in the unit of a question; a difference of temperature by its degrees."""
    if unit == "K":
        return measure.said / 1.8 if measure.unit == "degF" else measure.said
    if unit == "psi":
        return si * PSI_PER_PA
    return si / ML[unit] if unit in ML else si


def _systems(question: Question) -> tuple[str, ...]:
    """In which units a figure alone may be: those asked in; a temperature may be in the others, which none mistakes."""
    others = {"us": "metric", "metric": "us"}[question.asked_in]
    return (question.asked_in, others) if question.unit == "degC" else (question.asked_in,)


def _bare_span(question: Question, numbers: list[float], units: str) -> float | tuple[float, float]:
    return _span(*(_bare(question, number, units) for number in (numbers[0], numbers[-1])))


def _bare(question: Question, number: float, units: str) -> float:
    """A figure alone, in the unit of the question."""
    if question.unit == "degC":
        return to_c(number) if units == "us" else number
    if question.unit == "K":
        return number / 1.8 if units == "us" else number
    if question.unit == "m":
        return number / FT_PER_M if units == "us" else number
    if question.unit == "min" and question.in_hours:
        return number * 60
    return number


def _span(low: float, high: float) -> float | tuple[float, float]:
    return low if low == high else (low, high)


READERS = {"figure": _figure, "yes_no": _yes_no, "choice": _choice, "order": _order}
